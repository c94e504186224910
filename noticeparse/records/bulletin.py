"""One text read: its notices, its lists, the findings, and the account of every character."""

from typing import Literal

from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef
from noticeparse.spans import Record, Span


class Generator(Record):
    """The program that wrote the record."""

    name: str
    version: str


class Source(Record):
    """The text that was read."""

    name: str | None
    media_type: str
    sha256: str
    characters: int


class Edition(Record):
    """The weekly edition, where the text states it."""

    title: str | None
    number: str | None
    year: int | None
    issued: str | None
    first_notice: NoticeRef | None
    last_notice: NoticeRef | None


class ListEntry(Record):
    """One line of an edition's own list."""

    chart: str | None
    notices: list[NoticeRef]
    text: str
    span: Span


ListKind = Literal["contents", "index_of_charts", "in_force", "cancelled", "new_charts", "other"]


class EditionList(Record):
    """A list that the edition prints about itself."""

    kind: ListKind
    title: str
    entries: list[ListEntry]
    span: Span


class Coverage(Record):
    """Non-space characters: every one is read, ignored as page furniture, or unread."""

    characters: int
    read: int
    ignored: int
    unread: int
    unread_spans: list[Span]


class Bulletin(Record):
    """The whole output for one text."""

    schema_version: Literal["1"] = "1"
    generator: Generator
    caution: str
    source: Source
    edition: Edition | None
    notices: list[Notice]
    lists: list[EditionList]
    findings: list[Finding]
    coverage: Coverage
