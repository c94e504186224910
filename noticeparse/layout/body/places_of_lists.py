"""Items that take the places of a list above them, and not by the letters that stand there.

`Positions: A P; B Q` and below them `Insert:`, `wreck A`, `rock B`: where the letters are not read
in the words, each thing would be at all places, or two things be one; and where a letter opens its
line, `B: rock`, it would be that of the thing above.  Such items are held back.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import opens_a_line
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import leads_feature


def hold_places_of_lists(text: str, lines: Sequence[Line], items: Sequence[Item]) -> None:
    """Hold back the items below a verb that have several places of a list above it."""
    headings = [line.elements[0].start for line in lines if _is_heading(text, line)]
    if not headings:
        return
    lettered = {
        place.element.start for item in items for place in item.places if place.label is not None
    }
    for item in items:
        places = [place.element for place in item.places]
        if not places or not item.words:
            continue
        last, first = max(place.start for place in places), item.words[0][0]
        is_above = any(last < heading < first + 1 for heading in headings)
        several = sum(place.start in lettered for place in places) > 1
        if (is_above and (several or _names_several(text, item))) or any(
            _opens_next(text, item, place) for place in places
        ):
            _hold(text, item)


def _hold(text: str, item: Item) -> None:
    piece = (item.words[0][0], item.words[-1][1])
    written = {"written": " ".join(text[slice(*piece)].split())}
    item.faults.append(Fault("place-of-another", *piece, written))


def _is_heading(text: str, line: Line) -> bool:
    """Whether a verb stands alone on its line: `Insert:`."""
    if line.is_blank or line.elements[0].kind != "verb":
        return False
    return not text[line.elements[0].end : line.end].strip(" :.")


def _names_several(text: str, item: Item) -> bool:
    """Whether two lines of its words begin as an item would."""
    opening = [piece for piece in item.words if opens_a_line(text, piece[0])]
    return sum(leads_feature(text[slice(*piece)]) for piece in opening) > 1


def _opens_next(text: str, item: Item, place: Element) -> bool:
    """Whether a letter stands before other words, on a line below those of the item."""
    if place.kind != "reference" or not opens_a_line(text, place.start):
        return False
    rest = text[place.end : text.find("\n", place.end)].lstrip(" :-.)]")
    return item.words[-1][1] < place.start and leads_feature(rest)
