"""Places that an item lacks: its own, or the new one of a move."""

from __future__ import annotations

import re

from noticeparse.build.doubts import leads_to_place
from noticeparse.build.extents import item_extent, over
from noticeparse.build.geometry import GeometryReading
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.stretch import unquoted

_NEEDS_NO_PLACE = frozenset(
    {"legend", "note", "block", "chart_title_block", "chart_limit", "chart_cancelled",
     "compass_rose", "magnetic_variation"}
)  # fmt: skip

_LIKE_A_PLACE = re.compile(
    r"[0-9]{1,3}[.,][0-9]{2,8} ?°|[0-9]{1,3} ?(?:°|deg\b) ?[0-9]", re.IGNORECASE
)
"""`46.57005°`, `48 deg 0`: what is left of a position behind a legend."""
_SAYS_WHERE = re.compile(
    r"\b(?:titles?|notes?|margins?|everywhere|wherever|throughout|all|each|every|any|scale|chart"
    r"|sheet|plan|panel|corners?|edge|border|compass|land|shore|tables?|diagrams?|block"
    r"|under|below|above|beside|beneath|near|adjacent|next|close|in|at|on|by|of|to|from|across|along"
    r"|between|off|over|within|alongside|against|around|north|south|east|west|centred)\b",
    re.IGNORECASE,
)
"""Words outside a quotation that tell where on the sheet a legend stands, or that it does so."""

_LED = re.compile(
    r"\b(?:under|below|above|beside|beneath|near|adjacent|next|close|in|at|on|by|of|to|from|across"
    r"|along|between|off|over|within|alongside|against|around)\b"
    r"(?! (?:the|this|these|its|chart|title|both|all|each|every|[0-9]|to |of |by |[NSEW]{1,3}\b))",
    re.IGNORECASE,
)
_NEAR_NOTHING = re.compile(r"\b(?:adjacent|nearby|near|close|alongside)[ ,.]{0,4}$", re.IGNORECASE)
"""Words that lead to no place: `legend, Foul, adjacent`, or `Works in progress` without quotes."""


def _tells_where(plain: str, *, is_quoted: bool) -> bool:
    """Whether words tell where on the sheet a legend stands; some of them may be its own."""
    told = (_NEAR_NOTHING if is_quoted else _LED).sub("", plain)
    return _SAYS_WHERE.search(told) is not None


def missing_places(
    context: Context, item: Item, verb: Verb, feature: Feature, reading: GeometryReading
) -> list[Fault]:
    """What is missing of the places of an item; a note may stand without one.

    A legend may where words say that it stands on the whole sheet, or near what.
    """
    if not item.has_place:
        words = context.joined(item.words)
        plain = unquoted(words)
        may_lack = verb in ("insert", "delete") and feature.kind in _NEEDS_NO_PLACE
        may_lack &= feature.kind != "legend" or _tells_where(plain, is_quoted=plain != words)
        is_like_place = _LIKE_A_PLACE.search(plain) is not None
        if may_lack and not leads_to_place(words) and not is_like_place:
            return []
        return [over(context, item, "item-without-position")]
    goes_to = reading.destination is not None and reading.destination.positions
    if verb != "move" or goes_to or any(_says_where(context, group) for group in item.groups):
        return []
    last = item.groups[-1].places[-1].element if item.groups[-1].places else None
    if last is None:
        return [over(context, item, "move-without-destination")]
    values = {"written": context.written(*item_extent(item))}
    return [Fault("move-without-destination", last.start, last.end, values)]


def _says_where(context: Context, group: Group) -> bool:
    lead = context.joined(group.lead).lower().replace(":", " ")
    return group.role == "to" or "to" in lead.split()
