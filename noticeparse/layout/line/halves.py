"""Halves of a position that a line end, a page foot or a column has parted."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.coordinates import Coordinate
from noticeparse.readers.positions import Point, PointReading, join_coordinates, share_latitude


def join_points(text: str, elements: Sequence[Element]) -> Iterator[Element]:
    """The elements with parted halves joined; a half left alone becomes an unreadable point."""
    half: Element | None = None
    waiting: list[Element] = []
    before: Point | None = None
    for element in elements:
        if element.kind == "half" and half is not None:
            point = join_halves(half, element, before)
            before = point.value.point or before
            yield point
            yield from waiting
            half, waiting = None, []
        elif element.kind == "half":
            half = element
        elif half is not None and _parts_halves(text, element):
            yield lone_half(text, half, before)
            yield from waiting
            yield element
            half, waiting = None, []
        elif half is not None:
            waiting.append(element)
        else:
            if element.kind == "point":
                before = element.value.point or before
            yield element
    if half is not None:
        yield lone_half(text, half, before)
        yield from waiting


def _parts_halves(text: str, element: Element) -> bool:
    """Whether what stands between two halves forbids to join them: long words, or any figure."""
    if element.kind not in ("words", "label"):
        return False
    words = text[element.start : element.end]
    return len(words) > 3 or any(char.isdigit() for char in words)


def with_halves_below(lines: Sequence[Line]) -> list[Line]:
    """The lines; a longitude alone on its line goes with the lettered latitude above it."""
    found: list[Line] = []
    for line in lines:
        above = found[-1] if found else None
        if above is not None and _goes_on(above, line):
            found[-1] = above._replace(elements=(*above.elements, *line.elements), end=line.end)
        else:
            found.append(line)
    return found


def _goes_on(above: Line, line: Line) -> bool:
    kinds = [element.kind for element in above.elements]
    if kinds not in (["label", "half"], ["words", "half"]) or len(line.elements) != 1:
        return False
    first, second = above.elements[-1], line.elements[0]
    return second.kind == "half" and {first.value.axis, second.value.axis} == _AXES


_AXES = {"latitude", "longitude"}


def join_halves(first: Element, second: Element, before: Point | None) -> Element:
    """Two halves that a line end or a page foot has parted."""
    written = f"{first.value.text} {second.value.text}"
    reading = join_coordinates(first.value, second.value, written, before)
    return Element("point", first.start, second.end, first.gap, reading)


_GOES_ON = re.compile(r"[.]?[,;]?\s{0,200}(?:(?:and|to|thence|then)\s{1,40}){0,2}", re.IGNORECASE)


def lone_half(text: str, half: Element, before: Point | None) -> Element:
    """A half without a partner, as a point: a longitude shares the latitude before it in a list.

    `52'.66S 58'.95W and 59'.30W`; behind other words its own latitude may be garbled or lost.
    """
    one: Coordinate = half.value
    if one.is_readable and one.axis == "longitude" and one.shares_degrees and before is not None:
        stands_behind = before.end <= half.start
        if stands_behind and _GOES_ON.fullmatch(text, before.end, half.start) is not None:
            return half._replace(kind="point", value=share_latitude(one, before))
    faults = one.faults
    if one.is_readable:
        missing = "longitude" if one.axis == "latitude" else "latitude"
        values = {"written": one.text, "axis": missing}
        faults = (*faults, Fault("position-half-missing", half.start, half.end, values))
    return half._replace(kind="point", value=PointReading(None, faults, half.start, half.end))
