"""All bulletins as one table of comma-separated values (RFC 4180), an action a row.

Behind those of `columns` stand `guarded` and `caution`.  A spreadsheet works out a cell that
begins with `=`, `+`, `-` or `@`, whoever wrote it.  Such a text has an apostrophe put before it,
and `guarded` names the columns where one was put, so that taking one character away gives the
words of the notice back.  Figures need none.  Every row carries the caution, since rows are sorted
and copied apart: an aid to a qualified officer only, and every position must be checked against
the original notice.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from decimal import Decimal

from noticeparse.caution import CAUTION
from noticeparse.numbers import as_number
from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import Part, Wishes, Writer
from noticeparse.writers.columns import COLUMNS
from noticeparse.writers.rows import Row, Value, placed_actions, row_of

_MARK = "\ufeff"
_GUARD = "'"
# Full-width forms are taken for the same signs; a tab or return in front is passed over.
_WORKED_OUT = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")

OWN_COLUMNS = {
    "guarded": "columns whose text has an apostrophe put before it",
    "caution": "what every reader must know",
}
"""The columns behind those of a row."""

TITLES = (*COLUMNS, *OWN_COLUMNS)


class CsvWriter(Writer):
    """One table for all bulletins, with one row of titles."""

    def __init__(self, wishes: Wishes) -> None:
        super().__init__(wishes)
        self._is_begun = False

    def part(self, bulletin: Bulletin) -> Part:
        """The rows of a bulletin."""
        return Part(_lines(_cells(row_of(placed)) for placed in placed_actions(bulletin)))

    def add(self, part: Part) -> str:
        """The rows, the titles before the first of all."""
        if self._is_begun:
            return part.body
        self._is_begun = True
        mark = _MARK if self.wishes.has_mark else ""
        return mark + _lines([TITLES]) + part.body


def _cells(row: Row) -> list[str]:
    """The cells of a row, guarded where a spreadsheet would work them out."""
    guarded = [name for name, value in row.items() if _is_worked_out(value)]
    cells = [("", _GUARD)[name in guarded] + _cell(value) for name, value in row.items()]
    return [*cells, ", ".join(guarded), CAUTION]


def _is_worked_out(value: Value) -> bool:
    """Whether a text, which may be blank in front, begins like a formula."""
    return isinstance(value, str) and (
        value.startswith(_WORKED_OUT) or value.lstrip().startswith(_WORKED_OUT)
    )


def _cell(value: Value) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    # As in the JSON: half a kilometre in miles has figures without end.
    return str(as_number(value) if isinstance(value, Decimal) else value)


def _lines(rows: Iterable[Sequence[str]]) -> str:
    lines = io.StringIO(newline="")
    csv.writer(lines).writerows(rows)
    return lines.getvalue()
