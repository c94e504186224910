"""What another notice has done: `the light in P was removed from the chart by Notice 46/26`.

It tells how the chart came to be as it is, and nothing is to be done.  Who says that it was done
in error, or says more behind it, may want something else: such words are not judged here.
"""

from __future__ import annotations

import re

from noticeparse.context import Context
from noticeparse.layout.drafts import Piece, Prose
from noticeparse.layout.line.elements import Element
from noticeparse.readers.references import read_number
from noticeparse.records.reference import NoticeRef

_PAST = ("was ", "were ", "has ", "have ", "had ")
_BY_NOTICE = re.compile(
    r"\s{1,80}(?:(?:from|on|in|off)\s{1,80}(?:the\s{1,80}|this\s{1,80})?charts?\s{1,80})?"
    r"(?:by|under)\s{1,80}(?:(?:former|previous|earlier)\s{1,80})?(?:notice|nm|ntm)\s{1,80}"
    r"(?:no\.?\s{0,80})?(?P<number>[0-9]{1,5}(?:\([TP]\))?/[0-9]{2,4})(?![0-9/])",
    re.IGNORECASE,
)
_IN_ERROR = re.compile(r"\b(?:error|mistake|slip|wrong|instead|should)", re.IGNORECASE)


def done_by_another(context: Context, verb: Piece, own: NoticeRef | None) -> int | None:
    """Where words end that say that another notice did it, behind what was done; else None."""
    start, end = verb
    if own is None or not context.text[start:end].lower().startswith(_PAST):
        return None
    told = _BY_NOTICE.match(context.text, end)
    if told is None or read_number(told["number"], context.year) in (own, None):
        return None
    return told.end()


def without_done(context: Context, prose: Prose, own: NoticeRef | None) -> list[Element]:
    """The elements of a remark without the last thing done, if another notice did that."""
    elements = list(prose.elements)
    start, end = prose.pieces[0][0], prose.pieces[-1][1]
    last = next((e for e in reversed(elements) if e.kind == "passive"), None)
    done = None if last is None else done_by_another(context, (last.start, last.end), own)
    if last is None or done is None or context.text[done:end].strip(" .)\n"):
        return elements
    is_doubtful = _IN_ERROR.search(context.text, start, last.start) is not None
    return elements if is_doubtful else [e for e in elements if e is not last]
