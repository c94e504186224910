"""Lines, and the elements that they hold."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any, NamedTuple

from noticeparse.layout.line.element_kinds import ElementKind


class Element(NamedTuple):
    """Something a line holds; offsets count in the repaired text."""

    kind: ElementKind
    start: int
    end: int
    gap: bool
    """Whether it opens its line or stands behind two blanks, a tab or a bar."""
    value: Any = None
    """PointReading of a point, Coordinate of a half, letters of a label."""


class Line(NamedTuple):
    """One physical line."""

    row: int
    start: int
    end: int
    elements: tuple[Element, ...]

    @property
    def is_blank(self) -> bool:
        """Whether nothing stands on the line."""
        return not self.elements

    def has(self, *kinds: ElementKind) -> bool:
        """Whether an element of one of these kinds stands on the line."""
        # A plain loop: this is asked for every line again and again.
        for element in self.elements:  # noqa: SIM110
            if element.kind in kinds:
                return True
        return False

    def has_only(self, *kinds: ElementKind) -> bool:
        """Whether all elements of the line are of these kinds."""
        for element in self.elements:  # noqa: SIM110
            if element.kind not in kinds:
                return False
        return True

    def indent(self, text: str) -> int:
        """How many blanks stand before what is written on the line."""
        written = text[self.start : self.end]
        return len(written) - len(written.lstrip())


def words_of(text: str, elements: Iterable[Element]) -> str:
    """The words of some elements, joined by blanks."""
    return " ".join([text[e.start : e.end] for e in elements])


def has_words(text: str, element: Element) -> bool:
    """Whether an element holds more than marks that part others."""
    return element.kind not in ("bar", "rule") and bool(
        text[element.start : element.end].strip(" .,:;-|")
    )


def holds_more(found: Sequence[Element]) -> bool:
    """Whether a line holds more than a letter or a mark so far."""
    return any(element.kind not in ("label", "bar") for element in found)


def is_count(text: str, element: Element) -> bool:
    """Whether an element counts what stands behind it: `(1)`, `Article 2.`; a mark does not."""
    first = text[element.start]
    is_told = element.kind == "bar" and (first.isalpha() or first == "§")
    return element.kind == "label" or is_told


def followings(elements: Sequence[Element]) -> list[tuple[Element, Element | None]]:
    """Each element of a line with the one behind it, bars left out."""
    found: list[tuple[Element, Element | None]] = []
    following: Element | None = None
    for element in reversed(elements):
        found.append((element, following))
        following = element if element.kind != "bar" else following
    return found[::-1]


def last_verb(elements: Iterable[Element]) -> int:
    """Where the last verb of a line stands, -1 where none does."""
    return max((e.start for e in elements if e.kind == "verb"), default=-1)
