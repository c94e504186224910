"""The frame of a plot with its graticule: meridians and parallels, labelled at the edges."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil, floor

from noticeparse.chart_math import Frame, place_mm, size_mm
from noticeparse.worksheet.drawing import Box, Item, Path, Pen, Words

# Of a degree.
_STEPS = [
    *(Fraction(minutes) / 60 for minutes in (
        Fraction(1, 100), Fraction(1, 50), Fraction(1, 20), Fraction(1, 10), Fraction(1, 5),
        Fraction(1, 2), 1, 2, 5, 10, 15, 20, 30,
    )),
    *(Fraction(degrees) for degrees in (1, 2, 5, 10, 15, 30)),
]  # fmt: skip
_LINE_MM, _TICK_MM = 45.0, 4.0
"""How near two lines, and two ticks, may come."""
_MOST = 400
_LINE = Pen(0.12, colour="#767676")
_TICK = Pen(0.15)
_EDGE = Pen(0.3)
_SIZE = 3.2


def graticule(frame: Frame, box: Box, shown: Box) -> tuple[list[Item], list[Item]]:
    """The lines of a frame that lies at `box`, and the edge of the part shown, with its labels."""
    lines: list[Item] = []
    edge: list[Item] = [Path(_corners(shown), _EDGE, is_closed=True)]
    for is_parallel in (True, False):
        step = _step(frame, is_parallel, _LINE_MM)
        for degrees in _multiples(frame, is_parallel, step):
            at = _place(frame, box, is_parallel, degrees)
            if _is_shown(shown, is_parallel, at):
                lines.append(Path(_across(shown, is_parallel, at), _LINE))
                edge += _labels(shown, is_parallel, at, angle(degrees, is_parallel=is_parallel))
        for degrees in _multiples(frame, is_parallel, _step(frame, is_parallel, _TICK_MM)):
            at = _place(frame, box, is_parallel, degrees)
            if _is_shown(shown, is_parallel, at):
                edge += _ticks(shown, is_parallel, at)
    return lines, edge


def _is_shown(shown: Box, is_parallel: bool, at: float) -> bool:
    first = shown.bottom if is_parallel else shown.left
    length = shown.height if is_parallel else shown.width
    return first - 1e-6 <= at <= first + length + 1e-6


def step_of(frame: Frame) -> tuple[Fraction, Fraction]:
    """Degrees between two parallels, and between two meridians."""
    return _step(frame, True, _LINE_MM), _step(frame, False, _LINE_MM)


def _step(frame: Frame, is_parallel: bool, least_mm: float) -> Fraction:
    width, height = size_mm(frame)
    # On a Mercator chart the parallels nearest to the equator stand closest.
    mm_per_degree = (
        height / (frame.north - frame.south) * _narrowest(frame)
        if is_parallel
        else width / frame.width_deg
    )
    return next((one for one in _STEPS if float(one) * mm_per_degree >= least_mm), _STEPS[-1])


def _narrowest(frame: Frame) -> float:
    """How much closer than on average parallels stand at the edge towards the equator."""
    south, north = frame.south, frame.north
    near = 0.0 if south < 0 < north else min(south, north, key=abs)
    part = (north - south) / 100
    first, last = (near, near + part) if near < (south + north) / 2 else (near - part, near)
    mm = place_mm(frame, last, frame.west)[1] - place_mm(frame, first, frame.west)[1]
    return mm / part / (size_mm(frame)[1] / (north - south))


def _multiples(frame: Frame, is_parallel: bool, step: Fraction) -> Iterator[Fraction]:
    """The multiples of a step within the frame; longitudes may count on over 180 degrees."""
    first = frame.south if is_parallel else frame.west
    last = frame.north if is_parallel else frame.west + frame.width_deg
    start, end = ceil(Fraction(str(first)) / step), floor(Fraction(str(last)) / step)
    for number in range(start, min(end, start + _MOST) + 1):
        yield number * step


def _place(frame: Frame, box: Box, is_parallel: bool, degrees: Fraction) -> float:
    if is_parallel:
        return box.bottom + place_mm(frame, float(degrees), frame.west)[1]
    share = (float(degrees) - frame.west) / frame.width_deg
    return box.left + box.width * share


def angle(degrees: Fraction, *, is_parallel: bool) -> str:
    """`47°12.5'S`, `180°`, `0°`; a whole degree without minutes."""
    if not is_parallel:
        degrees = (degrees + 180) % 360 - 180
    size = abs(degrees)
    whole, minutes = divmod(size * 60, 60)
    letters = "NS" if is_parallel else "EW"
    # Neither the equator nor the antimeridian has a hemisphere.
    letter = "" if size in (0, 180) else letters[degrees < 0]
    written = f"{int(whole)}°"
    if minutes:
        figure = f"{float(minutes):05.2f}".rstrip("0").rstrip(".")
        written += f"{figure}'"
    return written + letter


def _corners(box: Box) -> list[tuple[float, float]]:
    right, top = box.left + box.width, box.bottom + box.height
    return [(box.left, box.bottom), (right, box.bottom), (right, top), (box.left, top)]


def _across(box: Box, is_parallel: bool, at: float) -> list[tuple[float, float]]:
    if is_parallel:
        return [(box.left, at), (box.left + box.width, at)]
    return [(at, box.bottom), (at, box.bottom + box.height)]


def _ticks(box: Box, is_parallel: bool, at: float) -> Iterator[Item]:
    right, top = box.left + box.width, box.bottom + box.height
    if is_parallel:
        yield Path([(box.left - 1.5, at), (box.left, at)], _TICK)
        yield Path([(right, at), (right + 1.5, at)], _TICK)
    else:
        yield Path([(at, box.bottom - 1.5), (at, box.bottom)], _TICK)
        yield Path([(at, top), (at, top + 1.5)], _TICK)


def _labels(box: Box, is_parallel: bool, at: float, words: str) -> Iterator[Item]:
    right, top = box.left + box.width, box.bottom + box.height
    if is_parallel:
        yield Words((box.left - 2.2, at - 1.1), words, _SIZE, "end")
        yield Words((right + 2.2, at - 1.1), words, _SIZE, "start")
    else:
        yield Words((at, box.bottom - 5.2), words, _SIZE, "middle")
        yield Words((at, top + 2.6), words, _SIZE, "middle")
