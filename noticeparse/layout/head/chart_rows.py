"""Rows that head a chart: its number, edition, the notice before and the one that corrects it."""

from __future__ import annotations

import re

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import ChartDraft
from noticeparse.layout.head.item_lists import tells_items
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.recognise import (
    is_chart_details,
    is_chart_number,
    is_row_of_chart,
    tells_of_charts,
)
from noticeparse.layout.opening.titled_charts import opens_titled_chart
from noticeparse.layout.table.keys import KeyReader
from noticeparse.layout.table.tables import TableReader
from noticeparse.readers.heads import head_kinds, opened_notice, read_parts

ENDS_A_CHART_HEAD: tuple[ElementKind, ...] = (
    "verb", "point", "half", "reference", "passive", "charts_only",
)  # fmt: skip
"""What is no more part of the head of a chart."""


def ends_chart_head(text: str, element: Element) -> bool:
    """Whether what is said of the chart ends here; `are to be corrected` is said of it."""
    if element.kind == "passive":
        return not tells_of_charts(text[element.start : element.end])
    return element.kind in ENDS_A_CHART_HEAD


_BARE_HEAD = frozenset(
    {"PREVIOUS", "PREVIOUS_IN_BRACKETS", "NEW_EDITION", "EDITION", "DATUM", "DEPTH_UNIT", "DATE",
     "PANEL", "PREVIOUS_LIST", "STOP", "COMMA"}
)  # fmt: skip
_INTERNATIONAL_FIRST = re.compile(
    r"INT\.? ?[0-9]{1,5}(?: ?\((?:[Cc]hart )?(?P<own>[A-Z]{0,3}[0-9]{2,6}[A-Z]?)\)"
    r"| ?/ ?(?P<beside>[A-Z]{0,3}[0-9]{2,6}[A-Z]?)(?![0-9/]))?"
)


def international_first(words: str) -> str | None:
    """The chart of a head that opens with its international number: `INT 9871 (802) [12/26]`.

    Empty where that number stands alone, or before details of the chart; None for other words.
    """
    found = _INTERNATIONAL_FIRST.match(words)
    if found is None:
        return None
    titled = {"OTHER_WORDS"} if found["own"] else frozenset[str]()
    if not head_kinds(words[found.end() :]) <= _BARE_HEAD | titled:
        return None
    return found["own"] or found["beside"] or ""


_LETTERED = re.compile(r"(?!(?:VHF|UHF|CH|NO|NR|NM|ED|WK|PT|REF|TEL|FAX) )[A-Z]{2,3} [0-9]{2,5}")
_COUNTS = 2
"""Figures of a number that may count the items of a notice."""


