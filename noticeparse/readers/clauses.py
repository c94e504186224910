"""Clauses in prose: dates, periods of validity, cancelled notices, charts named in passing."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache
from itertools import pairwise
from typing import NamedTuple

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.cancellations_left import cancellations_left
from noticeparse.readers.cancelled import read_cancelled
from noticeparse.readers.dates import names_year, read_date
from noticeparse.readers.taken_back import tells_end
from noticeparse.records.notice import Validity
from noticeparse.records.reference import NoticeRef


@dataclass
class Clauses:
    """What a stretch of prose says of its notice."""

    dates: list[str] = field(default_factory=list)
    cancels: list[NoticeRef] = field(default_factory=list)
    charts: list[tuple[str, int, int]] = field(default_factory=list)
    valid: Validity | None = None
    faults: list[Fault] = field(default_factory=list)


class _Part(NamedTuple):
    """A clause, or a word of one; offsets count in the stretch of prose."""

    kind: str
    text: str
    start: int

    @property
    def end(self) -> int:
        return self.start + len(self.text)


@cache
def _scanner(*, may_cancel: bool) -> grammar.Scanner:
    # To look for a cancelled notice takes longer than for all other clauses.
    return grammar.scanner("clause", "parts", without=() if may_cancel else ("CANCELS",))


@cache
def _date_scanner() -> grammar.Scanner:
    return grammar.scanner("dates", "dates")


def read_clauses(text: str, near: int | None) -> Clauses:
    """The clauses of a stretch of prose; `near` is the edition's year."""
    found = Clauses()
    if not _MAY_TELL.search(text):
        return found  # as of most headings and remarks
    cancelled: list[tuple[int, int]] = []
    scanner = _scanner(may_cancel=tells_end(text))
    for kind, start, end in scanner.scan(text, 0, len(text)):
        part = _Part(kind, text[start:end], start)
        if kind in _OF_VALIDITY and _OF_ANOTHER.search(text, max(start - _FAR, 0), start):
            # `Notice 12(T)/26 will be cancelled on 1 August 2026.`
            _blame(found, "validity-unread", part)
            found.dates += _dates_told(found, part, near)
            continue
        _take(found, part, near)
        if kind in ("CANCELS", "CANCEL_MESSAGE"):
            cancelled.append((start, end))
        if kind == "CHART_LIST" and (more := _CHARTS_MORE.match(text, end)) is not None:
            _blame(found, "chart-unread", _Part(kind, text[start : more.end()], start))
    for start, end in cancellations_left(text, cancelled):
        _blame(found, "cancellation-unread", _Part("CANCELS", text[start:end], start))
    return found


_OF_VALIDITY = frozenset({"PERIOD", "UNTIL"})
_FAR = 120
_OF_ANOTHER = re.compile(
    r"(?:^|[.;\n] ?)(?:the )?(?:(?:former|previous|temporary|preliminary) ){0,2}"
    r"(?:notices?|nm|ntm|circulars?|corrections?)(?: to mariners)?(?: nos?\.?)? "
    r"[0-9]{1,5} ?(?:\([TP]\))?/(?:19|20)?[0-9]{2} [a-z][^.;\n0-9]{0,60}$|"
    r"(?:^|[.;\n] ?)(?:the )?(?:notices?|nm|ntm|circulars?)(?: nos?\.?)? "
    r"[0-9]{1,5} ?(?:\([TP]\))?/(?:19|20)?[0-9]{2} $",
    re.IGNORECASE,
)
"""The subject of a sentence, another notice, and its verb: the time behind is not that of this."""


def _dates_told(found: Clauses, part: _Part, near: int | None) -> list[str]:
    days = [_iso(found, word, near) for word in _dates_in(part) if word.kind == "DATE"]
    return [day[:10] for day in days if day is not None]


_MAY_TELL = re.compile(r"[0-9]|til|valid", re.IGNORECASE)
"""What every clause has: a figure, or one of the words before a month alone."""
_CHARTS_MORE = re.compile(r" [0-9]{3,5}(?![0-9/°'A-Za-z-]|[.,][0-9]| ?(?:m|ft|UTC)\b| [0-9])")
"""A figure right behind those of charts, which may be one more: `Chart 802 803`."""


_UNREAD = {
    "UNTIL_UNREAD": "validity-unread",
    "UNTIL_NOT": "validity-unread",
    "UNTIL_MONTH": "validity-month-only",
}


