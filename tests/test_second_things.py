"""A second thing in the words of an item."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, P, Q, errors, told


@pytest.mark.parametrize(
    "words",
    [
        "Insert a rock where a wreck is charted",
        "Insert buoy which marks a wreck",
        "Delete the buoy that marked the wreck",
        "Insert a wreck and a rock",
        "Delete the buoy and the beacon",
        "Delete the wreck and rock",
        "Delete rock, also the pile",
        "Delete rock\nalso the pile",
        "Delete rock and also pile",
        "Delete rock as well as the pile",
        "Delete rock together with the pile",
        "Delete rock + pile",
        "Insert wreck starboard-hand buoy",
        "Insert light-buoy Fl.R.4s; light-buoy Fl.G.4s",
        "Insert port-hand light-buoy, Fl.R.4s, port-hand light-buoy, Fl.R.2s",
        "Insert light-beacon Fl.R.4s and light-beacon Fl.G.4s",
        "Delete light-float Fl.R.4s; light-buoy Fl.G.4s",
        "Insert special buoy; special light-buoy Fl.Y.4s",
        "Delete wreck; wreck",
        "Insert wreck Kindly rub away starboard-hand buoy",
    ],
)
def test_two_things_are_not_one(words: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


def test_two_things_of_one_sentence() -> None:
    bulletin = parse(f"{HEAD}The buoy and the beacon in {P} have been removed.\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"feature-kinds-several"})


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("a special buoy marking a wreck", "buoy_special"),
        ("wreck buoy", "buoy_generic"),
        ("a pier and light", "pier"),
        ("a pier, also Fl.R.3s 5m 3M", "pier"),
        ("a wreck and a depth of 8m", "wreck"),
        ("a beacon and a topmark", "beacon_generic"),
        ("a pier that is in ruins", "pier"),
    ],
)
def test_what_goes_with_a_thing_is_no_second(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}\n")
    assert told(bulletin) == [("insert", kind, [AT_P])]


@pytest.mark.parametrize(
    ("first", "second"),
    [("obstruction", "pile"), ("submarine cable", "buoy"), ("wreck", "tide gauge")],
)
def test_another_thing_on_the_next_line_is_told(first: str, second: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n{P} {first}\n    {second}\n{Q} rock\n    stake\n")
    assert errors(bulletin) == {"feature-kinds-several"}
    assert told(bulletin) == []


@pytest.mark.parametrize(
    ("first", "second", "kind"),
    [
        ("isolated danger", "light-buoy", "buoy_isolated_danger"),
        ("wreck,", "masts visible", "wreck_masts"),
        ("buoy", "south cardinal buoy", "buoy_cardinal_south"),
    ],
)
def test_a_description_may_go_on_below(first: str, second: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n{P} {first}\n    {second}\n{Q} rock\n")
    assert told(bulletin)[0] == ("insert", kind, [AT_P])


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("buoy as well as topmark", "buoy_generic"),
        ("light as well as fog signal", "light"),
        ("beacon as well", "beacon_generic"),
        ("well", "wellhead"),
        ("suspended well", "wellhead"),
    ],
)
def test_as_well_names_no_well(words: str, kind: str) -> None:
    (notice,) = parse(f"{HEAD}Insert {words} {P}\n").notices
    assert [action.feature.kind for action in notice.charts[0].actions] == [kind]


@pytest.mark.parametrize("quotes", ['""', "“”"])
def test_a_name_in_quotes_may_go_on_with_the_word_for_a_thing(quotes: str) -> None:
    left, right = quotes
    name = f"{left}Drayle\n  Rock{right}"
    ((action,),) = (
        chart.actions for chart in parse(f"{HEAD}Insert beacon, {name} {P}\n").notices[0].charts
    )
    assert (action.usable, action.feature.name) == (True, "Drayle Rock")
    second = parse(f"{HEAD}Insert beacon, {left}Drayle{right}\n  Rock {P}\n").notices[0].charts
    told_apart = [(one.feature.kind, one.usable) for chart in second for one in chart.actions]
    assert told_apart == [("beacon_generic", False), ("rock", True)]


@pytest.mark.parametrize(
    "words",
    [
        "Insert light Fl.R.4s; light Fl.G.4s",
        "Insert light-buoy, Fl.Y.4s; special",
        "Insert port light, can buoy, Fl.R.4s",
        "Insert light-buoy, Fl.Y.4s; topmark, X",
    ],
)
def test_words_behind_a_mark_may_be_its_own(words: str) -> None:
    assert errors(parse(f"{HEAD}{words} {P}\n")) == set()
