"""Marks of notes on items, and the lines of the notes: `wreck¹`, and below `¹ Provisional`.

A raised figure behind a word, a dagger, stars at the end of a line, and `(see note 1)` are marks
where they stand with an item.  A line that opens with the mark of one above is its note: it goes
on no chart.  A raised figure behind a figure or a unit is none.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from noticeparse.readers.features import has_kind
from noticeparse.readers.verbs import canonical_verb

_RAISED = r"[¹²³⁴⁵⁶⁷⁸⁹]{1,2}"
_NUMBERED = r"(?:foot)?notes? \(?(?P<{}>[0-9]{{1,2}}|[a-z]|[ivx]{{1,4}})\b"
_MARK = re.compile(
    rf"(?P<sign>(?<![0-9 ][a-z])(?<![0-9][a-z])(?<=[A-Za-z)\].;,\"'])(?<!\bkm)(?<!\bm){_RAISED}"
    rf"|(?<=[A-Z)\].;,\"'][ \t]){_RAISED}(?=[ \t]*(?:\n|\Z))"
    r"|[†‡§]{1,2}|(?<=[^*\n])(?<! \*)\*{1,3}(?=\)?[ \t]*(?:\n|\Z)))"
    rf"|[(\[](?:see |s\. )?{_NUMBERED.format('number')}[^()\n]{{0,20}}[)\]]"
    rf"|\b(?:see|refer to|as per) {_NUMBERED.format('told')}",
    re.IGNORECASE,
)
_NOTE = re.compile(
    rf"[ \t]*(?:\(?(?P<sign>{_RAISED}|[†‡§]{{1,2}}|\*{{1,3}})\)?"
    rf"|{_NUMBERED.format('number')}[.):\] –-]*)[ \t]*(?P<said>[A-Za-z(][^\n]*)",
    re.IGNORECASE,
)
_BRACKETED_MARK = re.compile(r"(?<=[ \t])[(\[]?(?P<mark>[a-z]|[1-9])[)\]](?=[ \t]*(?:\n|\Z))")
_BRACKETED_NOTE = re.compile(
    r"[ \t]*[(\[]?(?P<mark>[a-z]|[1-9])[)\]][ \t]{1,8}(?P<said>[A-Za-z][^\n]{1,200})"
)
_HEMISPHERE = re.compile(r"(?:[0-9'\"′″] ?[NSEW]|[EW])\.?[ \t]{1,8}$")
_PLACED = re.compile(r"[0-9]['°.,0-9 -]{2,12}[NSEW]\b")
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


def bracketed_marks(text: str, start: int, end: int) -> Iterator[Mark]:
    """Letters and figures with a bracket that close a line behind its place: `rock P a)`.

    They may be the letter of the place as well; a mark is what has its note below.
    """
    for found in _BRACKETED_MARK.finditer(text, start, end):
        if _HEMISPHERE.search(text, max(0, found.start() - 12), found.start()) is not None:
            yield Mark(f"({found['mark']})", found.span())


def bracketed_note(text: str, start: int, end: int) -> tuple[str, str] | None:
    """The mark with which a line opens as such a note, `a) PA`; None for a thing and its place."""
    found = _BRACKETED_NOTE.match(text, start, end)
    if found is None or has_kind(found["said"]) or _PLACED.search(found["said"]) is not None:
        return None
    first = found["said"].split()[0].strip(",.:")
    return None if canonical_verb(first) is not None else (f"({found['mark']})", found["said"])


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


def is_bracketed_footnote(text: str, start: int, end: int) -> bool:
    """Whether a line is the note of a letter or figure behind a place above: `a) PA`."""
    note = bracketed_note(text, start, end)
    if note is None or '"' in note[1]:
        return False
    above = max(0, start - FARTHEST)
    return any(mark.key == note[0] for mark in bracketed_marks(text, above, start))
