"""Charts that a notice names and does not correct, and heads that say more than one chart."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, codes, errors

HEAD = "2601/26  TAVRENNE ISLANDS - Quill Sound - Wreck.\n"


def charts(lines: str) -> list[str | None]:
    (notice,) = parse(f"{HEAD}{lines}\nInsert wreck {P}\n").notices
    return [chart.chart for chart in notice.charts]


@pytest.mark.parametrize(
    "line",
    [
        "Not for the following charts: 803",
        "Source: chart 803, Edition 4",
        "Source: Survey on chart 803",
        "Positions are taken from chart 803.",
        "See also chart 803.",
        "Related charts: 803, 804",
        "Reference: chart 803, edition 2020",
        "Previously announced for chart 803",
        "Largest scale: chart 803",
        "Adjoining chart: 803",
        "Chart 803: no action",
        "Chart 803 (for information)",
        "Charts not affected: 803",
    ],
)
def test_a_chart_named_aside_is_not_corrected(line: str) -> None:
    assert charts(f"{line}\nChart 802 [2310/26]") == ["802"]


def test_the_chart_of_a_source_stays_with_the_source() -> None:
    text = f"{HEAD}Source: chart 803, Edition 4\nChart 802 [2310/26]\nInsert wreck {P}\n"
    assert parse(text).notices[0].authority == "chart 803, Edition 4"


def test_a_chart_beside_another_in_brackets_is_not_corrected() -> None:
    text = f"{HEAD}Chart 802 (adjoining chart 803) [2310/26]\nInsert wreck {P}\n"
    (chart,) = parse(text).notices[0].charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("802", 2310)


@pytest.mark.parametrize(
    "words", ["(except plan A)", "(not plan A)", "(excluding inset B)", "outside plan A"]
)
def test_a_panel_that_is_not_alone_meant_is_told(words: str) -> None:
    bulletin = parse(f"{HEAD}Chart 802 [2310/26] WGS84 {words}\nInsert wreck {P}\n")
    assert [chart.panel for chart in bulletin.notices[0].charts] == [None]
    assert "chart-head-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "head", ["Charts 802 (plan A) 803 (except inset)", "Chart 802 and all charts of the area"]
)
def test_a_chart_that_is_not_read_holds_the_items_back(head: str) -> None:
    bulletin = parse(f"{HEAD}{head}\nInsert wreck {P}\n")
    assert "chart-unread" in errors(bulletin)
