"""Lines below the head of a notice that say it is temporary: `Status: Temporary`, `Type: T`."""

from __future__ import annotations

import re

from noticeparse.build.extents import first_offset
from noticeparse.context import Context
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.references import status_in_words
from noticeparse.records.reference import NoticeStatus

_MARK = r"(?P<{}>\(?(?:temporary|preliminary|temp|prelim|T|P)\)?)"
_LINE = re.compile(
    r"^[ \t]*(?:(?:status|type|class|kind|category|nature)(?: of (?:the )?notice)?[ \t]{0,12}[:=]"
    rf"[ \t]{{0,20}}{_MARK.format('mark')}(?: notice)?"
    r"|(?:this (?:is|notice is) )?(?:a )?(?P<alone>temporary|preliminary) notice"
    r"(?:,? (?:(?:is )?(?:valid|in force) )?(?:until|till|from) [^\n.]{1,60})?)[ \t.]*$"
    r"|^[ \t]*(?-i:(?P<bare>TEMPORARY|Temporary|PRELIMINARY|Preliminary))[ \t:.]*$",
    re.IGNORECASE | re.MULTILINE,
)


def status_told(context: Context, draft: NoticeDraft) -> NoticeStatus | None:
    """The status that a line between the number and the first item of a notice states."""
    if draft.number is None:
        return None
    items = [item for chart in draft.charts for item in chart.items]
    starts = [prose.pieces[-1][1] for prose in draft.prose]
    end = first_offset(items) if items else max(starts, default=draft.number.end)
    found = _LINE.search(context.text, draft.number.end, max(end, draft.number.end))
    if found is None:
        return None
    return status_in_words(found["mark"] or found["alone"] or found["bare"])
