"""Pages printed in two columns, copied line by line: left column first, then the right one.

A line of such a page holds a line of either column, with blanks between.  That there are two is
told by what opens at both edges: heads of notices or charts, and commands; a table has its heads
in one column.  The records are read from the text in reading order, and their spans led back.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import accumulate
from typing import NamedTuple

from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.lines import read_lines
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.spans import LineIndex, Span
from noticeparse.text import repair

_FEWEST = 2
"""Heads of notices or charts that must open at the right edge."""
_HEAD = re.compile(
    r"(?:(?:notices?|nm|ntm)(?: to mariners)? (?:nos?\.? ?)?)?[0-9]{1,5}(?:\([TP]\))?/[0-9]{2}"
    r"|charts?:? (?:nos?\.? ?)?[A-Z]{0,3}[0-9]",
    re.IGNORECASE,
)
_LEAST_LINES = 6
_NARROWEST = 24
"""Figures of the left column."""
_GAP = re.compile(r"(?<=\S) {3,}(?=\S)|^ {24,}(?=\S)")


class Part(NamedTuple):
    """A stretch of the given text, and where it stands in reading order."""

    start: int
    given: int
    length: int


class ReadingOrder:
    """A text in reading order, and the way back to the text as given."""

    def __init__(
        self,
        given: str,
        pieces: Sequence[tuple[int, str]],
        turns: Sequence[int],
        read_as: Sequence[tuple[int, str, str]] = (),
    ) -> None:
        self.text = "".join(words for _, words in pieces)
        """The text in reading order."""
        ends = accumulate((len(words) for _, words in pieces), initial=0)
        self._parts = [
            Part(start, at, len(words)) for start, (at, words) in zip(ends, pieces, strict=False)
        ]
        self._starts = [part.start for part in self._parts]
        self._by_given = sorted((part.given, n) for n, part in enumerate(self._parts))
        self._lines = LineIndex(given)
        self.turns = [self._parts[index].start for index in turns]
        """Where a right column begins, in reading order."""
        self.read_as = [(self._ordered(at), old, new) for at, old, new in read_as]
        """Where words stand in reading order that are read as others, no longer than they."""

    def _ordered(self, at: int) -> int:
        """Where in reading order an offset of the given text stands."""
        index = bisect_right(self._by_given, (at, len(self._parts))) - 1
        given, part = self._by_given[index]
        return self._parts[part].start + at - given

    def span(self, span: Span) -> Span:
        """The span in the given text that holds all that a span in reading order holds."""
        first = bisect_right(self._starts, span.start) - 1
        last = max(bisect_right(self._starts, max(span.end - 1, span.start)) - 1, first)
        held = [part for part in self._parts[first : last + 1] if part.length]
        starts = [max(part.given, part.given + span.start - part.start) for part in held]
        ends = [part.given + min(part.length, span.end - part.start) for part in held]
        return self._lines.span(min(starts), max(*ends, min(starts)))

    def path(self, path: str) -> str:
        """The path of a record, which is the same."""
        return path


def in_reading_order(text: str) -> ReadingOrder | None:
    """The text with the columns of its pages one behind the other; None without such pages."""
    edge = _right_edge(text)
    if edge is None:
        return None
    rows = [match.span() for match in re.finditer(r"[^\n]*\n|[^\n]+\Z", text)]
    pieces: list[tuple[int, str]] = []
    turns: list[int] = []
    at = 0
    for first, last in _blocks(text, rows, edge):
        pieces += [(start, text[start:end]) for start, end in rows[at:first]]
        right = _column(text, rows[first:last], edge, is_right=True)
        pieces += _column(text, rows[first:last], edge, is_right=False)
        turns.append(len(pieces))
        pieces += right
        at = last
    pieces += [(start, text[start:end]) for start, end in rows[at:]]
    return ReadingOrder(text, pieces, turns) if turns else None


def _right_edge(text: str) -> int | None:
    """The column at which the right half of pages opens, or None where nothing tells of one."""
    if "\t" in text:
        return None
    edges: Counter[int] = Counter()
    for line in text.split("\n"):
        for gap in _GAP.finditer(line) if "   " in line else ():
            if gap.end() >= _NARROWEST and _HEAD.match(line, gap.end()):
                edges[gap.end()] += 1
    edge, count = edges.most_common(1)[0] if edges else (0, 0)
    return edge if count >= _FEWEST else None


def _blocks(text: str, rows: Sequence[tuple[int, int]], edge: int) -> Iterator[tuple[int, int]]:
    """First row, and the row behind the last, of each page that is printed in two columns."""
    first = 0
    for at, (start, end) in enumerate([*rows, (len(text), len(text))]):
        line = text[start:end].rstrip()
        runs_through = len(line) > edge - 2 and line[edge - 2 : edge].strip(" ") != ""
        opens_page = line.startswith("\f")
        if at < len(rows) and not runs_through and not opens_page:
            continue
        block = _behind_titles(text, rows, _trimmed(text, rows, first, at), edge)
        if _is_in_columns(text, rows[block[0] : block[1]], edge):
            yield block
        first = at if opens_page else at + 1


def _trimmed(text: str, rows: Sequence[tuple[int, int]], first: int, last: int) -> tuple[int, int]:
    """The rows from the first to the last that are not blank."""
    while first < last and not text[slice(*rows[first])].strip():
        first += 1
    while last > first and not text[slice(*rows[last - 1])].strip():
        last -= 1
    return first, last


def _behind_titles(
    text: str, rows: Sequence[tuple[int, int]], block: tuple[int, int], edge: int
) -> tuple[int, int]:
    """The rows without the titles of the page above them, which blank rows end."""
    first, last = block
    for at in range(*block):
        words = text[slice(*rows[at])].rstrip()
        if not words:
            first = at + 1
            continue
        cells = (repair(words[:edge]).text, repair(words[edge:].strip()).text)
        if any(_opening(one) is not None or _COORDINATE.search(one) for one in cells):
            break
    return _trimmed(text, rows, first, last)


_COORDINATE = re.compile(r"[0-9]['\"]? ?[NSEW]\b")


def _is_in_columns(text: str, rows: Sequence[tuple[int, int]], edge: int) -> bool:
    """Whether heads and commands open at both edges of a block."""
    if len(rows) < _LEAST_LINES:
        return False
    lines = [text[start:end].rstrip("\n") for start, end in rows]
    left = [line[: edge - 2].rstrip() for line in lines]
    right = [line[edge:] for line in lines]
    return all(_is_of_notices(column) for column in (left, right))


def _is_of_notices(column: Sequence[str]) -> bool:
    """Whether heads, commands and places stand in a column, which may hold any character."""
    column = [repair(words).text for words in column]
    openings = [_opening(words) for words in column if words[:1].strip()]
    told = [one for one in openings if one is not None]
    if "verb" not in told or not {"notice", "chart"} & set(told):
        return False
    return any(line.has("point", "half") for line in read_lines("\n".join(column)))


def _opening(words: str) -> str | None:
    """What a line opens with: the head of a notice, a chart or a command; None for others."""
    line: Line | None = next(read_lines(words), None)
    if line is None or line.is_blank:
        return None
    kind = line.elements[0].kind
    if kind in ("verb", "chart"):
        # A verb may stand alone over its items.
        return kind if kind == "verb" or len(line.elements) > 1 else None
    return "notice" if notice_opening(words, line) is not None else None


def _column(
    text: str, rows: Sequence[tuple[int, int]], edge: int, *, is_right: bool
) -> list[tuple[int, str]]:
    """One column of a block, a piece for each line with its line end, blank ends left out."""
    kept: list[tuple[int, str]] = []
    for start, end in rows:
        line = text[start:end].rstrip("\n")
        cut = min(edge, len(line))
        words = line[cut:].rstrip() if is_right else line[:cut].rstrip()
        at = start + cut if is_right else start
        if words or kept:
            kept += [(at, words), (at + len(words), "\n")]
    while kept and not kept[-1][1].strip():
        kept.pop()
    return [*kept, (kept[-1][0] + len(kept[-1][1]), "\n")] if kept else []
