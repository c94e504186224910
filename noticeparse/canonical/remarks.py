"""Prose paragraphs: quoted as they stand, with the years that their edition lent their dates."""

from __future__ import annotations

import re

from noticeparse.canonical.words import on_one_line, read_as
from noticeparse.readers.clauses import Clauses, read_clauses
from noticeparse.records.notice import Remark

_DAY = re.compile(
    r"(?<![0-9.\/-])([12][0-9]|3[01]|0?[1-9])(?:st|nd|rd|th)?\s+"
    r"(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\b\.?(?!,?\s+[0-9]{2,4}\b)",
    re.IGNORECASE,
)
_STOP_BEHIND_POSITION = re.compile(r"(?<=[°'\"′″]) ?\.$")
_MONTHS = ("jan feb mar apr may jun jul aug sep oct nov dec").split()


def prose(remark: Remark) -> str:
    """The words of a remark on one line; a date without a year has the year it was read with."""
    words = _STOP_BEHIND_POSITION.sub("", on_one_line(remark.text))
    years = {date[5:10]: date[:4] for date in remark.dates}
    if set(remark.dates) <= set(told_by(words).dates):
        return words

    def with_year(day: re.Match[str]) -> str:
        month = _MONTHS.index(day[2].lower()) + 1
        year = years.get(f"{month:02d}-{int(day[1]):02d}")
        return f"{day[0].rstrip('.')} {year}" if year else day[0]

    return _DAY.sub(with_year, words)


def told_by(words: str) -> Clauses:
    """What a paragraph says of its notice: dates, validity, cancelled notices, charts."""
    return read_clauses(read_as(words), None)
