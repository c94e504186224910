"""Rows with the position in front beside rows with it behind the feature."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
    usable_of,
)


@pytest.mark.parametrize(
    "rows",
    [
        f"{P}  insert wreck\ninsert rock {Q}\n{R}  insert pile\n",
        f"insert wreck {P}\n{Q}  insert rock\ninsert pile {R}\n",
        f"{P}: insert wreck\nInsert rock {Q}\n{R}: insert pile\n",
        f"In {P} insert wreck.\nInsert rock in {Q}.\nIn {R} insert pile.\n",
        f"(1) {P} insert wreck\n(2) Insert rock {Q}\n(3) {R} insert pile\n",
        f"1. {P}  insert wreck\n2. Insert rock {Q}\n3. {R}  insert pile\n",
        f"  Insert wreck {P}\n  {Q}  insert rock\n  {R}  insert pile\n",
    ],
)
def test_each_row_keeps_its_place(rows: str) -> None:
    bulletin = parse(f"{HEAD}{rows}")
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("insert", "rock", [AT_Q]),
        ("insert", "pile", [AT_R]),
    ]
    assert errors(bulletin) == set()


def test_what_stands_further_right_goes_on_with_the_row_above() -> None:
    rows = (
        f"  delete pipeline joining {P}\n"
        f"                          {Q}\n"
        f"  {R}  insert wreck\n"
        f"  {P}  insert cable joining\n"
        f"      {Q}\n"
    )
    bulletin = parse(f"{HEAD}{rows}")
    assert told(bulletin) == [
        ("delete", "pipeline", [AT_P, AT_Q]),
        ("insert", "wreck", [AT_R]),
        ("insert", "cable_submarine", [AT_P, AT_Q]),
    ]


def test_a_move_from_a_place_in_front() -> None:
    rows = f"{P}  shift special buoy to {Q}\ninsert rock {R}\n"
    moved, _ = actions_of(parse(f"{HEAD}{rows}"))
    assert isinstance(moved, Move)
    assert [p.iso6709 for p in moved.geometry.positions] == [AT_P]
    assert [p.iso6709 for p in moved.destination.positions] == [AT_Q]


def test_a_place_with_a_command_behind_it_is_no_end_of_the_line_above() -> None:
    rows = (
        f"{P}  insert wreck\n{Q}  insert rock\ninsert cable joining {P}\n{Q}\n{R}  delete stake\n"
    )
    bulletin = parse(f"{HEAD}{rows}")
    assert told(bulletin)[2:] == [
        ("insert", "cable_submarine", [AT_P, AT_Q]),
        ("delete", "beacon_generic", [AT_R]),
    ]


@pytest.mark.parametrize(
    ("rows", "kept"),
    [
        (f"Insert cable joining {P}\n{Q}\n{R}  delete stake\nInsert rock {P}\n", ["rock"]),
        (f"a) Insert pile {P}\nb) {Q}, delete wreck {R}\n", []),
        (f"a) Delete buoy {P}\nb) {Q}, insert depth 5.2\nc) {R}\n   Delete wreck\n", []),
        (f"{P} insert cable joining\n{Q}\n{R}\nDelete rock {P}\n", ["rock"]),
    ],
)
def test_where_the_place_may_be_of_either_both_are_held_back(rows: str, kept: list[str]) -> None:
    bulletin = parse(f"{HEAD}{rows}")
    assert [kind for _, kind in usable_of(bulletin)] == kept
    assert "place-before-verb" in errors(bulletin)
