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
