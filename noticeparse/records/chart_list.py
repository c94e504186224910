"""The list of the charts on board, as the program was given it."""

from typing import Literal

from pydantic import Field

from noticeparse.records.chart import Datum
from noticeparse.records.finding import Finding
from noticeparse.records.reference import NoticeRef
from noticeparse.spans import Record


class ListedChart(Record):
    """A chart, or one panel of it; what a panel does not say it has from its chart."""

    number: str
    panel: str | None = Field(description="plan, panel or inset; null for the chart itself")
    title: str | None
    scale: int = Field(description="150000 for 1:150 000")
    scale_latitude: float = Field(description="degrees; where the scale is true")
    south: float = Field(description="limits in degrees, south and west negative")
    west: float = Field(description="greater than east where it crosses the antimeridian")
    north: float
    east: float
    depth_unit: Literal["m", "fm_ft", "ft"] | None
    datum: Datum | None
    edition: str | None
    edition_date: str | None = Field(description="ISO 8601 date")
    last_notice: NoticeRef | None = Field(description="the last notice applied")
    line: int = Field(description="1-based line of the file on which it begins")


class ChartList(Record):
    """The charts that could be read, in the order of the file, and what is wrong with the rest."""

    name: str | None
    charts: list[ListedChart]
    findings: list[Finding]
