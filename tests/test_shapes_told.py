"""Shapes that words tell: parts of circles, strips, exceptions, sizes that are no depths."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, errors

ZONE = f"centred on {P}"
OTHER = [
    f"Insert semi-circular safety zone, radius 500m, {ZONE}",
    f"Insert half-circle safety zone, radius 500m, {ZONE}",
    f"Insert restricted area, northern half of circle radius 1M {ZONE}",
    f"Insert restricted area, northern semicircle, radius 1M, {ZONE}",
    f"Insert restricted area, sector of circle radius 1M, {ZONE}, 045°-135°",
    f"Insert restricted area, half circle of 1M radius, N of {P}",
    f"Insert restricted area within 500m of a line joining {P} and {Q}",
    f"Insert northern limit of fairway joining {P}, {Q} and {R}",
    f"Insert Northern limit of fairway joining {P}, {Q} and {R}",
    f"Delete the seaward edge of restricted area, joining {P}, {Q} and {R}",
    f"Insert anchorage area enclosed by coast and line {P} to {Q}",
    f"Insert restricted area bounded by an arc of radius 2M {ZONE} between {Q} and {R}",
    f"Insert arc of circle, centre {P}, joining {Q} and {R}",
    f"Insert fish haven, in a square of side 200m {ZONE}",
    f"Insert fish haven 200m square {ZONE}",
    f"Insert wreck, 21m, in safety zone radius 500m, {P}",
    f"Insert wreck, {P}, surrounded by a danger circle, radius 200m",
    f"Insert circle of 500m about {P}, entry prohibited",
    f"Insert breakwater extending 200m NE from {P}",
    f"Insert shoal extending 100m N of {P}",
    f"Insert foul area bounded by {P}, {Q}, {R}, excluding the area of the wharf",
    f"Insert limit, the arc of a circle of radius 2 miles {ZONE}",
    f"Insert restricted area, sector 030°-120°, radius 0.5M, {ZONE}",
    f"Insert quarter circle restricted area, radius 0.5M, {ZONE}",
    f"Insert restricted area, NE quadrant, radius 0.5M, {ZONE}",
    f"Insert harbour limit, arc of a circle of radius 1.2 miles, between the bearings {P}",
    f"Insert 5m contour, radius 0.1M, around {P}",
    f"Insert foul ground, radius 200m, around {P}",
]


@pytest.mark.parametrize("words", OTHER)
def test_a_shape_that_is_not_read_holds_its_item_back(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert not any(one.usable for one in actions_of(bulletin))
    assert "shape-not-as-told" in errors(bulletin)


AS_TOLD = {
    f"Insert circular safety zone, radius 500m, {ZONE}": "circle",
    f"Insert limit, arc of a circle of radius 2M {ZONE}, between the bearings 090° and 180°": (
        "arc"
    ),
    f"Insert foul area within 500m of {P}": "circle",
    f"Insert restricted area, from 030° to 120°, radius 0.5M, {ZONE}": "arc",
    f"Insert depth 12m {P}": "point",
    f"Insert wreck 200m NE of {P}": "point",
    f"Insert platform with 500m safety zone {P}": "point",
    f"Insert light Fl.5s, arc of visibility 045°-135°, {P}": "point",
    f'Insert legend, "Semi-circular area", {P}': "point",
    f"Insert foul area bounded by {P}, {Q}, {R}": "area",
}


@pytest.mark.parametrize(("words", "shape"), AS_TOLD.items())
def test_a_shape_that_is_read_is_used(words: str, shape: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{words}\n"))
    assert (action.geometry.shape, action.usable) == (shape, True)


RADII = [
    f"Insert entry prohibited area within 500 m radius around {P}",
    f"Insert 500m safety zone, {P}",
    f"Insert safety zone of 500 metres around platform, {P}",
    f"Insert restricted area of radius 500m around {P}",
]


@pytest.mark.parametrize("words", RADII)
def test_a_zone_round_a_place_is_a_circle(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{words}\n"))
    assert (action.geometry.shape, action.usable) == ("circle", True)
    assert action.geometry.radius_nm is not None
    assert round(action.geometry.radius_nm * 1852) == Decimal(500)


def test_a_zone_with_corners_has_no_radius() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert 500m safety zone bounded by {P}, {Q}, {R}\n"))
    assert (action.geometry.shape, action.geometry.radius_nm) == ("area", None)


def test_what_lies_around_a_thing_does_not_move_it() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert wreck and 500m safety zone around it, {P}\n"))
    assert (action.geometry.relation, len(action.feature.companions)) == ("at", 1)


@pytest.mark.parametrize("words", ["circle", "conical"])
def test_an_area_has_no_topmark(words: str) -> None:
    bulletin = parse(f"{HEAD}Amend restricted area to {words} radius 500m {ZONE}\n")
    (action,) = actions_of(bulletin)
    assert not action.usable
    assert action.verb == "amend"
    assert not action.changes


@pytest.mark.parametrize("words", ["topmark to can", "from spherical to can"])
def test_a_buoy_has_one(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend special buoy, {words}, {P}\n"))
    assert action.usable


TORN = [
    f"Insert submarine cable between {P} and {Q} (passing {R})",
    f"Insert separation zone bounded by: {P}; {Q}; {R}; arc of 2M radius centred on {P}; {Q}",
    f"Delete submarine cable joining {P} and {Q}, except between {R} and {P}",
    f"Insert restricted area, circle radius 1M centred on {P}, except the part S of 46-00.00S",
    f"Insert submarine cable joining:\n(a) {P}\n(c) {Q}\n(b) {R}\nin the order (a), (b), (c).",
]


@pytest.mark.parametrize("words", TORN)
def test_a_piece_and_its_item_are_both_held_back(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert len(actions_of(bulletin)) == 2
    assert not any(one.usable for one in actions_of(bulletin))
    assert "item-torn" in errors(bulletin)


WHOLE = [
    f"Insert submarine cable joining:\n(a) {P}\n(b) {Q}\n(c) {R}",
    f"Insert submarine cable joining {P} and {Q}\nInsert wreck {R}",
    f"Insert submarine cable joining {P} and {Q}\nInsert arc of visibility 045°-135° {R}",
]


@pytest.mark.parametrize("words", WHOLE)
def test_what_is_whole_is_not_torn(words: str) -> None:
    assert "item-torn" not in errors(parse(f"{HEAD}{words}\n"))
