"""What GeoJSON draws, and what has a null geometry and is told in its properties."""

from __future__ import annotations

import pytest
from geographiclib.geodesic import Geodesic
from shapely.geometry import shape

from noticeparse import parse
from noticeparse.globe import CIRCLE_CORNERS
from noticeparse.writers import Wishes
from tests.geojson_rules import (
    FAULTY,
    HEAD,
    P,
    Q,
    R,
    check_rules,
    collection,
    feature,
    features,
    read,
    signed_area,
    with_destination,
)


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
