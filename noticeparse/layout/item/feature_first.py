"""Items whose position stands behind the words that it belongs to."""

from __future__ import annotations

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import is_complete, opens_a_line, qualifies
from noticeparse.layout.item.aids_below import says_more
from noticeparse.layout.item.clauses_ahead import is_cut_behind_stop, opens_named_row
from noticeparse.layout.item.cutter import Cutter
from noticeparse.layout.item.further_things import (
    bracket_behind,
    is_broken,
    leads_item,
    lost_thing,
    names_point,
    only_leads,
    thing_aside,
    torn_line,
)
from noticeparse.layout.item.listed_places import links_on
from noticeparse.layout.item.mixed_rows import counted_row_verb, row_verb
from noticeparse.layout.item.states import are_its_sectors, state_told, taken_back
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.joints import says_of_the_same, tells_no_change
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb

_LONGEST_DESCRIPTION = 2000
"""Characters; words that run on for longer describe no feature."""
_READS = ("read", "substitute")
_TOLD = ("ed", "wn", "deld", "estabd")
"""How a participle ends, also one of a telegram."""


class FeatureFirst(Cutter):
    """The position stands behind the words that it belongs to."""

    _state_line: Line | None = None
    """The line that holds a state of the open item."""
    _is_new_state = False
    _robbed: Fault | None = None
    """A place that may belong to the verb behind it, and not to the item that has it."""

    def open_item(self) -> None:
        """Open an item, held back where the place before its verb may be its own."""
        above = self.items[-1:]
        super().open_item()
        item, robbed = self.item, self._robbed
        if item is not None and item.label_piece is not None and above and item.verb_piece is None:
            lost = lost_thing(self.text, above[0], item.label_piece)
            item.faults += [lost] if lost is not None else []
        if item is None or robbed is None or item.verb_piece is None:
            return
        if item.verb_piece[1] == robbed.end:
            item.faults.append(robbed)

    def takes_late_verb(self, element: Element, opens: bool) -> bool:
        """`… and the light in P removed.`: a participle that ends its sentence."""
        if opens and self._is_half(element) and self._takes_state(element, opens):
            return True
        item = self.item
        if self.pending and self._is_read_of_for(element):
            self.pending.append(element)
            return True
        ends = self.following is None or self.text[element.end : element.end + 1] == "."
        told = self.text[element.start : element.end].rstrip(" .").lower().endswith(_TOLD)
        if opens or item is None or not item.has_place or self.pending or not ends:
            return False
        if item.verb_piece is not None:
            if not told or (fault := taken_back(self.text, item, element)) is None:
                return False
            item.faults.append(fault)
            self.lose_verb(element)
            return True
        if not told:
            is_apart = element.gap or self.text[element.start] in "(["
            above = self.text[max(element.start - 80, 0) : element.start].rstrip(" ")
            if is_apart or above[-1:].isalnum():
                # `Rock P delete`: of this row, or above the next ones.
                values = {"written": self.text[element.start : element.end]}
                fault = Fault("sentence-under-verb", element.start, element.end, values)
                item.faults.append(fault)
            return is_apart
        self.set_verb(item, element)
        return True

    def _is_half(self, element: Element) -> bool:
        """Whether a word is `For:` or `Read:` below an amendment or a replacement."""
        words = self.text[element.start : element.end + 1].lower()
        return self.verb is not None and words.rstrip() in ("for:", "read:")

    def _is_read_of_for(self, element: Element) -> bool:
        """Whether a verb is the second half of `For A read B`, `For A substitute B`."""
        opened = self.words_of([self.verb]).lower() if self.verb is not None else ""
        return opened == "for" and self.text[element.start : element.end].lower() in _READS

    def take_words(self, element: Element, opens: bool) -> None:
        """Words go with the item that they stand before, or go on with the words above."""
        if element.kind == "passive":
            self._take_passive(element)
            return
        if self.pending and element.start - self.pending[0].start > _LONGEST_DESCRIPTION:
            self.close_item()
        if self._takes_state(element, opens):
            return
        if opens:
            self._at_line_start(element)
        self.pending.append(element)

    def _takes_state(self, element: Element, opens: bool) -> bool:
        """`OLD   …` or `NEW   …` below a verb, which is told of the item that the verb opens."""
        item = self.item
        if item is not None and self._state_line is self.line:
            self._add_to_state(item, element)
            return True
        if opens and item is not None and self._is_of_state(item, element):
            self._add_to_state(item, element)
            self._state_line = self.line
            return True
        follows = self.following is not None and self.following.kind == "words"
        if not opens or self.verb is None or not follows:
            return False
        told = state_told(self.text[element.start : element.end], self.words_of([self.verb]))
        if told is None:
            return False
        if self.pending:
            self.open_from_pending()
        elif item is None or (told == "old" and item.old):
            self.close_item()
            self.open_item()
        assert self.item is not None
        self.item.pieces.append((element.start, element.end))
        self._state_line, self._is_new_state = self.line, told == "new"
        return True

    def _add_to_state(self, item: Item, element: Element) -> None:
        piece = (element.start, element.end)
        (item.change if self._is_new_state else item.old).append(piece)
        item.pieces.append(piece)

    def _is_of_state(self, item: Item, element: Element) -> bool:
        """Whether a line holds the sectors of the light in the state on the line above."""
        above, line = self._state_line, self.line
        if above is None or line is None or line.row != above.row + 1 or self.pending:
            return False
        return are_its_sectors(self.text, item.change if self._is_new_state else item.old, element)

    def _take_passive(self, element: Element) -> None:
        """`A pier has been built joining …` among commands: the verb of the item it stands in."""
        item = self.item
        said = self.words_of(self.pending)
        leads = self.text[element.end : element.end + 3].lstrip().startswith(":")
        if leads and opens_a_line(self.text, element.start):
            # `To be deleted: rock P` is of what stands behind it.
            self._verb(element, self.following, True)
        elif tells_no_change(said, self.text[element.start : element.end]):
            self.pending.append(element)
        elif item is not None and item.has_place and says_of_the_same(said):
            self._say_again(item, element)
        elif has_kind(said) and not self.verb_is_own:
            self.close_item(keep_pending=True)
            self.passive = element
        elif item is not None and item.has_place and not self.pending and item.verb_piece is None:
            self.set_verb(item, element)
        else:
            self.pending.append(element)

    def _say_again(self, item: Item, element: Element) -> None:
        """`We have found a depth in P; it is to be inserted`: of one thing, one change."""
        verbs = {canonical_verb(item.verb or ""), canonical_verb(self.words_of([element]))}
        start, end = item.pieces[0][0], element.end
        if len(verbs) > 1:
            values = {"written": self.text[start:end]}
            item.faults.append(Fault("sentence-told-twice", start, end, values))
        piece = (self.pending[0].start, element.end)
        item.pieces.append(piece)
        self.pending = []

    def take_place(self, element: Element, label: Element | None) -> None:
        """A place goes to the words before it, or is one more of the open item."""
        self._end_told_states()
        item = self.item
        doubts = self._place_before_verb(element)
        if item is not None and item.has_place and self.pending:
            if names_point(self.text, item, self.words_of(self.pending)):
                self._give_bracket(item)
            if links_on(self.text, item, self.words_of(self.pending)):
                self.add_group(item)
            else:
                self._give_bracket(item)
                item.faults += torn_line(self.text, item, self.pending)
                doubts += thing_aside(self.text, item, self.pending)
                self.open_from_pending()
        elif item is not None and item.change and is_connector(self.words_of(self.pending)):
            self.add_group(item)
        elif self.pending:
            self.open_from_pending()
        elif item is None:
            self.open_item()
        if self.item is not None:
            self.item.faults += doubts
        self.add_place(element, label)

    def _end_told_states(self) -> None:
        """A place below the states of an item that has its own is none of that item."""
        item, states = self.item, self._state_line
        if item is None or states is None or self.pending or not (item.old and item.change):
            return
        if item.has_place and item.pieces[0][0] < states.start and states is not self.line:
            self.close_item()

    def _give_bracket(self, item: Item) -> None:
        """Give a bracket right behind its place to the open item: `wreck P (PA), rock Q`."""
        first = self.pending[0]
        end = bracket_behind(self.text, first)
        if end is None or opens_a_line(self.text, first.start):
            return
        item.tail.append((first.start, end))
        item.pieces.append((first.start, end))
        behind = self.text[end : first.end]
        start = end + len(behind) - len(behind.lstrip(" ,;"))
        self.pending[:1] = [first._replace(start=start)]

    def _place_before_verb(self, place: Element) -> list[Fault]:
        """`At P delete rock.` behind another item: P is the rock's, and is not told apart."""
        verb = self._verb_behind(place)
        if verb is None:
            return []
        link = self.pending[-1] if self.pending else place
        behind_stop = self.text[link.start - 2 : link.start - 1] in (".", ";")
        counted = self.line is not None and counted_row_verb(self.text, self.line, place)
        stands_first = opens_a_line(self.text, link.start) or behind_stop or bool(counted)
        if not stands_first or not (link is place or only_leads(self.text, link)):
            return []
        if self._goes_on_over_line(link, verb) or self._ends_list(link, verb):
            return []
        values = {"written": self.text[link.start : verb.end]}
        self._robbed = Fault("place-before-verb", link.start, verb.end, values)
        return [self._robbed]

    def _goes_on_over_line(self, link: Element, verb: Element) -> bool:
        """`a rock / in P. Delete …`: a sentence that waits for its place, and ends behind it."""
        waits = len(self.pending) > 1 and has_kind(self.words_of(self.pending[:-1]))
        before = self.text[verb.start - 2 : verb.start]
        is_small = self.text[link.start].islower() or self.words_of(self.pending).isupper()
        goes_on = is_small and self.text[link.start - 2] not in ".;:"
        is_next = before == ", " or (before == ". " and self.text[verb.start].isupper())
        return waits and goes_on and is_next

    def _ends_list(self, link: Element, verb: Element) -> bool:
        """`joining P, Q / and R. Move …`: the last place of a list, which ends its sentence."""
        joint = self.text[link.start : link.end].strip(" ,;").lower()
        ends = self.text[verb.start - 2 : verb.start] == ". " and self.text[verb.start].isupper()
        return self.item is not None and self.item.has_place and joint == "and" and ends

    def _verb_behind(self, place: Element) -> Element | None:
        """The verb behind a place on its line, where only more places stand between; or None."""
        if self.line is None or place.start >= self.last_verb:
            return None
        behind = [e for e in self.line.elements if e.start > place.start]
        verb = row_verb(self.text, self.line, place)
        verb = verb or counted_row_verb(self.text, self.line, place)
        if verb is not None:
            return verb
        leads = bool(self.pending)
        for element in behind:
            if element.kind == "verb":
                return element if leads else None
            # A colon leads to what follows; `in P and Q, and insert …` goes on with another.
            leads = self.text[element.start : element.end].strip() == ":"
            if element.kind not in PLACES and not only_leads(self.text, element):
                return None
        return None

    def _at_line_start(self, element: Element) -> None:
        """Decide whether a new line goes on with the words before it or opens an item."""
        words = self.text[element.start : element.end]
        item = self.item
        if self.pending:
            before, start = self.words_of(self.pending), self.pending[0].start
            if item and item.has_place and says_more(self.text, item, start, before):
                goes_on = qualifies(self.text, self.pending[0], element)
                goes_on |= is_broken(item, before)
                goes_on |= is_cut_behind_stop(self.text, self.pending[0], before, words)
                is_row = opens_named_row(self.text, self.pending[0], before, words)
                verb = self.words_of([self.verb]) if self.verb else ""
                if (leads_item(words, verb) and not goes_on) or is_row:
                    self.give_tail()
                return
            is_whole = is_complete(before, is_replacement=self._is_replacement())
            if is_whole and leads_feature(words):
                self.open_from_pending()
                self.close_item()

    def _is_replacement(self) -> bool:
        verb = self.words_of([self.verb]) if self.verb else ""
        return canonical_verb(verb) == "replace"
