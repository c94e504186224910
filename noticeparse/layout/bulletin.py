"""From lines to notices: the head of each, its chart sections, their items, its prose.

Goes through the lines once.  Each line opens something (a list, a notice, a chart section), is a row of
a table or of a block of keys, or belongs to the body that is open.  A body is cut into items when the
next head ends it.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from noticeparse.layout.drafts import ChartDraft, Item, NoticeDraft, Piece, Prose
from noticeparse.layout.columns import key_role
from noticeparse.layout.furniture import find_furniture
from noticeparse.layout.items import cut_items
from noticeparse.layout.lines import Element, Line
from noticeparse.layout.prose import cut_prose, cut_sentences, is_prose_body
from noticeparse.layout.recognise import (
    NoticeOpening,
    is_chart_details,
    is_notices_title,
    is_part_title,
    is_source,
    list_title,
    notice_opening,
)
from noticeparse.layout.rows import Cells, RowReader, Table, read_titles
from noticeparse.readers.heads import head_kinds, read_head


@dataclass(slots=True)
class ListDraft:
    """A list of the edition: its title line and its entries."""

    kind: str
    title: Line
    entries: list[Line] = field(default_factory=list)


@dataclass(slots=True)
class Layout:
    """Everything the layout found."""

    notices: list[NoticeDraft] = field(default_factory=list)
    lists: list[ListDraft] = field(default_factory=list)
    front: list[Line] = field(default_factory=list)
    """Lines before the first notice: title, number and date of the edition, and whatever else."""
    loose: list[Prose] = field(default_factory=list)
    """Prose that belongs to no notice."""
    ignored: list[Piece] = field(default_factory=list)


def lay_out(text: str, lines: list[Line]) -> Layout:
    """The drafts of all notices and lists, in text order."""
    layout = _Reader(text, lines)
    layout.run()
    return layout.layout


_HEAD_KEYS = {"heading", "source", "cancels", "validity", "status"}


class _Reader:
    def __init__(self, text: str, lines: list[Line]) -> None:
        self.text = text
        self.lines = lines
        self.layout = Layout()
        self.notice: NoticeDraft | None = None
        self.charts: list[ChartDraft] = []
        self.body: list[Line] = []
        self.rows: RowReader | None = None
        self.block: Cells = {}
        self.table: Table | None = None
        self.list: ListDraft | None = None
        self.blank_before = True
        self.chart_first = False
        self.head_open = False
        self.page_broken = False
        self.carried: list[Piece] = []
        """In a bulletin sorted by chart: the chart head above the open notice."""
        self.by_number: dict[str, NoticeDraft] = {}

    def run(self) -> None:
        furniture = find_furniture(self.text, self.lines)
        for index, line in enumerate(self.lines):
            if index in furniture:
                self.layout.ignored.append((line.start, line.end))
                self._page_break()
                if not self.layout.notices and not self.notice:
                    self.layout.front.append(line)
            elif line.is_blank:
                self._blank(line)
            else:
                self._line(line, index)
                self.blank_before = self.page_broken = False
        self._end_notice()

    def _blank(self, line: Line) -> None:
        self.blank_before = True
        if self.page_broken:
            return
        self._end_block()
        if self.body:
            self.body.append(line)

    def _page_break(self) -> None:
        """What stands on both sides of a page foot belongs together, blank lines or not."""
        self.page_broken = True
        while self.body and self.body[-1].is_blank:
            self.body.pop()

    # One line

    def _line(self, line: Line, index: int) -> None:
        if self._in_list(line, index):
            return
        titles = read_titles(self.text, line)
        if titles is not None:
            self.table = titles
            self.layout.ignored.append((line.start, line.end))
            return
        if self.table is not None and self._table_row(line):
            return
        opening = notice_opening(self.text, line)
        if opening is not None:
            self._open_notice(line, opening)
        elif line.has("chart") and self._chart_line(line):
            pass
        elif line.elements[0].kind == "key" and self._key_line(line):
            pass
        elif self.head_open and self._more_head(line):
            pass
        elif self.notice is None and not self.charts and not self._is_body(line):
            self.layout.front.append(line)
        else:
            self.head_open = False
            self.body.append(line)

    def _is_body(self, line: Line) -> bool:
        return line.has("verb", "point", "half") or bool(self.body)

    # Lists of the edition

    def _in_list(self, line: Line, index: int) -> bool:
        kind = list_title(self.text, line) if self._may_open_list() else None
        if kind is not None and not (self.list and self.list.kind == "contents" and not self.blank_before):
            if self.list is None or self.blank_before:
                self._end_notice()
                self.list = ListDraft(kind, line)
                self.layout.lists.append(self.list)
                return True
        if self.list is None:
            if is_notices_title(self.text, line) and self.blank_before:
                self._end_part(line)
                return True
            return False
        if self._is_entry(line, index):
            self.list.entries.append(line)
            return True
        self.list = None
        if is_notices_title(self.text, line):
            self._end_part(line)
            return True
        return False

    def _end_part(self, line: Line) -> None:
        """The title of another part: nothing is carried over it."""
        self._end_notice()
        self.chart_first = False
        self.charts, self.carried, self.table = [], [], None
        self.layout.front.append(line)
        if is_part_title(self.text, line):
            self.list = ListDraft("other", line)
            self.layout.lists.append(self.list)

    def _may_open_list(self) -> bool:
        return self.notice is None or self.blank_before

    def _is_entry(self, line: Line, index: int) -> bool:
        if line.has("point", "half", "verb", "reference"):
            return False
        assert self.list is not None
        if line.has("chart") and self.list.kind == "other":
            return False
        if is_notices_title(self.text, line) and self.blank_before:
            return False
        opening = notice_opening(self.text, line)
        if opening is not None and self._opens_here(line, opening, index):
            return False
        if self.blank_before and self.list.entries and opening is None:
            return bool(head_kinds(self.text[line.start : line.end]) & {"NOTICE_NUMBER", "CHART_NUMBER"})
        return True

    def _opens_here(self, line: Line, opening: NoticeOpening, index: int) -> bool:
        """Whether a numbered line within a list is the head of a notice after all."""
        rest = line.elements[opening.index + 1 :]
        words = [e for e in rest if e.kind == "words" and e.end - e.start > 3]
        if not words or any(e.kind == "number" for e in rest):
            return False
        if not (self.blank_before or self._rule_above(index)):
            return False
        following = next((l for l in self.lines[index + 1 :] if l.elements), None)
        return following is None or notice_opening(self.text, following) is None

    def _rule_above(self, index: int) -> bool:
        above = self.lines[index - 1] if index else None
        return above is not None and above.has("rule")

    # Notices

    def _open_notice(self, line: Line, opening: NoticeOpening) -> None:
        rest = line.elements[opening.index + 1 :]
        first = next((e for e in rest if self._has_words(e)), None)
        # Under a chart head each row may carry the number of its notice.
        is_row = first is not None and first.kind in ("verb", "label") and self.chart_first
        if is_row:
            self._switch_notice(opening.number)
            self.body.append(line._replace(elements=rest))
            return
        self._end_notice()
        self.list = None
        self.carried = list(self.charts[-1].head) if self.chart_first and self.charts else []
        self.charts = []
        self.table = self.table if self.table and "notice" in self.table.roles else None
        self._new_notice(opening.number, line.start)
        assert self.notice is not None
        self.notice.series, self.notice.is_radio = opening.series, opening.is_radio
        self.notice.is_original = opening.is_original or self._has_star(rest)
        self.head_open = True
        self._head_elements(line, rest)

    def _has_star(self, rest: tuple[Element, ...]) -> bool:
        """Whether the trade's star for information first published here stands behind the number."""
        return bool(rest) and self.text[rest[0].start : rest[0].end].lstrip(" .").startswith("*")

    def _has_words(self, element: Element) -> bool:
        return element.kind not in ("bar", "rule") and bool(
            self.text[element.start : element.end].strip(" .,:;-|")
        )

    def _new_notice(self, number: Element | None, start: int) -> None:
        self.notice = NoticeDraft(number=number, start=start)
        if number is not None:
            words = self.text[number.start : number.end]
            self.notice.number_words = words
            self.by_number[words] = self.notice
        self.layout.notices.append(self.notice)
        if not self.chart_first:
            self.charts = []

    def _head_elements(self, line: Line, elements: tuple[Element, ...]) -> None:
        """Heading words up to a chart word or a body."""
        words: list[Element] = []
        for index, element in enumerate(elements):
            if element.kind == "chart":
                self._add_heading(words)
                self._chart_elements(line, elements[index:])
                return
            if element.kind in ("verb", "point", "half", "label", "reference", "passive"):
                self._add_heading(words)
                self.body.append(line._replace(elements=elements[index:]))
                self.head_open = False
                return
            words.append(element)
        self._add_heading(words)

    def _add_heading(self, words: list[Element]) -> None:
        assert self.notice is not None
        solid = [element for element in words if self._has_words(element)]
        if solid:
            self.notice.heading.append((solid[0].start, solid[-1].end))

    def _more_head(self, line: Line) -> bool:
        """A line between the number of a notice and its first chart, or behind a chart head."""
        assert self.notice is not None or self.charts
        if is_chart_details(self.text, line) and self.charts:
            self.charts[-1].head.append((line.start, line.end))
            return True
        if self.notice is None or self.charts or line.has("point", "half", "verb", "passive", "label"):
            return False
        piece = (line.elements[0].start, line.elements[-1].end)
        words = self.text[piece[0] : piece[1]]
        if is_source(self.text, line):
            self.notice.sources.append(piece)
            return True
        if "CANCELS" in head_kinds(words):
            self.notice.clauses.append(piece)
            return True
        if self._goes_on_heading(words):
            self.notice.heading.append(piece)
            return True
        return False

    def _goes_on_heading(self, words: str) -> bool:
        assert self.notice is not None
        if self.notice.is_radio:
            return False
        if not self.notice.heading:
            return True
        if self.blank_before:
            return False
        start, end = self.notice.heading[-1]
        last = self.text[start:end].rstrip()
        return last.endswith(("-", ",", " and")) or (words.isupper() and not last.endswith("."))

    # Chart heads

    def _chart_line(self, line: Line) -> bool:
        index = next(i for i, e in enumerate(line.elements) if e.kind == "chart")
        before = line.elements[:index]
        if any(e.kind in ("verb", "point", "half") for e in before):
            return False
        if before and not (self.notice is not None and self.head_open):
            if any(self._has_words(e) for e in before):
                return False
        elif before and self.notice is not None:
            self._add_heading(list(before))
        self._chart_elements(line, line.elements[index:])
        return True

    def _chart_elements(self, line: Line, elements: tuple[Element, ...]) -> None:
        if self.notice is not None and self.notice.is_radio:
            # A radio warning names charts and changes none.
            self.body.append(line)
            return
        self._end_body()
        end = next(
            (
                i
                for i, e in enumerate(elements)
                if e.kind in ("verb", "point", "half", "reference", "passive")
            ),
            len(elements),
        )
        start = elements[0].start
        stop = elements[end - 1].end
        words = self.text[start:stop]
        head = read_head(words, None)
        if self.notice is None and not self.by_number:
            self.chart_first = True
        if head.this_notice is not None and (self.notice is None or self.chart_first):
            self.chart_first = True
            self._switch_to(head.this_notice[0], start)
        elif self.chart_first and self.notice is not None and self.notice.charts:
            self.notice = None
        self.carried = []
        self.charts = []
        self._add_chart((start, stop))
        self.head_open = True
        if end < len(elements):
            self.body.append(line._replace(elements=elements[end:]))
            self.head_open = False

    def _add_chart(self, piece: Piece) -> None:
        chart = ChartDraft(head=[piece])
        self.charts.append(chart)
        if self.notice is not None:
            self.notice.charts.append(chart)

    def _switch_notice(self, number: Element) -> None:
        """Go on under the notice of this number, in the chart section that is open."""
        words = self.text[number.start : number.end]
        current = self.notice.number_words if self.notice else None
        if words == current:
            return
        self._end_body()
        head = list(self.charts[-1].head) if self.charts else []
        self._switch_to(words, number.start, number)
        if head:
            self.charts = []
            self._add_chart(head[0])
            self.charts[-1].head = head

    def _switch_to(self, words: str, start: int, number: Element | None = None) -> None:
        self._end_body()
        known = self.by_number.get(words)
        if known is not None:
            self.notice = known
            return
        self._new_notice(number, start)
        assert self.notice is not None
        self.notice.number_words = words
        self.by_number[words] = self.notice

    # Tables and keys

    def _table_row(self, line: Line) -> bool:
        assert self.table is not None
        if line.has("chart") and "chart" not in self.table.roles:
            return False
        cells = self.table.cells(self.text, line)
        if not cells or not any(role in cells for role in self.table.roles):
            return False
        if self.table.mark == " " and len(cells) < 2 and not line.has("point", "half"):
            return False
        self._cells(cells, line)
        return True

    def _cells(self, cells: Cells, line: Line) -> None:
        """A row: it may name its notice and chart, and it may hold an action."""
        numbers = [e for e in cells.get("notice", []) if e.kind == "number"]
        charts = cells.get("chart", [])
        changed = False
        if numbers:
            words = self.text[numbers[0].start : numbers[0].end]
            changed = self.notice is None or self.notice.number_words != words
            if changed:
                self._end_body()
                self._switch_to(words, numbers[0].start, numbers[0])
        if charts or changed:
            self._row_chart(cells, changed)
        if any(role in cells for role in ("verb", "feature", "position", "latitude", "old", "new")):
            self._row_item(cells, line)

    def _row_chart(self, cells: Cells, changed: bool) -> None:
        pieces = [
            (e.start, e.end)
            for role in ("chart", "international", "panel", "edition", "edition_date", "previous", "datum")
            for e in cells.get(role, [])
            if e.kind != "bar"
        ]
        number = " ".join(self.text[e.start : e.end] for e in cells.get("chart", []))
        current = self._open_chart_number()
        if not number and self.charts:
            number = current or ""
            pieces = list(self.charts[-1].head)
        if not changed and number == current:
            return
        self._end_body()
        self.charts = []
        assert pieces or number or self.notice is not None
        chart = ChartDraft(head=pieces, number=number)
        self.charts.append(chart)
        if self.notice is None:
            self._new_notice(None, pieces[0][0])
            self.charts = [chart]
        assert self.notice is not None
        self.notice.charts.append(chart)

    def _open_chart_number(self) -> str | None:
        return self.charts[-1].number if self.charts else None

    def _row_item(self, cells: Cells, line: Line) -> None:
        if self.body:
            self._end_body()
        if self.rows is None:
            self.rows = RowReader(self.text)
        if self._is_prose_row(cells):
            pieces = [(e.start, e.end) for cell in cells.values() for e in cell]
            elements = sorted((e for cell in cells.values() for e in cell), key=lambda e: e.start)
            self._prose(Prose(sorted(pieces), elements))
            return
        del line
        self.rows.row(cells)

    def _is_prose_row(self, cells: Cells) -> bool:
        mark = self.notice.number_words if self.notice else None
        marked = bool(mark) and ("(T)" in str(mark) or "(P)" in str(mark))
        return marked and "verb" not in cells

    def _key_line(self, line: Line) -> bool:
        key = line.elements[0]
        values = [e for e in line.elements[1:] if self._has_words(e)]
        has_places = any(e.kind in ("point", "half", "reference") for e in values)
        role = key_role(self.text[key.start : key.end], has_places=has_places)
        if role is None:
            return False
        if role == "notice" and values and values[0].kind == "number":
            self._end_notice()
            self._new_notice(values[0], line.start)
            self.head_open = True
            return True
        if role in _HEAD_KEYS and self.notice is not None:
            self._head_key(role, key, values)
            return True
        if role == "remark" and values:
            self._end_block()
            self._prose(Prose([(e.start, e.end) for e in values], values))
            return True
        if role in ("notice", "chart", "previous", "heading", "source", "remark", "cancels"):
            return False
        if role == "verb" and "verb" in self.block and "feature" in self.block:
            role = "change"
        if role in self.block:
            self._end_block()
        self.block.setdefault("key", []).append(key)
        self.block[role] = values
        return True

    def _head_key(self, role: str, key: Element, values: list[Element]) -> None:
        assert self.notice is not None
        pieces = [(e.start, e.end) for e in values]
        if role == "heading":
            self.notice.heading += pieces
        elif role == "source":
            self.notice.sources += pieces
        elif values:
            self.notice.clauses.append((key.start, values[-1].end))

    def _end_block(self) -> None:
        block, self.block = self.block, {}
        block.pop("key", None)
        if any(block.values()):
            if self.rows is None:
                self._end_body()
                self.rows = RowReader(self.text)
            self.rows.row(block)

    # Ends

    def _end_notice(self) -> None:
        self._end_body()
        if not self.chart_first:
            self.charts = []
        self.notice = None
        self.head_open = False

    def _end_body(self) -> None:
        self._end_block()
        body, self.body = self.body, []
        rows, self.rows = self.rows, None
        if rows is not None and rows.items:
            self._chart().items += rows.items
        if not body:
            return
        mark = self.notice.number_words if self.notice else None
        is_radio = self.notice is not None and self.notice.is_radio
        if is_radio or is_prose_body(self.text, body, mark):
            for prose in cut_prose(self.text, body):
                self._prose(prose)
            return
        if any(line.has("passive") for line in body) and not any(line.has("verb") for line in body):
            found = cut_sentences(self.text, body)
        else:
            found = cut_items(self.text, body)
        self._give_items(found.items)
        for prose in found.prose:
            self._prose(prose)

    def _give_items(self, items: list[Item]) -> None:
        """Put items under the open chart, or under the notices that their own rows name."""
        has_own = self.notice is not None and self.notice.number is not None
        if has_own and not self.chart_first:
            for item in items:
                item.number = None
        if not any(item.number is not None for item in items):
            if items:
                self._chart().items += items
            return
        heads = [list(chart.head) for chart in self.charts]
        following: Element | None = None
        for item in reversed(items):
            # A number stands at the end of its row; rows above without one share it.
            following = item.number or following
            item.number = item.number or following
        for item in items:
            number = item.number
            if number is not None:
                self._row_notice(number, heads)
            self._chart().items.append(item)

    def _row_notice(self, number: Element, heads: list[list[Piece]]) -> None:
        words = self.text[number.start : number.end]
        if self.notice is not None and self.notice.number_words == words:
            return
        known = self.by_number.get(words)
        self.notice = known
        if known is None:
            self._new_notice(number, number.start)
        assert self.notice is not None
        self.charts = [ChartDraft(head=list(head)) for head in heads]
        self.notice.charts += self.charts

    def _chart(self) -> ChartDraft:
        """The open chart section; one without a chart where none was named yet."""
        if self.notice is None:
            self._new_notice(None, 0)
            assert self.notice is not None
            self.notice.charts += self.charts
        assert self.notice is not None
        if not self.charts:
            self.charts = [ChartDraft(head=self.carried)]
            self.notice.charts += self.charts
        return self.charts[-1]

    def _prose(self, prose: Prose) -> None:
        if self.notice is None:
            self.layout.loose.append(prose)
        else:
            self.notice.prose.append(prose)
