"""Positions: two coordinates joined, judged as a pair, and made into a record.

In come coordinates in the order written; out come latitude and longitude, exact, with the digits
written.  What cannot be read for certain is refused with a fault, never guessed.
"""

from __future__ import annotations

import re
from functools import cache
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.coordinates import (
    Coordinate,
    follows_lost_figure,
    follows_split_figure,
    read_coordinate,
)
from noticeparse.records.position import PositionQuality

_QUALITIES: dict[str, PositionQuality] = {
    "pa": "approximate", "position approximate": "approximate", "approximate": "approximate",
    "approx": "approximate", "pd": "doubtful", "position doubtful": "doubtful",
    "rep": "reported", "reported": "reported",
}  # fmt: skip
"""Quality of a position as written behind it (INT 1, section B)."""

_METRES = (1852 * 60, 1852, 1852 / 60)
_ISO_PART = re.compile(r"[+-][0-9]+(?:[.,][0-9]+)?")
_PLAIN_DECIMAL = re.compile(r"[+-]?[0-9]+\.[0-9]+")


_MARKS = frozenset("°'\"-+/*:\ufffd")
_ONE_FIGURE = re.compile(r"[^0-9]{0,12}[0-9](?![0-9])")
_THREE_FIELDS = re.compile(r"[0-9] {1,2}[0-9]{2} {1,2}[0-9]{2}(?![0-9])")


def doubt_of_form(written: str, iso6709: str) -> str | None:
    """The code of what makes a readable position doubtful unless the text writes so throughout.

    `23°45'.67W` may have lost its first figure; `47.12S` may be 47 degrees 12 minutes, and
    `47 12 34S` 12.34 minutes: a mark or a point is easily lost.  `8°3.5'E` has no nought before
    its minutes either, and has lost nothing.
    """
    lat, lon = _ISO_PART.findall(iso6709)[:2]
    degrees = int(lon[1:4])
    if 0 < degrees < 100 and f"{degrees:03d}" not in written:
        # `5-02.50N 8-03.00E` has no nought in front of either.
        hyphen = "|-" if degrees < 10 and _ONE_FIGURE.match(written) is None else ""
        marked = rf"(?<![0-9.,'°]){degrees} ?(?:°|deg[a-z]*\.?| {hyphen}) ?[0-5][0-9](?![0-9])"
        if re.search(marked, written) is not None:
            return "position-longitude-digits"
    whole, _, decimals = lat[1:].partition(".")
    if _MARKS.isdisjoint(written) and "deg" not in written.lower():
        is_short = len(whole) == 2 and 0 < len(decimals) <= 2
        if is_short or (not decimals and _THREE_FIELDS.search(written)):
            return "position-form-unclear"
    return None


def faults_of_form(written: str, iso6709: str, start: int) -> list[Fault]:
    """The fault of a position in a doubtful form, standing alone at an offset."""
    code = doubt_of_form(written, iso6709)
    return [Fault(code, start, start + len(written), {"written": written})] if code else []


def is_doubtful_in(text: str, start: int, written: str, iso6709: str) -> bool:
    """Whether a position in running text has a doubtful form, or lost a figure to a blank."""
    return follows_split_figure(text, start) or doubt_of_form(written, iso6709) is not None


class Point(NamedTuple):
    """A position as read, not yet in its place in the text: offsets count in the repaired text."""

    lat: float
    lon: float
    iso6709: str
    resolution_m: float
    start: int
    end: int
    last: tuple[Coordinate, Coordinate]
    """Latitude and longitude, for a following point that shares their degrees."""
    told_from: int | None = None
    """Where the position before stands that tells what this one leaves out."""


class PointReading(NamedTuple):
    """A point, or None with the faults that forbid one."""

    point: Point | None
    faults: tuple[Fault, ...]
    start: int
    end: int
    quality: PositionQuality | None = None


def quality_mark(words: str) -> PositionQuality | None:
    """The quality that a mark behind a position states: `(PA)`, `PD`, `(rep)`."""
    return _QUALITIES.get(words.lower().strip(" ().,"))


def join_coordinates(
    first: Coordinate, second: Coordinate, written: str, before: Point | None
) -> PointReading:
    """Two coordinates as one position; `before` is the point whose degrees may be shared."""
    start, end = first.start, second.start + len(second.text)
    faults = list(first.faults + second.faults)
    if not (first.is_readable and second.is_readable):
        return PointReading(None, tuple(faults), start, end)
    lat, lon = first, second
    if first.axis == second.axis:
        values = {"written": written, "axis": str(first.axis)}
        faults.append(Fault("position-hemisphere-conflict", start, end, values))
        return PointReading(None, tuple(faults), start, end)
    if first.axis == "longitude":
        lat, lon = second, first
        faults.append(Fault("position-exchanged", start, end, {"written": written}))
    if lat.shares_degrees or lon.shares_degrees:
        values = {"written": written}
        if before is None:
            faults.append(Fault("position-shared-degrees-unknown", start, end, values))
            return PointReading(None, tuple(faults), start, end)
        if _leaves_degree(lat, lon, before):
            faults.append(Fault("position-shared-degrees-doubtful", start, end, values))
        lat, lon = _sharing(lat, before.last[0]), _sharing(lon, before.last[1])
    else:
        before = None
    if (lat.unit, len(lat.decimals)) != (lon.unit, len(lon.decimals)):
        faults.append(Fault("position-precision-differs", start, end, {"written": written}))
    point = _point(lat, lon, start, end)._replace(told_from=_origin(before))
    return PointReading(point, tuple(faults), start, end)


