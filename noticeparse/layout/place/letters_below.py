"""Items under letters, and below them a block that gives the place of each letter.

`(a) wreck`, `(b) pipeline, joining (b), (c) and (d)`, and then `(a) P`, `(b) Q` ...: each item
stands at the place of its own letter, unless it says itself where.  The block becomes an item that
is no action and only names its positions.  A letter that two items or two places have is none.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.drafts import Group, Item, Piece, Place
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.halves import with_halves_below
from noticeparse.layout.line.lines import elements_between
from noticeparse.layout.place.lettered_places import lettered_row
from noticeparse.readers.features import has_kind
from noticeparse.readers.letters import read_letters
from noticeparse.readers.verbs import canonical_verb

_FEWEST = 2
"""Places of a block without a title; one alone may go on with the item above."""
_ENDS = frozenset({"verb", "chart", "charts_only", "number", "key"})
_TO = re.compile(r",? to$")
_LEADS = re.compile(r"(?:^|[ ,])(?:to|from|at|in|of|on|and|joining|between|through|by|near):?$")
_AWAITS = re.compile(
    r"(?:joining|between|limits|points|corners|line|following|through|by|at|in|from|to|of)"
    r"(?: the)?(?: (?:following|positions?|points?)){0,2}[ :;,.-]{0,4}$",
    re.IGNORECASE,
)
_ENDS_OF_MOVE = re.compile(r"(\(\w{1,2}\)) to (\(\w{1,2}\))$")
_TITLE = re.compile(r"(?:the )?(?:positions?|po?sns?|places)(?: \([^()]{1,20}\))?[ .:]{0,4}", re.I)


class _Block(NamedTuple):
    """Lettered places on lines that hold nothing else."""

    lines: list[Line]
    title: list[Piece]
    places: list[Place]
    goes_on: bool
    """Whether the line above awaits positions, or holds the first of them."""
    is_below_thing: bool
    """Whether the line above names a thing, without a letter and without a place."""

    @property
    def is_counted(self) -> bool:
        """Whether numbers stand before its places: `corners: 1. P`, `2. Q`."""
        return all(str(place.label).isdigit() for place in self.places)


def with_letters_below(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Item]]:
    """The lines with each item at the place of its letter, and the blocks of letters as items."""
    given, lines = lines, with_halves_below(lines)
    blocks = [one for one in _blocks(text, lines) if not (one.goes_on and one.is_counted)]
    codes = Counter(str(place.label) for block in blocks for place in block.places)
    is_titled = any(block.title for block in blocks)
    if (codes.total() < _FEWEST and not is_titled) or any(block.goes_on for block in blocks):
        return list(given), []
    if len(blocks) > 1 and all(block.is_below_thing for block in blocks):
        # Each is the place of the thing above it, however often others refer to it.
        return list(given), []
    rows = {line.row for block in blocks for line in block.lines}
    others = [line for line in lines if line.row not in rows]
    reader = _Reader(text, others, frozenset(codes))
    reader.run()
    first = blocks[0].lines[0].row
    is_list = bool(blocks[0].title) or all(one.is_blank or one.row > first for one in others)
    if not reader.is_told(codes, first, is_list=is_list):
        return list(given), []
    once = {code for code in codes if codes[code] == 1}
    return reader.lines(once), [_item(block) for block in blocks]


def _blocks(text: str, lines: Sequence[Line]) -> list[_Block]:
    """The runs of such lines; what else stands between them ends one."""
    blocks: list[_Block] = []
    goes_on = False
    above: Line | None = None
    for line in lines:
        if line.is_blank:
            continue
        last = blocks[-1].places[-1].label if goes_on else None
        row = lettered_row(text, line, last, is_any=True)
        if row is not None and goes_on:
            blocks[-1].lines.append(line)
            blocks[-1].places.extend(row[1])
        elif row is not None:
            told = _awaits_more(text, above), _is_thing(text, above)
            block = _Block([line], row[0], row[1], *told)
            if above is not None and _TITLE.fullmatch(text[above.start : above.end].strip()):
                block.lines.insert(0, above)
                block.title.extend((one.start, one.end) for one in above.elements)
            blocks.append(block)
        goes_on = row is not None
        above = line
    return blocks


def _awaits_more(text: str, line: Line | None) -> bool:
    """Whether the positions below a line are its own: `cable, joining`, `area (a) P`."""
    if line is None:
        return False
    return line.has("point", "half") or _AWAITS.search(text[line.start : line.end]) is not None


def _is_thing(text: str, line: Line | None) -> bool:
    """Whether a line names a thing, without a letter and without a place."""
    if line is None or not all(one.kind in ("verb", "words") for one in line.elements):
        return False
    return has_kind(text[line.start : line.end])


def _item(block: _Block) -> Item:
    pieces = [(one.start, one.end) for line in block.lines for one in line.elements]
    groups = [Group(places=block.places)]
    return Item(words=block.title, groups=groups, is_list_of_places=True, pieces=pieces)


class _Spot(NamedTuple):
    """Where the reference of an item to its own letter is to stand."""

    code: str
    label: Element
    row: int
    """The line, counted among those that are no block."""
    at: int
    """The element behind which it stands."""
    leads: bool
    """Whether that element leads to the new place of a move."""


class _Reader:
    """Goes through the lines that are no block, and finds the items without a place."""

    def __init__(self, text: str, lines: Sequence[Line], codes: frozenset[str]) -> None:
        self._text = text
        self._given = lines
        self._codes = codes
        self._named: set[str] = set()
        """The letters that items have or refer to."""
        self._references = 0
        self._placed: set[str] = set()
        """The letters of items that say themselves where, and with a position."""
        self._spots: list[_Spot] = []
        self._is_move = False
        self._found: list[Line] = []
        self._label: Element | None = None
        self._words: list[str] = []
        self._has_place = self._has_point = False
        self._last = (0, 0)
        """Line and element of the last element of the open item."""
        self._to: tuple[int, int] | None = None

    def run(self) -> None:
        """Read all the lines."""
        for line in self._given:
            self._found.append(line._replace(elements=()))
            if line.is_blank or self._begins_another(line):
                self._close()
            for at, element in enumerate(line.elements):
                behind = line.elements[at + 1] if at + 1 < len(line.elements) else None
                self._take(element, behind)
        self._close()

    def is_told(self, codes: Counter[str], first_row: int, *, is_list: bool) -> bool:
        """Whether the letters of the blocks are those of the items.

        Under a title, or above all else, no item can go on with the first block.
        """
        own = {spot.code for spot in self._spots}
        if self._placed & codes.keys():
            return False
        if self._named.issuperset(codes) and (own or self._references):
            return True
        # The item right above a block may go on with all its places.
        above = [s for s in self._spots if self._given[s.row].row < first_row]
        last = {spot.code for spot in above[-1:]}
        return bool(own - last) or self._references > 1 - is_list

    def lines(self, once: set[str]) -> list[Line]:
        """The lines with a reference behind the words of each item that has no place."""
        owners = Counter(spot.code for spot in self._spots)
        found = list(self._found)
        # From the last to the first, so that the elements before stay where they are.
        for spot in sorted(self._spots, key=lambda one: (one.row, one.at), reverse=True):
            if spot.code not in once or owners[spot.code] > 1:
                continue
            line = found[spot.row]
            elements = list(line.elements)
            elements[spot.at : spot.at + 1] = self._with_reference(elements[spot.at], spot)
            found[spot.row] = line._replace(elements=tuple(elements))
        return found

    def _with_reference(self, element: Element, spot: _Spot) -> list[Element]:
        label, text = spot.label, self._text
        start = label.start + text[label.start : label.end].index(spot.code)
        place = Element("reference", start, start + len(spot.code), gap=False)
        if not spot.leads:
            return [element, place]
        cut = element.start + len(_TO.sub("", text[element.start : element.end]))
        lead = elements_between(text, cut, element.end)
        to = [one for one in lead if text[one.start : one.end].strip(" ,")]
        return [element._replace(end=cut), place, *to]

    def _begins_another(self, line: Line) -> bool:
        """Whether a line without a letter is an item that names the letters of its places."""
        if not self._words or line.elements[0].kind != "words" or not line.has("reference"):
            return False
        first = line.elements[0]
        own = self._text[first.start : first.end]
        return has_kind(own) and has_kind(" ".join(self._words))

    def _take(self, element: Element, behind: Element | None) -> None:
        if element.kind == "label" and self._opens(element, behind):
            self._close()
            self._label = element
            self._add(element)
            return
        if element.kind in _ENDS:
            is_its_verb = element.kind == "verb" and self._label is not None
            if not is_its_verb or self._words or self._has_place:
                # `1) Insert wreck in 2)`: the verb is that of the item under the number.
                self._close()
            if element.kind == "verb":
                words = self._text[element.start : element.end]
                self._is_move = canonical_verb(words) == "move"
        if element.kind == "label" and str(element.value) in self._codes:
            element = element._replace(kind="reference")
        if element.kind == "reference":
            self._refer(element)
            return
        if element.kind == "words":
            self._words.append(self._text[element.start : element.end])
        self._has_place |= element.kind in PLACES
        self._has_point |= element.kind in ("point", "half")
        self._add(element)

    def _opens(self, label: Element, behind: Element | None) -> bool:
        """Whether a letter opens an item, and is not that of a place which the item names."""
        last = self._found[-1].elements
        before = self._text[last[-1].start : last[-1].end].lower() if last else ""
        if behind is None or _LEADS.search(before) is not None:
            return False
        is_next = bool(last) and last[-1].kind == "reference" and not label.gap
        return behind.kind in ("words", "verb") and not is_next

    def _refer(self, element: Element) -> None:
        """A letter that the item names: the place it is at, or goes to."""
        written = self._text[element.start : element.end]
        letters = set(read_letters(written))
        self._named |= letters
        self._references += bool(letters & self._codes)
        ends = _ENDS_OF_MOVE.match(written) if self._is_move else None
        if ends is not None:
            # `from (d) to (e)` are the two places of a move.
            cut, start = element.start + ends.end(1), element.start + ends.start(2)
            self._add(element._replace(end=cut))
            for one in elements_between(self._text, cut, start):
                self._add(one)
            self._add(element._replace(start=start))
            self._has_place = True
            return
        last = self._found[-1].elements
        words = self._text[last[-1].start : last[-1].end] if last else ""
        if self._is_move and not self._has_place and _TO.search(words):
            self._to = self._last
        else:
            self._has_place = True
        self._add(element)

    def _add(self, element: Element) -> None:
        line = self._found[-1]
        self._found[-1] = line._replace(elements=(*line.elements, element))
        self._last = (len(self._found) - 1, len(line.elements))

    def _close(self) -> None:
        """End the open item; one without a place of its own stands at its letter."""
        label = self._label
        code = "" if label is None else str(label.value)
        if label is not None and self._has_point:
            self._placed.add(code)
        elif label is not None and not self._has_place and code in self._codes:
            self._named.add(code)
            self._spots.append(_Spot(code, label, *(self._to or self._last), self._to is not None))
        self._label, self._to, self._words = None, None, []
        self._has_place = self._has_point = False
