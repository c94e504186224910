"""Tables with a column for the character of the light, beside what is to be changed of it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from noticeparse.records.light import Light
from tests.short_notices import actions_of, codes, errors

TITLES = "NtM;Chart;Prev NtM;Action;Object;Light;Latitude;Longitude\n"
ROW = "12/26;802;3/26;{verb};{words};{light};46 00.00S;122 00.00W\n"


def _amended(words: str, light: str) -> tuple[Amend, set[str]]:
    bulletin = parse(TITLES + ROW.format(verb="change", words=words, light=light))
    action = actions_of(bulletin)[0]
    assert isinstance(action, Amend)
    return action, codes(bulletin)


@pytest.mark.parametrize(
    ("words", "changes"),
    [
        ("light: period to 6s", [("light.period_s", "4", "6")]),
        ("Brack Head light, period to 6s", [("light.period_s", "4", "6")]),
        (
            "light: period to 6s, range to 9M",
            [
                ("light.period_s", "4", "6"),
                ("light.ranges_nm", "[Decimal('8')]", "[Decimal('9')]"),
            ],
        ),
    ],
)
def test_the_column_tells_the_light_as_it_was(
    words: str, changes: list[tuple[str, str, str]]
) -> None:
    action, told = _amended(words, "Fl.4s12m8M")
    assert told == set()
    assert action.feature.light is not None
    assert action.feature.light.written == "Fl.4s12m8M"
    assert [(one.property, str(one.old), str(one.new)) for one in action.changes] == changes


def test_a_whole_character_behind_to_is_the_new_one() -> None:
    action, told = _amended("light to Fl(2)R.6s12m8M", "Fl.R.4s12m8M")
    assert told == set()
    (change,) = action.changes
    assert isinstance(change.new, Light)
    assert (change.property, change.new.groups) == ("light", [2])


def test_a_column_that_has_the_new_value_already_is_told() -> None:
    assert _amended("light: period to 6s", "Fl.6s12m8M")[1] == {"change-of-nothing"}


@pytest.mark.parametrize("words", ["period to 6s", "light, period"])
def test_where_no_thing_or_no_new_value_is_named_nothing_is_divided(words: str) -> None:
    bulletin = parse(TITLES + ROW.format(verb="change", words=words, light="Fl.4s12m8M"))
    assert not actions_of(bulletin)[0].usable
    assert errors(bulletin)


def test_the_light_of_a_new_mark_stays_its_light() -> None:
    bulletin = parse(TITLES + ROW.format(verb="add", words="special light-buoy", light="Fl.Y.4s"))
    light = actions_of(bulletin)[0].feature.light
    assert light is not None
    assert light.written == "Fl.Y.4s"
    assert codes(bulletin) == set()
