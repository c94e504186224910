"""Numbers of notices with the year in front and a short number behind it: `2026/71`.

One of them could be notice 2026 of the year 71.  Several with one year and different numbers, and
no number written the other way round, are those of an office that puts the year in front.  Year
and number are then exchanged, `71/2026`, which has as many characters; that this was done is told.
A colon between number and year, `2026:71`, becomes a slash first.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse.faults import Fault

_NUMBER = re.compile(
    r"(?<![\w/.\u00b0+])([0-9]{1,5})(?:\([TP]\))?/([0-9]{1,5})(?![\w/\u00b0'\"-]|[.,][0-9])"
)
_EXCHANGED = re.compile(r"(?<![\w/.\u00b0+])([0-9]{1,2})/((?:19|20)[0-9]{2})(?![\w/\u00b0'\"-])")
_YEAR = r"(?:19|20)[0-9]{2}"
_WITH_COLON = rf"(?:{_YEAR} ?: ?[0-9]{{1,5}}|[0-9]{{1,5}}(?: ?\([TP]\))? ?: ?{_YEAR})"
_ENDS = r"(?![\w:.\u00b0'\"-]*[\w:\u00b0'\"])"
_COLON = re.compile(rf"(?<![\w/.:,\u00b0+-]){_WITH_COLON}{_ENDS}")
_OPENS = re.compile(
    rf"(?:(?<![\s\S])|(?<=\n\n)|(?<=\n))(?:[*#] ?)?"
    rf"(?:(?:notice|nm|ntm|no\.?|nr\.?) ?){{0,2}}{_WITH_COLON}"
    r"(?= ?\([TP]\)|\.? {1,40}(?![0-9])[^\s\d]|[.:]?[ \t]{0,40}(?:\n|(?![\s\S])))",
    re.IGNORECASE,
)
# Most texts hold no colon before a figure, and are not read for numbers with one.
_ANY_COLON = re.compile(r": ?[0-9]")
_FEWEST = 2
_YEARS = (1950, 2099)
_SHORT = 2
"""Figures of a number that may be the end of a year."""


class YearsBehind(NamedTuple):
    """A text with the year behind each short number, and what was done to it."""

    text: str
    faults: tuple[Fault, ...] = ()
    sign: str = "/"
    """What stood between number and year."""

    def until(self, end: int) -> tuple[Fault, ...]:
        """The faults that begin before an offset of the text."""
        return tuple(fault for fault in self.faults if fault.start < end)


def with_years_behind(text: str) -> YearsBehind:
    """The text with the year behind each short number; nothing of it is left out."""
    sign, given = "/", text
    if _ANY_COLON.search(text) and _OPENS.search(text):
        sign, text = ":", _COLON.sub(lambda one: one[0].replace(":", "/"), text)
    if "/" not in text:
        return YearsBehind(text)
    found: list[re.Match[str]] = []
    for one in _NUMBER.finditer(text):
        if not _YEARS[0] <= int(one[1]) <= _YEARS[1]:
            return YearsBehind(text, sign=sign)
        found.append(one)
    years = {int(one[1]) for one in found}
    numbers = {int(one[2]) for one in found}
    if len(found) < _FEWEST or max(years) > min(years) + 1 or len(numbers) < 2:
        return YearsBehind(text, sign=sign)
    short = [one for one in found if _is_short(one)]
    told = (_told(short[0], given, years, numbers),) if short else ()
    return YearsBehind(_NUMBER.sub(_exchanged, text), told, sign)


def as_written(words: str, *, is_exchanged: bool, sign: str) -> str:
    """Words of a text whose years were put behind, as they stood before."""
    words = _EXCHANGED.sub(r"\2/\1", words) if is_exchanged else words
    return words if sign == "/" else words.replace("/", sign)


def _told(first: re.Match[str], given: str, years: set[int], numbers: set[int]) -> Fault:
    """What is told of the exchange, at the first number of the text.

    `2024/25` and `2025/26` could as well be high numbers of two years: that is doubtful.
    """
    could_be_years = max(numbers) - min(numbers) < 2 and 2000 + max(numbers) <= max(years) + 1
    code = "notice-year-doubtful" if could_be_years else "notice-year-in-front"
    values = {"written": given[slice(*first.span())], "number": first[2], "year": first[1]}
    return Fault(code, *first.span(), values)


def _is_short(match: re.Match[str]) -> bool:
    return len(match[2]) <= _SHORT and "(" not in match.group()


def _exchanged(match: re.Match[str]) -> str:
    """The number before its year; one of three figures or more is read as it stands."""
    return f"{match[2]}/{match[1]}" if _is_short(match) else match.group()
