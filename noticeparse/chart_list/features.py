"""The rows of a chart list that is a GeoJSON file (RFC 7946): properties, bbox or a rectangle."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from decimal import Decimal
from typing import Any

from noticeparse.chart_list.columns import (
    LIMITS,
    Row,
    Rows,
    Slip,
    column_name,
    unknown_columns,
)

_FEATURES = re.compile(r'"features"\s{0,99}:\s{0,99}\[')
_NEXT = re.compile(r"[^\s,]")


def read_features(text: str) -> Rows | Slip:
    """The features as rows, or what keeps the file from being a chart list."""
    try:
        document = json.loads(text)
    except json.JSONDecodeError as error:
        values = {"reason": f"no JSON: {error.msg}"}
        return Slip("chart-list-unreadable", values, error.pos, error.pos)
    except (ValueError, RecursionError):
        # A figure of thousands of digits, or brackets within brackets without end.
        return Slip("chart-list-unreadable", {"reason": "it is beyond all measure"}, 0, 0)
    features = document.get("features") if isinstance(document, dict) else None
    if not isinstance(features, list):
        reason = "it is no GeoJSON FeatureCollection"
        return Slip("chart-list-unreadable", {"reason": reason}, 0, 0)
    rows: list[Row] = []
    names: list[str] = []
    for feature, (start, end) in zip(features, _stretches(text, features), strict=True):
        values = _values(feature)
        names += values
        rows.append(Row({name: one for name, one in values.items() if one}, start, end))
    first = rows[0] if rows else Row({}, 0, 0)
    return Rows(rows, [*unknown_columns(names, first.start, first.end)])


def _stretches(text: str, features: list[Any]) -> list[tuple[int, int]]:
    """Where each feature stands; the parser itself does not tell."""
    opening = _FEATURES.search(text)
    found: list[tuple[int, int]] = []
    if opening is not None:
        decoder = json.JSONDecoder()
        at = opening.end()
        for feature in features:
            first = _NEXT.search(text, at)
            if first is None:
                break
            try:
                again, at = decoder.raw_decode(text, first.start())
            except ValueError:
                break
            if repr(again) != repr(feature):
                break
            found.append((first.start(), at))
    # The words of another key may look like the list; then all stand at the top.
    return found if len(found) == len(features) else [(0, 0)] * len(features)


def _values(feature: Any) -> dict[str, str]:
    """What a feature says, by column; its limits from `bbox` or geometry where not stated."""
    if not isinstance(feature, dict):
        return {}
    properties = feature.get("properties")
    items = properties.items() if isinstance(properties, dict) else ()
    values = {column_name(str(name)): _written(value) for name, value in items}
    if not any(values.get(name) for name in LIMITS):
        values.update(_limits(feature))
    return values


def _written(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        return value.strip()
    if isinstance(value, float) and abs(value) < 1e9:
        return f"{Decimal(repr(value)):f}"
    return json.dumps(value)


def _limits(feature: dict[str, Any]) -> dict[str, str]:
    """South, west, north, east from `bbox`, else from the corners of the geometry."""
    box = feature.get("bbox")
    if not isinstance(box, list) or len(box) != 4:
        box = _box_of(feature.get("geometry"))
    if box is None:
        return {}
    west, south, east, north = map(_written, box)
    return {"south": south, "west": west, "north": north, "east": east}


def _box_of(geometry: Any) -> list[float] | None:
    """The box around a geometry; where it is cut at the antimeridian, from part to part.

    RFC 7946, 3.1.9: what crosses the antimeridian is cut there into two parts.
    """
    corners = [*_corners(geometry.get("coordinates"))] if isinstance(geometry, dict) else []
    if not corners:
        return None
    lons, lats = [lon for lon, _ in corners], [lat for _, lat in corners]
    west, east = min(lons), max(lons)
    if geometry.get("type") == "MultiPolygon" and west == -180 and east == 180:
        west = min((lon for lon in lons if lon > 0), default=west)
        east = max((lon for lon in lons if lon < 0), default=east)
    return [west, min(lats), east, max(lats)]


def _corners(value: Any) -> Iterator[tuple[float, float]]:
    """The pairs of longitude and latitude anywhere in a list of lists."""
    left = [value]
    while left:
        one = left.pop()
        if not isinstance(one, list):
            continue
        if len(one) >= 2 and all(isinstance(part, int | float) for part in one):
            # No degree has more than three figures; a float of the longest cannot be made.
            if all(abs(part) < 1000 for part in one[:2]):
                yield float(one[0]), float(one[1])
        else:
            left += one
