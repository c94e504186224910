"""Lists of things named once, with what is said of each behind, or in front of, its place."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told


def read(item: str) -> list[tuple[str, str | None, Decimal | None, str | None]]:
    """Kind, name, depth and light of every action that may be used."""
    features = [a.feature for a in actions_of(parse(f"{HEAD}{item}\n")) if a.usable]
    return [
        (
            one.kind,
            one.name,
            one.depth.value_m if one.depth else None,
            one.light.written if one.light else None,
        )
        for one in features
    ]


DEPTHS = [
    f"Insert wrecks: {P}, 12m; {Q}, 15m.",
    f"Insert wrecks at {P}, 12m, and {Q}, 15m",
    f"Insert wrecks: {P}, depth 12m; {Q}, depth 15m.",
]


@pytest.mark.parametrize("item", DEPTHS)
def test_a_depth_behind_its_place_is_that_of_the_thing_there(item: str) -> None:
    assert read(item) == [
        ("wreck", None, Decimal(12), None),
        ("wreck", None, Decimal(15), None),
    ]
    assert told(parse(HEAD + item)) == [("insert", "wreck", [AT_P]), ("insert", "wreck", [AT_Q])]


def test_an_unknown_depth_is_a_depth_of_the_list() -> None:
    found = read(f"Insert wrecks: {P}, 12m; {Q}, 15m; {R}, depth unknown")
    assert [depth for _, _, depth, _ in found] == [12, 15, None]
    assert {kind for kind, *_ in found} == {"wreck"}


def test_lights_behind_their_places_are_parted() -> None:
    found = read(f"Insert light-buoys: {P}, Fl.R.4s; {Q}, Fl.G.4s.")
    assert [light for *_, light in found] == ["Fl.R.4s", "Fl.G.4s"]
    assert {kind for kind, *_ in found} == {"light_buoy_generic"}


@pytest.mark.parametrize(
    ("item", "names"),
    [
        (f'Insert platforms (Mo(U)15s) {P} "ELSA A"; {Q} "ELSA B"', ["ELSA A", "ELSA B"]),
        (f"Insert buoys, {P}, No 2 and {Q}, No 4", ["No 2", "No 4"]),
        (f"Delete buoys {P} (No 2), {Q} (No 4) and {R} (No 6)", ["No 2", "No 4", "No 6"]),
    ],
)
def test_names_behind_their_places_are_those_of_the_things_there(
    item: str, names: list[str]
) -> None:
    found = read(item)
    assert [name for _, name, *_ in found] == names
    assert len({kind for kind, *_ in found}) == 1
    assert errors(parse(HEAD + item)) == set()


def test_a_light_in_front_is_that_of_one_more_mark_of_the_list() -> None:
    found = read(f"Insert light-buoys Q.R at {P} (No 2) and {Q} (No 4), Q.G at {R} (No 1)")
    assert [(name, light) for _, name, _, light in found] == [
        ("No 2", "Q.R"),
        ("No 4", "Q.R"),
        ("No 1", "Q.G"),
    ]
    assert {kind for kind, *_ in found} == {"light_buoy_generic"}


def test_the_figures_of_a_list_of_depths_may_stand_in_brackets() -> None:
    found = read(f"Insert depths as follows: {P} (7.2), {Q} (5.4) and {R} (6.0)")
    assert [(kind, str(depth)) for kind, _, depth, _ in found] == [
        ("sounding", "7.2"),
        ("sounding", "5.4"),
        ("sounding", "6.0"),
    ]


@pytest.mark.parametrize(
    "item",
    [
        f"Insert rocks {P} (2m) and {Q} (3m)",
        f"Insert rocks {P} (2m) {Q} (3m)",
        f"Insert rocks (awash) {P} (1.2m), {Q} (2.1m)",
    ],
)
def test_a_length_in_brackets_beside_a_rock_is_told(item: str) -> None:
    bulletin = parse(HEAD + item)
    assert all(kind.startswith("rock") and depth is None for kind, _, depth, _ in read(item))
    assert [places for *_, places in told(bulletin)] == [[AT_P], [AT_Q]]
    assert codes(bulletin) == {"feature-figure-unread"}


@pytest.mark.parametrize(
    "item",
    [
        f"Insert wrecks: {P}, 12m; {Q}; {R}, 15m",
        f"Insert wrecks, {P}, 12m, {Q}, 15m, and rock {R}",
        f"Delete lights {P}, Fl.R.3s, {Q}",
        f"Insert restricted area bounded by {P} (old mole), {Q} (new mole) and {R}",
        f"Insert submarine cable {P} (shore end); {Q}",
        f"Insert jetty {P} (root) to {Q} (head)",
    ],
)
def test_a_list_that_does_not_come_out_even_is_held_back(item: str) -> None:
    bulletin = parse(HEAD + item)
    assert told(bulletin) == []
    assert "place-of-neighbour" in errors(bulletin)


def test_values_in_front_stay_where_they_are() -> None:
    found = read(f"Insert depth 12m {P}, 15m {Q}, 17m {R}")
    assert [depth for _, _, depth, _ in found] == [12, 15, 17]
    found = read(f"Insert depths 12m {P} (rep 2024), 15m {Q} (rep 2025)")
    assert [(kind, depth) for kind, _, depth, _ in found] == [("sounding", 12), ("sounding", 15)]


def test_a_depth_that_says_so_is_a_thing_of_its_own() -> None:
    item = f"Insert rocks in {P} and {Q}, depth 12m in {R}"
    assert told(parse(HEAD + item)) == [
        ("insert", "rock", [AT_P, AT_Q]),
        ("insert", "sounding", [AT_R]),
    ]


@pytest.mark.parametrize("names", [("No 1", "No 2"), ('"Brack"', '"Corv"')])
def test_a_light_behind_its_place_ends_the_row(names: tuple[str, str]) -> None:
    rows = f"{names[0]}, {P}, Fl.G.3s\n{names[1]}, {Q}, Fl.R.3s"
    told_of = read(f"Insert light-buoys:\n{rows}")
    assert [(name, light) for _, name, _, light in told_of] == [
        (names[0].strip('"'), "Fl.G.3s"),
        (names[1].strip('"'), "Fl.R.3s"),
    ]


def test_a_light_before_its_place_stays_with_it() -> None:
    rows = f"No 1, Fl.G.3s {P}\nNo 2, Fl.R.3s {Q}"
    told_of = read(f"Insert light-buoys:\n{rows}")
    assert [(name, light) for _, name, _, light in told_of] == [
        ("No 1", "Fl.G.3s"),
        ("No 2", "Fl.R.3s"),
    ]


@pytest.mark.parametrize("joint", ["; insert\n", ";\ninsert\n", " and insert\n"])
def test_a_verb_between_two_places_has_a_thing_of_its_own(joint: str) -> None:
    bulletin = parse(f"{HEAD}Delete the depth of 9.4 m in {P}{joint}{Q} and {R}.\n")
    assert told(bulletin) == [("delete", "sounding", [AT_P])]
    assert errors(bulletin) == {"item-without-feature"}
