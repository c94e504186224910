"""Rows of an old and a new state without verbs, where the feature stands beside its place."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.changes import read_change
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told

TITLES = "POSITION OR THING                           | OLD                | NEW\n"
RULE = "--------------------------------------------+--------------------+-----------------\n"


def _read(*rows: tuple[str, str, str]) -> Bulletin:
    lines = "".join(f"{' | '.join(cells)}\n" for cells in rows)
    return parse(HEAD + TITLES + RULE + lines)


def _changes(bulletin: Bulletin) -> list[tuple[str, object]]:
    return [
        (change.property, change.new)
        for action in actions_of(bulletin)
        if action.usable and action.verb == "amend"
        for change in action.changes
    ]


@pytest.mark.parametrize(
    ("thing", "old", "new", "changed"),
    [
        ("light, Fl.R.4s9m5M,", "range 5M", "range 8M", "light.ranges_nm"),
        ("light, Fl.R.4s9m5M,", "period 4s", "period 6s", "light.period_s"),
        (
            "Corvane Point light, Fl.R.4s9m5M,",
            "elevation 9m",
            "elevation 12m",
            "light.elevation_m",
        ),
        ("road bridge,", "vertical clearance 12.5 m", "vertical clearance 11.9 m", "clearance"),
        ("overhead cable,", "safe clearance 30 m", "safe clearance 28 m", "clearance"),
        ("wreck,", "least depth 5.1 m", "least depth 4.8 m", "depth"),
    ],
)
@pytest.mark.parametrize("joint", [" ", "  | {} | {}\n"], ids=["beside", "below"])
def test_a_property_alone_under_both_states(
    thing: str, old: str, new: str, changed: str, joint: str
) -> None:
    rows = [(f"{thing} {P}", old, new)] if joint == " " else [(thing, old, new), (P, "", "")]
    bulletin = _read(*rows)
    assert [path for path, _ in _changes(bulletin)] == [changed]
    (action,) = actions_of(bulletin)
    assert action.feature.kind != "unknown"
    assert not thing.endswith("5M,") or action.feature.light.written == "Fl.R.4s9m5M"
    assert not codes(bulletin)


def test_the_thing_of_a_move_stands_where_others_have_their_place() -> None:
    bulletin = _read(("special light-buoy, Fl.Y.5s", P, Q))
    (move,) = actions_of(bulletin)
    assert (move.verb, move.feature.kind, move.usable) == ("move", "buoy_special", True)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]


def test_a_place_under_one_state_and_a_dash_under_the_other() -> None:
    bulletin = _read(("wreck", P, "-"), ("rock", "-", Q))
    assert told(bulletin) == [("delete", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def test_a_place_under_one_state_and_nothing_under_the_other_is_held_back() -> None:
    assert told(_read(("wreck", P, ""))) == []


@pytest.mark.parametrize("states", [("range 5M", "-"), ("-", "range 5M"), ("-", "topmark X")])
def test_a_part_of_a_thing_under_one_state_alone_is_held_back(states: tuple[str, str]) -> None:
    # Whether the light goes, or its range, is not told.
    bulletin = _read((f"light-buoy, Fl.Y.5s, {P}", *states))
    assert told(bulletin) == []
    assert "state-of-part" in errors(bulletin)


@pytest.mark.parametrize("states", [("Fl.R.4s", "-"), ("-", "Fl.R.4s")])
def test_a_whole_light_under_one_state_is_the_thing_itself(states: tuple[str, str]) -> None:
    bulletin = _read((f"light, {P}", *states))
    assert len(told(bulletin)) == 1
    assert "state-of-part" not in errors(bulletin)


@pytest.mark.parametrize(
    ("phrase", "changed"),
    [
        ("light, Fl.R.4s9m5M from range 5M to range 8M", "light.ranges_nm"),
        ("bridge, from vertical clearance 12m to vertical clearance 11m", "clearance"),
        ("buoy from name No 4 to name No 5", "name"),
        ('from legend "Quay" to legend "Old quay"', "legend"),
    ],
)
def test_a_property_named_in_both_states(phrase: str, changed: str) -> None:
    reading = read_change(phrase)
    assert [change.property for change in reading.changes] == [changed]
    assert {fault.code for fault in reading.faults} <= {"feature-class-unknown"}


@pytest.mark.parametrize(
    "phrase",
    [
        "light, Fl.R.4s9m5M from range 5M to elevation 8m",
        "light, Fl.R.4s9m5M from range 5M to Fl.R.8s",
        "bridge, from vertical clearance 12m to horizontal clearance 11m",
        "bridge, vertical clearance 12m to horizontal clearance 11m",
    ],
)
def test_one_property_does_not_become_another(phrase: str) -> None:
    reading = read_change(phrase)
    assert reading.changes == ()
    assert "change-value-unread" in {fault.code for fault in reading.faults}
