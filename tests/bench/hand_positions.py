"""Hand-written reading of positions for the bench: one pattern, integers, no grammar."""

from __future__ import annotations

import re
from typing import Any, NamedTuple

_HALF = (
    r"(?:L(?:at|ong)\.? )?([NSEW]? ?)(\d{2,3})"
    r"(?:\.(\d{4,5})°?|(?:°|-| deg(?:rees)?|) ?(\d\d)"
    r"(?:(?:' ?[.]|[.,])(\d+)|(?:'|-| min) ?(\d\d)(?:\.(\d+))?)?(?:'|\"| min(?:utes)?| sec)?)"
    r" ?([NSEW]|South|West)?\.?"
)
_PAIR = re.compile(_HALF + "[,;/ ]+" + _HALF)
_SIGNED = re.compile(r"-(\d{2})\.(\d+), -(\d{3})\.(\d+)")
_ISO = re.compile(r"-(\d+)\.(\d+)-(\d+)\.(\d+)(?:\+[\d.]+CRS\w+)?/")
_SHARED = re.compile(r"(\d\d)(?:' ?)?\.(\d+)'? ?([SW])\.?")
_METRES = (1852 * 60, 1852, 1852 / 60)
_STEPS: dict[tuple[int, int], int] = {
    (unit, places): 60**unit * 10**places for unit in range(3) for places in range(7)
}
_RESOLUTION = {
    (unit, places): float(f"{_METRES[unit] / 10**places / 2:.2g}")
    for unit in range(3)
    for places in range(7)
}

Half = tuple[str, str, str, str, int]
"""Degrees, minutes, seconds, decimals as written, and the unit of the last of them."""


class Place(NamedTuple):
    """A position: its record as plain values, and its halves for one that shares their degrees."""

    record: dict[str, Any]
    lat: Half
    lon: Half


def _value(half: Half) -> float:
    degrees, minutes, seconds, decimals, unit = half
    whole = int(degrees)
    if unit:
        whole = whole * 60 + int(minutes)
        if unit == 2:
            whole = whole * 60 + int(seconds)
    steps = _STEPS[unit, len(decimals)]
    return int(f"{whole}{decimals}") / steps


def _iso(half: Half) -> str:
    degrees, minutes, seconds, decimals, _ = half
    digits = f"{degrees}{minutes}{seconds}"
    return f"{digits}.{decimals}" if decimals else digits


def read_place(
    words: str, written: str, start: int, row: int, column: int, before: Place | None
) -> Place | None:
    """The position that `words` are; `written` stands at `start`, in line `row`, at `column`."""
    halves = _halves(words, before)
    if halves is None:
        return None
    lat, lon = halves
    unit = lat[4]
    record = {
        "lat": -_value(lat),
        "lon": -_value(lon),
        "iso6709": f"-{_iso(lat)}-{_iso(lon)}/",
        "written": " ".join(written.split()) if "  " in written else written,
        "resolution_m": _RESOLUTION[unit, len(lat[3])],
        "label": None,
        "via": "stated",
        "quality": None,
        "span": {"start": start, "end": start + len(written), "line": row, "column": column},
    }
    return Place(record, lat, lon)


def _halves(words: str, before: Place | None) -> tuple[Half, Half] | None:
    match = _PAIR.fullmatch(words)
    if match is not None:
        groups = match.groups()
        return _half(groups[:8]), _half(groups[8:])
    match = _SIGNED.fullmatch(words)
    if match is not None:
        d1, f1, d2, f2 = match.groups()
        return (d1, "", "", f1, 0), (d2, "", "", f2, 0)
    match = _ISO.fullmatch(words)
    if match is not None:
        n1, f1, n2, f2 = match.groups()
        return _packed(n1, f1, 2), _packed(n2, f2, 3)
    return None if before is None else _shared(words, before)


def _half(groups: tuple[str | None, ...]) -> Half:
    _, degrees, degree_decimals, minutes, decimals, seconds, second_decimals, _ = groups
    assert degrees is not None
    if degree_decimals is not None:
        return degrees, "", "", degree_decimals, 0
    assert minutes is not None
    if seconds is not None:
        return degrees, minutes, seconds, second_decimals or "", 2
    return degrees, minutes, "", decimals or "", 1


def _packed(digits: str, decimals: str, width: int) -> Half:
    rest = digits[width:]
    return digits[:width], rest[:2], rest[2:], decimals, len(rest) // 2


def _shared(words: str, before: Place) -> tuple[Half, Half] | None:
    found = _SHARED.findall(words)
    if not found:
        return None
    minutes, decimals, _ = found[-1]
    lon = (before.lon[0], minutes, "", decimals, 1)
    if len(found) == 1:
        return before.lat, lon
    minutes, decimals, _ = found[0]
    return (before.lat[0], minutes, "", decimals, 1), lon
