"""Words of the input shown to a person: on one line, without anything that moves a cursor."""

from __future__ import annotations

import unicodedata

from noticeparse.spans import Span

_LEAD = 48
_WIDTH = 96
_SHOWN = "�"

_HIDDEN = {
    **{code: _SHOWN for code in [*range(0x20), *range(0x7F, 0xA0), 0x2028, 0x2029]},
    # Marks of writing direction can turn a line round, so that a figure reads as another.
    **{code: _SHOWN for code in [0x61C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A)]},
    **{code: " " for code in (0x09, 0x0A, 0x0B, 0x0C, 0x0D)},
}


def visible(text: str) -> str:
    """The text with blanks for line ends and tabs, and U+FFFD for other controls."""
    return text.translate(_HIDDEN)


def pointed_at(text: str, span: Span) -> tuple[str, str]:
    """The line on which a span starts, cut to a readable length, and the marks to stand below it."""
    # Searched within bounds: a text may be one line of a million characters.
    first = max(0, span.start - _LEAD)
    begin = text.rfind("\n", first, span.start) + 1
    is_cut = begin == 0 and first > 0
    begin = begin or first
    limit = min(begin + _WIDTH, len(text))
    end = text.find("\n", span.start, limit)
    goes_on = end < 0 and limit < len(text)
    end = limit if end < 0 else end
    lead = ("…" if is_cut else "") + visible(text[begin : span.start])
    marked = visible(text[span.start : max(span.start, min(span.end, end))]).rstrip()
    line = lead + visible(text[span.start : end]).rstrip() + ("…" if goes_on else "")
    return line, " " * _columns(lead) + "^" * max(1, _columns(marked))


def _columns(text: str) -> int:
    """How many columns of a terminal a text takes."""
    return sum(_column(char) for char in text)


def _column(char: str) -> int:
    if unicodedata.combining(char) or unicodedata.category(char) in ("Mn", "Me", "Cf"):
        return 0
    return 2 if unicodedata.east_asian_width(char) in ("W", "F") else 1
