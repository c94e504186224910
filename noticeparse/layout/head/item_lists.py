"""Lists of the items that hold for a chart, on a line below it: `items (i) and (iii)`."""

from __future__ import annotations

import re

from noticeparse.readers.heads import head_kinds

_ITEMS = re.compile(
    r"(?:for |on )?\(?(?:all )?(?:item|correction|paragraph|para|entr)", re.IGNORECASE
)


def lists_items(words: str) -> bool:
    """Whether words are a list of the items that hold for the chart above, and no more."""
    if _ITEMS.match(words) is None:
        return False
    kinds = head_kinds(words)
    return "ITEM_LETTERS" in kinds and not kinds & {"OTHER_WORDS", "OTHER", "CHART_WORD"}
