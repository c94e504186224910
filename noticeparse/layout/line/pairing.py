"""Coordinates as they come in a text, joined to points.

In come the coordinates of the lines in their order; out come points and halves.  What a coordinate
leaves out is taken from the latest one of its axis that was written, wherever a line may end: a
point whose halves a line end parts counts as well as one that stands in one piece.
"""

from __future__ import annotations

import re

from noticeparse.faults import Fault
from noticeparse.layout.line.elements import Element
from noticeparse.readers.coordinates import Coordinate
from noticeparse.readers.positions import (
    Point,
    PointReading,
    degrees_from,
    join_coordinates,
    share_other,
)

_FEW = 12
"""Elements before a second coordinate on a line that goes on with the line above."""
_LINKS = (",", "/", "-", "&")
_OF_LATITUDE = re.compile(r"parallel|latitude|lat\b", re.IGNORECASE)


class Pairing:
    """The points of a text as far as it is read."""

    def __init__(self, text: str) -> None:
        self._text = text
        self._before: Point | None = None
        """The point before, with the latest degrees of either axis."""
        self._nearest: Point | None = None
        """The place before, where it could be read."""
        self._alone: Coordinate | None = None
        """The last coordinate, where none has joined it so far."""
        self._awaits_longitude = False
        """Whether the last coordinate so far is a latitude without its longitude."""
        self._line_above_awaits = False

    def begin_line(self) -> None:
        """Go on to the next line."""
        self._line_above_awaits = self._awaits_longitude

    def point(self, reading: PointReading, gap: bool) -> Element:
        """A point as the element that it is."""
        self._nearest = reading.point
        if reading.point is not None:
            self._before = reading.point
        return Element("point", reading.start, reading.end, gap, reading)

    def coordinate(self, found: list[Element], one: Coordinate, gap: bool) -> None:
        """Join it to the half before it, else keep it as a half."""
        end = one.start + len(one.text)
        if len(found) > 1 and found[-2].kind == "half" and self._is_link(found[-1]):
            found.pop()
        before = found[-1] if found else None
        is_stacked = (
            before is not None and before.kind == "half" and gap and before.value.axis == one.axis
        )
        if (
            before is None
            or before.kind != "half"
            or is_stacked
            or self._is_of_line_above(found, one)
        ):
            self._settle(one)
            self._alone = one
            found.append(Element("half", one.start, end, gap, one))
            self._awaits_longitude = one.axis == "latitude"
            return
        self._awaits_longitude, self._alone = False, None
        found.pop()
        written = " ".join(self._text[before.start : end].split())
        reading = join_coordinates(before.value, one, written, self._before)
        if reading.point is None and not (before.value.shares_degrees or one.shares_degrees):
            # Minutes below it are of its degrees, which nobody can read.
            self._before = None
        found.append(self.point(reading, before.gap))

    def on_same(self, one: Coordinate, start: int, gap: bool) -> Element:
        """The point that a coordinate makes with the other one of the point before.

        `and, on the same parallel, 51'.50W`; the words that say so begin at `start`.
        """
        if self._alone is not None:
            self._nearest, self._alone = None, None
        self._awaits_longitude = False
        end = one.start + len(one.text)
        words = self._text[start : one.start]
        wanted = "longitude" if _OF_LATITUDE.search(words) else "latitude"
        if not one.is_readable:
            return self.point(PointReading(None, one.faults, start, end), gap)
        if self._nearest is None or one.axis != wanted:
            missing = "longitude" if one.axis == "latitude" else "latitude"
            written = " ".join(self._text[start:end].split())
            fault = Fault(
                "position-half-missing", start, end, {"written": written, "axis": missing}
            )
            return self.point(PointReading(None, (fault,), start, end), gap)
        return self.point(share_other(one, self._nearest, start), gap)

    def _settle(self, following: Coordinate) -> None:
        """Hold on to the degrees of a half that a line end has parted from the `following` one.

        Behind a latitude alone, `north of latitude 48-30.00S`, nobody knows whether its degrees or
        those of the point before are meant.
        """
        one, self._alone = self._alone, None
        if one is None or self._before is None:
            return
        told = degrees_from(one, self._before) if one.is_readable else None
        is_known = following.axis != one.axis or _degrees(told) == _degrees(self._before)
        self._before = told if is_known else None

    def _is_of_line_above(self, found: list[Element], one: Coordinate) -> bool:
        """Whether the half before is the longitude that the line above still waits for."""
        if not self._line_above_awaits or one.axis != "latitude" or len(found) > _FEW:
            return False
        halves = [element for element in found if element.kind in ("half", "point")]
        return len(halves) == 1 and halves[0].value.axis == "longitude"

    def _is_link(self, element: Element) -> bool:
        """Whether an element may stand between latitude and longitude."""
        if element.kind in ("bar", "semicolon"):
            return True
        words = self._text[element.start : element.end]
        return element.kind == "words" and words in _LINKS


def _degrees(point: Point | None) -> list[int]:
    return [one.fields[0] for one in point.last] if point is not None else []
