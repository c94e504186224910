"""Items whose places may have slid from one to the next.

Where a place stands before the first command with nothing to it, and the last command has none,
each item between may have the place of the next: `Spot: P`, `Insert wreck`, `Spot: Q`, `Delete
rock`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise
from operator import itemgetter

from noticeparse.build.extents import over
from noticeparse.build.places_beside import hold_back_beside, is_bare
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.layout.item.listed_places import announced, is_at_end
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.places import only_relates

_VALUES = frozenset({"light", "depth", "measure", "number", "sectors"})
_RADIUS = re.compile(
    r"\W{0,4}(?:centred on\W{0,4})?(?:with )?(?:an? )?(?:radius|diameter)(?: of)?[ 0-9./½¼¾]{1,9}"
    r"(?:nautical |sea )?[a-z]{0,9}\W{0,4}",
    re.IGNORECASE,
)
"""What makes a circle of the place beside it: `P, radius 0.5 miles`."""


def hold_back_slid(context: Context, items: Sequence[Item]) -> None:
    """Give such items of a chart section, in text order, an error."""
    # Where every command has its place none has slid.
    if any(is_bare(context, item) for item in items):
        _hold_back(context, items)
    hold_back_beside(context, items)
    for index, item in enumerate(items):
        lacks = _lacks(context, item)
        for below in _robbed(lacks, items[index + 1 :]) if lacks > 0 else ():
            below.faults.append(over(context, below, "place-of-neighbour"))
        for below in items[index + 1 : index + 2] if _lists_below(item) else ():
            if not _has_place_above(context, below):
                continue
            below.faults.append(over(context, below, "place-of-neighbour"))
            if lacks != 0 and not is_at_end(context.text, item):
                item.faults.append(over(context, item, "place-of-neighbour"))


def _lacks(context: Context, item: Item) -> int:
    """How many places an item announces and has not."""
    count = announced(context.joined(item.words)) if item.words else None
    return (count or 0) - len(item.places)


def _lists_below(item: Item) -> bool:
    """Whether the last place of an item stands behind its words."""
    places = [place.element.start for place in item.places]
    return bool(places and item.words) and places[-1] > item.words[0][0]


def _has_place_above(context: Context, item: Item) -> bool:
    """Whether a place stands alone on its line above the place in front of an item.

    Behind a list that is complete it may be one too many of that.
    """
    words = item.words[0][0] if item.words else -1
    ends = [place.element.end for place in item.places if place.element.end < words]
    return len(ends) > 1 and "\n" in context.text[ends[-2] : ends[-1]]


def _robbed(lacks: int, below: Sequence[Item]) -> Iterator[Item]:
    """The items below one that have places in front of them which it announces and lacks."""
    for one in below:
        words = one.words[0][0] if one.words else -1
        points = [place.element for place in one.places if place.element.kind == "point"]
        in_front = sum(point.start < words for point in points)
        if lacks <= 0 or not in_front:
            return
        lacks -= in_front
        yield one


def _hold_back(context: Context, items: Sequence[Item]) -> None:
    # Places under letters that the items name are those of a list, and belong to none beside it.
    # `(a) wreck` only has a letter of its own, which names no place of a list for certain.
    named = any(
        place.element.kind == "reference" and item.label is None
        for item in items
        for place in item.places
    )
    kinds = [_kind(context, item, has_list=named) for item in items]
    told = [(kind, index) for index, kind in enumerate(kinds) if kind is not None]
    runs = [[index for _, index in run] for _, run in groupby(told, key=itemgetter(0))]
    for above, below in pairwise(runs):
        if below[-1] == above[-1] + 1:
            continue
        for index in range(above[-1], below[-1] + 1):
            # A command without a place has its error already, a place without a verb is no item.
            if kinds[index] == "bare" or items[index].verb is None:
                continue
            fault = over(context, items[index], "place-of-neighbour")
            if fault not in items[index].faults:
                items[index].faults.append(fault)


def _kind(context: Context, item: Item, *, has_list: bool) -> str | None:
    """`place` for one without a command and a feature, `bare` for a command without a place."""
    if places := item.places:
        words = context.joined(item.words)
        if has_list and all(place.label is not None for place in places):
            return None
        # `Fl.G.3s No 5 P` and `5.8 P` are items; other words may only be those of the place.
        is_circle = not has_kind(words) and _RADIUS.fullmatch(words) is not None
        names_thing = not is_circle and (has_kind(words) or bool(value_property(words) & _VALUES))
        relates = is_circle or only_relates(words)
        is_lone = not names_thing and (item.verb_piece is None or relates)
        return "place" if is_lone and not item.refers else None
    return "bare" if is_bare(context, item) else None
