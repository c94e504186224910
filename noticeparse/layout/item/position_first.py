"""Items whose position stands in front of the words that it belongs to, or on a line above."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item
from noticeparse.layout.evidence import split_lead, tells, verb_places
from noticeparse.layout.item.clauses_ahead import (
    elements_behind,
    is_row_of,
    opens_clause,
    opens_led_row,
)
from noticeparse.layout.item.cutter import Cutter
from noticeparse.layout.item.listed_places import (
    awaits_places,
    ends_in_to,
    is_meant,
    is_to_behind_place,
    links_in_list,
    names_what_follows,
)
from noticeparse.layout.item.mixed_rows import row_verb
from noticeparse.layout.item.position_sides import stands_above
from noticeparse.layout.item.same_places import (
    begins_thing,
    open_behind_verb,
    places_of,
    shares_places,
)
from noticeparse.layout.item.things_before_verbs import ends_behind_thing
from noticeparse.layout.item.unknown_verbs import is_like_a_verb
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.led_places import feature_column, has_letter, is_listed
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.openings import unknown_first_word
from noticeparse.readers.places import is_connector, read_phrase, split_phrase


class PositionFirst(Cutter):
    """The position stands in front of the words that it belongs to, or on a line above them."""

    def __init__(self, text: str, lines: Sequence[Line]) -> None:
        super().__init__(text, lines)
        self._related_in: Line | None = None
        """The line whose words lead to a second place: `P Move buoy to Q`."""
        self._is_above = stands_above(text, lines)
        self._is_listed = is_listed(lines)
        self._verb_places = verb_places(lines)
        first = next((line for line in lines if line.elements), None)
        self._verbs_lead = first is not None and first.has("verb") and first.has("point")
        """Whether each item opens with its verb and its first place on one line."""
        self._led: Item | None = None
        """An item whose feature stands before its places all the same."""
        self._feature_column = feature_column(text, lines) if self._is_listed else 0

    def takes_late_verb(self, element: Element, opens: bool) -> bool:
        """A verb between the place and the words is that of the open item."""
        item = self.item
        is_told = self.following is None and ends_behind_thing(self.text, element)
        leads_here = not opens or self._is_above or self._goes_on_over_line(element)
        if item is None or not (is_told or (not item.words and leads_here)):
            return False
        item = open_behind_verb(self, item)
        self.set_verb(item, element)
        self.verb = element
        return True

    def _goes_on_over_line(self, verb: Element) -> bool:
        """Whether a small verb goes on with a sentence that a line end broke behind its place."""
        places = self.item.places if self.item is not None else []
        behind = self.text[places[-1].element.end : verb.start] if places else ""
        return self.text[verb.start].islower() and behind.strip(" ,") == "\n"

    def take_semicolon(self, element: Element) -> None:
        """End a whole item before the place of the next: `in P insert rock; in Q delete buoy`."""
        item = self.item
        is_whole = self._tells_another() if item is None else item.words and item.verb_piece
        behind = elements_behind(self.lines, element) if is_whole else []
        if opens_clause(self.text, behind, by_verb=item is not None and item is self._led):
            self.close_item()

    def _tells_another(self) -> bool:
        """Whether the words that wait are a thing under a verb of its own."""
        return self.verb_is_own and has_kind(self.words_of(self.pending))

    def open_from_pending(self) -> None:
        """Open an item described by the words that wait, perhaps at places told before it."""
        above, verb = self.items[-1:], self.verb if self.verb_is_own else None
        super().open_from_pending()
        if above and verb and self.item and shares_places(self.text, above[0], verb):
            self.item.groups = places_of(above[0])

    def take_thing(self, thing: Element) -> None:
        """Whether the place of such a thing stands before or behind it is not told."""
        self.verb_lost = thing._replace(end=(self.verb or thing).end)
        self.under_verb(None)
        self.pending.append(thing)

    def take_lost_verb(self, element: Element, end: int) -> None:
        """The item of the position in front of the word is lost; the verb above does not hold."""
        if self._opens_row(element):
            super().take_lost_verb(element, end)
            return
        start = element.start
        written = {"written": self.text[start:end]}
        self.verb, self.verb_is_own = None, False
        if self.item is not None:
            self.item.verb = None
            self.item.faults.append(Fault("verb-unknown", start, end, written))
            self.item.pieces.append((start, end))

    def lost_verb_end(self, line: Line, index: int) -> int | None:
        """The end of words in the column of the verbs, with words behind them, but no verb."""
        if self._opens_row(line.elements[index]):
            return super().lost_verb_end(line, index)
        if index not in self._verb_places:
            return None
        element, *behind = line.elements[index:]
        words = self.words_of([element])
        is_lost = any(e.kind == "words" and e.gap for e in behind) and is_like_a_verb(words)
        return element.end if is_lost and not is_connector(words) else None

    def _opens_row(self, element: Element) -> bool:
        """Whether words stand where the verbs of rows do, in front of the first place."""
        before = self.line.elements if self.line is not None and self._verbs_lead else ()
        return bool(before) and not any(
            e.kind in PLACES and e.start < element.start for e in before
        )

    def take_words(self, element: Element, opens: bool) -> None:
        """Words describe what lies at the place before them."""
        words = self.text[element.start : element.end]
        if opens and self._leads_its_places(element, words):
            self.close_item()
            self.pending.append(element)
            self.open_from_pending()
            self._led = self.item
            return
        if opens and (
            self._begins_sentence(words)
            or self._leads_to_row(element, words)
            or self._opens_led_row(element)
        ):
            self.close_item()
        above = self.item
        if opens and above is not None and begins_thing(self.text, above, element):
            self._open_beside(above)
        item = self.item
        if item is not None and not item.words and item.verb_piece is None:
            # `In P, eliminate the buoy`: no verb above holds for what has a word of its own.
            told = words.lstrip(" ,").split()
            article = len(told) > 2 and told[1].lower() in ("the", "a", "an")
            if article and unknown_first_word(words.lstrip(" ,")) is not None:
                self.take_lost_verb(element, element.end)
                return
        if item is not None and item is not self._led and is_to_behind_place(item, words):
            # The destination of a move stands before its `to`.
            last = item.groups[-1].places.pop()
            item.groups.append(Group(role="to", places=[last]))
            item.pieces.append((element.start, element.end))
            return
        if item is None or ((not item.words or item is self._led) and is_connector(words)):
            self.pending.append(element)
            return
        if not links_in_list(self.text, item, element):
            item.words.append((element.start, element.end))
        item.pieces.append((element.start, element.end))

    def _open_beside(self, above: Item) -> None:
        """Open an item at the places of the one above."""
        self.close_item()
        self.open_item()
        if self.item is not None:
            self.item.groups = places_of(above)

    def _leads_to_row(self, element: Element, words: str) -> bool:
        """Whether words lead to letters with a feature of their own: `At (c) above   buoy`."""
        if not self._is_listed or any(p.kind == "words" for p in read_phrase(words)):
            return False
        behind = [e for e in self.line.elements if e.start > element.start] if self.line else []
        return bool(behind) and is_row_of(self.text, self.line, behind[0])

    def _opens_led_row(self, element: Element) -> bool:
        """Whether words behind a whole item lead to places that have a thing of their own."""
        item = self.item
        if item is None or not item.words or not item.has_place or item is self._led:
            return False
        return opens_led_row(self.text, element, elements_behind(self.lines, element))

    def _leads_its_places(self, element: Element, words: str) -> bool:
        """Whether a feature without a letter stands left of the others: its places follow it."""
        if self.line is None or element.start - self.line.start >= self._feature_column:
            return False
        return leads_feature(words)

    def _begins_sentence(self, words: str) -> bool:
        """Whether words that only lead to a place stand behind the full stop of an item."""
        item = self.item
        if item is None or not item.words or item is self._led:
            return False
        if split_phrase(words).description_end:
            return False
        leads = words.split()[0].lower() in ("at", "in", "from", "on")
        if leads and has_kind(" ".join(self.text[a:b] for a, b in item.words)):
            return True
        end = item.pieces[-1][1]
        stop = self.text[end - 1 : end + 1].strip(" \n")
        return stop[-1:] in (".", ";")

    def take_place(self, element: Element, label: Element | None) -> None:
        """A place opens an item, unless the words before it lead on to it."""
        item = self.item
        if item is None and self._tells_another():
            super().open_from_pending()
            self._led = self.item
            self.add_place(element, label)
            return
        if item is not None and names_what_follows(self.text, item, element):
            self._leads_on(item)
            item.pieces.append((element.start, element.end))
            self._led = item
            return
        if item is not None and item is self._led and not self._opens_item(element, label):
            if self.pending:
                self.add_group(item)
            self.add_place(element, label)
            return
        if item is not None and self._leads_on(item):
            self.add_place(element, label)
            return
        item = self.item
        if item is not None and (
            self.line is self._related_in
            or (self._is_listed and self._is_further(item, element, label))
        ):
            self.add_place(element, label)
            return
        if item is None or (
            item.words
            and not awaits_places(self.text, item, self.line, verbs_lead=self._verbs_lead)
        ):
            self.close_item(keep_pending=True)
            self.open_item()
            item = self.item
        assert item is not None
        if self.pending:
            self.add_group(item)
        self.add_place(element, label)

    def _is_further(self, item: Item, element: Element, label: Element | None) -> bool:
        """Whether a place of a list with letters is one more of the item above.

        One without a letter is, where no thing of its own stands behind it.
        """
        if label is not None:
            return is_meant(self.text, self.line, item, element, label)
        opens = self.line is not None and self.line.elements[0] is element
        return has_letter(item) and not (opens and is_row_of(self.text, self.line, element))

    def _opens_item(self, element: Element, label: Element | None) -> bool:
        """Whether a place opens its row, with a command behind it or, lettered, with words."""
        if self.line is not None and row_verb(self.text, self.line, element) is not None:
            return True
        elements = self.line.elements if self.line and label is not None else ()
        return any(e.start > element.end and tells(self.text, e) for e in elements)

    def _leads_on(self, item: Item) -> bool:
        """Whether the words just before, on this line, end with a relation to what follows."""
        if self.line is None or not item.words:
            return False
        if item.words[-1][0] < self.line.start and not ends_in_to(self.text, item):
            return False
        words, relation = split_lead(self.text, item.words)
        if not relation or not words or (item.groups and item.groups[-1].lead == relation):
            return False
        link = " ".join(self.text[start:end] for start, end in relation)
        links = link.lower().replace(",", " ").split()
        commands = self.following is not None and self.following.kind == "verb"
        is_led = commands and item.verb_piece is not None and {*links} <= {"in", "at"}
        if is_connector(link) and ("and" in links or is_led):
            # `the sounding 7.4 m and, in P, the sounding 8.1 m`, `in P insert wreck, in Q delete`:
            # the place of the next item.
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
