"""Items into which the next one has run, and places told by pointing words."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import (
    AT_P,
    AT_Q,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
)

TWO_VERBS = {
    "two things": f"Position                Delete     Insert\n{P}   wreck      rock\n",
    "verbs first": f"        Insert    Delete    Position\n(a)     wreck     -         {P}\n",
    "marks": f"Feature  Position              Insert  Delete\nWreck    {P}   X\n",
}


@pytest.mark.parametrize("body", TWO_VERBS.values(), ids=list(TWO_VERBS))
def test_no_verb_holds_below_titles_of_two(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == []
    assert "verb-unknown" in errors(bulletin)


POINTING = {
    "there": f"Delete wreck in {P}; insert there a depth of 12.3m.\n{Q}: insert pile.\n",
    "here": f"Delete wreck in {P} and insert here a rock.\n{Q}: insert pile.\n",
    "same place": f"Delete buoy {P}; insert light-buoy same place;\n{Q} rock; {R} pile\n",
}


@pytest.mark.parametrize("body", POINTING.values(), ids=list(POINTING))
def test_what_is_there_has_not_the_next_place(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert [places for _, _, places in told(bulletin)] == [[AT_P]]
    assert "place-of-neighbour" in errors(bulletin)


RUN_ON = [
    f"Insert wreck in {P} and, on chart 803,\ndelete rock in {Q}.\n",
    f"Delete wreck in {P} and on chart 803 insert\npile in {Q}.\n",
    f"Insert wreck in {P} (also on chart 803)\n",
]


@pytest.mark.parametrize("body", RUN_ON)
def test_words_of_the_next_item_hold_both_back(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == []
    assert "verb-within-words" in errors(bulletin)


@pytest.mark.parametrize("joint", ["and", "and then"])
def test_a_joint_at_the_beginning_of_a_line_is_of_no_item(joint: str) -> None:
    bulletin = parse(f"{HEAD}Insert a\nwreck in {P},\n{joint} delete a rock in {Q}.\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert errors(bulletin) == set()


def test_the_thing_behind_and_in_is_another() -> None:
    bulletin = parse(f'{HEAD}Insert a depth of 12.3m and, in {P}, the legend "Foul".\n')
    assert told(bulletin) == []


def test_things_among_places() -> None:
    bulletin = parse(f"{HEAD}Insert   {P}: depth 5.1m; rock: {Q}; pile: {R}.\n")
    assert all(len(places) < 2 for _, _, places in told(bulletin))
    assert "feature-kinds-several" in errors(bulletin)


HEADINGS = {
    "a class and a colon": ("Delete the following lights:", "Quill Pier", "Brack Rock"),
    "a class that is told": ("BUOYS TO BE DELETED", "Brack Rock", "East Wreck"),
}


@pytest.mark.parametrize("words", HEADINGS.values(), ids=list(HEADINGS))
def test_names_of_places_below_a_class_are_no_things(words: tuple[str, str, str]) -> None:
    heading, first, second = words
    bulletin = parse(f"{HEAD}{heading}\n  {first}   {P}\n  {second}   {Q}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


@pytest.mark.parametrize("heading", ["Insert beacons at", "Delete depths over:"])
def test_only_the_first_below_a_relation_is_sure(heading: str) -> None:
    bulletin = parse(f"{HEAD}{heading}\n  Works   {P}\n  Wreck   {Q}\n")
    assert AT_Q not in [place for _, _, places in told(bulletin) for place in places]
    assert "feature-kinds-several" in errors(bulletin)


def test_each_below_legends_is_one() -> None:
    bulletin = parse(f"{HEAD}Insert legends:\n  Works   {P}\n  Wreck   {Q}\n")
    assert told(bulletin) == [("insert", "legend", [AT_P]), ("insert", "legend", [AT_Q])]


def test_a_light_on_a_rock_is_no_rock() -> None:
    bulletin = parse(f"{HEAD}Insert\n  North Mole, F.R   {P}\n  Brack Rock, Fl.5s   {Q}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


def test_a_dash_in_the_column_of_verbs_is_no_verb() -> None:
    rows = f"Object   Position               Action\nwreck    {P}   Delete\nrock     {Q}   -\n"
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert errors(bulletin) == {"verb-unknown"}


def test_a_position_said_twice_is_one() -> None:
    twice = "46°10.10'S 122°00.20'W (46.16833S 122.00333W)"
    assert [len(places) for _, _, places in told(parse(f"{HEAD}Insert wreck in {twice}\n"))] == [1]
    for other in ("46.18833S 122.00333W", "46°61.10'S 122°00.20'W"):
        bulletin = parse(f"{HEAD}Insert wreck in 46°10.10'S 122°00.20'W ({other})\n")
        assert told(bulletin) == []
        assert "position-not-the-same" in errors(bulletin)


def test_rows_without_a_column_of_things() -> None:
    rows = (
        "Delete    light-buoys:\n"
        "          Name    Character   Latitude    Longitude\n"
        "          Ann     Q.G         46-00.00S   122-00.00W\n"
        "          Bea     Q.R         46-00.50S   122-00.00W\n"
    )
    bulletin = parse(HEAD + rows)
    assert [(one.verb, one.feature.kind, one.feature.name) for one in actions_of(bulletin)] == [
        ("delete", "light_buoy_generic", "Ann"),
        ("delete", "light_buoy_generic", "Bea"),
    ]
    assert not errors(bulletin)


def test_words_before_the_next_place_are_those_of_it() -> None:
    body = f"Insert   {P} depth 4.2m\n   {Q} depth 5.1m,\n   rock {R},\n   wreck {P}\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("insert", "sounding", [AT_P])]
    assert "place-of-neighbour" in errors(bulletin)


def test_a_number_that_goes_on_below_is_in_doubt() -> None:
    bulletin = parse(f"{HEAD}Delete rock in {P} and pile No 1\n2 in {Q}\n")
    assert [kind for _, kind, _ in told(bulletin)] == ["rock"]
    assert errors(bulletin) == {"text-garbled"}


def test_what_a_thing_becomes_is_a_change() -> None:
    for words in ("becomes a light-beacon, Fl.5s", "is now a light-beacon, Fl.5s"):
        bulletin = parse(f"{HEAD}At {Q} a rock is inserted.\nAt {P} the beacon {words}.\n")
        told_of = {f.span.line for f in bulletin.findings if f.code == "sentence-unread"}
        assert told_of == {3, 4}
