"""The colour of a light that stands apart from its character: `red light, Fl.4s`, `Fl.4s (red)`.

A character without a colour is white (INT 1, P11); one that words beside it tell is no white one.
Where the words are those of what it stands on, `light, red tower, Fl.4s`, they say nothing of it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.marks import CARRIED_LIGHTS
from noticeparse.readers.words import Item
from noticeparse.records.light import Light, LightColour
from noticeparse.vocabulary import kinds

_COLOURS: dict[str, LightColour] = {
    "white": "W", "red": "R", "green": "G", "blue": "Bu", "yellow": "Y", "amber": "Am",
    "violet": "Vi", "orange": "Or",
}  # fmt: skip
_LETTERS: dict[str, LightColour] = {"W": "W", "R": "R", "G": "G", "Y": "Y", "Bu": "Bu"}
_SEVERAL = re.compile(r"[WRGY]{2,3}")
"""`Dir WRG light`: the letters of several colours."""
_RHYTHMS = frozenset({"flashing", "occulting", "isophase", "quick", "alternating"})
_NATURAL = frozenset({"UWTROC", "WRECKS", "OBSTRN", "LNDARE", "SBDARE"})
_WORDS = frozenset({"unknown", "plain"})
_OF_LIGHT = frozenset({"light", "light_words"})


def with_colour_apart(
    items: Sequence[Item], lights: Sequence[Light], s57: str, faults: list[Fault]
) -> tuple[Light, ...]:
    """The lights; the only one, of no stated colour, has that of the words beside it.

    Behind the light of a mark a colour in brackets, or alone, may be that of either, and is told.
    """
    light = lights[0] if len(lights) == 1 else None
    if light is None or light.colour_stated or light.sectors:
        return tuple(lights)
    if s57 != "LIGHTS":
        faults += [_fault(items[at]) for at in range(1, len(items)) if _may_be_of_light(items, at)]
        return tuple(lights)
    told = [(at, colour) for at in range(len(items)) if (colour := _colour(items, at)) is not None]
    if len(told) > 1:
        faults.append(_fault(items[told[1][0]]))
    return (coloured(light, told[0][1]),) if len(told) == 1 else tuple(lights)


def untold_lights(items: Sequence[Item], s57: str) -> Iterator[Fault]:
    """A fault of the words that tell colour or rhythm of a light which no character is read of.

    `red light` has a colour and no rhythm, `light-buoy, flashing` a rhythm that stands alone.
    """
    is_light = s57 == "LIGHTS"
    is_lit = is_light or any("light" in item.text.lower() for item in items if item.role == "kind")
    told = [
        item
        for at, item in enumerate(items)
        if (is_lit and item.role in _WORDS and item.text.lower() in _RHYTHMS)
        or (is_light and (_colour(items, at) is not None or item.text.lower() == "fixed"))
        or (is_light and item.role == "unknown" and _SEVERAL.fullmatch(item.text) is not None)
    ]
    if told:
        yield _fault(told[0])._replace(code="light-character-missing")
    for colour, light in () if is_light else pairwise(items):
        is_light_of = light.role == "kind" and light.value in CARRIED_LIGHTS
        is_on_ground = s57 in _NATURAL and colour.role == "kind"
        is_told = colour.role == "colour" or colour.text in _LETTERS or is_on_ground
        if is_light_of and is_told:
            # `mast (R Lt)`: the record has no place for the colour alone, nor a rock for a light.
            written = {"written": f"{colour.text} {light.text}"}
            yield Fault("light-character-missing", colour.start, light.end, written)


def with_colour_remarked(light: Light) -> Light:
    """A light whose colour stands in brackets behind its character: `Fl.4s (red)`."""
    found = [one for one in light.remarks if one.lower() in _COLOURS]
    if light.colour_stated or light.sectors or len(found) != 1:
        return light
    remarks = [one for one in light.remarks if one not in found]
    return coloured(light.model_copy(update={"remarks": remarks}), _COLOURS[found[0].lower()])


def coloured(light: Light, colour: LightColour) -> Light:
    """A light of no stated colour, read as white, with that colour."""
    reach = light.range_by_colour
    ranges = {colour: reach["W"]} if "W" in reach else reach
    update = {"colours": [colour], "colour_stated": True, "range_by_colour": ranges}
    return light.model_copy(update=update)


def _colour(items: Sequence[Item], at: int) -> LightColour | None:
    """The colour that an item tells of the light, and of no other thing."""
    item = items[at]
    if item.role == "colour":
        behind = items[at + 1] if at + 1 < len(items) else None
        is_of_thing = behind is not None and behind.role in ("pattern", "shape", "part")
        is_of_thing |= behind is not None and _is_no_light(behind)
        is_of_thing |= any(_is_no_light(one) for one in items[:at])
        return None if is_of_thing else _COLOURS.get(str(item.value))
    beside = [items[near].role for near in (at - 1, at + 1) if 0 <= near < len(items)]
    if item.role == "unknown" and not _OF_LIGHT.isdisjoint(beside):
        return _LETTERS.get(item.text)
    return None


def _is_no_light(item: Item) -> bool:
    return item.role == "kind" and kinds()[item.value].s57 != "LIGHTS"


def _may_be_of_light(items: Sequence[Item], at: int) -> bool:
    """Whether a colour in brackets stands right behind the light of a mark, or alone there."""
    item, before = items[at], items[at - 1]
    # `Fl.3s yellow`: of several colours, or before a thing, it is paint.
    is_paint = any(one.role in ("colour", "pattern", "kind") for one in items[at + 1 : at + 3])
    is_alone = item.start - before.end == 1 and not is_paint
    is_beside = (item.bracketed or is_alone) and before.role in _OF_LIGHT
    return is_beside and item.role == "colour" and item.value != "white"


def _fault(item: Item) -> Fault:
    return Fault("light-colour-apart", item.start, item.end, {"written": item.text})
