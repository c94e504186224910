"""Notices that are counted in the margin, without a word and a year: `131. OSSEL BANK`.

Paragraphs and items are counted so too.  The numbers of notices stand in the first column, behind
a blank line or a rule and before a heading; they go up through the whole text and do not begin
anew.  Without a stop, `131   OSSEL BANK`, charts are listed so as well: then most of the headings
name the chart of the notice, or it stands right below them.  A single number is told by the head
of a chart right below its heading alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.drafts import Piece
from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.readers.features import has_kind

_COUNT = re.compile(
    r"(?:[*†‡] ?)?(?P<number>(?P<figures>[0-9]{2,5})(?:(?<=[0-9]{3})-(?:20)?[0-9]{2}(?=[ \t]{2}))?"
    r"(?: ?\((?:[TP]|(?:19|20)[0-9]{2})\))?)[*†‡]?"
    r"(?:(?P<stop>\.)[ \t]{1,8}|(?: ?(?:-{1,2}|:))?[ \t]{2,12}| ?(?:-{1,2}|:)[ \t]|(?<=\))[ \t]"
    r"|(?P<narrow>[ \t])(?=[A-Z][A-Z'&-]{2,}[^\n]{0,60} - ))"
    r"(?!Charts?\b|CHARTS?\b)(?=[A-Z]|\([TP]\) )"
)
_CAPITALS = re.compile(r"[A-Z][A-Z'&-]{2,}\b")
_FIRST_PART = re.compile(r"[.,:;(]| -{1,2} ")
_WIDEST_STEP = 3
"""How far apart the numbers of two notices that follow each other may be."""
_WIDEST_INDENT = 4
_HIGH = 100
"""Numbers from here on are too high to count the items of a notice."""
_FAR = 3
"""Lines below a heading among which the head of its chart stands."""
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
    is_apart: bool
    """Whether it stands behind a blank line or a rule."""
    heads_chart: bool
    """Whether the head of a chart of another number stands right below it."""
    place: Piece
    """The stretch of the number itself, without a star."""
    is_starred: bool


def with_margin_numbers(
    text: str, lines: list[Line], before: HandedOn | None = None
) -> tuple[list[Line], list[Count]]:
    """The lines, those that open a notice so with its number as an element of its own.

    `before` is what the part before hands on, where this is no whole text.
    """
    every = list(_counts(text, lines))
    above = before.margin_number if before is not None else None
    counts = [count for count in every if count.is_apart]
    if not _are_notices(counts, above):
        counts = [count for count in every if count.heads_chart]
        if not _head_charts(counts, above):
            return lines, []
    if any(line.has("number") and _opens_with_year(text, line) for line in lines):
        return lines, []
    found = list(lines)
    for count in counts:
        found[count.row] = _parted(lines[count.row], count)
    return found, counts


def _are_notices(counts: Sequence[Count], above: int | None) -> bool:
    """Whether all that is counted so are notices, by their numbers and headings."""
    figures = [*([] if above is None else [above]), *(count.figure for count in counts)]
    if len(figures) < 2 or not any(count.is_sure for count in counts):
        return False
    if above is None and 2 * sum(count.is_told for count in counts) < len(counts):
        return False
    return all(0 < b - a <= _WIDEST_STEP for a, b in pairwise(figures))


def _head_charts(counts: Sequence[Count], above: int | None) -> bool:
    """Whether the numbers above the heads of charts are of notices, be it a single one."""
    figures = [*([] if above is None else [above]), *(count.figure for count in counts)]
    is_high = all(count.figure >= _HIGH for count in counts)
    return bool(counts) and is_high and all(a < b for a, b in pairwise(figures))


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
        is_apart = row == 0 or lines[row - 1].is_blank or lines[row - 1].has("rule")
        heading = text[told.end() : line.end]
        first = _FIRST_PART.split(heading, maxsplit=1)[0]
        is_sure = _CAPITALS.match(heading) is not None or not has_kind(first)
        below = lines[row + 1] if row + 1 < len(lines) else line
        if below is not line and not below.is_blank and _is_counted(text, below):
            # `88  Kelm Roads` above `89  Vidmar Bight`: a table of contents.
            continue
        figure, chart = int(told["figures"]), _chart_below(lines[row + 1 : row + 1 + _FAR])
        is_told = told["stop"] is not None or line.has("chart") or _heads_chart(below)
        is_other = chart is not None and not _names(text, chart, told["figures"])
        heads_chart = is_other and is_sure and (is_apart or lines[row - 1].has("point", "half"))
        is_apart = is_apart and told["narrow"] is None
        own = told.span("number"), "*" in text[told.end("number") : told.end()]
        yield Count(row, told.end(), figure, is_sure, is_told, is_apart, heads_chart, *own)


def _is_counted(text: str, line: Line) -> bool:
    return _COUNT.match(text, line.elements[0].start, line.end) is not None


def _heads_chart(line: Line) -> bool:
    return bool(line.elements) and line.elements[0].kind == "chart"


def _opens_with_year(text: str, line: Line) -> bool:
    """Whether a line opens a notice otherwise; a radio warning among them has its own series."""
    opening = notice_opening(text, line)
    return opening is not None and not opening.is_radio


def _chart_below(lines: Sequence[Line]) -> Line | None:
    """The head of a chart below a heading, which may have a second line, or one for its source."""
    for line in lines:
        if _heads_chart(line):
            return line
        if line.is_blank or not line.has_only("words", "key"):
            return None
    return None


def _names(text: str, line: Line, figures: str) -> bool:
    """Whether the head of a chart names the chart of this number."""
    return re.search(rf"(?<![0-9]){figures}(?![0-9])", text[line.start : line.end]) is not None


def _parted(line: Line, count: Count) -> Line:
    """The line with its number, and a mark before it, as elements of their own."""
    first = line.elements[0]
    start, end = count.place
    made = [Element("number", start, end, True)]
    if first.start < start:
        made.insert(0, first._replace(kind="words", end=start))
    # A star stays with the words behind it.
    kept = end if count.is_starred else count.end
    behind = [
        element if element.start >= count.end else element._replace(start=end, gap=True)
        for element in line.elements
        if element.end > count.end
    ]
    behind[:1] = [one._replace(start=min(one.start, kept)) for one in behind[:1]]
    return line._replace(elements=(*made, *behind))
