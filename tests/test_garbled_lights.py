"""Letters and signs of a light's character that are none: no light is lost in silence."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, codes, errors, told, usable_of, words_unread

LETTERS = [
    ("light, F.X", "F"),
    ("light-buoy Fx R No 6", "Fx"),
    ("light, F,G", "G"),
    ("light, FR", "FR"),
    ("light, Fx.R", "Fx"),
    ("north cardinal light-buoy, O", "O"),
    ("east cardinal light-buoy, V", "V"),
    ('light-buoy F "T3"', "F"),
    ("light-buoy,  G No 7", "G"),
    ("port-hand light-buoy, Fl.G.s", "s"),
    ("port-hand light-buoy, Fl.R.Ss", "Ss"),
    ("light, Xl.R.5s", "R"),
    ("light, Fl(2.R.5s", "("),
]


@pytest.mark.parametrize(("phrase", "letters"), LETTERS)
def test_letters_in_place_of_a_light_are_told(phrase: str, letters: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert f"`{letters}` is not understood" in words_unread(bulletin)


@pytest.mark.parametrize(
    "phrase",
    ["port-hand light-buoy, Fl.R.?s", "light, Oc.R.6s10m?M", "light, 2F.R(vert)3m?M"],
)
def test_a_lost_figure_of_a_light_is_garbled(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"text-garbled"})


CLEAN = [
    "light, F.G",
    "light, F",
    "light-buoy, Fl.Y.5s, No 6",
    'light-buoy, Fl.Y.5s "T3"',
    "light-buoy F",
    "light-buoy IV, Fl.Y.5s",
    "special light-buoy, Y, Fl.Y.5s",
    "preferred-channel light-buoy, GRG, Fl(2+1)G.10s",
    "north cardinal light-buoy, Q",
    "light, Oc.R.6s10m5M",
    "special buoy, Y",
    "luz / light, F.R",
    "light-buoy Loe, Fl.Y.5s",
]


@pytest.mark.parametrize("phrase", CLEAN)
def test_whole_characters_are_not_told(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert len(usable_of(bulletin)) == 1
    assert codes(bulletin) == set()
