"""Words of the input shown to a person: on one line, without anything that moves a cursor."""

from __future__ import annotations

import unicodedata

from noticeparse.spans import Span

_LEAD = 48
_WIDTH = 96
_SHOWN = "�"
# A return of its own ends a line of a text from an old machine.
_LINE_ENDS = "\n\r"

_CONTROLS = (*range(0x20), *range(0x7F, 0xA0), 0x2028, 0x2029)
# Marks of writing direction can turn a line round, so that a figure reads as another.
_DIRECTIONS = (0x61C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A))
_BLANKS = tuple(map(ord, "\t\n\v\f\r"))

_HIDDEN = {**dict.fromkeys(_CONTROLS + _DIRECTIONS, _SHOWN), **dict.fromkeys(_BLANKS, " ")}


def visible(text: str) -> str:
    """The text with blanks for line ends and tabs, and U+FFFD for other controls."""
    return text.translate(_HIDDEN)


def pointed_at(text: str, span: Span) -> tuple[str, str]:
    """The line on which a span starts, cut to a readable length, and the marks to go below it."""
    # Searched within bounds: a text may be one line of a million characters.
    start = span.start
    begin = max(text.rfind(end, max(0, start - _WIDTH), start) for end in _LINE_ENDS) + 1
    begins_here = begin > 0 or start <= _WIDTH
    last = (begin if begins_here else start - _LEAD) + _WIDTH
    end = min((at for one in _LINE_ENDS if (at := text.find(one, start, last)) >= 0), default=-1)
    if not begins_here or (end < 0 and start - begin > _LEAD):
        begins_here, begin = False, start - _LEAD
    if end < 0:
        end = min(begin + _WIDTH, len(text))
    ends_here = end == len(text) or text[end] in _LINE_ENDS
    lead = ("" if begins_here else "…") + visible(text[begin:start])
    marked = visible(text[start : max(start, min(span.end, end))]).rstrip()
    line = lead + visible(text[start:end]).rstrip() + ("" if ends_here else "…")
    return line, " " * columns(lead) + "^" * max(1, columns(marked))


def columns(text: str) -> int:
    """How many columns of a terminal a text takes."""
    return sum(_column(char) for char in text)


def _column(char: str) -> int:
    if unicodedata.combining(char) or unicodedata.category(char) in ("Mn", "Me", "Cf"):
        return 0
    return 2 if unicodedata.east_asian_width(char) in ("W", "F") else 1
