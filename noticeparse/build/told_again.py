"""A place that is referred to and stated as well: `in the same position, 47-20.70S 123-30.81W`."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Place
from noticeparse.layout.line.elements import Element
from noticeparse.records.position import Position

_MARKS = " ,()\n"
"""What may stand between the words and the figures of one place; `and` joins two places."""


_OPENING = ("(", "[")
_SHUT = re.compile(r"[^()\[\]\n]{0,40}[)\]]")
"""The end of a bracket that holds a position, and perhaps its datum."""


def without_told_again(
    context: Context,
    places: Sequence[Place],
    positions: Sequence[list[Position]],
    faults: list[Fault],
) -> list[list[Position]]:
    """The positions of each place, those of a reference left out where the next states them anew.

    The same position with other figures behind it cannot be both.
    """
    kept = list(positions)
    for at, (told, stated) in enumerate(pairwise(places)):
        first, second = told.element, stated.element
        if _is_in_brackets(context, first, second):
            # `46°10.10'S 122°00.20'W (46.16833S 122.00333W)`; one of them may be no position.
            read = [*positions[at], *positions[at + 1]]
            if len(read) == 2 and _is_alike(*read):
                kept[at + 1] = []
            else:
                values = {"written": context.written(first.start, second.end)}
                faults.append(Fault("position-not-the-same", first.start, second.end, values))
            continue
        is_pair = first.kind in ("same", "reference") and second.kind == "point"
        if not is_pair or context.text[first.end : second.start].strip(_MARKS):
            continue
        above, own = positions[at], positions[at + 1]
        if len(above) != 1 or len(own) != 1:
            continue
        if (above[0].lat, above[0].lon) == (own[0].lat, own[0].lon):
            kept[at] = []
        elif first.kind == "same":
            values = {"written": context.written(second.start, second.end)}
            faults.append(Fault("position-not-the-same", first.start, second.end, values))
    return kept


def _is_in_brackets(context: Context, first: Element, second: Element) -> bool:
    """Whether a position stands in brackets right behind another one, which has none."""
    text = context.text
    is_pair = first.kind == "point" and second.kind == "point"
    if not is_pair or text[first.end : second.start].strip() not in _OPENING:
        return False
    return text[second.end - 1] in ")]" or _SHUT.match(text, second.end) is not None


def _is_alike(first: Position, second: Position) -> bool:
    """Whether two positions are the same to the last digit of the rougher one."""
    from geographiclib.geodesic import Geodesic  # slow to import

    apart = Geodesic.WGS84.Inverse(first.lat, first.lon, second.lat, second.lon)["s12"]
    return bool(apart <= first.resolution_m + second.resolution_m)
