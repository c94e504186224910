"""Places counted below a feature: `01  BMH  P`, with a code for what each of them is.

The count and the code belong to the place; they are no items of their own.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.evidence import PLACES, tells
from noticeparse.layout.lines import Element, Line

_LISTS = ("joining", "bounded by", "between", "limits", "positions", "points", "corners", "line")
_LONGEST_CODE = 6


def with_counted_places(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; below words that announce places the counts are marks before the places."""
    found: list[Line] = []
    count: int | None = None
    for line in lines:
        counted = None if count is None else _counted(text, line, count + 1)
        if counted is not None and count is not None:
            found.append(counted)
            count += 1
            continue
        found.append(line)
        count = 0 if _announces(text, line) else None
    return found


def _announces(text: str, line: Line) -> bool:
    words = " " + text[line.start : line.end].strip(" :,").lower()
    return not line.is_blank and words.endswith(tuple(f" {one}" for one in _LISTS))


def _counted(text: str, line: Line, count: int) -> Line | None:
    """The line with its count, and the code behind it, as a mark before its place; else None."""
    at = next((i for i, e in enumerate(line.elements) if e.kind in PLACES), 0)
    lead = line.elements[:at]
    if any(tells(text, e) for e in line.elements[at:]):
        return None
    if not lead or len(lead) > 2 or any(e.kind not in ("words", "label") for e in lead):
        return None
    number = text[lead[0].start : lead[0].end].strip(" .)(")
    if not number.isdigit() or int(number) != count:
        return None
    code = text[lead[-1].start : lead[-1].end]
    if len(lead) == 2 and not (code.isalnum() and code.isupper() and len(code) <= _LONGEST_CODE):
        return None
    mark = Element("bar", lead[0].start, lead[-1].end, True)
    return line._replace(elements=(mark, *line.elements[at:]))
