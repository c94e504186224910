"""The character of a light in words: `flashing white, groups of 3, every 15 seconds`.

The classes are those of INT 1, section P; what a group counts is told by the class: eclipses of an
occulting light, flashes of the others.  Nothing is added to what the record says.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from noticeparse.records.light import Light, LightColour, Rhythm, Sector
from noticeparse.writers.wording import bearing, plain

COLOURS: dict[LightColour, str] = {
    "W": "white",
    "R": "red",
    "G": "green",
    "Bu": "blue",
    "Y": "yellow",
    "Am": "amber",
    "Vi": "violet",
    "Or": "orange",
}

_CLASSES: dict[Rhythm, str] = {
    "F": "fixed",
    "Fl": "flashing",
    "LFl": "long-flashing",
    "Q": "quick-flashing",
    "VQ": "very quick-flashing",
    "UQ": "ultra quick-flashing",
    "IQ": "interrupted quick-flashing",
    "IVQ": "interrupted very quick-flashing",
    "IUQ": "interrupted ultra quick-flashing",
    "Oc": "occulting",
    "Iso": "isophase",
    "Mo": "Morse code",
    "FFl": "fixed and flashing",
    "FLFl": "fixed and long-flashing",
    "OcFl": "occulting and flashing",
    "Fl+LFl": "flashing",
    "Q+LFl": "quick-flashing",
    "VQ+LFl": "very quick-flashing",
    "UQ+LFl": "ultra quick-flashing",
    "Al": "",
}
_CONTINUOUS = frozenset({"Q", "VQ", "UQ"})
_ECLIPSES = frozenset({"Oc", "OcFl"})
_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")

_REMARKS = {
    "occas": "occasional",
    "priv": "private",
    "exting": "extinguished",
    "temp": "temporary",
    "sync": "synchronized",
    "intens": "intensified",
    "unintens": "unintensified",
    "illum": "illuminated",
    "u": "unwatched",
    "obscd": "obscured",
    "fog": "shown in fog",
    "in fog": "shown in fog",
    "day": "shown by day",
    "by day": "shown by day",
    "24h": "shown all day and night",
}


def light_words(light: Light) -> str:
    """All that the record of a light says: the parts of its character with semicolons between.

    Seconds, metres and nautical miles are spelled out, since `m` and `M` are easily confused.
    """
    return "; ".join(part for part in _parts(light) if part)


def _parts(light: Light) -> Iterator[str]:
    yield character_words(light)
    if light.elevation_m is not None:
        yield f"elevation {amount(light.elevation_m, 'metre')}"
    yield _ranges(light)
    if light.sectors:
        sectors = ", ".join(map(sector_words, light.sectors))
        yield f"sectors, bearings true from seaward, clockwise: {sectors}"
    yield ", ".join(_REMARKS.get(one.casefold().rstrip("."), one) for one in light.remarks)


def character_words(light: Light) -> str:
    """What is seen: kind of light, class, colours, groups, period."""
    parts = [_seen(light)]
    parts += _groups(light)
    if light.period_s is not None:
        parts.append(f"every {amount(light.period_s, 'second')}")
    if light.vertical:
        parts.append("one above the other")
    if light.horizontal:
        parts.append("side by side")
    return ", ".join(parts)


def _seen(light: Light) -> str:
    is_continuous = light.rhythm in _CONTINUOUS and not light.groups
    words = [
        _count(light.count) if light.count > 1 else "",
        "aeronautical" if light.aero else "",
        "leading" if light.leading else "",
        "directional" if light.directional else "",
        "alternating" if light.alternating or light.rhythm == "Al" else "",
        "continuous" if is_continuous else "",
        _CLASSES[light.rhythm],
        _colours(light),
    ]
    if light.count > 1:
        words.append("lights")
    return " ".join(word for word in words if word)


def _count(count: int) -> str:
    return _NUMBERS[count] if count < len(_NUMBERS) else str(count)


def _colours(light: Light) -> str:
    colours = [COLOURS[one] for one in light.colours]
    if not light.colour_stated:
        return f"{' '.join(colours)} (no colour written)"
    listed = _listed(colours)
    # Colours written together show over different waters, unless they alternate (INT 1, P40).
    is_by_sector = len(colours) > 1 and not (light.alternating or light.rhythm == "Al")
    return f"{listed} by sectors" if is_by_sector else listed


def _listed(words: list[str]) -> str:
    *most, last = words or [""]
    return f"{', '.join(most)} and {last}" if most else last


def _groups(light: Light) -> Iterator[str]:
    if light.morse:
        yield f"the {'letter' if len(light.morse) == 1 else 'letters'} {light.morse}"
    what = "eclipse" if light.rhythm in _ECLIPSES else "flash"
    groups = light.groups
    if light.rhythm.endswith("+LFl"):
        first = f"{groups[0]} {_plural(what, groups[0])}" if groups else _plural(what, 2)
        yield f"{first} followed by one long flash"
    elif len(groups) == 1:
        yield f"groups of {groups[0]}" + ("" if what == "flash" else " eclipses")
    elif groups:
        yield f"composite groups of {' + '.join(map(str, groups))} {_plural(what, 2)}"


def _plural(word: str, count: Decimal | int) -> str:
    if count == 1:
        return word
    return f"{word}es" if word.endswith("sh") else f"{word}s"


def amount(figure: Decimal, unit: str) -> str:
    """`1 metre`, `8.6 metres`."""
    return f"{plain(figure)} {_plural(unit, figure)}"


def _ranges(light: Light) -> str:
    ranges = light.ranges_nm
    if not ranges:
        return ""
    if len(ranges) == 1:
        return f"range {amount(ranges[0], 'nautical mile')}"
    by_colour = light.range_by_colour
    if not by_colour:
        return f"ranges {_listed([plain(one) for one in ranges])} nautical miles"
    told, is_open = [], False
    for colour in light.colours:
        own = by_colour.get(colour)
        is_open = is_open or own is None
        told.append(f"{COLOURS[colour]} {'not stated' if own is None else plain(own)}")
    ends = f" (from {plain(max(ranges))} to {plain(min(ranges))})" if is_open else ""
    return f"range {', '.join(told)} nautical miles{ends}"


def sector_words(sector: Sector) -> str:
    """`red 195° to 268°, 9 nautical miles`."""
    words = " ".join(
        part
        for part in (COLOURS[sector.colour] if sector.colour else "", sector.visibility)
        if part
    )
    limits = f"{bearing(sector.from_deg)} to {bearing(sector.to_deg)}"
    reach = "" if sector.range_nm is None else f" {amount(sector.range_nm, 'nautical mile')}"
    return f"{words} {limits}{reach}".strip()
