"""Lines above commands that limit them, and what says that a notice or an item is temporary."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin
from tests.short_notices import P, Q, actions_of, codes

HEAD = "12/26 Quill Sound.\n"
CHART = "Chart 802 [3/26] WGS84, depths in metres\n"


def usable(bulletin: Bulletin) -> list[bool]:
    return [one.usable for one in actions_of(bulletin)]


HOLDING = [
    "Not to be carried out:",
    "Do not insert yet:",
    "When the works are complete",
    "When the works are complete:",
    "Provisionally:",
    "Example:",
    "In pencil",
    "(Ignore if Notice 9/26 has been applied)",
    "Only if the light is lit:",
]


@pytest.mark.parametrize("line", HOLDING)
def test_what_stands_below_is_held_back(line: str) -> None:
    bulletin = parse(f"{HEAD}{CHART}Insert wreck {P}\n{line}\nDelete rock {Q}\n")
    first, second = usable(bulletin)
    assert not second
    # What was read as the end of the item above may limit that one too.
    above = bulletin.notices[0].charts[0].actions[0].feature.text
    assert first is not above.endswith(line.strip(":"))
    assert codes(bulletin) - {"item-limited"} == {"verb-limited-above"}


def test_a_line_above_the_chart_holds_for_its_items() -> None:
    bulletin = parse(f"{HEAD}Not to be carried out:\n{CHART}Insert wreck {P}\nDelete rock {Q}\n")
    assert usable(bulletin) == [False, False]


def test_it_does_not_hold_for_the_next_chart() -> None:
    second = "Chart 803 [4/26] WGS84, depths in metres\n"
    text = f"{HEAD}{CHART}Provisionally:\nInsert wreck {P}\n{second}Insert rock {Q}\n"
    assert usable(parse(text)) == [False, True]


def test_the_chart_of_what_is_held_back_is_named_where_it_is_one() -> None:
    line = f"When the works are complete:\nDelete rock {Q}\n"
    (one,) = parse(f"{HEAD}{CHART}Insert wreck {P}.\n{line}").notices[0].findings
    assert (one.code, one.chart) == ("verb-limited-above", "802")
    both = f"{HEAD}Charts 802 [3/26] and 803 [4/26] WGS84\n"
    told = parse(f"{both}Insert wreck {P}.\n{line}").notices[0].findings
    assert [each.chart for each in told if each.code == one.code] == [None]


@pytest.mark.parametrize(
    "line", ["With effect from 1 October 2026:", "On 1 October 2026:", "(From 1 May 2026)"]
)
def test_a_day_above_is_told(line: str) -> None:
    bulletin = parse(f"{HEAD}{CHART}{line}\nInsert wreck {P}\n")
    assert usable(bulletin) == [True]
    assert "verb-dated" in codes(bulletin)


# sentences, names and what says nothing of the command
OTHERS = ["Quill Sound:", "NOT FOR NAVIGATION", "The works are complete.", "Positions:"]


@pytest.mark.parametrize("line", OTHERS)
def test_other_lines_limit_nothing(line: str) -> None:
    bulletin = parse(f"{HEAD}{CHART}Insert wreck {P}\n{line}\nDelete rock {Q}\n")
    assert not codes(bulletin) & {"verb-limited-above", "verb-dated", "item-temporary"}


STATES = [
    ("12/26  TEMPORARY NOTICE - Quill Sound - Wreck\n", "temporary"),
    ("12/26  PRELIMINARY NOTICE - Quill Sound - Wreck\n", "preliminary"),
    (f"{HEAD}Status: Temporary\n", "temporary"),
    (f"{HEAD}Type: T\n", "temporary"),
    (f"{HEAD}Type of notice: (P)\n", "preliminary"),
    (f"{HEAD}Temporary notice.\n", "temporary"),
    (f"{HEAD}TEMPORARY\n", "temporary"),
    (f"{HEAD}Type: buoy\n", "permanent"),
    ("12/26  Temporary Rock - Wreck.\n", "permanent"),
]


@pytest.mark.parametrize(("head", "status"), STATES)
def test_the_status_is_told_below_the_number(head: str, status: str) -> None:
    assert parse(f"{head}{CHART}Insert wreck {P}\n").notices[0].status == status


MARKED = [
    f"(T) Insert wreck {P}",
    f"(P) Insert wreck {P}",
    f"Insert (T) port-hand buoy {P}",
    f"Insert port-hand buoy (T) {P}",
    f"TEMPORARY:\nInsert wreck {P}",
    f"PRELIMINARY\nInsert wreck {P}",
]


@pytest.mark.parametrize("item", MARKED)
def test_an_item_marked_as_temporary_is_told(item: str) -> None:
    bulletin = parse(f"{HEAD}{CHART}Insert rock {Q}\n{item}\n")
    told = [one for one in bulletin.findings if one.code == "item-temporary"]
    assert [(one.severity, one.paths) for one in told] == [
        ("warning", ["/notices/0/charts/0/actions/1"])
    ]


UNMARKED = [
    f'Insert legend, "Area (T)" {P}',
    f"Insert racon (T) {P}",
    f"Insert light Mo(P)8s {P}",
    f"Insert buoy 0.6 miles 240° (T) from the light in {P}",
]


@pytest.mark.parametrize("item", UNMARKED)
def test_other_letters_are_no_mark(item: str) -> None:
    assert "item-temporary" not in codes(parse(f"{HEAD}{CHART}{item}\n"))


def test_a_mark_in_a_temporary_notice_says_nothing_new() -> None:
    text = f"12(T)/26 Quill Sound.\n{CHART}Insert port-hand buoy (T) {P}\n"
    assert "item-temporary" not in codes(parse(text))
