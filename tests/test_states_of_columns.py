"""Columns FROM and TO that hold the old and the new state, where the place has its own column."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors, told

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n\n"
TITLES = "| Change  | Position              | From          | To            |\n"
RULE = "|---------|-----------------------|---------------|---------------|\n"


def _row(*cells: str) -> str:
    return f"| {' | '.join(cells)} |\n"


def _read(*rows: str, titles: str = TITLES + RULE) -> Bulletin:
    return parse(HEAD + titles + "".join(rows))


def test_what_a_feature_was_and_becomes_at_one_place() -> None:
    bulletin = _read(
        _row("Amend", P, "light, Fl.W.5s12m8M", "light, Fl(2)W.10s12m11M"),
        _row("Replace", Q, "depth 21 m", "depth 18 m"),
        _row("Replace", R, "east cardinal buoy", "north cardinal light-buoy,"),
        _row("       ", " ", "                  ", "VQ"),
        _row("Amend", P, 'legend "Landing"', 'legend "Ferry"'),
    )
    light, depth, buoy, legend = actions_of(bulletin)
    assert light.verb == "amend"
    assert depth.verb == "replace"
    (change,) = light.changes
    assert (change.old.written, change.new.written) == ("Fl.W.5s12m8M", "Fl(2)W.10s12m11M")
    assert buoy.verb == "replace"
    assert legend.verb == "amend"
    assert (depth.feature.depth.value_m, depth.replacement.depth.value_m) == (21, 18)
    assert buoy.feature.kind == "buoy_cardinal_east"
    assert buoy.replacement.kind == "buoy_cardinal_north"
    assert buoy.replacement.light.rhythm == "VQ"
    assert [(one.old, one.new) for one in legend.changes] == [("Landing", "Ferry")]
    assert not codes(bulletin)


@pytest.mark.parametrize("none", ["-", ""])
def test_what_comes_and_what_goes_has_one_state(none: str) -> None:
    bulletin = _read(_row("Insert", P, none, "wreck"), _row("Delete", Q, "rock", none))
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert not codes(bulletin)


def test_columns_of_states_hold_places_of_a_move_too() -> None:
    titles = "Action | Feature | Position | From | To\n"
    bulletin = _read(
        f"Amend | light | {P} | Fl.R.5s | Fl.R.3s\n",
        f"Move | mooring buoy | - | {Q} | {R}\n",
        titles=titles,
    )
    light, buoy = actions_of(bulletin)
    assert light.verb == "amend"
    assert light.usable
    assert light.changes[0].old.written == "Fl.R.5s"
    assert buoy.verb == "move"
    assert buoy.usable
    assert buoy.geometry.positions[0].iso6709 == AT_Q
    assert buoy.destination.positions[0].iso6709 == AT_R


def test_keys_of_a_record_tell_them_too() -> None:
    bulletin = parse(
        "12/26 Quill Sound\nChart 802 [3/26] WGS84\n\n"
        f"Action: Replace\nPosition: {P}\nFrom: wreck\nTo: dangerous wreck\n"
    )
    (action,) = actions_of(bulletin)
    assert action.verb == "replace"
    assert action.usable
    assert (action.feature.kind, action.replacement.kind) == ("wreck", "wreck_dangerous")


class TestWhereItDoesNotReach:
    """Places of a move, days, and ends of things stay what they are."""

    def test_days_limit_their_row(self) -> None:
        titles = "Action | Feature | Position | From | To\n"
        row = f"Insert | mooring buoy | {P} | 1 May 2026 | 30 June 2026\n"
        assert "cell-limits" in errors(_read(row, titles=titles))

    def test_places_of_a_move_are_no_states(self) -> None:
        titles = "Action | Feature | From | To\n"
        bulletin = _read(f"Move | mooring buoy | {P} | {Q}\n", titles=titles)
        (action,) = actions_of(bulletin)
        assert action.verb == "move"
        assert action.usable

    def test_an_end_that_cannot_be_read_is_no_state(self) -> None:
        titles = "Action | Position | From | To\n"
        bulletin = _read(f"Move | {P} | {P} | 46-0O.5OS I22-00.00W\n", titles=titles)
        assert errors(bulletin)
        assert told(bulletin) == []

    def test_ends_of_a_new_thing_are_not_what_it_was(self) -> None:
        titles = "Action | Feature | Position | From | To\n"
        row = f"Insert | submarine cable | {P} | Berth 4 | Berth 5\n"
        (action,) = actions_of(_read(row, titles=titles))
        assert (action.verb, action.feature.text) == ("insert", "submarine cable")


@pytest.mark.parametrize("titles", ["From | To", "Old | New"])
@pytest.mark.parametrize(
    "row",
    [
        f"Insert | {P} | rock | -", f"Delete | {P} | - | wreck",
        f"Insert | {P} | rock | wreck", f"Delete | {P} | rock | wreck",
    ],
)  # fmt: skip
def test_a_state_that_contradicts_its_verb_holds_the_row(titles: str, row: str) -> None:
    bulletin = _read(f"{row}\n", titles=f"Action | Position | {titles}\n")
    assert told(bulletin) == []
    assert "cell-misplaced" in errors(bulletin)
