"""Areas whose limit crosses itself, or just fails to close."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from statistics import median

from noticeparse.checks.outliers import distance_nm
from noticeparse.checks.trouble import Trouble, actions_of
from noticeparse.readers.places import is_connector
from noticeparse.records.geometry import Geometry
from noticeparse.records.notice import Notice, Remark
from noticeparse.records.position import Position

_LARGEST = 300
"""Corners; a larger ring is not looked through, for the time grows with the square."""
_NEARLY = 0.05
"""Of the usual side: a last corner so near to the first is meant to be the first."""

_Point = tuple[float, float]


def check_rings(notice: Notice) -> Iterator[Trouble]:
    """A limit that crosses itself, or ends beside its first corner."""
    for placed in actions_of(notice):
        geometry = placed.action.geometry
        if geometry.shape != "area" or not 4 <= len(geometry.positions) <= _LARGEST:
            continue
        crossing = _crossing(geometry.positions)
        if crossing is not None:
            values = {"first": crossing[0].written, "second": crossing[1].written}
            yield Trouble(
                "area-crosses-itself",
                crossing[1].span, [placed.pointer], values, placed.chart,
            )  # fmt: skip
        elif _just_fails_to_close(geometry):
            last = geometry.positions[-1]
            values = {"written": last.written}
            yield Trouble("ring-not-closed", last.span, [placed.pointer], values, placed.chart)


def check_told_rings(notice: Notice) -> Iterator[Trouble]:
    """A limit in the words of a warning or remark that crosses itself."""
    for index, remark in enumerate(notice.remarks):
        corners = _bounding(remark)
        crossing = _crossing(corners) if 4 <= len(corners) <= _LARGEST else None
        if crossing is not None:
            values = {"first": crossing[0].written, "second": crossing[1].written}
            yield Trouble("area-crosses-itself", crossing[1].span, [f"/remarks/{index}"], values)


def _bounding(remark: Remark) -> list[Position]:
    """The positions that follow each other behind the only `bounded by` of a remark."""
    parts = remark.text.lower().split("bounded by")
    if len(parts) != 2:
        return []
    rest, found = parts[1], []
    for position in remark.positions:
        link, mark, behind = rest.partition(position.written.lower())
        if mark and is_connector(link.strip(" :;,") or "and"):
            found.append(position)
            rest = behind
        elif found:
            break
    return found


def _crossing(corners: Sequence[Position]) -> tuple[Position, Position] | None:
    """The corners at which two sides begin that cross each other."""
    points = _points(corners)
    count = len(points)
    for first in range(count):
        for second in range(first + 2, count):
            if first == 0 and second == count - 1:
                continue
            a, b = points[first], points[(first + 1) % count]
            c, d = points[second], points[(second + 1) % count]
            if _cross(a, b, c, d):
                return corners[first], corners[second]
    return None


def _points(corners: Sequence[Position]) -> list[_Point]:
    """Corners as plane points; longitudes count from the first, over 180 degrees too."""
    start = corners[0].lon
    return [((p.lon - start + 180) % 360 - 180, p.lat) for p in corners]


def _cross(a: _Point, b: _Point, c: _Point, d: _Point) -> bool:
    """Whether two sides cross within both of them; touching is no crossing."""
    return _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0


def _turn(a: _Point, b: _Point, c: _Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _just_fails_to_close(geometry: Geometry) -> bool:
    places = [(position.lat, position.lon) for position in geometry.positions]
    sides = [distance_nm(*pair) for pair in pairwise(places)]
    gap = distance_nm(places[-1], places[0])
    return 0 < gap < _NEARLY * median(sides)
