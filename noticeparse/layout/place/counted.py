"""Items counted in a column, and places below a feature: `01  BMH  P`, with a code for each.

The count and the code belong to the place; they are no items of their own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.evidence import tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.lines import elements_between
from noticeparse.readers.features import has_kind

_LISTS = ("joining", "bounded by", "between", "limits", "positions", "points", "corners", "line",
          "corners being", "corners are", "limits being", "limits are",
          "this table", "table below", "following table")  # fmt: skip
_ANNOUNCING = tuple(f" {one}" for one in _LISTS)
_LONGEST_CODE = 6
_LONGEST_COUNT = 2
_DECIMAL = re.compile(
    r"(?P<major>[0-9]{1,2})\.(?P<minor>[1-9][0-9]?)(?P<dot>\.?)[ \t]{1,8}"
    r"(?=[A-Za-z\"])(?!(?:[a-zA-Z]|ft|fms?|metres?|meters?|miles?|cables|feet)(?![A-Za-z(]))"
)
_FEWEST = 2
"""Items; one number counts nothing, but for the first or the next of a notice."""
_FAR_ABOVE = 1000
"""Characters above an item in which the one before it stands."""


def with_counted_places(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; below words that announce places the counts are marks before the places."""
    found: list[Line] = []
    count: int | None = None
    for at, line in enumerate(lines):
        counted = None if count is None else _counted(text, line, count + 1)
        if counted is not None and count is not None:
            found.append(counted)
            count += 1
            continue
        found.append(line)
        announces = announces_places(text, line) or _stands_over(
            text, line, lines[at + 1 : at + 3]
        )
        count = 0 if announces else None
    return found


def _stands_over(text: str, line: Line, below: Sequence[Line]) -> bool:
    """Whether one thing stands over places numbered from 1; below depths these are figures."""
    if line.is_blank or len(below) < _FEWEST or not line.has("verb"):
        return False
    words = text[line.start : line.end].lower()
    if line.has(*PLACES):
        return False
    if not any(tells(text, e) for e in line.elements) or re.search(r"depth|sounding|[0-9]", words):
        return False
    return all(_counted(text, one, number) for number, one in enumerate(below, 1))


