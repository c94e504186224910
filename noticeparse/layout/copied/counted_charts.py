"""Figures that count the charts of a list: `Charts: 1) 9002, previous notice 366/2026.`.

Each would be taken for the number of a chart.  They count on from one and stand before a number
of their own, behind a word for charts and a colon; what counts the items of a notice does not.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.layout.drafts import Piece

_LIST = re.compile(
    r"(?:(?<![^\n])|(?<=\n)) {0,12}(?:the )?(?:charts?(?:\(s\))?|sheets?)(?: (?:to )?(?:be )?"
    r"(?:affected|concerned|corrected|correct|touched))?(?: nos?\.?)?[^\n:0-9]{0,40}:\s{1,40}"
    r"(?=\(?1[.)] {1,6}[A-Z]{0,3} ?[0-9])",
    re.IGNORECASE,
)
_COUNT = re.compile(
    r"(?:(?<=\s)|(?<=[(;]))(?P<sign>\(?(?P<count>[1-9][0-9]?)[.)]) {1,6}"
    r"(?=(?:(?:INT|[A-Z]{1,3}) ?)?[0-9]{1,6}[A-Z]?(?:[ \t]{0,8}[\[(,;.:-]|[ \t]{2}|[ \t]{0,40}\n"
    r"|[ \t]{0,40}\Z| (?:and|&|last|prev|after|follows|WGS|\())(?! ?[0-9]{1,2}['°]))"
)
_MOST = 2000
"""Characters of such a list."""


def without_counts_of_charts(text: str) -> tuple[str, list[Piece]]:
    """The text with such figures blanked out, and where they stood."""
    marks = [piece for found in _LIST.finditer(text) for piece in _counts(text, found.end())]
    parts: list[str] = []
    at = 0
    for start, end in marks:
        parts += [text[at:start], " " * (end - start)]
        at = end
    return "".join([*parts, text[at:]]), marks


def _counts(text: str, start: int) -> Iterator[Piece]:
    """The figures that count on from one, up to the end of the paragraph."""
    blank = text.find("\n\n", start, start + _MOST)
    end = blank if blank >= 0 else min(start + _MOST, len(text))
    expected, sign = 1, ""
    for found in _COUNT.finditer(text, start, end):
        if int(found["count"]) != expected or (sign and found["sign"][-1] != sign):
            return
        yield found.span("sign")
        expected, sign = expected + 1, found["sign"][-1]
