"""A notice named by its number."""

from typing import Literal

from noticeparse.spans import Record

NoticeStatus = Literal["permanent", "temporary", "preliminary", "radio_warning"]


class NoticeRef(Record):
    """Number, year and status of a notice named in the text."""

    number: int
    year: int | None
    status: NoticeStatus
