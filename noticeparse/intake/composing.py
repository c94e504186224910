"""Puts a text together while a file is read, and keeps where in it everything stands."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.intake.records import Place

_MOST_DOUBTS = 500


class Composed(NamedTuple):
    """A text without its hash; offsets count in it."""

    text: str
    doubts: tuple[Fault, ...] = ()
    furniture: tuple[tuple[int, int], ...] = ()
    places: tuple[Place, ...] = ()


class Composer:
    """The text so far."""

    def __init__(self) -> None:
        self._pieces: list[str] = []
        self.length = 0
        self._last = ""
        self._doubts: list[Fault] = []
        self._more: dict[str, Fault] = {}
        self._furniture: list[tuple[int, int]] = []
        self._places: list[Place] = []

    def add(self, words: str) -> None:
        """Put words behind what is there."""
        if words:
            self._pieces.append(words)
            self.length += len(words)
            self._last = (self._last + words)[-3:]

    @property
    def last(self) -> str:
        """The last character, nothing at the start."""
        return self._last[-1:]

    @property
    def cuts_word(self) -> bool:
        """Whether the line that has just ended breaks off within a word."""
        return len(self._last) == 3 and self._last[0].islower() and self._last[1:] == "-\n"

    def end_line(self) -> None:
        """What comes next begins a line."""
        if self.length and self.last != "\n":
            self.add("\n")

    def end_paragraph(self) -> None:
        """What comes next stands behind a blank line."""
        self.end_line()
        if self.length and self._last[-2:] != "\n\n":
            self.add("\n")

    def doubt(self, code: str, start: int, end: int, **values: str) -> None:
        """Say something of a stretch of the text.

        Behind very many such words, one of each kind reaches from its first stretch to its last.
        """
        if len(self._doubts) < _MOST_DOUBTS:
            self._doubts.append(Fault(code, start, end, values))
            return
        more = self._more.setdefault(code, Fault(code, start, end, values))
        self._more[code] = more._replace(start=min(more.start, start), end=max(more.end, end))

    def place(self, start: int, page: int, x_mm: float, y_mm: float) -> None:
        """What was put in from `start` on stands there on a page."""
        self._places.append(Place(start, self.length, page, round(x_mm, 1), round(y_mm, 1)))

    def mark_furniture(self, start: int) -> None:
        """What was put in from `start` on is the head or foot of a page."""
        self._furniture.append((start, self.length))

    def take(self, other: Composed) -> None:
        """Put a text that was read by itself behind what is there; its pages are no pages here."""
        shift = self.length
        self.add(other.text)
        self._doubts += [one.shifted(shift) for one in other.doubts]
        self._furniture += [(start + shift, end + shift) for start, end in other.furniture]

    def doubts_of(self, faults: Iterable[Fault]) -> None:
        """Say of the text what is to be said at these offsets."""
        self._doubts += faults

    def made(self) -> Composed:
        """All of it."""
        return Composed(
            "".join(self._pieces),
            (*self._doubts, *self._more.values()),
            tuple(self._furniture),
            tuple(self._places),
        )
