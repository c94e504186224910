"""Gives a light the elevation that stands apart from its character: `light, Fl.5s, elevation 12m`.

In come the lights and amounts of a feature whose main class is a light; out come both with the
figure in its place.  The elevation of a light is that of its focal plane, no height of an object.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.feature_clashes import stated_twice
from noticeparse.readers.feature_values import Amounts
from noticeparse.readers.words import Item
from noticeparse.records.light import Light


def with_elevation(
    lights: list[Light], amounts: Amounts, items: Sequence[Item], faults: list[Fault]
) -> tuple[list[Light], Amounts]:
    """The first light with its elevation, which the amounts then hold no longer."""
    item = next((one for one in items if one.role == "height"), None)
    height = amounts.height_m
    if item is None or height is None or not lights or not item.text.lower().startswith("elev"):
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
