"""GeoJSON by the rules of RFC 7946, and as independent readers see it."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import pyogrio
import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import shape

from noticeparse import parse
from noticeparse.caution import CAUTION
from noticeparse.globe import CIRCLE_CORNERS
from noticeparse.records.action import Move
from noticeparse.records.bulletin import Bulletin
from noticeparse.testing.generator import generate
from noticeparse.writers import AS_USUAL, Wishes, new_writer, write
from noticeparse.writers.geojson_out import COUNTS, PROPERTIES
from tests.golden_files import NAMES, kept, written_of
from tests.test_corpus import TEXTS, name_of

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
    made: dict[str, Any] = json.loads("".join(write(new_writer("geojson", wishes), bulletins)))
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


class TestRules:
    """RFC 7946 over many outputs."""

    @pytest.mark.parametrize("path", TEXTS, ids=name_of)
    def test_of_the_corpus(self, path: Path) -> None:
        bulletin = parse(path.read_text("utf-8"), name=path.name)
        for wishes in (AS_USUAL, Wishes(with_unusable=True)):
            check_rules(collection(bulletin, wishes=wishes))

    @given(st.integers(0, 2**20))
    def test_of_generated_bulletins(self, seed: int) -> None:
        check_rules(read(generate(seed, size_bytes=3000).text))

    def test_of_texts_without_actions(self) -> None:
        made = read("", "Fair winds to all.")
        check_rules(made)
        assert made["features"] == []

    @pytest.mark.parametrize("name", NAMES)
    def test_golden(self, name: str, request: pytest.FixtureRequest) -> None:
        found = written_of(name, "geojson")
        check_rules(json.loads(found))
        assert found == kept(f"{name}.geojson", found, request.config)


class TestGeometry:
    """What is drawn."""

    def test_point_is_lon_lat(self) -> None:
        one = feature(f"Insert wreck {P}")
        # 3.1.1: the first two elements are longitude and latitude, in that order.
        assert one["geometry"] == {"type": "Point", "coordinates": [-123.75, -47.2]}
        assert one["properties"]["positions"] == "47°12.00'S 123°45.00'W"
        assert one["properties"]["positions_deg"] == "47.2000000S 123.7500000W"

    def test_figures_are_those_of_the_json(self) -> None:
        bulletin = parse(f"{HEAD}Insert wreck 47°12'.34S., 123°45'.67W.\n")
        position = bulletin.notices[0].charts[0].actions[0].geometry.positions[0]
        (one,) = collection(bulletin)["features"]
        assert one["geometry"]["coordinates"] == [position.lon, position.lat]

    def test_points(self) -> None:
        one = feature(f"Insert rocks awash in the following positions: {P} {Q}")
        assert one["geometry"] == {
            "type": "MultiPoint", "coordinates": [[-123.75, -47.2], [-123.5, -47.2]],
        }  # fmt: skip

    def test_line(self) -> None:
        one = feature(f"Insert submarine cable, joining {P} {Q} {R}")
        assert one["geometry"] == {
            "type": "LineString",
            "coordinates": [[-123.75, -47.2], [-123.5, -47.2], [-123.5, -47.4]],
        }

    @pytest.mark.parametrize("corners", [f"{P} {Q} {R}", f"{R} {Q} {P}"])
    def test_area_is_closed_and_right_handed(self, corners: str) -> None:
        one = feature(f"Insert spoil ground, bounded by {corners}")
        (ring,) = one["geometry"]["coordinates"]
        assert ring[0] == ring[-1]
        assert len(ring) == 4
        assert signed_area(ring) == pytest.approx(0.5 * 0.25 * 0.2)

    def test_circle(self) -> None:
        one = feature(f"Insert fish haven, centred on {P}, radius 2 miles")
        (ring,) = one["geometry"]["coordinates"]
        assert len(ring) == CIRCLE_CORNERS + 1
        for lon, lat in ring:
            metres = Geodesic.WGS84.Inverse(-47.2, -123.75, lat, lon)["s12"]
            assert metres == pytest.approx(3704, abs=0.02)
        assert one["properties"]["radius_nm"] == 2
        assert one["properties"]["circle_corners"] == CIRCLE_CORNERS

    def test_arc(self) -> None:
        words = "arc of a circle of radius 1.2 miles, between the bearings 195° and 280°"
        one = feature(f"Insert harbour limit, {words} clockwise from seaward, centred on {P}")
        assert one["geometry"]["type"] == "LineString"
        ends = [one["geometry"]["coordinates"][end] for end in (0, -1)]
        found = [Geodesic.WGS84.Inverse(-47.2, -123.75, lat, lon) for lon, lat in ends]
        # From seaward 195° is to the north-north-east of the centre.
        assert [line["azi1"] for line in found] == pytest.approx([15, 100], abs=1e-3)
        assert [line["s12"] for line in found] == pytest.approx([2222.4] * 2, abs=0.02)
        back = feature(
            f"Insert harbour limit, {words} anticlockwise from the centre, centred on {P}"
        )
        assert len(back["geometry"]["coordinates"]) == round((360 - 85) / 3) + 1

    @pytest.mark.parametrize("further", ["", " clockwise", " from seaward"])
    def test_arc_that_may_lie_elsewhere(self, further: str) -> None:
        words = "arc of a circle of radius 1.2 miles, between the bearings 195° and 280°"
        one = feature(f"Insert harbour limit, {words}{further}, centred on {P}")
        assert (one["geometry"], one["properties"]["no_geometry"]) == (None, "arc_open")
        assert one["properties"]["arc_from_deg"] == 195
        assert one["properties"]["positions"]

    def test_worked_out_place_is_drawn(self) -> None:
        one = feature(f"Insert rock, 0.4 miles 128° from {P}")
        lon, lat = one["geometry"]["coordinates"]
        metres = Geodesic.WGS84.Inverse(-47.2, -123.75, lat, lon)["s12"]
        assert metres == pytest.approx(0.4 * 1852, abs=0.5)
        assert one["properties"]["reference_positions"] == "47°12.00'S 123°45.00'W"

    def test_move_has_both_ends(self) -> None:
        old, new = features(f"Move special buoy from {P} to {Q}")
        assert old["geometry"]["coordinates"] == [-123.75, -47.2]
        assert new["geometry"]["coordinates"] == [-123.5, -47.2]
        assert [one["properties"]["move_end"] for one in (old, new)] == ["from", "to"]
        assert {one["properties"]["path"] for one in (old, new)} == {
            "/notices/0/charts/0/actions/0"
        }
        assert [one["properties"]["positions"] for one in (old, new)] == [
            "47°12.00'S 123°45.00'W", "47°12.00'S 123°30.00'W",
        ]  # fmt: skip


OVER = [
    ("line", "Insert submarine cable, joining 46°00'.00S., 179°30'.00E. 47°00'.00S., "
     "179°30'.00W.", "MultiLineString"),
    ("area", "Insert spoil ground, bounded by 46°00'.00S., 179°30'.00E. 46°00'.00S., "
     "179°30'.00W. 47°00'.00S., 179°30'.00W. 47°00'.00S., 179°30'.00E.", "MultiPolygon"),
    ("circle", "Insert fish haven, centred on 47°00'.00S., 179°59'.50W., radius 3 miles",
     "MultiPolygon"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "kind"), [c[1:] for c in OVER], ids=[c[0] for c in OVER])
def test_antimeridian(line: str, kind: str) -> None:
    made = read(f"{HEAD}{line}\n")
    check_rules(made)
    geometry = made["features"][0]["geometry"]
    assert geometry["type"] == kind  # 3.1.9: a Multi geometry of parts that do not cross
    assert len(geometry["coordinates"]) == 2
    bounds = shape(geometry).bounds
    assert (bounds[0], bounds[2]) == (-180, 180)


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


class TestNotDrawn:
    """What has a null geometry, and what its properties tell instead."""

    @pytest.mark.parametrize(
        ("words", "relation"),
        [("close NE of", "close"), ("in the vicinity of", "vicinity")],
    )
    def test_reference(self, words: str, relation: str) -> None:
        one = feature(f"Delete depth 4.2m, {words} {P}")
        assert one["geometry"] is None
        told = one["properties"]
        assert (told["no_geometry"], told["relation"]) == ("reference", relation)
        assert told["reference_positions"] == "47°12.00'S 123°45.00'W"
        assert told["reference_positions_deg"] == "47.2000000S 123.7500000W"
        assert told["positions"] is told["positions_deg"] is None

    def test_new_place_told_from_a_reference(self) -> None:
        bulletin = with_destination({"relation": "close", "direction": "NE"})
        old, new = collection(bulletin)["features"]
        assert old["geometry"]["coordinates"] == [-123.75, -47.2]
        told = new["properties"]
        assert (new["geometry"], told["no_geometry"]) == (None, "reference")
        assert (told["relation"], told["direction"], told["positions"]) == ("close", "NE", None)
        assert told["reference_positions"] == "47°12.00'S 123°30.00'W"

    def test_between(self) -> None:
        told = feature(f"Delete depth 4.2m, between {P} and {Q}")["properties"]
        assert told["reference_positions"].count(";") == 1
        assert (told["no_geometry"], told["shape"]) == ("reference", "points")

    def test_unlocated(self) -> None:
        bulletin = parse(f"{HEAD}Insert wreck {P}\n")
        section = bulletin.notices[0].charts[0]
        action = section.actions[0]
        bare = action.geometry.model_copy(update={"shape": "unlocated", "positions": []})
        changed = section.model_copy(
            update={"actions": [action.model_copy(update={"geometry": bare})]}
        )
        notice = bulletin.notices[0].model_copy(update={"charts": [changed]})
        (one,) = collection(bulletin.model_copy(update={"notices": [notice]}))["features"]
        assert (one["geometry"], one["properties"]["no_geometry"]) == (None, "unlocated")

    @pytest.mark.parametrize("datum", ["WGS72", "NAD27", "ETRS89", "Ellory Local Datum 1931"])
    def test_another_datum(self, datum: str) -> None:
        # 4: the reference system of all GeoJSON is WGS84.
        head = HEAD.replace("WGS84", f"Datum: {datum}")
        places = ("47.2000000S 123.7500000W", "47.2000000S 123.5000000W")
        moved = features(f"Move special buoy from {P} to {Q}", head)
        for one, place in zip(moved, places, strict=True):
            told = one["properties"]
            assert (one["geometry"], told["no_geometry"]) == (None, "datum")
            assert told["datum"] in datum
            assert told["positions_deg"] == place

    def test_no_datum_is_drawn_and_counted(self) -> None:
        made = read(HEAD.replace(" WGS84", "") + f"Insert wreck {P}\n")
        assert made["features"][0]["geometry"]
        assert made["features"][0]["properties"]["datum"] is None
        assert made["counts"]["datum_not_stated"] == 1

    def test_round_a_pole(self) -> None:
        corners = " ".join(f"80°00'.00S., {lon:03}°00'.00{side}." for lon, side in (
            (0, "E"), (90, "E"), (179, "E"), (90, "W"),
        ))  # fmt: skip
        one = feature(f"Insert restricted area, bounded by {corners}")
        assert (one["geometry"], one["properties"]["no_geometry"]) == (None, "form")

    def test_unusable(self) -> None:
        text = f"{HEAD}Insert wreck {P}\n{FAULTY}\nInsert light, Fl.X.5s {P}\n"
        made = read(text)
        assert len(made["features"]) == 1
        assert (made["counts"]["unusable"], made["counts"]["unusable_left_out"]) == (2, 2)
        asked = read(text, wishes=Wishes(with_unusable=True))
        check_rules(asked)
        assert len(asked["features"]) == 3
        assert (asked["counts"]["unusable"], asked["counts"]["unusable_left_out"]) == (2, 0)
        for one in asked["features"][1:]:
            assert (one["geometry"], one["properties"]["usable"]) == (None, False)
            assert one["properties"]["no_geometry"] == "unusable"
            assert "error " in one["properties"]["findings"]
        assert asked["features"][2]["properties"]["positions"] == "47°12.00'S 123°45.00'W"


class TestCollection:
    """What stands around the features."""

    def test_several_inputs_are_one(self) -> None:
        one = f"{HEAD}Insert wreck {P}\n"
        made = read(one, "", f"{HEAD}{FAULTY}\n", one)
        check_rules(made)
        assert [f["properties"]["source"] for f in made["features"]] == ["0.txt", "3.txt"]
        assert made["caution"] == CAUTION
        assert [*made][-2:] == ["counts", "bulletins"]
        assert [one["source"]["name"] for one in made["bulletins"]] == [
            "0.txt", "1.txt", "2.txt", "3.txt",
        ]  # fmt: skip

    def test_counts(self) -> None:
        radio = "TAVRENNE COASTAL WARNING 41/26\nDANGEROUS WRECK IN 47-13.05S 123-44.20W.\n"
        text = f"{HEAD}Move buoy from {P} to {Q}\n{FAULTY}\nDelete depth 4m, close N of {P}\n"
        made = read(text, radio)
        assert made["counts"] == {
            "notices": 2, "notices_without_action": 1, "actions": 3, "unusable": 1,
            "unusable_left_out": 1, "errors_outside_actions": 0, "features": 3,
            "without_geometry": 1, "datum_not_stated": 0,
        }  # fmt: skip
        total = Counter[str]()
        for one in made["bulletins"]:
            assert [*one["counts"]] == [*COUNTS]
            total.update(one["counts"])
        assert dict(total) == {key: value for key, value in made["counts"].items() if value} | {
            "errors_outside_actions": 0, "datum_not_stated": 0,
        }  # fmt: skip
        assert len(made["features"]) == 3

    def test_errors_without_an_action_are_counted(self) -> None:
        made = read(f"{HEAD}Insert wreck {P}\nZap the mark in {Q}\n")
        assert made["counts"]["errors_outside_actions"] == 1


class TestOtherReaders:
    """What GDAL and shapely make of it."""

    def test_gdal(self, tmp_path: Path) -> None:
        bulletins = [parse(path.read_text("utf-8"), name=path.name) for path in TEXTS[:12]]
        path = tmp_path / "all.geojson"
        path.write_text("".join(write(new_writer("geojson"), bulletins)), "utf-8")
        made = json.loads(path.read_text("utf-8"))
        meta, _, drawn, fields = pyogrio.raw.read(path)
        assert meta["crs"] == "EPSG:4326"
        assert [*meta["fields"]] == [*PROPERTIES]
        assert len(drawn) == len(made["features"]) > 150
        for wkb, one in zip(drawn, made["features"], strict=True):
            assert (wkb is None) == (one["geometry"] is None)
        notices = fields[[*meta["fields"]].index("notice")]
        assert [*notices] == [one["properties"]["notice"] for one in made["features"]]

    @pytest.mark.parametrize("path", TEXTS[::3], ids=name_of)
    def test_shapely_finds_them_valid(self, path: Path) -> None:
        bulletin = parse(path.read_text("utf-8"), name=path.name)
        crossing = {
            p for f in bulletin.findings if f.code == "area-crosses-itself" for p in f.paths
        }
        drawn = [
            (one["properties"]["path"], shape(one["geometry"]))
            for one in collection(bulletin)["features"]
            if one["geometry"]
        ]
        assert all(geometry.is_valid for pointer, geometry in drawn if pointer not in crossing)
