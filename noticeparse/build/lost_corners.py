"""Separators between places with no place between them: `P, , Q`, `joining  and Q`.

What stood there is lost, and the line or area without it looks whole
(common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.extents import quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item

_LINK = r"(?:and|to|thence|then|through)"
_BETWEEN = re.compile(
    r"\.?[ \t]{0,40}(?:,[ \t]{0,40},(?![ \t]{0,40}[,\n])"
    rf"|,?\s{{0,40}}{_LINK}[ \t]{{0,40}},(?=[ \t]{{0,40}}[(0-9NS])|,?\s{{0,40}}and\s{{1,40}}and\b"
    r"|,?\s{0,40}to\s{1,40}(?:to|and)\b)",
    re.IGNORECASE,
)
"""Behind a place; a full stop may end its letter, and a row of commas is one of empty cells."""
_IN_FRONT = re.compile(
    rf"\b(?:joining|bounded by|between|through|by joining|connecting|enclosed by|limited by)"
    rf"(?::?\s{{1,40}}(?:{_LINK}|[,;])|[,;]\s{{0,40}}[,;]),?\s{{1,40}}"
    r"(?:(?:position|lat(?:itude)?\.?)\s{1,4})?\Z",
    re.IGNORECASE,
)
_FARTHEST = 60


def lost_corners(context: Context, item: Item) -> Iterator[Fault]:
    """The fault of an item with such a separator among its places."""
    places = [
        place.element
        for group in item.groups
        for place in group.places
        if place.element.kind == "point"
    ]
    if not places:
        return
    text, first = context.text, places[0].start
    front = _IN_FRONT.search(text, max(0, first - _FARTHEST), first)
    if front is not None:
        yield quoting(context, "position-unreadable", front.span())
    for one, following in pairwise(places):
        gap = _BETWEEN.match(text, one.end, max(one.end, following.start + 1))
        if gap is not None:
            yield quoting(context, "position-unreadable", (one.start, following.end))
