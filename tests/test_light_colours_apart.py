"""Colours of lights that stand apart from the character; without one it is white (INT 1, P11)."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from noticeparse.records.action import Amend
from tests.short_notices import HEAD, P, codes

TOLD = [
    ("light, Fl.4s, red", "R"),
    ("light, Fl.4s (red)", "R"),
    ("red light Fl.4s", "R"),
    ("red light, flashing every 4 seconds", "R"),
    ("a green light flashing every 5 sec", "G"),
    ("light Fl.4s8m5M(R)", "R"),
    ("light R Fl 4s", "R"),
    ("yellow light, Fl.5s", "Y"),
    ("white light, Fl.5s", "W"),
    # Another kind of light is no other thing.
    ("red leading lights, F", "R"),
    ("leading lights, Oc.4s, green", "G"),
]


@pytest.mark.parametrize(("words", "colour"), TOLD)
def test_words_beside_a_light_tell_its_colour(words: str, colour: str) -> None:
    light = read_feature(words, None).feature.light
    assert light is not None
    assert (light.colours, light.colour_stated) == ([colour], True)


def test_its_range_is_that_of_its_colour() -> None:
    light = read_feature("light Fl.4s8m5M, red", None).feature.light
    assert light is not None
    assert light.range_by_colour == {"R": Decimal(5)}


@pytest.mark.parametrize(
    "words",
    [
        "light, red tower, Fl.4s",
        "light, Fl.4s, white tower with red bands",
        "red light-buoy, Fl.4s",
        "light-beacon, red, Fl.4s",
    ],
)
def test_the_colour_of_a_tower_or_a_mark_is_not_that_of_its_light(words: str) -> None:
    light = read_feature(words, None).feature.light
    assert light is not None
    assert (light.colours, light.colour_stated) == (["W"], False)


def test_a_stated_colour_stays() -> None:
    light = read_feature("light Fl.G.4s, red", None).feature.light
    assert light is not None
    assert light.colours == ["G"]


@pytest.mark.parametrize("words", ["light, Fl.4s, red, green", "light-beacon, Fl(2)6s (green)"])
def test_what_may_be_its_colour_is_told(words: str) -> None:
    assert "light-colour-apart" in codes(parse(f"{HEAD}Insert {words} {P}\n"))


def test_a_light_that_becomes_another_takes_the_colour_behind_it() -> None:
    (action,) = parse(f"{HEAD}Amend light to Fl.4s (red) {P}\n").notices[0].charts[0].actions
    assert isinstance(action, Amend)
    (change,) = action.changes
    assert (change.new.colours, change.new.remarks) == (["R"], [])


@pytest.mark.parametrize(
    "words", ["light-buoy, Fl.3s yellow", "port-hand light-buoy Fl.3s red, can"]
)
def test_a_colour_right_behind_the_light_of_a_mark_is_told(words: str) -> None:
    assert "light-colour-apart" in codes(parse(f"{HEAD}Insert {words} {P}\n"))


@pytest.mark.parametrize(
    "words",
    [
        "light-buoy, Fl.3s, yellow",
        "Fl.3s yellow light-buoy",
        "light-buoy Fl.3s red and white stripes",
        "light-buoy Fl.Y.3s yellow",
        "light-buoy Fl.3s white",
    ],
)
def test_paint_behind_the_light_of_a_mark_is_not_told(words: str) -> None:
    assert "light-colour-apart" not in codes(parse(f"{HEAD}Insert {words} {P}\n"))
