"""Moves whose columns say behind each place which end it is: `from` or `to`, on two lines.

    special light-buoy    P    move from
                          Q    to

Both words are put in front of their places, so that the two lines are one item.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.verbs import canonical_verb

_MARKS = " .,:;()-"


class _Told(NamedTuple):
    """A line that ends with such a word: what stands before its places, these, and the verb."""

    before: tuple[Element, ...]
    places: tuple[Element, ...]
    verb: tuple[Element, ...]
    word: Element

    def in_order(self) -> tuple[Element, ...]:
        """The places, with the word in front of them."""
        return (self.word, *self.places)


def with_ends_in_front(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, each pair that tells both ends of a move as one line."""
    found: list[Line] = []
    at = 0
    while at < len(lines):
        pair = _pair(text, lines[at : at + 3])
        found.append(lines[at] if pair is None else pair)
        at += 1 if pair is None else 2
    return found


def _pair(text: str, lines: Sequence[Line]) -> Line | None:
    """The two lines as one, where they tell both ends and no further place stands below."""
    if len(lines) < 2 or not all(line.has(*PLACES) for line in lines[:2]):
        return None
    if len(lines) > 2 and not lines[2].is_blank and lines[2].elements[0].kind in PLACES:
        return None
    first, second = (_told(text, line) for line in lines[:2])
    if first is None or second is None or second.before or second.verb:
        return None
    if _is_old(text, first) is _is_old(text, second):
        return None
    if first.verb and not _moves(text, first.verb[0]):
        return None
    old, new = (first, second) if _is_old(text, first) else (second, first)
    elements = (*first.before, *old.in_order(), *new.in_order(), *first.verb)
    return lines[0]._replace(end=lines[1].end, elements=elements)


def _moves(text: str, verb: Element) -> bool:
    return canonical_verb(text[verb.start : verb.end]) == "move"


def _is_old(text: str, told: _Told) -> bool:
    return _word(text, told.word) == "from"


def _word(text: str, element: Element) -> str:
    return text[element.start : element.end].strip(_MARKS).lower()


def _told(text: str, line: Line) -> _Told | None:
    """The line, where `from` or `to` ends it in a column of its own or behind a verb in one."""
    *rest, last = line.elements
    if last.kind != "words" or _word(text, last) not in ("from", "to"):
        return None
    verb = tuple(rest[-1:]) if rest and rest[-1].kind == "verb" else ()
    rest = rest[:-1] if verb else rest
    if not (verb[0] if verb else last).gap:
        return None
    first = len(rest)
    while first and rest[first - 1].kind in PLACES:
        first -= 1
    # More places would be a line, which has other ends.
    if not _is_one_place(rest[first:]) or any(e.kind in PLACES for e in rest[:first]):
        return None
    return _Told(tuple(rest[:first]), tuple(rest[first:]), verb, last)


def _is_one_place(places: Sequence[Element]) -> bool:
    kinds = [one.kind for one in places]
    return len(kinds) == 1 or kinds == ["half", "half"]
