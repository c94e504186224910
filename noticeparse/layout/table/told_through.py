"""Temporary notices told in sentences that run through the columns of a table.

    | 23(T)/26  Quill Roads. Dredger at work.
    |           512    Until 31 August a dredger with a floating pipe will be at work
    |                  within 0.2 miles of P. Pass at slow speed.

Beside such a sentence the columns of notice and chart are what they are in the rows above.  In a
permanent notice words in the place of a command stay what they are there: a verb nobody knows.
"""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.titles import Cells, Table
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.row.row_numbers import row_number

_OF_HEADS = frozenset({"notice", "year", "chart", "international", "panel", "previous", "datum"})
_TEXT = frozenset({"verb", "feature", "old"})
_FEWEST_WORDS = 5
"""Words of a sentence on its first line."""


class Sentence(NamedTuple):
    """A line of such a notice: what stands in the columns of the head, and its words."""

    cells: Cells
    line: Line


def sentence_beside(assembly: Assembly, table: Table, line: Line) -> Sentence | None:
    """A row of a temporary notice that opens a sentence across the columns, or None."""
    text = assembly.text
    at = next((one.start for one in table.columns if one.role in _TEXT), None)
    behind = [one.start for one in table.columns if at is not None and one.start > at]
    if table.mark != " " or at is None or not behind or not line.elements:
        return None
    heads = tuple(e for e in line.elements if e.start - line.start < at - 1)
    told = line.elements[len(heads) :]
    if not told or not _opens(text, told[0], line.start + behind[0]):
        return None
    if any(e.kind in ("verb", "label", "number", "chart", "key", "bar") for e in told):
        return None
    cells = table.cells(text, line._replace(elements=heads), None) if heads else {}
    if cells is None or not cells.keys() <= _OF_HEADS:
        return None
    number = row_number(text, cells)
    notice = assembly.notice
    words = number.words if number is not None else notice.number_words if notice else None
    if not words or "(" not in words:
        return None
    return Sentence(cells, line._replace(elements=told))


def _opens(text: str, first: Element, column: int) -> bool:
    """Whether words open a sentence and run on into the next column without a gap."""
    words = text[first.start : first.end]
    is_sentence = words[:1].isupper() and len(words.split()) >= _FEWEST_WORDS
    return first.kind == "words" and is_sentence and first.end > column + 1


def goes_on_beside(sentence: Line, line: Line) -> bool:
    """Whether a line right below one of a sentence goes on with it, in its column."""
    if not line.elements or not sentence.elements or line.has("verb", "label", "number", "chart"):
        return False
    column = sentence.elements[0].start - sentence.start
    return abs(line.elements[0].start - line.start - column) <= 1
