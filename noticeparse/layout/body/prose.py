"""Prose: the body of temporary notices and radio warnings, and the sentences of a port's notices.

Prose is cut into paragraphs.  In a permanent notice a sentence such as `The buoy in … has been
moved to …` is an action; every other sentence stays prose.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import chain, pairwise

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item, Place, Prose
from noticeparse.layout.evidence import opens_a_line, opens_paragraph, split_lead
from noticeparse.layout.item.items import Body
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.line.halves import join_points
from noticeparse.layout.line.joints import tells_no_change
from noticeparse.layout.sentence.clauses_of_sentences import clauses
from noticeparse.layout.sentence.lead_words import lead_faults
from noticeparse.layout.sentence.line_leads import blocks_of_items
from noticeparse.layout.sentence.sentences import (
    sentences,
    statements_within,
    with_places_behind,
    without_article,
)
from noticeparse.layout.sentence.things_behind_verbs import (
    own_elements,
    things_behind,
    verb_ahead,
)
from noticeparse.layout.sentence.things_placed_behind import is_of_first, things_placed_behind
from noticeparse.layout.sentence.things_told import things_told
from noticeparse.layout.sentence.told_elsewhere import told_elsewhere
from noticeparse.layout.sentence.unknown_things import unknown_thing
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import is_connector, read_phrase, split_phrase
from noticeparse.readers.verbs import canonical_verb

# `has been removed and replaced by`: a second change behind `and`.
_AND_WORD = re.compile(r"\band (?:then )?([a-z-]+ed|re-?laid|laid)\b")


def cut_prose(text: str, lines: Sequence[Line]) -> Iterator[Prose]:
    """The paragraphs of prose: a blank line or a numbered line opens the next one."""
    elements: list[Element] = []
    for line in lines:
        opens = line.is_blank or opens_paragraph(text, line)
        if opens and elements and not line.is_blank and _lists_on(text, elements, line):
            opens = False
        if opens and elements:
            yield paragraph(text, elements)
            elements = []
        elements += line.elements
    if elements:
        yield paragraph(text, elements)


def _lists_on(text: str, above: Sequence[Element], line: Line) -> bool:
    """Whether a line goes on with lettered places: `by (1) P; (2) Q;` and below `(3) R`."""
    label, *behind = line.elements
    if label.kind != "label" or not behind or behind[0].kind not in ("point", "half"):
        return False
    if text[label.start].isupper() and all(e.kind in ("point", "half") for e in behind):
        # `IN AREA BOUNDED BY` and below it `A. P`
        return True
    last = text[above[-1].start : line.start].rstrip()
    if not last.endswith((";", ",", " and", "&")):
        return False
    lettered = [b for a, b in pairwise(above) if a.kind == "label" and b.kind in ("point", "half")]
    told = next((e for e in reversed(above) if e.kind in _TELLING), None)
    return bool(lettered) and told is not None and told.start < lettered[-1].start


_TELLING = ("passive", "verb")


def paragraph(text: str, elements: Sequence[Element]) -> Prose:
    """A paragraph of these elements, its parted positions joined."""
    joined = list(join_points(text, elements))
    return Prose([(e.start, e.end) for e in elements], joined)


def cut_sentences(text: str, lines: Sequence[Line]) -> Body:
    """Sentences that tell of a change as items, the others as prose."""
    body = Body([], [], [])
    blocks = chain.from_iterable(cut_prose(text, block) for block in blocks_of_items(text, lines))
    told = chain.from_iterable(sentences(text, block.elements) for block in blocks)
    for sentence in with_places_behind(text, told):
        for statement, item in sentence_items(text, sentence):
            if item is not None:
                body.items.append(item)
            else:
                body.prose.append(Prose([(e.start, e.end) for e in statement], statement))
    return body


def sentence_items(
    text: str, sentence: Sequence[Element]
) -> Iterator[tuple[list[Element], Item | None]]:
    """The statements of a sentence, each with its item if it is one.

    In `In P a wreck is inserted and the rock is deleted` the place is that of both; where it
    stands within one of them, the other has none, and is an item that lacks its place.
    """
    within = clauses(text, sentence)
    parts = [
        thing
        for clause in within.parts
        for statement in statements_within(text, clause)
        for thing in _things(text, statement)
    ]
    placed = [any(e.kind in PLACES for e in part) for part in parts]
    lead = _leading_places(text, parts[0])
    for part, has_place in zip(parts, placed, strict=True):
        if has_place or not any(placed):
            item = _sentence_item(text, part)
            if item is not None and within.is_open:
                item.faults.append(_told_twice(text, sentence))
            yield part, item if item is not None and item.has_place else None
            continue
        item = _sentence_item(text, [*lead, *part])
        if item is not None:
            item.pieces = [(e.start, e.end) for e in part]
            said = [(e.start, e.end) for e in part if e.kind == "words"]
            item.faults += told_elsewhere(text, said)
        yield part, item


def _things(text: str, statement: list[Element]) -> list[list[Element]]:
    ahead = verb_ahead(text, statement)
    if ahead is None:
        told = things_told(text, statement)
        return told if len(told) > 1 else things_placed_behind(text, statement)
    return things_behind(text, statement, ahead)


def _leading_places(text: str, statement: Sequence[Element]) -> list[Element]:
    """The places that open a statement, with the words before them."""
    lead: list[Element] = []
    for element in statement:
        words = text[element.start : element.end]
        relates = element.kind == "words" and not split_phrase(words).description_end
        if not relates and element.kind not in PLACES:
            break
        lead.append(element)
    while lead and lead[-1].kind not in PLACES:
        lead.pop()
    return lead


def _sentence_item(text: str, sentence: list[Element]) -> Item | None:
    index = next((i for i, e in enumerate(sentence) if e.kind == "passive"), None)
    if index is None:
        return None
    passive = sentence[index]
    # Where the subject stands behind its verb, all that is told counts as before the verb.
    is_ahead = verb_ahead(text, sentence) is not None or is_of_first(text, sentence)
    turn = sentence[-1].end if is_ahead else passive.start
    before = [e for e in sentence[:index] if e.kind != "passive"]
    if is_ahead:
        before = sentence[index + 1 :]
    words = words_of(text, (e for e in before if e.kind == "words"))
    told = " ".join(text[sentence[0].start : sentence[-1].end].split())
    if not has_kind(words) or tells_no_change(told, text[passive.start : passive.end]):
        return None
    item = Item(verb=text[passive.start : passive.end], verb_piece=(passive.start, passive.end))
    times = max(sum(e.kind == "passive" for e in sentence), told.count(" been "))
    is_one = times == 1 or _says_again(text, sentence)
    if not is_one or any(
        canonical_verb(word) or word.endswith("laid") for word in _AND_WORD.findall(told)
    ):
        item.faults.append(_told_twice(text, sentence))
    if sentence[0].kind == "label":
        item.faults += lead_faults(text, (sentence[0].start, sentence[0].end))
    lead: list[Element] = []
    for element in sentence[index + 1 :] if is_ahead else sentence:
        if element.kind == "passive":
            continue
        if element.kind in PLACES:
            is_before = element.start < turn and _names_another(text, lead)
            if item.groups and (is_before or _opens_another(text, lead, element)):
                item.faults.append(_told_twice(text, sentence))
            elif item.groups and element.start < turn:
                item.faults += unknown_thing(text, item, lead)
            if item.groups and not item.words:
                # `P: buoy has been moved to Q`: the feature stands between its place and verb.
                item.words = [(e.start, e.end) for e in lead if e.start < turn]
                lead = lead[len(item.words) :]
            _add_place(text, item, lead, element, is_behind=element.start > turn)
            lead = []
        elif element.kind == "words":
            lead.append(element)
    _add_rest(text, item, lead, turn)
    own = own_elements(text, sentence, index) if is_ahead else sentence
    item.pieces = [(e.start, e.end) for e in own]
    return item


def _told_twice(text: str, sentence: Sequence[Element]) -> Fault:
    """Which of its verbs holds for what in a sentence is not told."""
    extent = (sentence[0].start, sentence[-1].end)
    return Fault("sentence-told-twice", *extent, {"written": text[slice(*extent)]})


def _names_another(text: str, lead: Sequence[Element]) -> bool:
    """Whether words between two places name a second feature: `A wreck in P and a rock in Q`."""
    words = words_of(text, lead).lstrip(" ,;").removeprefix("and ")
    named = without_article(words.lstrip())
    return named != words.lstrip() and leads_feature(named)


def _opens_another(text: str, lead: Sequence[Element], place: Element) -> bool:
    """Whether words between two places open a line with a feature: a row below a heading."""
    solid = [e for e in lead if text[e.start : e.end].strip(" ,.")]
    words = words_of(text, solid)
    if solid and not any(char.isalpha() for char in words):
        # A figure on the line of the place above, or below: `P  6.2`.
        return any(opens_a_line(text, e.start) for e in (solid[0], place))
    if not solid or not opens_a_line(text, solid[0].start):
        return False
    return leads_feature(words) and not is_connector(words)


def _says_again(text: str, sentence: Sequence[Element]) -> bool:
    """Whether its verbs tell of one change: `has been erected and is to be inserted`."""
    told = [i for i, element in enumerate(sentence) if element.kind == "passive"]
    between = sentence[told[0] : told[-1] + 1]
    verbs = {canonical_verb(text[e.start : e.end]) for e in between if e.kind == "passive"}
    apart = ("passive", "point", "half", "reference")
    links = [text[e.start : e.end].strip(" ,") for e in between if e.kind not in apart]
    been = " ".join(text[sentence[0].start : sentence[-1].end].split()).count(" been ")
    return (
        len(verbs) == 1 and "and" in links and all(map(is_connector, links)) and been <= len(told)
    )


def _add_place(
    text: str, item: Item, lead: list[Element], place: Element, *, is_behind: bool
) -> None:
    words = words_of(text, lead)
    pieces = [(e.start, e.end) for e in lead]
    if not item.words and not item.groups:
        item.words, relation = split_lead(text, pieces)
        if words and not split_phrase(words).description_end:
            # `In position P a wreck …`: the feature stands behind its place.
            item.words, relation = [], pieces
        item.groups.append(Group(lead=relation))
    elif item.groups and not words.strip(" ,.;"):
        pass
    elif is_behind or is_connector(words) or _is_of_another(words):
        item.groups.append(Group(lead=pieces))
    else:
        item.tail += pieces
        item.groups.append(Group())
    item.groups[-1].places.append(Place(place))


def _is_of_another(words: str) -> bool:
    """Whether words between two places lead to that of another thing: `near the rock in`."""
    first = words.lower().lstrip(" ,;").partition(" ")[0]
    parts = [words[part.start : part.end] for part in read_phrase(words) if part.kind == "words"]
    return first in ("not", "instead", "rather", "but") or any(map(has_kind, parts))


def _add_rest(text: str, item: Item, lead: list[Element], turn: int) -> None:
    """Words behind the last place: what the feature becomes, or a remark."""
    changes, is_change = canonical_verb(item.verb or "") in ("amend", "replace"), False
    for element in lead:
        words = text[element.start : element.end].strip(" ,.")
        if not words:
            continue
        if element.start < turn:
            item.words.append((element.start, element.end))
            continue
        first = words.split()[0].lower()
        opens = first in ("to", "by", "from", "with")
        is_change = is_change or (changes and opens)
        (item.words if is_change else item.tail).append((element.start, element.end))
