"""Lists of the items that hold for a chart, below it or behind a gap: `items (i) and (iii)`."""

from __future__ import annotations

import re

from noticeparse.readers.head_values import says_all_items
from noticeparse.readers.heads import head_kinds

_ITEMS = re.compile(
    r"(?:for |on )?\(?(?:all )?(?:item|correction|paragraph|para|entr)", re.IGNORECASE
)


def tells_items(words: str) -> bool:
    """Whether words behind a chart say which items it takes, and no more: `all`, `(a), (c)`."""
    kinds = head_kinds(words)
    return says_all_items(words) or ("ITEM_LETTERS" in kinds and kinds <= {"ITEM_LETTERS", "STOP"})


def lists_items(words: str) -> bool:
    """Whether words are a list of the items that hold for the chart above, and no more."""
    if _ITEMS.match(words) is None:
        return False
    kinds = head_kinds(words)
    return "ITEM_LETTERS" in kinds and not kinds & {"OTHER_WORDS", "OTHER", "CHART_WORD"}
