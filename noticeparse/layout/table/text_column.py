"""Tables of which one column holds the whole text of each notice, over many lines.

`NOTICE  CHART  LAST NM  CORRECTION`: beside the number and its charts stands the heading, and
below it commands and places, as they would without the columns.  Charts one below the other share
them.  The places may stand in one more column, `POSITION`, beside a list under its verbs.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.title_rows import read_titles
from noticeparse.layout.column.titles import Table
from noticeparse.layout.drafts import ChartDraft
from noticeparse.layout.line.elements import Element, Line, has_words, words_of
from noticeparse.layout.table.row_heads import HEAD_CELLS, RowHeads
from noticeparse.readers.heads import is_international

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
        self._column = 0
        """Where the text stands."""

    def opens(self, lines: Sequence[Line], index: int, line: Line) -> bool:
        """Whether a line has the titles of such a table; `index` is its place among the lines."""
        titles = read_titles(self.text, line)
        if titles is not None and titles == self._table:
            return True
        if titles is None or titles.mark != " " or not {"notice", "chart"} <= titles.roles:
            return False
        has_places = titles.roles - _OF_HEADS == {"verb", "position"}
        if not has_places and not (titles.holds_items and titles.roles - _OF_HEADS == {"verb"}):
            return False
        column = next(one.start for one in titles.columns if one.role == "verb")
        below = lines[index + 1 : index + 1 + _FAR]
        solid = [one for one in below if one.elements and not one.has("rule")]
        _, text = _parted(solid[0], column) if solid else ((), ())
        goes_on = any(one.indent(self.text) >= column for one in solid[1:])
        # Beside places of their own the words are a list, headed by what is done.
        fits = [one.kind for one in text] == ["verb"] if has_places else bool(text)
        if not goes_on or not fits:
            return False
        self._table, self._column = titles, column
        return True

    def takes(self, line: Line) -> bool:
        """Take a line as one of the table; false for any other, which ends it."""
        table = self._table
        if table is None or self._are_titles_again(line):
            return False
        heads, text = _parted(line, self._column)
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
        elif "chart" in cells and is_international(words_of(self.text, cells["chart"])):
            self._heads.take_international(cells["chart"])
        elif "chart" in cells:
            self._add_chart(cells)
        elif cells:
            self._table = None
            return False
        if text:
            self.assembly.body.append(line._replace(elements=text))
        return True

    def _are_titles_again(self, line: Line) -> bool:
        """Whether a line has the titles of the open table, as at the head of the next page."""
        return line.has_only("words") and read_titles(self.text, line) == self._table

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
