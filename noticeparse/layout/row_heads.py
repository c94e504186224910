"""The notice and the chart that a row of a table, or a block of keys, names."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.elements import Element
from noticeparse.layout.row_numbers import row_number, take_bracketed
from noticeparse.layout.titles import Cells

HEAD_CELLS = (
    "chart", "international", "panel", "edition", "edition_date", "datum",
)  # fmt: skip
"""Roles of the columns that are the head of a chart."""


class RowHeads:
    """Opens notices and chart sections as the rows name them."""

    def __init__(self, assembly: Assembly) -> None:
        self.assembly = assembly
        self.names_notices = False
        """Whether rows of the open table have named their notices."""
        self._unread = ""
        """The words in the column of the notices that are no number of one."""

    def take(self, cells: Cells) -> None:
        """Go on under the notice and chart that the cells name."""
        before = take_bracketed(self.assembly.text, cells)
        self._takes_head(cells)
        if before is not None and self.assembly.charts:
            chart = self.assembly.charts[-1]
            chart.previous = chart.previous or before

    def _takes_head(self, cells: Cells) -> None:
        is_new = self._takes_notice(cells)
        if not cells.get("chart") and not is_new:
            return
        pieces = [(e.start, e.end) for role in HEAD_CELLS for e in cells.get(role, [])]
        previous = [(e.start, e.end) for e in cells.get("previous", []) if e.kind != "bar"]
        named = [e for e in cells.get("chart", []) if e.kind != "chart"]
        chart = " ".join(self.assembly.words(e) for e in named)
        charts = self.assembly.charts
        current = charts[-1].number if charts else None
        if not chart and charts:
            chart, pieces = current or "", list(charts[-1].head)
        if is_new or chart != current:
            items = cells.get("items", [])
            letters = (items[0].start, items[-1].end) if items else None
            before = previous[0] if previous else None
            self.assembly.open_row_chart(pieces, chart, before, letters)

    def _takes_notice(self, cells: Cells) -> bool:
        """Open the notice of a row; whether it is another than that of the row above."""
        number = row_number(self.assembly.text, cells)
        notice = self.assembly.notice
        if number is None:
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

    def _opens_unread(self, cell: list[Element]) -> bool:
        """Open a notice without a number, unless the row above has the same words for its own."""
        words = " ".join(self.assembly.words(e) for e in cell)
        notice = self.assembly.notice
        if notice is not None and notice.number is None and words == self._unread:
            return False
        self._unread = words
        self.assembly.open_unread(cell[0].start)
        return True
