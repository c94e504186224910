"""Tables whose last column holds the whole text of each notice, over many lines.

`NOTICE  CHART  LAST NM  CORRECTION`: beside the number and its charts stands the heading, and
below it commands and places, as they would without the columns.  Charts one below the other share
them.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.title_rows import read_titles
from noticeparse.layout.column.titles import Table
from noticeparse.layout.drafts import ChartDraft
from noticeparse.layout.line.elements import Element, Line, has_words
from noticeparse.layout.table.row_heads import HEAD_CELLS, RowHeads

_OF_HEADS = frozenset({"notice", "previous", *HEAD_CELLS})
_FAR = 6
"""Lines below the titles among which one must go on with the text of the first row."""


class TextColumnReader:
    """Reads such a table; its text goes into the open body, line by line."""

    def __init__(self, text: str, assembly: Assembly) -> None:
        self.text = text
        self.assembly = assembly
        self._heads = RowHeads(assembly)
        self._table: Table | None = None

    def opens(self, lines: Sequence[Line], index: int, line: Line) -> bool:
        """Whether a line has the titles of such a table; `index` is its place among the lines."""
        titles = read_titles(self.text, line)
        if titles is None or not titles.holds_items or titles.mark != " ":
            return False
        if not {"notice", "chart"} <= titles.roles or titles.roles - _OF_HEADS != {"verb"}:
            return False
        column = titles.columns[-1].start
        below = lines[index + 1 : index + 1 + _FAR]
        solid = [one for one in below if one.elements and not one.has("rule")]
        _, text = _parted(solid[0], column) if solid else ((), ())
        goes_on = any(one.indent(self.text) >= column for one in solid[1:])
        if not goes_on or not text or _tells(text):
            return False
        self._table = titles
        return True

    def takes(self, line: Line) -> bool:
        """Take a line as one of the table; false for any other, which ends it."""
        table = self._table
        if table is None:
            return False
        heads, text = _parted(line, table.columns[-1].start)
        cells = table.cells(self.text, line._replace(elements=heads), None) if heads else {}
        opens = cells is not None and "notice" in cells
        goes_on = self.assembly.has_charts and bool(text)
        if cells is None or cells.keys() - _OF_HEADS or not (opens or cells or goes_on):
            self._table = None
            return False
        if opens or ("chart" in cells and self._is_told_apart(text)):
            self._heads.take(cells)
            if not _tells(text):
                self._take_heading(text)
                return True
        elif "chart" in cells:
            self._add_chart(cells)
        elif cells:
            self._table = None
            return False
        if text:
            self.assembly.body.append(line._replace(elements=text))
        return True

    def _is_told_apart(self, text: Sequence[Element]) -> bool:
        """Whether a chart below another has its own command beside it, and not the next word.

        Below the heading of its notice a command is the first of both charts.
        """
        if not self.assembly.body or not text:
            return False
        return text[0].kind == "verb" or self.assembly.body[-1].is_blank or not _tells(text)

    def _add_chart(self, cells: dict[str, list[Element]]) -> None:
        """A chart below that of the row, which has the same corrections."""
        previous = [(e.start, e.end) for e in cells.get("previous", []) if e.kind != "bar"]
        pieces = [(e.start, e.end) for role in HEAD_CELLS for e in cells.get(role, [])]
        number = " ".join(self.assembly.words(e) for e in cells["chart"])
        before = (previous[0][0], previous[-1][1]) if previous else None
        chart = ChartDraft(pieces, number, before, items=self.assembly.section().items)
        if self.assembly.notice is not None:
            self.assembly.notice.charts.append(chart)

    def _take_heading(self, text: Sequence[Element]) -> None:
        solid = [element for element in text if has_words(self.text, element)]
        if solid and self.assembly.notice is not None:
            self.assembly.notice.heading.append((solid[0].start, solid[-1].end))


def _parted(line: Line, column: int) -> tuple[tuple[Element, ...], tuple[Element, ...]]:
    """The elements left of the column of the text, and those in it."""
    heads = tuple(e for e in line.elements if e.start - line.start < column)
    return heads, line.elements[len(heads) :]


def _tells(elements: Sequence[Element]) -> bool:
    """Whether elements hold a command or a place."""
    return any(e.kind in ("verb", "passive", "point", "half", "label") for e in elements)
