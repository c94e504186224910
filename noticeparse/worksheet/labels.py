"""Finds room for the labels of a plot: beside their places, on no other label and no place."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from math import ceil, cos, floor, hypot, pi, sin
from typing import NamedTuple

from noticeparse.worksheet.drawing import Box, Point
from noticeparse.worksheet.symbols import HAIR_MM

_REACHES_MM = (7.0, 11.0, 16.0, 23.0, 32.0, 44.0)
_TURNS = [pi / 4 + number * pi / 8 for number in (0, 2, -2, 4, 6, -4, 1, -1, 3, -3, 5, -5)]
_GAP_MM = 0.8


_CELL_MM = 20.0
_SAMPLE_MM, _MOST_SAMPLES = 4.0, 400


class Spot(NamedTuple):
    """Where a label stands, and where the line from its place ends at it."""

    box: Box
    end: Point


class _Taken:
    """Boxes that are taken, to be asked for what lies near."""

    def __init__(self) -> None:
        self._cells: dict[tuple[int, int], set[Box]] = defaultdict(set)

    def add(self, box: Box) -> None:
        for cell in _cells(box):
            self._cells[cell].add(box)

    def meets(self, box: Box) -> bool:
        return any(
            _meet(box, other) for cell in _cells(box) for other in self._cells.get(cell, ())
        )


def _cells(box: Box) -> Iterator[tuple[int, int]]:
    columns = _span(box.left, box.width)
    for row in _span(box.bottom, box.height):
        yield from ((column, row) for column in columns)


def _span(start: float, length: float) -> range:
    """The cells that a stretch and the gap before it lie in."""
    return range(floor((start - _GAP_MM) / _CELL_MM), floor((start + length) / _CELL_MM) + 1)


def find_spots(
    wanted: Sequence[tuple[Point, float]],
    height: float,
    *,
    places: Sequence[Point],
    paths: Sequence[Sequence[Point]],
    within: Box,
) -> list[Spot]:
    """A spot for each place and width of a label: on no place, and on no line if there is room."""
    taken = _Taken()
    for place in places:
        taken.add(_round(place))
    for path in paths:
        for x, y in _samples(path):
            taken.add(Box(x, y, 0, 0))
    spots = []
    for place, width in wanted:
        spot = _free(place, width, height, taken=taken, within=within)
        taken.add(spot.box)
        spots.append(spot)
    return spots


def _samples(path: Sequence[Point]) -> Iterator[Point]:
    """Points along a line, so near to each other that no label fits between."""
    left = _MOST_SAMPLES
    for start, end in zip(path, [*path[1:], path[0]], strict=True):
        steps = min(left, ceil(hypot(end[0] - start[0], end[1] - start[1]) / _SAMPLE_MM))
        left -= steps
        for number in range(steps):
            share = number / steps
            x = start[0] + share * (end[0] - start[0])
            yield x, start[1] + share * (end[1] - start[1])


def _round(place: Point) -> Box:
    x, y = place
    return Box(x - HAIR_MM, y - HAIR_MM, 2 * HAIR_MM, 2 * HAIR_MM)


def _free(place: Point, width: float, height: float, *, taken: _Taken, within: Box) -> Spot:
    last: Spot | None = None
    for reach in _REACHES_MM:
        for turn in _TURNS:
            spot = _spot(place, width, height, reach=reach, turn=turn)
            if not _holds(within, spot.box):
                continue
            if not taken.meets(spot.box):
                return spot
            last = last or spot
    return last or _spot(place, width, height, reach=_REACHES_MM[0], turn=_TURNS[0])


def _spot(place: Point, width: float, height: float, *, reach: float, turn: float) -> Spot:
    dx, dy = cos(turn), sin(turn)
    x, y = place[0] + reach * dx, place[1] + reach * dy
    left = x if dx > 0.1 else x - width if dx < -0.1 else x - width / 2
    bottom = y if dy > 0.1 else y - height if dy < -0.1 else y - height / 2
    box = Box(left, bottom, width, height)
    end = (min(max(place[0], left), left + width), min(max(place[1], bottom), bottom + height))
    return Spot(box, end)


def _meet(one: Box, other: Box) -> bool:
    return (
        one.left - _GAP_MM < other.left + other.width
        and other.left < one.left + one.width + _GAP_MM
        and one.bottom - _GAP_MM < other.bottom + other.height
        and other.bottom < one.bottom + one.height + _GAP_MM
    )


def _holds(within: Box, box: Box) -> bool:
    return (
        box.left >= within.left
        and box.bottom >= within.bottom
        and box.left + box.width <= within.left + within.width
        and box.bottom + box.height <= within.bottom + within.height
    )


def shortened(start: Point, end: Point, by_mm: float) -> list[Point]:
    """The line from a place to its label, begun outside the ring; empty where none is left."""
    length = hypot(end[0] - start[0], end[1] - start[1])
    if length <= by_mm:
        return []
    share = by_mm / length
    begin = (start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share)
    return [begin, end]
