"""GeoJSON of short texts, and the rules of RFC 7946 that it is held to."""

from __future__ import annotations

import json
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

from noticeparse import parse
from noticeparse.records.action import Move
from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import AS_USUAL, Wishes
from noticeparse.writers.geojson_out import PROPERTIES
from tests.golden_files import written

HEAD = "2417/26 TAVRENNE ISLANDS - Quill Sound - Limits. (invented)\nChart 802 WGS84\n"
P, Q, R = "47°12'.00S., 123°45'.00W.", "47°12'.00S., 123°30'.00W.", "47°24'.00S., 123°30'.00W."
FAULTY = f"Delete depth 4m {P.replace('12', '72')}"

_DEPTHS = {
    "Point": 0, "MultiPoint": 1, "LineString": 1, "MultiLineString": 2, "Polygon": 2,
    "MultiPolygon": 3,
}  # fmt: skip


def read(*texts: str, wishes: Wishes = AS_USUAL) -> dict[str, Any]:
    """The collection of some texts."""
    bulletins = [parse(text, name=f"{number}.txt") for number, text in enumerate(texts)]
    return collection(*bulletins, wishes=wishes)


def collection(*bulletins: Bulletin, wishes: Wishes = AS_USUAL) -> dict[str, Any]:
    made: dict[str, Any] = json.loads(written("geojson", *bulletins, wishes=wishes))
    return made


def features(line: str, head: str = HEAD) -> list[dict[str, Any]]:
    """The features of one action."""
    found: list[dict[str, Any]] = read(f"{head}{line}\n")["features"]
    return found


def feature(line: str, head: str = HEAD) -> dict[str, Any]:
    (found,) = features(line, head)
    return found


def positions(coordinates: Any) -> Iterator[list[float]]:
    if isinstance(coordinates[0], int | float):
        yield coordinates
    else:
        for one in coordinates:
            yield from positions(one)


def rings(geometry: dict[str, Any]) -> list[Any]:
    polygons = {"Polygon": [geometry["coordinates"]], "MultiPolygon": geometry["coordinates"]}
    return [ring for polygon in polygons.get(geometry["type"], []) for ring in polygon]


def lines(geometry: dict[str, Any]) -> list[Any]:
    of_lines = {
        "LineString": [geometry["coordinates"]],
        "MultiLineString": geometry["coordinates"],
    }
    return [*of_lines.get(geometry["type"], []), *rings(geometry)]


def signed_area(ring: list[list[float]]) -> float:
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise(ring)) / 2


def check_rules(made: dict[str, Any]) -> None:
    """The rules of RFC 7946 that a program can look at."""
    # 3.3: a FeatureCollection has "features", an array; 7.1: no member of another type's.
    assert made["type"] == "FeatureCollection"
    assert isinstance(made["features"], list)
    assert not {"coordinates", "geometries", "geometry", "properties"} & set(made)
    assert "crs" not in made  # 4: no other reference system, and appendix B.1: no such member
    for one in made["features"]:
        assert [*one] == ["type", "geometry", "properties"]  # 3.2
        assert one["type"] == "Feature"
        assert [*one["properties"]] == [*PROPERTIES]
        for key, value in one["properties"].items():
            assert value is None or isinstance(value, str | int | float | bool), key  # flat
        if one["geometry"] is None:  # 3.2: an unlocated Feature has a null geometry
            assert one["properties"]["no_geometry"]
        else:
            assert one["properties"]["no_geometry"] is None
            check_geometry(one["geometry"])


def check_geometry(geometry: dict[str, Any]) -> None:
    assert [*geometry] == ["type", "coordinates"]  # 3.1
    depth, inner = 0, geometry["coordinates"]
    while isinstance(inner[0], list):
        depth, inner = depth + 1, inner[0]
    assert depth == _DEPTHS[geometry["type"]]  # 3.1.2 to 3.1.7
    for position in positions(geometry["coordinates"]):
        assert len(position) == 2  # 3.1.1: no more than three, here without a height
        assert -180 <= position[0] <= 180  # 3.1.1: longitude first
        assert -90 <= position[1] <= 90
    for line in lines(geometry):
        assert len(line) >= 2  # 3.1.4
        # 3.1.9: no line goes over the antimeridian.
        assert all(abs(b[0] - a[0]) <= 180 for a, b in pairwise(line))
    for ring in rings(geometry):
        assert len(ring) >= 4  # 3.1.6: closed, with four or more positions
        assert ring[0] == ring[-1]
        assert signed_area(ring) > 0  # 3.1.6: exterior rings are anticlockwise


def with_destination(changes: dict[str, Any]) -> Bulletin:
    """A move whose new place is changed."""
    bulletin = parse(f"{HEAD}Move special buoy from {P} to {Q}\n")
    (notice,) = bulletin.notices
    (section,) = notice.charts
    (action,) = section.actions
    assert isinstance(action, Move)
    destination = action.destination.model_copy(update=changes)
    moved = action.model_copy(update={"destination": destination})
    charts = [section.model_copy(update={"actions": [moved]})]
    notices = [notice.model_copy(update={"charts": charts})]
    return bulletin.model_copy(update={"notices": notices})
