"""Stumps of positions: a coordinate that breaks off in the column in which others stand whole.

`46°   Insert buoy` between rows that begin with their positions is a row of its own whose place is
lost.  Read as words, it would be given the place of the row above or below.
Source: common practice, no published source.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.lines import elements_between
from noticeparse.readers.coordinates import Coordinate
from noticeparse.readers.positions import PointReading
from noticeparse.readers.verbs import canonical_verb

_STUMP = re.compile(
    r"(?P<side>[NSEW] ?)?(?P<degrees>[0-9]{1,3})"
    r"(?P<more>(?: ?(?:°|deg\.?)|-| (?=[0-9]))"
    r" ?(?:[0-9]{1,2}(?: ?['.,]{1,2} ?(?P<decimals>[0-9]{0,4})'?)?)?)?[.,;]?"
    r"(?=[ ]{2}|\t|[ ]?\||[ ]?(?:\n|\Z)|[ ](?P<word>[A-Za-z]{2,12}))"
)
"""Degrees, and perhaps part of the minutes, without a hemisphere behind them."""
_NEAR = 6
"""Lines within which a row stands beside its neighbours."""


class _Lead(NamedTuple):
    """The first place of a row: where it stands, and its degrees."""

    row: int
    column: int
    degrees: int
    leads: bool
    """Whether the rest of its row stands behind it."""


def with_stumps(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; a stump in the column of the places of its neighbours is an unreadable place."""
    leads = [_lead(line, index) for index, line in enumerate(lines)]
    above = _nearest(leads)
    below = _nearest(leads[::-1])[::-1]
    return [
        next(filter(None, (_mended(text, line, one) for one in around if one is not None)), line)
        if line.elements
        else line
        for line, *around in zip(lines, above, below, strict=True)
    ]


def _lead(line: Line, row: int) -> _Lead | None:
    first = next((e for e in line.elements if e.kind in ("point", "half")), None)
    value = first.value if first is not None else None
    one = value.point.last[0] if isinstance(value, PointReading) and value.point else value
    if first is None or not isinstance(one, Coordinate) or not one.is_readable:
        return None
    leads = any(e.start > first.start and e.kind in ("verb", "words") for e in line.elements)
    return _Lead(row, first.start - line.start, one.fields[0], leads)


def _nearest(leads: Sequence[_Lead | None]) -> list[_Lead | None]:
    """For each row the place of the last row before it in this order, within a few lines."""
    found: list[_Lead | None] = []
    last, age = None, 0
    for lead in leads:
        found.append(last if age < _NEAR else None)
        last, age = (lead, 0) if lead is not None else (last, age + 1)
    return found


def _mended(text: str, line: Line, lead: _Lead) -> Line | None:
    """The line with its stump as a place that nobody can read, or None where none stands there."""
    start = line.start + lead.column
    first = next((e.start for e in line.elements if e.kind in PLACES), line.end)
    if start >= first or (start > line.start and text[start - 1] not in " \t|"):
        return None
    stump = _STUMP.match(text, start, line.end)
    if stump is None or stump.end() > first or not _is_like(stump, lead, first < line.end):
        return None
    end = stump.end()
    code = "position-hemisphere-missing" if stump["decimals"] else "position-cut-off"
    fault = Fault(code, start, end, {"written": text[start:end]})
    place = Element("point", start, end, True, PointReading(None, (fault,), start, end))
    before = [element for element in line.elements if element.end <= start]
    kept = [element for element in line.elements if element.start >= end]
    if any(element.start < end < element.end for element in line.elements):
        # `48 delete wreck` was read as words in one piece.
        kept = list(elements_between(text, end, line.end))
    return line._replace(elements=(*before, place, *kept))


def _is_like(stump: re.Match[str], lead: _Lead, has_place: bool) -> bool:
    """Whether a stump can be the beginning of a position like that of its neighbour."""
    word, degrees = stump["word"], stump["degrees"]
    if word is not None and canonical_verb(word) is None:
        return False
    near = abs(int(degrees) - lead.degrees) <= 1
    if stump["more"] is None and stump["side"] is None:
        # A figure alone may count its row, or be a depth.
        return lead.leads and not has_place and near
    return near or str(lead.degrees).startswith(degrees)
