"""Clauses in prose: dates, periods of validity, cancelled notices, charts named in passing."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache
from typing import Any

from lark import Lark, Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.dates import read_date
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


def _take(found: Clauses, token: Token, near: int | None) -> None:
    kind, start = token.type, token.start_pos or 0
    if kind == "CANCELS":
        found.cancels += read_cancelled(str(token), near)
    elif kind == "CHART_LIST":
        words = str(token).replace(",", " ").replace(" and ", " ").split()
        figures = [word for word in words if any(c.isdigit() for c in word)]
        found.charts += [(figure, start, start + len(token)) for figure in figures]
    elif kind in ("PERIOD", "UNTIL", "CANCEL_MESSAGE", "DATE"):
        _take_dates(found, kind, token, start, near)


def _take_dates(found: Clauses, kind: str, token: Token, start: int, near: int | None) -> None:
    written = [
        (str(t), t.start_pos or 0) for t in _date_lexer().lex(str(token)) if t.type == "DATE"
    ]
    first_day = next((str(t) for t in _date_lexer().lex(str(token)) if t.type == "FIGURES"), None)
    dates: list[str] = []
    if kind == "PERIOD" and len(written) == 1 and first_day is not None:
        # `from 8 to 26 June 2026`: the day alone shares the month behind it.
        month_year = written[0][0].split(None, 1)[1]
        dates += _iso(found, f"{first_day} {month_year}", start, near)
    if kind == "PERIOD" and len(written) == 2 and not written[0][0].rstrip()[-2:].isdigit():
        year = written[1][0].split()[-1]
        dates += _iso(found, f"{written[0][0]} {year}", start, near)
        written = written[1:]
    for words, at in written:
        dates += _iso(found, words, start + at, near)
    found.dates += [date[:10] for date in dates if len(date) >= 10]
    if kind != "DATE" and dates and found.valid is None:
        since = dates[0] if kind == "PERIOD" and len(dates) > 1 else None
        found.valid = Validity.model_validate(
            {"from": since, "until": dates[-1], "written": " ".join(str(token).split())}
        )


def _iso(found: Clauses, words: str, start: int, near: int | None) -> list[str]:
    date, faults = read_date(words, near)
    found.faults += [fault.shifted(start) for fault in faults]
    return [date] if date else []
