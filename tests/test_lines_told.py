"""Lines that words tell otherwise than their places make: torn, several in one, beside a line."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, actions_of, errors

S = "46-00.90S 122-00.40W"

HELD = {
    f"Insert pipeline, joining wellhead {P} and platform {Q}": "geometry-too-few-positions",
    f"Insert submarine cable linking buoy {P} with platform {Q}": "geometry-too-few-positions",
    f"Insert pipeline joining wellheads {P} and {Q}": "shape-not-as-told",
    f"Insert submarine cable {P} to shore": "geometry-too-few-positions",
    f"Delete pipeline from {P} as far as {Q}": "item-torn",
    f"Insert submarine cable joining {P}, {Q} and continuing to {R}": "item-torn",
    f"Insert submarine cable joining {P}, {Q} and then {R}": "item-torn",
    f"Insert two submarine cables joining {P} {Q} and {R} {S}": "lines-in-one",
    f"Insert submarine cables joining {P} {Q}; {R} {S}": "lines-in-one",
    f"Delete fairway limits joining {P} {Q} and {R} {S}": "lines-in-one",
    f"Insert marine reserve seaward of line joining {P}, {Q} and {R}": "shape-not-as-told",
    f"Delete all depths N of a line joining {P} and {Q}": "shape-not-as-told",
    f"Insert limit of 500m safety zone around {P}": "shape-not-as-told",
    f"Insert restricted area (circle, radius 3 cables) {P}": "shape-not-as-told",
    f"Insert 5m shoal with 10m contour around {P}": "shape-not-as-told",
    f"Move light-buoy, VQ, 120m SW from {P} to {Q}": "move-distance-unclear",
    f"Move buoy 0.2M N from {P} to {Q}": "move-distance-unclear",
    f"Move buoy one cable NE from {P} to {Q}": "move-distance-unclear",
    f"Move buoy, 2 cables 045°, from {P} to {Q}": "move-distance-unclear",
    f"Move buoy 045° 2 cables from {P} to {Q}": "move-distance-unclear",
}


@pytest.mark.parametrize(("words", "code"), HELD.items())
def test_line_that_is_not_read_as_told_is_held_back(words: str, code: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert code in errors(bulletin)
    assert not any(one.usable for one in actions_of(bulletin))


AS_TOLD = {
    f"Insert submarine cable joining {P}; {Q}; {R} and {S}": ("line", 4),
    f"Insert pipeline joining {P}, {Q}, {R} and {S}": ("line", 4),
    f"Insert submarine cable joining {P}, {Q}, thence to {R}": ("line", 3),
    f"Insert fairway limits joining {P}, {Q}, {R}, {S}": ("area", 4),
    f"Insert restricted area, radius 3 cables, {P}": ("circle", 1),
    f"Insert 500m safety zone around {P}": ("circle", 1),
    f"Insert wreck seaward of {P}": ("point", 1),
    f"Move buoy from 0.5M N of {P} to {Q}": ("point", 1),
    f"Move buoy, Fl.Y.5s5M, from {P} to {Q}": ("point", 1),
    f"Move buoy half a mile to the north, from {P} to {Q}": ("point", 1),
}


@pytest.mark.parametrize(("words", "shape"), AS_TOLD.items())
def test_line_as_told_may_be_used(words: str, shape: tuple[str, int]) -> None:
    (action,) = actions_of(parse(f"{HEAD}{words}\n"))
    assert action.usable
    assert (action.geometry.shape, len(action.geometry.positions)) == shape


def test_circle_about_a_place_is_no_approximate_position() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert anchorage area, 2M radius, about {P}\n"))
    assert action.geometry.relation == "centred_on"
    assert action.geometry.positions[0].quality is None


def test_end_on_the_shore_of_two_places_is_told() -> None:
    bulletin = parse(f"{HEAD}Insert submarine cable joining {P}, {Q} and thence to the shore\n")
    (action,) = actions_of(bulletin)
    assert [p.iso6709 for p in action.geometry.positions] == [AT_P, AT_Q]
    assert "geometry-along-coast" in {one.code for one in bulletin.findings}


@pytest.mark.parametrize(
    "words",
    ["wreck on line", "wreck on the line", "piles on a line"],
)
def test_a_thing_on_a_line_lies_at_none_of_its_ends(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P} {Q}\n")
    assert errors(bulletin) == {"shape-not-as-told"}


@pytest.mark.parametrize("words", ["wrecks on", "wreck between", "wreck on the line between"])
def test_other_words_on_two_places_tell_no_line(words: str) -> None:
    assert errors(parse(f"{HEAD}Insert {words} {P} and {Q}\n")) == set()
