"""Gives a light the elevation that stands apart from its character: `light, Fl.5s, elevation 12m`.

So does `light, Fl.5s, height 12m`; behind `white tower`, or beside an elevation, a height is that
of the structure.

In come the lights and amounts of a feature whose main class is a light; out come both with the
figure in its place.  The elevation of a light is that of its focal plane, no height of an object.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.feature_clashes import stated_twice
from noticeparse.readers.feature_values import Amounts
from noticeparse.readers.told import Told
from noticeparse.readers.words import Item
from noticeparse.records.light import Light
from noticeparse.vocabulary import kinds

_STRUCTURE = frozenset(("LNDMRK", "BUISGL", "PILPNT", "OFSPLF", "DAYMAR"))


def _is_of_structure(items: Sequence[Item], height: Item) -> bool:
    """Whether a structure is named in front of a height: `light, Fl.5s, tower, height 12m`."""
    named = [one for one in items if one.role == "kind" and one.start < height.start]
    return any(kinds()[one.value].s57 in _STRUCTURE or kinds()[one.value].form for one in named)


def with_elevation(
    lights: list[Light], amounts: Amounts, told: Told, faults: list[Fault]
) -> tuple[list[Light], Amounts]:
    """The first light with its elevation, which the amounts then hold no longer.

    A height beside a companion (`light on tower, height 18m`) may be that of the other.
    """
    items, is_alone = told.items, not told.companions
    item = next((one for one in items if one.role == "height"), None)
    height = amounts.height_m
    is_told = item is not None and item.text.lower().startswith(("elev", "height", "ht"))
    if item is None or height is None or not lights or not is_told:
        return lights, amounts
    is_height = not item.text.lower().startswith("elev")
    is_its_own = is_alone and lights[0].elevation_m is None and not _is_of_structure(items, item)
    if is_height and not is_its_own:
        return lights, amounts
    amounts = amounts._replace(height_m=None)
    if item.text.endswith("M") and not item.text.isupper():
        # The word wants metres, the unit is that of the range.
        written = {"written": shown(item.text)}
        faults.append(Fault("light-figures-unclear", item.start, item.end, written))
        return lights, amounts
    first = lights[0]
    if first.elevation_m is not None and first.elevation_m != height:
        faults.append(stated_twice(item))
        return lights, amounts
    return [first.model_copy(update={"elevation_m": height}), *lights[1:]], amounts
