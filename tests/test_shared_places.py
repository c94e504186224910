"""Two commands of one sentence with one place behind the second, and things in place of depths."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told


@pytest.mark.parametrize(
    ("words", "first"),
    [
        ("Delete wreck and insert depth 12m", ("delete", "wreck")),
        ("Delete wreck, and insert depth 12m in", ("delete", "wreck")),
        ("Delete wreck and\ninsert depth 12m", ("delete", "wreck")),
        ("Amend light to Fl(2)10s and insert depth 12m", ("amend", "light")),
    ],
)
def test_both_commands_are_done_at_the_place(words: str, first: tuple[str, str]) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\nDelete rock {Q}\n")
    assert told(bulletin) == [
        (*first, [AT_P]),
        ("insert", "sounding", [AT_P]),
        ("delete", "rock", [AT_Q]),
    ]
    assert not errors(bulletin)
    assert actions_of(bulletin)[0].feature.text.rpartition(" ")[2] != "and"


@pytest.mark.parametrize(
    "words",
    [
        f"Delete wreck. Insert depth 12m {P}",
        f"Delete wreck and move buoy from {P} to {Q}",
        f"Delete buoy and insert light-buoy, Fl.R.3s, close N of {P}",
        f"Delete cable and insert pipeline joining {P} and {Q}",
        f"Delete wreck and\n\ninsert depth 12m {P}",
    ],
)
def test_place_that_may_be_of_the_second_alone_is_not_shared(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert "item-without-position" in errors(bulletin)
    assert not actions_of(bulletin)[0].usable


@pytest.mark.parametrize("joint", ["in lieu of", "instead of", "in place of", "vice"])
@pytest.mark.parametrize(("new", "old"), [("depth 5m", "7m"), ("5m", "depth 7m")])
def test_figure_in_place_of_a_depth_is_one(joint: str, new: str, old: str) -> None:
    bulletin = parse(f"{HEAD}Insert {new} {joint} {old} {P}\n")
    (action,) = actions_of(bulletin)
    assert action.verb == "replace"
    assert action.usable
    assert [action.feature.depth.written, action.replacement.depth.written] == [old, new]


def test_figure_in_place_of_a_wreck_is_held_back() -> None:
    bulletin = parse(f"{HEAD}Insert wreck in lieu of 7m {P}\n")
    assert errors(bulletin) == {"swap-not-divided"}
