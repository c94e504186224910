"""The edition as a whole: its title, number and date, and what it states for all charts."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import NamedTuple

from noticeparse.context import Context
from noticeparse.findings import Located
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.charts_aside import says_unchanged
from noticeparse.readers.codes import read_codes
from noticeparse.readers.dates import full_year, read_date
from noticeparse.readers.editions import LineWords, read_line_words
from noticeparse.readers.head_values import read_datum, read_unit
from noticeparse.readers.heads import head_kinds, read_parts
from noticeparse.records.bulletin import Edition
from noticeparse.records.chart import Datum
from noticeparse.records.depth import DepthUnit
from noticeparse.records.reference import NoticeRef

_FRONT_LINES = 12
_NUMBER_OF_RANGE = re.compile(
    r"([0-9]{1,5})(?:(?:/| of )([0-9]{4}|[0-9]{2})(?![0-9]))?", re.IGNORECASE
)


class EditionReading(NamedTuple):
    """The edition that the front lines state, and the lines that say nothing of it."""

    edition: Edition | None
    left: list[Line]
    located: list[Located]
    year: int | None
    """That of the edition, else the only one that the front lines name."""


@dataclass
class SaidBefore:
    """What the front lines of a text have said so far, where it is read in parts."""

    lines: int = 0
    title: str | None = None
    number: str | None = None
    year: int | None = None
    issued: str | None = None
    stated: tuple[NoticeRef, NoticeRef] | None = None
    datums: dict[Datum, None] = field(default_factory=dict)
    units: dict[DepthUnit, None] = field(default_factory=dict)


def read_edition(context: Context, front: list[Line], said: SaidBefore) -> EditionReading:
    """What the front lines say of the edition, together with those before; `said` is filled up."""
    title, number, year = said.title, said.number, said.year
    issued, stated = said.issued, said.stated
    located: list[Located] = []
    left: list[Line] = []
    for index, line in enumerate(front, said.lines):
        if line.elements and says_unchanged(context.text, line):
            continue
        words = context.text[line.start : line.end]
        if _HEADS_NOTICE.match(words):
            left.append(line)
            continue
        found = read_line_words(words)
        own = _number(found)
        date = _issued(found, year)
        located += _date_faults(context, line, found, year) if index < _FRONT_LINES else ()
        stated = stated or _stated_range(found, year)
        telling = own is not None or date is not None
        if telling and index < _FRONT_LINES:
            number, year = (number, year) if number else (own or (None, None))
            issued = issued or _issued(found, year)
            title = title or _title(context, line)
        elif title is None and found.plain_words and not found.first("MAIL_HEAD", "MESSAGE_MARK"):
            title = _title(context, line)
        elif not found.first("NOTICES", "NUMBER_RANGE") and not _is_said_of_all(words):
            left.append(line)
    said.title, said.number, said.year = title, number, year
    said.issued, said.stated = issued, stated
    said.lines += len(front)
    if number is None and issued is None:
        # Without a number or a date the first line is only a line.
        located = [replace(one, paths=[]) for one in located]
        left = [e for e in front if e.elements and not says_unchanged(context.text, e)]
        said.year = year = year or _only_year(context, front)
        return EditionReading(None, left, located, year)
    if year is None:
        said.year = year = int(issued[:4]) if issued is not None else _only_year(context, front)
    first, last = stated or (None, None)
    edition = Edition(
        title=title, number=number, year=year, issued=issued, first_notice=first, last_notice=last
    )
    return EditionReading(edition, left, located, year)


_HEADS_NOTICE = re.compile(
    r"\W*(?:No|Nr|Number)\b\.? ?[0-9]{1,5}\b.{0,80}\bcharts? (?:no\.? ?)?[0-9]", re.IGNORECASE
)
"""The number of a notice with its chart, which nobody may take for that of an edition."""
_YEAR = re.compile(r"(?<![0-9/.,-])(?:19|20)[0-9]{2}(?![0-9/.,-]?[0-9])(?! ?(?:m|ft|UTC|h)\b)")


def _only_year(context: Context, front: Sequence[Line]) -> int | None:
    """The year of `Corrections to charts, list 5, May 2026`, where no other is named above."""
    named = {
        int(year)
        for line in front[:_FRONT_LINES]
        for year in _YEAR.findall(context.text[line.start : line.end])
    }
    return named.pop() if len(named) == 1 else None


def _is_said_of_all(words: str) -> bool:
    """Whether a line holds for all notices: datum, depth unit, a key to a column."""
    return bool(read_codes(words) or head_kinds(words) & {"DATUM", "DEPTH_UNIT"})


def said_of_all(
    context: Context, front: list[Line], said: SaidBefore
) -> tuple[Datum | None, DepthUnit | None]:
    """Datum and depth unit that front lines so far state for all charts, where they state one."""
    parts = [part for line in front for part in read_parts(context.text[line.start : line.end])]
    for part in parts:
        if part.kind == "DATUM":
            said.datums.setdefault(read_datum(part.text))
        elif part.kind == "DEPTH_UNIT":
            said.units.setdefault(read_unit(part.text))
    datums, units = list(said.datums), list(said.units)
    return (
        datums[0] if len({one.name for one in datums}) == 1 else None,
        units[0] if len(units) == 1 else None,
    )


def _title(context: Context, line: Line) -> str | None:
    cells = context.written(line.start, line.end)
    first = next((e for e in line.elements if e.kind == "words"), None)
    if first is None:
        return None
    end = first.end
    for element in line.elements[1:]:
        if element.gap:
            break
        end = element.end
    return context.written(first.start, end).strip(" -–|") or cells


def _number(found: LineWords) -> tuple[str | None, int | None] | None:
    words = found.first("EDITION_NUMBER", "YEAR_AND_NUMBER")
    if words is None:
        return None
    figures = "".join(c if c.isdigit() else " " for c in words).split()
    years = [figure for figure in figures if len(figure) == 4 and figure[:2] in ("19", "20")]
    numbers = [figure for figure in figures if figure not in years]
    if not numbers:
        return None
    return numbers[0], int(years[0]) if years else None


def _issued(found: LineWords, near: int | None) -> str | None:
    words = found.first("DATE")
    if words is None:
        return None
    date, _ = read_date(words, near)
    return date[:10] if date and len(date) >= 10 else None


def _date_faults(
    context: Context, line: Line, found: LineWords, near: int | None
) -> Iterator[Located]:
    """What is wrong with the date of the edition: a day that does not exist."""
    words = found.first("DATE")
    for fault in read_date(words, near)[1] if words else ():
        start = context.text.find(words or "", line.start)
        yield Located(fault.shifted(max(start, line.start)), ["/edition"])


def _stated_range(found: LineWords, near: int | None) -> tuple[NoticeRef, NoticeRef] | None:
    """The first and the last notice of the edition: `Notices 3310 to 3313 of 2026`."""
    words = found.first("NUMBER_RANGE")
    if words is None:
        return None
    first, last = _NUMBER_OF_RANGE.findall(words)
    years = last[1] or first[1]
    year = full_year(years, near) if years else near
    return (
        NoticeRef(number=int(first[0]), year=year, status="permanent"),
        NoticeRef(number=int(last[0]), year=year, status="permanent"),
    )
