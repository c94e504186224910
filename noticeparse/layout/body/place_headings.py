"""Names of places on lines between items: `Ellory Harbour:` above `rock P`.

Such a line heads what stands below it, and is no name of the item above.  Without a colon it may
be the name of a light or mark above it, which then is held back unless the whole list says so.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece, Prose
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line
from noticeparse.readers.features import has_kind, read_feature
from noticeparse.vocabulary import kinds

_NOUN = (
    r"(?:harbours?|harbors?|ports?|haven|bay|cove|bight|sounds?|straits?|channel|passage|narrows"
    r"|fairway|approach(?:es)?|roads|roadstead|basin|docks?|marina|river|estuary|creek|inlet|firth"
    r"|fjord|loch|lake|lagoon|gulf|coast|point|head|headland|cape|peninsula|islands?|isles?|pier"
    r"|jetty|quay|wharf|mole|breakwater|entrance|canal)"
)
_PLACE = re.compile(
    rf"(?P<name>(?:(?:[A-Z][\w'.-]{{0,24}}|of|the|and|to|de|la|du) ){{0,5}}(?i:{_NOUN}))"
    r"(?P<colon> ?:)?[ .]{0,3}"
)
_LEADS = re.compile(r"\b(?:of|the|to|and) [a-z]")
_CARRIERS = frozenset("LNDMRK PILPNT DAYMAR OFSPLF PYLONS BUISGL LITFLT LITVES SISTAW".split())
"""Classes of what is named after the place where it stands, as lights and marks are."""


class PlaceHeadings(NamedTuple):
    """A body without such lines, these, and those that may be names."""

    lines: list[Line]
    prose: list[Prose]
    doubtful: list[Piece]


def without_place_headings(text: str, lines: Sequence[Line]) -> PlaceHeadings:
    """The lines without those that head the items below them."""
    told = [_place(text, line) for line in lines]
    if not any(told):
        return PlaceHeadings(list(lines), [], [])
    heads_all = _stands_above_all(lines, told)
    names_all = _stands_below_all(lines, told)
    found = PlaceHeadings([], [], [])
    for at, (line, place) in enumerate(zip(lines, told, strict=True)):
        above = _above(lines, at)
        if place is None or not _opens_item(text, lines[at + 1 :]):
            found.lines.append(line)
            continue
        piece = line.elements[0].start, line.elements[-1].end
        if above is None:
            is_first = at > 0 and lines[at - 1].has_only("verb", "label", "bar")
            several = sum(one is not None for one in told) > 1 and not names_all
            if is_first and (several or not _takes_name(text, lines[at + 1])):
                found.prose.append(Prose([piece], []))
            else:
                found.lines.append(line)
            continue
        may_be_name = _takes_name(text, above) and place["colon"] is None and not heads_all
        if not may_be_name and not (names_all and place["colon"] is None):
            found.prose.append(Prose([piece], []))
            continue
        found.lines.append(line)
        if not names_all and not _next(lines[at + 1 :]).has("verb"):
            found.doubtful.append(piece)
    return found


def hold_below_names(text: str, items: Sequence[Item], doubtful: Sequence[Piece]) -> None:
    """Hold back the items to which a line was given that may head the next ones."""
    for start, end in doubtful:
        written = {"written": " ".join(text[start:end].split())}
        for item in items:
            if any(start <= piece[0] < end for piece in item.pieces):
                item.faults.append(Fault("cell-rest-doubtful", start, end, written))


def _place(text: str, line: Line) -> re.Match[str] | None:
    """The name of a place alone on a line."""
    if line.is_blank or not line.has_only("words"):
        return None
    start, end = line.elements[0].start, line.elements[-1].end
    if _LEADS.search(text, start, end) is not None:
        # `North of the mole` leads to the place below it.
        return None
    return _PLACE.fullmatch(text, start, end)


def _above(lines: Sequence[Line], at: int) -> Line | None:
    """The line above, where an item ends on it."""
    above = lines[at - 1] if at else None
    if above is None or above.is_blank:
        return None
    is_whole = above.elements[-1].kind in PLACES or above.elements[0].kind in PLACES
    return above if is_whole and above.has("words") else None


def _next(below: Sequence[Line]) -> Line:
    return next(line for line in below if not line.is_blank)


def _opens_item(text: str, below: Sequence[Line]) -> bool:
    """Whether an item of its own stands right below: a thing and its place."""
    if not below or below[0].is_blank:
        return False
    first = below[0]
    lead = first.elements[lead_index(first)]
    words = " ".join(text[e.start : e.end] for e in first.elements if e.kind == "words")
    placed = first.has(*PLACES) or (
        len(below) > 1 and not below[1].is_blank and below[1].elements[0].kind in PLACES
    )
    return placed and has_kind(words) and lead.kind in ("verb", "words", *PLACES)


def _takes_name(text: str, above: Line) -> bool:
    """Whether a line holds a light or mark, which may be named after a place."""
    words = " ".join(text[e.start : e.end] for e in above.elements if e.kind == "words")
    feature = read_feature(words.strip(" ,.")).feature
    known = kinds().get(feature.kind)
    is_mark = known is not None and bool(known.form)
    return is_mark or "LIGHTS" in feature.s57 or not _CARRIERS.isdisjoint(feature.s57)


def _stands_above_all(lines: Sequence[Line], told: Sequence[object]) -> bool:
    """Whether such a line stands above the first item of all."""
    for line, place in zip(lines, told, strict=True):
        if place is not None:
            return True
        if not line.is_blank and not line.has_only("verb", "label", "bar"):
            return False
    return False


def _stands_below_all(lines: Sequence[Line], told: Sequence[object]) -> bool:
    """Whether such a line stands below the last item of all, as its name."""
    solid = [place for line, place in zip(lines, told, strict=True) if not line.is_blank]
    return bool(solid) and solid[-1] is not None
