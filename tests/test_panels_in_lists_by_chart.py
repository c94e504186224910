"""Panels of a chart in a list by chart whose heads name their notices."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, R, codes

HEAD = "CHART {chart}    4th EDITION    9 MAR 2021    LAST NOTICE 308/26    NOTICE {notice}/26\n"


def test_a_panel_goes_on_with_the_notice_of_its_chart() -> None:
    bulletin = parse(
        HEAD.format(chart=1520, notice=341)
        + f"   ADD     Wreck   {P}\n\n   CHART 1520, PANEL B, Tarn Basin\n"
        + f"   ADD     Rock    {Q}\n\n"
        + HEAD.format(chart=1523, notice=342)
        + f"   DELETE  Wreck   {R}\n"
    )
    assert [notice.id for notice in bulletin.notices] == ["341/26", "342/26"]
    charts = bulletin.notices[0].charts
    assert [(one.chart, bool(one.panel), len(one.actions)) for one in charts] == [
        ("1520", False, 1),
        ("1520", True, 1),
    ]


def test_the_panel_of_another_chart_does_not() -> None:
    bulletin = parse(
        HEAD.format(chart=1520, notice=341)
        + f"   ADD     Wreck   {P}\n\n   CHART 1521, PANEL B, Tarn Basin\n   ADD     Rock    {Q}\n"
    )
    first, *others = bulletin.notices
    assert [one.chart for one in first.charts] == ["1520"]
    assert [one.number for one in others] == [None]


def sections_of(text: str) -> list[tuple[str | None, list[tuple[str | None, str | None, int]]]]:
    return [
        (one.id, [(c.chart, c.panel, len(c.actions)) for c in one.charts])
        for one in parse(text).notices
    ]


CARD = "CHART 802   QUILL SOUND   WGS84   last correction 3/26\n"
ROWS = f" 12/26   Insert   wreck   {P}\n 13/26   Delete   rock   {Q}\n"


@pytest.mark.parametrize("panel", ["PLAN A, PELL HARBOUR", "Panel A: Pell Harbour", "Plan A"])
def test_a_panel_is_of_no_notice_that_has_nothing_below_it(panel: str) -> None:
    text = f"{CARD}{ROWS} {panel}\n 12/26   Insert   pile   {R}\n"
    first, second = sections_of(text)
    assert [(chart, count) for chart, _, count in first[1]] == [("802", 1), ("802", 1)]
    assert first[1][0][1] is None
    assert first[1][1][1] is not None
    assert second == ("13/26", [("802", None, 1)])
    assert not codes(parse(text))


def test_a_panel_with_nothing_below_it_at_all_is_told() -> None:
    bulletin = parse(f"{CARD}{ROWS} Plan A\n")
    assert "chart-without-actions" in codes(bulletin)
