"""Brackets behind places that say where along the way they lie: `P (km 62.3, left bank)`.

They say nothing of the thing, and cut no line and no limit in two.  What one point of a line or
limit is called, `(shore)`, `(NW corner)`, is such a note only where a list of points stands.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.item.further_things import LISTS, NAME_OF_POINT
from noticeparse.layout.line.elements import Element, Line, followings
from noticeparse.layout.sentence.line_leads import SIDE, STATION

_SIDE_OF_WAY = r"(?:on )?(?:the )?(?:port|starboard)[ -]sides?"
_FAR = (
    r"(?:[0-9]{1,4}(?:[.,][0-9]{1,3})?|an?|half an?|one|two|three)"
    r" ?(?:km|kilomet(?:re|er)s?|m|metres?|miles?|cables?) (?:to )?"
    r"(?:seaward|landward|up-?stream|down-?stream|up-?river|down-?river)"
    r" (?:of|from) [a-z0-9' -]{1,40}"
)
"""`4 km to seaward of the last post`: it tells over again where the place is."""
_PART = rf"(?:{STATION.pattern}|{SIDE.pattern}|{_SIDE_OF_WAY})"
_WAY = re.compile(
    rf"\((?:(?![0-9])(?:{_PART}(?:[,;/]? ?(?={_PART})|(?=\)))){{1,4}}|{_FAR})\)[,.]?(?![^ ,.])",
    re.IGNORECASE,
)
_POINT = re.compile(rf"{NAME_OF_POINT}[,.]?(?![^ ,.])", re.IGNORECASE)

Note = tuple[Piece, int]
"""Where a note stands, and the start of the place before it."""


def without_notes(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Note]]:
    """The lines of a body without such notes, and the notes."""
    kept: list[Line] = []
    notes: list[Note] = []
    is_list = False
    for line in lines:
        elements: list[Element] = []
        for element, following in followings(line.elements):
            place = elements[-1] if elements and elements[-1].kind == "point" else None
            leads = is_list or (following is not None and following.kind == "verb")
            end = _note_end(text, element, is_of_point=leads) if place is not None else None
            if end is not None and place is not None:
                notes.append(((element.start, end), place.start))
                behind = text[end : element.end]
                if not behind.strip():
                    continue
                start = element.end - len(behind.lstrip())
                element = element._replace(start=start)
            if element.kind != "point":
                is_list = text[element.start : element.end].rstrip(" :,").endswith(LISTS)
            elements.append(element)
        kept.append(line._replace(elements=tuple(elements)))
    return kept, notes


def _note_end(text: str, element: Element, *, is_of_point: bool) -> int | None:
    """Where a note ends with which words begin; None where they begin with none."""
    if element.kind != "words":
        return None
    found = _WAY.match(text, element.start, element.end)
    if found is None and is_of_point:
        found = _POINT.match(text, element.start, element.end)
    return found.end() if found is not None else None


def give_notes(items: Sequence[Item], notes: Sequence[Note]) -> list[Piece]:
    """Give each note to the item of the place before it; those of none are left over."""
    owners = {start: item for item in items for start, _ in item.pieces}
    left: list[Piece] = []
    for piece, place in notes:
        item = owners.get(place)
        if item is None:
            left.append(piece)
        else:
            item.pieces = sorted([*item.pieces, piece])
    return left
