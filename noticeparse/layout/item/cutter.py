"""The walk over the elements of a body, and the item that is open.

What is common to both ways in which position and feature may follow each other, as in `items`.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.evidence import AXIS_WORDS, breaks_off, lead_index, may_be_item
from noticeparse.layout.item.aids_below import begins_another
from noticeparse.layout.item.margin_codes import margin_codes
from noticeparse.layout.item.open_item import OpenItem
from noticeparse.layout.item.sub_headings import (
    are_verbs,
    heads_columns,
    is_title_of_waters,
    is_unknown_heading,
    verb_headings,
)
from noticeparse.layout.item.things_before_verbs import (
    holds_no_more,
    stands_before_verb,
    without_colon,
)
from noticeparse.layout.item.unknown_verbs import (
    is_denied,
    is_lost_behind_stop,
    unknown_verb_end,
    verb_index,
    verb_place,
)
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, followings, last_verb
from noticeparse.layout.line.halves import join_halves, lone_half
from noticeparse.layout.line.joints import opens_note
from noticeparse.readers.positions import Point

_MENTIONS = ("(see", " see", "(cf", "(cf.", " cf.", "refer to", "referred to in")


class Cutter(OpenItem):
    """Walks the elements once; holds the open item and the words not yet given to one."""

    def __init__(self, text: str, lines: Sequence[Line]) -> None:
        super().__init__(text)
        self.lines = lines
        self.line: Line | None = None
        self.last_verb = -1
        """The line that is being read, and where its last verb stands."""
        self.following: Element | None = None
        """The element behind the one that is read, on its line."""
        self.place_label: Element | None = None
        self.half: Element | None = None
        self.before: Point | None = None
        self._verb_place = verb_place(text, lines)
        self._headings = verb_headings(text, lines)
        self._codes = margin_codes(text, lines)

    def run(self) -> None:
        """Walk the lines; the items and the prose are then complete."""
        for line in self.lines:
            if line.is_blank:
                self._blank()
                continue
            self._line(line)
        self.close_item()
        self.under_verb(None)

    def _line(self, line: Line) -> None:
        self.line = line
        elements = line.elements
        self.last_verb = last_verb(elements)
        if len(elements) > 1 and (
            are_verbs(self.text, elements) or heads_columns(self.text, elements)
        ):
            self._verbs_side_by_side(elements)
            return
        if not self.goes_on and is_unknown_heading(self.text, line, self._headings):
            self.close_item()
            self.lose_verb(elements[0]._replace(end=elements[-1].end))
            return
        if not self.goes_on and self.verb is not None:
            self.heed_no_change(line)
        lead = lead_index(line)
        for index, (element, following) in enumerate(followings(elements)):
            lost = self._lost_verb_end(line, index) if element.kind == "words" else None
            if lost is not None:
                self.take_lost_verb(element, lost)
            elif stands_before_verb(self.text, line, index):
                self.close_item()
                self.thing = without_colon(self.text, element)
            else:
                self._element(element, following, index <= lead)

    def _element(self, element: Element, following: Element | None, opens: bool) -> None:
        kind = element.kind
        self.following = following
        if element.start in self._codes:
            # The code of the source says nothing of the feature.
            held = self.item.pieces if self.item and not self.pending else self.ahead
            held.append((element.start, element.end))
            return
        goes_on = kind in ("half", "bar", "label") or (
            kind == "words" and self._is_blank_word(element)
        )
        if self.half is not None and not goes_on:
            self._settle_half()
        awaits = kind in (*PLACES, "bar", "rule") or self.leads_to_end(element)
        if self.place_label is not None and not awaits:
            self._settle_label()
        if kind == "verb":
            self._verb(element, following, opens)
        elif kind == "label":
            self._label(element, following)
        elif kind in PLACES:
            self._place(element)
        elif kind == "words" or kind == "passive":
            self._words(element, opens)
        elif kind == "semicolon":
            self.take_semicolon(element)
        elif kind == "number":
            if self.takes_number(element) and following is not None:
                self.close_item()
                self.lose_verb(element)
        elif kind == "charts_only":
            in_brackets = self.text[element.start] in "(["
            if not ((following is None or in_brackets) and self.takes_charts(element)):
                if not (in_brackets and self.pending):
                    self.close_item()
                self.await_item_of(element)

    def _is_blank_word(self, element: Element) -> bool:
        words = self.text[element.start : element.end].strip(" ,.;:/&|-·*()[]").lower()
        return not words or (self.half is not None and words in AXIS_WORDS)

    def take_semicolon(self, element: Element) -> None:
        """A semicolon, which ends an item only where places stand first."""

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

    def _verb(self, element: Element, following: Element | None, opens: bool) -> None:
        if self.takes_late_verb(element, opens) or self.is_contrary(element):
            return
        self.close_item()
        ends = following is None and not opens
        if is_denied(self.text, element) or holds_no_more(self.text, self.line, element, ends):
            self.lose_verb(element)
            return
        self.verb_lost = self.doubtful = None
        self.held = self.charts if following is None else None
        self.under_verb(element, is_own=following is not None)
        thing, self.thing = self.thing, None
        if thing is not None:
            self.take_thing(thing)

    def _verbs_side_by_side(self, elements: Sequence[Element]) -> None:
        """Verbs that head two columns: which holds for what stands below is not known."""
        self.close_item()
        verbs = [element for element in elements if element.kind == "verb"]
        if len(verbs) < 2:
            self._verb(verbs[0], None, True)
            return
        self.lose_verb(verbs[0]._replace(end=verbs[-1].end))

    def _lost_verb_end(self, line: Line, index: int) -> int | None:
        end = self.lost_verb_end(line, index)
        if end is None and is_lost_behind_stop(self.text, line, index, self.verb):
            element = line.elements[index]
            end = element.start + len(self.text[element.start : element.end].partition(" ")[0])
        return end

    def lost_verb_end(self, line: Line, index: int) -> int | None:
        """Where words end that stand where verbs stand, but are none; None for others."""
        if index > verb_index(self.text, line) or is_title_of_waters(self.text, line, self.lines):
            return None
        return unknown_verb_end(self.text, line, index, self._verb_place, goes_on=self.goes_on)

    def take_lost_verb(self, element: Element, end: int) -> None:
        """Words in the place of a verb: the verb above does not hold for what follows."""
        self.close_item()
        self.under_verb(None)
        self.verb_lost = element._replace(end=end)
        rest = self.text[end : element.end]
        start = end + len(rest) - len(rest.lstrip(" :"))
        if start < element.end:
            self._words(element._replace(start=start), True)

    def _label(self, element: Element, following: Element | None) -> None:
        if following is None or following.kind in PLACES or self.leads_to_end(following):
            self.place_label = element
            return
        if not (self.verb_is_own and self.item is None and not self.pending):
            self.close_item()
        if self.item_label is not None:
            # A letter that heads a list within a list.
            self.scopes.of(self.item_label.value)
        self.item_label = element

    def _words(self, element: Element, opens: bool) -> None:
        if opens and opens_note(self.text[element.start : element.end]):
            self.close_item()
            self.pending.append(element)
            self.give_prose()
            return
        if not self._is_blank_word(element):
            self.take_words(element, opens)

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
        if element.kind == "point":
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
            self._place(lone_half(self.text, half, self.before))

    def close_item(self, *, keep_pending: bool = False) -> None:
        """End the open item; words that wait become its tail, an item, or prose."""
        self._settle_half()
        self._settle_label()
        if self.pending and not keep_pending:
            self._flush()
        if self.verb is not None and self.verb_is_own and self.item is None:
            # A verb with nothing behind it: a heading after all.
            self.verb_is_own = False
        self.item = None

    def _flush(self) -> None:
        words = self.words_of(self.pending)
        item = self.item
        if item is None and self.verb is not None and words.endswith(":"):
            # `Insert in the new basin:` heads a list; the verb is carried down.
            self.verb_is_own = False
            if self.item_label is not None:
                self.scopes.of(self.item_label.value)
                self.item_label = None
            self.give_prose()
            return
        opened, start = item is not None and item.has_place, self.pending[0].start
        if item is not None and opened and self.is_rest_of_name(item, words):
            pieces = [(e.start, e.end) for e in self.pending]
            item.words += pieces
            item.pieces += pieces
            self.pending = []
        elif item is not None and opened and not begins_another(self.text, item, start, words):
            self.give_tail()
        elif (self.verb is not None or self.verb_lost is not None) and (
            self.verb_is_own
            or may_be_item(self.text, start, words)
            or self.goes_on_with_letters(words)
        ):
            self.open_from_pending()
        else:
            self.give_prose()

    def _blank(self) -> None:
        """A blank line ends an item that has its place; a description may still wait for one."""
        item = self.item
        if item is None and self.verb is None and self.words_of(self.pending).isupper():
            # A title in capitals above the sentences of a notice.
            self.give_prose()
        if item and item.has_place and (self.pending or not breaks_off(self.text, item)):
            self.close_item()
