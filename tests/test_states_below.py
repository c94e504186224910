"""Both states of a thing, told by keys below the command that names it and its place."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Replace
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told

WAS_RED = "was: Fl.R.3s\n  is: Fl.G.3s"
WAS_FIXED = "is: F.G\n  was: F.R"


def _changes(bulletin: Bulletin) -> list[tuple[str, str, str]]:
    return [
        (one.property, getattr(one.old, "written", one.old), getattr(one.new, "written", one.new))
        for action in actions_of(bulletin)
        if action.usable and action.verb == "amend"
        for one in action.changes
    ]


@pytest.mark.parametrize("blanks", [2, 6, 14])
@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("was", "is"),
        ("was", "now"),
        ("old", "new"),
        ("Former", "New"),
        ("before", "after"),
        ("formerly", "now"),
        ("existing", "new"),
    ],
)
@pytest.mark.parametrize(
    ("thing", "values", "change"),
    [
        ("light", ("Fl.R.3s7m4M", "Fl(2)R.6s7m6M"), ("light", "Fl.R.3s7m4M", "Fl(2)R.6s7m6M")),
        ("legend", ('"Sand"', '"Sand and stones"'), ("legend", "Sand", "Sand and stones")),
        ("depth", ("8.2 m", "7.6 m"), ("depth", "8.2 m", "7.6 m")),
        ('port-hand buoy "N2"', ('"N2"', '"N4"'), ("name", "N2", "N4")),
    ],
)
def test_states_below_the_place_are_of_the_amendment_above(
    thing: str,
    values: tuple[str, str],
    change: tuple[str, str, str],
    old: str,
    new: str,
    blanks: int,
) -> None:
    depth = " " * blanks
    body = (
        f"CHANGED   {thing}\n{depth}{P}\n{depth}{old}: {values[0]}\n{depth}{new}:  {values[1]}\n"
    )
    bulletin = parse(f"{HEAD}{body}ERASED    rock\n{depth}{Q}\n")
    assert _changes(bulletin) == [change]
    assert told(bulletin)[-1] == ("delete", "rock", [AT_Q])
    assert len(actions_of(bulletin)) == 2
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "body",
    [
        f"Amend light {P}\n  {WAS_RED}\nAmend light {Q}\n  {WAS_FIXED}\n",
        f"Changed:\n light {P}\n   {WAS_RED}\n light {Q}\n   {WAS_FIXED}\n",
        f"Amend light\n  {WAS_RED}\n  {P}\nAmend light\n  {WAS_FIXED}\n  {Q}\n",
        f"(a) Amend light {P}\n  {WAS_RED}\n(b) Amend light {Q}\n  {WAS_FIXED}\n",
        f"Amend light {P}\n  {WAS_RED}\n\nAmend light {Q}\n  {WAS_FIXED}\n",
        f"AMENDED   light\n          {P}\n  {WAS_RED}\nAMENDED   light\n  {Q}\n  {WAS_FIXED}\n",
    ],
)
def test_each_amendment_has_the_states_below_it(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert _changes(bulletin) == [("light", "Fl.R.3s", "Fl.G.3s"), ("light", "F.R", "F.G")]
    assert [one.geometry.positions[0].iso6709 for one in actions_of(bulletin)] == [AT_P, AT_Q]


@pytest.mark.parametrize(
    "states",
    [
        "was: Fl.R.3s",
        "is: Fl.R.3s\n  is: Fl.G.3s",
        "was: Fl.R.3s\n  was: Fl.Y.3s\n  is: Fl.G.3s",
        'was: "Sand"',
    ],
)
def test_states_that_are_no_pair_are_not_used(states: str) -> None:
    bulletin = parse(f"{HEAD}CHANGED   light\n  {P}\n  {states}\n")
    assert not _changes(bulletin)
    assert errors(bulletin)


def test_a_legend_of_which_only_the_old_words_are_told_is_held_back() -> None:
    bulletin = parse(f'{HEAD}CHANGED   legend\n   {P}\n   was: "Sand"\n')
    assert not _changes(bulletin)
    assert "new-value-empty" in errors(bulletin)


def test_from_and_to_below_an_amendment_are_its_states() -> None:
    bulletin = parse(f"{HEAD}Change light {P}\n   from: Fl.R.3s\n   to: Fl.G.3s\n")
    assert _changes(bulletin) == [("light", "Fl.R.3s", "Fl.G.3s")]


@pytest.mark.parametrize("verb", ["ERASED    ", "Insert "])
def test_states_below_another_command_change_nothing(verb: str) -> None:
    bulletin = parse(f"{HEAD}{verb}light {P}\n   was: Fl.R.3s\n   is: Fl.G.3s\n")
    assert not _changes(bulletin)
    assert errors(bulletin)


def test_a_place_below_the_states_is_of_another_thing() -> None:
    bulletin = parse(f"{HEAD}CHANGED   light {P}\n   was: F.R\n   is: F.G\n{Q} wreck\n")
    assert told(bulletin) == [("amend", "light", [AT_P])]
    assert errors(bulletin) == {"change-unread"}


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("was in", "is in"),
        ("was at", "is at"),
        ("was", "is"),
        ("old place", "new place"),
        ("was in position", "now in"),
        ("was at", "is now at"),
    ],
)
def test_both_places_of_a_move_below_it(old: str, new: str) -> None:
    move = f'MOVED     buoy "N2"\n          {old}: {P}\n          {new}:  {Q}\n'
    body = f"{move}NEW       tide gauge\n          {R}\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("move", "buoy_generic", [AT_P]), ("insert", "tide_gauge", [AT_R])]
    assert [p.iso6709 for p in actions_of(bulletin)[0].destination.positions] == [AT_Q]
    assert not codes(bulletin)


def test_a_move_that_does_not_say_where_to_takes_no_place_of_the_next_item() -> None:
    body = f"MOVED     buoy\n          was in: {P}\nNEW       wreck\n          {R}\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("insert", "wreck", [AT_R])]
    assert errors(bulletin) == {"move-without-destination"}


def test_new_in_the_column_of_the_commands_inserts_beside_states_of_others() -> None:
    body = (
        f"NEW       wreck\n          {P}\nCHANGED   light\n          {Q}\n"
        f"          was: F.R\n          is:  F.G\nNEW       rock\n          {R}\n"
    )
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("amend", "light", [AT_Q]),
        ("insert", "rock", [AT_R]),
    ]


def test_new_in_the_column_of_its_old_state_inserts_nothing() -> None:
    body = f"AMEND     buoy {P}\nOLD       port-hand buoy {P}\nNEW       starboard-hand buoy {P}\n"
    assert "insert" not in {one.verb for one in actions_of(parse(HEAD + body))}


def _replaced(bulletin: Bulletin) -> list[tuple[str, str]]:
    return [
        (action.feature.kind, action.replacement.kind)
        for action in actions_of(bulletin)
        if isinstance(action, Replace) and action.usable
    ]


@pytest.mark.parametrize(
    "above",
    [
        "REPLACE in {}",
        "Replace at {}:",
        "1. SUBSTITUTE in position {}",
        "REPLACE\n     {}",
        "  EXCHANGE   {}",
        "Replace wreck in {}",
    ],
)
@pytest.mark.parametrize(
    "states",
    [
        "     OLD: dangerous wreck\n     NEW: wreck, least depth 17.2 m\n",
        "   New: wreck, least depth 17.2 m\n   Old: dangerous wreck\n",
        "     was:  dangerous wreck\n     now:  wreck, least depth 17.2 m\n",
    ],
)
@pytest.mark.parametrize("last", ["REMOVE  rock in {}", "2. Delete rock {}"])
def test_a_replacement_may_name_its_place_alone(above: str, states: str, last: str) -> None:
    bulletin = parse(f"{HEAD}{above.format(P)}\n{states}{last.format(Q)}\n")
    assert _replaced(bulletin) == [("wreck_dangerous", "wreck_least_depth")]
    assert told(bulletin)[1:] == [("delete", "rock", [AT_Q])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("state", ["OLD: dangerous wreck", "NEW: dangerous wreck"])
def test_one_state_alone_is_no_replacement(state: str) -> None:
    bulletin = parse(f"{HEAD}REPLACE in {P}\n     {state}\nREMOVE  rock in {Q}\n")
    assert told(bulletin) == [("delete", "rock", [AT_Q])]
    assert "swap-not-divided" in errors(bulletin)


def test_a_whole_command_below_states_is_not_of_them() -> None:
    text = f"{HEAD}AMEND in {P}\n   OLD: beacon, Fl.G.3s\n   NEW: pile, Fl.G.5s\nADD rock in {Q}\n"
    assert told(parse(text)) == [("insert", "rock", [AT_Q])]
