"""Depths, clearances and the other values of a feature in words that cannot be taken wrongly."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any, NamedTuple

from noticeparse.records.action import Change
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Ais, Companion, Feature, Racon, Sound
from noticeparse.records.light import Light, Sector
from noticeparse.worksheet.light_words import amount, light_words, sector_words
from noticeparse.writers.wording import change_words, plain

_DEPTHS = {
    "sounding": "depth below chart datum",
    "swept": "swept: nothing stands higher than this depth",
    "dredged": "dredged to this depth",
    "contour": "depth contour",
    "least": "least depth over it, below chart datum",
}
_CLEARANCES = {
    "vertical": "vertical clearance",
    "horizontal": "horizontal clearance",
    "safe": "safe clearance",
    "open": "clearance, bridge open",
    "closed": "clearance, bridge closed",
}
_QUALITIES_TOLD_BY_KIND = {"least depth known", "no bottom found at value shown", "depth unknown"}
_ROLES = {"with": "with", "enclosed_by": "enclosed by", "on": "on"}
_METRES = (None, "m")


class Fact(NamedTuple):
    """One thing that is told of an action, and what it is."""

    label: str
    words: str


def depth_words(depth: Depth) -> str:
    """`8.6 metres: least depth over it, below chart datum`."""
    value = depth.value_m
    if value is None:
        return "depth unknown"
    if depth.kind == "no_bottom":
        words = f"no bottom found at {amount(value, 'metre')}: it is deeper than that"
    elif value < 0 or depth.kind == "drying":
        words = f"dries: uncovers to {amount(abs(value), 'metre')} above chart datum"
    else:
        words = f"{amount(value, 'metre')}: {_DEPTHS.get(depth.kind, 'depth')}"
    if depth.unit not in _METRES:
        words += f" (written {depth.written})"
    elif depth.unit is None:
        words += " (no unit is written; read as metres)"
    if depth.quality and depth.quality not in _QUALITIES_TOLD_BY_KIND:
        words += f"; {depth.quality}"
    return words


def clearance_words(clearance: Clearance) -> str:
    """`18.5 metres: vertical clearance`."""
    return f"{amount(clearance.value_m, 'metre')}: {_CLEARANCES[clearance.kind]}"


def feature_facts(feature: Feature) -> Iterator[Fact]:
    """What the words of a feature mean, one thing at a time."""
    if feature.legend is not None:
        yield Fact("Legend", f"“{feature.legend}”, letter for letter")
    for light in filter(None, [feature.light, *feature.more_lights]):
        yield Fact("Light", light_words(light))
    if feature.depth is not None:
        yield Fact("Depth", depth_words(feature.depth))
    if feature.clearance is not None:
        yield Fact("Clearance", clearance_words(feature.clearance))
    if feature.height_m is not None:
        yield Fact("Height", amount(feature.height_m, "metre"))
    yield from _mark_facts(feature)
    yield from _aid_facts(feature)
    if feature.status:
        yield Fact("Status", ", ".join(one.replace("_", " ") for one in feature.status))
    if feature.reported_year is not None:
        yield Fact("Reported", str(feature.reported_year))
    for companion in feature.companions:
        yield from _companion_facts(companion)


def _mark_facts(feature: Feature) -> Iterator[Fact]:
    if feature.colours:
        pattern = (feature.colour_pattern or "").replace("_", " ")
        order = " from the top down" if feature.colour_pattern == "horizontal_stripes" else ""
        words = ", ".join(feature.colours) + order
        yield Fact("Colours", f"{words}, {pattern}" if pattern else words)
    if feature.shape:
        yield Fact("Shape", feature.shape)
    if feature.topmark:
        yield Fact("Topmark", feature.topmark)


def _aid_facts(feature: Feature) -> Iterator[Fact]:
    if feature.sound:
        yield Fact("Fog signal", sound_words(feature.sound))
    if feature.racon:
        yield Fact("Racon", racon_words(feature.racon))
    if feature.ais:
        yield Fact("AIS", ais_words(feature.ais))


def _companion_facts(companion: Companion) -> Iterator[Fact]:
    role = _ROLES[companion.role]
    yield Fact("Goes with it", f"{role} {companion.feature.text}")
    for fact in feature_facts(companion.feature):
        yield Fact(fact.label, f"{fact.words} ({companion.feature.text})")


def sound_words(sound: Sound) -> str:
    """`horn, groups of 2, every 30 seconds`."""
    parts = [sound.kind]
    if sound.group:
        parts.append(f"groups of {' + '.join(map(str, sound.group))}")
    if sound.period_s is not None:
        parts.append(f"every {amount(sound.period_s, 'second')}")
    return ", ".join(parts)


def racon_words(racon: Racon) -> str:
    """`radar transponder beacon, Morse letter K`."""
    letter = f", Morse letter {racon.morse}" if racon.morse else ""
    return f"radar transponder beacon{letter}"


def ais_words(ais: Ais) -> str:
    """Whether there is a mark to be seen."""
    return "virtual: there is no mark to be seen" if ais.virtual else "carried by the mark"


def change_fact(change: Change) -> Fact:
    """`Change`, `light to Fl.5s: flashing white, every 5 seconds`."""
    words = change_words(change)
    spelled = value_words(change.property, change.new)
    if spelled and spelled not in words:
        words += f", that is: {spelled}"
    return Fact("Change", words)


_UNITS = {"_s": "second", "_m": "metre", "_nm": "nautical mile", "_deg": "degree"}


def value_words(name: str, value: Any) -> str:
    """The new value of a property in words, empty where the written form says it all."""
    if isinstance(value, Light):
        return light_words(value)
    if isinstance(value, Depth):
        return depth_words(value)
    if isinstance(value, Clearance):
        return clearance_words(value)
    if isinstance(value, Sound):
        return sound_words(value)
    if isinstance(value, Racon):
        return racon_words(value)
    if isinstance(value, Ais):
        return ais_words(value)
    if isinstance(value, list):
        return _list_words(name, value)
    unit = next((unit for ending, unit in _UNITS.items() if name.endswith(ending)), None)
    return amount(value, unit) if unit and isinstance(value, Decimal) else ""


def _list_words(name: str, values: list[Any]) -> str:
    if all(isinstance(one, Sector) for one in values):
        return ", ".join(map(sector_words, values))
    if len(values) == 1:
        return value_words(name, values[0])
    if name.endswith("_nm") and values:
        return f"{', '.join(plain(one) for one in values)} nautical miles"
    return ""
