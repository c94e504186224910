"""What a remark, or the words of an item, say beside their sense: changes, charts."""

from __future__ import annotations

import re

from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Prose

_AS_CHART = re.compile(r"^(?:as|same as|see)(?: (?:on|for|in))? charts?\b")
_ONE_CHART = re.compile(
    r"\((?:not )?(?:(?:on|for) )?charts? [0-9A-Z]|\bcharts? [0-9]{1,6} only\b", re.I
)


def words_of_one_chart(context: Context, item: Item) -> str | None:
    """The words of an item that says it is of one chart, or not of one: `(chart 56 only)`."""
    if not any("chart" in context.text[start:end].lower() for start, end in item.pieces):
        return None
    words = context.joined(item.pieces)
    return words if _ONE_CHART.search(words) else None


def tells_of_change(context: Context, prose: Prose) -> bool:
    """Whether a remark says that something at a position was changed: an action may be lost."""
    start, end = prose.pieces[0][0], prose.pieces[-1][1]
    words = " ".join(context.text[start:end].lower().split())
    placed = any(element.kind in ("point", "reference", "same") for element in prose.elements)
    told = any(element.kind == "passive" for element in prose.elements)
    if _AS_CHART.search(words):
        return True
    return placed and (told or " has been " in words or " have been " in words)
