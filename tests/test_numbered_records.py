"""Records of keys with a number: in front of the first key, on a line of its own, as a key."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, P, Q, actions_of, codes, errors

HEAD = "211/26 QUILL SOUND. Light. Wreck.\nChart 802 [187/26]\n\n"
FIRST = ("Action: Amend", f"Position: {P}", "Object: light", "From: Fl.W.5s", "To: Fl.W.10s")
SECOND = ("Action: Insert", "Object: wreck", f"Position: {Q}")


def _read(text: str) -> list[tuple[str, str | None, str | None, str]]:
    """Verb, label, kind and place of each action."""
    bulletin = parse(text)
    assert not errors(bulletin)
    assert bulletin.coverage.unread == 0
    return [
        (a.verb, a.label, a.feature.kind if a.feature else None, a.geometry.positions[0].written)
        for a in actions_of(bulletin)
    ]


def _below(numbers: tuple[str, str], indent: int) -> str:
    """Both records, a number on a line of its own above each."""
    lines = [
        f"  {number}\n" + "".join(f"{' ' * indent}{line}\n" for line in record)
        for number, record in zip(numbers, (FIRST, SECOND), strict=True)
    ]
    return HEAD + "".join(lines)


def _beside(numbers: tuple[str, str]) -> str:
    """Both records, a number in front of the first key of each."""
    rows = []
    for number, record in zip(numbers, (FIRST, SECOND), strict=True):
        lead = f"  {number}  "
        rows += [lead + record[0], *(" " * len(lead) + line for line in record[1:])]
    return HEAD + "\n".join(rows) + "\n"


@pytest.mark.parametrize("indent", [0, 2, 4, 6, 8, 12])
@pytest.mark.parametrize(
    "numbers",
    [
        ("Correction 1", "Correction 2"), ("Item 1", "Item 2"), ("1.", "2."), ("(1)", "(2)"),
        ("Record 1 of 2", "Record 2 of 2"), ("No. 1", "No. 2"), ("1", "2"),
    ],
)  # fmt: skip
def test_number_on_a_line_above_the_keys(numbers: tuple[str, str], indent: int) -> None:
    read = _read(_below(numbers, indent))
    assert [(verb, kind, place) for verb, _, kind, place in read] == [
        ("amend", "light", P),
        ("insert", "wreck", Q),
    ]


@pytest.mark.parametrize("numbers", [("[1]", "[2]"), ("1.", "2."), ("(a)", "(b)"), ("1)", "2)")])
def test_number_in_front_of_the_first_key(numbers: tuple[str, str]) -> None:
    labels = [number.strip("[]().") for number in numbers]
    assert _read(_beside(numbers)) == [
        ("amend", labels[0], "light", P),
        ("insert", labels[1], "wreck", Q),
    ]


def test_letter_of_a_record_is_referred_to() -> None:
    text = (
        f"{HEAD}Item: (a)\nMeasure: Establish\nObject: wreck\nPosition: {P}\n\n"
        "Item: (b)\nMeasure: Discontinue\nObject: depth 12 m, close S of\nPosition: (a) above\n"
    )
    assert _read(text) == [("insert", "a", "wreck", P), ("delete", "b", "sounding", "(a) above")]
    assert [a.geometry.positions[0].iso6709 for a in actions_of(parse(text))] == [AT_P, AT_P]


def test_number_above_items_is_none_of_a_record() -> None:
    bulletin = parse(f"{HEAD}1.\nInsert wreck {P}\n2.\nDelete rock {Q}\n")
    assert [(a.verb, a.usable) for a in actions_of(bulletin)] == [
        ("insert", True),
        ("delete", True),
    ]


@pytest.mark.parametrize("key", ["Measure", "Treatment", "Type of change", "Alteration"])
@pytest.mark.parametrize("thing", ["Object", "Particulars", "Nature"])
def test_keys_that_are_titles_of_columns_open_a_record(key: str, thing: str) -> None:
    text = f"{HEAD}{key}: Insert\n{thing}: wreck\nPosition: {P}\n"
    assert _read(text) == [("insert", None, "wreck", P)]


def test_words_with_a_colon_above_a_sentence_open_no_record() -> None:
    bulletin = parse(f"{HEAD}Nature: sandy bottom all along the shore\nInsert wreck {P}\n")
    assert [(a.verb, a.feature.kind) for a in actions_of(bulletin)] == [("insert", "wreck")]


@pytest.mark.parametrize(
    "rest", ["chart by Notice 30/26.", "chart.", "shore and lies on the beach.", "survey."]
)
def test_remark_goes_on_below_its_key(rest: str) -> None:
    text = (
        f"{HEAD}  1. Delete slipway   {P}\n     Remark: the former lock light stood far from the"
        f"\n     {rest}\n  2. Insert wreck   {Q}\n"
    )
    bulletin = parse(text)
    assert not errors(bulletin)
    assert [remark.text for remark in bulletin.notices[0].remarks] == [
        f"the former lock light stood far from the {rest}"
    ]
    assert [(a.feature.text, a.usable) for a in actions_of(bulletin)] == [
        ("slipway", True),
        ("wreck", True),
    ]


def test_line_behind_a_whole_remark_is_none_of_it() -> None:
    text = f"{HEAD}Remark: the light was seen.\nInsert wreck {P}\nDelete rock {Q}\n"
    assert [a.verb for a in actions_of(parse(text))] == ["insert", "delete"]


@pytest.mark.parametrize(
    ("words", "limits"),
    [
        ("reported by the tender on 4 March", False),
        ("found by the survey vessel Edderly on 4 March 2026", False),
        ("to be laid on 4 March", True),
        ("from 4 March", True),
    ],
)
def test_day_of_a_report_limits_no_command(words: str, limits: bool) -> None:
    bulletin = parse(f"{HEAD}Action: Insert\nObject: wreck\nPosition: {P}\nRemark: {words}\n")
    assert ("verb-limited-beside" in codes(bulletin)) is limits
