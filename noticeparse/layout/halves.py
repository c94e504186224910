"""Halves of a position that a line end, a page foot or a column has parted."""

from __future__ import annotations

from noticeparse.faults import Fault
from noticeparse.layout.elements import Element
from noticeparse.readers.coordinates import Coordinate
from noticeparse.readers.positions import Point, PointReading, join_coordinates, share_latitude


def join_halves(first: Element, second: Element, before: Point | None) -> Element:
    """Two halves that a line end or a page foot has parted."""
    written = f"{first.value.text} {second.value.text}"
    reading = join_coordinates(first.value, second.value, written, before)
    return Element("point", first.start, second.end, first.gap, reading)


def lone_half(half: Element, before: Point | None) -> PointReading:
    """A half without a partner: a longitude may share the latitude before it."""
    one: Coordinate = half.value
    if not one.is_readable:
        return PointReading(None, one.faults, half.start, half.end)
    if one.axis == "longitude" and one.shares_degrees and before is not None:
        return share_latitude(one, before)
    missing = "longitude" if one.axis == "latitude" else "latitude"
    values = {"written": one.text, "axis": missing}
    fault = Fault("position-half-missing", half.start, half.end, values)
    return PointReading(None, (*one.faults, fault), half.start, half.end)