def with_decimal_counts(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; numbers such as `2.1`, `2.2` before their words are labels.

    Each follows the one before, opens its part with `.1`, or two would be depths as well.
    """
    counts = [(at, count) for at, line in enumerate(lines) if (count := _decimal(text, line))]
    found = list(lines)
    parts = {text[one.start : one.end].strip() for one in map(_label, lines) if one is not None}
    for index, (at, count) in enumerate(counts):
        beside = [other for _, other in counts[max(index - 1, 0) : index + 2] if other != count]
        opens = count.minor == 1 and f"{count.major}." in parts
        if opens or any(count.is_next_to(other) for other in beside):
            found[at] = _with_label(text, lines[at], count.end)
    return found


class _Decimal(NamedTuple):
    major: int
    minor: int
    end: int
    """Where the number ends."""

    def is_next_to(self, other: _Decimal) -> bool:
        """Whether two numbers follow each other, or one opens the part behind the other."""
        if self.major == other.major:
            return abs(self.minor - other.minor) == 1
        later = max(self, other)
        return abs(self.major - other.major) == 1 and later.minor == 1


def _decimal(text: str, line: Line) -> _Decimal | None:
    """The number of two parts before the words of a line, or None."""
    first = line.elements[0] if line.elements else None
    if first is None or first.kind not in ("words", "label"):
        return None
    told = _DECIMAL.match(text, first.start, line.end)
    if told is None:
        return None
    return _Decimal(int(told["major"]), int(told["minor"]), told.end("minor") + len(told["dot"]))


def _label(line: Line) -> Element | None:
    first = line.elements[0] if line.elements else None
    return first if first is not None and first.kind == "label" else None


def _with_label(text: str, line: Line, end: int) -> Line:
    first, *rest = line.elements
    number = text[first.start : end].rstrip(".")
    label = first._replace(kind="label", end=end, value=number)
    if first.end <= end:
        return line._replace(
            elements=(label, *(rest[:1] and (rest[0]._replace(gap=True),)), *rest[1:])
        )
    start = first.end - len(text[end : first.end].lstrip())
    read = elements_between(text, start, first.end)
    behind = tuple(one._replace(gap=True) if one is read[0] else one for one in read)
    return line._replace(elements=(label, *behind, *rest))


def with_counted_items(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; where numbers in a column of their own count the items they are labels.

    `1  Light-buoy, Fl.R.3s   P`, `2  Depth 8.2 m   Q`: each is one more than the one before.
    So does a number in a cell of its own: `| 2 | Insert | depth 8.2 m | Q |`.
    """
    lines = [_with_cell_apart(text, line) for line in lines]
    counts = [(at, number) for at, line in enumerate(lines) if (number := _count(text, line))]
    goes_on = len(counts) == 1 and _goes_on(text, lines[counts[0][0]], counts[0][1])
    if (len(counts) < _FEWEST and not goes_on) or any(
        b - a != 1 for (_, a), (_, b) in pairwise(counts)
    ):
        return list(lines)
    found = list(lines)
    for at, number in counts:
        line = found[at]
        label = line.elements[0]._replace(kind="label", value=str(number))
        found[at] = line._replace(elements=(label, *line.elements[1:]))
    return found


def _with_cell_apart(text: str, line: Line) -> Line:
    """The line; a number alone in the cell before that of the verb is a label, whatever it counts.

    Behind the words of the row above it would be of those: `No 6` above `| 2 | Insert | …`.  A
    longer one may be that of a chart: it stands with the words behind the verb, and is told.
    """
    if [one.kind for one in line.elements[:4]] != ["bar", "words", "bar", "verb"]:
        return line
    cell = line.elements[1]
    number = text[cell.start : cell.end].strip()
    if not number.isdecimal():
        return line
    if len(number) > _LONGEST_COUNT:
        return line._replace(elements=(line.elements[3], cell, *line.elements[4:]))
    label = cell._replace(kind="label", value=number)
    return line._replace(elements=(label, *line.elements[2:]))


def _count(text: str, line: Line) -> int | None:
    """The number that stands alone before the words of a line, or None."""
    if len(line.elements) < 2 or line.elements[0].kind != "words":
        return None
    first, second = line.elements[:2]
    number = text[first.start : first.end]
    is_apart = second.gap and tells(text, second)
    return (
        int(number) if number.isdecimal() and len(number) <= _LONGEST_COUNT and is_apart else None
    )


def _goes_on(text: str, line: Line, number: int) -> bool:
    """Whether the number of a lone item is the first, or follows on that of an item above."""
    above = text[max(line.start - _FAR_ABOVE, 0) : line.start]
    return (
        number == 1 or re.search(rf"\n[ \t]{{0,20}}{number - 1} {{2,9}}[A-Z]", above) is not None
    )


def with_counts_above(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; where a table was copied cell by cell, the count of a row is on its verb's line.

    `1`, below it `Delete`, below that the object and its place: only where every line that opens
    with a verb has its count above it, each one more and behind a place, so that no figure of an
    object is taken for one.
    """
    counts = {at: count for at, line in enumerate(lines) if (count := _lone_count(text, line))}
    at_rows = [at for at in counts if _opens_with_verb(lines, at + 1)]
    commands = [at for at in range(len(lines)) if _opens_with_verb(lines, at)]
    if not at_rows or [at + 1 for at in at_rows] != commands:
        return list(lines)
    if any(counts[b] - counts[a] != 1 for a, b in pairwise(at_rows)):
        return list(lines)
    if any(_is_of_thing(text, line) for line in lines[: at_rows[0]]):
        return list(lines)
    if not all(_stands_behind_place(lines, at) for at in at_rows[1:]):
        return list(lines)
    found = list(lines)
    for at in at_rows:
        above, line = found[at], found[at + 1]
        label = above.elements[0]._replace(kind="label", value=str(counts[at]))
        found[at] = above._replace(elements=())
        found[at + 1] = line._replace(start=above.start, elements=(label, *line.elements))
    return found


def _is_of_thing(text: str, line: Line) -> bool:
    """Whether a line holds a place, or names what a figure below it may be of."""
    return line.has(*PLACES) or any(
        one.kind == "words" and has_kind(text[one.start : one.end]) for one in line.elements
    )


def _stands_behind_place(lines: Sequence[Line], at: int) -> bool:
    above = next((lines[row] for row in range(at - 1, -1, -1) if not lines[row].is_blank), None)
    return above is not None and above.elements[-1].kind in PLACES


def _lone_count(text: str, line: Line) -> int | None:
    """The number that stands on a line of its own, or None."""
    if len(line.elements) != 1 or line.elements[0].kind not in ("words", "label"):
        return None
    number = text[line.elements[0].start : line.elements[0].end].strip(" .)(")
    is_count = number.isdecimal() and len(number) <= _LONGEST_COUNT
    return int(number) if is_count else None


def _opens_with_verb(lines: Sequence[Line], at: int) -> bool:
    return at < len(lines) and bool(lines[at].elements) and lines[at].elements[0].kind == "verb"


def announces_places(text: str, line: Line) -> bool:
    """Whether a line ends with words that announce places below it: `bounded by the corners`."""
    words = " " + text[line.start : line.end].strip(" :,").lower()
    return not line.is_blank and words.endswith(_ANNOUNCING)


def _counted(text: str, line: Line, count: int) -> Line | None:
    """The line with its count, and the code behind it, as a mark before its place; else None."""
    at = next((i for i, e in enumerate(line.elements) if e.kind in PLACES), 0)
    lead = line.elements[:at]
    if any(tells(text, e) for e in line.elements[at:]):
        return None
    if lead and lead[0].kind == "label" and text[lead[0].end - 1] == ")":
        # `(1) P`, `1) P`: items below may refer to it.
        return None
    if not lead or len(lead) > 2 or any(e.kind not in ("words", "label") for e in lead):
        return None
    number = text[lead[0].start : lead[0].end].strip(" .)(")
    if not number.isdecimal() or int(number) != count:
        return None
    code = text[lead[-1].start : lead[-1].end]
    if len(lead) == 2 and not (code.isalnum() and code.isupper() and len(code) <= _LONGEST_CODE):
        return None
    mark = Element("bar", lead[0].start, lead[-1].end, True)
    return line._replace(elements=(mark, *line.elements[at:]))
