"""Sentences above and below commands that say how far they hold."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, codes, errors, usable_of

FIRST, SECOND = f"Insert wreck {P}\n", f"Delete rock {Q}\n"
CODE = "verb-limited-beside"


def usable(text: str) -> list[bool]:
    return [one.usable for one in actions_of(parse(text))]


OF_ALL_ABOVE = [
    "Disregard the above.",
    "The above deletion applies to the inset only.",
    "The above applies to chart 904 only.",
    "This applies to edition 6 only.",
    "Only if charted.",
    "Subject to confirmation.",
    "This is a proposal.",
    "Void",
    "Chart 802 is not affected.",
    "Chart 802 only if edition 5.",
    "These corrections apply to the paper chart only.",
    "Item 1 is void.",
    "The rock is not to be deleted.",
    "Not for chart 802.",
    "STOP PRESS: disregard the above",
]


@pytest.mark.parametrize("said", OF_ALL_ABOVE)
def test_what_is_said_below_holds_back_what_stands_above(said: str) -> None:
    bulletin = parse(f"{HEAD}{FIRST}{SECOND}{said}\n")
    assert CODE in codes(bulletin)
    assert usable_of(bulletin) == []


def test_what_stands_in_below_an_item_is_said_of_that_one() -> None:
    assert usable(f"{HEAD}{FIRST}{SECOND}    Only if charted.\n") == [True, False]


OF_WHAT_FOLLOWS = [
    "The following are not to be done:",
    "Earlier notice read:",
    "Wrong:",
    "On receipt of further notice:",
    "During the works:",
    "Cancelled:",
    "Alternatively:",
    "Phase 2:",
]


@pytest.mark.parametrize("said", OF_WHAT_FOLLOWS)
def test_what_leads_on_holds_back_what_stands_below(said: str) -> None:
    text = f"{HEAD}{FIRST}{said}\n{SECOND}Insert obstruction {R}\n"
    assert usable(text)[-2:] == [False, False]


def test_a_denial_above_a_command_takes_it_back() -> None:
    text = f"{HEAD}{FIRST}and not\n{SECOND}"
    assert usable(text) == [False]
    assert "verb-unknown" in errors(parse(text))


@pytest.mark.parametrize("said", ["For the next edition", "or", "Void"])
def test_a_line_that_may_be_of_both_holds_back_both(said: str) -> None:
    assert usable(f"{HEAD}{FIRST}{said}\n{SECOND}") == [False, False]


def test_words_before_a_command_on_its_line_hold_it_back() -> None:
    assert usable(f"{HEAD}Notice 4/26 is cancelled. It read: Insert wreck {P}\n") == [False]
    assert usable(f"{HEAD}{FIRST}If shown, delete rock {Q}\nInsert pile {R}\n")[1:] == [
        False,
        True,
    ]


def test_what_a_list_has_not_to_do_with_its_verb_is_held_back() -> None:
    said = "The following buoys have already been removed and need not be deleted:"
    rows = f"buoy No 3   {Q}\nbuoy No 4   {R}\n"
    assert usable(f"{HEAD}Insert\nbuoy No 2   {P}\n{said}\n{rows}")[1:] == [False, False]


@pytest.mark.parametrize("key", ["Status: cancelled", "Remarks: do not insert on chart 904"])
def test_a_key_of_the_record_holds_back_its_action(key: str) -> None:
    keys = f"Notice: 58/26\nChart: 802\nAction: Insert\nFeature: Wreck\nPosition: {P}\n"
    assert usable(f"{keys}{key}\n") == [False]


def test_what_a_cancelled_notice_said_is_held_back() -> None:
    assert usable(f"{HEAD}{FIRST}Notice 4/26 (cancelled):\n{SECOND}") == [True, False]


def test_words_above_that_are_not_understood_are_told_at_what_stands_below() -> None:
    bulletin = parse(f"{HEAD}{FIRST}Awaiting the tugs:\n{SECOND}")
    told = [one.paths for one in bulletin.findings if one.code == "feature-words-unread"]
    assert ["/notices/0/charts/0/actions/1"] in told


INFORMATION = [
    "All corrections apply to both charts.",
    "The corrections apply to chart 802 only.",
    "Note: The above positions are referred to WGS84.",
    "This chart will be republished as a new edition.",
    "Notice 4/26 is cancelled.",
    "Mariners are advised to navigate with caution until the works are complete.",
    "Chart 802 is not affected by the tide.",
]


@pytest.mark.parametrize("said", INFORMATION)
def test_what_is_said_to_mariners_limits_nothing(said: str) -> None:
    bulletin = parse(f"{HEAD}{FIRST}{SECOND}\n{said}\n")
    assert CODE not in codes(bulletin)
    assert len(usable_of(bulletin)) == len([FIRST, SECOND])


@pytest.mark.parametrize("before", ["NEW EDITION", "New chart", "new edition 2026"])
def test_rows_that_say_their_head_again_limit_nothing(before: str) -> None:
    row = "514/26\t306\t{}\t{}\t{}\t46°41'15\" S\t122°20'40\" W\n"
    titles = "Notice\tChart\tLast notice\tAction\tObject\tLatitude\tLongitude\n"
    rows = "".join(row.format(before, "insert", kind) for kind in ("wreck", "rock", "pile"))
    assert usable(titles + rows) == [True] * 3
    limited = rows + row.format("only for copies of 2020", "insert", "dolphin")
    assert not usable(titles + limited)[-1]


@pytest.mark.parametrize("mark", ["\t", ",", ";"])
def test_cells_in_quotes_that_say_their_head_again_limit_nothing(mark: str) -> None:
    titles = ("notice", "chart", "last_notice", "verb", "feature", "position")
    own = [("514/26", "306", "NEW EDITION", "ADD", kind, P) for kind in ("wreck", "rock", "pile")]
    text = "\n".join(mark.join(f'"{cell}"' for cell in row) for row in (titles, *own))
    assert usable(f"{text}\n") == [True] * 3
