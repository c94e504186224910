"""The arithmetic of a Mercator chart: degrees in, millimetres on the paper out, on WGS84.

Frames, distances on the sheet, and the ninth of the sheet in which a position lies.  Nothing here
reads text or knows a record.  Formulas: EPSG Guidance Note 7-2, Mercator variants B and C (Snyder,
USGS Professional Paper 1395): y = a k0 psi, with psi the isometric latitude of the ellipsoid.
"""

from __future__ import annotations

from math import asinh, atanh, cos, degrees, hypot, radians, sin, sqrt, tan
from typing import NamedTuple

A_M = 6378137.0
"""Half the greater axis of WGS84, metres."""
FLATTENING = 1 / 298.257223563
E2 = FLATTENING * (2 - FLATTENING)
_E = sqrt(E2)
_MM = 1000.0

SLACK_DEG = 0.01 / 60
"""A position on the frame is inside, and so is one that rounding put just beyond it."""

_ROWS = ("lower", "centre", "upper")
_COLUMNS = ("left", "centre", "right")


class Frame(NamedTuple):
    """The limits of a chart or panel in degrees, and the latitude at which its scale is true.

    Where the west limit is greater than the east limit the frame crosses the antimeridian.
    """

    south: float
    west: float
    north: float
    east: float
    scale: float
    """Ground over paper: 150000 for 1:150 000."""
    scale_latitude: float

    @property
    def width_deg(self) -> float:
        """From the west limit eastward to the east limit."""
        width = self.east - self.west
        return width if width > 0 else width + 360


def isometric_latitude(latitude: float) -> float:
    """Isometric latitude in radians; 10800 / pi times as much are meridional parts."""
    phi = radians(latitude)
    return asinh(tan(phi)) - _E * atanh(_E * sin(phi))


def meridional_parts(latitude: float) -> float:
    """Meridional parts: minutes of longitude on the equator."""
    return degrees(isometric_latitude(latitude)) * 60


def equator_scale(latitude: float) -> float:
    """The scale factor k0 at the equator where the scale is true at `latitude`."""
    phi = radians(latitude)
    return cos(phi) / sqrt(1 - E2 * sin(phi) ** 2)


def east_of(first: float, second: float) -> float:
    """Degrees of longitude from the first to the second, the shorter way, east positive."""
    return (second - first + 180) % 360 - 180


def mm_between(
    frame: Frame, first: tuple[float, float], second: tuple[float, float]
) -> tuple[float, float]:
    """Millimetres on the paper, right and up, from one latitude and longitude to another."""
    radius_mm = A_M * equator_scale(frame.scale_latitude) * _MM / frame.scale
    right = radius_mm * radians(east_of(first[1], second[1]))
    return right, radius_mm * (isometric_latitude(second[0]) - isometric_latitude(first[0]))


def distance_mm(frame: Frame, first: tuple[float, float], second: tuple[float, float]) -> float:
    """The straight line on the paper, millimetres."""
    return hypot(*mm_between(frame, first, second))


def mm_per_metre(frame: Frame, latitude: float) -> float:
    """Millimetres of paper for a metre of ground at `latitude`."""
    local = equator_scale(frame.scale_latitude) / equator_scale(latitude)
    return local * _MM / frame.scale


def size_mm(frame: Frame) -> tuple[float, float]:
    """Width and height of the frame, millimetres."""
    radius_mm = A_M * equator_scale(frame.scale_latitude) * _MM / frame.scale
    height = isometric_latitude(frame.north) - isometric_latitude(frame.south)
    return radius_mm * radians(frame.width_deg), radius_mm * height


def place_mm(frame: Frame, latitude: float, longitude: float) -> tuple[float, float]:
    """Millimetres right of and above the south-west corner of the frame.

    The way to a position outside goes from the middle of the frame, so that one just beyond the
    west limit has a small negative figure whichever side of the antimeridian it lies on.
    """
    middle = frame.west + frame.width_deg / 2
    right, up = mm_between(frame, (frame.south, middle), (latitude, longitude))
    return right + size_mm(frame)[0] / 2, up


def is_inside(frame: Frame, latitude: float, longitude: float) -> bool:
    """Whether a position lies within the frame or on it."""
    half = frame.width_deg / 2
    aside = abs(east_of(frame.west + half, longitude))
    is_between = frame.south - SLACK_DEG <= latitude <= frame.north + SLACK_DEG
    return is_between and aside <= half + SLACK_DEG


def part_of_sheet(frame: Frame, latitude: float, longitude: float) -> str | None:
    """The ninth of the sheet: `upper left`, `centre`, `lower right`; None outside the frame.

    The ninths are of equal size on the paper, which is not so in latitude.
    """
    if not is_inside(frame, latitude, longitude):
        return None
    x_mm, y_mm = place_mm(frame, latitude, longitude)
    width_mm, height_mm = size_mm(frame)
    row, column = _ROWS[_third(y_mm / height_mm)], _COLUMNS[_third(x_mm / width_mm)]
    return row if row == column else f"{row} {column}"


def _third(share: float) -> int:
    return min(2, max(0, int(share * 3)))
