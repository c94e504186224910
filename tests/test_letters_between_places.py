"""Letters between the places of one line: whose they are is not said.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told

CABLE = ("insert", "cable_submarine", [AT_P, AT_Q, AT_R])


@pytest.mark.parametrize(
    "places",
    [
        f"{P} (a) {Q} (b) {R}",
        f"{P} (a) {Q} (b) {R} (c)",
        f"{P} (a), {Q} (b), {R} (c)",
        f"{P} (a) and {Q} (b) and {R} (c)",
    ],
)
def test_what_refers_to_such_a_letter_is_held_back(places: str) -> None:
    bulletin = parse(f"{HEAD}Insert cable joining {places}\nDelete rock (a)\n")
    assert told(bulletin) == [CABLE]
    assert errors(bulletin) == {"letter-unknown"}


@pytest.mark.parametrize(
    ("places", "at"),
    [
        (f"(a) {P} (b) {Q} (c) {R}", AT_P),
        (f"{P}, (a) {Q} and (b) {R}", AT_Q),
        (f"{P} and (a) {Q} and {R}", AT_Q),
    ],
)
def test_a_letter_in_front_of_its_place_is_read(places: str, at: str) -> None:
    bulletin = parse(f"{HEAD}Insert cable joining {places}\nDelete rock (a)\n")
    assert (told(bulletin), errors(bulletin)) == ([CABLE, ("delete", "rock", [at])], set())


def test_the_letter_of_the_next_item_stays() -> None:
    text = f"Insert (a) cable joining {P} {Q} (b) rock {R}\nDelete wreck close N of (b)\n"
    bulletin = parse(HEAD + text)
    assert [one[2] for one in told(bulletin)] == [[AT_P, AT_Q], [AT_R], [AT_R]]


def test_a_place_told_above_may_end_a_line() -> None:
    bulletin = parse(f"{HEAD}Insert rock (a) {R}\nInsert cable joining {P} {Q} (a)\n")
    assert told(bulletin) == [("insert", "rock", [AT_R]), CABLE]
