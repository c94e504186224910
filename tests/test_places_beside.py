"""Items that took the places of the one beside them are held back, and clean ones are not."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, codes, errors, told, usable_of

LIST = f"A: {P}\nB: {Q}\nC: {R}\n"
SMALL = f"(a) {P}\n(b) {Q}\n(c) {R}\n"


@pytest.mark.parametrize(
    "rows",
    [
        f"Insert wreck\nDelete rock\n{P}\n{Q}\n",
        f"Amend depth 8m to 7m\ndepth 9m to 6m\n{P}\n{Q}\n",
        f"Insert wreck A\nDelete buoy B\nInsert rock C\n{LIST}",
        f"Insert wreck A\nDelete buoy B\nPosition A: {P}\nPosition B: {Q}\n",
        f"A  {P}\nB  {Q}\nInsert wreck A\nDelete rock B\n",
        f"Insert light-buoys A and B.\nInsert wreck C.\n{LIST}",
        f"Insert light-buoy No 1 (1).\nDelete buoy (2).\n(1) {P}\n(2) {Q}\n",
    ],
)
def test_places_of_a_command_that_has_none(rows: str) -> None:
    bulletin = parse(f"{HEAD}{rows}")
    assert usable_of(bulletin) == []
    assert errors(bulletin) == {"item-without-position", "place-of-neighbour"}


def test_the_places_of_a_column_that_slid_by_one() -> None:
    rows = (
        f"Insert  wreck\n        rock          {P}\n        obstruction   {Q}\n"
        f"                      {R}\nDelete  buoy          {P}\n"
    )
    assert usable_of(parse(f"{HEAD}{rows}")) == [("delete", "buoy_generic")]


def test_places_on_the_line_of_their_thing_are_its_own() -> None:
    bulletin = parse(f"{HEAD}Insert wreck\nInsert rocks {P}, {Q} and {R}\nDelete pile\n")
    assert usable_of(bulletin) == [("insert", "rock")]
    bulletin = parse(f"{HEAD}Move buoy No 1 from {P}\n  to {Q}\nDelete pile\n")
    assert usable_of(bulletin) == [("move", "buoy_generic")]


@pytest.mark.parametrize(
    "items",
    ["wreck A; obstruction B; depth 5m C.", "wreck A; rock B.", "\nwreck A\nobstruction B"],
)
def test_things_parted_by_the_letters_of_a_list_below(items: str) -> None:
    bulletin = parse(f"{HEAD}Insert {items}\n{LIST}")
    assert usable_of(bulletin) == []
    assert "place-of-neighbour" in errors(bulletin)


@pytest.mark.parametrize("items", ["light-buoys A, B and C.", "rock A; rock B; rock C."])
def test_one_thing_at_all_letters_of_a_list(items: str) -> None:
    bulletin = parse(f"{HEAD}Insert {items}\n{LIST}")
    assert "place-of-neighbour" not in errors(bulletin)
    assert [len(places) for _, _, places in told(bulletin)] == [3]


def test_letters_that_name_the_ends_of_a_cable_part_no_things() -> None:
    rows = f"Insert submarine cable from tower A to platform B, joining:\nA: {P}\nB: {Q}\n"
    assert "place-of-neighbour" not in errors(parse(f"{HEAD}{rows}"))


@pytest.mark.parametrize(
    "items",
    [
        "wreck (a) and rock (b).",
        "wreck (a), rock (b).",
        "depth 5m (a) and depth 6m (b).",
        "wreck (a) and rock (b).\nDelete buoy (c).",
    ],
)
def test_a_letter_behind_a_thing_is_not_that_of_the_next(items: str) -> None:
    for rows in (f"Insert {items}\n{SMALL}", f"{SMALL}Insert {items}\n"):
        bulletin = parse(f"{HEAD}{rows}")
        assert usable_of(bulletin) == []
        assert "place-of-neighbour" in errors(bulletin)


def test_a_last_letter_is_lost_to_the_things_before_it() -> None:
    rows = f"Insert depth 5m (a); (b) and depth 6m (c).\n{SMALL}"
    assert usable_of(parse(f"{HEAD}{rows}")) == []


def test_letters_at_which_things_are_told_to_be() -> None:
    bulletin = parse(f"{HEAD}Insert wreck at (a) and rock at (b).\n(a) {P}\n(b) {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]
    assert not codes(bulletin)


@pytest.mark.parametrize("lead", ["Joining", "Between", "Along"])
def test_a_line_of_two_places_is_not_cut_at_its_joint(lead: str) -> None:
    rows = (
        f"{lead} {P} and {Q}\nInsert submarine cable\n{lead} {Q} and {R}\nInsert pipeline\n",
        f"Insert\n{lead} {P} and {Q}\nsubmarine cable\n{lead} {Q} and {R}\npipeline\n",
    )
    for each in rows:
        bulletin = parse(f"{HEAD}{each}")
        assert usable_of(bulletin) == []
        assert "place-of-neighbour" in errors(bulletin)


def test_lines_from_one_place_to_another_stay_whole() -> None:
    rows = f"From {P} to {Q}\nInsert submarine cable\nFrom {Q} to {R}\nInsert pipeline\n"
    bulletin = parse(f"{HEAD}{rows}")
    assert len(usable_of(bulletin)) == 2
    assert not codes(bulletin)


@pytest.mark.parametrize("place", [f"At {Q}", f"Through {Q}, {R}", f"Joining {Q} and {R}"])
def test_a_led_place_above_a_command_is_not_that_of_the_item_above(place: str) -> None:
    bulletin = parse(f"{HEAD}Delete wreck {P}\n{place}\nInsert submarine cable\n")
    assert usable_of(bulletin) in ([], [("insert", "cable_submarine")])
    assert errors(bulletin)


@pytest.mark.parametrize(
    "places",
    [
        (f"Centred on {P}, radius 0.5 miles", f"Centred on {Q}, radius 0.7 miles"),
        (f"{P} radius 0.5 miles", f"{Q} radius 0.7 miles"),
        (f"Radius 0.5 miles centred on {P}", f"Radius 0.7 miles centred on {Q}"),
        (f"Within 0.5 miles of {P}", f"Within 0.7 miles of {Q}"),
        (f"Through {P}, {R}", f"Through {Q}, {R}"),
    ],
)
def test_circles_and_lines_above_their_things_slide(places: tuple[str, str]) -> None:
    above, below = places
    rows = f"{above}\nInsert spoil ground\n{below}\nInsert anchorage\n"
    assert usable_of(parse(f"{HEAD}{rows}")) == []
