"""Clauses in prose: dates, periods of validity, cancelled notices, charts named in passing."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache
from typing import Any

from lark import Lark, Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.dates import names_year, read_date
from noticeparse.readers.heads import read_cancelled
from noticeparse.records.notice import Validity
from noticeparse.records.reference import NoticeRef


@dataclass(slots=True)
class Clauses:
    """What a stretch of prose says of its notice."""

    dates: list[str] = field(default_factory=list)
    cancels: list[NoticeRef] = field(default_factory=list)
    charts: list[tuple[str, int, int]] = field(default_factory=list)
    valid: Validity | None = None
    faults: list[Fault] = field(default_factory=list)


@cache
def _parser() -> Lark:
    return grammar.build("clause", "parts", lexer="basic")


@cache
def _date_lexer() -> Lark:
    source = (
        "start: (DATE | FIGURES | OTHER)*\n%import .date.DATE\n"
        "FIGURES.1: /(?<![0-9])[0-9]{1,2}(?![0-9])/\n"
        "OTHER.0: /[^\\s]/\n%ignore /[ \\t\\n]+/\n"
    )
    return Lark(source, parser=None, lexer="basic", import_paths=[grammar.from_folder])


def read_clauses(text: str, near: int | None) -> Clauses:
    """The clauses of a stretch of prose; `near` is the edition's year."""
    found = Clauses()
    try:
        tree: Any = _parser().parse(text)
    except LarkError:
        return found
    for token in tree.children:
        if isinstance(token, Token):
            _take(found, token, near)
    return found


_UNREAD = {"UNTIL_UNREAD": "validity-unread", "UNTIL_MONTH": "validity-month-only"}


def _take(found: Clauses, token: Token, near: int | None) -> None:
    kind, start = token.type, token.start_pos or 0
    if kind == "CANCELS":
        found.cancels += read_cancelled(str(token), near)
    elif kind == "CHART_LIST":
        words = str(token).replace(",", " ").replace(" and ", " ").split()
        figures = [word for word in words if any(c.isdigit() for c in word)]
        found.charts += [(figure, start, start + len(token)) for figure in figures]
    elif kind in _UNREAD:
        _blame(found, _UNREAD[kind], token, start)
    elif kind in ("PERIOD", "UNTIL", "CANCEL_MESSAGE", "DATE"):
        _take_dates(found, kind, token, start, near)


def _take_dates(found: Clauses, kind: str, token: Token, start: int, near: int | None) -> None:
    parts = [t for t in _date_lexer().lex(str(token)) if t.type in ("DATE", "FIGURES")]
    words = [(t.type, str(t), start + (t.start_pos or 0)) for t in parts]
    told = len(found.faults)
    if kind == "PERIOD" and len(words) > 1:
        dates = _period(found, words[0], words[-1], near)
    else:
        dates = [_iso(found, text, at, near) for type_, text, at in words if type_ == "DATE"]
    found.dates += [date[:10] for date in dates if date is not None]
    if kind == "DATE":
        return
    # A fault of its own tells why a date is none; only a date that tells no year has none.
    if None in dates and len(found.faults) == told:
        _blame(found, "validity-unread", token, start)
    if kind == "PERIOD" and None not in dates and str(dates[0])[:10] > str(dates[-1])[:10]:
        _blame(found, "validity-reversed", token, start)
    elif dates and dates[-1] is not None and found.valid is None:
        since = dates[0] if kind == "PERIOD" and len(dates) > 1 else None
        found.valid = Validity.model_validate(
            {"from": since, "until": dates[-1], "written": " ".join(str(token).split())}
        )


_Words = tuple[str, str, int]
"""Terminal, text and place of a date or of a day alone."""


def _period(found: Clauses, first: _Words, last: _Words, near: int | None) -> list[str | None]:
    """Both dates of a period; what one of them does not tell, it shares with the other."""
    if first[0] == "DATE" and names_year(first[1]) and not names_year(last[1]):
        since = _iso(found, first[1], first[2], near)
        until = _iso(found, last[1], last[2], _year_of(since))
        if since is not None and until is not None and until < since[:10]:
            # `from 28 December 2026 to 3 January`
            until = _iso(found, last[1], last[2], int(since[:4]) + 1)
        return [since, until]
    until = _iso(found, last[1], last[2], near)
    if until is None:
        return [None, None]
    if first[0] == "FIGURES":
        # `from 8 to 26 June 2026`: the day alone shares month and year of the one behind it.
        day, faults = read_date(f"{until[:8]}{int(first[1]):02d}", near)
        at, written = first[2], {"written": f"{first[1]} to {last[1]}"}
        found.faults += [Fault(one.code, at, at + len(first[1]), written) for one in faults]
        return [day, until]
    if names_year(first[1]):
        return [_iso(found, first[1], first[2], near), until]
    since = _iso(found, first[1], first[2], int(until[:4]))
    if since is not None and since[:10] > until[:10] and names_year(last[1]):
        # `from 28 December to 3 January 2027`
        since = _iso(found, first[1], first[2], int(until[:4]) - 1)
    return [since, until]


def _year_of(date: str | None) -> int | None:
    return int(date[:4]) if date is not None else None


def _iso(found: Clauses, words: str, start: int, near: int | None) -> str | None:
    date, faults = read_date(words, near)
    found.faults += [fault.shifted(start) for fault in faults]
    return date


def _blame(found: Clauses, code: str, token: Token, start: int) -> None:
    written = " ".join(str(token).split())
    found.faults.append(Fault(code, start, start + len(token), {"written": written}))
