"""Titles that state the degrees of the minutes below them: `Lat. 46° S`; letters for verbs."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, actions_of, codes, errors, places, told

BOTH = [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def _table(lat: str, lon: str, *rows: str, below: str = "") -> str:
    return f"{HEAD}Action | Object | {lat} | {lon}\n{below}" + "".join(f"{row}\n" for row in rows)


ROWS = ("Insert | wreck | 00.00' | 00.00'", "Delete | rock | 00.50' | 00.00'")


@pytest.mark.parametrize(
    ("lat", "lon"),
    [
        ("Lat. 46° S", "Long. 122° W"),
        ("Latitude 46°S", "Longitude 122°W"),
        ("Lat (46° S)", "Lon (122° W)"),
        ("Lat S 46°", "Long W 122°"),
        ("Lat. 46° -- S", "Long. 122° -- W"),
        ("46° S", "122° W"),
        ("Lat. 46 deg. S", "Long. 122 deg. W"),
    ],
)
def test_titles_state_degrees(lat: str, lon: str) -> None:
    bulletin = parse(_table(lat, lon, *ROWS))
    assert told(bulletin) == BOTH
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "figures",
    ["00.00' | 00.00'", "00.00 | 00.00", "00'.00 | 00'.00", "00,00' | 00,00'"],
)
def test_minutes_below_them_are_written_in_several_ways(figures: str) -> None:
    bulletin = parse(_table("Lat. 46° S", "Long. 122° W", f"Insert | wreck | {figures}"))
    assert places(bulletin) == [[AT_P]]
    assert errors(bulletin) == set()


def test_columns_between_blanks() -> None:
    text = (
        "Action     Object     Lat. 46° S     Long. 122° W\n"
        "Insert     wreck      00.00'         00.00'\n"
        "Delete     rock       00.50'         00.00'\n"
    )
    assert told(parse(HEAD + text)) == BOTH


def test_a_second_line_of_titles_states_them() -> None:
    bulletin = parse(_table("Lat.", "Long.", *ROWS, below="       |        | 46° S | 122° W\n"))
    assert told(bulletin) == BOTH
    blanks = (
        "Action     Object     Lat.           Long.\n"
        "                      46° S          122° W\n"
        "Insert     wreck      00.00'         00.00'\n"
    )
    assert told(parse(HEAD + blanks)) == BOTH[:1]


def test_minutes_and_seconds_have_their_marks() -> None:
    bulletin = parse(_table("Lat. 46° S", "Long. 122° W", "Insert | wreck | 18'42\" | 40'15\""))
    assert places(bulletin) == [["-461842-1224015/"]]
    bare = parse(_table("Lat. 46° S", "Long. 122° W", "Insert | wreck | 18 42 | 40 15"))
    assert told(bare) == []
    assert "position-shared-degrees-unknown" in errors(bare)


def test_a_row_that_leaves_the_degrees_states_its_own() -> None:
    bulletin = parse(_table("Lat. 45° S", "Long. 122° W", "Insert | wreck | 46°00.00' | 00.00'"))
    assert places(bulletin) == [[AT_P]]
    far = parse(_table("Lat. 40° S", "Long. 122° W", "Insert | wreck | 46 00.00 | 00.00"))
    assert told(far) == []


def test_figures_like_the_degrees_are_told_of() -> None:
    bulletin = parse(_table("Lat. 3° N", "Long. 0° E", "Insert | wreck | 2.42 | 0.15"))
    assert "position-shared-degrees-doubtful" in codes(bulletin)


def test_minutes_out_of_range_are_held_back() -> None:
    bulletin = parse(_table("Lat. 46° S", "Long. 122° W", "Insert | wreck | 71.42' | 00.00'"))
    assert errors(bulletin) == {"position-minutes-out-of-range"}


@pytest.mark.parametrize(
    "row", ["Insert | wreck | 46° S | 122° W", "| Insert | light | 46° S | 122° W |"]
)
def test_places_of_whole_degrees_are_no_titles(row: str) -> None:
    other = row.replace("Insert", "Delete").replace("46°", "47°")
    bulletin = parse(f"{HEAD}{row}\n{other}\n")
    assert [one.geometry.positions[0].iso6709 for one in actions_of(bulletin)] == [
        "-46-122/",
        "-47-122/",
    ]


KEY = "Key:  I = insert    D = delete    M = move\n"
LETTERS = "|   | Object | Lat. 46° S | Long. 122° W |\n| I | wreck | 00.00' | 00.00' |\n"


def test_letters_of_a_key_stand_in_a_column_without_a_title() -> None:
    row = "| D | rock | 00.50' | 00.00' |\n"
    bulletin = parse(f"{KEY}{HEAD}{LETTERS}{row}")
    assert told(bulletin) == BOTH
    assert codes(bulletin) == set()


def test_letters_that_the_key_does_not_have_are_no_verbs() -> None:
    bulletin = parse(f"{KEY}{HEAD}{LETTERS}| X | rock | 00.50' | 00.00' |\n")
    assert told(bulletin) == BOTH[:1]
    assert errors(bulletin) == {"verb-unknown"}
    without = parse(f"{HEAD}{LETTERS}")
    assert told(without) == []
