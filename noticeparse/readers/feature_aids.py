"""The lights, fog signal, racon and AIS that the words of a feature tell of, as one structure.

A light and its sectors are one description, also where words part them that say where it stands.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.feature_clashes import stated_twice
from noticeparse.readers.light_context import is_denied, letter_ahead
from noticeparse.readers.lights import LightReading, read_aids, read_light
from noticeparse.readers.named_sounds import named_sounds, sounds_of
from noticeparse.readers.words import Item
from noticeparse.records.feature import Ais, Racon, Sound
from noticeparse.records.light import Light

_LIGHT_ROLES = frozenset(("light", "light_words", "sectors", "sound", "racon", "ais"))
_BETWEEN = frozenset(("with", "sectors", "sector", "showing", "shown", "and", "&"))


class Aids(NamedTuple):
    """Lights, fog signal, racon and AIS of one structure."""

    lights: tuple[Light, ...] = ()
    sound: Sound | None = None
    racon: Racon | None = None
    ais: Ais | None = None
    has_signal: bool = False
    """Whether a fog signal stands on it, also one of which nothing else is told."""


def read_structure(
    text: str, items: Sequence[Item], faults: list[Fault], *, head_end: int = 0
) -> Aids:
    """The lights and aids; a light and its sectors are read as one description."""
    found = [one for one in items if one.role in _LIGHT_ROLES and not is_denied(text, one)]
    readings: list[LightReading] = []
    at = 0
    while at < len(found):
        last = at
        while last + 1 < len(found) and _is_joined(text[found[last].end : found[last + 1].start]):
            last += 1
        start, end = found[at].start, found[last].end
        description = text[start:end]
        if last + 1 < len(found) and _is_parted(text, found[last], found[last + 1]):
            # `light, Fl(2)WR.10s, on the mole, with sectors W …`: offsets stay as they are.
            last += 1
            gap = " " * (found[last].start - end)
            description += gap + text[found[last].start : found[last].end]
            end = found[last].end
        letter = letter_ahead(text, start, end, head_end)
        faults += [letter] if letter is not None else []
        roles = {item.role for item in found[at : last + 1]}
        is_light = bool(roles & {"light", "light_words", "sectors"})
        reading = read_light(description) if is_light else read_aids(description)
        faults += [one.shifted(start) for one in reading.faults]
        if any(_differs(reading, other) for other in readings):
            faults.append(stated_twice(found[at]))
        readings.append(reading)
        at = last + 1
    named = named_sounds(items, head_end)
    told = sounds_of(named, [one.sound for one in readings if one.sound], faults)
    return Aids(
        tuple(light for reading in readings for light in reading.lights),
        told[0] if told else None,
        next((reading.racon for reading in readings if reading.racon), None),
        next((reading.ais for reading in readings if reading.ais), None),
        bool(told or named),
    )


def _differs(reading: LightReading, other: LightReading) -> bool:
    """Whether both hold a sound, a racon or AIS, and not the same."""
    pairs = (
        (reading.sound, other.sound),
        (reading.racon, other.racon),
        (reading.ais, other.ais),
    )
    return any(one is not None and two is not None and one != two for one, two in pairs)


def _is_joined(between: str) -> bool:
    return len(between) < 60 and all(
        word.lower() in _BETWEEN for word in between.replace(",", " ").replace(";", " ").split()
    )


_WHERE = re.compile(r"[,;]?\s{1,40}(?:on|at|in|near|off)\s[^0-9]{1,80}")


def _is_parted(text: str, light: Item, sectors: Item) -> bool:
    """Whether words that say where a light stands part it from its sectors."""
    if light.role != "light" or sectors.role != "sectors":
        return False
    return _WHERE.fullmatch(text, light.end, sectors.start) is not None
