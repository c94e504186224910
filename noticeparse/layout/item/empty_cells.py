"""Rows in which the words of a place, or the thing of a row, are left out.

`P 8.6m`, below it `Q -` or Q alone, and below that `R 7.1m`: nothing says what lies at Q, and the
words of its neighbour are not taken for it.  Such items are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.item.class_headings import are_many
from noticeparse.layout.item.classes_told import names_kind
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line

_JOINS = re.compile(
    r"\b(?:join\w*|connect\w*|link\w*|bounded|enclosed|limit\w*|between|through|from|to|and|centred"
    r"|along|within|area|line|both|all|each|two|three|four)\b",
    re.IGNORECASE,
)
"""Words of one thing at several places, or of several things."""
_NOTHING = re.compile(r"[-–—.]{1,3}|nil|none|n/?a|n\.k\.|unknown", re.IGNORECASE)
_DITTO = re.compile(r'ditto|do\.?|idem|same|"|〃', re.IGNORECASE)


def hold_empty_cells(text: str, lines: Sequence[Line], items: Sequence[Item]) -> None:
    """Hold back the items with a place whose own words are left out."""
    if not lines or not items:
        return
    by_place = {e.start: line for line in lines for e in line.elements if e.kind in PLACES}
    rows = {id(line): at for at, line in enumerate(lines)}
    has_rows = sum(_is_row(text, line) for line in lines) > 1
    for item in items:
        placed = [
            (place.element, by_place[place.element.start])
            for place in item.places
            if place.element.start in by_place
        ]
        lost = next(_left_out(text, placed, has_rows=has_rows), None)
        if lost is None and placed and (at := rows[id(placed[0][1])]):
            lost = placed[0][0] if _lacks_thing(text, lines[at], lines[at - 1]) else None
        if lost is not None:
            start, end = lost.start, lost.end
            written = {"written": " ".join(text[start:end].split())}
            item.faults.append(Fault("item-without-feature", start, end, written))


def _left_out(
    text: str, placed: Sequence[tuple[Element, Line]], *, has_rows: bool
) -> Iterator[Element]:
    """The places of an item that stand alone on their line, others having words beside them."""
    told = [_words(text, line) for _, line in placed]
    said = [words for words in told if words]
    if len({line.start for _, line in placed}) < 2 or not said or _are_several(said):
        return
    for element, line in placed:
        if _is_empty(text, line):
            yield element
    are_bare = all(line.has_only(*PLACES) for _, line in placed[:-1])
    if has_rows and are_bare and _is_row(text, placed[-1][1]) and _end(text, placed):
        yield placed[0][0]


def _end(text: str, placed: Sequence[tuple[Element, Line]]) -> bool:
    """Whether nothing joins the places of one line to those of the next."""
    return not any(
        text[above.end - 1] in ",;&" or text[above.end : below.start].strip(" \n|-")
        for (above, _), (below, _) in pairwise(placed)
    )


def _are_several(said: Sequence[str]) -> bool:
    """Whether words can be those of several places: `wrecks`, `cable joining`."""
    return any(_JOINS.search(words) or are_many(words) for words in said)


def _is_row(text: str, line: Line) -> bool:
    """Whether a place opens a line, and words stand behind it."""
    own = [e for e in line.elements if e.start >= line.start]
    solid = [e for e in own if e.kind not in ("bar", "label")]
    return bool(solid) and solid[0].kind in PLACES and bool(_words(text, line))


def _words(text: str, line: Line) -> str:
    """The words of a line, without those that say that there is nothing."""
    # The class that a heading gives to a row stands above it.
    own = [e for e in line.elements if e.kind == "words" and e.start >= line.start]
    parts = [text[e.start : e.end].strip(" ,;") for e in own]
    return " ".join(part for part in parts if part and not _NOTHING.fullmatch(part))


def _is_empty(text: str, line: Line) -> bool:
    """Whether a cell beside the place of a line is empty, or says that there is nothing."""
    if _words(text, line) or line.has("verb", "label", "reference"):
        return False
    says_nothing = any(e.kind == "words" for e in line.elements)
    bars = [
        one.kind == two.kind == "bar" and "|" in text[one.start : one.end]
        for one, two in pairwise(line.elements)
    ]
    return says_nothing or any(bars)


def _lacks_thing(text: str, line: Line, above: Line) -> bool:
    """Whether the first cell of a row is empty or says the same, below one that names a thing."""
    cells, before = _cells(text, line), _cells(text, above)
    if len(cells) != len(before) or len(cells) < 2 or not names_kind(before[0]):
        return False
    is_left_out = not cells[0] or _DITTO.fullmatch(cells[0]) is not None
    return is_left_out and any(cells[1:]) and not names_kind(" ".join(cells))


def _cells(text: str, line: Line) -> list[str]:
    """The words of the cells of a line with bars; places are blank."""
    written = text[line.start : line.end].strip()
    if line.is_blank or not written.startswith("|") or line.has("verb", "label"):
        return []
    return [cell.strip() for cell in written.strip("|").split("|")]
