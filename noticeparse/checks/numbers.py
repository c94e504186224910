"""The numbers of the notices of an edition: none twice, none missing, in order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.checks.given import Given, Whole, ref_of
from noticeparse.checks.trouble import Trouble
from noticeparse.readers.references import notice_id
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.notice import Notice

_Number = tuple[str, int | None, int, str]
"""Series, year, number and status: what names one notice only."""


def check_numbers_once(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Numbers that two notices of the bulletin have."""
    seen: dict[_Number, Notice] = {}
    for index, notice in enumerate(bulletin.notices):
        key = _number(notice)
        if key is None:
            continue
        first = seen.setdefault(key, notice)
        if first is not notice:
            values = {"written": notice.id or "", "place": f"line {first.span.line}"}
            span = given.number_of(notice)
            yield Trouble("notice-number-twice", span, [f"/notices/{index}"], values)


def check_numbers_differ(wholes: Sequence[Whole]) -> Iterator[tuple[int, Trouble]]:
    """Permanent notices of one number that say different things in two bulletins.

    Temporary notices and radio warnings in force are printed again, often in other words.
    """
    seen: dict[_Number, tuple[int, Notice, list[str]]] = {}
    for of, (bulletin, given) in enumerate(wholes):
        for index, notice in enumerate(bulletin.notices):
            key = _number(notice)
            if key is None or notice.status != "permanent":
                continue
            asked = [action.text for chart in notice.charts for action in chart.actions]
            where, first, known = seen.setdefault(key, (of, notice, asked))
            if where != of and known != asked:
                place = f"line {first.span.line} of another bulletin"
                values = {"written": notice.id or "", "place": place}
                span = given.number_of(notice)
                yield of, Trouble("notice-number-twice", span, [f"/notices/{index}"], values)


def _number(notice: Notice) -> _Number | None:
    if notice.number is None:
        return None
    return notice.series or "", notice.year, notice.number, notice.status


def check_numbers_in_order(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Numbers lower than the one above; a bulletin that is ordered by charts has no such order.

    Permanent notices are one row, temporary and preliminary ones another.  Radio warnings stand as
    they were sent.
    """
    if _is_by_chart(bulletin.notices):
        return
    rows: dict[tuple[str, int | None, bool], list[tuple[int, Notice]]] = {}
    for index, notice in enumerate(bulletin.notices):
        if notice.number is not None and notice.status != "radio_warning":
            row = notice.series or "", notice.year, notice.status == "permanent"
            rows.setdefault(row, []).append((index, notice))
    for row_of in rows.values():
        for (_, above), (index, notice) in pairwise(row_of):
            if (notice.number or 0) < (above.number or 0):
                values = {"written": notice.id or "", "other": above.id or ""}
                span = given.number_of(notice)
                yield Trouble("notice-out-of-order", span, [f"/notices/{index}"], values)


def _is_by_chart(notices: Sequence[Notice]) -> bool:
    """Whether a chart stands above the numbers of its notices."""
    return any(
        section.span.start <= notice.span.start for notice in notices for section in notice.charts
    )


def check_stated_range(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Notices that are missing from the range which the front states, or lie outside of it."""
    edition = bulletin.edition
    first = edition.first_notice if edition else None
    last = edition.last_notice if edition else None
    if first is None or last is None or not bulletin.notices:
        return
    here: set[int] = set()
    for index, notice in enumerate(bulletin.notices):
        ref = ref_of(notice)
        if ref is None or notice.status == "radio_warning" or notice.series:
            continue
        here.add(ref.number)
        if not first.number <= ref.number <= last.number and ref.year == last.year:
            values = {"written": notice_id(ref), "first": str(first.number)}
            values["last"] = notice_id(last)
            span = given.number_of(notice)
            yield Trouble("notice-outside-range", span, [f"/notices/{index}"], values)
    missing = sorted(set(range(first.number, last.number + 1)) - here)
    if missing and here:
        front = given.stated_range(first, last, bulletin.notices[0].span.start)
        values = {"written": _listed(missing), "first": str(first.number), "last": notice_id(last)}
        yield Trouble("notice-missing", front or bulletin.notices[0].span, ["/edition"], values)


def _listed(numbers: Sequence[int]) -> str:
    """`3312, 3315 to 3317`."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    words = [str(run[0]) if len(run) == 1 else f"{run[0]} to {run[-1]}" for run in runs]
    return ", ".join(words)
