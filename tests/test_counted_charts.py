"""Charts that the head of a notice counts, and the lines over the items of each of them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.heads import read_head
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, codes, errors, usable_of

HEADS = {
    "a stop": "Charts affected:   1.  Chart 802 [30/26]\n                   2.  Chart 803 [31/26]",
    "brackets": "Charts to be corrected: (1) 802, last notice 30/26; (2) 803, last notice 31/26.",
    "a bracket": "Charts: 1) 802 [30/26]; 2) 803 [31/26]",
    "joined": "Charts affected: (1) 802 [30/26] and (2) 803 [31/26]",
    "numbers alone": "Charts: 1. 802 [30/26]. 2. 803 [31/26].",
    "words": "Charts concerned: 1. Chart 802 (previous notice 30/26), 2. Chart 803 (31/26)",
}


@pytest.mark.parametrize("head", HEADS.values(), ids=list(HEADS))
def test_the_numbers_that_count_charts_are_no_charts(head: str) -> None:
    bulletin = parse(f"41/26 Quill Sound - Wreck\n{head}\n\nInsert wreck {P}\n")
    assert [
        (one.chart, one.previous.number if one.previous else None, len(one.actions))
        for one in bulletin.notices[0].charts
    ] == [("802", 30, 1), ("803", 31, 1)]
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "head",
    [
        "Chart concerned: (1) 802 [30/26]",
        "Chart affected: 1. Chart 802 [30/26]",
        "Chart to correct: 1) 802 [30/26]",
        "Charts: 1. 802, last notice 30/26",
    ],
)
def test_one_chart_may_be_counted_too(head: str) -> None:
    (chart,) = read_head(head, 2026).charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("802", 30)


@pytest.mark.parametrize(
    ("head", "charts"),
    [
        ("Charts 1 [30/26] and 2 [31/26]", ["1", "2"]),
        ("Charts: 1. 40. 41.", ["1", "40", "41"]),
        ("Charts 1. 2. 3.", ["1", "2", "3"]),
        ("Charts: (1) 1 [30/26]; (2) 2 [31/26]", ["1", "2"]),
        ("Charts 1, 12 and 14", ["1", "12", "14"]),
    ],
)
def test_a_chart_may_have_such_a_number(head: str, charts: list[str]) -> None:
    assert [one.chart for one in read_head(head, 2026).charts] == charts


def test_a_number_left_out_is_told() -> None:
    head = read_head("Charts: (1) 210; (3) 212", 2026)
    assert [one.chart for one in head.charts] == ["210"]
    assert "chart-unread" in {one.code for one in head.faults}


def test_a_chart_of_no_notice_before_takes_none_of_others() -> None:
    head = read_head("Chart 802 [30/26]. Chart 803 [31/26]. Chart 804", 2026)
    before = [one.previous.number if one.previous else None for one in head.charts]
    assert before == [30, 31, None]


LISTS = {
    "one head": "Charts 802 [30/26] and 803 [31/26]\n",
    "a line each": "Chart 802 [30/26]\nChart 803 [31/26]\n",
    "counted": "Charts affected: 1. Chart 802 [30/26]\n                 2. Chart 803 [31/26]\n",
}
TITLES = [
    ("On chart 802 -", "On chart 803 -"),
    ("On chart 802:", "On chart 803:"),
    ("Chart 802 -", "Chart 803 -"),
    ("For chart 802 --", "For chart 803 --"),
    ("On chart 802 only -", "On chart 803 only -"),
    ("Chart 802 only:-", "Chart 803 only:-"),
]


def by_chart(bulletin: Bulletin) -> dict[str | None, list[str]]:
    return {
        chart.chart: [action.feature.kind for action in chart.actions if action.usable]
        for chart in bulletin.notices[0].charts
    }


@pytest.mark.parametrize("blank", ["", "\n"])
@pytest.mark.parametrize("charts", LISTS.values(), ids=list(LISTS))
@pytest.mark.parametrize(("first", "second"), TITLES)
def test_each_line_heads_the_items_of_its_chart(
    charts: str, first: str, second: str, blank: str
) -> None:
    bulletin = parse(
        f"41/26 Quill Sound - Wreck, rock\n{charts}{blank}{first}\n{blank}  Insert\n"
        f"    (a) wreck in {P}\n{blank}{second}\n{blank}  Delete\n    (b) rock in {Q}\n"
    )
    assert by_chart(bulletin) == {"802": ["wreck"], "803": ["rock"]}
    assert not codes(bulletin)


BOTH = [
    ("On both charts -", "On chart 803 only -"),
    ("Both charts -", "Chart 803 -"),
    ("On the two charts:", "On chart 803 only:"),
    ("On all charts --", "On chart 803 --"),
    ("On all of the charts:-", "On chart 803:-"),
    ("On each of the charts -", "On chart 803 only -"),
]


@pytest.mark.parametrize("charts", LISTS.values(), ids=list(LISTS))
@pytest.mark.parametrize(("first", "second"), BOTH)
def test_a_line_may_head_the_items_of_all_charts(charts: str, first: str, second: str) -> None:
    bulletin = parse(
        f"41/26 Quill Sound - Wreck, rock\n{charts}\n{first}\n\n  Insert\n    (a) wreck in {P}\n"
        f"\n{second}\n\n  Delete\n    (b) rock in {Q}\n"
    )
    assert by_chart(bulletin) == {"802": ["wreck"], "803": ["wreck", "rock"]}
    assert not codes(bulletin)


@pytest.mark.parametrize("line", ["On both charts -", "On all four charts -", "On the two charts"])
def test_items_are_held_where_the_charts_are_not_as_many(line: str) -> None:
    charts = "Charts 802 [30/26], 803 [31/26] and 804 [32/26]\n"
    bulletin = parse(f"41/26 Quill Sound - Wreck\n{charts}\n{line}\n\nInsert wreck {P}\n")
    assert not usable_of(bulletin)
    assert errors(bulletin) == {"item-of-one-chart"}


def test_a_line_on_three_charts_is_for_three() -> None:
    charts = "Charts 802 [30/26], 803 [31/26] and 804 [32/26]\n"
    bulletin = parse(f"41/26 Quill Sound\n{charts}\nOn all three charts -\n\nInsert wreck {P}\n")
    assert by_chart(bulletin) == {"802": ["wreck"], "803": ["wreck"], "804": ["wreck"]}


def test_a_dash_below_a_command_still_means_that_the_chart_has_it_not() -> None:
    rows = f"   Chart 802 {P}\n   Chart 803 -\n"
    bulletin = parse(f"41/26 Quill Sound\n{LISTS['one head']}1. Insert wreck\n{rows}")
    assert by_chart(bulletin) == {"802": ["wreck"], "803": []}
    assert codes(bulletin) == {"chart-without-actions"}
