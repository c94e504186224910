"""The lists that an edition prints about itself: their entries, with charts and notices."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import get_args

from noticeparse.context import Context
from noticeparse.layout.drafts import ListDraft, Piece
from noticeparse.layout.line.elements import Line
from noticeparse.readers.cancelled import read_cancelled
from noticeparse.readers.head_values import HeadPart
from noticeparse.readers.heads import read_parts
from noticeparse.readers.references import read_number
from noticeparse.records.bulletin import EditionList, ListEntry, ListKind
from noticeparse.records.reference import NoticeRef, NoticeStatus

_CHARTS = frozenset({"chart", "charts", "chart no", "chart number"})
_PAGES = frozenset({"page", "pages", "page no", "pp", "p", "on page"})
_AHEAD = 3
_NOTICES = ("NOTICE_NUMBER", "BARE_NUMBER")
_FIGURE = re.compile(r"(?<=[ \t])[0-9]{1,4}(?:[ ]?[,&-][ ]?[0-9]{1,4}){0,8}(?![^ \t\n,;|])")
_LED = re.compile(r"(?:^|(?<=  ))(?:charts? )?[A-Z]{0,3}[0-9]{1,6}[A-Z]?(?= ?\.{2,40})")
"""A chart with dots that lead to its notices: `31 ..... 641, 643`."""
_OF_CHARTS = ("index_of_charts", "cumulative")
"""Kinds of list with a chart a line and the notices behind it."""

_KINDS: dict[str, ListKind] = {kind: kind for kind in get_args(ListKind)} | {"cumulative": "other"}
"""The kind of a record by the kind that its title tells."""


def read_list(context: Context, draft: ListDraft) -> EditionList:
    """One list of the edition with its entries."""
    last = draft.entries[-1] if draft.entries else draft.title
    columns = _chart_columns(context, draft.entries) if draft.kind in _OF_CHARTS else []
    pages = _PagesOf(context, draft.entries)
    entries: list[ListEntry] = []
    notices_at: int | None = None
    above = draft.title
    for line in draft.entries:
        if (
            entries
            and notices_at is not None
            and _column(context, line.elements[0].start) >= notices_at
        ):
            entries[-1] = _going_on(context, draft.kind, entries[-1], above, line)
            above = line
            continue
        pieces = [*_entry_pieces(context, draft.kind, line, columns)]
        entries += [_entry(context, draft.kind, pages.without(*one), one) for one in pieces]
        notices_at = _notices_at(context, draft.kind, *pieces[0]) if len(pieces) == 1 else None
        above = line
    return EditionList(
        kind=_KINDS[draft.kind],
        title=context.written(draft.title.start, draft.title.end),
        entries=entries,
        span=context.span(draft.title.elements[0].start, last.elements[-1].end),
    )


def _notices_at(context: Context, kind: str, start: int, end: int) -> int | None:
    """The column where the notices of a chart begin: what stands below there goes on with them."""
    if kind not in (*_OF_CHARTS, "in_force"):
        return None
    parts = read_parts(context.text[start:end])
    places = [one for one, part in enumerate(parts) if part.kind == "CHART_NUMBER"]
    if not places or any(part.kind in _NOTICES for part in parts[: places[0]]):
        return None
    behind = parts[places[0] + 1 :]
    first = next((one for one in behind if one.kind in (*_NOTICES, "CHART_NUMBER")), None)
    return _column(context, start + first.start) - _AHEAD if first is not None else None


def _going_on(context: Context, kind: str, entry: ListEntry, above: Line, line: Line) -> ListEntry:
    """An entry, whose last line is `above`, with the notices of the line below it."""
    start, end = line.elements[0].start, line.elements[-1].end
    more = _entry(context, kind, end, (start, end), chart=entry.chart)
    comma = "," if context.text[above.start : above.end].rstrip().endswith(",") else ""
    return ListEntry(
        chart=entry.chart,
        notices=[*entry.notices, *more.notices],
        text=f"{entry.text.rstrip(',')}{comma} {more.text}",
        span=entry.span.model_copy(update={"end": more.span.end}),
    )


def _chart_columns(context: Context, entries: Sequence[Line]) -> list[int]:
    """Where the columns of the charts begin in an index set side by side; [] for a single one."""
    for line in entries:
        titles = [context.text[e.start : e.end].strip(" .:").lower() for e in line.elements]
        charts = [e for e, title in zip(line.elements, titles, strict=True) if title in _CHARTS]
        if len(charts) > 1:
            return [_column(context, e.start) for e in charts]
    return []


def _column(context: Context, offset: int) -> int:
    """How far from the beginning of its line an offset stands."""
    return offset - context.text.rfind("\n", 0, offset) - 1


def _entry_pieces(
    context: Context, kind: str, line: Line, columns: Sequence[int]
) -> Iterator[Piece]:
    """A line of a list, cut before each chart of several: `Chart 21: 40, 42    Chart 22: 41`."""
    start, end = line.elements[0].start, line.elements[-1].end
    if columns:
        # A figure may stand a little to the left of its title.
        lead = [bisect_right(columns, _column(context, e.start) + _AHEAD) for e in line.elements]
        later = zip(line.elements[1:], pairwise(lead), strict=True)
        first = [e.start for e, (before, own) in later if before < own]
        for at, behind in pairwise([start, *first, end]):
            yield at, at + len(context.text[at:behind].rstrip(" \t,;|"))
        return
    parts = read_parts(context.text[start:end]) if kind in (*_OF_CHARTS, "in_force") else ()
    led = [one.start() for one in _LED.finditer(context.text[start:end])]
    charts = led or [part.start for part in parts if part.kind == "CHART_WORD"]
    # `1504(T)/25 (chart 9)` gives the chart behind its notice.
    cuts = [start, *(start + one for one in charts[1:] if charts[0] == 0), end]
    for at, behind in pairwise(cuts):
        yield at, at + len(context.text[at:behind].rstrip(" \t,;|"))


class _PagesOf:
    """Where the columns of an index stand that give the pages of an edition."""

    def __init__(self, context: Context, entries: Sequence[Line]) -> None:
        self._context = context
        self._columns: list[tuple[int, bool]] = []
        for line in entries:
            titles = [context.text[e.start : e.end].strip(" .:").lower() for e in line.elements]
            if _CHARTS.isdisjoint(titles) or _PAGES.isdisjoint(titles):
                continue
            self._columns = [
                (_column(context, element.start), title in _PAGES)
                for element, title in zip(line.elements, titles, strict=True)
            ]
            return

    def without(self, start: int, end: int) -> int:
        """Where an entry ends in front of the page on which its chart stands."""
        if not self._columns:
            return end
        starts = [column for column, _ in self._columns]
        for match in _FIGURE.finditer(self._context.text, start, end):
            at = bisect_right(starts, _column(self._context, match.start()) + _AHEAD) - 1
            if at >= 0 and self._columns[at][1]:
                return match.start()
        return end


def _entry(
    context: Context, kind: str, told: int, piece: Piece, chart: str | None = None
) -> ListEntry:
    """An entry, told by its words up to `told`.

    `chart` is that of the line above, where the notices of one go on.
    """
    start, end = piece
    parts = read_parts(context.text[start:told])
    notices: list[NoticeRef] = []
    names_charts = kind in (*_OF_CHARTS, "in_force", "new_charts")
    for index, part in enumerate(parts):
        if part.kind in ("NOTICE_NUMBER", "THIS_NOTICE", "PREVIOUS_IN_BRACKETS"):
            ref = read_number(part.text.strip("[]() "), context.year)
            if ref is not None:
                notices.append(ref)
        elif part.kind == "CANCELS":
            notices += read_cancelled(part.text, context.year)
        elif part.kind == "BARE_NUMBER":
            notices.append(_bare(part.text))
        elif part.kind == "INTERNATIONAL" and chart is None and names_charts and not notices:
            chart = part.text.strip("() ")
        elif part.kind == "CHART_NUMBER":
            is_own = chart is None or _is_own(parts, index)
            if is_own and names_charts and not notices:
                chart = part.text.strip()
            elif kind in _OF_CHARTS and part.text.isdigit():
                notices.append(_bare(part.text))
            elif kind in _OF_CHARTS and (ref := _hyphened(context, part.text)) is not None:
                notices.append(ref)
    return ListEntry(
        chart=chart,
        notices=notices,
        text=context.written(start, end),
        span=context.span(start, end),
    )


def _hyphened(context: Context, words: str) -> NoticeRef | None:
    """The notice `71-26` behind its chart; `71-74` may be the first and the last of several."""
    ref = read_number(words, context.year)
    is_near = ref is not None and context.year is not None and ref.year is not None
    return ref if is_near and ref and abs((ref.year or 0) - (context.year or 0)) <= 1 else None


def _is_own(parts: Sequence[HeadPart], index: int) -> bool:
    """Whether a chart's own number stands behind its international one: `INT 9802 (802) .. 12`."""
    before, behind = parts[index - 1], parts[index + 1 : index + 2]
    if before.kind == "INTERNATIONAL":
        # `INT 9802  12, 13` has no other number than those of its notices.
        return bool(behind) and behind[0].kind != "COMMA"
    return before.text == "("


def _bare(words: str) -> NoticeRef:
    figures = "".join(c for c in words if c.isdigit())
    status: NoticeStatus = (
        "temporary" if "T" in words else "preliminary" if "P" in words else "permanent"
    )
    return NoticeRef(number=int(figures), year=None, status=status)