def _take(found: Clauses, part: _Part, near: int | None) -> None:
    kind = part.kind
    if kind == "CANCELS":
        found.cancels += read_cancelled(part.text, near)
    elif kind in ("CHART_LIST", "CHART_ROW"):
        words = part.text.replace(",", " ").replace(" and ", " ").replace(" & ", " ").split()
        figures = [
            f"INT {word}" if before.upper() == "INT" else word
            for before, word in pairwise(words)
            if any(c.isdigit() for c in word)
        ]
        found.charts += [(figure, part.start, part.end) for figure in figures]
    elif kind in _UNREAD:
        _blame(found, _UNREAD[kind], part)
        if kind != "UNTIL_MONTH":
            # `In force as of 3 June 2026`: to what day is not said.
            days = [_iso(found, word, near) for word in _dates_in(part) if word.kind == "DATE"]
            found.dates += [day[:10] for day in days if day is not None]
    elif kind == "DAYS":
        found.dates += _days(found, part, near)
    elif kind in ("PERIOD", "PERIOD_CHANGED", "UNTIL", "CANCEL_MESSAGE", "DATE"):
        _take_dates(found, part, near)


_DAY_HYPHEN = re.compile(
    r"(?<=[0-9])-(?=[0-9]{1,2}\s{1,3}(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec))",
    re.IGNORECASE,
)


def _dates_in(part: _Part) -> list[_Part]:
    # `1-14 June 2026`: elsewhere a figure behind a hyphen is no date.
    text = _DAY_HYPHEN.sub(" ", part.text)
    return [
        _Part(one, text[start:end], part.start + start)
        for one, start, end in _date_scanner().scan(text, 0, len(text))
        if one != "OTHER"
    ]


def _days(found: Clauses, part: _Part, near: int | None) -> list[str]:
    """`on 1, 3 and 5 June 2026`: all have the month and year of the last."""
    *days, last = _dates_in(part)
    until = _iso(found, last, near)
    if until is None:
        return []
    dates = [_day_of(found, day, until, near) for day in days]
    return [date for date in (*dates, until) if date is not None]


def _day_of(found: Clauses, day: _Part, whole: str, near: int | None) -> str | None:
    """A day alone in the month of a whole date, with its time where one stands with it."""
    figures = day.text[:2] if day.kind == "TIME" else day.text
    date, faults = read_date(f"{whole[:8]}{int(figures):02d}", near)
    at, written = day.start, {"written": day.text}
    found.faults += [Fault(one.code, at, at + len(day.text), written) for one in faults]
    if date is not None and day.kind == "TIME":
        return f"{date}T{day.text[2:4]}:{day.text[4:6]}Z"
    return date


def _take_dates(found: Clauses, part: _Part, near: int | None) -> None:
    kind = part.kind
    words = _dates_in(part)
    told = len(found.faults)
    if kind.startswith("PERIOD") and len(words) > 1:
        dates = _period(found, words[0], words[-1], near)
    else:
        dates = [_iso(found, word, near) for word in words if word.kind == "DATE"]
    found.dates += [date[:10] for date in dates if date is not None]
    if kind == "DATE":
        return
    if kind == "PERIOD_CHANGED":
        _blame(found, "validity-unread", part)
        return
    # A fault of its own tells why a date is none; only a date that tells no year has none.
    if None in dates and len(found.faults) == told:
        _blame(found, "validity-unread", part)
    if kind == "PERIOD" and None not in dates and str(dates[0])[:10] > str(dates[-1])[:10]:
        _blame(found, "validity-reversed", part)
    elif dates and dates[-1] is not None and found.valid is None:
        since = dates[0] if kind == "PERIOD" and len(dates) > 1 else None
        found.valid = Validity.model_validate(
            {"from": since, "until": dates[-1], "written": " ".join(part.text.split())}
        )


def _period(found: Clauses, first: _Part, last: _Part, near: int | None) -> list[str | None]:
    """Both dates of a period; what one of them does not tell, it shares with the other."""
    if first.kind == "DATE" and names_year(first.text) and not names_year(last.text):
        since = _iso(found, first, near)
        until = _iso(found, last, _year_of(since))
        if since is not None and until is not None and until < since[:10]:
            # `from 28 December 2026 to 3 January`
            until = _iso(found, last, int(since[:4]) + 1)
        return [since, until]
    until = _iso(found, last, near)
    if until is None:
        return [None, None]
    if first.kind != "DATE":
        # `from 8 to 26 June 2026`: the day alone shares month and year of the one behind it.
        return [_day_of(found, first, until, near), until]
    if names_year(first.text):
        return [_iso(found, first, near), until]
    since = _iso(found, first, int(until[:4]))
    if since is not None and since[:10] > until[:10] and names_year(last.text):
        # `from 28 December to 3 January 2027`
        since = _iso(found, first, int(until[:4]) - 1)
    return [since, until]


def _year_of(date: str | None) -> int | None:
    return int(date[:4]) if date is not None else None


def _iso(found: Clauses, words: _Part, near: int | None) -> str | None:
    date, faults = read_date(words.text, near)
    found.faults += [fault.shifted(words.start) for fault in faults]
    return date


def _blame(found: Clauses, code: str, part: _Part) -> None:
    written = " ".join(part.text.split())
    found.faults.append(Fault(code, part.start, part.end, {"written": written}))
