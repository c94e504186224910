"""Sentences and items with a slip that makes them no command: each is told, and none is lost."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_R, HEAD, P, Q, R, errors, told


@pytest.mark.parametrize(
    "sentence",
    [
        f"The wreck in {P} is m oved to {Q}.",
        f"The wreck in {P} is\nde1efed.",
        f"The wreck in {P} is to be del- eted.",
        f"The wreck in {P} has\nPage 12 of 13\nbeen deleted.",
        f"A wreck, dangerous, will\n[page 12]\nbe established in {P}.",
    ],
)
def test_a_sentence_whose_verb_cannot_be_read(sentence: str) -> None:
    bulletin = parse(f"{HEAD}{sentence}\nThe pile in {R} is inserted.\n")
    assert told(bulletin) == [("insert", "pile", [AT_R])]
    assert "sentence-unread" in errors(bulletin)


@pytest.mark.parametrize("command", ["insert a deptb", "in5ert a depth", "in sert a depth"])
def test_a_command_behind_its_place(command: str) -> None:
    body = f"(1) In {P}, {command} of 4 metres.\n(2) In {R}, insert a pile.\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("insert", "pile", [AT_R])]
    assert "sentence-unread" in errors(bulletin)


def test_a_command_behind_a_place_in_seconds() -> None:
    place = "47° 41' {}\" S., 125° 06' 45\" W."
    body = f"(1) In {place.format(20)}, insert a deptb of 4 fathoms.\n"
    bulletin = parse(f"{HEAD}{body}(2) In {place.format(38)}, insert a pile.\n")
    assert [(verb, kind) for verb, kind, _ in told(bulletin)] == [("insert", "pile")]
    assert "sentence-unread" in errors(bulletin)


@pytest.mark.parametrize("verb", ["in5ert", "in sert", "D elete"])
def test_an_entry_below_a_place_that_cannot_be_read(verb: str) -> None:
    first = f"1. Holm Spit, {P}\n   - delete buoy\n   - {verb} rock\n"
    body = f"{first}2. Holm Bay, {R}\n   - insert pile\n"
    bulletin = parse(HEAD + body)
    assert ("insert", "pile", [AT_R]) in told(bulletin)
    assert "rock" not in [kind for _, kind, _ in told(bulletin)]
    assert "sentence-unread" in errors(bulletin)


def test_a_verb_that_its_sentence_lost_to_the_next_line() -> None:
    body = f"The wreck in {P} has been\n\n12\n\ndeleted. The pile in {R} is inserted.\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == []
    assert "verb-within-words" in errors(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        "Mariners should keep clear of the wreck.",
        "The buoys will be withdrawn in winter.",
        "Vessels must not anchor near the cable.",
    ],
)
def test_what_is_said_to_mariners_is_no_lost_change(words: str) -> None:
    bulletin = parse(f"{HEAD}The pile in {R} is inserted.\n\n{words}\n")
    assert told(bulletin) == [("insert", "pile", [AT_R])]
    assert errors(bulletin) == set()
