"""New editions in the heads of charts, months of editions, ranges and international numbers."""

from __future__ import annotations

import pytest

from noticeparse.readers.head_values import Head
from noticeparse.readers.heads import read_head

YEAR = 2026


def told_of(head: Head) -> list[tuple[str, str]]:
    return [(fault.code, str(fault.values["written"])) for fault in head.faults]


@pytest.mark.parametrize(
    ("head", "edition", "day"),
    [
        ("Chart 802 [New Edition 12 March 2026]", None, "2026-03-12"),
        ("Chart 802. New Edition 4, 12 March 2026", "4", "2026-03-12"),
        ("Chart 802 New edition No. 3 dated 4 May 2026", "3", "2026-05-04"),
        ("Chart 802 (new chart 4th May 2026)", None, "2026-05-04"),
        ("Chart 802 [New Edition 4]", "4", None),
        ("Chart 802 [New Edition]", None, None),
    ],
)
def test_number_and_day_of_a_new_edition(head: str, edition: str | None, day: str | None) -> None:
    read = read_head(head, YEAR)
    (chart,) = read.charts
    assert (chart.edition, chart.edition_date, chart.previous) == (edition, day, None)
    assert str(chart.previous_written).lower().startswith("new ")
    assert told_of(read) == []


def test_a_day_in_an_order_of_the_office_is_told() -> None:
    read = read_head("Chart 802 [New Edition 12.3.2026]", YEAR)
    assert read.charts[0].edition_date is None
    assert told_of(read) == [("chart-head-unread", "12.3.2026")]


@pytest.mark.parametrize(
    "head",
    [
        "Chart 802 (8/24 Ed.) Last NM 12/26",
        "Chart 802 2nd Ed. 8/24 Last NM 12/26",
        "Chart 802 Ed. 2 8/24 [12/26]",
    ],
)
def test_the_month_of_an_edition_is_no_notice_before(head: str) -> None:
    read = read_head(head, YEAR)
    previous = read.charts[0].previous
    assert previous is not None
    assert (previous.number, previous.year) == (12, 2026)
    assert told_of(read) == [("chart-head-unread", "8/24")]


@pytest.mark.parametrize("head", ["Chart 802 Ed 2 (8/24)", "Chart 802 Ed. 2 [8/24] [31(T)/26]"])
def test_where_no_other_number_stands_it_may_be_the_notice_before(head: str) -> None:
    (chart,) = read_head(head, YEAR).charts
    assert chart.previous is not None
    assert (chart.previous.number, chart.previous.year) == (8, 2024)


RANGES = [
    ("Charts 802 to 804", ["802", "804"], True),
    ("Charts 802-804", ["802", "804"], True),
    ("Charts 802 - 804", ["802", "804"], True),
    ("Chart Nos 802-804", ["802", "804"], True),
    # Nothing lies between these, and so parted stand lists.
    ("Charts 802 - 803", ["802", "803"], False),
    ("Charts - 802 - 804", ["802", "804"], False),
    ("Charts 802 - 804 - 806", ["802", "804", "806"], False),
    # Of one chart this is the number.
    ("Chart No. 802-804", ["802-804"], False),
]


@pytest.mark.parametrize(("head", "charts", "is_range"), RANGES)
def test_of_a_range_both_ends_are_read_and_the_rest_is_told(
    head: str, charts: list[str], is_range: bool
) -> None:
    read = read_head(head, YEAR)
    assert [chart.chart for chart in read.charts] == charts
    assert [code for code, _ in told_of(read)] == ["chart-range"] * is_range


INTERNATIONALS = [
    ("Charts 802, 803 (INT 9802, 9803)", [("802", "INT 9802"), ("803", "INT 9803")], []),
    ("Chart 802 (INT 9802, 9803)", [("802", "INT 9802")], ["9803"]),
    (
        "Charts 802, 803, 804 (INT 9802 and 9803)",
        [("802", None), ("803", None), ("804", None)],
        ["9803", "INT 9802"],
    ),
    ("Chart 802 (INT 9802), 803", [("802", "INT 9802"), ("803", None)], []),
]


@pytest.mark.parametrize(("head", "charts", "told"), INTERNATIONALS)
def test_numbers_in_the_bracket_of_an_international_one_are_no_charts(
    head: str, charts: list[tuple[str, str | None]], told: list[str]
) -> None:
    read = read_head(head, YEAR)
    assert [(chart.chart, chart.international) for chart in read.charts] == charts
    assert [written for _, written in told_of(read)] == told
