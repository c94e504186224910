"""Numbers of the list of lights in a column between the verbs and what they are of.

    AMEND    2208    Corvane Head, light     P
    DELETE   2209.5  Quill Sound, light-buoy  Q

They say where an aid stands in a book, and nothing of the chart.  Only rows of aids to navigation
are read so, under the head of a chart, each with a number that is not before the one above.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import has_kind, read_feature

_NUMBER = re.compile(r"(?P<number>[1-9][0-9]{2,4}(?:\.[0-9]{1,2})?)(?=[ \t]{1,20}[A-Z]|$)")
OF_LIST = "number of a list"
"""The value of such a mark."""
_FEWEST = 2
_AIDS = ("LIT", "BOY", "BCN", "FOGSIG", "RTPBCN", "LIGHTS", "TOPMAR", "DAYMAR")
"""How the S-57 classes of aids to navigation begin."""


class _Row(NamedTuple):
    """A row with such a number behind its verb."""

    at: int
    """Its index among the lines."""
    column: int
    end: int
    """Where the number ends."""
    number: float


def with_list_numbers(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; such numbers are marks before the words, where every row has one."""
    commands = [at for at, line in enumerate(lines) if _commands(line)]
    rows = [row for at in commands if (row := _row(text, at, lines[at])) is not None]
    numbers = [row.number for row in rows]
    if len(rows) < _FEWEST or len(rows) < len(commands) or len({*numbers}) < _FEWEST:
        return list(lines)
    counts_on = all(above <= below for above, below in pairwise(numbers))
    if not counts_on or len({row.column for row in rows}) > 1:
        return list(lines)
    found = list(lines)
    for row in rows:
        found[row.at] = _marked(text, lines[row.at], row.end)
    return found


def _commands(line: Line) -> bool:
    return bool(line.elements) and line.elements[0].kind == "verb"


def _row(text: str, at: int, line: Line) -> _Row | None:
    """The number behind the verb of a row, where it stands before the words of an aid."""
    words = [one for one in line.elements[1:] if one.kind == "words"]
    first = line.elements[1] if len(line.elements) > 1 else None
    if first is None or first.kind != "words" or not first.gap:
        return None
    found = _NUMBER.match(text, first.start, first.end)
    if found is None:
        return None
    said = " ".join(text[max(one.start, found.end()) : one.end] for one in words).strip()
    if not has_kind(said) or not _is_aid(said):
        return None
    return _Row(at, first.start - line.start, found.end(), float(found["number"]))


def _is_aid(words: str) -> bool:
    return any(one.startswith(_AIDS) for one in read_feature(words).feature.s57)


def _marked(text: str, line: Line, end: int) -> Line:
    verb, first, *rest = line.elements
    mark = Element("bar", first.start, end, True, OF_LIST)
    if end < first.end:
        start = first.end - len(text[end : first.end].lstrip())
        rest.insert(0, first._replace(start=start))
    return line._replace(elements=(verb, mark, *rest))
