"""Kinds misspelt beside words that name a kind as well: the rest is not read for the whole."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, codes, errors, told, usable_of, words_unread

BESIDE = [
    ("noth cardinal buoy", "noth"),
    ("NOTH CARDINAL BUOY", "NOTH"),
    ("Noth cardinal buoy", "Noth"),
    ("danegrous wreck", "danegrous"),
    ("Danegrous wreck", "Danegrous"),
    ("port-han light-buoy", "han"),
    ("south cardiinal beacon", "cardiinal"),
    ("saoe-water buoy", "saoe"),
    ("overhed power cable", "overhed"),
    ("light-buoy with topmrak", "topmrak"),
]


@pytest.mark.parametrize(("phrase", "word"), BESIDE)
def test_words_beside_a_kind_that_are_none_are_told(phrase: str, word: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P} {Q}\n")
    assert words_unread(bulletin) == [f"`{word}` is not understood"]


THINGS = [
    "wrekc, least depth 12.4 m",
    "roc, least depth 3.4 m",
    "Obsstruction, least depth 4.5 m",
    "Oistruction, depth unknown",
    "WREKC, DEPTH 8.6 M",
    "rokc least depth 3.2 m",
    "rokc with least depth 3.2 m",
    "Rokc, dries 1.2 m",
    "Rokc, 3₄",
    "dangerous wrekc, least depth 8 m",
]


@pytest.mark.parametrize("phrase", THINGS)
def test_the_depth_of_a_thing_that_nobody_knows_is_no_sounding(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"feature-kinds-several"})


def test_two_marks_of_unlike_meaning_are_not_one() -> None:
    bulletin = parse(f"{HEAD}Insert port hand buoy starboard-hand buoy {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"feature-kinds-several"})


CLEAN = [
    ("north cardinal buoy", "buoy_cardinal_north"),
    ("wreck, least depth 12.4 m", "wreck_least_depth"),
    ("following depth: 12.3 m", "sounding"),
    ("data gathering buoy", "buoy_generic"),
    ("visitors mooring buoy", "buoy_mooring"),
    ("câble sous-marin / submarine cable", "cable_submarine"),
    ("Vessory rock, least depth 3.4 m", "rock"),
    ("port-hand buoy, port-hand", "buoy_lateral_port"),
]


@pytest.mark.parametrize(("phrase", "kind"), CLEAN)
def test_words_of_the_trade_and_of_use_are_not_told(phrase: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert usable_of(bulletin) == [("insert", kind)]
    assert codes(bulletin) <= {"geometry-too-few-positions"}
