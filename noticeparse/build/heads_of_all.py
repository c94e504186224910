"""Lines in the place of a chart that are for all charts above them: `Both charts`."""

from __future__ import annotations

import re
from collections.abc import Set

from noticeparse.build.extents import extent_of, quoting
from noticeparse.context import Context
from noticeparse.layout.drafts import ChartDraft
from noticeparse.numbers import COUNT_WORDS, counted
from noticeparse.stretch import gather

_COUNTS = "|".join(COUNT_WORDS)
_HEADS = re.compile(
    r"(?:on |for )?(?:(?:all(?: of)? )?(?:the |these )?(?P<count>both|"
    rf"{_COUNTS})(?: of)?(?: the| these)?|(?:all|each of)(?: of)?(?: the| these)?) charts",
    re.IGNORECASE,
)


def heads_all(context: Context, draft: ChartDraft, known: Set[str | None]) -> bool:
    """Whether a draft is headed by such a line; its items are held where the charts are others."""
    said = (
        _HEADS.fullmatch(gather(context.text, draft.head).text.strip(" :.,-")) if known else None
    )
    if said is None:
        return False
    if not is_count_of(said, len(known)):
        for item in draft.items:
            item.faults.append(quoting(context, "item-of-one-chart", extent_of(draft.head)))
    return True


def is_count_of(said: re.Match[str], known: int) -> bool:
    """Whether the notice has as many charts as are told, and several."""
    words = (said["count"] or "").split()
    if not words:
        return known > 1
    count = words[-1].lower()
    return known == (2 if count == "both" else counted(count))
