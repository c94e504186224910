"""Tables whose columns are headed by verbs: what is done is told by the column of the thing.

    POSITION               | INSERT | DELETE
    47-31.02S 125-10.44W   | rock   |
    47-31.05S 125-10.51W   |        | pile

Each row has its place and one thing; it is read under the verb of the column in which that stands.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.verbs import canonical_verb

_FEWEST = 2
_PLACES = frozenset("position positions place places location coordinates".split())
_SLACK = 1
"""Columns by which a thing may stand further left than the title of its column."""


class _Column(NamedTuple):
    """A verb that heads a column, with the bars before it and the place where it starts."""

    verb: Element
    cell: int
    start: int


def with_verb_columns(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, each row of such a table under its verb."""
    found: list[Line] = []
    columns: list[_Column] = []
    titles_at = 0
    for line in lines:
        if line.is_blank:
            columns = []
            found.append(line)
        elif titles := _titles(text, line):
            columns, titles_at = titles, len(found)
            found.append(line)
        elif columns and (rows := list(_rows(text, line, columns))):
            # Titles whose rows are read command nothing else.
            found[titles_at] = found[titles_at]._replace(elements=())
            found += rows
        else:
            columns = columns if line.has_only("rule", "bar") else []
            found.append(line)
    return found


def _titles(text: str, line: Line) -> list[_Column]:
    """The verbs that head columns beside that of the places; empty for other lines."""
    told = [one for one in line.elements if one.kind != "bar"]
    verbs = [one for one in told if one.kind == "verb"]
    if len(verbs) < _FEWEST or len(told) != len(verbs) + 1:
        return []
    place = next(one for one in told if one.kind != "verb")
    words = text[place.start : place.end].lower().strip(" :.").split()
    apart = all(one.gap for one in verbs) and not any(_says_more(text, one) for one in verbs)
    if not apart or place.kind != "words" or not words or words[0] not in _PLACES:
        return []
    if any(canonical_verb(text[one.start : one.end]) is None for one in verbs):
        return []
    return [_Column(one, _cell(line, one), one.start - line.start) for one in verbs]


def _says_more(text: str, verb: Element) -> bool:
    return text[verb.start : verb.end].rstrip().endswith((":", "."))


def _cell(line: Line, element: Element) -> int:
    """How many bars stand before an element."""
    return sum(one.kind == "bar" for one in line.elements if one.start < element.start)


def _rows(text: str, line: Line, columns: Sequence[_Column]) -> Iterator[Line]:
    """The verb of the column in which the one thing of a row stands, and the row below it."""
    if line.has("verb", "passive", "number", "key") or not line.has(*PLACES):
        return
    words = [one for one in line.elements if one.kind not in ("bar", *PLACES)]
    places = [one for one in line.elements if one.kind in PLACES]
    if not words or any(one.kind != "words" for one in words):
        return
    own = {column for one in words if (column := _column_of(line, one, columns)) is not None}
    if len(own) != 1 or any(_column_of(line, one, columns) is None for one in words):
        return
    (column,) = own
    title = column.verb
    yield line._replace(start=title.start, end=title.end, elements=(title,))
    yield line._replace(elements=(*words, *places))


def _column_of(line: Line, element: Element, columns: Sequence[_Column]) -> _Column | None:
    """The column of a verb in which an element stands, by its cell or by where it begins."""
    if line.has("bar"):
        return next((one for one in columns if one.cell == _cell(line, element)), None)
    at = element.start - line.start
    left = [one for one in columns if one.start <= at + _SLACK]
    right = [one.start for one in columns if one.start > at + _SLACK]
    fits = not right or element.end - line.start <= right[0]
    return left[-1] if left and fits else None
