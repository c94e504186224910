"""Bodies in which a place stands above the statements that are told of it.

`At P` and below it `a wreck is inserted`, `the rock is deleted`: each statement is one item at the
place above.  A line of places alone heads the statements below it, up to the next one or a blank
line; lines outside such groups stay what the caller makes of them, prose.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item, Piece, Place, Prose
from noticeparse.layout.elements import Element, Line, words_of
from noticeparse.layout.evidence import OPEN_END, PLACES, lead_index
from noticeparse.layout.items import Body
from noticeparse.layout.joints import tells_no_change
from noticeparse.layout.prose import paragraph
from noticeparse.layout.sentences import statements
from noticeparse.layout.told_elsewhere import told_elsewhere
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import canonical_verb

_TOLD = ("verb", "passive")


class _Block(NamedTuple):
    """The lines of places, and the statements below them, each as its elements."""

    head: list[Element]
    statements: list[list[Element]]


def cut_below_places(text: str, lines: Sequence[Line]) -> Body | None:
    """The items of such a body; None where its verbs do not all stand below places."""
    blocks, others = _blocks(text, lines)
    if not _is_of_places(text, blocks, others):
        return None
    body = Body([], [], [])
    for block in blocks:
        if not block.statements and body.items:
            # `At P`, `a rock is deleted`, `in Q`: whose place Q is, is not said.
            body.items[-1].faults.append(_of_another(text, _first_place(block)))
        _give(text, block, body)
    kept: list[Element] = []
    for line in others:
        if line.is_blank and kept:
            body.prose.append(paragraph(text, kept))
            kept = []
        kept += line.elements
    if kept:
        body.prose.append(paragraph(text, kept))
    return body


def _is_of_places(text: str, blocks: Sequence[_Block], others: Sequence[Line]) -> bool:
    """Whether all that is told here is told below places."""
    told = [one for block in blocks for one in block.statements]
    if not told or any(line.has("verb", "passive") for line in others):
        return False
    if not all(_tells_below(text, one) for one in told):
        return False
    is_sentence = any(e.kind == "passive" for one in told for e in one)
    # A command below each place is read as a row with its position in front.
    return is_sentence or any(len(block.statements) > 1 for block in blocks)


def _tells_below(text: str, statement: Sequence[Element]) -> bool:
    """Whether a statement has no place of its own, but for the new one of a move."""
    verb = next((i for i, e in enumerate(statement) if e.kind in _TOLD), None)
    places = [i for i, e in enumerate(statement) if e.kind in PLACES]
    if verb is None or not places:
        return not places
    written = statement[verb]
    is_move = canonical_verb(text[written.start : written.end]) == "move"
    return is_move and places[0] > verb


def _blocks(text: str, lines: Sequence[Line]) -> tuple[list[_Block], list[Line]]:
    blocks: list[_Block] = []
    others: list[Line] = []
    block: _Block | None = None
    first: Line | None = None
    """The first line of the statement under way."""
    for line in lines:
        if line.is_blank:
            block, first = None, None
            others.append(line)
        elif _is_head(text, line):
            if block is None or block.statements:
                block, first = _Block([], []), None
                blocks.append(block)
            block.head.extend(line.elements)
        elif block is None:
            others.append(line)
        elif first is None or _opens(text, line, first, block.statements[-1]):
            block.statements.append(list(line.elements))
            first = line
        else:
            block.statements[-1].extend(line.elements)
    return blocks, others


def _is_head(text: str, line: Line) -> bool:
    """Whether a line holds places and the words that relate to them, and nothing else."""
    if not line.has("point", "half", "reference"):
        return False
    return all(
        element.kind in (*PLACES, "label", "bar")
        or (element.kind == "words" and _relates(text[element.start : element.end]))
        for element in line.elements
    )


def _relates(words: str) -> bool:
    return all(part.kind != "words" for part in read_phrase(words))


def _opens(text: str, line: Line, first: Line, statement: Sequence[Element]) -> bool:
    """Whether a line opens another statement than the one whose first line is given."""
    if not any(e.kind in _TOLD for e in statement):
        return False
    if line.indent(text) > first.indent(text):
        return False
    lead = line.elements[lead_index(line)]
    if lead.kind == "verb" or line.elements[0].kind in ("label", "bar"):
        return True
    above = text[statement[-1].start : statement[-1].end].rstrip()
    if above.rpartition(" ")[2].lower() in OPEN_END:
        return False
    return above[-1:] in (".", ";") or leads_feature(text[lead.start : lead.end])


def _give(text: str, block: _Block, body: Body) -> None:
    """The statements of a block as items; what tells of no change stays prose with its place."""
    items: list[Item] = []
    untold: list[Element] = []
    for whole in block.statements:
        marks = [(e.start, e.end) for e in whole if e.kind == "bar"]
        for statement in statements(text, [e for e in whole if e.kind not in ("label", "bar")]):
            item = _item(text, block.head, statement)
            if item is None:
                untold += statement
            else:
                item.pieces, marks = sorted([*marks, *item.pieces]), []
                items.append(item)
    head: list[Piece] = [(e.start, e.end) for e in block.head]
    if (second := _one_each(text, block, items)) is not None:
        for item in items:
            item.faults.append(_of_another(text, second))
    if items:
        items[0].pieces = [*head, *items[0].pieces]
        body.items.extend(items)
        if untold:
            body.prose.append(Prose([(e.start, e.end) for e in untold], untold))
    else:
        body.prose.append(paragraph(text, [*block.head, *untold]))


def _first_place(block: _Block) -> Element:
    return next(e for e in block.head if e.kind in PLACES)


def _one_each(text: str, block: _Block, items: Sequence[Item]) -> Element | None:
    """The second of as many places as there are statements of one thing each; else None.

    They may be one for each, in order, or all for each; `P and Q` are both for each.
    """
    places = [e for e in block.head if e.kind in PLACES]
    if len(places) < 2 or len(places) != len(items):
        return None
    linked = any(e.kind == "words" and " and" in f" {text[e.start : e.end]}" for e in block.head)
    named = (" ".join(text[a:b] for a, b in item.words).rstrip(" .") for item in items)
    return None if linked or all(words.endswith("s") for words in named) else places[1]


def _of_another(text: str, place: Element) -> Fault:
    written = {"written": text[place.start : place.end]}
    return Fault("place-of-another", place.start, place.end, written)


def _item(text: str, head: Sequence[Element], statement: Sequence[Element]) -> Item | None:
    told = [i for i, e in enumerate(statement) if e.kind in _TOLD]
    if not told:
        return None
    verb = statement[told[0]]
    written = text[verb.start : verb.end]
    whole = " ".join(text[statement[0].start : statement[-1].end].split())
    before = [e for e in statement[: told[0]] if e.kind == "words"]
    behind = [e for e in statement[told[0] + 1 :] if e.kind not in _TOLD]
    places = next((i for i, e in enumerate(behind) if e.kind in PLACES), len(behind))
    named = before or behind
    words = words_of(text, named)
    if not has_kind(words) or tells_no_change(whole, written):
        return None
    item = Item(verb=written, verb_piece=(verb.start, verb.end))
    if len(told) > 1:
        extent = (statement[0].start, statement[-1].end)
        item.faults.append(
            Fault("sentence-told-twice", *extent, {"written": text[slice(*extent)]})
        )
    goes_on = [e for e in behind[:places] if places == len(behind)]
    item.words = [(e.start, e.end) for e in (*before, *goes_on)]
    item.faults += told_elsewhere(text, item.words)
    _add_places(item, head)
    _add_places(item, [e for e in behind if e not in goes_on])
    item.pieces = [(e.start, e.end) for e in statement]
    return item


def _add_places(item: Item, elements: Sequence[Element]) -> None:
    """Give an item the places among these elements, each behind the words that lead to it."""
    lead: list[Piece] = []
    label: str | None = None
    for element in elements:
        if element.kind == "words":
            lead.append((element.start, element.end))
        elif element.kind == "label":
            label = element.value
        elif element.kind in PLACES:
            if lead or not item.groups:
                item.groups.append(Group(lead=lead))
            item.groups[-1].places.append(Place(element, label))
            lead, label = [], None
