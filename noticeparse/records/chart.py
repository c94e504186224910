"""The part of a notice that is for one chart."""

from typing import Literal

from pydantic import Field

from noticeparse.records.action import Action
from noticeparse.records.reference import NoticeRef
from noticeparse.spans import Record, Span


class Datum(Record):
    """A horizontal datum by name; EPSG code of its 2D system where one exists."""

    name: str
    epsg: int | None


class ChartSection(Record):
    """A chart, plan or panel, the notice that must be on it, and its actions."""

    chart: str | None
    international: str | None
    panel: str | None
    edition: str | None
    edition_date: str | None
    previous: NoticeRef | None
    previous_written: str | None
    datum: Datum | None
    depth_unit: Literal["m", "fm_ft", "ft"] | None = Field(description="as the text states it")
    actions: list[Action]
    span: Span
