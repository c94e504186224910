"""The item that is open, and the words, letter and verb that wait to be given to one."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item, Piece, Place, Prose
from noticeparse.layout.evidence import opens_a_line
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.line.joints import is_row_chart
from noticeparse.layout.place.scopes import Scopes
from noticeparse.readers.codes import SIGNS
from noticeparse.readers.openings import is_parted
from noticeparse.readers.unchanged import changes_nothing
from noticeparse.readers.verbs import are_contrary, canonical_verb

_TELLS = re.compile(r"\b(?:is|are|was|were|has|have|had|will|should|must|may|can)\b", re.I)


class OpenItem:
    """Builds items one after the other; what opens and ends them is decided elsewhere."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.items: list[Item] = []
        self.prose: list[Prose] = []
        self.item: Item | None = None
        self.pending: list[Element] = []
        """Words not yet given to an item."""
        self.ahead: list[Piece] = []
        """Marks before the first place of the coming item, that say nothing of it."""
        self.charts: Element | None = None
        """The charts that the coming item is for, where it is not for all."""
        self.held: Element | None = None
        """Those that a row or heading above names, for rows that name none."""
        self.doubtful: Element | None = None
        """Those of an item above; whether the coming item is for them too is not said."""
        self.item_label: Element | None = None
        self.verb: Element | None = None
        self.verb_is_own = False
        """Whether the verb stands in the item's own line, and not above a list."""
        self.idle: list[Element] = []
        """Verbs under which no item stands."""
        self._is_used = True
        self.verb_lost: Element | None = None
        self.thing: Element | None = None
        """What stands with a colon before the verb that is read next."""
        self.passive: Element | None = None
        """The verb of the words that wait, where they are a sentence of their own."""
        self.scopes = Scopes()

    def set_verb(self, item: Item, element: Element) -> None:
        """Give an item a verb of its own."""
        piece = (element.start, element.end)
        item.verb, item.verb_piece = self.meaning_of(element), piece
        item.pieces.append(piece)

    def take_thing(self, thing: Element) -> None:
        """`Rock: delete in P`: the coming item is of what stands before its verb."""
        self.pending.append(thing)

    def meaning_of(self, verb: Element) -> str:
        """A verb as written, or the one that the word in its place stands for."""
        return verb.value or self.text[verb.start : verb.end]

    def under_verb(self, element: Element | None, *, is_own: bool = False) -> None:
        """Let another verb hold for what follows, or none."""
        if self.verb is not None and not self._is_used:
            self.idle.append(self.verb)
        self.verb, self.verb_is_own = element, is_own
        self._is_used = element is None

    def lose_verb(self, verb: Element) -> None:
        """Let nothing that follows be under a verb: which holds there is not known."""
        self.under_verb(None)
        self.verb_lost = verb

    @property
    def goes_on(self) -> bool:
        """Whether an item still waits for its place, so that the next line may go on with it."""
        return bool(self.pending) or (self.item is not None and not self.item.has_place)

    def is_contrary(self, verb: Element) -> bool:
        """Take a verb that contradicts the one close before it: `Delete and insert rock P`.

        Which of them holds is not said, so that none does; a replacement is a change.
        """
        first = self.verb if self.verb_is_own and self.item is None else None
        between = self.words_of(self.pending).strip(" -/:,.").lower()
        if first is None or between not in ("", "and", "or", "then", "&"):
            return False
        told = (canonical_verb(self.meaning_of(one)) for one in (first, verb))
        if not are_contrary(*told) or "\n" in self.text[first.end : verb.start]:
            return False
        self.pending = []
        self.lose_verb(first._replace(end=verb.end))
        return True

    def heed_no_change(self, line: Line) -> None:
        """End the verb above where a line says that nothing is to be done: `No change`."""
        told = line.has_only("words", "passive", "bar")
        if told and changes_nothing(self.text[line.elements[0].start : line.elements[-1].end]):
            self.under_verb(None)

    def words_of(self, elements: Sequence[Element]) -> str:
        """The words of some elements, joined by blanks."""
        return words_of(self.text, elements)

    def takes_number(self, number: Element) -> bool:
        """Whether words before a notice's number lead on to it: `Temporary notices: 75(T)/26`."""
        if self.item is None:
            self.pending.append(number)
            return False
        self.item.number = number
        self.item.pieces.append((number.start, number.end))
        return self.words_of(self.pending).endswith(":")

    def give_tail(self) -> None:
        """Give the words that wait to the open item, behind its places."""
        assert self.item is not None
        for element in self.pending:
            self.item.tail.append((element.start, element.end))
            self.item.pieces.append((element.start, element.end))
        self.pending = []

    def give_prose(self) -> None:
        """Keep the words that wait as prose, with what is done in them."""
        waiting = self.pending if self.passive is None else [*self.pending, self.passive]
        waiting = sorted(waiting, key=lambda one: one.start)
        self.prose.append(Prose([(e.start, e.end) for e in waiting], waiting))
        self.pending, self.passive = [], None

    def add_group(self, item: Item) -> None:
        """Begin another group of places, led by the words that wait."""
        lead = [(e.start, e.end) for e in self.pending]
        item.groups.append(Group(lead=lead))
        item.pieces += lead
        self.pending = []

    def add_place(self, element: Element, label: Element | None) -> None:
        """Add a position or reference to the last group of the open item, or of a new one."""
        if self.item is None:
            self.open_item()
        item = self.item
        assert item is not None
        if not item.groups:
            item.groups.append(Group())
        if label is not None:
            item.pieces.append((label.start, label.end))
        item.pieces.append((element.start, element.end))
        letter = None if label is None else label.value
        scope = None if letter is None else self.scopes.of(letter)
        item.groups[-1].places.append(Place(element, letter, scope))

    def open_item(self) -> None:
        """Open an item under the label and the verb that hold here."""
        self.item = item = Item()
        self._is_used = True
        self._give_charts(item)
        if self.item_label is not None:
            label, self.item_label = self.item_label, None
            item.label, item.scope = label.value, self.scopes.of(label.value)
            item.label_piece = (label.start, label.end)
            item.pieces.append(item.label_piece)
        if self.passive is not None and self.verb_lost is None:
            self.set_verb(item, self.passive)
            self.passive = None
        elif self.verb is not None:
            item.verb = self.meaning_of(self.verb)
            if self.verb_is_own:
                self.set_verb(item, self.verb)
                self.verb_is_own = False
                if self.text[self.verb.start : self.verb.end].strip("()[]") in SIGNS:
                    # A sign is that of its line alone.
                    self.verb = None
        elif self.verb_lost is not None:
            lost = self.text[self.verb_lost.start : self.verb_lost.end]
            start, end = self.verb_lost.start, self.verb_lost.end
            item.faults.append(Fault("verb-unknown", start, end, {"written": lost}))
        self.items.append(item)

    def await_item_of(self, charts: Element) -> None:
        """Let the coming item be for some charts only; one in front of a row holds below it."""
        self.charts, self.doubtful = charts, None
        self.held = charts if is_row_chart(self.words_of([charts])) else None

    def _give_charts(self, item: Item) -> None:
        """Let the item be for the charts named before it, or above where it names none."""
        own, self.charts = self.charts, None
        if own is not None and own.value == "above":
            # The charts of the entry above: whether they are those of this one is not said.
            item.faults.append(_of_one_chart(self.words_of([own]), own))
        elif own is not None:
            self.takes_charts(own, is_first=True)
            names_some = any(char.isdigit() for char in self.words_of([own]))
            is_told = self.held is None and item.charts is not None
            self.doubtful = own if is_told and names_some else None
        elif self.held is not None:
            item.charts = (self.held.start, self.held.end)
        elif self.doubtful is not None:
            item.faults.append(_of_one_chart(self.words_of([self.doubtful]), self.doubtful))

    def takes_charts(self, charts: Element, *, is_first: bool = False) -> bool:
        """Let the open item be for some charts only, where these stand first in it or end it."""
        if self.item is None or not (is_first or self.item.has_place):
            return False
        piece = (charts.start, charts.end)
        self.item.pieces.append(piece)
        # `Both charts:` is what holds where nothing is said, and else gives it to the others too.
        self.item.charts = piece
        return True

    def open_from_pending(self) -> None:
        """Open an item described by the words that wait."""
        words, self.pending = self.pending, []
        self.open_item()
        assert self.item is not None
        pieces = [(e.start, e.end) for e in words]
        self.item.words += pieces
        self.item.pieces = sorted([*self.item.pieces, *pieces, *self.ahead])
        self.ahead = []

    def is_rest_of_name(self, item: Item, words: str) -> bool:
        """Whether words under a name that its line broke off go on with it."""
        above = " ".join(self.text[a:b] for a, b in item.words)
        return opens_a_line(self.text, self.pending[0].start) and is_parted(above, words)

    def leads_to_end(self, element: Element) -> bool:
        """Whether words lead to one end of a move: `(g) from P`."""
        words = self.text[element.start : element.end].lower()
        if element.kind != "words" or self.item is None:
            return False
        # Behind the place it came from, `(2) From B` opens the next item.
        return words == "to" or (words == "from" and not self.item.has_place)

    def goes_on_with_letters(self, words: str) -> bool:
        """Whether words with the next letter of a list are an item: `(c) as (b), but drying`.

        A sentence with a letter is a remark on the items.
        """
        label, above = self.item_label, self.items[-1].label if self.items else None
        if label is None or above is None or _TELLS.search(words) is not None:
            return False
        letters = str(label.value).lower(), above.lower()
        if all(one.isdigit() for one in letters):
            return int(letters[0]) == int(letters[1]) + 1
        return all(len(one) == 1 for one in letters) and ord(letters[0]) == ord(letters[1]) + 1


def _of_one_chart(written: str, charts: Element) -> Fault:
    return Fault("item-of-one-chart", charts.start, charts.end, {"written": written})
