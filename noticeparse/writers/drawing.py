"""Which GeoJSON geometry shows where an action applies, and why some are not shown.

Only what lies where the notice says is drawn.  No geometry have: a feature without a position
(`unlocated`); one of which only a reference has a position (`reference`); positions on another
datum than WGS84, the only one of GeoJSON (RFC 7946, section 4) (`datum`); an arc of which the text
does not say which way round, or from which end its bearings are taken (`arc_open`); and what
cannot be drawn: a ring round a pole, or one that crosses itself at the antimeridian (`form`).
"""

from __future__ import annotations

from typing import Any

from noticeparse.globe import Point, arc, circle, line_parts, ring_parts
from noticeparse.numbers import NAUTICAL_MILE_M
from noticeparse.records.chart import ChartSection
from noticeparse.records.geometry import Geometry

_WGS84 = 4326
_OF_REFERENCE = frozenset({"close", "between", "vicinity"})

Drawn = dict[str, Any] | None


def is_of_reference(geometry: Geometry) -> bool:
    """Whether the positions are those of something else than the feature."""
    return geometry.relation in _OF_REFERENCE


def is_on_wgs84(section: ChartSection) -> bool:
    """Whether positions are on WGS84 as stated; where no datum is stated they pass for it."""
    return section.datum is None or section.datum.epsg == _WGS84


def draw(geometry: Geometry, section: ChartSection) -> tuple[Drawn, str | None]:
    """The GeoJSON geometry, or None and why there is none."""
    if not geometry.positions:
        return None, "unlocated"
    if is_of_reference(geometry):
        return None, "reference"
    if not is_on_wgs84(section):
        return None, "datum"
    points = [(position.lon, position.lat) for position in geometry.positions]
    if geometry.shape == "arc" and not is_told(geometry):
        return None, "arc_open"
    drawn = _shape(geometry, points)
    return drawn, None if drawn else "form"


def _shape(geometry: Geometry, points: list[Point]) -> Drawn:
    radius = geometry.radius_nm
    if geometry.shape == "point":
        return _joined("Point", points)
    if geometry.shape == "points":
        return {"type": "MultiPoint", "coordinates": points}
    if geometry.shape == "line":
        return _joined("LineString", line_parts(points)) if len(points) > 1 else None
    if geometry.shape == "area":
        return _polygons([points])
    if radius is None or radius <= 0:
        return None
    radius_m = float(radius * NAUTICAL_MILE_M)
    if geometry.shape == "circle":
        return _polygons([circle(point, radius_m) for point in points])
    from_deg, sweep_deg = swept(geometry)
    lines = [arc(point, radius_m, from_deg, sweep_deg) for point in points]
    return _joined("LineString", [part for line in lines for part in line_parts(line)])


def _polygons(rings: list[list[Point]]) -> Drawn:
    divided = [ring_parts(ring) for ring in rings]
    parts = [part for parts in divided if parts for part in parts]
    # A part of an area would look like the whole.
    if not parts or None in divided:
        return None
    return _joined("Polygon", [[part] for part in parts])


def _joined(kind: str, parts: list[Any]) -> dict[str, Any]:
    """One part by itself, several as a Multi geometry (RFC 7946, 3.1.9)."""
    if len(parts) == 1:
        return {"type": kind, "coordinates": parts[0]}
    return {"type": f"Multi{kind}", "coordinates": parts}


def is_told(geometry: Geometry) -> bool:
    """Whether an arc can lie in one place only."""
    told = geometry.arc
    return told is not None and told.sense is not None and told.bearings != "not_stated"


def swept(geometry: Geometry) -> tuple[float, float]:
    """The first bearing from the centre, and how far the arc goes on, clockwise positive."""
    told = geometry.arc
    if told is None:
        raise ValueError("no arc")
    # A bearing from seaward looks towards the centre.
    turn = 180 if told.bearings == "from_seaward" else 0
    sweep = float(told.to_deg - told.from_deg) % 360 or 360.0
    if told.sense == "anticlockwise":
        sweep -= 360 if sweep < 360 else 720
    return float(told.from_deg) + turn, sweep
