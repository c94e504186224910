"""Heads: the words of a notice up to its first chart, and the charts with what is said of them."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.head.asides import takes_cancellation
from noticeparse.layout.head.banners import takes_banner
from noticeparse.layout.head.before_charts import (
    is_more_than_number,
    leads_to_chart,
    lists_notices_before,
)
from noticeparse.layout.head.chart_rows import (
    ENDS_A_CHART_HEAD,
    ChartRowReader,
    ends_chart_head,
)
from noticeparse.layout.head.charts_of_parts import ChartsOfParts
from noticeparse.layout.head.charts_of_places import ChartsOfPlaces
from noticeparse.layout.head.heading_sentences import without_sentence
from noticeparse.layout.head.item_lists import lists_items
from noticeparse.layout.head.late_details import (
    OF_ITEMS,
    add_source,
    is_late_detail,
    take_number,
    takes_end_of_cancellation,
)
from noticeparse.layout.head.led_charts import takes_its_chart, takes_led
from noticeparse.layout.head.margin_charts import MarginCharts
from noticeparse.layout.head.margin_details import takes_margin_detail
from noticeparse.layout.head.panel_lines import ends_notice, takes_panel
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Element, Line, has_words, words_of
from noticeparse.layout.opening.goes_on import (
    closes_bracket,
    completes_previous,
    ends_bracket,
    goes_on_with_charts,
    heading_breaks_off,
    is_in_heading,
    parts_previous,
    tells_its_notice,
)
from noticeparse.layout.opening.recognise import (
    goes_on_heading,
    is_chart_details,
    is_no_heading,
    is_source,
    names_charts,
    without_statement,
)
from noticeparse.layout.table.keys import KeyReader
from noticeparse.layout.table.tables import TableReader
from noticeparse.readers.heads import head_kinds, opened_notice

_ENDS_A_HEAD: tuple[ElementKind, ...] = (
    "verb", "point", "half", "label", "reference", "passive", "charts_only",
)  # fmt: skip


class HeadReader:
    """Tells the lines of heads from the others, and gives them to the assembly."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.assembly = Assembly(text)
        self.tables = TableReader(self.assembly)
        self.keys = KeyReader(self.assembly, self.tables)
        self.behind_blank = True
        self.head_is_open = False
        self.chart_rows = ChartRowReader(self.assembly, self.tables, self.keys)
        self.margin = MarginCharts(self.assembly)
        self.of_places = ChartsOfPlaces(self.assembly)
        self.of_parts = ChartsOfParts(self.assembly)

    def takes_chart(self, line: Line) -> bool:
        """Whether a line names a chart, or goes on with its head behind a key of its own."""
        is_banner = takes_banner(self.assembly, self.keys, line)
        if is_banner or takes_margin_detail(self.assembly, line):
            self.head_is_open = False
            return True
        if self.margin.takes(line) or self.of_places.takes(line) or self.of_parts.takes(line):
            self.head_is_open = False
            return True
        if line.has("chart") and (
            self.keys.takes_chart(line, behind_blank=self.behind_blank) or self._chart_line(line)
        ):
            return True
        if self.chart_rows.takes_number(line):
            self.head_is_open = self.chart_rows.leaves_head_open
            return True
        if self.keys.block_is_open:
            return False
        if led := takes_led(self.assembly, line):
            self.head_is_open = led == "head"
            return True
        if not (self.head_is_open and self.assembly.charts):
            return False
        return line.elements[0].kind == "key" and self.more_head(line)

    def takes_panel(self, line: Line) -> bool:
        """A line that names a panel of the chart above: what follows is of that panel."""
        if not takes_panel(self.assembly, self.keys, line):
            return False
        self.head_is_open = True
        return True

    def waits_for_chart(self) -> bool:
        """Whether an open notice has so far neither a chart nor anything that may be an action."""
        assembly = self.assembly
        if assembly.notice is None or assembly.notice.charts or assembly.notice.is_radio:
            return False
        return not any(line.has("verb", "point", "half", "passive") for line in assembly.body)

    def head_elements(self, line: Line, elements: tuple[Element, ...]) -> None:
        """Heading words up to a chart word or a body."""
        words: list[Element] = []
        for index, element in enumerate(elements):
            if element.kind == "chart":
                self.add_heading(words)
                self._chart_elements(line, elements[index:])
                return
            cancels = element.kind == "passive" and bool(words) and words[-1].kind == "number"
            if (
                element.kind in _ENDS_A_HEAD
                and not cancels
                and not is_in_heading(self.text, line, words)
            ):
                words, said = without_sentence(self.text, words, element)
                self.add_heading(words)
                self.assembly.body.append(line._replace(elements=(*said, *elements[index:])))
                self.head_is_open = False
                return
            words.append(element)
        self.add_heading(words)

    def add_heading(self, words: list[Element]) -> None:
        """Words that belong to the heading of the open notice."""
        solid = [element for element in words if has_words(self.text, element)]
        # `Notice 12/26 / Chart 802`: a mark alone is no heading, which may follow below.
        if self.assembly.notice is None or not any(map(str.isalnum, words_of(self.text, solid))):
            return
        piece = (solid[0].start, solid[-1].end)
        is_list = lists_notices_before(self.text[slice(*piece)])
        (self.assembly.before if is_list else self.assembly.notice.heading).append(piece)

    def more_head(self, line: Line) -> bool:
        """A line between the number of a notice and its first chart, or behind a chart head."""
        notice, charts = self.assembly.notice, self.assembly.charts
        if charts:
            return self._more_chart_head(line) or self._late_heading(line)
        if notice is not None and names_charts(self.text, line):
            self.keys.end_block()
            self.assembly.end_body()
            self.assembly.open_chart((line.elements[0].start, line.elements[-1].end))
            return True
        if takes_end_of_cancellation(self.text, notice, line):
            return True
        if notice is None:
            return False
        goes_on = not self.behind_blank and heading_breaks_off(self.text, notice, line)
        if line.has(*_ENDS_A_HEAD) and not goes_on:
            return False
        if not self.head_is_open:
            return False
        piece = (line.elements[0].start, line.elements[-1].end)
        words = self.text[piece[0] : piece[1]]
        if is_source(self.text, line):
            add_source(self.text, notice, piece)
        elif "CANCELS" in head_kinds(words) or head_kinds(words) <= {"DATUM", "STOP"}:
            notice.clauses.append(piece)
        elif goes_on_heading(self.text, notice, words, behind_blank=self.behind_blank):
            notice.heading.append(piece)
        else:
            return False
        return True

    def goes_on_above_titles(self, line: Line) -> bool:
        """Whether a line goes on with the chart head above it, and is no row of the table before.

        The titles of the table stand again below the head.
        """
        table = self.tables.table
        if table is None or "chart" in table.roles or line.has(*OF_ITEMS):
            return False
        is_below_head = self.head_is_open and not self.behind_blank and self.assembly.charts
        return bool(is_below_head) and not self.assembly.body and self.more_head(line)

    def _late_heading(self, line: Line) -> bool:
        """The heading below a line that names the notice and its charts: `12/26   Chart: 802`."""
        notice, charts = self.assembly.notice, self.assembly.charts
        if notice is None or notice.heading or self.behind_blank or self.assembly.body:
            return False
        if not line.has_only("words") or is_no_heading(self.text, line):
            return False
        head = charts[-1].head
        if not self.head_is_open or "\n" in self.text[notice.start : head[-1][1] if head else 0]:
            return False
        self.add_heading(list(line.elements))
        return True

    def takes_detail(self, line: Line) -> bool:
        """Whether a line among the items names the source of the information, or the datum."""
        notice, charts = self.assembly.notice, self.assembly.charts
        if notice is None or notice.is_radio or line.has(*OF_ITEMS):
            return False
        piece = (line.elements[0].start, line.elements[-1].end)
        if is_source(self.text, line):
            add_source(self.text, notice, piece)
        elif charts and is_late_detail(self.text, charts[-1], self.assembly.body, piece):
            charts[-1].head.append(piece)
        else:
            return False
        return True

    def _more_chart_head(self, line: Line) -> bool:
        """A line, or the beginning of one, that goes on with the chart head above it."""
        ends = (i for i, e in enumerate(line.elements) if e.kind in ENDS_A_CHART_HEAD)
        end = next(ends, len(line.elements))
        head = self.assembly.charts[-1].head
        if not end or not head:
            return False
        start, stop = line.elements[lead_index(line)].start, line.elements[end - 1].end
        breaks_off = self.text[head[-1][1] - 1] in ",;-" or not self.behind_blank
        words = self.text[start:stop]
        above = self.text[slice(*head[-1])]
        whole = words if end == len(line.elements) else ""  # not `1.` of `1. Insert …`
        closes = not self.behind_blank and (
            closes_bracket(above, words)
            or completes_previous(above, words)
            or parts_previous(above, words)
            or tells_its_notice(above, words)
            or lists_items(words)
            or goes_on_with_charts(" ".join(self.text[slice(*one)] for one in head), whole)
        )
        if not closes and not is_chart_details(words, breaks_off=breaks_off):
            return False
        take_number(self.assembly, start, words)
        self.assembly.charts[-1].head.append((start, stop))
        if end < len(line.elements):
            self.assembly.body.append(line._replace(elements=line.elements[end:]))
            self.head_is_open = False
        return True

    def _chart_line(self, line: Line) -> bool:
        index = next(i for i, e in enumerate(line.elements) if e.kind == "chart")
        before = line.elements[:index]
        if any(e.kind in ("verb", "point", "half") for e in before):
            return False
        charts = self.assembly.charts if before and not self.behind_blank else []
        if charts and ends_bracket(self.text, charts[-1].head, before):
            return self._more_chart_head(line)
        if not before and not self.behind_blank and takes_its_chart(self.assembly, line):
            return True
        if any(e.kind != "label" and is_more_than_number(self.text, e) for e in before):
            if leads_to_chart(self.assembly, before, line.elements[index:]):
                self._chart_elements(line, line.elements[index:])
                self.assembly.charts[-1].head.insert(0, (before[0].start, before[-1].end))
                return True
            if self.assembly.notice is None or not self.head_is_open:
                return False
            self.add_heading(list(before))
            before = ()
        self._chart_elements(line, line.elements[index:])
        numbers = [e for e in before if e.kind == "words" and has_words(self.text, e)]
        if numbers and self.assembly.charts and self.assembly.cut.end is None:
            self.assembly.charts[-1].head.insert(0, (numbers[0].start, numbers[-1].end))
        return True

    def _chart_elements(self, line: Line, elements: tuple[Element, ...]) -> None:
        assembly = self.assembly
        if assembly.notice is not None and assembly.notice.is_radio:
            # A radio warning names charts and changes none.
            assembly.body.append(line)
            return
        self.keys.end_block()
        assembly.end_body()
        ends = (i for i, e in enumerate(elements) if ends_chart_head(self.text, e))
        end = next(ends, len(elements))
        elements, end = without_statement(self.text, elements, end)
        start, stop = elements[0].start, elements[end - 1].end
        before = [e for e in line.elements if e.start < start and e.kind != "label"]
        opens = not any(is_more_than_number(self.text, e) for e in before)
        if opens and assembly.is_between_charts() and assembly.cut.falls_before(line):
            return
        this_notice = opened_notice(self.text[start:stop])
        is_apart = assembly.notice is None or assembly.is_by_chart or not assembly.has_numbers
        if this_notice is not None and is_apart:
            assembly.is_by_chart = True
            assembly.switch_notice(this_notice, start)
        elif ends_notice(assembly, (start, stop), behind_blank=self.behind_blank):
            assembly.end_notice()
        assembly.open_chart((start, stop))
        self.head_is_open = True
        rest = line._replace(elements=elements[end:])
        if rest.elements and not takes_cancellation(assembly, rest):
            assembly.body.append(rest)
            self.head_is_open = False
