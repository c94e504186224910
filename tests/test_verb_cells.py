"""Cells of verbs that say more: how a thing lies to its places, and what of it changes."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.verbs import canonical_verb
from tests.short_notices import AT_P, HEAD, P, Q, R, actions_of, codes, errors, told

LATER = f"insert | rock | {R}\n"


def _table(verb: str, thing: str, where: str) -> str:
    return f"{HEAD}Action | Object | Position\n{verb} | {thing} | {where}\n{LATER}"


@pytest.mark.parametrize("where", [f"{P} {Q} {R}", f"{P}, {Q} and {R}"])
@pytest.mark.parametrize(
    "verb",
    [
        "insert along the line joining these places",
        "insert joining these positions",
        "Insert the line joining these points",
        "lay along line joining these positions",
    ],
)
def test_a_line_joins_the_places(verb: str, where: str) -> None:
    bulletin = parse(_table(verb, "gas pipeline", where))
    first, _ = actions_of(bulletin)
    assert (first.verb, first.geometry.shape, first.geometry.relation) == (
        "insert", "line", "joining",
    )  # fmt: skip
    assert len(first.geometry.positions) == 3
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "verb", ["insert bounded by these positions", "insert within these places"]
)
def test_an_area_is_bounded_by_them(verb: str) -> None:
    bulletin = parse(_table(verb, "restricted area", f"{P} {Q} {R}"))
    assert actions_of(bulletin)[0].geometry.shape == "area"
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    ("verb", "relation", "direction"),
    [
        ("delete close NE of this position", "close", "NE"),
        ("delete close to this place", "close", None),
        ("delete at this place", "at", None),
        ("delete in this position", "at", None),
        ("delete (this place)", "at", None),
    ],
)
def test_a_thing_lies_at_or_beside_it(verb: str, relation: str, direction: str | None) -> None:
    bulletin = parse(_table(verb, "wreck", P))
    first, _ = actions_of(bulletin)
    assert (first.verb, first.geometry.relation) == ("delete", relation)
    assert first.geometry.direction == direction
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        "delete at this place",
        "delete in these places",
        "delete from this position",
        "delete in place",
    ],
)
def test_a_place_is_no_order_to_place(words: str) -> None:
    assert canonical_verb(words) == "delete"
    assert canonical_verb("to be placed") == "insert"
    assert canonical_verb("remove along the line joining these places") is None


@pytest.mark.parametrize(
    ("verb", "properties"),
    [
        ("amend period to 10s", ["light.period_s"]),
        ("amend range to 9M and period to 10s", ["light.ranges_nm", "light.period_s"]),
        ("amend elevation from 18m to 20m", ["light.elevation_m"]),
        ("change the range to 9M", ["light.ranges_nm"]),
    ],
)
def test_a_property_changes(verb: str, properties: list[str]) -> None:
    bulletin = parse(_table(verb, "light, Fl.8s18m13M", P))
    first, _ = actions_of(bulletin)
    assert first.verb == "amend"
    assert [one.property for one in first.changes] == properties
    assert codes(bulletin) == set()


def test_keys_say_it_too() -> None:
    key = f"Position: {P}\nObject: light, Fl.8s18m13M\nAction: amend period to 10s\n"
    (action,) = actions_of(parse(f"{HEAD}\n{key}"))
    assert action.usable
    assert [one.property for one in getattr(action, "changes", [])] == ["light.period_s"]


@pytest.mark.parametrize(
    "verb",
    [
        "insert close to the pier",
        "insert when the works are complete",
        "insert between these places",
        "amend character",
        "remove along the shore",
    ],
)
def test_other_words_are_no_verb(verb: str) -> None:
    bulletin = parse(_table(verb, "wreck", f"{P} {Q}"))
    assert told(bulletin)[:1] == [("insert", "rock", [told(bulletin)[0][2][0]])]
    assert "verb-unknown" in errors(bulletin)


def test_places_that_are_joined_already_are_held_back() -> None:
    verb = "insert along the line joining these places"
    bulletin = parse(_table(verb, "gas pipeline", f"from {P} to {Q}"))
    assert not actions_of(bulletin)[0].usable


@pytest.mark.parametrize(
    "words",
    [
        "circle of radius 0.5 miles centre",
        "circle of radius 0.5M centre in",
        "circle of radius 500 m its centre at",
        "circle, radius 5 cables centre",
    ],
)
def test_a_middle_behind_the_radius(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert restricted area, {words} {P}\n")
    (action,) = actions_of(bulletin)
    assert (action.geometry.shape, action.geometry.relation) == ("circle", "centred_on")
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    ["circle of radius 0.5 miles middle", "with a radius of 0.5 miles having its middle in"],
)
def test_a_radius_with_a_middle_in_other_words_is_held_back(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert restricted area, {words} {P}\n")
    assert told(bulletin) == []
    assert "shape-not-as-told" in errors(bulletin)


def test_another_centre_is_none_of_a_circle() -> None:
    assert told(parse(f"{HEAD}Insert wreck, shopping centre {P}\n")) == [
        ("insert", "wreck", [AT_P])
    ]
