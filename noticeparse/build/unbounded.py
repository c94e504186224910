"""Lines and areas of which words tell the end or the corners, and no positions.

`cable from P due west to the chart edge` is no cable at P, and two corners of an area that is told
by `NW and SE corners` are no two areas.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.item.listed_places import is_whole_list
from noticeparse.rare import Rare
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import gather, unquoted
from noticeparse.vocabulary import primitives

_QUARTER = r"(?:[NS][EW]|(?:north|south)-?(?:east|west)(?:ern)?)"
_CORNERS = Rare(
    rf"\b{_QUARTER}(?:erly)?(?: corner)? ?(?:and|&|/|,|to) ?(?:the )?{_QUARTER} corners?\b"
    r"|\b(?:opposite|diagonal(?:ly opposite)?) corners\b",
    "corner diagonal opposite",
    re.IGNORECASE,
)
_EDGE = Rare(
    r"\b(?:to|and|towards|as far as|until|beyond|off) (?:the )?(?:[a-z]+ )?(?:edge|border|limits?"
    r"|margin) of (?:the |this )?(?:chart|sheet|panel|plan)\b"
    r"|\b(?:to|and|towards|as far as|until|beyond|off) (?:the |this )?"
    r"(?:chart|sheet|panel|plan)(?:'s)? (?:edge|border|limits?|margin)\b",
    "border edge limits margin of",
    re.IGNORECASE,
)
_ROW_BY_ROW = Rare(
    r"\b(?:joining|bounded by|between|through|and) this (?:position|point)\b",
    "this",
    re.IGNORECASE,
)
"""`pontoon joining this position`, and in the row below `and this position`."""
_FEWEST = {"area": 3, "line": 2}


def _begins_in_front(context: Context, item: Item) -> bool:
    """Whether the one place in front of the words is the first of those behind them."""
    start = item.words[0][0] if item.words else -1
    in_front = sum(place.element.start < start for place in item.places)
    return in_front == 1 and is_whole_list(context.text, item)


def unbounded(
    context: Context, item: Item, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """The fault of an item whose words tell more of its extent than its positions do."""
    leads = [piece for group in item.groups for piece in group.lead]
    pieces = sorted([*item.words, *leads, *item.tail])
    if not pieces or geometry.relation in ("close", "vicinity"):
        return
    text = unquoted(gather(context.text, pieces).text)
    drawn = primitives(feature.kind)
    is_at_edge = "L" in drawn and _EDGE.search(text) is not None
    shape = None
    if _ROW_BY_ROW.search(text) and not _begins_in_front(context, item):
        told = "area" if "bounded by" in text.lower() else "line"
        yield over(context, item, "geometry-too-few-positions", shape=told)
        return
    if "A" in drawn and _CORNERS.search(text):
        shape = "area"
    elif is_at_edge:
        shape = "line"
    if shape is not None and 0 < len(geometry.positions) < _FEWEST[shape]:
        yield over(context, item, "geometry-too-few-positions", shape=shape)
    elif is_at_edge and geometry.shape in ("line", "area"):
        yield over(context, item, "geometry-along-coast")
