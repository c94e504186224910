"""The lists of an edition against its notices: index of charts, in force, cancelled."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from noticeparse.checks.chains import chart_key, plain_chart
from noticeparse.checks.given import Given, Whole, is_same, is_same_year, ref_of
from noticeparse.checks.trouble import Trouble
from noticeparse.readers.references import notice_id
from noticeparse.records.bulletin import Bulletin, ListEntry
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef

_MARKED = ("temporary", "preliminary")
_OWN_WORDS = frozenset({"chart", "charts", "notice", "notices", "plan", "panel", "inset", "and"})


class Row(NamedTuple):
    """An entry of a list that names notices."""

    pointer: str
    entry: ListEntry


class Numbered:
    """References, to be looked up by their numbers."""

    def __init__(self, refs: Iterable[NoticeRef]) -> None:
        self._by_number: dict[int, list[NoticeRef]] = {}
        for ref in refs:
            self._by_number.setdefault(ref.number, []).append(ref)

    def has(self, ref: NoticeRef) -> bool:
        """Whether one of them means the same notice."""
        return any(is_same(ref, one) for one in self._by_number.get(ref.number, ()))


def _own_refs(bulletin: Bulletin) -> Iterator[NoticeRef]:
    yield from (ref for notice in bulletin.notices if (ref := ref_of(notice)) is not None)


def _rows(bulletin: Bulletin, kind: str) -> list[Row]:
    """The entries of all lists of a kind that name notices, without page feet and titles.

    A line with other words is an entry only where it names a notice that is here.
    """
    here = Numbered(_own_refs(bulletin))
    return [
        Row(f"/lists/{number}/entries/{index}", entry)
        for number, one in enumerate(bulletin.lists)
        if one.kind == kind
        for index, entry in enumerate(one.entries)
        if entry.notices
        and (
            set(re.findall(r"[a-z]{3,}", entry.text.lower())) <= _OWN_WORDS
            or any(here.has(ref) for ref in entry.notices)
        )
    ]


class Named(NamedTuple):
    """A pair of the index: a row, a notice that it names, and the notices that this may mean."""

    row: Row
    ref: NoticeRef
    indexes: list[int]


def check_index_of_charts(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Every pair of a chart and a notice, from the index to the notices and back."""
    named = list(_named(bulletin))
    # An index that is kept over many weeks names notices that are not here.
    if named and sum(bool(one.indexes) for one in named) * 2 >= len(named):
        yield from _from_index(bulletin, named)
    if named:
        yield from _to_index(bulletin, given, named)


def _named(bulletin: Bulletin) -> Iterator[Named]:
    """The pairs of the index, which may leave out the marks of the notices."""
    by_number: dict[int, list[tuple[int, NoticeRef]]] = {}
    for index, notice in enumerate(bulletin.notices):
        own = ref_of(notice)
        if own is not None and notice.status != "radio_warning":
            by_number.setdefault(own.number, []).append((index, own))
    for row in _rows(bulletin, "index_of_charts"):
        for ref in row.entry.notices if _is_led_by_chart(row.entry) else ():
            near = by_number.get(ref.number, ())
            indexes = [
                index
                for index, own in near
                if is_same_year(own, ref) and ref.status in ("permanent", own.status)
            ]
            yield Named(row, ref, indexes)


def _is_led_by_chart(entry: ListEntry) -> bool:
    """Whether a chart stands before the notices: `802 ... 12, 14`, and not `12 (chart 802)`."""
    start = re.match(r"(?i)(?:charts?|INT|[\s.:|])*", entry.text)
    chart = (entry.chart or "").removeprefix("INT").strip(" .")
    return bool(chart) and entry.text.startswith(chart, start.end() if start else 0)


def _from_index(bulletin: Bulletin, named: Sequence[Named]) -> Iterator[Trouble]:
    for (pointer, entry), ref, indexes in named:
        notices = [bulletin.notices[index] for index in indexes]
        chart = entry.chart or ""
        values = {"written": notice_id(ref), "chart": chart}
        if not notices:
            yield Trouble("index-notice-not-here", entry.span, [pointer], values, chart)
        elif not any(_is_chart(entry, one) for notice in notices for one in notice.charts):
            yield Trouble("index-chart-not-in-notice", entry.span, [pointer], values, chart)


