"""Bodies whose verbs stand behind feature and position: `Wreck 47-06.0S 125-16.9W - delete`.

Each stretch up to the end of a verb's line is one item.  Its verb is put in front of it, and the
stretch is then cut like any other.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import PROPERTIES, tells
from noticeparse.layout.item.things_before_verbs import behind_thing
from noticeparse.layout.item.told_states import State
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import leads_feature
from noticeparse.readers.places import read_phrase

_VERBS = ("verb", "passive")
_MARKS = (":", " -", " .")
FIELD_MARKS = ("/", "|", "-", ":")
"""What ends the field before that of a verb."""
_PROPERTY_FIELD = re.compile(rf"[/|:-] ?{PROPERTIES}", re.IGNORECASE)
# What ends the words of a feature with several places.
_LISTS = ("joining", "bounded by", "between", "limits")
_OPENING = ("bar", "label")
# What may follow the verb on its line: where to, or what the feature becomes.
_GOES_ON = ("to", "into", "from", "by", "with")


class Stretch(NamedTuple):
    """The lines of one item, its verb in front; the last stretch of a body may have none."""

    lines: list[Line]
    verb: Element | None
    change: tuple[Piece, ...] = ()
    """What the feature becomes, where that stands apart from it."""
    states: tuple[State, ...] = ()
    """Its former and its new state, where they are told below it."""
    told: tuple[Piece, ...] = ()
    """The lines that tell them."""


def stands_verb_last(text: str, lines: Sequence[Line]) -> bool:
    """Whether every verb has its feature and a position before it, and opens no item itself."""
    count = 0
    has_feature = has_place = False
    for line in lines:
        for index, element in enumerate(line.elements):
            if element.kind in PLACES:
                has_place = True
            elif tells(text, element):
                has_feature = True
            elif element.kind in _VERBS:
                if not (has_place and has_feature and _is_last(text, line, index)):
                    return False
                count += 1
                has_place = has_feature = False
    return count > 0


def stands_in_the_middle(text: str, lines: Sequence[Line]) -> bool:
    """Whether the verbs stand between feature and place: `Wreck [remove] P`.

    One alone does behind a colon, where it is the only one: `Wreck: remove in P`.
    """
    if sum(_middle(text, line) is not None for line in lines) > 1:
        return True
    verbs = [i for line in lines for i, e in enumerate(line.elements) if e.kind in _VERBS]
    return bool(verbs) and len(verbs) == sum(behind_thing(text, one) is not None for one in lines)


def _middle(text: str, line: Line) -> int | None:
    """The index of a verb between a feature and its place, in brackets or behind a mark."""
    for index, element in enumerate(line.elements):
        if element.kind in _VERBS:
            before, behind = line.elements[:index], line.elements[index + 1 :]
            is_told = any(tells(text, e) for e in before)
            if text[element.start] in "[(":
                # `wreck (insert), rock (delete)`: the first is not that of both.
                is_only = not any(e.kind in _VERBS for e in behind)
                return index if is_told and is_only else None
            places = [any(e.kind in PLACES for e in one) for one in (before, behind)]
            if not is_told or places != [False, True] or not _is_marked(text, before, element):
                return None
            alone = not any(e.kind in _VERBS or _is_more(text, e) for e in behind)
            return index if alone else None
    return None


def _is_more(text: str, element: Element) -> bool:
    """Whether words behind such a verb are more than a relation, or what the feature becomes.

    `Light: amend to Fl.5s in P`, `Farm: insert, bounded by P, Q and R`.
    """
    if not tells(text, element):
        return False
    parts = read_phrase(text[element.start : element.end])
    becomes = parts[0].kind == "to" and parts[-1].kind != "words"
    return not becomes and any(part.kind == "words" for part in parts)


def _is_marked(text: str, before: Sequence[Element], verb: Element) -> bool:
    """Whether a verb follows a dash or colon, or is an order by itself: `Wreck to be inserted`."""
    is_order = verb.kind == "passive" and text[verb.start : verb.end].lower().startswith("to be ")
    if is_order or verb.kind == "passive":
        colon = bool(before) and text[before[-1].start : before[-1].end].rstrip().endswith(":")
        return is_order or colon
    if verb.gap:
        # In a column of its own, behind dots or blanks.
        return True
    return bool(before) and text[before[-1].start : before[-1].end].rstrip().endswith(_MARKS)


def _without_mark(text: str, elements: Sequence[Element]) -> list[Element]:
    """Elements without the dash or colon at their end, which belongs to the verb behind them."""
    kept = list(elements)
    if kept and kept[-1].kind == "words":
        words = text[kept[-1].start : kept[-1].end].rstrip(" -:,")
        kept[-1] = kept[-1]._replace(end=kept[-1].start + len(words))
    return kept


def middle_stretches(text: str, lines: Sequence[Line]) -> Iterator[Stretch]:
    """The stretches of such a body: a line with words of a feature, and the places below it."""
    kept: list[Line] = []
    verb: Element | None = None
    for line in lines:
        is_place = bool(line.elements) and line.elements[0].kind in PLACES
        goes_on = is_place and not line.has("verb", "passive")
        if not goes_on and any(tells(text, e) for e in line.elements):
            if kept:
                yield Stretch(led(kept, verb), verb)
            at = _middle(text, line)
            at = behind_thing(text, line) if at is None else at
            verb = line.elements[at] if at is not None else None
            kept = []
            if at is not None:
                before = _without_mark(text, line.elements[:at])
                line = line._replace(elements=(*before, *line.elements[at + 1 :]))
        kept.append(line)
    if kept:
        yield Stretch(led(kept, verb), verb)


def _is_last(text: str, line: Line, index: int) -> bool:
    """Whether a verb stands at the end of a line that holds more than the verb."""
    verb, before, behind = line.elements[index], line.elements[:index], line.elements[index + 1 :]
    if not any(e.kind in PLACES or tells(text, e) for e in before):
        return False
    if verb.kind == "passive" and not verb.gap and not _is_order(text, before, verb):
        # A sentence: `The buoy in P has been removed`.
        return False
    if any(e.kind in _VERBS for e in behind):
        return False
    words = next((text[e.start : e.end] for e in behind if e.kind == "words"), "").lstrip(" -:,")
    if not words:
        return not any(e.kind in PLACES for e in behind)
    return _goes_on(words) or not leads_feature(words)


def _is_order(text: str, before: Sequence[Element], verb: Element) -> bool:
    """Whether a passive is an order in a field of its own: `Wreck / P / to be deleted`.

    What is altered of the feature may open that field: `Light / P / range to be altered to 3M`.
    """
    said = text[before[-1].start : before[-1].end].strip()
    is_field = said.endswith(FIELD_MARKS) or _PROPERTY_FIELD.fullmatch(said) is not None
    return is_field and text[verb.start : verb.end].lower().startswith("to be ")


def leads_to_new(text: str, element: Element) -> bool:
    """Whether words behind a verb lead to what comes of the thing before it: `by a light`."""
    return _goes_on(text[element.start : element.end].lstrip(" -:,"))


def _goes_on(words: str) -> bool:
    return words.partition(" ")[0].strip(".,:").lower() in _GOES_ON


def stretches(text: str, lines: Sequence[Line]) -> Iterator[Stretch]:
    """The stretches of a body, in order; a line that breaks off takes the next one along."""
    kept: list[Line] = []
    verb: Element | None = None
    is_marked = opens_with_marks(lines)
    for line in lines:
        at = next((i for i, e in enumerate(line.elements) if e.kind in _VERBS), None)
        goes_on = bool(kept) and (
            _breaks_off(text, kept[-1])
            or (_lists_places(text, kept) and _is_place(text, line))
            or (is_marked and bool(line.elements) and line.elements[0].kind not in _OPENING)
        )
        if verb is not None and not goes_on:
            yield Stretch(led(kept, verb), verb)
            kept, verb = [], None
        if at is None:
            if verb is not None:
                above = kept.pop()
                line = line._replace(start=above.start, elements=(*above.elements, *line.elements))
            kept.append(line)
            continue
        if verb is not None:
            yield Stretch(led(kept, verb), verb)
            kept = []
        verb = line.elements[at]
        before = list(line.elements[:at])
        while before and not _has_letters(text, before[-1]):
            before.pop()
        before = _without_mark(text, before)
        kept.append(line._replace(elements=(*before, *line.elements[at + 1 :])))
    yield Stretch(led(kept, verb), verb)


def opens_with_marks(lines: Sequence[Line]) -> bool:
    """Whether each line behind one with a verb opens with a mark, or stands further in.

    In `- light P, replace by light`, and below it `Fl.5s`, the second line goes on.
    """
    told = [line for line in lines if not line.is_blank]
    verbs = [line for line in told if line.has("verb", "passive")]
    return len(verbs) > 1 and all(line.elements[0].kind in _OPENING for line in verbs)


def _breaks_off(text: str, line: Line) -> bool:
    """Whether a line ends with `moved to` and has the place on the next."""
    last = next((e for e in reversed(line.elements) if _has_letters(text, e)), None)
    if last is None or last.kind != "words":
        return False
    return text[last.start : last.end].rstrip(" :,").rpartition(" ")[2].lower() in _GOES_ON


def _lists_places(text: str, lines: Sequence[Line]) -> bool:
    """Whether words so far announce several places: `cable, joining`."""
    words = [text[e.start : e.end] for line in lines for e in line.elements if e.kind == "words"]
    return any(one.rstrip(" :,").lower().endswith(_LISTS) for one in words)


def _is_place(text: str, line: Line) -> bool:
    """Whether a line holds places and nothing that tells of a feature."""
    return line.has("point", "half") and not any(tells(text, e) for e in line.elements)


def _has_letters(text: str, element: Element) -> bool:
    return any(c.isalnum() for c in text[element.start : element.end])


def led(lines: list[Line], verb: Element | None) -> list[Line]:
    """The lines, with the verb before the first that holds anything."""
    first = next((i for i, line in enumerate(lines) if line.elements), None)
    if verb is None or first is None:
        return lines
    marks = 0
    elements = lines[first].elements
    while marks < len(elements) and elements[marks].kind in ("bar", "label"):
        marks += 1
    # The verb is part of the line, so that its column tells nothing of others.
    led = (*elements[:marks], verb._replace(kind="verb", gap=False), *elements[marks:])
    return [*lines[:first], lines[first]._replace(elements=led), *lines[first + 1 :]]


def settle_verbs(text: str, items: list[Item]) -> None:
    """Of several items in one stretch only the last, which the verb follows, is sure of it.

    Those that a comma or `and` joins on one line have it too: `Wreck P and rock Q inserted`.
    """
    if len(items) < 2:
        return
    first, last = items[0], items[-1]
    last.verb, last.verb_piece = first.verb, first.verb_piece
    if first.verb_piece is not None:
        first.pieces.remove(first.verb_piece)
        last.pieces.append(first.verb_piece)
    verb = last.verb if all(_is_joined(text, a, b) for a, b in pairwise(items)) else None
    for item in items[:-1]:
        item.verb, item.verb_piece = verb, None


def _is_joined(text: str, item: Item, following: Item) -> bool:
    """Whether a comma or `and` on the line of an item leads to the next."""
    if not item.has_place or not following.words:
        return False
    start, end = item.places[-1].element.end, following.words[0][1]
    words = text[start:end].lstrip()
    return "\n" not in text[start:end] and words.lower().startswith((", ", "and ", "& "))
