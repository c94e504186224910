"""Bodies in which some rows have their position in front and others behind, each with a verb.

    46°30.66'S 122°40.91'W   insert wreck
    insert cable joining 46°35.00'S 122°45.00'W
                         46°35.42'S 122°46.18'W

The rows stand in one column; what stands further right goes on with the row above it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import takewhile

from noticeparse.layout.evidence import lead_index, tells
from noticeparse.layout.item.verb_last import Stretch
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.places import is_connector

_MARKS = ("label", "bar")
_COUNT = re.compile(r"\(?[0-9]{1,2}[.)]{1,2}")
_LINKS = ("", ":", "-", ",")
_LEADS_AWAY = (" to", " towards", " to position")


def rows_both_ways(text: str, lines: Sequence[Line]) -> list[Stretch]:
    """The rows of such a body, each with the lines that go on with it; none for another body."""
    told = [_stands_first(text, line) for line in lines]
    if not (True in told and False in told):
        return []
    column = {
        line.indent(text) for line, first in zip(lines, told, strict=True) if first is not None
    }
    if len(column) > 1:
        return []
    rows: list[Stretch] = []
    for line, first in zip(lines, told, strict=True):
        if first is not None:
            rows.append(Stretch([line], None))
        elif line.is_blank:
            continue
        elif not rows or line.has("verb") or line.indent(text) <= min(column):
            return []
        else:
            rows[-1].lines.append(line)
    return rows


def has_place_in_front(text: str, row: Stretch) -> bool:
    """Whether the position of a row stands before its verb."""
    return _stands_first(text, row.lines[0]) is True


def row_verb(text: str, line: Line, place: Element) -> Element | None:
    """The verb right behind a place that opens its row, but for where it leads the only one."""
    before = (one for one in line.elements if one.start < place.start)
    if place.start < line.start or not all(_is_mark(text, one) for one in before):
        return None
    behind = [one for one in line.elements if one.start >= place.end]
    verb = next((one for one in behind if one.kind == "verb"), None)
    if verb is None or text[place.end : verb.start].strip() not in _LINKS:
        return None
    rest = list(takewhile(lambda one: one.kind != "verb", behind[behind.index(verb) + 1 :]))
    at = next((i for i, one in enumerate(rest) if one.kind in PLACES), None)
    # `P   shift buoy to Q`: the second place is where it goes.
    is_own = at is None or (at > 0 and text[: rest[at - 1].end].endswith(_LEADS_AWAY))
    return verb if is_own else None


def _is_mark(text: str, element: Element) -> bool:
    """Whether an element in front of a place counts its row, or leads to the place."""
    words = text[element.start : element.end]
    return element.kind in _MARKS or is_connector(words) or _COUNT.fullmatch(words) is not None


def counted_row_verb(text: str, line: Line, place: Element) -> Element | None:
    """The verb behind a place that a letter or count opens: `b) P, delete wreck Q`."""
    before = (one for one in line.elements if one.start < place.start)
    first = next(before, None) if place.start >= line.start else None
    if first is None or not _is_mark(text, first) or not all(_is_mark(text, e) for e in before):
        return None
    verb = next((e for e in line.elements if e.start >= place.end and e.kind == "verb"), None)
    is_next = verb is not None and text[place.end : verb.start].strip() in _LINKS
    return verb if is_next else None


def _stands_first(text: str, line: Line) -> bool | None:
    """Whether the place stands before the command of this row; None for a line that is no row."""
    elements = line.elements[lead_index(line) :]
    verbs = [one for one in elements if one.kind == "verb"]
    if len(verbs) != 1 or not any(
        tells(text, one) for one in elements if one.start > verbs[0].end
    ):
        return None
    if elements[0] is verbs[0]:
        return False
    place = next((one for one in elements if one.kind in PLACES), None)
    return True if place is not None and row_verb(text, line, place) else None