def _is_chart(entry: ListEntry, section: ChartSection) -> bool:
    """Whether an entry is for the chart of a section, by its own or its international number."""
    listed = plain_chart(entry.chart or "")
    international = plain_chart(section.international or "")
    return listed == chart_key(section) or international in (listed, f"INT{listed}")


def _to_index(bulletin: Bulletin, given: Given, named: Sequence[Named]) -> Iterator[Trouble]:
    """Charts of notices that the index leaves out; one may leave temporary notices out."""
    entries: dict[int, list[ListEntry]] = {}
    for one in named:
        for index in one.indexes:
            entries.setdefault(index, []).append(one.row.entry)
    statuses = {bulletin.notices[index].status for index in entries}
    has_marked = bool((statuses | {one.ref.status for one in named}) & set(_MARKED))
    for index, notice in enumerate(bulletin.notices):
        own = ref_of(notice)
        if own is None or not (
            own.status == "permanent" or (own.status in _MARKED and has_marked)
        ):
            continue
        told: set[str] = set()
        for row, section in enumerate(notice.charts):
            key = chart_key(section)
            is_listed = any(_is_chart(entry, section) for entry in entries.get(index, ()))
            if not key or key in told or is_listed:
                continue
            told.add(key)
            values = {"written": notice_id(own), "chart": section.chart or ""}
            pointer = f"/notices/{index}/charts/{row}"
            span = given.chart_of(section)
            yield Trouble("index-without-chart", span, [pointer], values, section.chart)


def check_in_force(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Temporary and preliminary notices of the edition that its list in force leaves out."""
    rows = _rows(bulletin, "in_force")
    refs = [ref for row in rows for ref in row.entry.notices if ref.status in _MARKED]
    listed = Numbered(refs)
    for index, notice in enumerate(bulletin.notices if refs else ()):
        own = ref_of(notice)
        if own is not None and own.status in _MARKED and not listed.has(own):
            values = {"written": notice_id(own)}
            span = given.number_of(notice)
            yield Trouble("in-force-missing", span, [f"/notices/{index}"], values)


def check_cancelled_list(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Notices cancelled here but not in the edition's own list of them, and the reverse."""
    rows = _rows(bulletin, "cancelled")
    listed = Numbered(ref for row in rows for ref in row.entry.notices)
    cancelled = [
        (index, ref)
        for index, notice in enumerate(bulletin.notices if rows else ())
        if notice.status != "radio_warning"
        for ref in notice.cancels
    ]
    for index, ref in cancelled:
        if not listed.has(ref):
            values = {"written": notice_id(ref)}
            span = given.cancelled_in(bulletin.notices[index], ref)
            yield Trouble("cancelled-not-listed", span, [f"/notices/{index}"], values)
    known = Numbered(ref for _, ref in cancelled)
    for row in rows:
        for ref in row.entry.notices:
            if not known.has(ref):
                values = {"written": notice_id(ref)}
                yield Trouble("cancelled-by-none", row.entry.span, [row.pointer], values)


def check_cancelled_permanent(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Notices cancelled that stand in the same bulletin as permanent ones."""
    for _, trouble in check_cancellations([Whole(bulletin, given)]):
        yield trouble


def check_cancellations(wholes: Sequence[Whole]) -> Iterator[tuple[int, Trouble]]:
    """Notices cancelled that stand in one of the bulletins as permanent ones."""
    refs = [
        ref
        for whole in wholes
        for notice in whole.bulletin.notices
        if _is_of_chart(notice) and (ref := ref_of(notice)) is not None
    ]
    here = Numbered(refs)
    for of, (bulletin, given) in enumerate(wholes):
        for index, notice in enumerate(bulletin.notices):
            for ref in notice.cancels if _is_of_chart(notice) else ():
                permanent = ref.model_copy(update={"status": "permanent"})
                if not here.has(permanent) or (ref != permanent and here.has(ref)):
                    continue
                values = {"written": notice_id(ref), "other": notice_id(permanent)}
                span = given.cancelled_in(notice, ref)
                yield of, Trouble("cancels-permanent", span, [f"/notices/{index}"], values)


def _is_of_chart(notice: Notice) -> bool:
    """Whether a notice is of the office's own row; warnings and local notices count apart."""
    return notice.status != "radio_warning" and not notice.series
