"""Which frames of a chart list a chart section is for, and where on the paper a position lies."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple, cast

from noticeparse.chart_math import Frame, is_inside, part_of_sheet, place_mm
from noticeparse.chart_order import order_by_chart
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart import ChartSection
from noticeparse.records.chart_list import ChartList, ListedChart
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position
from noticeparse.records.reference import NoticeRef
from noticeparse.records.sheet import SheetPart, SheetPlace

_PANEL_WORDS = frozenset({"panel", "plan", "inset", "of", "the", "for"})
_WORD = re.compile(r"[^\W_]+")


class ListedSheet(NamedTuple):
    """A chart or panel of the list, and its frame."""

    chart: ListedChart
    frame: Frame

    def holds(self, position: Position) -> bool:
        """Whether a position lies within the frame or on it."""
        return is_inside(self.frame, position.lat, position.lon)

    def place(self, position: Position) -> SheetPlace:
        """Where a position lies, to the thousandth of a millimetre."""
        x_mm, y_mm = place_mm(self.frame, position.lat, position.lon)
        part = part_of_sheet(self.frame, position.lat, position.lon)
        return SheetPlace(
            panel=self.chart.panel,
            x_mm=Decimal(f"{x_mm:.3f}"),
            y_mm=Decimal(f"{y_mm:.3f}"),
            part=cast("SheetPart | None", part),
        )


class Sheets:
    """The charts of a list, to be found by what a chart section names."""

    def __init__(self, charts: ChartList) -> None:
        self.charts = charts
        self._known: dict[str, list[ListedSheet]] = defaultdict(list)
        # The chart itself before its panels.
        for chart in sorted(charts.charts, key=lambda one: one.panel is not None):
            self._known[chart_key(chart.number)].append(ListedSheet(chart, frame_of(chart)))

    def of_chart(self, section: ChartSection) -> list[ListedSheet]:
        """The chart of a section and all its panels, by its own or its international number."""
        for number in (section.chart, section.international):
            if number and chart_key(number) in self._known:
                return self._known[chart_key(number)]
        return []

    def of_section(self, section: ChartSection) -> list[ListedSheet]:
        """Where its positions may lie: on the panel it names, else on the chart or any panel."""
        found = self.of_chart(section)
        if section.panel is None:
            return found
        panel = panel_key(section.panel)
        return [one for one in found if panel_key(one.chart.panel or "") == panel]


def frame_of(chart: ListedChart) -> Frame:
    """The limits of a chart as the arithmetic takes them."""
    limits = (chart.south, chart.west, chart.north, chart.east)
    return Frame(*limits, scale=chart.scale, scale_latitude=chart.scale_latitude)


def sheet_of(sheets: Sequence[ListedSheet], position: Position) -> ListedSheet:
    """The first of some frames that holds a position, or the first of all."""
    return next((one for one in sheets if one.holds(position)), sheets[0])


def chart_key(number: str) -> str:
    """A chart number, however it is written."""
    return "".join(number.casefold().split())


def panel_key(written: str) -> str:
    """What tells one panel from another: `Panel B` is `B`, `plan of Port Ellory` Port Ellory."""
    words = _WORD.findall(written.casefold())
    return " ".join([one for one in words if one not in _PANEL_WORDS] or words)


def is_same_notice(one: NoticeRef, other: NoticeRef) -> bool:
    """Whether two references mean one notice; a year that is not stated may be any."""
    same_year = one.year == other.year or one.year is None or other.year is None
    return (one.number, one.status) == (other.number, other.status) and same_year


def own_reference(notice: Notice) -> NoticeRef | None:
    """The reference by which others name a notice."""
    if notice.number is None:
        return None
    return NoticeRef(number=notice.number, year=notice.year, status=notice.status)


def after_applying(charts: ChartList, bulletin: Bulletin) -> ChartList:
    """The list as it stands once the permanent notices of a bulletin are on the charts."""
    last: dict[str, NoticeRef] = {}
    for panel in order_by_chart([("", bulletin)]):
        key = chart_key(panel.chart or panel.international or "")
        for step in panel.steps:
            ref = own_reference(step.notice)
            if ref is not None and ref.status == "permanent":
                last[key] = ref
    listed = [
        one.model_copy(update={"last_notice": last.get(chart_key(one.number), one.last_notice)})
        for one in charts.charts
    ]
    return charts.model_copy(update={"charts": listed})
