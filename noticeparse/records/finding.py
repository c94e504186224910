"""What the reader has to say about the text."""

from typing import Literal

from pydantic import Field

from noticeparse.spans import Record, Span

Severity = Literal["error", "warning", "info"]
"""Error: not read, or impossible; warning: read, but suspicious; info: what else was seen."""


class Finding(Record):
    """One remark; `code` is a stable entry of the catalogue."""

    code: str
    severity: Severity
    message: str
    hint: str | None
    span: Span | None
    notice: str | None
    chart: str | None
    paths: list[str] = Field(description="RFC 6901 pointers to the records it belongs to")
