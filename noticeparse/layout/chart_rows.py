"""Rows that head a chart: its number, edition, the notice before and the one that corrects it."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.keys import KeyReader
from noticeparse.layout.lines import Line
from noticeparse.layout.tables import TableReader
from noticeparse.readers.heads import head_kinds, opened_notice, read_parts


class ChartRowReader:
    """Takes such rows, and the title of the chart on the line below."""

    def __init__(self, assembly: Assembly, tables: TableReader, keys: KeyReader) -> None:
        self.assembly = assembly
        self.text = assembly.text
        self._tables = tables
        self._keys = keys
        self._awaits_title = False
        """Whether the line above is such a row."""

    def takes(self, line: Line, *, behind_blank: bool) -> bool:
        """Whether a line is such a row, or the title below it."""
        awaits, self._awaits_title = self._awaits_title and not behind_blank, False
        if awaits and _is_title(self.text, line):
            self._title(line)
            return True
        if self._tables.holds_actions or not _is_row(self.text, line):
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

    def _title(self, line: Line) -> None:
        piece = (line.elements[0].start, line.elements[-1].end)
        if head_kinds(self.text[slice(*piece)]) & {"DEPTH_UNIT", "DATUM"}:
            self.assembly.charts[-1].head.append(piece)
        if self.assembly.notice is not None:
            self.assembly.notice.heading.append(piece)


def _is_row(text: str, line: Line) -> bool:
    """Whether a line is a chart's number with the notice before and the one that corrects it.

    `82104   7Ed. 14 FEB 2015   LAST NM 318/26   NM 344/26`
    """
    if line.has("verb", "point", "half", "reference", "passive", "key", "chart", "label"):
        return False
    parts = read_parts(text[line.start : line.end])
    kinds = {part.kind for part in parts}
    return parts[0].kind == "CHART_NUMBER" and {"PREVIOUS", "THIS_NOTICE"} <= kinds


def _is_title(text: str, line: Line) -> bool:
    """Whether a line below the row of a chart is its title and nothing else."""
    words = text[line.start : line.end].strip()
    is_plain = all(element.kind == "words" for element in line.elements)
    told = words.lower().startswith(("chart title", "title"))
    return is_plain and (told or words.partition(" (")[0].isupper())
