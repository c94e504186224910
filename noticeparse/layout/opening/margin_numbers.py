"""Notices that are counted in the margin, without a word and a year: `131. OSSEL BANK`.

Paragraphs and items are counted so too.  The numbers of notices stand in the first column, behind
a blank line or a rule and before a heading; they go up through the whole text and do not begin
anew.  Without a stop, `131   OSSEL BANK`, charts are listed so as well: then most of the headings
name the chart of the notice, or it stands right below them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.readers.features import has_kind

_COUNT = re.compile(
    r"(?P<figures>[0-9]{2,5})(?: ?\([TP]\))?"
    r"(?:(?P<stop>\.)[ \t]{1,8}|(?: ?(?:-{1,2}|:))?[ \t]{2,12}| ?(?:-{1,2}|:)[ \t]|(?<=\))[ \t])"
    r"(?!Charts?\b|CHARTS?\b)(?=[A-Z]|\([TP]\) )"
)
_CAPITALS = re.compile(r"[A-Z][A-Z'&-]{2,}\b")
_FIRST_PART = re.compile(r"[.,:;(]| -{1,2} ")
_WIDEST_STEP = 3
"""How far apart the numbers of two notices that follow each other may be."""
_WIDEST_INDENT = 4
_NEVER: tuple[ElementKind, ...] = ("point", "half", "verb", "passive")


class Count(NamedTuple):
    """A number in the margin: the index of its line, where it ends, and its figure."""

    row: int
    end: int
    figure: int
    is_sure: bool
    """Whether its heading opens with no feature, as an item might."""
    is_told: bool
    """Whether a stop stands behind it, or its chart with the heading or right below."""


def with_margin_numbers(
    text: str, lines: list[Line], before: HandedOn | None = None
) -> tuple[list[Line], list[Count]]:
    """The lines, those that open a notice so with its number as an element of its own.

    `before` is what the part before hands on, where this is no whole text.
    """
    counts = list(_counts(text, lines))
    figures = [count.figure for count in counts]
    if before is not None and before.margin_number is not None:
        figures.insert(0, before.margin_number)
    if len(figures) < 2 or not any(count.is_sure for count in counts):
        return lines, []
    is_first = before is None or before.margin_number is None
    if is_first and 2 * sum(count.is_told for count in counts) < len(counts):
        return lines, []
    if any(line.has("number") and _opens_with_year(text, line) for line in lines):
        return lines, []
    if not all(0 < b - a <= _WIDEST_STEP for a, b in pairwise(figures)):
        return lines, []
    found = list(lines)
    for count in counts:
        found[count.row] = _parted(text, lines[count.row], count.end)
    return found, counts


def last_before(counts: Sequence[Count], end: int | None, before: HandedOn | None) -> int | None:
    """The last number before a cut; that of the part before where there is none here."""
    here = [count.figure for count in counts if end is None or count.end <= end]
    return here[-1] if here else before.margin_number if before else None


def _counts(text: str, lines: Sequence[Line]) -> Iterator[Count]:
    for row, line in enumerate(lines):
        if line.is_blank:
            continue
        start = line.elements[0].start
        told = _COUNT.match(text, start, line.end)
        if told is None or start - line.start > _WIDEST_INDENT or line.has(*_NEVER):
            continue
        if not (row == 0 or lines[row - 1].is_blank or lines[row - 1].has("rule")):
            continue
        heading = text[told.end() : line.end]
        first = _FIRST_PART.split(heading, maxsplit=1)[0]
        is_sure = _CAPITALS.match(heading) is not None or not has_kind(first)
        below = lines[row + 1] if row + 1 < len(lines) else line
        if below is not line and not below.is_blank and _is_counted(text, below):
            # `88  Kelm Roads` above `89  Vidmar Bight`: a table of contents.
            continue
        is_told = told["stop"] is not None or line.has("chart") or _heads_chart(below)
        yield Count(row, told.end(), int(told["figures"]), is_sure, is_told)


def _is_counted(text: str, line: Line) -> bool:
    return _COUNT.match(text, line.elements[0].start, line.end) is not None


def _heads_chart(line: Line) -> bool:
    return bool(line.elements) and line.elements[0].kind == "chart"


def _opens_with_year(text: str, line: Line) -> bool:
    """Whether a line opens a notice otherwise; a radio warning among them has its own series."""
    opening = notice_opening(text, line)
    return opening is not None and not opening.is_radio


def _parted(text: str, line: Line, end: int) -> Line:
    """The line with its number as the first element."""
    start = line.elements[0].start
    words = text[start:end].rstrip(" \t.:-")
    number = Element("number", start, start + len(words), True)
    behind = [
        element if element.start >= end else element._replace(start=end, gap=True)
        for element in line.elements
        if element.end > end
    ]
    return line._replace(elements=(number, *behind))
