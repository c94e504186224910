"""Numbers of notices with the year in front and a short number behind it: `2026/71`.

One of them could be notice 2026 of the year 71.  Several with one year and different numbers, and
no number written the other way round, are those of an office that puts the year in front.  Year
and number are then exchanged, `71/2026`, which has as many characters.
"""

from __future__ import annotations

import re

from noticeparse.layout.drafts import Piece

_NUMBER = re.compile(
    r"(?<![\w/.\u00b0+])([0-9]{1,5})(?:\([TP]\))?/([0-9]{1,5})(?![\w/\u00b0'\"-]|[.,][0-9])"
)
_FEWEST = 2
_YEARS = (1950, 2099)


def with_years_behind(text: str) -> tuple[str, list[Piece]]:
    """The text with the year behind each short number; nothing of it is left out."""
    if "/" not in text:
        return text, []
    found = [(int(one[1]), int(one[2])) for one in _NUMBER.finditer(text)]
    years = {year for year, _ in found}
    numbers = {number for _, number in found}
    alike = years and _YEARS[0] <= min(years) and max(years) <= min(min(years) + 1, _YEARS[1])
    if not alike or len(found) < _FEWEST or len(numbers) < 2:
        return text, []
    return _NUMBER.sub(_exchanged, text), []


def _exchanged(match: re.Match[str]) -> str:
    """The number before its year; one of three figures or more is read as it stands."""
    year, number = match[1], match[2]
    if len(number) > 2 or "(" in match.group():
        return match.group()
    return f"{number}/{year}"
