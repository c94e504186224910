"""Places that may have slid from one item to the next."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, errors, usable_of


@pytest.mark.parametrize("word", ["Spot:", "Whereabouts", "At this spot -"])
def test_places_above_that_are_not_known_as_such(word: str) -> None:
    rows = f"{word} {P}\nInsert wreck\n{word} {Q}\nDelete rock\n{word} {R}\nInsert pile\n"
    bulletin = parse(f"{HEAD}{rows}")
    assert usable_of(bulletin) == []
    assert errors(bulletin) & {"place-of-neighbour", "item-without-position"}


def test_several_commands_below_one_such_place() -> None:
    rows = f"Spot: {P}\nInsert wreck\nDelete rock\nSpot: {Q}\nInsert pile\nDelete stake\n"
    assert usable_of(parse(f"{HEAD}{rows}")) == []


def test_only_what_stands_between_is_held_back() -> None:
    rows = f"Insert pile {P}\nSpot: {P}\nInsert wreck\nSpot: {Q}\nDelete rock\n"
    bulletin = parse(f"{HEAD}{rows}")
    assert usable_of(bulletin) == [("insert", "pile")]


def test_a_lone_place_and_no_bare_command_hold_nothing_back() -> None:
    bulletin = parse(f"{HEAD}{P}\nInsert wreck {Q}\nDelete rock {R}\n")
    assert "place-of-neighbour" not in errors(bulletin)
    assert [action.usable for action in actions_of(bulletin)] == [True, True]


def test_places_of_a_lettered_list_slide_to_nobody() -> None:
    rows = (
        f"(a) {P}; (b) {Q}.\nInsert wreck at (a).\nDelete rock at (b).\nRemove pile west of (f).\n"
    )
    bulletin = parse(f"{HEAD}{rows}")
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "rock")]
    assert errors(bulletin) == {"item-without-position"}


def test_places_behind_a_verb_of_their_own_slide_too() -> None:
    rows = f"INSERT:\n   through {P}, {Q}\n   submarine cable\n   close to {R}\n   cable buoy\n"
    assert usable_of(parse(f"{HEAD}{rows}")) == []
