"""Charts and notices before as the columns of a row name them; one cell may hold several."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.extents import quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.readers.head_values import ChartHead
from noticeparse.readers.heads import head_kinds, read_head
from noticeparse.records.reference import NoticeRef

_FIGURES = re.compile(r"(?<![0-9A-Za-z.])[0-9]{2,6}(?![0-9])")
_DATED = re.compile(r"(?<![0-9/])[0-9]{1,5}(?:\([TPtp]\))?/(?:[0-9]{4}|[0-9]{2})(?![0-9/])")
_JOINTS = re.compile(r"[,;&+\n]| and | / ")
_NUMBER = re.compile(r"[0-9]{1,5} ?(?:\([TPtp]\))? ?(?:/ ?(?:[0-9]{4}|[0-9]{2}))?|-{1,3}|nil|none")


def lost_figure(cell: str, charts: Sequence[ChartHead]) -> bool:
    """Whether a figure in the column of the charts is that of no chart read there: `512 + 513`."""
    told = [
        value
        for chart in charts
        for value in (chart.chart, chart.international, chart.panel, chart.edition)
        if value
    ]
    known = {figure for value in told for figure in _FIGURES.findall(str(value))}
    # The notice before may stand in the column of the charts: `810 (566/26)`.
    figures = _FIGURES.findall(_DATED.sub("", cell) if charts else cell)
    return len(figures) > 1 and not known.issuperset(figures)


def names_several(words: str) -> bool:
    """Whether a cell names more than one notice, or none for one chart: `251/26 and 198/26`."""
    if len(_DATED.findall(words)) > 1:
        return True
    parts = [part.strip(" []()") for part in _JOINTS.split(words.lower())]
    return sum(_NUMBER.fullmatch(part) is not None for part in parts) > 1


def set_previous(context: Context, charts: Sequence[ChartHead], cell: Piece) -> list[Fault]:
    """Give the charts of a row the notice before that its cell names."""
    words = context.text[slice(*cell)].strip(" [].")
    words = words.strip("()") if words.startswith("(") else words
    if names_several(words):
        return _set_each(context, charts, cell)
    found = _only_chart(context, words)
    if found is None or found.previous is None:
        # `NM 122/26` names a notice; that it is the one before, the title of its column says.
        found = _only_chart(context, f"(last {words})")
    ref = found.previous if found else None
    written = (found.previous_written or words).removeprefix("last ") if found else words
    if ref is None and words.isdigit():
        ref = NoticeRef(number=int(words), year=None, status="permanent")
    if ref is not None and any(chart.previous not in (None, ref) for chart in charts):
        return [quoting(context, "chart-head-unread", cell)]
    give_all(charts, ref, written)
    is_lost = ref is None and any(map(str.isdigit, words)) and not _says_otherwise(words)
    return [quoting(context, "previous-unread", cell)] if is_lost else []


def _only_chart(context: Context, words: str) -> ChartHead | None:
    return next(iter(read_head(f"Chart 0 {words}", context.year).charts), None)


def _says_otherwise(words: str) -> bool:
    """Whether the cell tells of an edition or a day: `New edition 4/2026`, `3 June 2026`."""
    return bool(head_kinds(words) & {"NEW_EDITION", "EDITION", "DATE"})


def give_all(charts: Sequence[ChartHead], ref: NoticeRef | None, written: str | None) -> None:
    """Give a notice before to every chart that names none of its own."""
    for chart in charts:
        if ref is not None and chart.previous is None and not chart.previous_written:
            chart.previous, chart.previous_written = ref, written


def give_told(
    charts: Sequence[ChartHead], found: ChartHead, fault: Fault
) -> list[tuple[Fault, None]]:
    """Give the notice before that a line tells for all; the fault where they have others."""
    known = [chart.previous for chart in charts if chart.previous is not None]
    give_all(charts, found.previous, found.previous_written)
    is_another = found.previous is not None and bool(known) and found.previous not in known
    return [(fault, None)] if is_another else []


def _set_each(context: Context, charts: Sequence[ChartHead], cell: Piece) -> list[Fault]:
    """Give each chart the notice of its place, if there are as many; else none, with a fault."""
    words = _JOINTS.sub(", ", context.text[slice(*cell)].strip(" []()"))
    numbers = " and ".join(chart.chart or "" for chart in charts)
    told = read_head(f"Charts {numbers} (last {words})", context.year)
    found = {one.chart: one for one in told.charts if one.previous is not None}
    fits = len(charts) > 1 and not told.faults and len(told.charts) == len(charts)
    if not fits or any(chart.chart not in found for chart in charts):
        return [quoting(context, "previous-unread", cell)]
    for chart in charts:
        one = found[chart.chart]
        chart.previous = one.previous
        chart.previous_written = (one.previous_written or "").removeprefix("last ")
    return []
