"""Letters from which a bearing or a direction is told, beside the place that it leads to."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_Q, HEAD, P, Q, actions_of, errors, told

BEACON = f"Insert (a) beacon {P}\n"


@pytest.mark.parametrize(
    "words",
    [
        "1.0 miles 180° from (a), in",
        "1.0 miles 180° from (a) in (b)",
        "1.0 miles S of (a), at",
        "1.0 miles S of (a), in position (b)",
    ],
)
def test_a_letter_from_which_a_bearing_is_told_is_no_second_one(words: str) -> None:
    bulletin = parse(f"{HEAD}{BEACON}Insert special buoy, {words} {Q}\n")
    assert told(bulletin)[1:] == [("insert", "buoy_special", [AT_Q])]
    assert {one.code for one in bulletin.findings if one.severity == "warning"} == {
        "offset-disagrees"
    }


def test_both_ends_of_a_move_may_have_letters() -> None:
    bulletin = parse(f"{HEAD}Move special buoy from (a) {P} to (b) {Q}\n")
    (move,) = actions_of(bulletin)
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]


def test_a_place_beside_that_of_the_reference_is_not_passed_over() -> None:
    text = f"{BEACON}Insert special buoy, 1 mile 180° from (a) above, {Q}\n"
    bulletin = parse(HEAD + text)
    assert [verb for verb, _, _ in told(bulletin)] == ["insert"]
    assert "relation-unclear" in errors(bulletin)


def test_the_place_of_the_reference_may_be_told_again() -> None:
    text = f"{BEACON}Insert special buoy, 1 mile 180° from (a) above, {P}\n"
    assert len(told(parse(HEAD + text))) == 2
