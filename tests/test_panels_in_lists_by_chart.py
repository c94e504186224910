"""Panels of a chart in a list by chart whose heads name their notices."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import P, Q, R

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
