"""Words for what is done to a thing are not the thing."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from tests.short_notices import AT_P, HEAD, P, Q, R, errors, told

OF_CHANGE = [
    f"Cancel insertion of rock {Q}",
    f"Delete the amendment of the light {Q}",
    f"A search for the wreck in {Q} has been discontinued.",
    f"The removal of the wreck in {Q} has been discontinued.",
    f"The marking of the wreck in {Q} has been discontinued.",
    f"Diving operations on the wreck in {Q} have been discontinued.",
]


@pytest.mark.parametrize("words", OF_CHANGE)
def test_what_is_done_to_a_thing_is_not_the_thing(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert errors(bulletin) in ({"verb-within-words"}, {"sentence-unread"})


def test_below_a_verb_of_its_own() -> None:
    text = f"{HEAD}Delete pile {P}\nDisregard deletion of rock {Q}\n"
    bulletin = parse(text)
    assert told(bulletin) == [("delete", "pile", [AT_P])]
    assert errors(bulletin) == {"verb-within-words"}


@pytest.mark.parametrize("words", ["remains of wreck", "submarine cable", "extension of pier"])
def test_parts_of_a_thing_are_no_change_of_it(words: str) -> None:
    assert "verb-within-words" not in errors(parse(f"{HEAD}Insert {words} {P}\n"))


@pytest.mark.parametrize("word", ["Disregard", "Please ignore", "Retain"])
def test_a_row_that_takes_the_verb_above_back(word: str) -> None:
    bulletin = parse(f"{HEAD}Delete\n   {word} rock {Q}\n   pile {P}\n")
    assert told(bulletin) == [("delete", "pile", [AT_P])]
    assert errors(bulletin) == {"sentence-under-verb"}


@pytest.mark.parametrize("joint", [", to", " to"])
def test_what_is_amended_opens_its_line_below_the_verb(joint: str) -> None:
    text = (
        f'{HEAD}Amend:\n  light at {P}{joint} Fl(2)10s\n  name of buoy at {Q}{joint} "Lodder"\n'
        f"  elevation of light at {R}{joint} 12m\n"
    )
    bulletin = parse(text)
    found = [a for c in bulletin.notices[0].charts for a in c.actions if isinstance(a, Amend)]
    assert [[one.property for one in a.changes] for a in found] == [
        ["light"],
        ["name"],
        ["light.elevation_m"],
    ]
    assert all(a.usable for a in found)
