"""Faults against a chart list: each planted one is found, and clean bulletins are silent.

Fifty weeks for each fault, a thousand with `NOTICEPARSE_LAWS=full`.
"""

from __future__ import annotations

import os

import pytest

import noticeparse
from noticeparse.catalogue.sheets import ENTRIES
from noticeparse.chart_list import read_list
from noticeparse.chart_math import size_mm
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart_list import ChartList
from noticeparse.sheets import Sheets
from noticeparse.testing.generator import ALL, generate
from tests.faults.listed_week import Week, write_week

WEEKS = 1000 if os.environ.get("NOTICEPARSE_LAWS") == "full" else 50
CODES = {entry.code for entry in ENTRIES}
PLANTED = {
    "outside": "position-outside-chart",
    "move": "move-too-long-on-sheet",
    "coarse": "position-too-coarse",
    "previous": "previous-not-last-applied",
}


def held(week: Week) -> tuple[ChartList, Bulletin]:
    charts = read_list(week.charts)
    assert charts.findings == [], week.charts
    return charts, noticeparse.parse(week.text, charts=charts)


@pytest.mark.parametrize("fault", PLANTED)
def test_planted_fault_is_found(fault: str) -> None:
    for seed in range(WEEKS):
        week = write_week(f"{fault} {seed}", fault)
        _, bulletin = held(week)
        found = [one for one in bulletin.findings if one.code == PLANTED[fault]]
        assert found, f"{fault} {seed}\n{week.charts}\n{week.text}"
        assert any(
            one.span is not None
            and one.span.line == week.fault_line
            and week.fault_words in one.message
            for one in found
        ), f"{fault} {seed}\n{found}\n{week.charts}\n{week.text}"
        # One fault may lie outside and be a long move too, but nothing else is blamed.
        others = {"position-outside-chart"} if fault == "move" else set()
        spurious = [
            one for one in bulletin.findings if one.code in CODES - {PLANTED[fault]} - others
        ]
        assert not spurious, f"{fault} {seed}\n{spurious}\n{week.charts}\n{week.text}"
        assert len(found) == 1, f"{fault} {seed}\n{found}\n{week.charts}\n{week.text}"


def test_clean_weeks_are_silent() -> None:
    for seed in range(WEEKS):
        week = write_week(f"clean {seed}")
        _, bulletin = held(week)
        found = [one for one in bulletin.findings if one.code in CODES or one.severity == "error"]
        assert not found, f"clean {seed}\n{found}\n{week.charts}\n{week.text}"


def test_places_of_clean_weeks_lie_on_their_sheets() -> None:
    for seed in range(WEEKS):
        charts, bulletin = held(write_week(f"clean {seed}"))
        sheets = Sheets(charts)
        for notice in bulletin.notices:
            for section in notice.charts:
                frame = sheets.of_section(section)[0].frame
                for action in section.actions:
                    assert action.sheet is not None
                    assert len(action.sheet.positions) == len(action.geometry.positions)
                    for place in (*action.sheet.positions, *action.sheet.destination):
                        assert place.part is not None
                        assert place.panel == sheets.of_section(section)[0].chart.panel
                        width_mm, height_mm = size_mm(frame)
                        assert 0 < place.x_mm < width_mm
                        assert 0 < place.y_mm < height_mm


@pytest.mark.parametrize("layout", ALL)
def test_clean_bulletins_of_every_layout_are_silent(layout: str) -> None:
    text = generate(3, notices=6, layouts=(layout,)).text
    numbers = {
        section.chart or section.international
        for notice in noticeparse.parse(text).notices
        for section in notice.charts
    }
    limits = "500000,-47.5,-49.5,-128.5,-45.5,-121.5"
    rows = [f"{one},{limits}" for one in sorted(filter(None, numbers))]
    charts = read_list("\n".join(["number,scale,scale_latitude,south,west,north,east", *rows, ""]))
    assert charts.findings == []
    bulletin = noticeparse.parse(text, charts=charts)
    # The generator writes positions down to whole minutes, and panels without limits.
    allowed = {"chart-panel-not-in-list", "position-too-coarse"}
    assert [one.message for one in bulletin.findings if one.code in CODES - allowed] == []
