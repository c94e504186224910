"""Lights told by words of colour and rhythm: read where a character follows, told where none."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import HEAD, P, actions_of, codes

READ = [
    ("green fixed light", "F", ["G"], None),
    ("red flashing light", "Fl", ["R"], None),
    ("red flashing light every 4 seconds", "Fl", ["R"], Decimal(4)),
    ("flashing light every 4 s", "Fl", ["W"], Decimal(4)),
    ("green fixed leading lights", "F", ["G"], None),
    ("light, fixed, green", "F", ["G"], None),
    ("fixed light", "F", ["W"], None),
    ("flashing light", "Fl", ["W"], None),
]


@pytest.mark.parametrize(("words", "rhythm", "colours", "period"), READ)
def test_colour_and_rhythm_in_words(
    words: str, rhythm: str, colours: list[str], period: Decimal | None
) -> None:
    feature = read_feature(words, None).feature
    assert feature.text == words
    assert feature.light is not None
    light = feature.light
    assert (light.rhythm, light.colours, light.period_s) == (rhythm, colours, period)


@pytest.mark.parametrize(
    "words",
    [
        "green light",
        "light, red",
        "light (red)",
        "light, red, flashing",
        "light, fixed",
        "red and green light",
        "green leading lights",
        "port-hand light-buoy, flashing",
    ],
)
def test_a_light_without_its_character_is_told(words: str) -> None:
    assert "light-character-missing" in codes(parse(f"{HEAD}Insert {words} {P}\n"))


@pytest.mark.parametrize(
    "words",
    [
        "light",
        "red light-buoy",
        "red flashing light-buoy, Fl.R.4s",
        "light, red tower",
        "light on green pole",
        "fixed beacon",
        "fixed bridge",
        "red light, Fl.4s",
    ],
)
def test_paint_and_structures_are_no_character(words: str) -> None:
    assert "light-character-missing" not in codes(parse(f"{HEAD}Insert {words} {P}\n"))


CARRIED = [
    ("mast (R Lt)", True),
    ("chimney (Red Lts)", True),
    ("mast, red light", True),
    ("mast with red lights", True),
    ("mast (Red Obstn Lt)", True),
    ("flare stack (R Lt)", True),
    ("mast (light)", False),
    ("tower (lit)", False),
    ("mast (F.R Lts)", False),
]


@pytest.mark.parametrize(("words", "is_told"), CARRIED)
def test_a_light_beside_a_structure_stands_on_it(words: str, is_told: bool) -> None:
    (action,) = actions_of(bulletin := parse(f"{HEAD}Insert {words} {P}\n"))
    assert action.feature.s57 == ["LNDMRK", "LIGHTS"]
    assert action.feature.colours == []
    assert ("light-character-missing" in codes(bulletin)) is is_told


def test_a_mark_with_a_light_is_a_lit_one() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert port-hand buoy with red light {P}\n"))
    assert action.feature.kind == "light_buoy_port"


@pytest.mark.parametrize("words", ["mast (unlit)", "buoy (no light)", "tower, red"])
def test_no_light_is_carried(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert {words} {P}\n"))
    assert "LIGHTS" not in action.feature.s57


def test_a_light_on_a_rock_is_told() -> None:
    assert "light-character-missing" in codes(parse(f"{HEAD}Insert rock with light {P}\n"))
