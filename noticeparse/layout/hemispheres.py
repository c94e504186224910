"""Hemispheres that only the titles of a table state: `Latitude South`, `Long. (W)`.

Figures under such a title are read with the hemisphere of their column; nothing else ever lends a
coordinate its hemisphere.
"""

from __future__ import annotations

from noticeparse.layout.lines import Element
from noticeparse.readers.coordinates import Coordinate, read_coordinate
from noticeparse.readers.positions import join_coordinates

_LETTERS = {"north": "N", "south": "S", "east": "E", "west": "W"}
_AXES = {"latitude": frozenset("NS"), "longitude": frozenset("EW")}


def hemisphere_in(title: str, role: str | None) -> str | None:
    """The hemisphere letter that a title of a latitude or longitude column states, or None."""
    allowed = _AXES.get(role or "", frozenset())
    for word in title.replace("(", " ").replace(")", " ").replace(".", " ").split():
        letter = _LETTERS.get(word.lower(), word if len(word) == 1 else "")
        if letter in allowed:
            return letter
    return None


def with_hemispheres(text: str, elements: list[Element], lat: str, lon: str) -> list[Element]:
    """The coordinates of the cells of a row, read with the hemispheres of their columns."""
    figures = [part for element in elements for part in _figures(text, element)]
    if len(figures) != 2 or any(any(c.isalpha() for c in words) for words, _ in figures):
        return elements
    first, second = (
        _coordinate(words, letter, start)
        for (words, start), letter in zip(figures, (lat, lon), strict=True)
    )
    written = f"{first.text} {second.text}"
    reading = join_coordinates(first, second, written, None)
    end = elements[-1].end
    point = Element("point", elements[0].start, end, elements[0].gap, reading)
    return [point]


def _figures(text: str, element: Element) -> list[tuple[str, int]]:
    """The figures of an element, one stretch for each column it reaches over, with its start."""
    found: list[tuple[str, int]] = []
    at = element.start
    for part in text[element.start : element.end].replace("\t", "  ").split("  "):
        if part.strip(" ,"):
            found.append((part.strip(" ,"), at + len(part) - len(part.lstrip())))
        at += len(part) + 2
    return found


def _coordinate(words: str, letter: str, start: int) -> Coordinate:
    read = read_coordinate("COORDINATE", f"{words} {letter}", start)
    # The letter stands in the title; the coordinate as written ends with its figures.
    return read._replace(text=words)
