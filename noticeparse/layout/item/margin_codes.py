"""Codes of sources beside the items: in a column, at the ends of lines, or below them in brackets.

They say who reported a change and nothing of the feature.  A few lines must have one, and none of
them may be a word of the trade: `ED`, `SD`, `NE`.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.list_numbers import OF_LIST
from noticeparse.readers.features import value_property
from noticeparse.readers.marks import read_colour_letters
from noticeparse.readers.offsets import direction_in
from noticeparse.readers.places import is_connector

_FEWEST = 3
_FEWEST_IN_BRACKETS = 2
_LONGEST = 5
_LONGEST_IN_BRACKETS = 24
_FEWEST_LETTERS = 2
_FEWEST_FIGURES = 4
_OF_THE_TRADE = frozenset({"PA", "PD", "ED", "SD", "REP", "UNLIT", "LWS", "HWS"})


def margin_codes(text: str, lines: Sequence[Line]) -> frozenset[int]:
    """The offsets at which codes of sources stand, and numbers of the list of lights."""
    found = {e.start for line in lines for e in line.elements if e.value == OF_LIST}
    for fewest, groups in (
        (_FEWEST, _at_ends(text, lines)),
        (_FEWEST, _in_columns(text, lines)),
        (_FEWEST_IN_BRACKETS, _in_brackets(text, lines)),
    ):
        starts = list(groups)
        if len(starts) >= fewest:
            found.update(starts)
    return frozenset(found)


def _at_ends(text: str, lines: Sequence[Line]) -> Iterator[int]:
    """Behind the places: `TWD`."""
    for line in lines:
        if len(line.elements) > 1 and line.elements[-2].kind in PLACES:
            last = line.elements[-1]
            if _is_code(text, last):
                yield last.start


def _in_columns(text: str, lines: Sequence[Line]) -> Iterator[int]:
    """Between feature and place, all in one column: `ADD  Mooring buoy   TCG  at  P`."""
    found: list[tuple[int, int]] = []
    for line in lines:
        at = next((i for i, e in enumerate(line.elements) if e.kind in PLACES), 0)
        while at and line.elements[at - 1].kind == "words" and _links(text, line.elements[at - 1]):
            at -= 1
        if at and _is_code(text, line.elements[at - 1]):
            code = line.elements[at - 1]
            found.append((code.start - line.start, code.start))
    columns = Counter(column for column, _ in found)
    return (start for column, start in found if columns[column] >= _FEWEST)


def _in_brackets(text: str, lines: Sequence[Line]) -> Iterator[int]:
    """Alone below an item: `(TH2026-114.01)`."""
    for line in lines:
        words = text[line.start : line.end].strip()
        inner = words[1:-1]
        if words[:1] + words[-1:] != "()" or len(words) > _LONGEST_IN_BRACKETS:
            continue
        kinds = Counter(_kind(character) for character in inner)
        enough = kinds["letter"] >= _FEWEST_LETTERS and kinds["figure"] >= _FEWEST_FIGURES
        if enough and not kinds["other"] and _OF_THE_TRADE.isdisjoint(inner.split()):
            yield line.elements[0].start


def _kind(character: str) -> str:
    if character.isdigit():
        return "figure"
    if character.isupper():
        return "letter"
    return "mark" if character in " .-/" else "other"


def _links(text: str, element: Element) -> bool:
    return is_connector(text[element.start : element.end])


def _is_code(text: str, element: Element) -> bool:
    if element.kind != "words" or not element.gap:
        return False
    code = text[element.start : element.end]
    if not (code.isalpha() and code.isupper() and 1 < len(code) <= _LONGEST):
        return False
    if read_colour_letters(code.removesuffix("VS").removesuffix("HS")) is not None:
        # `BYB`, `RWVS`: the colours of a mark (INT 1, section Q).
        return False
    return value_property(code) == {"unknown"} and direction_in(code) is None
