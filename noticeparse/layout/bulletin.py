"""From lines to notices: the head of each, its chart sections, their items, its prose.

Goes through the lines once.  Each line opens something (a list, a notice, a chart section), is a
row of a table or of a block of keys, or belongs to the body that is open.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import NoticeDraft, Piece, Prose
from noticeparse.layout.furniture import find_furniture
from noticeparse.layout.lines import Element, ElementKind, Line
from noticeparse.layout.lists import ListDraft, ListReader
from noticeparse.layout.recognise import (
    NoticeOpening,
    goes_on_heading,
    has_star,
    is_chart_details,
    is_head_of_card,
    is_source,
    names_charts,
    notice_opening,
    split_at_notices,
)
from noticeparse.layout.tables import TableReader, has_words
from noticeparse.readers.heads import head_kinds, opened_notice

_ENDS_A_HEAD: tuple[ElementKind, ...] = ("verb", "point", "half", "label", "reference", "passive")
_ENDS_A_CHART_HEAD: tuple[ElementKind, ...] = ("verb", "point", "half", "reference", "passive")


@dataclass(slots=True)
class Layout:
    """Everything the layout found."""

    notices: list[NoticeDraft]
    lists: list[ListDraft]
    loose: list[Prose]
    """Prose that belongs to no notice."""
    front: list[Line] = field(default_factory=list)
    """Lines outside the notices: title, number and date of the edition, and whatever else."""
    ignored: list[Piece] = field(default_factory=list)


def lay_out(text: str, lines: list[Line]) -> Layout:
    """The drafts of all notices and lists, in text order."""
    reader = _Reader(text, lines)
    reader.run()
    return reader.layout


class _Reader:
    def __init__(self, text: str, lines: list[Line]) -> None:
        self.text = text
        self.lines = lines
        self.assembly = Assembly(text)
        self.lists = ListReader(text, lines)
        self.tables = TableReader(self.assembly)
        self.layout = Layout(self.assembly.notices, self.lists.lists, self.assembly.loose)
        self.behind_blank = True
        self.head_is_open = False
        self.page_broke = False

    def run(self) -> None:
        furniture = find_furniture(self.text, self.lines)
        for index, line in enumerate(self.lines):
            if index in furniture:
                self._furniture(line)
            elif line.is_blank:
                self._blank(line)
            else:
                for part in split_at_notices(self.text, line, self.lines[index + 1 : index + 2]):
                    self._line(part, index)
                    self.behind_blank = self.page_broke = False
        self.tables.end_block()
        self.assembly.end_notice()

    def _furniture(self, line: Line) -> None:
        """What stands on both sides of a page foot belongs together, blank lines or not."""
        self.layout.ignored.append((line.start, line.end))
        if not self.assembly.notices:
            self.layout.front.append(line)
        if line.has("rule"):
            self.tables.end_block()
        self.page_broke = True
        body = self.assembly.body
        while body and body[-1].is_blank:
            body.pop()

    def _blank(self, line: Line) -> None:
        self.behind_blank = True
        if self.page_broke:
            return
        self.tables.end_block()
        if self.assembly.body:
            self.assembly.body.append(line)

    def _line(self, line: Line, index: int) -> None:
        if self._is_listed(line, index):
            return
        if self.tables.opens(line) or self.tables.goes_on_with_titles(line):
            self.layout.ignored.append((line.start, line.end))
            return
        if self.tables.takes_row(line):
            return
        if self.tables.block_is_open and self.tables.takes_key(line):
            return
        if self._takes_cancellation(line):
            return
        opening = notice_opening(self.text, line)
        if opening is not None:
            self._notice_line(line, opening)
        elif line.has("chart") and (self.tables.takes_chart(line) or self._chart_line(line)):
            pass
        elif self.tables.takes_key(line):
            self.head_is_open = self.head_is_open or self.assembly.notice is not None
        elif not self.behind_blank and self.tables.goes_on_with_value(line):
            pass
        elif (self.head_is_open or self._waits_for_chart()) and self._more_head(line):
            self.head_is_open = True
        elif self._is_front(line):
            self.layout.front.append(line)
        else:
            self.head_is_open = False
            self.assembly.body.append(line)

    def _takes_cancellation(self, line: Line) -> bool:
        """Whether a line says nothing but that other notices are cancelled."""
        notice = self.assembly.notice
        if notice is None or not line.has("number"):
            return False
        piece = (line.elements[0].start, line.elements[-1].end)
        if head_kinds(self.text[slice(*piece)]) - {"STOP", "COMMA"} != {"CANCELS"}:
            return False
        notice.clauses.append(piece)
        return True

    def _waits_for_chart(self) -> bool:
        """Whether an open notice has so far neither a chart nor anything that may be an action."""
        assembly = self.assembly
        if assembly.notice is None or assembly.notice.charts or assembly.notice.is_radio:
            return False
        return not any(line.has("verb", "point", "half", "passive") for line in assembly.body)

    def _is_front(self, line: Line) -> bool:
        if self.assembly.notice is not None or self.assembly.charts or self.assembly.body:
            return False
        return not line.has("verb", "point", "half")

    def _is_listed(self, line: Line, index: int) -> bool:
        """Whether a line belongs to the edition's lists, or is the title of a part."""
        blank = self.behind_blank
        in_notice = self.assembly.notice is not None
        if self.lists.opens(line, behind_blank=blank, in_notice=in_notice):
            self._end_notice()
            return True
        if self.lists.opens_part(line, behind_blank=blank):
            self._end_notice()
            self.assembly.end_part()
            self.tables.leave(keep_notice_column=False)
            if self.lists.open is None:
                self.layout.front.append(line)
            return True
        return self.lists.takes(line, index, behind_blank=blank)

    def _end_notice(self) -> None:
        self.tables.end_block()
        self.assembly.end_notice()
        self.head_is_open = False

    # Heads of notices

    def _notice_line(self, line: Line, opening: NoticeOpening) -> None:
        self.tables.end_block()
        rest = line.elements[opening.at + 1 :]
        first = next((e for e in rest if has_words(self.text, e)), None)
        by_chart = self.assembly.is_by_chart
        is_bare = first is None and bool(self.assembly.charts)
        if by_chart and (is_bare or (first is not None and first.kind in ("verb", "label"))):
            # Under a chart head each row, or a line above its rows, has the number of a notice.
            self.assembly.row_notice(opening.number)
            if not is_bare:
                self.assembly.body.append(line._replace(elements=rest))
            return
        if by_chart and is_head_of_card(self.text, rest):
            self.assembly.row_notice(opening.number)
            self.assembly.charts[-1].head.append((rest[0].start, rest[-1].end))
            self.head_is_open = True
            return
        self.lists.open = None
        self.tables.leave(keep_notice_column=True)
        notice = self.assembly.open_notice(opening.number, line.start)
        notice.series, notice.is_radio = opening.series, opening.is_radio
        notice.is_original = opening.is_original or has_star(self.text, rest)
        self.head_is_open = True
        self._head_elements(line, rest)

    def _head_elements(self, line: Line, elements: tuple[Element, ...]) -> None:
        """Heading words up to a chart word or a body."""
        words: list[Element] = []
        for index, element in enumerate(elements):
            if element.kind == "chart":
                self._add_heading(words)
                self._chart_elements(line, elements[index:])
                return
            if element.kind in _ENDS_A_HEAD:
                self._add_heading(words)
                self.assembly.body.append(line._replace(elements=elements[index:]))
                self.head_is_open = False
                return
            words.append(element)
        self._add_heading(words)

    def _add_heading(self, words: list[Element]) -> None:
        solid = [element for element in words if has_words(self.text, element)]
        if solid and self.assembly.notice is not None:
            self.assembly.notice.heading.append((solid[0].start, solid[-1].end))

    def _more_head(self, line: Line) -> bool:
        """A line between the number of a notice and its first chart, or behind a chart head."""
        notice, charts = self.assembly.notice, self.assembly.charts
        if charts:
            return self._more_chart_head(line)
        if notice is not None and names_charts(self.text, line):
            self.tables.end_block()
            self.assembly.open_chart((line.elements[0].start, line.elements[-1].end))
            return True
        if notice is None or line.has(*_ENDS_A_HEAD):
            return False
        if not self.head_is_open:
            return False
        piece = (line.elements[0].start, line.elements[-1].end)
        words = self.text[piece[0] : piece[1]]
        if is_source(self.text, line):
            notice.sources.append(piece)
        elif "CANCELS" in head_kinds(words):
            notice.clauses.append(piece)
        elif goes_on_heading(self.text, notice, words, behind_blank=self.behind_blank):
            notice.heading.append(piece)
        else:
            return False
        return True

    def _more_chart_head(self, line: Line) -> bool:
        """A line, or the beginning of one, that goes on with the chart head above it."""
        ends = (i for i, e in enumerate(line.elements) if e.kind in _ENDS_A_CHART_HEAD)
        end = next(ends, len(line.elements))
        if not end:
            return False
        start, stop = line.elements[0].start, line.elements[end - 1].end
        head = self.assembly.charts[-1].head
        breaks_off = self.text[head[-1][1] - 1] in ",;-" or not self.behind_blank
        if not is_chart_details(self.text[start:stop], breaks_off=breaks_off):
            return False
        head.append((start, stop))
        if end < len(line.elements):
            self.assembly.body.append(line._replace(elements=line.elements[end:]))
            self.head_is_open = False
        return True

    # Heads of chart sections

    def _chart_line(self, line: Line) -> bool:
        index = next(i for i, e in enumerate(line.elements) if e.kind == "chart")
        before = line.elements[:index]
        if any(e.kind in ("verb", "point", "half") for e in before):
            return False
        if any(has_words(self.text, e) for e in before):
            if self.assembly.notice is None or not self.head_is_open:
                return False
            self._add_heading(list(before))
        self._chart_elements(line, line.elements[index:])
        return True

    def _chart_elements(self, line: Line, elements: tuple[Element, ...]) -> None:
        assembly = self.assembly
        if assembly.notice is not None and assembly.notice.is_radio:
            # A radio warning names charts and changes none.
            assembly.body.append(line)
            return
        self.tables.end_block()
        assembly.end_body()
        ends = (i for i, e in enumerate(elements) if e.kind in _ENDS_A_CHART_HEAD)
        end = next(ends, len(elements))
        start, stop = elements[0].start, elements[end - 1].end
        this_notice = opened_notice(self.text[start:stop])
        if this_notice is not None and (assembly.notice is None or assembly.is_by_chart):
            assembly.is_by_chart = True
            assembly.switch_notice(this_notice, start)
        elif assembly.is_by_chart and assembly.notice is not None and assembly.notice.charts:
            assembly.notice = None
        assembly.open_chart((start, stop))
        self.head_is_open = True
        if end < len(elements):
            assembly.body.append(line._replace(elements=elements[end:]))
            self.head_is_open = False