class ChartRowReader:
    """Takes such rows, and the title of the chart on the line below."""

    def __init__(self, assembly: Assembly, tables: TableReader, keys: KeyReader) -> None:
        self.assembly = assembly
        self.text = assembly.text
        self._tables = tables
        self._keys = keys
        self._awaits_title = False
        """Whether the line above is such a row."""
        self.at_margin: set[str] = set()
        """Charts whose numbers stood alone at the margin."""
        self.leaves_head_open = False
        """Whether more may be said of the chart below the number taken last."""

    def takes(self, line: Line, *, behind_blank: bool) -> bool:
        """Whether a line is such a row, or the title below it."""
        awaits, self._awaits_title = self._awaits_title and not behind_blank, False
        if awaits and _is_title(self.text, line):
            self._title(line)
            return True
        if self._tables.holds_actions or not is_row_of_chart(self.text, line):
            return False
        piece = (line.elements[0].start, line.elements[-1].end)
        words = self.text[slice(*piece)]
        self._tables.leave(keep_notice_column=False)
        self._keys.end_block()
        self.assembly.end_body()
        notice = opened_notice(words)
        if notice is not None:
            self.assembly.switch_notice(notice, line.start)
        self.assembly.open_numbered_chart(piece, read_parts(words)[0].text)
        self._awaits_title = True
        return True

    def takes_number(self, line: Line) -> bool:
        """Whether a line begins with the number of a chart, at the margin or before its title."""
        return self._margin_chart(line) or self._titled_chart(line)

    def _margin_chart(self, line: Line) -> bool:
        """A chart number alone at the margin, with what is said of the chart behind a gap.

        Once told so, a number that was met before needs nothing of the kind behind it.
        """
        if self.assembly.notice is None or len(line.elements) < 2 or not line.elements[1].gap:
            return False
        first, second = line.elements[:2]
        if first.kind != "words" and not (first.kind == "label" and self.at_margin):
            return False
        number = self.text[first.start : first.end].strip()
        opened = opens_titled_chart(number)
        if not opened and not number[-2:].strip("ABCDEFGHIJ").isdigit():
            return False
        if not opened and not is_chart_number(number):
            return False
        ends = (i for i, e in enumerate(line.elements) if e.kind in ENDS_A_CHART_HEAD)
        end = next(ends, len(line.elements))
        rest = (second.start, line.elements[max(end, 2) - 1].end)
        is_told = end > 1 and is_chart_details(self.text[slice(*rest)], breaks_off=True)
        number = number[:opened] if opened else number
        if self._is_awaited() or self._goes_on(line):
            return False
        if not (is_told or opened or number in self.at_margin or self._commands(number, second)):
            return False
        self.at_margin.add(number)
        self._keys.end_block()
        head = [(first.start, first.end), *([rest] if is_told else [])]
        self.assembly.open_row_chart(ChartDraft(head, number))
        self.leaves_head_open = is_told
        left = line.elements[end if is_told else 1 :]
        if left:
            self.assembly.body.append(line._replace(elements=left))
            self.leaves_head_open = False
        return True

    def _commands(self, number: str, verb: Element) -> bool:
        """Whether a verb stands behind a number that is too long to count items: `802  Insert`."""
        if verb.kind != "verb" or (self.assembly.charts and not self.at_margin):
            return False
        if len(number) > _COUNTS or any(len(known) <= _COUNTS for known in self.at_margin):
            return True
        # Below another chart of the margin in the same notice; `1  Insert` else counts its items.
        return any(chart.number in self.at_margin for chart in self.assembly.charts)

    def _titled_chart(self, line: Line) -> bool:
        """A chart number that opens a line, with title and edition: `802 - Quill Sound - …`."""
        is_first = self.assembly.notice is None and not self.assembly.has_numbers
        by_chart = is_first or self.assembly.is_by_chart
        if self.assembly.notice is None and not by_chart:
            return False
        if line.has(*ENDS_A_CHART_HEAD) or self._is_awaited():
            return False
        start, end = line.elements[0].start, line.elements[-1].end
        opened = opens_titled_chart(self.text[start:end])
        number = self.text[start : start + opened] or international_first(self.text[start:end])
        if number is None and not by_chart and self._is_lettered_alone(self.text[start:end]):
            number = self.text[start:end]
        if number is None or (not number and (by_chart or self.assembly.charts)):
            # Below the head of a chart the international number alone is that of the chart.
            return False
        self._keys.end_block()
        if by_chart:
            self.assembly.end_body()
            self.assembly.notice = None
            self.assembly.open_numbered_chart((start, end), number)
        else:
            self.assembly.open_row_chart(ChartDraft([(start, end)], number or None))
        self.leaves_head_open = True
        return True

    def _goes_on(self, line: Line) -> bool:
        """Whether a row of the list of charts above tells its items: `612 [12/26]   (a), (c)`."""
        charts = self.assembly.charts
        head = charts[-1].head if charts and not self.assembly.body else []
        if not head or "CHART_WORD" not in head_kinds(self.text[slice(*head[0])]):
            return False
        return tells_items(self.text[line.elements[1].start : line.elements[-1].end])

    def _is_lettered_alone(self, words: str) -> bool:
        """Whether a chart with the letters of its office is all that a line below a heading is."""
        notice, charts, body = self.assembly.notice, self.assembly.charts, self.assembly.body
        if notice is None or not notice.heading or charts or body:
            return False
        lettered = _LETTERED.fullmatch(words)
        return lettered is not None and is_chart_number(words)

    def _is_awaited(self) -> bool:
        """Whether the word `Chart` alone stands above, whose number comes here."""
        charts = self.assembly.charts
        head = charts[-1].head if charts else []
        words = " ".join(self.text[slice(*piece)] for piece in head)
        return head_kinds(words) == {"CHART_WORD"}

    def _title(self, line: Line) -> None:
        piece = (line.elements[0].start, line.elements[-1].end)
        if head_kinds(self.text[slice(*piece)]) & {"DEPTH_UNIT", "DATUM"}:
            self.assembly.charts[-1].head.append(piece)
        if self.assembly.notice is not None:
            self.assembly.notice.heading.append(piece)


def _is_title(text: str, line: Line) -> bool:
    """Whether a line below the row of a chart is its title and nothing else."""
    words = text[line.start : line.end].strip()
    is_plain = line.has_only("words")
    told = words.lower().startswith(("chart title", "title"))
    return is_plain and (told or words.partition(" (")[0].isupper())
