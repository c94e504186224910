"""The notices under construction: which one is open, under which charts, with which body.

Lines go into the open body; when a head ends it, the body is cut into items and prose.  In a
bulletin sorted by chart the chart head goes on while the notices change under it.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.body.body import cut_section, without_titles
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import ChartDraft, Item, NoticeDraft, Piece, Prose
from noticeparse.layout.handed_on import Cut, RowClass
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.marked_parts import PartMark
from noticeparse.layout.opening.notice_kinds import is_temporary
from noticeparse.layout.place.counted import announces_places
from noticeparse.layout.row.row_charts import leave_last_head, repeated_chart, row_chart
from noticeparse.layout.row.row_classes import take_class
from noticeparse.layout.row.row_lines import awaits_points, last_heading
from noticeparse.layout.row.row_numbers import share_numbers
from noticeparse.layout.row.rows import RowReader
from noticeparse.layout.row.rows_of_one import hold_rows_of_one
from noticeparse.layout.row.wrapped_cells import Rest
from noticeparse.readers.heads import head_kinds


class Assembly:
    """Everything built so far, and what is open."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.cut = Cut(text)
        self.notices: list[NoticeDraft] = []
        self.loose: list[Prose] = []
        self.notice: NoticeDraft | None = None
        self.charts: list[ChartDraft] = []
        self.body: list[Line] = []
        self.has_numbers = False
        """Whether a notice with a number stands above, in a part before this one or here."""
        self.part_mark = PartMark()
        self.is_by_chart = False
        """Whether the bulletin is sorted by chart, with the notices under each."""
        self.carried: list[Piece] = []
        """In a bulletin sorted by chart: the chart head above the open notice."""
        self.before: list[Piece] = []
        """The notices before of several charts, where they stand in front of these."""
        self.codes: dict[str, str] = {}
        """The verbs that a key gives to letters in a column of verbs."""
        self.row_verb: str | None = None
        """The verb of the last row, which holds for rows below that name another chart."""
        self.row_class: RowClass | None = None
        self.rows: RowReader | None = None
        self._by_number: dict[str, NoticeDraft] = {}
        self._is_headed = False
        """Whether the open notice was opened by a line of its own, not by the rows of a list."""

    def words(self, element: Element) -> str:
        """The words of an element."""
        return self.text[element.start : element.end]

    @property
    def is_untold(self) -> bool:
        """Whether the open notice has a number, but so far nothing that it says.

        With a date for its heading it is the number of a sheet, of which words may follow.
        """
        notice = self.notice
        if notice is None or notice.number is None or notice.charts or notice.prose:
            return False
        dates = [head_kinds(self.text[slice(*piece)]) for piece in notice.heading]
        is_of_sheet = bool(dates) and all(kinds == {"DATE"} for kinds in dates)
        return all(line.is_blank or (is_of_sheet and line.has_only("words")) for line in self.body)

    @property
    def has_charts(self) -> bool:
        """Whether the open notice has a chart section."""
        return self.notice is not None and bool(self.notice.charts)

    def is_told(self) -> bool:
        """Whether the open notice of a list by chart has been told, in prose or chart sections."""
        return self.is_by_chart and (self.has_charts or bool(self.notice and self.notice.prose))

    def of_number(self, words: str) -> NoticeDraft | None:
        """The notice of this number, where it stands above."""
        return self._by_number.get(words)

    def is_between_charts(self) -> bool:
        """Whether the next chart head of a list by chart has nothing to do with what is above."""
        if not self.is_by_chart and self.has_numbers:
            return False
        return self.notice is None or (self.is_by_chart and bool(self.notice.charts))

    def open_notice(self, number: Element, start: int) -> NoticeDraft:
        """Open a notice at its own head; the one before ends."""
        above = self.notice if self.is_by_chart else None
        self.end_notice()
        leave_last_head(above, self.charts)
        self.row_verb = self.row_class = None
        self.carried = list(self.charts[-1].head) if self.is_by_chart and self.charts else []
        self.charts = []
        self._is_headed = True
        return self._new(self.words(number), number, start)

    def switch_notice(self, words: str, start: int, number: Element | None = None) -> None:
        """Go on with the notice of this number, or open it; its charts are opened apart."""
        self.end_body()
        known = self._by_number.get(words)
        if known is not None:
            self.notice = known
        else:
            self._new(words, number, start)

    def open_unread(self, start: int) -> None:
        """Open a notice whose number, in the column of a table, cannot be read."""
        self.end_body()
        self._new(None, None, start)

    def open_chart(self, piece: Piece) -> None:
        """Open a chart section; where a notice already has charts in a list by chart, it ends."""
        if self.notice is None and not self.has_numbers:
            self.is_by_chart = True
        self.charts, self.carried = [], []
        if known := repeated_chart(self.text, self.notice, piece):
            self.charts = [known]
            return
        self._add_chart(ChartDraft(head=[piece, *self.before]))
        self.before = []

    def open_numbered_chart(self, piece: Piece, number: str) -> None:
        """Open a chart section, above its notices, whose head has no word for a chart."""
        self.is_by_chart = True
        self.charts, self.carried = [], []
        self._add_chart(ChartDraft([piece], number))

    def open_panel(self, head: list[Piece], number: str | None) -> None:
        """Open a section for another panel of the chart that is open."""
        self.charts = []
        self._add_chart(ChartDraft(head, number))

    def open_row_chart(self, chart: ChartDraft) -> None:
        """Open the chart section that the columns of a row name."""
        self.end_body()
        if self.notice is None:
            self._new(None, None, chart.head[0][0] if chart.head else 0)
        charts = self.notice.charts if self.notice else []
        known = row_chart(self.text, charts, chart)
        # Rows may go to and fro between the charts of their notice.
        self.charts = [] if known is None else [known]
        if known is None:
            self._add_chart(chart)

    def row_notice(self, number: Element) -> None:
        """A row that names its notice: go on under it, in the chart section that is open."""
        if self.notice is None or self.notice.number_words != self.words(number):
            self.end_body()
            self._under(number, self.charts)
        self._is_headed = True

    def _under(self, number: Element, charts: list[ChartDraft]) -> None:
        words = self.words(number)
        if self.notice is not None and self.notice.number_words == words:
            return
        self._is_headed = False
        self.notice = self._by_number.get(words) or self._new(words, number, number.start)
        self.charts = []
        for chart in charts:
            self._add_chart(ChartDraft(list(chart.head), chart.number, panel=chart.panel))

    def _new(self, words: str | None, number: Element | None, start: int) -> NoticeDraft:
        status, title = self.part_mark.of_next()
        self.notice = NoticeDraft(
            number=number, number_words=words, start=start, status=status, mark_above=title
        )
        if words is not None:
            self._by_number[words] = self.notice
            self.has_numbers = True
        self.notices.append(self.notice)
        return self.notice

    def _add_chart(self, chart: ChartDraft) -> None:
        self.charts.append(chart)
        if self.notice is not None:
            self.notice.charts.append(chart)

    def add_row(self, cells: Cells, depth_unit: str | None = None) -> None:
        """A row of a table or a block of keys."""
        if self.body:
            self.end_body()
        if self.rows is None:
            self.rows = RowReader(self.text, self.codes, self.row_verb, self.row_class)
        self.rows.row(cells, depth_unit)

    @property
    def awaits_points(self) -> bool:
        """Whether the last line of the body has words for a feature whose places stand below."""
        text, last = self.text, self.body[-1:]
        return any(awaits_points(text, one) or announces_places(text, one) for one in last)

    def take_heading(self) -> str | None:
        """The verb of the last line where it heads a table: `Insert the following marks:`."""
        at, verb = last_heading(self.text, self.body)
        if verb is None:
            return None
        line = self.body[at]
        del self.body[at:]
        self.end_body()
        self.row_class = take_class(self.text, line.elements, self.notice)
        has_things = self.row_class is not None and self.row_class.things is not None
        if line.has("words") and verb.kind == "verb" and not has_things:
            self.add_prose(Prose([(e.start, e.end) for e in line.elements], list(line.elements)))
        return verb.value or self.words(verb)

    def add_second_line(self, cells: Cells, *, is_first: bool) -> bool:
        """More cells for the row above, from the second of its lines; false where none is held."""
        rows = None if self.body else self.rows
        return rows is not None and rows.add_second_line(cells, is_first=is_first)

    def takes_rest(self, cells: Cells) -> bool:
        """Whether a row held the rest of the row above it, which then has it."""
        return self.rows is not None and not self.body and self.rows.takes_rest(cells)

    def takes_wrapped(self, rest: Rest) -> bool:
        """Whether a line holds more words of the row above, which then has them."""
        return self.rows is not None and not self.body and self.rows.takes_wrapped(rest)

    def add_prose(self, prose: Prose) -> None:
        """A paragraph of the open notice, or of none."""
        (self.loose if self.notice is None else self.notice.prose).append(prose)

    def end_notice(self) -> None:
        """End the open notice; in a list by chart the chart head stays open.

        A temporary notice that is told in prose alone is of the chart it stands under.
        """
        self.end_body()
        if self.carried and self.is_told() and is_temporary(self.text, self.notice):
            self.section()
        if not self.is_by_chart:
            self.charts = []
        self.notice = None

    def end_part(self, title: Piece) -> None:
        """End a part of the edition: nothing is carried over it; its title may tell a status."""
        self.end_chart()
        self.row_verb = self.row_class = None
        self.part_mark.end_part(self.text, title)
        self.is_by_chart = False

    def end_chart(self) -> None:
        """End the open notice, and the chart that goes on over several."""
        self.end_notice()
        self.charts, self.carried = [], []

    def end_body(self) -> None:
        """Cut the open body into items and prose."""
        rows, self.rows = self.rows, None
        if rows is not None:
            if items := rows.finished():
                hold_rows_of_one(self.text, items)
                self.section().items += items
            self.row_verb, self.row_class = rows.verb, rows.classes.above
        lines, self.body = self.body, []
        found = cut_section(self.text, lines, self.codes, self.notice, has_chart=bool(self.charts))
        found = found if self.notice or self.charts else without_titles(self.text, found)
        self._give(found.places)
        self._give(found.items)
        if self.notice is not None:
            self.notice.class_headings += found.headings
            self.notice.idle_verbs += [(verb.start, verb.end) for verb in found.idle]
        for prose in found.prose:
            self.add_prose(prose)

    def _give(self, items: Sequence[Item]) -> None:
        """Put items under the open chart, or under the notices that their rows name."""
        has_own = self.notice is not None and self.notice.number is not None
        is_one = has_own and (self._is_headed or not self.is_by_chart)
        if is_one or all(item.number is None for item in items):
            if items:
                self.section().items += items
            return
        charts = [ChartDraft(list(one.head), one.number, panel=one.panel) for one in self.charts]
        share_numbers(items)
        for item in items:
            if item.number is not None:
                self._under(item.number, charts)
            self.section().items.append(item)

    def section(self) -> ChartDraft:
        """The open chart section; one without a chart where none was named yet."""
        if self.notice is None:
            # What stands above other notices is not said of one whose head is lost.
            heads = [piece for one in self.charts for piece in one.head] if self.notices else []
            self.notice = self._new(None, None, min(heads, default=(0, 0))[0])
            self.notice.charts += self.charts
        if not self.charts:
            self._add_chart(ChartDraft(head=list(self.carried)))
        return self.charts[-1]
