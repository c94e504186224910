"""Things named on a line of their own, with rows of verbs and places below.

`Wreck` above `Delete P` and `Insert Q`: each row is an item of its own, of the thing above it.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import is_connector

_FEWEST = 2
"""Rows; one alone may be the last line of an item."""


def with_things_above(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; where a body is made of such things alone, each row holds the words above it."""
    told = [line for line in lines if not line.is_blank]
    if not told or not _is_thing(text, told[0]):
        return list(lines)
    heads = [_is_thing(text, line) for line in told]
    rows = [_is_row(text, line) for line in told]
    parts = zip(told, heads, rows, strict=True)
    is_whole = all(a or b or _goes_on(text, one) for one, a, b in parts)
    if not is_whole or heads[-1] or sum(rows) < _FEWEST:
        return list(lines)
    found: list[Line] = []
    words: list[Element] = []
    above = False
    for line in lines:
        if line.is_blank:
            found.append(line)
        elif _is_thing(text, line):
            words = [*words, *line.elements] if above else list(line.elements)
            above = True
        elif _is_row(text, line):
            verb, *rest = line.elements
            found.append(line._replace(elements=(verb, *words, *rest)))
            above = False
        else:
            found.append(line)
    return found


def _is_thing(text: str, line: Line) -> bool:
    if line.is_blank or not line.has_only("words"):
        return False
    words = text[line.elements[0].start : line.elements[-1].end]
    return not words.endswith((":", ".")) and has_kind(words) and leads_feature(words)


def _is_row(text: str, line: Line) -> bool:
    """Whether a line is a verb with its place, and names no thing itself."""
    if line.is_blank or line.elements[0].kind != "verb":
        return False
    rest = line.elements[1:]
    place = next((e for e in rest if not _links(text, e)), None)
    if place is None or place.kind not in PLACES:
        return False
    said = [text[e.start : e.end] for e in rest if e.kind == "words"]
    named = any(has_kind(words) and not words.startswith(("with ", "depth ")) for words in said)
    return not named and all(e.kind != "verb" for e in rest)


def _goes_on(text: str, line: Line) -> bool:
    """Whether a line holds further places of the row above."""
    return all(e.kind in PLACES or _links(text, e) for e in line.elements)


def _links(text: str, element: Element) -> bool:
    if element.kind == "label":
        return True
    return element.kind == "words" and is_connector(text[element.start : element.end])
