"""Lines and the elements they hold.

In comes the repaired text; out come its lines, each with its elements: points, labels, references,
notice numbers, chart words, verbs, and the stretches of words between them.  A word counts as a verb
or a chart head only where one may stand: at the start of a line, behind a wide gap, a bar, a
semicolon, a full stop or a position.  What the line is for is not decided here.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any, Literal, NamedTuple

from lark import Lark, Token

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.coordinates import Coordinate, read_coordinate
from noticeparse.readers.positions import (
    Point,
    PointReading,
    join_coordinates,
    read_signed,
    share_latitude,
)

ElementKind = Literal[
    "words", "point", "half", "label", "reference", "same", "verb", "passive", "key", "number",
    "chart", "semicolon", "bar", "rule",
]  # fmt: skip


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
        return any(element.kind in kinds for element in self.elements)


_COORDINATES = frozenset(
    {
        "COORDINATE", "COORDINATE_HEMISPHERE_FIRST", "COORDINATE_MINUTES", "COORDINATE_DOUBTFUL",
        "COORDINATE_BARE", "COORDINATE_CUT",
    }
)  # fmt: skip
_KINDS: dict[str, ElementKind] = {
    "REFERENCE": "reference", "SAME_POSITION": "same", "LABEL": "label", "NOTICE_NUMBER": "number",
    "CHART": "chart", "VERB": "verb", "PASSIVE": "passive", "KEY": "key",
    "SEMICOLON": "semicolon", "BAR": "bar", "RULE": "rule",
    "WORDS": "words", "CHUNK": "words", "OTHER": "words",
}  # fmt: skip
_BEFORE_AN_OPENING = frozenset(
    {"label", "semicolon", "bar", "point", "half", "reference", "same", "number", "key", "rule"}
)


@cache
def lexer() -> Lark:
    """The lexer of the line grammar."""
    return Lark(
        grammar.source("line"),
        parser=None,
        lexer="basic",
        import_paths=[grammar.from_folder],
    )


def read_lines(text: str) -> Iterator[Line]:
    """The lines of a repaired text, blank ones included, in order."""
    reader = _LineReader(text)
    for start, end in _chunks(text):
        yield from reader.chunk(start, end)


def _chunks(text: str, least: int = 2000) -> Iterator[tuple[int, int]]:
    """Stretches that end at a blank line, so that no coordinate is cut."""
    start = 0
    while start < len(text):
        end = text.find("\n\n", start + least)
        end = len(text) if end < 0 else end + 1
        yield start, end
        start = end


class _LineReader:
    def __init__(self, text: str) -> None:
        self._text = text
        self._row = 0
        self._before: Point | None = None
        self._awaits_longitude = False
        """Whether the last coordinate of the lines before is a latitude without its longitude."""

    def chunk(self, start: int, end: int) -> Iterator[Line]:
        line_start = start
        tokens: list[tuple[str, int, int]] = []
        for token in lexer().lex(self._text[start:end]):
            assert token.start_pos is not None
            assert token.end_pos is not None
            at, to = token.start_pos + start, token.end_pos + start
            if token.type == "BREAK":
                yield self._line(line_start, at, tokens)
                line_start, tokens = to, []
            else:
                tokens.append((token.type, at, to))
        if line_start < end:
            yield self._line(line_start, end, tokens)

    def _line(self, start: int, end: int, tokens: list[tuple[str, int, int]]) -> Line:
        row = self._row
        # A coordinate may hold the line break; the lines it takes count all the same.
        self._row += 1 + self._text.count("\n", start, end)
        elements = self._elements(start, tokens)
        places = [element for element in elements if element.kind in ("half", "point")]
        if places:
            last = places[-1]
            self._awaits_longitude = last.kind == "half" and last.value.axis == "latitude"
        return Line(row, start, end, tuple(elements))

    def _elements(self, line_start: int, tokens: list[tuple[str, int, int]]) -> list[Element]:
        found: list[Element] = []
        text = self._text
        for kind, start, end in tokens:
            before = found[-1] if found else None
            gap = before is None or before.kind == "bar" or is_wide(text, before.end, start)
            if kind in _COORDINATES:
                self._coordinate(found, read_coordinate(kind, text[start:end], start), gap)
            elif kind in ("ISO_POINT", "SIGNED_PAIR", "BARE_PAIR"):
                found.append(self._whole(kind, start, end, gap))
            else:
                element = Element(_KINDS[kind], start, _trimmed(text, start, end), gap)
                self._add(found, element)
        return found

    def _whole(self, kind: str, start: int, end: int, gap: bool) -> Element:
        if kind == "BARE_PAIR":
            bare = read_coordinate("COORDINATE_BARE", self._text[start:end], start)
            return Element("point", start, end, gap, PointReading(None, bare.faults, start, end))
        return self._point(read_signed(self._text[start:end], start), gap)

    def _point(self, reading: PointReading, gap: bool) -> Element:
        if reading.point is not None:
            self._before = reading.point
        return Element("point", reading.start, reading.end, gap, reading)

    def _coordinate(self, found: list[Element], one: Coordinate, gap: bool) -> None:
        """Join it to the half before it, else keep it as a half."""
        end = one.start + len(one.text)
        if len(found) > 1 and found[-2].kind == "half" and self._is_link(found[-1]):
            found.pop()
        before = found[-1] if found else None
        if before is None or before.kind != "half" or self._is_of_line_above(found, one):
            found.append(Element("half", one.start, end, gap, one))
            return
        found.pop()
        written = " ".join(self._text[before.start : end].split())
        reading = join_coordinates(before.value, one, written, self._before)
        found.append(self._point(reading._replace(start=before.start, end=end), before.gap))

    def _is_of_line_above(self, found: list[Element], one: Coordinate) -> bool:
        """Whether the half before is the longitude that the line above still waits for."""
        halves = [element for element in found if element.kind in ("half", "point")]
        return (
            self._awaits_longitude
            and len(halves) == 1
            and halves[0].value.axis == "longitude"
            and one.axis == "latitude"
        )

    def _is_link(self, element: Element) -> bool:
        """Whether an element may stand between latitude and longitude."""
        if element.kind in ("bar", "semicolon"):
            return True
        words = self._text[element.start : element.end]
        return element.kind == "words" and words in (",", "/", "-", "&")

    def _add(self, found: list[Element], element: Element) -> None:
        before = found[-1] if found else None
        if element.kind != "words" and not self._may_stand(element, before):
            element = element._replace(kind="words")
        if element.kind == "words" and before is not None and before.kind == "words":
            if not element.gap:
                found[-1] = before._replace(end=element.end)
                return
        if element.kind == "label":
            letter = self._text[element.start : element.end].strip("().")
            element = element._replace(value=letter)
        found.append(element)

    def _may_stand(self, element: Element, before: Element | None) -> bool:
        """Whether an element of this kind may stand here; else it is plain words."""
        if element.kind == "label":
            letter = self._text[element.start : element.end].strip("().")
            touches = before is not None and before.end == element.start
            return not touches and (element.gap or (letter.isalpha() and letter.islower()))
        if element.kind in ("verb", "chart"):
            if element.gap or before is None or before.kind in _BEFORE_AN_OPENING:
                return True
            return self._text[before.end - 1] in ".:;)]>" or self._is_dash(before)
        return True

    def _is_dash(self, element: Element) -> bool:
        return self._text[element.start : element.end].endswith(" -")


def is_wide(text: str, end: int, start: int) -> bool:
    """Whether the blank between two elements is a gap of columns."""
    return start - end >= 2 or "\t" in text[end:start]


def _trimmed(text: str, start: int, end: int) -> int:
    while end > start and text[end - 1] in " \t\n":
        end -= 1
    return end


def join_halves(first: Element, second: Element, before: Point | None) -> Element:
    """Two halves that a line end or a page foot has parted."""
    written = f"{first.value.text} {second.value.text}"
    reading = join_coordinates(first.value, second.value, written, before)
    return Element("point", first.start, second.end, first.gap, reading)


def lone_half(half: Element, before: Point | None) -> PointReading:
    """A half without a partner: a longitude may share the latitude before it."""
    one: Coordinate = half.value
    if not one.is_readable:
        return PointReading(None, one.faults, half.start, half.end)
    if one.axis == "longitude" and one.shares_degrees and before is not None:
        return share_latitude(one, before)
    missing = "longitude" if one.axis == "latitude" else "latitude"
    values = {"written": one.text, "axis": missing}
    fault = Fault("position-half-missing", half.start, half.end, values)
    return PointReading(None, (*one.faults, fault), half.start, half.end)
