"""Hemispheres that only the titles of a table state: `Latitude South`, `Long. (W)`.

Figures under such a title are read with the hemisphere of their column; nothing else ever lends a
coordinate its hemisphere.  Below a row with degrees, figures may be minutes alone, and so they are
below titles that state the degrees: `Lat. 46° S`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.line.elements import Element
from noticeparse.readers.coordinates import Coordinate, read_coordinate
from noticeparse.readers.positions import Point, join_coordinates, read_signed

_SIGNED = re.compile(r"[+-]?[0-9]{1,3}\.[0-9]{2,9}")
_LETTERS = {"north": "N", "south": "S", "east": "E", "west": "W"}
_AXES = {"latitude": frozenset("NS"), "longitude": frozenset("EW")}


_OF_DEGREES = re.compile(
    r"(?P<word>lat(?:itude)?\b\.?:?|long?(?:itude)?\b\.?:?|) ?\(?"
    r"(?:(?P<before>[NSEW]) ?)?(?P<degrees>[0-9]{1,3}) ?(?:°|deg(?:rees|s)?\b\.?) ?-{0,2} ?"
    r"(?P<behind>[NSEW])?\)?",
    re.IGNORECASE,
)
_MINUTES = re.compile(
    r"[0-9]{1,2}(?:[.,][0-9]{1,4})? ?'?|[0-9]{1,2}'[.,][0-9]{1,4}"
    r"|[0-9]{1,2}' ?[0-9]{1,2}(?:[.,][0-9]{1,3})? ?\""
)
"""Minutes alone, or minutes and seconds with their marks."""


class Degrees(NamedTuple):
    """What a title says that states degrees, `Lat. 46° S`."""

    role: str
    """`latitude` or `longitude`."""
    degrees: int
    letter: str
    has_word: bool
    """Whether it names latitude or longitude by a word."""


def degrees_in(title: str) -> Degrees | None:
    """The degrees that a title of a column of minutes states, or None."""
    found = _OF_DEGREES.fullmatch(title.strip())
    if found is None or (found["before"] is None) == (found["behind"] is None):
        return None
    letter = (found["before"] or found["behind"]).upper()
    role = "latitude" if letter in "NS" else "longitude"
    is_named = not found["word"] or role.startswith(found["word"][:3].lower())
    return Degrees(role, int(found["degrees"]), letter, bool(found["word"])) if is_named else None


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
    degrees: tuple[int | None, int | None] = (None, None),
) -> list[Element]:
    """The coordinates of the cells of a row, read with the hemispheres of their columns.

    `letters` are those of latitude and longitude, `above` the position in the row above; `more`
    where the row is one more place of the feature above, and nothing else; `degrees` are those
    that the titles state.
    """
    figures = [part for element in elements for part in _figures(text, element)]
    if len(figures) != 2 or any(any(c.isalpha() for c in words) for words, _ in figures):
        return elements
    numbers = [words for words, _ in figures]
    stated = _with_degrees(numbers, degrees)
    is_told = any(one is not None for one in degrees)
    kind, code = _under_degrees(numbers, degrees) if is_told else _told(numbers, above, more)
    first, second = (
        _coordinate(kind, words, letter, start, lead)
        for (words, start), letter, lead in zip(figures, letters, stated, strict=True)
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


def _with_degrees(numbers: list[str], degrees: Sequence[int | None]) -> list[str]:
    """The degrees to be set before each of two figures: those of its title, before minutes."""
    pairs = zip(numbers, degrees, strict=True)
    return [f"{one}° " if one is not None and _MINUTES.fullmatch(n) else "" for n, one in pairs]


def _under_degrees(numbers: list[str], degrees: Sequence[int | None]) -> tuple[str, str | None]:
    """What two figures are below titles with degrees, and what to say of it.

    One may state degrees anew where a row leaves those of the titles, but others than the next
    ones are none: `18 42` may be minutes and seconds.  Both like the titles may be degrees alone.
    """
    known = [
        (number, one) for number, one in zip(numbers, degrees, strict=True) if one is not None
    ]
    near = [abs(int(number[: _lead(number)] or -9) - one) <= 1 for number, one in known]
    alone = [_MINUTES.fullmatch(number) is not None for number, _ in known]
    if not all(one or other for one, other in zip(near, alone, strict=True)):
        return "COORDINATE", "position-shared-degrees-unknown"
    is_bare = all(near) and all(alone) and not any("'" in number for number in numbers)
    return "COORDINATE", "position-shared-degrees-doubtful" if is_bare else None


def _lead(number: str) -> int:
    """How many figures open a number."""
    return next((i for i, char in enumerate(number) if not char.isdigit()), len(number))


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


def _coordinate(kind: str, words: str, letter: str, start: int, degrees: str) -> Coordinate:
    read = read_coordinate(kind, f"{degrees}{words} {letter}", start)
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
