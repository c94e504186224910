"""`No change`, `Nil` and `retain` in the place of a verb: no other verb holds for the item."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.unchanged import changes_nothing
from tests.short_notices import HEAD, P, Q, R, errors, usable_of


def _usable(text: str) -> list[tuple[str, str]]:
    return usable_of(parse(text))


@pytest.mark.parametrize(
    "words",
    [
        "No change",
        "NO DELETION",
        "No further changes:",
        "Without removal",
        "Nil",
        "n/a",
        "retained",
    ],
)
def test_words_by_which_nothing_is_to_be_done(words: str) -> None:
    assert changes_nothing(words)


@pytest.mark.parametrize("words", ["", "Delete", "No 4 buoy", "North Mole", "rock", "-"])
def test_other_words(words: str) -> None:
    assert not changes_nothing(words)


@pytest.mark.parametrize(
    "heading",
    ["No change", "No deletion", "No insertion", "No addition", "Without removal", "Unchanged",
     "Nil", "NIL", "None"],
)  # fmt: skip
def test_a_heading_of_no_change_ends_the_verb_above(heading: str) -> None:
    text = f"{HEAD}Delete\nwreck   {P}\n{heading}\nrock   {Q}\n"
    assert _usable(text) == [("delete", "wreck")]
    assert errors(parse(text)) == {"item-without-verb"}


@pytest.mark.parametrize("gap", ["\n", ""])
@pytest.mark.parametrize("written", ["Nil", "None", "-", "", "No change"])
def test_a_record_without_a_verb_takes_none_from_another(written: str, gap: str) -> None:
    before = f"Action: Delete\nFeature: Wreck\nPosition: {P}\n{gap}"
    blank = f"Action: {written}\nFeature: Rock\nPosition: {Q}\n{gap}"
    text = f"{HEAD}{before}{blank}Action: Delete\nFeature: Pile\nPosition: {R}\n"
    assert _usable(text) == [("delete", "wreck"), ("delete", "pile")]
    assert errors(parse(text)) & {"item-without-verb", "verb-unknown"}


@pytest.mark.parametrize("written", ["-", "", "Nil"])
def test_a_verb_left_blank_at_the_end_of_its_record(written: str) -> None:
    before = f"Feature: Wreck\nPosition: {P}\nAction: Delete\n\n"
    text = f"{HEAD}{before}Feature: Rock\nPosition: {Q}\nAction: {written}\n"
    assert _usable(text) == [("delete", "wreck")]


@pytest.mark.parametrize("gap", ["\n", ""])
@pytest.mark.parametrize("word", ["retain", "keep", "leave", "stays", "unchanged", "blah"])
def test_a_word_behind_a_thing_that_is_no_verb(word: str, gap: str) -> None:
    text = f"{HEAD}{P}: Rock: delete\n{gap}{Q}: Buoy: {word}\n{gap}{R}: Rock: delete\n"
    assert _usable(text) == [("delete", "rock")]
    assert "verb-unknown" in errors(parse(text))


@pytest.mark.parametrize("word", ["Retain", "Stays", "Unchanged", "Blah"])
def test_a_word_before_a_thing_that_is_no_verb(word: str) -> None:
    text = f"{HEAD}{P}: Delete: Rock\n{Q}: {word}: Buoy\n{R}: Delete: Rock\n"
    assert _usable(text) == [("delete", "rock"), ("delete", "rock")]
    assert errors(parse(text)) & {"verb-unknown", "sentence-under-verb"}


@pytest.mark.parametrize(
    "when", ["in May", "in summer", "on 3 May 2027", "next year", "by the end of 2027", "shortly"]
)
def test_what_is_to_be_done_later_is_told(when: str) -> None:
    bulletin = parse(f"{HEAD}Beacon, to be removed {when}   {P}\n")
    assert "verb-dated" in {one.code for one in bulletin.findings}


def test_what_is_to_be_done_is_told_without_a_day() -> None:
    bulletin = parse(f"{HEAD}Beacon, to be removed   {P}\n")
    assert "verb-dated" not in {one.code for one in bulletin.findings}


@pytest.mark.parametrize("how", ["half", "partly", "partially", "almost", "soon", "once"])
def test_what_is_done_in_part_or_later_is_held_back(how: str) -> None:
    text = f"{HEAD}Pile, {how} removed   {P}\n"
    assert _usable(text) == []
    assert errors(parse(text)) == {"item-without-verb"}