def _origin(before: Point | None) -> int | None:
    """Where what a point before tells is written."""
    if before is None:
        return None
    return before.start if before.told_from is None else before.told_from


def _leaves_degree(lat: Coordinate, lon: Coordinate, before: Point) -> bool:
    """Whether minutes without degrees lie nearer in another degree than the one they share."""
    pairs = zip((lat, lon), before.last, strict=True)
    return any(one.shares_degrees and _is_far(one, last) for one, last in pairs)


def _is_far(one: Coordinate, last: Coordinate) -> bool:
    return len(last.fields) > 1 and abs(one.fields[0] - last.fields[1]) > 30


def _sharing(one: Coordinate, before: Coordinate) -> Coordinate:
    if one.shares_degrees:
        return one._replace(fields=(before.fields[0], *one.fields))
    return one


def share_latitude(lon: Coordinate, before: Point) -> PointReading:
    """A longitude alone in a list: its latitude is that of the point before, and that is told."""
    reading = _with_other(lon, before, lon.start)
    fault = Fault("position-latitude-shared", lon.start, reading.end, {"written": lon.text})
    return reading._replace(faults=(*reading.faults, fault))


def share_other(one: Coordinate, before: Point, start: int) -> PointReading:
    """A coordinate on the parallel or meridian of the point before; words begin at `start`."""
    reading = _with_other(one, before, start)
    last = before.last[0 if one.axis == "latitude" else 1]
    if one.shares_degrees and _is_far(one, last):
        fault = Fault(
            "position-shared-degrees-doubtful", start, reading.end, {"written": one.text}
        )
        reading = reading._replace(faults=(*reading.faults, fault))
    return reading


def degrees_from(one: Coordinate, before: Point) -> Point:
    """The point before, with the degrees of a coordinate that was written since."""
    lat, lon = before.last
    if one.axis == "latitude":
        return before._replace(last=(_sharing(one, lat), lon))
    return before._replace(last=(lat, _sharing(one, lon)))


def _with_other(one: Coordinate, before: Point, start: int) -> PointReading:
    """The point of a coordinate and the other one of the point before."""
    lat, lon = degrees_from(one, before).last
    end = one.start + len(one.text)
    point = _point(lat, lon, start, end)._replace(told_from=_origin(before))
    return PointReading(point, one.faults, start, end)


def _point(lat: Coordinate, lon: Coordinate, start: int, end: int) -> Point:
    lat_value, lat_sign = _signed(lat)
    lon_value, lon_sign = _signed(lon)
    if lon_value == 180.0:
        # ISO 6709 writes the 180th meridian with a minus sign.
        lon_value, lon_sign = -180.0, "-"
    iso = f"{lat_sign}{lat.digits()}{lon_sign}{lon.digits()}/"
    resolution = max(_last_digit_m(lat), _last_digit_m(lon))
    return Point(lat_value, lon_value, iso, two_figures(resolution / 2), start, end, (lat, lon))


def _last_digit_m(one: Coordinate) -> float:
    """What one unit of the last digit amounts to along a meridian."""
    return _METRES[one.unit] / float(10 ** len(one.decimals))


def _signed(one: Coordinate) -> tuple[float, str]:
    numerator, denominator = one.ratio()
    # Integer division gives the float nearest to the exact value.
    value = numerator / denominator
    if one.sign < 0 and value:
        return -value, "-"
    return value, "+"


@cache
def two_figures(metres: float) -> float:
    """A length to two significant figures."""
    return float(f"{metres:.2g}")


def read_signed_in(text: str, start: int, end: int) -> PointReading:
    """The pair with signs at a stretch of `text`, refused where its first figure may be lost."""
    if follows_lost_figure(text, start):
        fault = Fault("position-unreadable", start, end, {"written": text[start:end]})
        return PointReading(None, (fault,), start, end)
    return read_signed(text[start:end], start)


def read_signed(text: str, start: int) -> PointReading:
    """A pair with signs: `-47.20567, -123.76117` or the ISO 6709 form `-4712.34-12345.67/`."""
    end = start + len(text)
    parts = _ISO_PART.findall(text) if text.endswith("/") else _PLAIN_DECIMAL.findall(text)
    if len(parts) < 2:
        fault = Fault("position-unreadable", start, end, {"written": text})
        return PointReading(None, (fault,), start, end)
    halves = []
    for part, letters in zip(parts, ("NS", "EW"), strict=False):
        letter = letters[1] if part.startswith("-") else letters[0]
        digits = part.lstrip("+-").replace(",", ".")
        halves.append(read_coordinate("COORDINATE", digits + letter, start))
    faults = tuple(
        fault._replace(start=start, end=end, values={**fault.values, "written": text})
        for half in halves
        for fault in half.faults
    )
    if not all(half.is_readable for half in halves):
        return PointReading(None, faults, start, end)
    reading = join_coordinates(halves[0], halves[1], text, None)
    point = reading.point
    if point is not None:
        point = point._replace(start=start, end=end)
    own = tuple(f._replace(start=start, end=end) for f in reading.faults)
    return PointReading(point, own, start, end)
