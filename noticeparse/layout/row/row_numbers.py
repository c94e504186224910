"""The number of the notice that a row of a table names, in one cell or in several.

Exports have number, year and kind in columns of their own: `451 | 2026 | T` is 451(T)/26.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.references import status_in_words

_BRACKETED = re.compile(r"[(\[] ?[0-9]{1,5} ?/ ?[0-9]{2,4} ?[)\]]")
_MARKS = {"temporary": "(T)", "preliminary": "(P)"}
_LONGEST = 5


class RowNumber(NamedTuple):
    """A notice as a row names it: its number as if written in one cell, and where it stands."""

    words: str
    element: Element


def row_number(text: str, cells: Cells) -> RowNumber | None:
    """The number that the cells of a row give, or None where they name no notice."""
    cell = cells.get("notice", [])
    mark = _mark(text, cells)
    if sum(e.kind == "number" for e in cell) > 1:
        # Which of several notices the row is of cannot be told.
        return None
    number = next((e for e in cell if e.kind == "number"), None)
    if number is not None:
        words = text[number.start : number.end]
        head, slash, year = words.partition("/")
        if mark and slash and "(" not in words and head.strip().isdigit():
            words = f"{head.strip()}{mark}/{year}"
        return RowNumber(words, number)
    figures, year = words_of(text, cell).strip(), words_of(text, cells.get("year", [])).strip()
    if not (figures.isdecimal() and len(figures) <= _LONGEST and _is_year(year)):
        return None
    parts = [*cell, *cells["year"], *(cells.get("status", []) if mark else [])]
    start = min(e.start for e in parts)
    end = max(e.end for e in parts)
    if any(start < e.start < end for one in cells.values() for e in one if e not in parts):
        # Other cells stand between: the number alone is where the notice begins.
        start, end = cell[0].start, cell[-1].end
    return RowNumber(f"{figures}{mark}/{year}", Element("number", start, end, cell[0].gap))


def take_bracketed(text: str, cells: Cells) -> Piece | None:
    """Take a number in brackets from the column of the notices: the one before, `(18/26)`."""
    kept: list[Element] = []
    found: Piece | None = None
    for element in cells.get("notice", []):
        words = text[element.start : element.end].strip()
        opens = (
            text[max(element.start - 2, 0) : element.start].rstrip()[-1:] == "("
            and element.kind == "number"
        )
        if opens or _BRACKETED.fullmatch(words):
            found = element.start, element.end
        elif words.strip("()"):
            kept.append(element)
    if found is not None:
        cells["notice"] = kept
    return found


def _mark(text: str, cells: Cells) -> str:
    """The mark `(T)` or `(P)` that a column of its own states, or nothing."""
    return _MARKS.get(status_in_words(words_of(text, cells.get("status", [])).strip()) or "", "")


def _is_year(words: str) -> bool:
    return words.isdecimal() and len(words) in (2, 4)


def share_numbers(items: Sequence[Item]) -> None:
    """Give rows without a number that of the row below them, at whose end it stands."""
    following: Element | None = None
    for item in reversed(items):
        following = item.number or following
        item.number = following
