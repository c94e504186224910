"""Decrees: `There is inserted, in P, a wreck`: things behind their verb."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, codes, errors, told

WRECK, ROCK = ("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        (f"There is inserted in {P} a wreck.", [WRECK]),
        (f"There is inserted, in {P}, a wreck.", [WRECK]),
        (f"There is hereby inserted a wreck in {P}.", [WRECK]),
        (f"There is added a wreck in {P}.", [WRECK]),
        (f"There is deleted the wreck in {P}.", [("delete", "wreck", [AT_P])]),
        (f"There are inserted a wreck in {P} and a rock in {Q}.", [WRECK, ROCK]),
        (f"There are inserted in {P} a wreck, and, in {Q}, a rock.", [WRECK, ROCK]),
        (f"There are inserted, in {P},\na wreck, and,\nin {Q}, a rock.", [WRECK, ROCK]),
        (f"There is inserted a wreck in {P}, and there is inserted a rock in {Q}.", [WRECK, ROCK]),
        (
            f"There is inserted in {P} a wreck; the rock in {Q} is deleted.",
            [WRECK, ("delete", "rock", [AT_Q])],
        ),
        (
            f"There is inserted a submarine pipeline joining {P}; {Q}; and {R}.",
            [("insert", "pipeline", [AT_P, AT_Q, "-4600.10-12200.20/"])],
        ),
        (f"There are inserted wrecks in {P} and {Q}.", [("insert", "wreck", [AT_P, AT_Q])]),
    ],
)
def test_things_stand_behind_the_verb(
    sentence: str, expected: list[tuple[str, str, list[str]]]
) -> None:
    bulletin = parse(f"{HEAD}\nArt. 1. {sentence}\n")
    assert told(bulletin) == expected
    assert codes(bulletin) == set()


def test_the_second_thing_has_its_own_stretch() -> None:
    text = f"{HEAD}\nArt. 1. There are inserted in {P} a wreck,\nand, in {Q}, a rock.\n"
    first, second = parse(text).notices[0].charts[0].actions
    assert first.text == f"Art. 1. There are inserted in {P} a wreck,"
    assert text[second.span.start : second.span.end].endswith(f"in {Q}, a rock.")
    assert second.span.line == first.span.line + 1


@pytest.mark.parametrize(
    "sentence",
    [
        f"There is inserted no wreck in {P}.",
        f"There is inserted, in {P}, no wreck.",
        f"There is substituted for the depth of 5m in {P} a depth of 6m.",
        f"There are inserted in {P} a wreck, a rock in {Q}.",
        f"There are inserted in {P} a wreck and a rock.",
    ],
)
def test_what_is_told_otherwise_is_held(sentence: str) -> None:
    bulletin = parse(f"{HEAD}\nArt. 1. {sentence}\n")
    assert told(bulletin) == []
    assert errors(bulletin)


def test_another_command_behind_is_not_lost() -> None:
    sentence = f"There is inserted a wreck in {P}, and there is altered the light in {Q}."
    bulletin = parse(f"{HEAD}\nArt. 1. {sentence}\n")
    assert told(bulletin) == [WRECK]
    assert errors(bulletin) == {"sentence-unread"}


def test_a_name_with_a_number_is_no_denial() -> None:
    bulletin = parse(f'{HEAD}\nArt. 1. There is inserted in {P} a wreck "No entry".\n')
    assert [verb for verb, _, _ in told(bulletin)] == ["insert"]
    bulletin = parse(f"{HEAD}\nArt. 1. There is inserted a special buoy, No 4, in {P}.\n")
    assert [verb for verb, _, _ in told(bulletin)] == ["insert"]


def test_a_thing_that_is_denied_in_capitals_is_held() -> None:
    bulletin = parse(f"{HEAD}THERE IS INSERTED, IN {P}, A WRECK, AND, IN {Q}, NO ROCK.\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"sentence-unread"}
