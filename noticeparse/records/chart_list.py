"""The list of the charts on board, as the program was given it."""

from typing import Literal

from pydantic import Field

from noticeparse.records.chart import Datum
from noticeparse.records.finding import Finding
from noticeparse.records.reference import NoticeRef
from noticeparse.spans import Record


class ListedChart(Record):
    """A chart, or one panel of it; what a panel does not say it has from its chart."""

    number: str = Field(description="chart number, or international number, as notices write it")
    panel: str | None = Field(description="plan, panel or inset; null for the chart itself")
    title: str | None = Field(description="title, or null")
    scale: int = Field(description="the denominator: 150000 for 1:150 000")
    scale_latitude: float = Field(description="degrees; where the scale is true")
    south: float = Field(description="southern limit, degrees, south negative")
    west: float = Field(
        description="western limit, degrees; greater than east across the antimeridian"
    )
    north: float = Field(description="northern limit, degrees, south negative")
    east: float = Field(description="eastern limit, degrees, west negative")
    depth_unit: Literal["m", "fm_ft", "ft"] | None = Field(description="metres, fathoms or feet")
    datum: Datum | None = Field(description="horizontal datum, or null")
    edition: str | None = Field(description="edition on board as written, or null")
    edition_date: str | None = Field(description="its date, ISO 8601, or null")
    last_notice: NoticeRef | None = Field(description="the last notice applied, or null")
    line: int = Field(description="1-based line of the file on which it begins")


class ChartList(Record):
    """The charts that could be read, in the order of the file, and what is wrong with the rest."""

    name: str | None = Field(description="name of the file")
    charts: list[ListedChart] = Field(description="charts and panels, in the order of the file")
    findings: list[Finding] = Field(description="what is wrong with the file, in its order")
