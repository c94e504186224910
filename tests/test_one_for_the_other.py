"""`Insert A for B` puts a thing in the place of another of its sort; else `for` tells a use."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from noticeparse.readers.one_for_other import puts_one_for_other
from noticeparse.readers.swaps import read_swap
from tests.short_notices import HEAD, P, actions_of, codes, errors, kinds

REPLACED = [
    ("Insert wreck for rock", "rock", "wreck"),
    ("Add the wreck for the rock", "rock", "wreck"),
    ("Establish beacon for buoy", "buoy_generic", "beacon_generic"),
    ("Insert dangerous wreck for wreck", "wreck", "wreck_dangerous"),
    ("Insert light-buoy, Fl.R.3s, for can buoy", "buoy_can", "light_buoy_generic"),
    ("Insert wreck, depth 5m, for rock", "rock", "wreck"),
    ("Insert wreck PA for wreck", "wreck", "wreck"),
    ("Insert depth 5.3m for depth 6.1m", "sounding", "sounding"),
    ("INSERT WRECK FOR ROCK", "rock", "wreck"),
    ("Insert legend, Works, for legend, Marina", "legend", "legend"),
]


@pytest.mark.parametrize(("words", "old", "new"), REPLACED)
def test_thing_for_another(words: str, old: str, new: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    (action,) = actions_of(bulletin)
    assert action.verb == "replace"
    assert (action.feature.kind, action.replacement.kind) == (old, new)
    assert action.usable


def test_wordings_of_both_legends() -> None:
    swap = read_swap("legend, Works, for legend, Marina")
    assert (swap.feature.legend, swap.replacement.legend) == ("Marina", "Works")


USES = [
    ("berth for ferries", "berth"),
    ("light for ferries", "light"),
    ("beacon for measured distance", "beacon_generic"),
    ("special buoy for spoil ground", "buoy_special"),
    ("leading lights for pier", "leading_lights"),
    ("legend, Works for wreck removal", "legend"),
]


@pytest.mark.parametrize(("words", "kind"), USES)
def test_use_of_a_thing(words: str, kind: str) -> None:
    assert not puts_one_for_other(words)
    assert read_feature(words).feature.kind == kind


@pytest.mark.parametrize(
    "words",
    ["Insert light for buoy", "Insert isolated danger buoy for wreck", "Delete wreck for rock"],
)
def test_held_where_it_may_be_either(words: str) -> None:
    assert errors(parse(f"{HEAD}{words} {P}\n")) == {"feature-kinds-several"}


def test_light_for_a_buoy_is_no_thing_that_becomes_another() -> None:
    bulletin = parse(f"{HEAD}Amend light for buoy No 4 to Fl.R.5s {P}\n")
    assert kinds(bulletin) == [("amend", "light")]
    assert errors(bulletin)


MARKS = [
    ("light-buoy, Fl.R.3s, with Q.R", "light_buoy_generic", "Q.R"),
    ("light-buoy, Fl.R.3s, by VQ.R No 4", "light_buoy_generic", "VQ.R"),
    ("port-hand light-buoy, Fl.R.3s No 2, with Q.R", "light_buoy_port", "Q.R"),
    ("light-beacon, Fl.R.3s, with Q.R", "light_beacon", "Q.R"),
    ("light-buoy Fl.R.3s with Q.R", "light_buoy_generic", "Q.R"),
]


@pytest.mark.parametrize(("words", "kind", "light"), MARKS)
def test_mark_with_its_new_light(words: str, kind: str, light: str) -> None:
    swap = read_swap(words)
    assert (swap.feature.kind, swap.replacement.kind) == (kind, kind)
    assert swap.replacement.light is not None
    assert swap.replacement.light.written == light


@pytest.mark.parametrize(
    "words", ["light, Fl.R.3s, with Q.R", "light-buoy, Fl.R.3s, with light Q.R"]
)
def test_light_stays_one(words: str) -> None:
    assert read_swap(words).replacement.kind == "light"


def test_nothing_is_told_of_a_plain_thing_for_another() -> None:
    assert codes(parse(f"{HEAD}Insert wreck for rock {P}\n")) == set()
