"""What the checks of a whole bulletin are given beside its records: the text, and a day.

Records keep no span of a notice's number or of the words that name the previous notice; the
stretches to point at are looked up here in the text as it was given.
"""

from __future__ import annotations

import re
from datetime import date
from typing import NamedTuple

from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef
from noticeparse.spans import Span

_MARK = r"\s?(?:\([TP]\))?(?:\s?/\s?[0-9]{2,4}|\s?-\s?[0-9]{4}| of [0-9]{4})?(?:\s?\([TP]\))?"

_CANCEL = r"(?i:cancel|withdr|annul|revok)"


class Given(NamedTuple):
    """The text of a bulletin, and the day that a person asked about."""

    text: str
    as_of: date | None = None

    def number_of(self, notice: Notice) -> Span:
        """Where the number of a notice stands."""
        return self._number(notice.number, notice.span) or self._first_line(notice.span)

    def cancelled_in(self, notice: Notice, ref: NoticeRef) -> Span:
        """Where a notice names another that it cancels; it may name it also as the one before."""
        number = _whole(f"0{{0,3}}{ref.number}", is_pattern=True) + _MARK
        behind = self._found(rf"{_CANCEL}[^\n]{{0,80}}?({number})", notice.span)
        before = self._found(rf"({number})(?=[^\n]{{0,80}}?{_CANCEL})", notice.span)
        return before or behind or self._number(ref.number, notice.span) or self.number_of(notice)

    def chart_of(self, section: ChartSection) -> Span:
        """Where the number of a chart stands in its head."""
        found = self._found(_whole(section.chart or section.international or ""), section.span)
        return found or self._first_line(section.span)

    def previous_of(self, section: ChartSection) -> Span:
        """Where the head of a chart names the notice before, behind the number of the chart."""
        words = r"\s+".join(map(re.escape, (section.previous_written or "").split()))
        chart = _whole(section.chart or "")
        if not words:
            return self.chart_of(section)
        found = self._found(rf"{chart}[^\n]{{0,120}}?({words})", section.span)
        return found or self._found(f"({words})", section.span) or self.chart_of(section)

    def period_of(self, notice: Notice) -> Span:
        """Where a notice states its period of validity."""
        written = notice.valid.written if notice.valid else ""
        words = r"\s+".join(map(re.escape, written.split()))
        found = self._found(f"({words})", notice.span) if words else None
        return found or self.number_of(notice)

    def stated_range(self, first: NoticeRef, last: NoticeRef, before: int) -> Span | None:
        """Where the front of an edition states its first and last notice."""
        front = Span(start=0, end=before, line=1, column=1)
        words = rf"{_whole(str(first.number))}[^\n]{{1,30}}?{_whole(str(last.number))}{_MARK}"
        return self._found(words, front)

    def _number(self, number: int | None, within: Span) -> Span | None:
        if number is None:
            return None
        whole = _whole(f"0{{0,3}}{number}", is_pattern=True)
        # A figure of the same value may stand in the head of a chart above the number.
        marked = rf"{whole}(?=\s?(?:\([TP]\))?\s?(?:/|-\s?[0-9]{{4}}| of )){_MARK}"
        return self._found(marked, within) or self._found(whole + _MARK, within)

    def _found(self, pattern: str, within: Span) -> Span | None:
        """The first match in a stretch, or what its first group holds."""
        match = re.compile(pattern).search(self.text, within.start, within.end)
        if match is None:
            return None
        group = 1 if match.re.groups else 0
        return self._span(match.start(group), match.end(group), within)

    def _first_line(self, span: Span) -> Span:
        end = self.text.find("\n", span.start, span.end)
        return self._span(span.start, span.end if end < 0 else end, span)

    def _span(self, start: int, end: int, near: Span) -> Span:
        line = near.line + self.text.count("\n", near.start, start)
        column = start - self.text.rfind("\n", 0, start)
        return Span(start=start, end=end, line=line, column=column)


class Whole(NamedTuple):
    """One of several bulletins that are looked at together."""

    bulletin: Bulletin
    given: Given


def _whole(words: str, *, is_pattern: bool = False) -> str:
    """A pattern for a number that is not part of a longer one."""
    return rf"(?<![0-9A-Za-z])(?:{words if is_pattern else re.escape(words)})(?![0-9])"


def is_same(ref: NoticeRef, other: NoticeRef) -> bool:
    """Whether two references mean one notice; what tells no year may be of any."""
    return (ref.number, ref.status) == (other.number, other.status) and is_same_year(ref, other)


def is_same_year(ref: NoticeRef, other: NoticeRef) -> bool:
    """Whether two references can be of one year."""
    return ref.year is None or other.year is None or ref.year == other.year


def ref_of(notice: Notice) -> NoticeRef | None:
    """A notice as others name it; what has no number cannot be named."""
    if notice.number is None:
        return None
    return NoticeRef(number=notice.number, year=notice.year, status=notice.status)
