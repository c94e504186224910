"""Cuts the body of a chart section into items: verb, description, places.

In come the lines between two heads; out come items in text order and the paragraphs that are none.
The cut is told by evidence alone: a verb opens an item; words that do not merely link positions
open one too, under the verb carried down; positions belong to the words before them, or behind
them where the lines of the section stand that way round.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.cutter import Cutter
from noticeparse.layout.drafts import Group, Item, Prose
from noticeparse.layout.evidence import (
    PLACES,
    is_complete,
    opens_a_line,
    qualifies,
    split_lead,
    stands_position_first,
    told_by_lines,
    verb_places,
)
from noticeparse.layout.lines import Element, Line
from noticeparse.layout.verb_last import settle_verbs, stands_verb_last, stretches
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import is_connector, split_phrase
from noticeparse.readers.verbs import canonical_verb

_LONGEST_DESCRIPTION = 2000
"""Characters; words that run on for longer describe no feature."""


class Body(NamedTuple):
    """What the body of a chart section holds."""

    items: list[Item]
    prose: list[Prose]
    idle: list[Element]
    """Verbs under which no item stands."""


def cut_items(text: str, lines: Sequence[Line]) -> Body:
    """The items of a body, in text order."""
    if stands_verb_last(text, lines):
        return _cut_verb_last(text, lines)
    cutter = _way(text, lines)(text, lines)
    cutter.run()
    return Body(cutter.items, cutter.prose, cutter.idle)


def _way(text: str, lines: Sequence[Line]) -> type[Cutter]:
    """The way in which position and feature follow each other here."""
    return _PositionFirst if stands_position_first(text, lines) else _FeatureFirst


def _cut_verb_last(text: str, lines: Sequence[Line]) -> Body:
    body = Body([], [], [])
    parts = list(stretches(text, lines))
    without = [
        line._replace(elements=tuple(e for e in line.elements if e is not part.verb))
        for part in parts
        for line in part.lines
    ]
    way = _way(text, without)
    before = None
    for part in parts:
        told = told_by_lines(text, part.lines)
        own = _FeatureFirst if told < 0 else _PositionFirst if told > 0 else way
        cutter = own(text, part.lines)
        cutter.before = before
        cutter.run()
        before = cutter.before
        settle_verbs(cutter.items)
        body.items.extend(cutter.items)
        body.prose.extend(cutter.prose)
        body.idle.extend(cutter.idle)
    for item in body.items:
        item.pieces.sort()
    return body


class _FeatureFirst(Cutter):
    """The position stands behind the words that it belongs to."""

    def takes_late_verb(self, element: Element, opens: bool) -> bool:
        """`… and the light in P removed.`: a participle that ends its sentence."""
        item = self.item
        ends = self.following is None or self.text[element.end : element.end + 1] == "."
        told = self.text[element.start : element.end].rstrip(" .").endswith(("ed", "wn"))
        if opens or item is None or not item.has_place or self.pending or not (ends and told):
            return False
        if item.verb_piece is not None:
            return False
        self.set_verb(item, element)
        return True

    def take_words(self, element: Element, opens: bool) -> None:
        if element.kind == "passive":
            self._take_passive(element)
            return
        if self.pending and element.start - self.pending[0].start > _LONGEST_DESCRIPTION:
            self.close_item()
        if opens:
            self._at_line_start(element)
        self.pending.append(element)

    def _take_passive(self, element: Element) -> None:
        """`A pier has been built joining …` among commands: the verb of the item it stands in."""
        item = self.item
        if self.pending and has_kind(self.words_of(self.pending)) and not self.verb_is_own:
            self.close_item(keep_pending=True)
            self.passive = element
        elif item is not None and item.has_place and not self.pending and item.verb_piece is None:
            self.set_verb(item, element)
        else:
            self.pending.append(element)

    def take_place(self, element: Element, label: Element | None) -> None:
        item = self.item
        before_verb = self._place_before_verb()
        if item is not None and item.has_place and self.pending:
            if is_connector(self.words_of(self.pending)):
                self.add_group(item)
            else:
                self.open_from_pending()
        elif self.pending:
            self.open_from_pending()
        elif item is None:
            self.open_item()
        if self.item is not None:
            self.item.faults += before_verb
        self.add_place(element, label)

    def _place_before_verb(self) -> list[Fault]:
        """`At P delete rock.` behind another item: P is the rock's, and is not told apart."""
        verb = self.following
        if not self.pending or verb is None or verb.kind != "verb":
            return []
        link = self.pending[-1]
        behind_stop = self.text[link.start - 2 : link.start - 1] in (".", ";")
        stands_first = opens_a_line(self.text, link.start) or behind_stop
        if not stands_first or not is_connector(self.text[link.start : link.end]):
            return []
        values = {"written": self.text[link.start : verb.end]}
        return [Fault("place-before-verb", link.start, verb.end, values)]

    def _at_line_start(self, element: Element) -> None:
        """Decide whether a new line goes on with the words before it or opens an item."""
        words = self.text[element.start : element.end]
        item = self.item
        if self.pending:
            before = self.words_of(self.pending)
            if item is not None and item.has_place and not leads_feature(before):
                if leads_feature(words) and not qualifies(self.text, self.pending[0], element):
                    self.give_tail()
                return
            if self._may_end(before) and leads_feature(words):
                self.open_from_pending()
                self.close_item()

    def _may_end(self, words: str) -> bool:
        verb = self.words_of([self.verb]) if self.verb else ""
        return is_complete(words, is_replacement=canonical_verb(verb) == "replace")


