"""The walk over the elements of a body, and the item that is open.

What is common to both ways in which position and feature may follow each other; the two ways are
in `items`.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item, Piece, Place, Prose
from noticeparse.layout.evidence import (
    AXIS_WORDS,
    PLACES,
    is_unknown_verb,
    lead_index,
    opens_a_line,
    stands_behind_blank,
    verb_column,
)
from noticeparse.layout.lines import Element, Line, join_halves, lone_half
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.openings import unknown_first_word
from noticeparse.readers.positions import Point

_MENTIONS = ("(see", " see", "(cf", "(cf.", " cf.", "refer to", "referred to in")
_ROMAN = frozenset({"i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"})


class Cutter:
    """Walks the elements once; holds the open item and the words not yet given to one."""

    def __init__(self, text: str, lines: Sequence[Line]) -> None:
        self.text = text
        self.lines = lines
        self.line: Line | None = None
        """The line that is being read."""
        self.items: list[Item] = []
        self.prose: list[Prose] = []
        self.separators: list[Piece] = []
        self.item: Item | None = None
        self.pending: list[Element] = []
        self.place_label: Element | None = None
        self.item_label: Element | None = None
        self.verb: Element | None = None
        self.verb_is_own = False
        self.verb_lost: Element | None = None
        self.passive: Element | None = None
        """The verb of the words that wait, where they are a sentence of their own."""
        self.half: Element | None = None
        self.before: Point | None = None
        self.verb_column = verb_column(lines)
        self.letter: str | None = None
        """The last letter of a list, under which numbers (i), (ii) may stand."""
        self.last_label = ""

    def run(self) -> None:
        for line in self.lines:
            if line.is_blank:
                self._blank()
                continue
            self._line(line)
        self.close_item()

    def _line(self, line: Line) -> None:
        self.line = line
        elements = line.elements
        lead = lead_index(line)
        for index, element in enumerate(elements):
            following = elements[index + 1] if index + 1 < len(elements) else None
            opens = index <= lead
            if element.kind == "words" and (
                self.is_lost_verb(line, index) or self._is_lost_behind_stop(line, index)
            ):
                self.take_lost_verb(element)
            else:
                self._element(element, following, opens)

    def _element(self, element: Element, following: Element | None, opens: bool) -> None:
        kind = element.kind
        if self.half is not None and kind not in ("half", "bar", "label"):
            if not (kind == "words" and self._is_blank_word(element)):
                self._settle_half()
        if self.place_label is not None and kind not in (*PLACES, "bar", "rule"):
            self._settle_label()
        if kind == "verb":
            self._verb(element, following, opens)
        elif kind == "label":
            self._label(element, following)
        elif kind in PLACES:
            self._place(element)
        elif kind == "words" or kind == "passive":
            self._words(element, opens)
        elif kind == "number":
            self._number(element)
        elif kind in ("semicolon", "bar", "rule", "key", "chart"):
            self.separators.append((element.start, element.end))

    def _is_blank_word(self, element: Element) -> bool:
        words = self.text[element.start : element.end].strip(" ,.;:/&|-·*()[]").lower()
        return not words or (self.half is not None and words in AXIS_WORDS)

    def take_words(self, element: Element, opens: bool) -> None:
        """Words that are more than a mark; `opens` where they stand first in their line."""
        raise NotImplementedError

    def take_place(self, element: Element, label: Element | None) -> None:
        """A position or reference, with the letter before it."""
        raise NotImplementedError

    def takes_late_verb(self, element: Element, opens: bool) -> bool:
        """Whether a verb belongs to the open item and not to the next one."""
        del element, opens
        return False

    # Verbs

    def _verb(self, element: Element, following: Element | None, opens: bool) -> None:
        if self.takes_late_verb(element, opens):
            return
        self.close_item()
        self.verb, self.verb_lost = element, None
        self.verb_is_own = following is not None
        if following is None:
            self.separators.append((element.start, element.end))

    def set_verb(self, item: Item, element: Element) -> None:
        piece = (element.start, element.end)
        item.verb, item.verb_piece = self.text[element.start : element.end], piece
        item.pieces.append(piece)

    def is_lost_verb(self, line: Line, index: int) -> bool:
        """Whether words stand where verbs stand, but are none."""
        opens = index <= lead_index(line)
        return opens and is_unknown_verb(self.text, line, index, self.verb_column)

    def _is_lost_behind_stop(self, line: Line, index: int) -> bool:
        """Words behind a semicolon that begin like the verbs here, but with a word that is none."""
        if index == 0 or line.elements[index - 1].kind != "semicolon" or self.verb is None:
            return False
        words = self.text[line.elements[index].start : line.elements[index].end]
        first = unknown_first_word(words)
        verb = self.text[self.verb.start : self.verb.end]
        return first is not None and (
            (first.isupper() and verb.isupper()) or (first.islower() and verb.islower())
        )

    def take_lost_verb(self, element: Element) -> None:
        """A word in the place of a verb: the verb above does not hold for what follows."""
        self.close_item()
        words = self.text[element.start : element.end]
        head, _, rest = words.partition(" ")
        end = element.start + len(head)
        self.verb, self.verb_is_own = None, False
        self.verb_lost = element._replace(end=end)
        self.separators.append((element.start, end))
        if rest:
            self._words(element._replace(start=end + 1), True)

    # Labels and numbers

    def _scope(self, label: str) -> str | None:
        """The letter above a number of a list within a list; the i behind an h is a letter."""
        is_number = label in _ROMAN and not (label == "i" and self.last_label == "h")
        if not is_number and len(label) == 1:
            self.letter = label
        self.last_label = label
        return self.letter if is_number else None

    def _label(self, element: Element, following: Element | None) -> None:
        if following is None or following.kind in PLACES:
            self.place_label = element
            return
        if not (self.verb_is_own and self.item is None and not self.pending):
            self.close_item()
        if self.item_label is not None:
            # A letter that heads a list within a list.
            self._scope(self.item_label.value)
        self.item_label = element

    def _number(self, element: Element) -> None:
        if self.item is not None:
            self.item.number = element
            self.item.pieces.append((element.start, element.end))
        else:
            self.separators.append((element.start, element.end))

    # Words

    def _words(self, element: Element, opens: bool) -> None:
        if self._is_blank_word(element):
            self.separators.append((element.start, element.end))
            return
        self.take_words(element, opens)

    def words_of(self, elements: Sequence[Element]) -> str:
        return " ".join(self.text[e.start : e.end] for e in elements)

    def give_tail(self) -> None:
        assert self.item is not None
        for element in self.pending:
            self.item.tail.append((element.start, element.end))
            self.item.pieces.append((element.start, element.end))
        self.pending = []

    # Places

    def _place(self, element: Element) -> None:
        if self.pending and self.words_of(self.pending).lower().endswith(_MENTIONS):
            # `(see (a) above)` speaks of a position and is not at it.
            self.pending.append(element)
            return
        if element.kind == "half":
            if self.half is None:
                self.half = element
                return
            first, self.half = self.half, None
            element = join_halves(first, element, self.before)
        if element.kind == "point" and element.value.point is not None:
            self.before = element.value.point
        label, self.place_label = self.place_label, None
        self.take_place(element, label)

    def _settle_label(self) -> None:
        """A letter with no position behind it stands for one given before."""
        label, self.place_label = self.place_label, None
        if label is not None:
            self._place(label._replace(kind="reference"))

    def _settle_half(self) -> None:
        half, self.half = self.half, None
        if half is not None:
            reading = lone_half(half, self.before)
            self._place(half._replace(kind="point", value=reading))

    def add_group(self, item: Item) -> None:
        lead = [(e.start, e.end) for e in self.pending]
        item.groups.append(Group(lead=lead))
        item.pieces += lead
        self.pending = []

    def add_place(self, element: Element, label: Element | None) -> None:
        item = self.item
        assert item is not None
        if not item.groups:
            item.groups.append(Group())
        if label is not None:
            item.pieces.append((label.start, label.end))
        item.pieces.append((element.start, element.end))
        letter = None if label is None else label.value
        scope = None if letter is None else self._scope(letter)
        item.groups[-1].places.append(Place(element, letter, scope))

    # Items

    def open_item(self) -> None:
        self.item = item = Item()
        if self.item_label is not None:
            label, self.item_label = self.item_label, None
            item.label, item.scope = label.value, self._scope(label.value)
            item.label_piece = (label.start, label.end)
            item.pieces.append(item.label_piece)
        if self.passive is not None:
            self.set_verb(item, self.passive)
            self.passive = None
        elif self.verb is not None:
            item.verb = self.text[self.verb.start : self.verb.end]
            if self.verb_is_own:
                self.set_verb(item, self.verb)
                self.verb_is_own = False
        elif self.verb_lost is not None:
            lost = self.text[self.verb_lost.start : self.verb_lost.end]
            start, end = self.verb_lost.start, self.verb_lost.end
            item.faults.append(Fault("verb-unknown", start, end, {"written": lost}))
        self.items.append(item)

    def open_from_pending(self) -> None:
        words, self.pending = self.pending, []
        self.open_item()
        assert self.item is not None
        pieces = [(e.start, e.end) for e in words]
        self.item.words += pieces
        self.item.pieces += pieces

    def close_item(self, *, keep_pending: bool = False) -> None:
        """End the open item; words that wait become its tail, an item, or prose."""
        self._settle_half()
        self._settle_label()
        if self.pending and not keep_pending:
            self._flush()
        if self.verb is not None and self.verb_is_own and self.item is None:
            # A verb with nothing behind it: a heading after all.
            self.separators.append((self.verb.start, self.verb.end))
            self.verb_is_own = False
        self.item = None

    def _flush(self) -> None:
        words = self.words_of(self.pending)
        item = self.item
        if item is None and self.verb is not None and words.endswith(":"):
            # `Insert in the new basin:` heads a list; the verb is carried down.
            self.verb_is_own = False
            if self.item_label is not None:
                self._scope(self.item_label.value)
                self.item_label = None
            self._give_prose()
            return
        opened = item is not None and item.has_place
        if opened and not (
            opens_a_line(self.text, self.pending[0].start) and leads_feature(words)
        ):
            self.give_tail()
        elif (self.verb is not None or self.verb_lost is not None) and self._may_be_item(words):
            self.open_from_pending()
        else:
            self._give_prose()

    def _give_prose(self) -> None:
        pieces = [(e.start, e.end) for e in self.pending]
        self.prose.append(Prose(pieces, list(self.pending)))
        self.pending = []

    def _may_be_item(self, words: str) -> bool:
        """Whether words without a place are an item all the same: its own verb, or a feature.

        Behind a blank line, words without a figure are a remark or a signature.
        """
        if self.verb_is_own:
            return True
        behind_blank = stands_behind_blank(self.text, self.pending[0].start)
        return has_kind(words) and not (behind_blank and not any(c.isdigit() for c in words))

    def _blank(self) -> None:
        """A blank line ends an item that has its place; a description may still wait for one."""
        item = self.item
        if item is not None and item.has_place and not self._breaks_off(item):
            self.close_item()

    def _breaks_off(self, item: Item) -> bool:
        """Whether a list of positions stops at a comma, so that more stand behind the blank line."""
        end = item.groups[-1].places[-1].element.end if item.groups[-1].places else 0
        behind = self.text[end : end + 4].partition("\n")[0].strip()
        return behind in (",", "and", "&") and not self.pending
