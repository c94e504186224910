"""Notices last on the charts, told once in front of all notices."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q

FRONTS = [
    "All positions refer to WGS84. Charts last corrected: 61 by 140/26, 62 by 139/26.",
    "Charts last corrected before: 61 (140/26) and 62 (139/26)",
    "Last corrections of charts: 61: 140/26; 62: 139/26",
    "Previous notices: chart 61 - 140/26, chart 62 - 139/26",
]


@pytest.mark.parametrize("front", FRONTS)
def test_they_hold_for_the_first_notice_of_each_chart(front: str) -> None:
    bulletin = parse(
        f"CORRECTIONS No 6, 30 JUNE 2026\n{front}\n\n"
        f"150(T)/26 Sarn\nChart 61\nThe buoy in {P} is unlit.\n\n"
        f"151/26 Sarn\nChart 61\nInsert wreck {P}\nChart 62\nInsert wreck {P}\n\n"
        f"152/26 Sarn\nChart 61\nDelete rock {Q}\nChart 63 [99/26]\nDelete rock {Q}\n"
    )
    before = [
        (notice.number, chart.chart, chart.previous and chart.previous.number)
        for notice in bulletin.notices[1:]
        for chart in notice.charts
    ]
    assert before == [(151, "61", 140), (151, "62", 139), (152, "61", None), (152, "63", 99)]
    assert bulletin.notices[0].charts[0].previous is None
    written = bulletin.notices[1].charts[0].previous_written
    assert written == "140/26"


def test_the_head_of_a_chart_goes_before_the_front() -> None:
    bulletin = parse(
        "CORRECTIONS No 6, 30 JUNE 2026\nCharts last corrected: 61 by 140/26\n\n"
        f"151/26 Sarn\nChart 61 [141/26]\nInsert wreck {P}\n"
    )
    (chart,) = bulletin.notices[0].charts
    assert chart.previous is not None
    assert chart.previous.number == 141
