"""Cuts the body of a chart section into items: verb, description, places.

In come the lines between two heads; out come items in text order and the paragraphs that are none.
The cut is told by evidence alone: a verb opens an item; words that do not merely link positions open
one too, under the verb carried down; positions belong to the words before them, or behind them where
the lines of the section stand that way round.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item, Piece, Place, Prose
from noticeparse.layout.lines import Element, Line, join_halves, lone_half
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.openings import unknown_first_word
from noticeparse.readers.places import is_connector
from noticeparse.readers.positions import Point
from noticeparse.readers.verbs import canonical_verb

_PLACES = frozenset({"point", "half", "reference", "same"})
_BULLETS = frozenset("-*·+o>")
_LINKS = ("by", "with", "for")
_OPEN_END = frozenset(
    "and or of with by from to in at on the a an for joining between within near over".split()
)


class Body(NamedTuple):
    """What the body of a chart section holds."""

    items: list[Item]
    prose: list[Prose]
    separators: list[Piece]


def stands_position_first(text: str, lines: Iterable[Line]) -> bool:
    """Whether the positions of these lines stand before what they belong to."""
    before = behind = 0
    for line in lines:
        first = next((e for e in line.elements if e.kind in _PLACES or _tells(text, e)), None)
        places = line.has("point", "half")
        words = any(_tells(text, e) for e in line.elements)
        if first is None or not (places and words):
            continue
        if first.kind in _PLACES:
            before += 1
        else:
            behind += 1
    return before > behind


def _tells(text: str, element: Element) -> bool:
    return element.kind == "words" and not is_connector(text[element.start : element.end])


def cut_items(text: str, lines: Sequence[Line]) -> Body:
    """The items of a body, in text order."""
    cutter = _Cutter(text, lines)
    cutter.run()
    return Body(cutter.items, cutter.prose, cutter.separators)


class _Cutter:
    """Walks the elements once; holds the open item and the words not yet given to one."""

    def __init__(self, text: str, lines: Sequence[Line]) -> None:
        self.text = text
        self.lines = lines
        self.items: list[Item] = []
        self.prose: list[Prose] = []
        self.separators: list[Piece] = []
        self.position_first = stands_position_first(text, lines)
        self.item: Item | None = None
        self.pending: list[Element] = []
        self.place_label: Element | None = None
        self.item_label: Element | None = None
        self.verb: Element | None = None
        self.verb_is_own = False
        self.verb_lost: Element | None = None
        self.half: Element | None = None
        self.before: Point | None = None
        self.verb_column = _verb_column(lines)

    def run(self) -> None:
        for line in self.lines:
            if line.is_blank:
                self._blank()
                continue
            self._line(line)
        self._close()

    def _line(self, line: Line) -> None:
        elements = line.elements
        lead = _lead_index(line)
        for index, element in enumerate(elements):
            following = elements[index + 1] if index + 1 < len(elements) else None
            opens = index <= lead
            if element.kind == "words" and opens and self._is_unknown_verb(line, index):
                self._unknown_verb(element)
            else:
                self._element(element, following, opens)

    def _element(self, element: Element, following: Element | None, opens: bool) -> None:
        kind = element.kind
        if self.half is not None and kind not in ("half", "bar", "label"):
            if not (kind == "words" and self._is_blank_word(element)):
                self._settle_half()
        if kind == "verb":
            self._verb(element, following, opens)
        elif kind == "label":
            self._label(element, following)
        elif kind in _PLACES:
            self._place(element)
        elif kind == "words" or kind == "passive":
            self._words(element, opens)
        elif kind == "number":
            self._number(element)
        elif kind in ("semicolon", "bar", "rule", "key", "chart"):
            self.separators.append((element.start, element.end))

    def _is_blank_word(self, element: Element) -> bool:
        return self.text[element.start : element.end].strip(" ,.;:/&|-") == ""

    # Verbs

    def _verb(self, element: Element, following: Element | None, opens: bool) -> None:
        item = self.item
        late = self.position_first and not opens and item is not None and not item.words
        if late and item is not None:
            self._set_verb(item, element)
            self.verb = element
            return
        self._close()
        self.verb, self.verb_lost = element, None
        self.verb_is_own = following is not None
        if following is None:
            self.separators.append((element.start, element.end))

    def _set_verb(self, item: Item, element: Element) -> None:
        piece = (element.start, element.end)
        item.verb, item.verb_piece = self.text[element.start : element.end], piece
        item.pieces.append(piece)

    def _is_unknown_verb(self, line: Line, index: int) -> bool:
        """Whether a line stands where verbs stand, but with a word that is none."""
        first = line.elements[index]
        if self.verb_column is None or first.start - line.start != self.verb_column:
            return False
        words = self.text[first.start : first.end]
        if " " in words:
            return unknown_first_word(words) is not None
        if not words.isalpha() or len(words) < 3 or has_kind(words) or is_connector(words):
            return False
        second = line.elements[index + 1] if len(line.elements) > index + 1 else None
        return second is None or (second.gap and second.kind == "words")

    def _unknown_verb(self, element: Element) -> None:
        self._close()
        words = self.text[element.start : element.end]
        head, _, rest = words.partition(" ")
        end = element.start + len(head)
        self.verb, self.verb_is_own = None, False
        self.verb_lost = element._replace(end=end)
        self.separators.append((element.start, end))
        if rest:
            self._words(element._replace(start=end + 1), True)

    # Labels and numbers

    def _label(self, element: Element, following: Element | None) -> None:
        if following is None or following.kind in _PLACES:
            self.place_label = element
            return
        if not (self.verb_is_own and self.item is None and not self.pending):
            self._close()
        self.item_label = element

    def _number(self, element: Element) -> None:
        if self.item is not None:
            self.item.number = element
            self.item.pieces.append((element.start, element.end))
        else:
            self.separators.append((element.start, element.end))

    # Words

    def _words(self, element: Element, opens: bool) -> None:
        if opens:
            element = self._without_bullet(element)
        if self._is_blank_word(element):
            self.separators.append((element.start, element.end))
            return
        if self.position_first:
            self._words_behind(element)
            return
        if opens and not element.kind == "passive":
            self._at_line_start(element)
        self.pending.append(element)

    def _without_bullet(self, element: Element) -> Element:
        """The words behind the bullet of a list, if one stands before them."""
        if self.text[element.start] in _BULLETS and self.text[element.start + 1 :][:1] == " ":
            self.separators.append((element.start, element.start + 1))
            return element._replace(start=element.start + 2)
        return element

    def _words_behind(self, element: Element) -> None:
        words = self.text[element.start : element.end]
        item = self.item
        if item is None or (not item.words and is_connector(words)):
            self.pending.append(element)
            return
        item.words.append((element.start, element.end))
        item.pieces.append((element.start, element.end))

    def _at_line_start(self, element: Element) -> None:
        """Decide whether a new line goes on with the words before it or opens an item."""
        words = self.text[element.start : element.end]
        item = self.item
        if self.pending:
            before = self._text_of(self.pending)
            if item is not None and item.has_place and not leads_feature(before):
                if leads_feature(words):
                    self._give_tail()
                return
            if self._is_complete(before) and leads_feature(words):
                self._open_from_pending()
                self._close()

    def _is_complete(self, words: str) -> bool:
        last = words.rstrip()
        if not last or last[-1] in ",;:-&/(" or not has_kind(words):
            return False
        if last.split()[-1].lower() in _OPEN_END:
            return False
        return not self._lacks_replacement(last)

    def _lacks_replacement(self, words: str) -> bool:
        """Whether a replacement is under way whose second feature is not yet named."""
        if self.verb is None or canonical_verb(self._text_of([self.verb])) != "replace":
            return False
        second = max((words.rpartition(f" {link} ")[2] for link in _LINKS), key=len)
        named = min((words.rpartition(f" {link} ")[2] for link in _LINKS), key=len)
        return second == words and named == words or not has_kind(named)

    def _text_of(self, elements: Sequence[Element]) -> str:
        return " ".join(self.text[e.start : e.end] for e in elements)

    def _give_tail(self) -> None:
        assert self.item is not None
        for element in self.pending:
            self.item.tail.append((element.start, element.end))
            self.item.pieces.append((element.start, element.end))
        self.pending = []

    # Places

    def _place(self, element: Element) -> None:
        if element.kind == "half":
            if self.half is None:
                self.half = element
                return
            first, self.half = self.half, None
            element = join_halves(first, element, self.before)
        if element.kind == "point" and element.value.point is not None:
            self.before = element.value.point
        label, self.place_label = self.place_label, None
        if self.position_first:
            self._place_before(element, label)
        else:
            self._place_behind(element, label)

    def _settle_half(self) -> None:
        half, self.half = self.half, None
        if half is not None:
            reading = lone_half(half, self.before)
            self._place(half._replace(kind="point", value=reading))

    def _place_behind(self, element: Element, label: Element | None) -> None:
        item = self.item
        if item is not None and item.has_place and self.pending:
            if is_connector(self._text_of(self.pending)):
                self._add_group(item)
            else:
                self._open_from_pending()
        elif self.pending:
            self._open_from_pending()
        elif item is None:
            self._open()
        self._add_place(element, label)

    def _place_before(self, element: Element, label: Element | None) -> None:
        item = self.item
        if item is None or item.words:
            self._close(keep_pending=True)
            self._open()
            item = self.item
        assert item is not None
        if self.pending:
            self._add_group(item)
        self._add_place(element, label)

    def _add_group(self, item: Item) -> None:
        lead = [(e.start, e.end) for e in self.pending]
        item.groups.append(Group(lead=lead))
        item.pieces += lead
        self.pending = []

    def _add_place(self, element: Element, label: Element | None) -> None:
        item = self.item
        assert item is not None
        if not item.groups:
            item.groups.append(Group())
        if label is not None:
            item.pieces.append((label.start, label.end))
        item.pieces.append((element.start, element.end))
        letter = None if label is None else label.value
        item.groups[-1].places.append(Place(element, letter))

    # Items

    def _open(self) -> None:
        self.item = item = Item()
        if self.item_label is not None:
            label, self.item_label = self.item_label, None
            item.label = label.value
            item.label_piece = (label.start, label.end)
            item.pieces.append(item.label_piece)
        if self.verb is not None:
            item.verb = self.text[self.verb.start : self.verb.end]
            if self.verb_is_own:
                self._set_verb(item, self.verb)
                self.verb_is_own = False
        elif self.verb_lost is not None:
            lost = self.text[self.verb_lost.start : self.verb_lost.end]
            start, end = self.verb_lost.start, self.verb_lost.end
            item.faults.append(Fault("verb-unknown", start, end, {"written": lost}))
        self.items.append(item)

    def _open_from_pending(self) -> None:
        words, self.pending = self.pending, []
        self._open()
        assert self.item is not None
        pieces = [(e.start, e.end) for e in words]
        self.item.words += pieces
        self.item.pieces += pieces

    def _close(self, *, keep_pending: bool = False) -> None:
        """End the open item; words that wait become its tail, an item, or prose."""
        self._settle_half()
        if self.place_label is not None:
            self.separators.append((self.place_label.start, self.place_label.end))
            self.place_label = None
        if self.pending and not keep_pending:
            self._flush()
        if self.verb is not None and self.verb_is_own and self.item is None:
            # A verb with nothing behind it: a heading after all.
            self.separators.append((self.verb.start, self.verb.end))
            self.verb_is_own = False
        self.item = None

    def _flush(self) -> None:
        words = self._text_of(self.pending)
        item = self.item
        opened = item is not None and item.has_place
        if opened and not (self._opens_a_line(self.pending[0]) and leads_feature(words)):
            self._give_tail()
        elif (self.verb is not None or self.verb_lost is not None) and self._may_be_item(words):
            self._open_from_pending()
        else:
            pieces = [(e.start, e.end) for e in self.pending]
            self.prose.append(Prose(pieces, list(self.pending)))
            self.pending = []

    def _may_be_item(self, words: str) -> bool:
        """Whether words without a place are an item all the same: its own verb, or a feature.

        Behind a blank line, words without a figure are a remark or a signature.
        """
        if self.verb_is_own:
            return True
        line_start = self.text.rfind("\n", 0, self.pending[0].start)
        behind_blank = not self.text[self.text.rfind("\n", 0, line_start) + 1 : line_start].strip()
        return has_kind(words) and not (behind_blank and not any(c.isdigit() for c in words))

    def _opens_a_line(self, element: Element) -> bool:
        start = self.text.rfind("\n", 0, element.start) + 1
        return not self.text[start : element.start].strip()

    def _blank(self) -> None:
        """A blank line ends an item that has its place; a description may still wait for one."""
        if self.item is not None and self.item.has_place:
            self._close()


def _lead_index(line: Line) -> int:
    """The index of the element that opens a line, behind its letter or number if it has one."""
    return 1 if len(line.elements) > 1 and line.elements[0].kind == "label" else 0


def _verb_column(lines: Sequence[Line]) -> int | None:
    """The column in which every line that opens with a verb has it, if that is one column."""
    leads = [(line, line.elements[_lead_index(line)]) for line in lines if line.elements]
    columns = [lead.start - line.start for line, lead in leads if lead.kind == "verb"]
    if len(set(columns)) != 1:
        return None
    column = columns[0]
    others = [
        lead for line, lead in leads if lead.kind == "words" and lead.start - line.start == column
    ]
    return column if len(others) < len(columns) else None
