"""A thing on a line of its own, above rows of verbs and places."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told

S = "46-01.00S 122-00.00W"
AT_S = "-4601.00-12200.00/"


@pytest.mark.parametrize("indent", ["", "   "])
def test_each_row_is_of_the_thing_above(indent: str) -> None:
    text = (
        f"{HEAD}Wreck\n{indent}Delete {P}\n{indent}Insert {Q}\n"
        f"Light-buoy, Q.R\n{indent}Delete {R}\n{indent}Insert {S}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("delete", "wreck", [AT_P]),
        ("insert", "wreck", [AT_Q]),
        ("delete", "light_buoy_generic", [AT_R]),
        ("insert", "light_buoy_generic", [AT_S]),
    ]
    assert not errors(bulletin)


def test_one_row_each_and_further_places() -> None:
    text = f"{HEAD}Wreck\nDelete {P}\nRock\nInsert {Q}\n       {R}\n"
    expected = [("delete", "wreck", [AT_P]), ("insert", "rock", [AT_Q, AT_R])]
    assert told(parse(text)) == expected


def test_words_below_their_places_are_read_as_before() -> None:
    text = f"{HEAD}Insert {P}\nwreck\nDelete {Q}\nrock\n"
    assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_row_without_a_feature_commands_nothing() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nDelete {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"item-without-feature"}


@pytest.mark.parametrize("link", ["(a) ", "in ", "in position "])
def test_words_that_lead_to_the_place_of_a_row(link: str) -> None:
    bulletin = parse(f"{HEAD}Wreck\nDelete {link}{P}\nInsert {link.replace('a', 'b')}{Q}\n")
    assert told(bulletin) == [("delete", "wreck", [AT_P]), ("insert", "wreck", [AT_Q])]
    assert not errors(bulletin)


def test_words_between_the_rows_are_not_made_part_of_the_thing() -> None:
    bulletin = parse(f"{HEAD}Wreck\nDelete {P}\nnot dangerous\nInsert {Q}\n")
    assert [kind for _, kind, _ in told(bulletin)] == ["unknown"]
    assert errors(bulletin) == {"item-without-feature"}


def test_a_thing_below_the_last_row_is_that_of_the_row() -> None:
    bulletin = parse(f"{HEAD}Wreck\nDelete {P}\nInsert {Q}\nRock\n")
    assert told(bulletin) == [("insert", "rock", [AT_Q])]
    assert errors(bulletin) == {"item-without-feature"}
