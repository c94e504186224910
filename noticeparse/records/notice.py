"""A notice and its head."""

from typing import Literal

from pydantic import Field

from noticeparse.records.chart import ChartSection
from noticeparse.records.finding import Finding
from noticeparse.records.position import Position
from noticeparse.records.reference import NoticeRef, NoticeStatus
from noticeparse.spans import Record, Span

__all__ = ["Notice", "NoticeRef", "NoticeStatus", "Remark", "Validity"]


class Validity(Record):
    """A stated period of validity, ISO 8601 dates or date-times."""

    from_: str | None = Field(alias="from", serialization_alias="from")
    until: str | None
    written: str

    model_config = {"populate_by_name": True, "serialize_by_alias": True}


class Remark(Record):
    """A paragraph of prose, with the positions and dates it holds."""

    text: str
    positions: list[Position]
    dates: list[str]
    span: Span


class Notice(Record):
    """One notice, from its number to its last character."""

    id: str | None
    number: int | None
    year: int | None
    status: Literal["permanent", "temporary", "preliminary", "radio_warning"]
    series: str | None
    original_information: bool
    heading: str | None
    regions: list[str]
    subjects: list[str]
    authority: str | None
    valid: Validity | None
    cancels: list[NoticeRef]
    charts: list[ChartSection]
    remarks: list[Remark]
    span: Span
    findings: list[Finding]
