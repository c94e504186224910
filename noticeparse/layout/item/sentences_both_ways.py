"""Bodies of sentences, some of which have their places in front of the verb and others behind it.

    In 46°30'12"S 122°40'54"W insert a wreck.
    Insert a cable joining 46°35'00"S 122°45'00"W
    and 46°35'24"S 122°46'12"W.
    From 46°31'00"S 122°41'00"W to 46°31'06"S 122°41'12"W move the buoy.

Each sentence is whole in itself, wherever its lines end: it begins at the head of a line, ends
with a full stop or a semicolon or where the next opens with a capital, and has one verb.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import lead_index, tells
from noticeparse.layout.item.verb_last import Stretch
from noticeparse.layout.line.element_kinds import PLACES, ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb

_STOPS = (".", ";")
_NEVER: tuple[ElementKind, ...] = ("passive", "chart", "number", "key")
_MARKS = ("label", "bar")


def sentences_both_ways(text: str, lines: Sequence[Line]) -> list[Stretch]:
    """The sentences of such a body; none for another body."""
    sentences = _sentences(text, lines)
    ways = [_has_places_in_front(text, one) for one in sentences]
    if None in ways or not (True in ways and False in ways):
        return []
    return [Stretch(one, None) for one in sentences]


def leads_with_places(text: str, sentence: Stretch) -> bool:
    """Whether the places of a sentence stand in front of its verb."""
    return _has_places_in_front(text, sentence.lines) is True


def hold_before_verbs(text: str, items: Sequence[Item]) -> None:
    """Hold back an item whose last place opens the line of the next verb, and that of the verb.

    `… insert the pile.` above `In P delete the rock and …`: P is that of the rock.
    """
    for above, item in pairwise(items):
        if item.verb_piece is None or not (above.words and above.places):
            continue
        place, (verb, end) = above.places[-1].element, item.verb_piece
        start = text.rfind("\n", 0, place.start) + 1
        lead = text[start : place.start].strip()
        is_next = place.end <= verb and not text[place.end : verb].strip(" ,:")
        if above.words[0][0] > start or not is_next or not text[verb].islower():
            continue
        if lead[:1].isupper() and is_connector(lead):
            start = text.index(lead, start)
            fault = Fault("place-before-verb", start, end, {"written": text[start:end]})
            for one in (above, item):
                if all(told.code != fault.code for told in one.faults):
                    one.faults.append(fault)


def _sentences(text: str, lines: Sequence[Line]) -> list[list[Line]]:
    """The lines, those of one sentence together."""
    found: list[list[Line]] = []
    ends = True
    for line in lines:
        if line.is_blank:
            continue
        if ends or _opens(text, line):
            found.append([])
        found[-1].append(line)
        ends = text[line.start : line.end].rstrip().endswith(_STOPS)
    return found


def _opens(text: str, line: Line) -> bool:
    """Whether a line opens a sentence by itself: with its verb, or with `In` and a place."""
    first, *behind = line.elements[lead_index(line) :] or line.elements
    if first.kind == "verb":
        return True
    is_lead = first.kind == "words" and text[first.start].isupper() and _leads(text, first)
    return is_lead and bool(behind) and behind[0].kind in PLACES


def _has_places_in_front(text: str, lines: Sequence[Line]) -> bool | None:
    """Whether a sentence has its places in front of its verb; None where it is none of these."""
    if any(line.has(*_NEVER) for line in lines):
        return None
    elements = [e for line in lines for e in line.elements[lead_index(line) :]]
    at = [index for index, one in enumerate(elements) if one.kind == "verb"]
    if len(at) != 1:
        return None
    before, verb, behind = elements[: at[0]], elements[at[0]], elements[at[0] + 1 :]
    has_places = any(one.kind in PLACES for one in behind)
    if not any(tells(text, one) for one in behind):
        return None
    if not before:
        return False if has_places else None
    only_places = any(e.kind in PLACES for e in before) and all(_leads(text, e) for e in before)
    goes_to = canonical_verb(text[verb.start : verb.end]) == "move"
    return True if only_places and (goes_to or not has_places) else None


def _leads(text: str, element: Element) -> bool:
    """Whether an element is a place, or words that only lead to one."""
    if element.kind in PLACES or element.kind in _MARKS:
        return True
    return element.kind == "words" and is_connector(text[element.start : element.end])
