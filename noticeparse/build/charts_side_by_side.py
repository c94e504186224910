"""Charts whose heads stand side by side, each with its own column of positions.

An item under them would stand at the places of all these charts, and on each of them; which place
is for which chart is in the column alone, and there may be a dash for none.  They are held back.
Source: common practice, no published source.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from itertools import pairwise

from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.layout.drafts import ChartDraft, Item

_HEADS = re.compile(
    r"\bcharts?\b[^\n]{1,80}?(?: {3}|\t|\|)[^\n]{0,80}?\bcharts? (?:no\.? )?[A-Z]{0,3}[0-9]",
    re.IGNORECASE,
)
_PARTS = r"(?: {3,160}|[ \t|]{0,160}[\t|][ \t|]{0,160})"
_GAP = re.compile(_PARTS)
_NONE_BEHIND = re.compile(rf"{_PARTS}[-–—][ \t|]{{0,80}}(?=\n|\Z)")
_NONE_BEFORE = re.compile(rf"[ \t|][-–—]{_PARTS}\Z")
_WIDEST = 200


def hold_back_side_by_side(context: Context, drafts: Iterable[ChartDraft]) -> None:
    """Hold back the items below such heads, where one has places in two columns of its row."""
    for draft in drafts:
        heads = (context.text[start:end] for start, end in draft.head)
        if not any(_HEADS.search(head) for head in heads):
            continue
        if any(_has_columns(context.text, item) for item in draft.items):
            for item in draft.items:
                item.faults.append(quoting(context, "item-of-one-chart", item_extent(item)))


def _has_columns(text: str, item: Item) -> bool:
    """Whether beside a place of an item another one stands in its row, or a dash for none."""
    places = [place.element for place in item.places]
    return any(
        _GAP.fullmatch(text, first.end, second.start) is not None
        for first, second in pairwise(places)
        if first.end < second.start
    ) or any(
        _NONE_BEHIND.match(text, one.end)
        or _NONE_BEFORE.search(text[max(0, one.start - _WIDEST) : one.start])
        for one in places
    )