class _PositionFirst(Cutter):
    """The position stands in front of the words that it belongs to, or on a line above them."""

    def __init__(self, text: str, lines: Sequence[Line]) -> None:
        super().__init__(text, lines)
        self._related_in: Line | None = None
        """The line whose words lead to a second place: `P Move buoy to Q`."""
        self._led: Item | None = None
        """An item whose feature stands between its verb and its places all the same."""

    def takes_late_verb(self, element: Element, opens: bool) -> bool:
        item = self.item
        if opens or item is None or item.words:
            return False
        self.set_verb(item, element)
        self.verb = element
        return True

    def take_lost_verb(self, element: Element) -> None:
        """The item of the position in front of the word is lost; the verb above does not hold."""
        start, end = element.start, element.end
        written = {"written": self.text[start:end]}
        self.verb, self.verb_is_own = None, False
        if self.item is not None:
            self.item.verb = None
            self.item.faults.append(Fault("verb-unknown", start, end, written))
            self.item.pieces.append((start, end))

    def is_lost_verb(self, line: Line, index: int) -> bool:
        """A single word in the column of the verbs, with words behind it, but no verb."""
        element = line.elements[index]
        words = self.text[element.start : element.end]
        if index not in verb_places(self.lines) or not words.isalpha():
            return False
        behind = line.elements[index + 1 :]
        return any(e.kind == "words" and e.gap for e in behind) and not is_connector(words)

    def take_words(self, element: Element, opens: bool) -> None:
        del opens
        words = self.text[element.start : element.end]
        item = self.item
        if item is not None and self._is_to_behind_place(item, words):
            # The destination of a move stands before its `to`.
            last = item.groups[-1].places.pop()
            item.groups.append(Group(role="to", places=[last]))
            item.pieces.append((element.start, element.end))
            return
        if item is None or ((not item.words or item is self._led) and is_connector(words)):
            self.pending.append(element)
            return
        item.words.append((element.start, element.end))
        item.pieces.append((element.start, element.end))

    @staticmethod
    def _is_to_behind_place(item: Item, words: str) -> bool:
        if not item.words or words.strip(" ,.:").lower() != "to":
            return False
        places = item.groups[-1].places
        return bool(places) and item.pieces[-1] == (
            places[-1].element.start,
            places[-1].element.end,
        )

    def take_place(self, element: Element, label: Element | None) -> None:
        item = self.item
        if item is None and self.verb_is_own and has_kind(self.words_of(self.pending)):
            self.open_from_pending()
            self._led = self.item
            self.add_place(element, label)
            return
        if item is not None and item is self._led:
            if self.pending:
                self.add_group(item)
            self.add_place(element, label)
            return
        if item is not None and self._leads_on(item):
            self.add_place(element, label)
            return
        if self.item is not None and self.line is self._related_in:
            self.add_place(element, label)
            return
        item = self.item
        if item is None or (item.words and not self._awaits_places(item)):
            self.close_item(keep_pending=True)
            self.open_item()
            item = self.item
        assert item is not None
        if self.pending:
            self.add_group(item)
        self.add_place(element, label)

    def _leads_on(self, item: Item) -> bool:
        """Whether the words just before, on this line, end with a relation to what follows."""
        if self.line is None or not item.words or item.words[-1][0] < self.line.start:
            return False
        words, relation = split_lead(self.text, item.words)
        if not relation or not words or item.groups[-1].lead == relation:
            return False
        link = " ".join(self.text[start:end] for start, end in relation)
        if is_connector(link) and "and" in link.lower().replace(",", " ").split():
            # `the sounding 7.4 m and, in P, the sounding 8.1 m`: the place of the next item.
            item.words = words
            item.pieces = [
                (a, min(b, relation[0][0])) for a, b in item.pieces if a < relation[0][0]
            ]
            self.close_item()
            return False
        item.words = words
        item.groups.append(Group(lead=relation))
        self._related_in = self.line
        return True

    def _awaits_places(self, item: Item) -> bool:
        """In rows with the position in front: whether lines of positions alone go on with an item.

        Its words end with `joining` or `from`, and the line of this position holds nothing else.
        """
        elements = self.line.elements if self.line else ()
        kinds = {e.kind for e in elements if not is_connector(self.text[e.start : e.end])}
        if not kinds <= {*PLACES, "label", "bar"}:
            return False
        words = " ".join(self.text[start:end] for start, end in item.words)
        parts = split_phrase(words).parts
        if not parts or words.rstrip(" .,:").endswith("above") or "these" in words:
            return False
        return parts[-1].kind in ("joining", "bounded", "from_", "separator")
