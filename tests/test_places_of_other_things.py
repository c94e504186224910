"""Sentences with a place that is that of another thing than the one they tell of."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told

OF_ANOTHER = [
    f"The wreck in {P} has been removed; not so the rock in {Q}.",
    f"The wreck in {P} has been removed, as has the light-buoy, Q.R, in {Q}.",
    f"A wreck in {P} is inserted; a rock likewise in {Q}.",
    f"A light-buoy, Q.R, has been established in {P} instead of {Q}.",
    f"A buoy has been established in {P}, not in {Q} as announced.",
    f"A buoy has been established in {P} to mark the wreck in {Q}.",
    f"A light-buoy, Q.R, has been established in {P}, near the wreck in {Q}.",
    f"The wreck in {P} near the rock in {Q} has been removed.",
    f"The wreck in {P}, not the one in {Q}, has been removed.",
    f"The light in {P} has been altered to F.R; that in {Q} to F.G.",
]


@pytest.mark.parametrize("sentence", OF_ANOTHER)
def test_a_place_of_another_thing_is_not_given_to_the_first(sentence: str) -> None:
    bulletin = parse(f"{HEAD}{sentence}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"place-of-another"}


def test_what_remains_is_a_remark() -> None:
    bulletin = parse(f"{HEAD}The wreck in {P} has been removed; the obstruction in {Q} remains.\n")
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert [r.text for r in bulletin.notices[0].remarks] == [f"the obstruction in {Q} remains."]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "behind", [f"and in {Q}", f"and another in {Q}", f", also in {Q}", f"as well as in {Q}"]
)
def test_words_that_add_a_place_lead_to_the_same_thing(behind: str) -> None:
    bulletin = parse(f"{HEAD}A wreck has been found in {P} {behind}.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P, AT_Q])]


def test_both_ends_of_a_line_may_be_named() -> None:
    text = f"{HEAD}A submarine cable has been laid from {P} to the pier in {Q}.\n"
    assert told(parse(text)) == [("insert", "cable_submarine", [AT_P, AT_Q])]


@pytest.mark.parametrize(
    "ends", [f"position {P} with position\n   {Q}", f"{P} with {Q}", f"{P}, with the point {Q}"]
)
def test_a_line_joins_its_one_end_with_the_other(ends: str) -> None:
    bulletin = parse(f"{HEAD}Insert a pier joining {ends}.\nDelete the pile in {R}.\n")
    assert told(bulletin) == [("insert", "pier", [AT_P, AT_Q]), ("delete", "pile", [AT_R])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "item",
    [
        f"Insert a pier joining {P} with the light in {Q}.",
        f"Insert a pile in {P} with {Q}.",
        f"Insert a pier joining {P} and {R} with {Q}.",
        f"Replace the pier joining {P} with {Q}.",
        f"Move the pontoon joining {P} with {Q}.",
    ],
)
def test_other_words_with_a_place_join_nothing(item: str) -> None:
    bulletin = parse(f"{HEAD}{item}\n")
    assert not [places for *_, places in told(bulletin) if AT_Q in places]
    assert errors(bulletin)
