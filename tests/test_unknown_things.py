"""A second thing that nobody knows is told, and not lost beside the one that is read."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, errors, usable_of, words_unread

LOST = [
    ("Insert wreck and frobnicator", "frobnicator"),
    ("Insert wreck and a frobnicator", "frobnicator"),
    ("Insert wreck & frobnicator, least depth 5m", "frobnicator"),
    ("Insert wreck with frobnicator", "frobnicator"),
    ("Insert frobnicator and wreck", "frobnicator"),
    ("Delete port-hand light-buoy, Fl.R.4s, and frobnicator", "frobnicator"),
    ("Replace rock by wreck and frobnicator", "frobnicator"),
    ("INSERT WRECK AND FROBNICATOR", "FROBNICATOR"),
]


@pytest.mark.parametrize(("words", "lost"), LOST)
def test_what_is_joined_to_a_thing_is_told(words: str, lost: str) -> None:
    told = words_unread(parse(f"{HEAD}{words} {P}\n"))
    assert told == [f"`{lost}` is not understood"]


def test_a_third_thing_holds_the_item() -> None:
    bulletin = parse(f"{HEAD}Insert wreck, frobnicator and rock {P}\n")
    assert errors(bulletin) == {"feature-kinds-several"}
    assert usable_of(bulletin) == []


@pytest.mark.parametrize(
    "words",
    [
        "Insert red and white buoy",
        "Insert rusty and collapsed pier",
        "Insert wreck Smith and Jones",
        'Insert legend, "Wrecks and frobnicators"',
        "Insert depth 12m, sand and shells",
        "Insert pipeline, oil and gas, joining 46-00.50S 122-00.00W",
        "Insert pilot boarding place (by day and night)",
        "Insert wreck and mast",
    ],
)
def test_no_second_thing(words: str) -> None:
    assert words_unread(parse(f"{HEAD}{words} {P}\n")) == []
