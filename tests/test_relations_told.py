"""How a feature lies to a position: a distance, a direction, a part of a circle, or unclear.

Common practice, no published source.  With `close` the position is that of the reference.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records.action import Action, Move
from noticeparse.records.geometry import Geometry
from tests.short_notices import Q, actions_of

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P = "46-00.00S 122-00.00W"


def read(words: str) -> tuple[Action, set[str]]:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    return action, {one.code for one in bulletin.findings if one.severity == "error"}


@pytest.mark.parametrize(
    ("words", "miles"),
    [
        ("buoy 1 mile 3 cables N of", "1.3"),
        ("wreck a cable SE of", "0.1"),
        ("wreck half a mile SE of", "0.5"),
        ("wreck one cable SE of", "0.1"),
        ("buoy 0.5 nm true N of", "0.5"),
        ("buoy 0.5 nm N (true) of", "0.5"),
        ("buoy No 5, 0.5 miles NE of", "0.5"),
        ("depth 5.2m 3 cables N of", "0.3"),
        ("light-buoy, Fl.R.5s 8M, 2 miles N of", "2"),
    ],
)
def test_a_distance_is_read_whole(words: str, miles: str) -> None:
    action, errors = read(f"{words} {P}")
    assert not errors
    assert action.geometry.relation == "from_reference"
    assert action.geometry.offset is not None
    assert action.geometry.offset.distance_nm == Decimal(miles)
    assert action.feature.kind != "cable_submarine"


@pytest.mark.parametrize(
    "words",
    [
        "buoy .5 miles N of", "buoy 1 mile N and 2 cables E of", "buoy 0.5 to 0.7 miles N of",
        "buoy 3 cables 5 metres N of", "buoy 0.5 nm magnetic N of", "buoy 1M 3c N of",
        "wreck close N and NE of", "buoy a cable off", "buoy 3 cables off",
        "depth 5.2m (close N of)", "wreck close S.W. of pier", "buoy close off pierhead",
    ],
)  # fmt: skip
def test_a_place_that_is_not_told_is_refused(words: str) -> None:
    action, errors = read(f"{words} {P}")
    assert errors
    assert not action.usable


def test_a_relation_behind_the_place_leads_nowhere() -> None:
    action, errors = read(f"depth 5.2m {P}, close N of.")
    assert errors == {"relation-unclear"}
    assert not action.usable


@pytest.mark.parametrize(
    ("words", "direction"),
    [
        ("close N.E. of", "NE"), ("close N. of", "N"), ("close S.S.W. of", "SSW"),
        ("close north-east of", "NE"), ("close to the south-westward of", "SW"),
        ("close N-E of", "NE"), ("close NE of", "NE"), ("N.W. of", "NW"), ("seaward of", None),
        ("inshore of", None), ("close inshore of", None), ("by", None), ("off", None),
    ],
)  # fmt: skip
def test_the_position_of_a_reference(words: str, direction: str | None) -> None:
    action, errors = read(f"wreck {words} {P}")
    assert not errors
    assert (action.geometry.relation, action.geometry.direction) == ("close", direction)


@pytest.mark.parametrize(
    ("words", "sense"),
    [
        (f"restricted area, radius 5M, centred on {P}, from 045° to 135°.", None),
        (f"restricted area, radius 5M, centred on {P} between 045° and 135°.", None),
        (f"limit, radius 5M, centred on {P}, clockwise from 045° to 135°.", "clockwise"),
        (f"limit, radius 5M, centred on {P}, from 045° anti-clockwise to 135°.", "anticlockwise"),
    ],
)
def test_two_bearings_cut_a_circle(words: str, sense: str | None) -> None:
    geometry = read(words)[0].geometry
    assert geometry.shape == "arc"
    assert geometry.arc is not None
    assert (geometry.arc.from_deg, geometry.arc.to_deg) == (45, 135)
    assert geometry.arc.sense == sense


def test_a_fraction_of_a_mile_is_a_radius() -> None:
    geometry = read(f"anchorage area, radius ½M, {P}")[0].geometry
    assert (geometry.shape, geometry.radius_nm) == ("circle", Decimal("0.5"))


def test_within_a_distance() -> None:
    zone = read(f"safety zone within 500m of {P}")[0].geometry
    assert (zone.shape, zone.relation) == ("circle", "centred_on")
    shoal = read(f"shoal, least depth 3.2m, within 500m of {P}")[0]
    assert (shoal.geometry.shape, shoal.geometry.relation) == ("point", "vicinity")
    assert shoal.feature.depth is not None
    assert shoal.feature.depth.value_m == Decimal("3.2")


def test_a_second_fix_names_no_feature() -> None:
    action, errors = read(f"wreck {P} (2.4 miles 137° from Quill Point)")
    assert not errors
    assert action.feature.name is None
    assert action.geometry.relation == "at"
    assert action.geometry.offset is not None
    assert action.geometry.offset.distance_nm == Decimal("2.4")
    assert action.geometry.offset.reference_text == "Quill Point"


@pytest.mark.parametrize(
    ("words", "shape"),
    [
        ("spoil ground, corners:", "area"),
        ("spoil ground, corner points:", "area"),
        ("spoil ground - limits:", "area"),
        ("spoil ground corners:", "area"),
        ("anchorage area, corners as follows:", "area"),
        ("anchorage area, bounded by the corners of this table:", "area"),
        ("anchorage area (WGS84), boundary:", "area"),
        ("anchorage area, limits as in this table:", "area"),
        ("submarine cable, through the points:", "line"),
        ("special buoys, corners:", "points"),
        ("lights, corners:", "points"),
    ],
)
def test_corners_are_those_of_an_area(words: str, shape: str) -> None:
    places = f"{P}\n46-00.50S 122-00.00W\n46-00.50S 122-01.00W"
    action, errors = read(f"{words}\n{places}")
    assert (action.geometry.shape, len(action.geometry.positions)) == (shape, 3)
    assert errors == set()


@pytest.mark.parametrize("buoy", ["mooring buoy", "special light-buoy, Fl.Y.5s", "port-hand buoy"])
def test_a_buoy_from_one_place_to_another_is_no_line(buoy: str) -> None:
    action, errors = read(f"{buoy} from {P} to 46-00.50S 122-00.00W")
    assert not action.usable
    assert "places-of-a-move" in errors


GARBLED = (
    "close X of", "close NE fo", "close NEof", "close of", "NE fo", "in the vicinty of",
    "close NEE of", "close", "close SWof", "clsoe NE", "close o f", "NNE f",
)  # fmt: skip


@pytest.mark.parametrize("words", GARBLED)
@pytest.mark.parametrize("thing", ["rock,", "wreck"])
def test_a_garbled_relation_is_never_read_as_the_place_itself(thing: str, words: str) -> None:
    for place in (P, "(f) above"):
        items = f"Insert (f) pile {P}\n       {thing} {words} {place}\n"
        bulletin = parse(f"{HEAD}{items}")
        actions = bulletin.notices[0].charts[0].actions
        assert [one.usable for one in actions[:2]] == [True, False]
        assert "relation-unclear" in {one.code for one in bulletin.findings}


@pytest.mark.parametrize(
    ("words", "relation"),
    [
        ("rock, close NE of", "close"), ("rock, close to", "close"), ("rock, SW of", "close"),
        ("rock, in the vicinity of", "vicinity"), ("rock, in the position of", "at"),
        ("special light-buoy, NE, in", "at"), ("special buoy, N,", "at"),
        ("disused pile, close by", "close"),
    ],
)  # fmt: skip
def test_whole_relations_are_read(words: str, relation: str) -> None:
    action, errors = read(f"{words} {P}")
    assert errors == set()
    assert (action.usable, action.geometry.relation) == (True, relation)


@pytest.mark.parametrize(
    "words",
    [
        f"old position {P}, new position {Q}",
        f"(old position) {P} (new position) {Q}",
        f"existing position: {P}\n   proposed position: {Q}",
        f"new position {Q}, old position {P}",
    ],
)
def test_old_and_new_position_are_the_ends_of_a_move(words: str) -> None:
    (moved,) = actions_of(parse(f"{HEAD}Move wreck, {words}\n"))
    (plain,) = actions_of(parse(f"{HEAD}Move wreck from {P} to {Q}\n"))
    assert isinstance(moved, Move)
    assert isinstance(plain, Move)
    assert moved.usable
    assert positions_of(moved.geometry) == positions_of(plain.geometry)
    assert positions_of(moved.destination) == positions_of(plain.destination)


def test_the_new_position_of_what_is_put_in_is_its_place() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert wreck, new position {P}\n"))
    assert action.usable
    assert len(action.geometry.positions) == 1


def positions_of(geometry: Geometry) -> list[tuple[float, float]]:
    return [(float(one.lat), float(one.lon)) for one in geometry.positions]
