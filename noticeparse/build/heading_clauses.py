"""What the heading of a notice says of others and of its own time.

The notices it cancels, or may cancel, and how long it holds: `Quill Sound (until 3 June 2026)`.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse.build.extents import extent_of, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.clauses import read_clauses
from noticeparse.records.notice import Validity
from noticeparse.records.reference import NoticeRef

_TOLD = ("cancellation-unread", "validity-unread", "validity-reversed")


_MAY_BE_MARK = re.compile(
    r"\W{0,3}[TP](?: ?[&/,] ?[TP])?(?:\)|[ .]{1,3}(?=[A-Z][A-Z ]))"
    r"|\W{0,3}[TPtp][ .]{1,3}(?=[A-Z][a-z])(?!Heads?\b|Jett(?:y|ies)\b|Piers?\b|Quays?\b)"
)
"""A lone T or P in front of a heading: `2417/26 T QUILL SOUND`, `(T&P) Quill Sound`."""


class HeadingClauses(NamedTuple):
    """What a heading says beside its places and subjects."""

    cancels: list[NoticeRef]
    valid: Validity | None
    faults: list[Fault]


def heading_clauses(
    context: Context, draft: NoticeDraft, number: NoticeRef | None
) -> HeadingClauses:
    """The notices that a heading cancels and its time, and a fault for what is not read of them.

    The clause may run over the line ends of the heading; `number` is that of its notice.
    """
    pieces = draft.heading
    whole = "\n".join(context.text[slice(*piece)] for piece in pieces)
    clauses = read_clauses(whole, context.year)
    left = [code for code in _TOLD if any(fault.code == code for fault in clauses.faults)]
    faults = [quoting(context, code, extent_of(list(pieces))) for code in left]
    is_permanent = number is not None and number.status == "permanent"
    if is_permanent and _MAY_BE_MARK.match(whole) is not None:
        faults.append(quoting(context, "notice-mark-unclear", extent_of(list(pieces))))
    elif is_permanent and draft.mark_above is not None:
        faults.append(quoting(context, "notice-mark-unclear", draft.mark_above))
    return HeadingClauses(clauses.cancels, clauses.valid, faults)
