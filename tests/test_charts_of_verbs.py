"""Charts beside the verb of a command, international numbers first, and plans without a name."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.heads import read_head
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, R, codes

HEAD = "17/26  TAVRENNE ISLANDS - Quill Sound - Works.\n"


def by_chart(bulletin: Bulletin) -> dict[str | None, list[tuple[str, str]]]:
    (notice,) = bulletin.notices
    return {
        chart.chart: [(one.verb, one.feature.kind) for one in chart.actions if one.usable]
        for chart in notice.charts
    }


@pytest.mark.parametrize(
    "command",
    [
        f"Insert on chart 802: wreck {P}",
        f"Insert on chart 802 wreck {P}",
        f"Insert on chart 802 - wreck {P}",
        f"Insert, on chart 802, wreck {P}",
        f"1. Insert in chart no. 802: wreck {P}",
        f"Add to chart 802: wreck {P}",
        f"INSERT ON CHART 802: WRECK {P}",
        f"Insert on chart 802 (WGS84): wreck {P}",
        f"Insert on chart 802 [9/26]: wreck {P}",
        f"On 802: Insert wreck {P}",
    ],
)
def test_is_for_the_chart_behind_its_verb(command: str) -> None:
    bulletin = parse(f"{HEAD}{command}\nDelete from charts 803 and 804: rock {Q}\n")
    rock = [("delete", "rock")]
    assert by_chart(bulletin) == {"802": [("insert", "wreck")], "803": rock, "804": rock}
    assert not codes(bulletin) - {"datum-of-some-charts", "previous-of-some"}


def test_other_verbs_keep_their_words() -> None:
    text = (
        f"{HEAD}Amend on chart 802: light to Fl.R.5s {P}\n"
        f"Move on chart 803 (INT 9871): light-buoy, Q.R, from {P} to {Q}\n"
        f"Replace on chart 802: wreck with rock {Q}\n"
    )
    first, second = parse(text).notices[0].charts
    assert [one.verb for one in first.actions] == ["amend", "replace"]
    assert (second.international, second.actions[0].verb) == ("INT 9871", "move")


def test_beside_the_head_it_takes_that_chart_alone() -> None:
    text = (
        f"{HEAD}Charts 802 [9/26], 803 [8/26]\nInsert on chart 802: wreck {P}\nInsert rock {Q}\n"
    )
    wreck, rock = ("insert", "wreck"), ("insert", "rock")
    assert by_chart(parse(text)) == {"802": [wreck, rock], "803": [rock]}


def test_a_chart_that_the_head_does_not_name_holds_the_command() -> None:
    bulletin = parse(f"{HEAD}Chart 802 [9/26]\nInsert on chart 803: wreck {P}\n")
    assert "item-of-one-chart" in codes(bulletin)
    assert by_chart(bulletin) == {"802": []}


def test_one_command_of_no_chart_holds_those_that_name_theirs() -> None:
    bulletin = parse(f"{HEAD}Insert on chart 802: wreck {P}\nInsert rock {Q}\n")
    assert by_chart(bulletin) == {None: [("insert", "rock")]}


def test_charts_in_the_margin_that_no_head_names() -> None:
    text = f"{HEAD}802, 803: Insert wreck {P}\n804: Delete rock {Q}\n803: Delete rock {R}\n"
    wreck, rock = ("insert", "wreck"), ("delete", "rock")
    assert by_chart(parse(text)) == {"802": [wreck], "803": [wreck, rock], "804": [rock]}


@pytest.mark.parametrize(
    "margin",
    [
        "802: Insert wreck",
        "4512, 4513: Amend light to Fl.R.5s",
        "802 & 803: Insert rock",
        "(802) Insert rock",
    ],
)
def test_what_may_be_no_chart_in_the_margin_is_held(margin: str) -> None:
    bulletin = parse(f"{HEAD}{margin} {P}\nDelete rock {Q}\n")
    assert "item-of-one-chart" in codes(bulletin)
    assert by_chart(bulletin) == {None: [("delete", "rock")]}


@pytest.mark.parametrize("margin", ["802, 803:", "802 / 803:", "[802, 803]", "On 802 and 803:"])
def test_ways_of_writing_them(margin: str) -> None:
    wreck = [("insert", "wreck")]
    assert by_chart(parse(f"{HEAD}{margin} Insert wreck {P}\n")) == {"802": wreck, "803": wreck}


@pytest.mark.parametrize("series", ["F", "NO", "R", "FR"])
@pytest.mark.parametrize("lead", ["", "For ", "on "])
def test_the_letters_of_their_series_are_of_the_number(series: str, lead: str) -> None:
    bulletin = parse(f"{HEAD}{lead}{series}802, {series}803: Insert wreck {P}\n")
    wreck = [("insert", "wreck")]
    assert by_chart(bulletin) == {f"{series}802": wreck, f"{series}803": wreck}


def test_small_numbers_in_the_margin_count() -> None:
    assert by_chart(parse(f"{HEAD}1, 2: Insert wreck {P}\n")) == {None: [("insert", "wreck")]}


@pytest.mark.parametrize(
    ("head", "chart"),
    [
        ("INT 9871 (802)", "802"),
        ("INT 9871 (802) [9/26] WGS84", "802"),
        ("INT 9871 (802) Quill Sound to Port Ellory", "802"),
        ("INT 9871 / 802", "802"),
        ("INT 9871 [9/26] WGS84", None),
        ("Chart 802\nINT 9871", "802"),
    ],
)
def test_head_opens_with_its_international_number(head: str, chart: str | None) -> None:
    (section,) = parse(f"{HEAD}{head}\nInsert wreck {P}\n").notices[0].charts
    assert (section.chart, section.international) == (chart, "INT 9871")


LISTS = {
    "INT 9871 (802), INT 9872 (803)": [("802", "INT 9871"), ("803", "INT 9872")],
    "802 (INT 9871) - 803": [("802", "INT 9871"), ("803", None)],
    "802 and 803, INT 9871": [("802", None), ("803", "INT 9871")],
    "INT 9871 - 802": [("802", "INT 9871")],
}


@pytest.mark.parametrize(("words", "charts"), LISTS.items())
def test_list_of_both_numbers(words: str, charts: list[tuple[str, str | None]]) -> None:
    head = read_head(f"Charts affected - {words}", 2026)
    assert [(one.chart, one.international) for one in head.charts] == charts
    assert not head.faults


@pytest.mark.parametrize("words", ["802 - 803 - INT 9871", "802, 803, INT 9871"])
def test_international_number_as_an_entry_of_its_own_is_told(words: str) -> None:
    head = read_head(f"Charts affected - {words}", 2026)
    assert [(one.chart, one.international) for one in head.charts] == [
        ("802", None),
        ("803", None),
    ]
    assert [fault.code for fault in head.faults] == ["chart-head-unread"]


@pytest.mark.parametrize("line", ["Plan", "PLAN:", "Inset", "On the plan"])
def test_plan_without_a_name_below_the_main_chart(line: str) -> None:
    text = f"{HEAD}Chart 802 [9/26]\nMain chart\nInsert wreck {P}\n{line}\nInsert rock {Q}\n"
    main, plan = parse(text).notices[0].charts
    assert [one.feature.kind for one in main.actions if one.usable] == ["wreck"]
    assert [one.feature.kind for one in plan.actions if one.usable] == ["rock"]
    assert main.panel is None
    assert plan.panel is not None


@pytest.mark.parametrize("line", ["Plan", "Plan:", "Inset", "PANEL", "Main chart and plan"])
def test_plan_that_nothing_parts_from_the_chart_holds_what_stands_below(line: str) -> None:
    bulletin = parse(f"{HEAD}Chart 802 [9/26]\nInsert wreck {P}\n{line}\nInsert rock {Q}\n")
    assert by_chart(bulletin) == {"802": [("insert", "wreck")]}
    assert "item-of-one-panel" in codes(bulletin)


def test_plan_that_is_inserted_is_a_thing() -> None:
    bulletin = parse(f"{HEAD}Chart 802 [9/26]\nInsert plan {P}\n")
    assert "item-of-one-panel" not in codes(bulletin)
