"""The rows of a chart list that is a CSV file (RFC 4180), with remarks behind `#`.

Where the comma is a decimal mark, spreadsheets part the cells by semicolons; tabs are read too.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator

from noticeparse.chart_list.columns import (
    COLUMNS,
    NEEDED,
    Row,
    Rows,
    Slip,
    column_name,
    unknown_columns,
)

_DELIMITERS = ",;\t"
_Record = tuple[list[str], int, int]
"""The cells of a record and its stretch of the text."""


def read_table(text: str) -> Rows | Slip:
    """The rows of a table, or what keeps it from being a chart list."""
    records = _records(text)
    try:
        head = next(records, None)
        if head is None:
            return Slip("chart-list-unreadable", {"reason": "it has no row"}, 0, 0)
        names = [column_name(cell) for cell in head[0]]
        if not set(names) & set(COLUMNS):
            reason = {"reason": "its first row names no column of one"}
            return Slip("chart-list-unreadable", reason, *head[1:])
        missing = [one for one in NEEDED if one not in names]
        if missing:
            values = {"columns": ", ".join(missing)}
            return Rows([], [Slip("chart-list-column-missing", values, *head[1:])])
        slips = [*unknown_columns(names, *head[1:])]
        slips += [
            Slip("chart-list-column-twice", {"written": name}, *head[1:])
            for name in COLUMNS
            if names.count(name) > 1
        ]
        return _rows(names, records, slips)
    except csv.Error as error:
        return Slip("chart-list-unreadable", {"reason": str(error)}, 0, 0)


def _rows(
    names: list[str], records: Iterator[tuple[list[str], int, int]], slips: list[Slip]
) -> Rows:
    rows: list[Row] = []
    for cells, start, end in records:
        written = [cell.strip() for cell in cells]
        # Of a column that stands twice the first is used.
        pairs = reversed([*zip(names, written, strict=False)])
        values = {name: cell for name, cell in pairs if name in COLUMNS and cell}
        row = Row(values, start, end)
        if len(cells) != len(names):
            counts = {"values": str(len(cells)), "columns": str(len(names))}
            # Which value belongs to which column is not certain, the number's least of all.
            slips.append(Slip("chart-list-row-length", counts, start, end))
            continue
        rows.append(row)
    return Rows(rows, slips)


def _records(text: str) -> Iterator[_Record]:
    """The cells of each record and its stretch of the text; a quoted cell may have line ends."""
    # A line ends at a line feed and nowhere else, as it is counted.
    lines = [*io.StringIO(text, newline="\n")]
    offsets = [0]
    for line in lines:
        offsets.append(offsets[-1] + len(line))
    # A remark becomes an empty line, so that lines are still counted right.
    kept = ["\n" if line.lstrip().startswith("#") else line for line in lines]
    head = next((line for line in kept if line.strip()), "")
    delimiter = max(_DELIMITERS, key=head.count)
    reader = csv.reader(kept, delimiter=delimiter, skipinitialspace=True)
    before = 0
    for cells in reader:
        first, before = before, reader.line_num
        if any(cell.strip() for cell in cells):
            start, end = offsets[first], offsets[reader.line_num]
            yield cells, start, start + len(text[start:end].rstrip())
