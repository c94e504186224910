"""Forms in which a crossed box tells what is to be done with the thing below."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend, Move
from tests.short_notices import (
    AT_P,
    AT_Q,
    HEAD,
    P,
    Q,
    R,
    actions_of,
    codes,
    errors,
    kinds,
    told,
)


def boxes(crossed: str, cross: str = "x") -> str:
    words = ("new", "taken away", "moved", "changed")
    return "   ".join(f"[{cross if one in crossed else ' '}] {one}" for one in words) + "\n"


def record(thing: str, place: str) -> str:
    return f"     What     {thing}\n     Where    {place}\n"


@pytest.mark.parametrize("cross", ["x", "X", "+", "*"])
def test_the_crossed_box_is_the_verb(cross: str) -> None:
    bulletin = parse(
        f"{HEAD}\n{boxes('new', cross)}{record('Wreck', P)}"
        f"{boxes('taken away', cross)}{record('Rock', Q)}"
    )
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert codes(bulletin) == set()
    assert bulletin.coverage.unread == 0
    assert [one.written_verb for one in actions_of(bulletin)] == ["insert", "taken away"]


def test_moves_and_changes_have_keys_of_their_own() -> None:
    bulletin = parse(
        f"{HEAD}\n{boxes('moved')}     What     Special buoy\n     From     {P}\n"
        f"     To       {Q}\n"
        f"{boxes('changed')}     What     Light, Fl.4s9m7M\n     Change   Range to 5M\n"
        f"     Where    {R}\n"
    )
    move, change = actions_of(bulletin)
    assert isinstance(move, Move)
    assert isinstance(change, Amend)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert [one.property for one in change.changes] == ["light.ranges_nm"]
    assert errors(bulletin) == set()


def test_places_on_further_lines_are_of_the_key_above() -> None:
    joined = f"joining {P}\n              and {Q}"
    bulletin = parse(f"{HEAD}\n{boxes('new')}{record('Submarine cable', joined)}")
    assert told(bulletin) == [("insert", "cable_submarine", [AT_P, AT_Q])]


@pytest.mark.parametrize("crossed", [(), ("new", "moved"), ("taken away", "changed")])
def test_no_crossed_box_or_several_are_held(crossed: tuple[str, ...]) -> None:
    row = "   ".join(
        f"[{'x' if one in crossed else ' '}] {one}"
        for one in ("new", "taken away", "moved", "changed")
    )
    bulletin = parse(f"{HEAD}\n{boxes('new')}{record('Wreck', P)}{row}\n{record('Rock', Q)}")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"verb-unknown"}
    assert kinds(bulletin) == [("insert", "wreck")]


def test_boxes_of_other_things_are_no_form() -> None:
    text = f"{HEAD}\n[x] read   [ ] filed\nInsert wreck {P}\n"
    assert told(parse(text)) == [("insert", "wreck", [AT_P])]
