"""Properties named of the thing that has them, and words of the chart named as such."""

from __future__ import annotations

import pytest

import noticeparse
from noticeparse.records.action import Action

_P = "47-12.34S 123-45.67W"


def _action(words: str) -> Action:
    text = f"613/26 Corvane Sound\nChart 904 [588/26]\n{words} {_P}\n"
    return noticeparse.parse(text).notices[0].charts[0].actions[0]


@pytest.mark.parametrize(
    "words",
    [
        "Delete height of tower,",
        "Delete the name, Brack Rock, of rock,",
        'Delete the name "Brack Rock" of the rock',
        "Delete name (Brack Rock) of rock",
        "Delete names of: beacon Brack",
        "Delete number of buoy No 4,",
        "Delete the number of light-buoy,",
        "Delete bell of buoy,",
        "Delete the danger circle of wreck,",
        "Insert height of 85m for tower,",
        "Insert height 85m against tower,",
        "Insert colour red for buoy,",
        "Insert PA against: wreck",
        "Insert bell to light-buoy",
        "Delete Fl.R.3s of light-buoy No 3",
        "Delete the F.R of beacon",
        "Delete Racon(K) of light-buoy",
        "Delete No 3 of light-buoy",
        "Insert remains of platform",
        "Insert the base of beacon",
        "Insert submerged remains of the old pier",
        "Delete remains of dolphins",
        "Insert platform (remains)",
    ],
)
def test_property_is_not_the_thing_that_has_it(words: str) -> None:
    assert not _action(words).usable


def test_name_is_moved_and_not_the_rock() -> None:
    assert not _action("Move name of rock from 47-13.34S 123-45.67W to").usable


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("Insert bell buoy", "buoy_generic"),
        ("Insert topmark on beacon", "topmark"),
        ("Insert horn on pier", "fog_signal"),
        ("Delete depth over wreck", "sounding"),
        ("Delete reported wreck", "wreck"),
        ("Insert PA wreck", "wreck"),
        ("Insert tower, height 85m,", "tower"),
        ("Amend height of tower to 85m,", "tower"),
        ("Insert number of piles", "pile"),
        ("Insert conspicuous tower with light", "tower"),
    ],
)
def test_things_with_a_property_stay(words: str, kind: str) -> None:
    action = _action(words)
    assert (action.feature.kind, action.usable) == (kind, True)


@pytest.mark.parametrize(
    ("words", "legend"),
    [
        ("Delete the word Wreck", "Wreck"),
        ("Delete word Obstn,", "Obstn"),
        ("Delete the abbreviation Wk,", "Wk"),
        ("Delete caption Pier,", "Pier"),
        ("Insert the words Fish farm,", "Fish farm"),
        ('Delete the words "Foul ground"', "Foul ground"),
        ("Insert magenta legend Works", "Works"),
        ("Insert legend Works", "Works"),
    ],
)
def test_words_of_the_chart(words: str, legend: str) -> None:
    feature = _action(words).feature
    assert (feature.kind, feature.legend) == ("legend", legend)


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("Delete Fl.R.3s on light-buoy", "light"),
        ("Delete light Fl.R.3s of light-buoy", "light"),
        ("Delete light-buoy No 3, Fl.R.3s", "light_buoy_generic"),
        ("Delete Fl.R.3s light-buoy", "light_buoy_generic"),
        ("Insert remains of wreck", "wreck_remains"),
        ("Insert obstruction (remains of platform)", "obstruction"),
        ("Insert foul ground, remains of pier,", "foul_ground"),
    ],
)
def test_what_is_named_with_its_owner_and_read(words: str, kind: str) -> None:
    action = _action(words)
    assert (action.feature.kind, action.usable) == (kind, True)
