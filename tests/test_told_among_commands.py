"""Sentences with several changes among commands: each thing has the verb behind it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told

S, AT_S = "46-00.30S 122-00.40W", "-4600.30-12200.40/"


@pytest.mark.parametrize(
    ("change", "verb"),
    [
        ("replaced by a north cardinal\nlight-buoy, Q", "replace"),
        ("amended to Q.R", "amend"),
        (f"moved to {P}", "move"),
    ],
)
@pytest.mark.parametrize("behind", ["", f" Delete the wreck in {S}."])
def test_a_sentence_among_commands_is_cut_by_its_clauses(
    change: str, verb: str, behind: str
) -> None:
    text = (
        f"The roads were sounded again. Insert a rock in {P}. The north cardinal buoy in\n{Q} is "
        f"to be {change}, and the special buoy in {R} is to be deleted.{behind}\n"
    )
    bulletin = parse(HEAD + text)
    told_last = [("delete", "wreck", [AT_S])] if behind else []
    assert told(bulletin) == [
        ("insert", "rock", [AT_P]),
        (verb, "buoy_cardinal_north", [AT_Q]),
        ("delete", "buoy_special", [AT_R]),
        *told_last,
    ]
    assert errors(bulletin) == set()


def test_one_change_in_a_sentence_is_cut_as_before() -> None:
    text = f"Insert a rock in {P}. The beacon in {Q} is to be deleted. Delete the wreck in {R}.\n"
    bulletin = parse(HEAD + text)
    assert [one[0] for one in told(bulletin)] == ["insert", "delete", "delete"]


@pytest.mark.parametrize(
    "sentence",
    [
        f"The beacon in {Q} is to be inserted and a pile in {R}, and the rocks in {S} are to be "
        "deleted.",
        f"The beacon in {Q} is to be moved to {R} and is to be deleted.",
    ],
)
def test_a_sentence_that_leaves_open_what_changes_is_held(sentence: str) -> None:
    bulletin = parse(f"{HEAD}Insert a rock in {P}. {sentence}\n")
    assert told(bulletin) == [("insert", "rock", [AT_P])]
    assert errors(bulletin)


def test_what_is_for_some_charts_stays_below_their_line() -> None:
    text = (
        "12/26 Quill Sound.\nChart 802 [3/26] WGS84\nChart 803 [4/26] WGS84\n"
        f"Insert a rock in {P}.\nChart 803 only:\n"
        f"The beacon in {Q} is to be amended to Q.R, and the buoy in {R} is to be deleted.\n"
    )
    bulletin = parse(text)
    assert ("802", "delete") not in [
        (chart.chart, action.verb)
        for chart in bulletin.notices[0].charts
        for action in chart.actions
        if action.usable
    ]
    assert len(actions_of(bulletin)) > 1
