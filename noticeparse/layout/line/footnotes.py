"""Marks of notes on items, and the lines of the notes: `wreck¹`, and below `¹ Provisional`.

A raised figure behind a word, a dagger, stars at the end of a line, and `(see note 1)` are marks
where they stand with an item.  A line that opens with the mark of one above is its note: it goes
on no chart.  A raised figure behind a figure or a unit is none.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

_RAISED = r"[¹²³⁴⁵⁶⁷⁸⁹]{1,2}"
_NUMBERED = r"(?:foot)?notes? \(?(?P<{}>[0-9]{{1,2}}|[a-z]|[ivx]{{1,4}})\b"
_MARK = re.compile(
    rf"(?P<sign>(?<![0-9 ][a-z])(?<![0-9][a-z])(?<=[A-Za-z)\].;,\"'])(?<!\bkm)(?<!\bm){_RAISED}"
    r"|[†‡§]{1,2}|(?<=[^*\n])(?<! \*)\*{1,3}(?=[ \t]*(?:\n|\Z)))"
    rf"|[(\[](?:see |s\. )?{_NUMBERED.format('number')}[^()\n]{{0,20}}[)\]]"
    rf"|\b(?:see|refer to|as per) {_NUMBERED.format('told')}",
    re.IGNORECASE,
)
_NOTE = re.compile(
    rf"[ \t]*(?:\(?(?P<sign>{_RAISED}|[†‡§]{{1,2}}|\*{{1,3}})\)?"
    rf"|{_NUMBERED.format('number')}[.):\] –-]*)[ \t]*(?P<said>[A-Za-z(][^\n]*)",
    re.IGNORECASE,
)
# Most stretches hold no sign of a mark, and are not read for one.
_SIGNS = frozenset("¹²³⁴⁵⁶⁷⁸⁹†‡§*")
FARTHEST = 6000
"""Characters by which a note stands below its mark at most."""


class Mark(NamedTuple):
    """A mark with what tells it from others, where it stands."""

    key: str
    span: tuple[int, int]


def marks_in(text: str, start: int, end: int) -> Iterator[Mark]:
    """The marks of notes in a stretch of the text, which reaches to the end of a line."""
    words = text[start:end]
    if _SIGNS.isdisjoint(words) and "note" not in words.lower():
        return
    for found in _MARK.finditer(text, start, end):
        number = found["number"] or found["told"]
        key = f"note {number.lower()}" if number else found["sign"]
        yield Mark(key, found.span())


def note_of(text: str, start: int, end: int) -> tuple[str, str] | None:
    """The mark with which a line opens as a note, and what the note says; else None."""
    found = _NOTE.match(text, start, end)
    if found is None:
        return None
    return found["sign"] or f"note {found['number'].lower()}", found["said"]


def is_footnote(text: str, start: int, end: int) -> bool:
    """Whether a line is the note of a mark that stands above it."""
    note = note_of(text, start, end)
    if note is None or '"' in note[1]:
        return False
    above = max(0, start - FARTHEST)
    return any(mark.key == note[0] for mark in marks_in(text, above, start))
