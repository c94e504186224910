"""Hemispheres that only the titles of a table state: `Latitude South`, `Long. (W)`.

Figures under such a title are read with the hemisphere of their column; nothing else ever lends a
coordinate its hemisphere.  Below a row with degrees, figures may be minutes alone.
"""

from __future__ import annotations

import re

from noticeparse.faults import Fault
from noticeparse.layout.line.elements import Element
from noticeparse.readers.coordinates import Coordinate, read_coordinate
from noticeparse.readers.positions import Point, join_coordinates, read_signed

_SIGNED = re.compile(r"[+-]?[0-9]{1,3}\.[0-9]{2,9}")
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


def with_hemispheres(
    text: str,
    elements: list[Element],
    letters: tuple[str, str],
    above: Point | None,
    *,
    more: bool,
) -> list[Element]:
    """The coordinates of the cells of a row, read with the hemispheres of their columns.

    `letters` are those of latitude and longitude, `above` the position in the row above; `more`
    where the row is one more place of the feature above, and nothing else.
    """
    figures = [part for element in elements for part in _figures(text, element)]
    if len(figures) != 2 or any(any(c.isalpha() for c in words) for words, _ in figures):
        return elements
    kind, code = _told([words for words, _ in figures], above, more)
    first, second = (
        _coordinate(kind, words, letter, start)
        for (words, start), letter in zip(figures, letters, strict=True)
    )
    written = f"{first.text} {second.text}"
    reading = join_coordinates(first, second, written, above)
    if code is not None:
        fault = Fault(code, reading.start, reading.end, {"written": written})
        reading = reading._replace(faults=(*reading.faults, fault))
    if code == "position-shared-degrees-unknown":
        reading = reading._replace(point=None)
    end = elements[-1].end
    point = Element("point", elements[0].start, end, elements[0].gap, reading)
    return [point]


def _told(numbers: list[str], above: Point | None, more: bool) -> tuple[str, str | None]:
    """What two figures are, and what to say of it: lone ones may be minutes without degrees."""
    wholes = [number.replace(",", ".").partition(".")[0] for number in numbers]
    lone = [whole.isdigit() and len(whole) <= 2 for whole in wholes]
    if not all(lone):
        with_minutes = [" " in whole.strip() for whole in wholes]
        # `12.34   123 45.67`: minutes beside degrees and minutes are no degrees.
        is_mixed = any(lone) and any(with_minutes)
        return "COORDINATE", "position-shared-degrees-unknown" if is_mixed else None
    if above is None or all(len(one.fields) == 1 and not one.decimals for one in above.last):
        # 12.34 under `Lat. S`: minutes whose degrees stand elsewhere, or far too coarse a place.
        are_coarse = all(
            len(number) - len(whole) <= 3 for number, whole in zip(numbers, wholes, strict=True)
        )
        return "COORDINATE", "position-shared-degrees-unknown" if are_coarse else None
    if not all(len(one.fields) > 1 and one.unit == 1 for one in above.last):
        return "COORDINATE", None
    pairs = zip(wholes, above.last, strict=True)
    if all(abs(int(whole) - last.fields[0]) <= 1 for whole, last in pairs):
        return "COORDINATE", "position-shared-degrees-doubtful"
    return "COORDINATE_MINUTES", None if more else "position-degrees-from-above"


def _figures(text: str, element: Element) -> list[tuple[str, int]]:
    """The figures of an element, one stretch for each column it reaches over, with its start."""
    found: list[tuple[str, int]] = []
    at = element.start
    for part in text[element.start : element.end].replace("\t", "  ").split("  "):
        if part.strip(" ,"):
            found.append((part.strip(" ,"), at + len(part) - len(part.lstrip())))
        at += len(part) + 2
    return found


def _coordinate(kind: str, words: str, letter: str, start: int) -> Coordinate:
    read = read_coordinate(kind, f"{words} {letter}", start)
    # The letter stands in the title; the coordinate as written ends with its figures.
    return read._replace(text=words)


def with_longitude_first(text: str, element: Element) -> Element:
    """A pair with signs under titles of which that of the longitude stands first."""
    words = text[element.start : element.end]
    figures = _SIGNED.findall(words)
    if element.kind != "point" or any(c.isalpha() for c in words) or len(figures) != 2:
        return element
    first, second = figures
    between = words[len(first) : len(words) - len(second)]
    return element._replace(value=read_signed(f"{second}{between}{first}", element.start))
