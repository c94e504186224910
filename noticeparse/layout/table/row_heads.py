"""The notice and the chart that a row of a table, or a block of keys, names."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.titles import Cells, Table
from noticeparse.layout.drafts import ChartDraft, Piece
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.opening.recognise import names_panel
from noticeparse.layout.row.row_numbers import row_number, take_bracketed
from noticeparse.layout.table.told_through import goes_on_beside, sentence_beside
from noticeparse.readers.heads import read_parts

HEAD_CELLS = (
    "chart", "international", "panel", "edition", "edition_date", "datum",
)  # fmt: skip
"""Roles of the columns that are the head of a chart."""

_MORE_OF_CHART = frozenset({"INTERNATIONAL", "PREVIOUS", "PREVIOUS_IN_BRACKETS", "DATUM"})
"""What of a chart may stand on the lines below its number."""


class RowHeads:
    """Opens notices and chart sections as the rows name them."""

    def __init__(self, assembly: Assembly) -> None:
        self.assembly = assembly
        self.names_notices = False
        """Whether rows of the open table have named their notices."""
        self.count = 0
        """The last number of a row that counts the rows."""
        self._unread = ""
        """The words in the column of the notices that are no number of one."""
        self._panel = ""
        """The words in the column of the panels, of the last row that named a chart."""
        self._notice_is_first = False
        """Whether the last row that names both has its notice in front of its chart."""
        self._leaves_empty = False
        """Whether rows have left the cell of their notice or verb empty, which then holds on."""
        self._datums: set[Piece] = set()
        """Where cells of a datum stand."""
        self._sentence: Line | None = None
        """The line above, where it is of a sentence that runs through the columns."""

    def take(self, cells: Cells) -> None:
        """Go on under the notice and chart that the cells name."""
        before = take_bracketed(self.assembly.text, cells)
        self._takes_head(cells)
        if (notice := self.assembly.notice) is not None:
            notice.cancelled += [
                (e.start, e.end)
                for e in cells.get("cancels", [])
                if e.kind in ("number", "words") and self.assembly.words(e).strip(" ,;&-")
            ]
        if before is not None and self.assembly.charts:
            chart = self.assembly.charts[-1]
            chart.previous = chart.previous or before

    def takes_sentence(self, table: Table, line: Line) -> bool:
        """Take a line of a temporary notice that is told in sentences across the columns."""
        above, self._sentence = self._sentence, None
        if above is not None and above.row + 1 == line.row and goes_on_beside(above, line):
            self._sentence = line
        elif told := sentence_beside(self.assembly, table, line):
            if self.assembly.rows is not None and "notice" not in told.cells:
                # Below rows of its own notice.
                return False
            if told.cells:
                self.take(told.cells)
            self._sentence = told.line
        if self._sentence is None:
            return False
        self.assembly.body.append(self._sentence)
        return True

    def names_another(self, cells: Cells) -> bool:
        """Whether a row is of a notice not met before and takes nothing from the rows above."""
        number = row_number(self.assembly.text, cells)
        if number is None or not cells.get("chart") or not cells.get("verb"):
            return False
        return self.assembly.of_number(number.words) is None

    def take_previous(self, cells: Cells) -> None:
        """Give the chart above a record the notice before that the record alone names."""
        told = [] if cells.get("chart") else cells.get("previous", [])
        chart = self.assembly.charts[-1] if self.assembly.charts else None
        is_number = all(e.kind == "number" or self.assembly.words(e).isdigit() for e in told)
        if told and is_number and chart is not None and chart.previous is None:
            chart.previous = (told[0].start, told[-1].end)

    def take_international(self, cell: list[Element]) -> None:
        """Give the chart above a cell with its international number, letters and all."""
        if self.assembly.charts:
            self.assembly.charts[-1].head.append((cell[0].start, cell[-1].end))

    def take_more_of_chart(self, cells: Cells) -> None:
        """Give the chart above the rest of its cell: `INT 9812`, below it `(last 17/26)`."""
        told = [e for e in cells.get("chart", []) if e.kind != "bar"]
        parts = read_parts(" ".join(self.assembly.words(e) for e in told))
        is_more = bool(parts) and all(part.kind in _MORE_OF_CHART for part in parts)
        if is_more and not cells.get("notice") and self.assembly.charts:
            head = self.assembly.charts[-1].head
            head += [(e.start, e.end) for e in told if (e.start, e.end) not in head]
            del cells["chart"]

    def _takes_head(self, cells: Cells) -> None:
        self._leaves_empty |= not cells.get("notice") or not cells.get("verb")
        is_new = self._takes_notice(cells)
        datum = [(e.start, e.end) for e in cells.get("datum", [])]
        is_new |= self._is_other(datum)
        self._datums.update(datum)
        is_other = self._is_other_panel(cells)
        if not cells.get("chart") and not is_new and not is_other:
            return
        panel = self._bare_panel(cells)
        pieces = [
            (e.start, e.end)
            for role in HEAD_CELLS
            for e in cells.get(role, [])
            if role != "panel" or panel is None
        ]
        previous = [(e.start, e.end) for e in cells.get("previous", []) if e.kind != "bar"]
        named = [e for e in cells.get("chart", []) if e.kind != "chart"]
        chart = " ".join(self.assembly.words(e) for e in named)
        if self._lacks_chart(cells, is_new=is_new):
            cells["unknown_chart"] = cells["notice"]
        charts = self.assembly.charts
        current = charts[-1].number if charts else None
        if not chart and charts:
            head = charts[-1].head
            kept = [piece for piece in head if not datum or piece not in self._datums]
            if is_other:
                kept = [one for one in kept if not names_panel(self.assembly.text[slice(*one)])]
                kept += [one for one in pieces if one not in datum]
            chart, pieces = current or "", kept + datum
        if is_new or is_other or chart != current:
            items = cells.get("items", [])
            letters = (items[0].start, items[-1].end) if items else None
            before = (previous[0][0], previous[-1][1]) if previous else None
            words = " ".join(self.assembly.text[slice(*piece)] for piece in datum)
            if words and not any(part.kind == "DATUM" for part in read_parts(words)):
                cells["unknown_datum"] = cells["datum"]
            # `9533` in its own column: the title has the letters INT.
            bare = [e for e in cells.get("international", []) if self.assembly.words(e).isdigit()]
            own = (bare[0].start, bare[0].end) if bare else None
            self.assembly.open_row_chart(
                ChartDraft(pieces, chart, before, letters, panel, international=own)
            )

    def _lacks_chart(self, cells: Cells, *, is_new: bool) -> bool:
        """Whether a row names a notice of its own, and nothing in the column of the charts.

        Where the charts stand first, their cell holds for the notices below it; so does every
        cell of a table that has left others empty in the rows above.
        """
        notice, chart = cells.get("notice", []), cells.get("chart", [])
        if notice and chart:
            self._notice_is_first = notice[0].start < chart[0].start
        return is_new and not chart and self._notice_is_first and not self._leaves_empty

    def _is_other_panel(self, cells: Cells) -> bool:
        """Whether a row names another panel than the one above, or the chart without any."""
        if not cells.get("panel") and not cells.get("chart"):
            return False
        words = words_of(self.assembly.text, cells.get("panel", []))
        above, self._panel = self._panel, words
        return words != above and bool(self.assembly.charts)

    def _bare_panel(self, cells: Cells) -> Piece | None:
        """The cell of a panel that has no word for one: `A`, `Pell Basin`."""
        cell = cells.get("panel", [])
        if not cell or names_panel(words_of(self.assembly.text, cell)):
            return None
        return cell[0].start, cell[-1].end

    def _is_other(self, datum: list[Piece]) -> bool:
        """Whether the datum of a row is another than that of the section that is open."""
        text, charts = self.assembly.text, self.assembly.charts
        head = [text[slice(*piece)] for piece in charts[-1].head] if charts else []
        return bool(charts) and any(text[slice(*piece)] not in head for piece in datum)

    def _takes_notice(self, cells: Cells) -> bool:
        """Open the notice of a row; whether it is another than that of the row above."""
        number = row_number(self.assembly.text, cells)
        notice = self.assembly.notice
        if number is None and self._counts_on(cells):
            cells["count"] = cells.pop("notice")
            return False
        if number is None:
            if self._is_of_other_year(cells):
                # `451 | 26`, and below it ` | 27`: no notice that was named is of this year.
                cells["unread"] = cells.pop("year")
                return self._opens_unread(cells["unread"])
            is_several = sum(e.kind == "number" for e in cells.get("notice", [])) > 1
            if not (is_several or (self.names_notices and cells.get("notice"))):
                return False
            # Rows of a number that cannot be read are not given to the notice above.
            cells["unread"] = cells.pop("notice")
            return self._opens_unread(cells["unread"])
        self.names_notices = True
        is_new = notice is None or notice.number_words != number.words
        if is_new:
            self.assembly.switch_notice(number.words, number.element.start, number.element)
        return is_new

    def _counts_on(self, cells: Cells) -> bool:
        """Whether the number of a row counts the rows of a notice that is open: 1, 2, 3."""
        figure = words_of(self.assembly.text, cells.get("notice", [])).strip(" .)")
        notice = self.assembly.notice
        if self.names_notices or notice is None or notice.number_words is None:
            return False
        if not figure.isdecimal() or int(figure) not in (1, self.count + 1):
            return False
        self.count = int(figure)
        return True

    def _is_of_other_year(self, cells: Cells) -> bool:
        """Whether a row without a number names another year than the notice that is open."""
        year = " ".join(self.assembly.words(e) for e in cells.get("year", [])).strip()
        notice = self.assembly.notice
        if cells.get("notice") or not year or notice is None or notice.number_words is None:
            return False
        return not notice.number_words.endswith(year[-2:])

    def _opens_unread(self, cell: list[Element]) -> bool:
        """Open a notice without a number, unless the row above has the same words for its own."""
        words = " ".join(self.assembly.words(e) for e in cell)
        notice = self.assembly.notice
        if notice is not None and notice.number is None and words == self._unread:
            return False
        self._unread = words
        self.assembly.open_unread(cell[0].start)
        return True
