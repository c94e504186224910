"""Verbs that stand behind the place of one item, and are those of the next: `P).REMOVE`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, errors, told


@pytest.mark.parametrize(
    "body",
    [
        f"ADD\n  1) wreck ({P}).REMOVE\n  2) rock ({Q}),\n  3) pile ({R}).",
        f"Ins wreck {P}.Del rock {Q}.\nDel pile {R}.",
        f"To be inserted :\nWreck . . . {P}   To be expunged :\nRock . . . {Q}\nPile . . . {R}",
        f"Insert wreck {P}.Delete rock {Q}. Delete pile {R}.",
    ],
)
def test_a_verb_close_behind_a_place_is_that_of_the_next(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("delete", "rock", [AT_Q]),
        ("delete", "pile", [AT_R]),
    ]  # fmt: skip
    assert not codes(bulletin)
    assert bulletin.coverage.unread == 0


def test_a_participle_behind_a_whole_command_holds_both_back() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}. deleted\nrock {Q}\nInsert pile {R}\n")
    assert told(bulletin) == [("insert", "pile", [AT_R])]
    assert "sentence-under-verb" in errors(bulletin)


@pytest.mark.parametrize(
    "body",
    [
        f"Insert wreck {P}.\nDelete rock {Q}.",
        f"Wreck {P} inserted.\nRock {Q} deleted.",
        f"INSERT\nwreck {P}\nDELETE\nrock {Q}",
    ],
)
def test_verbs_that_stand_apart_are_read_as_before(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "things",
    [
        ("wreck.", "special buoy."), ('legend "Foul".', "special buoy."),
        ('starboard-hand light-buoy, Fl.G.3s, "C1".', "wreck."), ("wreck", "rock"),
    ],
)  # fmt: skip
def test_two_rows_on_one_line_keep_their_places(things: tuple[str, str]) -> None:
    first, second = things
    row = f"{P}   Insert {first}   {Q}   Delete {second}\n{R}   Replace depth 8 m by depth 7 m.\n"
    bulletin = parse(HEAD + row)
    assert [(verb, at) for verb, _, at in told(bulletin)] == [
        ("insert", [AT_P]), ("delete", [AT_Q]), ("replace", [AT_R]),
    ]  # fmt: skip


def test_a_place_before_a_second_verb_is_its_own() -> None:
    text = f"In {P} insert wreck, in {Q} delete rock.\nIn {R} insert pile.\n"
    assert told(parse(HEAD + text)) == [
        ("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q]), ("insert", "pile", [AT_R]),
    ]  # fmt: skip


@pytest.mark.parametrize("text", [f"{P}   Move special buoy to   {Q}\n{R}   Delete rock."])
def test_a_move_keeps_both_its_places(text: str) -> None:
    assert [verb for verb, _, _ in told(parse(f"{HEAD}{text}\n"))] == ["move", "delete"]
