"""Brackets behind places that say where along the way they lie: `P (km 62.3, left bank)`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    R,
    actions_of,
    codes,
    errors,
    told,
    usable_of,
)

NOTES = [
    "(km 62.3)",
    "(km 62.3, left bank)",
    "(right side)",
    "(mid-channel)",
    "(starboard side, mile 4)",
    "(km 12.4-12.6)",
    "(4 km to seaward of the last post)",
    "(300 m upstream of Lorn Bridge)",
]


@pytest.mark.parametrize("note", NOTES)
@pytest.mark.parametrize(
    "body",
    [
        "Insert wreck {P} {note}\nDelete rock {Q} {note}\n",
        "Insert wreck\n    {P}  {note}\nDelete rock\n    {Q}\n",
        "Insertion of a wreck\n    {P}  {note}\nDeletion of the rock\n    {Q}  {note}\n",
        "{P} {note}   Insert wreck\n{Q} {note}   Delete rock\n",
    ],
)
def test_a_note_of_the_place_says_nothing_of_the_thing(body: str, note: str) -> None:
    bulletin = parse(HEAD + body.format(P=P, Q=Q, note=note))
    assert told(bulletin) == WRECK_AND_ROCK
    assert not codes(bulletin)


@pytest.mark.parametrize("note", [*NOTES, "(shore)", "(NE corner)", "(landing place)", "(N end)"])
@pytest.mark.parametrize("joint", ["\n    ", ", "])
def test_a_note_cuts_no_line(note: str, joint: str) -> None:
    places = joint.join((f"{P} {note}", Q, f"{R}  {note}"))
    bulletin = parse(
        f"{HEAD}Insert pipeline joining{joint.lstrip(',')}{places}\nDelete rock {Q}\n"
    )
    assert told(bulletin) == [
        ("insert", "pipeline", [AT_P, AT_Q, AT_R]),
        ("delete", "rock", [AT_Q]),
    ]
    assert not codes(bulletin)


@pytest.mark.parametrize("note", ["(km 3)", "(left side)"])
def test_a_note_stands_before_the_other_end(note: str) -> None:
    bulletin = parse(f"{HEAD}Move wreck from {P} {note} to {Q} {note}.\n")
    assert [one.destination is not None for one in actions_of(bulletin) if one.verb == "move"]
    assert told(bulletin) == [("move", "wreck", [AT_P])]


def test_the_side_of_the_way_is_no_side_of_a_mark() -> None:
    bulletin = parse(f"{HEAD}Insert buoy {P} (km 3, starboard side)\n")
    assert usable_of(bulletin) == [("insert", "buoy_generic")]


@pytest.mark.parametrize("bracket", ["(buoy, left bank)", "(2 km)", "(radius 2 km)", "(beacon)"])
def test_other_brackets_stay_with_the_words(bracket: str) -> None:
    bulletin = parse(f"{HEAD}Insert cable joining {P} {bracket}\n    {Q}\n")
    assert errors(bulletin)


@pytest.mark.parametrize("behind", ["(km 12) has begun.", "(planned)", "(see below) is delayed"])
def test_a_sentence_with_a_noun_stays_one(behind: str) -> None:
    assert not told(parse(f"{HEAD}Removal of the wreck in {P} {behind}\n"))
