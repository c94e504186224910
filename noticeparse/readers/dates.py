"""Dates and date-times: read by our own grammar, never by guessing.

A year of two figures takes the century that puts it nearest to the edition's year, or 1950 to 2049
where there is none.  A date without a year takes the edition's year.
"""

from __future__ import annotations

import re
from datetime import date, datetime
from functools import cache, lru_cache

from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault

MONTH = (
    r"(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?"
    r"|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)"
)
"""The pattern of the name of a month, in full or cut short, without its stop."""
_MONTHS = {
    name: number
    for number, name in enumerate(
        ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"), 1
    )
}


def full_year(figures: str, near: int | None) -> int:
    """A year of two or four figures as a full year; `near` is the edition's year."""
    year = int(figures)
    if len(figures) != 2:
        return year
    if near is None:
        return 2000 + year if year < 50 else 1900 + year
    return min((century + year for century in (1900, 2000, 2100)), key=lambda y: abs(y - near))


class _Callbacks:
    """Rule by rule: (day, month, year figures, time figures), each text or None."""

    def day_month(self, day: str, month: str, year: str | None = None) -> tuple[str | None, ...]:
        return day, month, year, None

    def month_day(self, month: str, day: str, year: str) -> tuple[str | None, ...]:
        return day, month, year, None

    def month_year(self, month: str, year: str) -> tuple[str | None, ...]:
        return None, month, year, None

    def iso_date(self, written: str) -> tuple[str | None, ...]:
        return written, None, None, None

    def time_group(
        self, group: str, month: str, year: str | None = None
    ) -> tuple[str | None, ...]:
        return group[:2], month, year, group[2:]


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("date", "date", callbacks=_Callbacks())


@lru_cache(maxsize=4096)
def names_year(text: str) -> bool:
    """Whether a written date tells its own year: `8 June 2026` and `2026-06-08` do."""
    try:
        _, month, year, _ = _parser().parse(text.strip())
    except LarkError:
        return False
    return month is None or year is not None


_MONTH = re.compile(rf"{MONTH}\b\.?(?: [0-9]{{4}})?", re.IGNORECASE)
_BEFORE_A_MONTH = re.compile(
    r"(?:[0-9](?:st|nd|rd|th)?|\b(?:in|of|since|during|early|mid|late|until|by|from|on))[ -]$",
    re.IGNORECASE,
)


def is_of_date(text: str, start: int, end: int) -> bool:
    """Whether a word that could be a name is the month of a date: `destroyed in March`."""
    # A capital behind it makes it the first word of a name: `wreck of May Queen`.
    opens_name = text[end : end + 1] == " " and text[end + 1 : end + 2].isupper()
    is_month = not opens_name and _MONTH.fullmatch(text, start, end) is not None
    return is_month and _BEFORE_A_MONTH.search(text, max(start - 12, 0), start) is not None


@lru_cache(maxsize=4096)
def read_date(text: str, near: int | None) -> tuple[str | None, tuple[Fault, ...]]:
    """The ISO 8601 form of a written date, or None with a fault where there is no such day."""
    try:
        day, month, year, time = _parser().parse(text.strip())
        if month is None:
            from dateutil.parser import isoparse  # seldom needed, and slow to import

            return isoparse(str(day)).date().isoformat(), ()
        written_year = full_year(str(year), near) if year else near
        if written_year is None:
            return None, ()
        number = _MONTHS[str(month)[:3].lower()]
        if day is None:
            return f"{written_year:04d}-{number:02d}", ()
        figures = "".join(c for c in str(day) if c.isdigit())
        if time:
            moment = datetime(written_year, number, int(figures), int(time[:2]), int(time[2:]))
            return moment.strftime("%Y-%m-%dT%H:%MZ"), ()
        return date(written_year, number, int(figures)).isoformat(), ()
    except LarkError:
        return None, ()
    except ValueError:
        fault = Fault("date-impossible", 0, len(text), {"written": text})
        return None, (fault,)
