"""Words with a colon before a command: where an item is met, or what changes its meaning."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told

HELD = [
    ("Not on this chart:", "verb-conditional"),
    ("Cancelled:", "verb-conditional"),
    ("Not yet in force:", "verb-conditional"),
    ("Until 3 March:", "verb-conditional"),
    ("Not in the plan:", "verb-conditional"),
    ("Not in the table until May:", "verb-conditional"),
    ("0.2 miles N of Quill Rock:", "relation-unclear"),
    ("Close N:", "relation-unclear"),
]


@pytest.mark.parametrize(("lead", "code"), HELD)
def test_what_changes_the_command_holds_it_back(lead: str, code: str) -> None:
    bulletin = parse(f"{HEAD}{lead} delete rock {P}\nInsert wreck {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_Q])]
    assert errors(bulletin) == {code}


@pytest.mark.parametrize("lead", ["Quill Sound, North Mole:", "Details:", "km 12.4:", "Harbour:"])
def test_where_an_item_is_met_says_no_more(lead: str) -> None:
    bulletin = parse(f"{HEAD}{lead} delete rock {P}\n")
    assert told(bulletin) == [("delete", "rock", [AT_P])]
    assert [f.code for f in bulletin.findings] == []


@pytest.mark.parametrize(
    "lead",
    ["Not in the table:", "Outside the table above:", "In addition to the table:",
     "Not tabulated:", "Not shown in these tables:"],
)  # fmt: skip
def test_where_a_command_is_printed_says_no_more(lead: str) -> None:
    bulletin = parse(f"{HEAD}{lead} Insert submarine cable, joining {P} and {Q}.\n")
    assert told(bulletin) == [("insert", "cable_submarine", [AT_P, AT_Q])]
    assert [f.code for f in bulletin.findings] == []


@pytest.mark.parametrize("lead", ["Approximate:", "Quill thing:", "Awash at half tide:"])
def test_what_is_not_understood_is_told(lead: str) -> None:
    bulletin = parse(f"{HEAD}{lead} insert rock {P}\n")
    assert [f.code for f in bulletin.findings] == ["feature-words-unread"]


def test_a_relation_before_a_sentence() -> None:
    bulletin = parse(f"{HEAD}Close N: A buoy has been established in {P}.\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"relation-unclear"})


def test_the_charts_of_an_item() -> None:
    text = (
        "41/26 Quill Sound\nCharts 802 [30/26] and 803 [31/26] WGS84, depths in metres\n"
        f"802: Insert wreck {P}\n803: Insert rock {Q}\n"
    )
    charts = parse(text).notices[0].charts
    assert [[a.feature.kind for a in one.actions] for one in charts] == [["wreck"], ["rock"]]


def test_a_count_is_no_chart() -> None:
    bulletin = parse(f"{HEAD}10: Insert wreck {P}\n11: Insert rock {Q}\n")
    assert [a.feature.kind for a in actions_of(bulletin)] == ["wreck", "rock"]
    assert errors(bulletin) == set()
