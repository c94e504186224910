"""Words of an item that limit its command or take it back, and the marks of notes on items."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors

HOLDING = [
    "Delete rock, if charted, {P}",
    "Delete rock if charted {P}",
    "Delete rock, where shown, {P}",
    "Delete rock {P} (where charted)",
    "Insert wreck {P} (omit if rock already charted)",
    "Delete rock {P} (disregard)",
    "Delete rock [void] {P}",
    "Delete rock {P} (Superseded)",
    "Delete rock {P} (suspended)",
    "Delete rock {P} (on hold)",
    "Delete rock {P} (from 1 Jul to 31 Aug)",
    "Delete rock {P} (summer only)",
    "Insert wreck {P} in due course",
    "Insert wreck {P} (smaller scale charts only)",
    "Delete rock {P} (ENC only)",
    "Insert wreck {P} (edition 5 only)",
    "Delete rock {P} (omit on 904)",
    "Delete light-buoy (light only) {P}",
    "Delete rock {P} (name only)",
    "Delete rock, symbol only, {P}",
    "Delete rock {P} (now replaced by wreck)",
    "Amend light to Fl.5s (if charted) {P}",
    "Replace buoy by beacon {P} (only if charted)",
    "Move buoy from {P} to {Q} (void)",
]


@pytest.mark.parametrize("item", HOLDING)
def test_what_limits_a_command_holds_it_back(item: str) -> None:
    bulletin = parse(f"{HEAD}{item.format(P=P, Q=Q)}\n")
    assert [one.usable for one in actions_of(bulletin)] == [False]
    assert "item-limited" in errors(bulletin)


WARNING = [
    ("Delete rock {P} (by 1 July)", "verb-dated", "by 1 July"),
    ("Delete rock {P} (1 July 2026)", "verb-dated", "1 July 2026"),
    ("Delete rock {P} (temporarily)", "item-temporary", "temporarily"),
    ("Delete rock {P} (see 14/26)", "item-with-note", "see 14/26"),
    ("Delete rock {P} (see note 2)", "item-with-note", "(see note 2)"),
    ("Delete rock {P} (frobnicated)", "feature-words-unread", "frobnicated"),
    ("Delete rock {P} (?)", "feature-words-unread", "?"),
]


@pytest.mark.parametrize(("item", "code", "written"), WARNING)
def test_what_may_weigh_is_told_at_its_item(item: str, code: str, written: str) -> None:
    bulletin = parse(f"{HEAD}{item.format(P=P)}\n")
    told = [one for one in bulletin.findings if one.code == code]
    assert [one.paths for one in told] == [["/notices/0/charts/0/actions/0"]]
    assert told[0].message.startswith(f"`{written}`")


OF_THE_FEATURE = [
    "Insert anchorage area, small craft only, {P}",
    "Insert light, F.R, shown when the bridge is open, {P}",
    "Insert horn, in fog only, {P}",
    "Amend light to Fl.5s (by day only) {P}",
    "Insert suspended well, least depth 31m, {P}",
    "Insert wreck (reported on 3 May 2026) {P}",
    "Insert obstruction (container) {P}",
    'Insert legend, "Only if charted", {P}',
    'Insert light-buoy "Void" {P}',
    "Insert mooring buoy (Quill Sound Yacht Club) {P}",
]


@pytest.mark.parametrize("item", OF_THE_FEATURE)
def test_what_is_said_of_the_feature_limits_nothing(item: str) -> None:
    assert not codes(parse(f"{HEAD}{item.format(P=P)}\n")) & {
        "item-limited",
        "item-with-note",
        "verb-dated",
        "feature-words-unread",
    }


def test_what_a_thing_is_for_is_no_limit() -> None:
    bulletin = parse(f"{HEAD}Insert spoil ground, for dredged sand only, {P}\n")
    assert [one.usable for one in actions_of(bulletin)] == [True]


def test_a_condition_behind_a_comma_is_quoted() -> None:
    (told,) = [
        one
        for one in parse(f"{HEAD}Delete rock {P}, if charted\n").findings
        if one.code == "verb-conditional"
    ]
    assert told.message == "`if charted`: the command holds only then"


NOTES = [
    (f"Insert wreck¹ {P}\n", "¹ Not on chart 804."),
    (f"Insert wreck {P} †\n", "† Only on editions printed after 2024"),
    (f"Insert wreck {P} **\n", "** on receipt of confirmation only"),
    (f"Insert wreck {P} (see note 1)\n", "Note 1: not before 1 July 2026"),
]


@pytest.mark.parametrize(("item", "note"), NOTES)
def test_a_note_that_limits_holds_back_the_items_with_its_mark(item: str, note: str) -> None:
    bulletin = parse(f"{HEAD}{item}Delete rock {Q}\n{note}\n")
    first, second = actions_of(bulletin)
    assert (first.usable, second.usable) == (False, True)
    assert (first.feature.name, second.feature.name) == (None, None)
    assert [one.text for one in bulletin.notices[0].remarks] == [note]


def test_another_note_is_told_of() -> None:
    bulletin = parse(f"{HEAD}Insert wreck¹ {P}\nDelete rock {Q}\n¹ Found by a trawler.\n")
    assert [one.usable for one in actions_of(bulletin)] == [True, True]
    assert codes(bulletin) == {"item-with-note"}


@pytest.mark.parametrize("item", [f"Insert tank, 400m², {P}", f"* Insert wreck {P}\n***"])
def test_other_signs_are_no_marks(item: str) -> None:
    assert "item-with-note" not in codes(parse(f"{HEAD}{item}\n"))


@pytest.mark.parametrize(
    "request_",
    [
        "Please confirm when done.",
        "Kindly acknowledge receipt when corrected.",
        "Confirm once all have been completed.",
        "Let me know when this is done.",
        "Please report back by email as soon as done",
    ],
)
@pytest.mark.parametrize("between", ["\n", "> -- End of bulletin 16 --\n\n"])
def test_a_request_for_an_answer_limits_no_command(request_: str, between: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{between}{request_}\n")
    assert [one.usable for one in actions_of(bulletin)] == [True]
    assert not errors(bulletin)


@pytest.mark.parametrize("said", ["To be done when confirmed.", "Do not apply before confirmed."])
def test_a_condition_of_the_command_is_no_request(said: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n\n{said}\n")
    assert [one.usable for one in actions_of(bulletin)] == [False]
