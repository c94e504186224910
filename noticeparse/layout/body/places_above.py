"""Bodies in which a place stands above the statements that are told of it.

`At P` and below it `a wreck is inserted`, `the rock is deleted`: each statement is one item at the
place above.  A line of places alone heads the statements below it, up to the next one or a blank
line; lines outside such groups stay what the caller makes of them, prose.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.body.faults_of_places import among_words, of_another, one_each
from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.drafts import Group, Item, Piece, Place, Prose
from noticeparse.layout.evidence import OPEN_END, lead_index, split_lead
from noticeparse.layout.item.items import Body
from noticeparse.layout.item.same_places import places_of
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.line.halves import join_points
from noticeparse.layout.line.joints import tells_no_change
from noticeparse.layout.place.heads_of_places import (
    commands_of,
    head_beside,
    head_of,
    is_title_of_changes,
    named_head,
    names_letter,
    numbers_named,
    with_verb_behind,
)
from noticeparse.layout.sentence.sentences import statements
from noticeparse.layout.sentence.told_elsewhere import beside_place, told_elsewhere
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import split_phrase
from noticeparse.readers.verbs import canonical_verb

_TOLD = ("verb", "passive")


class _Block(NamedTuple):
    """The lines of places, and the statements below them, each as its elements."""

    head: list[Element]
    statements: list[list[Element]]

    @property
    def is_counted(self) -> bool:
        """Whether numbers stand before its places."""
        return any(e.kind == "label" and str(e.value).isdigit() for e in self.head)


def cut_below_places(text: str, lines: Sequence[Line]) -> Body | None:
    """The items of such a body; None where its verbs do not all stand below places."""
    titles = [line for line in lines if is_title_of_changes(text, line)]
    rows = {line.row for line in titles}
    found = _blocks(text, [line for line in lines if line.row not in rows])
    if found is None or not _is_of_places(text, found[0]) or _stand_below(text, *found):
        return None
    blocks, others = found
    body = Body([], [paragraph(text, line.elements) for line in titles], [])
    tells = any(e.kind == "passive" for block in blocks for one in block.statements for e in one)
    for block in blocks:
        if not block.statements and body.items:
            # `At P`, `a rock is deleted`, `in Q`: whose place Q is, is not said.
            for item in body.items[-1:] if tells else body.items:
                item.faults.append(of_another(text, _first_place(block)))
        _give(text, block, body)
    for is_blank, told in groupby(others, key=lambda line: line.is_blank):
        if not is_blank:
            body.prose.append(paragraph(text, [e for line in told for e in line.elements]))
    return body


def _is_of_places(text: str, blocks: Sequence[_Block]) -> bool:
    """Whether what is told in blocks is told below places."""
    told = [one for block in blocks for one in block.statements]
    if not told or not all(_tells_below(text, one) or _has_own(one) for one in told):
        return False
    if any(map(names_letter, told)):
        return False
    if any(block.statements and all(map(_has_own, block.statements)) for block in blocks):
        # The place above would be that of nothing.
        return False
    if any(not block.statements for block in blocks[:-1]):
        # A place alone below what has its own may be one more of it.
        return False
    if any(_has_own(block.statements[-1]) and not _is_apart(text, block) for block in blocks[:-1]):
        return False
    is_sentence = any(e.kind == "passive" for one in told for e in one)
    # A command below each place is read as a row with its position in front.
    return is_sentence or any(len(block.statements) > 1 or block.is_counted for block in blocks)


def _stand_below(text: str, blocks: Sequence[_Block], others: Sequence[Line]) -> bool:
    """Whether a thing stands above the first place, and nothing below the last."""
    above = (e for one in others for e in one.elements if e.start < blocks[0].head[0].start)
    return not blocks[-1].statements and has_kind(words_of(text, above))


def _tells_below(text: str, statement: Sequence[Element]) -> bool:
    """Whether a statement has no place of its own, but for the new one of a move."""
    verb = next((i for i, e in enumerate(statement) if e.kind in _TOLD), None)
    places = [i for i, e in enumerate(statement) if e.kind in PLACES]
    if verb is None or not places:
        return not places
    written = statement[verb]
    is_move = canonical_verb(text[written.start : written.end]) == "move"
    return is_move and places[0] > verb


def _is_apart(text: str, block: _Block) -> bool:
    """Whether the last command of a block does not lead to several places: `joining P`."""
    words = words_of(text, (e for e in block.statements[-1] if e.kind == "words"))
    return not any(
        part.kind in ("joining", "bounded", "between") for part in split_phrase(words).parts
    )


def _has_own(statement: Sequence[Element]) -> bool:
    """Whether a command ends with a place of its own: `Insert rock, P`."""
    if statement[0].kind != "verb" or sum(e.kind in _TOLD for e in statement) > 1:
        return False
    kinds = [e.kind for e in statement[1:]]
    return kinds[:1] == ["words"] and kinds[-1] == "point" and kinds.count("point") == 1


def _blocks(text: str, lines: Sequence[Line]) -> tuple[list[_Block], list[Line]] | None:
    """The blocks, and the lines outside them; None where any of these commands."""
    blocks: list[_Block] = []
    others: list[Line] = []
    block: _Block | None = None
    column: int | None = None
    """Where the statement under way begins on its first line."""
    for at, line in enumerate(lines):
        if line.is_blank:
            block, column = None, None
            others.append(line)
            continue
        is_new = block is None or bool(block.statements)
        told = block.statements[-1] if block is not None and block.statements else []
        if told and _breaks_off(text, told[-1].end):
            told.extend(line.elements)
            continue
        counts = (1, len(blocks) + 1) if is_new or block is None else (_counted(block) + 1,)
        head = head_of(text, line, counts) or named_head(text, line, *lines[at + 1 : at + 2])
        beside = None if head is not None else head_beside(text, line, counts)
        if head is not None or beside is not None:
            if is_new or block is None or beside is not None:
                block, column = _Block([], []), None
                blocks.append(block)
            block.head.extend(head or (beside[0] if beside else ()))
            if beside is not None:
                block.statements.append(beside[1])
                column = beside[1][0].start - line.start
        elif block is None and line.has("verb", "passive"):
            return None
        elif block is None:
            others.append(line)
        elif column is None or _opens(text, line, column, block.statements[-1]):
            block.statements.append(with_verb_behind(text, line.elements))
            column = line.indent(text)
        else:
            block.statements[-1].extend(line.elements)
    for block in blocks:
        block.statements[:] = [one for told in block.statements for one in commands_of(text, told)]
    return blocks, others


def _breaks_off(text: str, end: int) -> bool:
    """Whether a statement ends so that a place must follow it."""
    above = (text[max(end - 40, 0) : end] + text[end : end + 1]).rstrip()
    return above.endswith((",", ":")) or above.rpartition(" ")[2].lower() in OPEN_END


def _counted(block: _Block) -> int:
    return sum(e.kind == "label" for e in block.head)


def _opens(text: str, line: Line, column: int, statement: Sequence[Element]) -> bool:
    """Whether a line opens another statement than the one that begins in this column."""
    if not any(e.kind in _TOLD for e in statement):
        return False
    if line.indent(text) > column:
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
    places = list(join_points(text, block.head))
    for whole in block.statements:
        marks = [(e.start, e.end) for e in whole if e.kind == "bar"]
        for statement in statements(text, [e for e in whole if e.kind not in ("label", "bar")]):
            item = _item(text, places, statement)
            if item is None:
                untold += statement
            else:
                item.pieces, marks = sorted([*marks, *item.pieces]), []
                if items:
                    item.groups = places_of(item)
                items.append(item)
    head: list[Piece] = [(e.start, e.end) for e in block.head]
    if (second := one_each(text, places, items)) is not None:
        for item in items:
            item.faults.append(of_another(text, second))
    if items:
        items[0].pieces = [*head, *items[0].pieces]
        body.items.extend(items)
        if untold:
            body.prose.append(Prose([(e.start, e.end) for e in untold], untold))
    else:
        body.prose.append(paragraph(text, [*block.head, *untold]))


def _first_place(block: _Block) -> Element:
    return next(e for e in block.head if e.kind in PLACES)


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
    is_among = verb.kind == "verb" and bool(before) and has_kind(words_of(text, behind))
    if not (has_kind(words) or is_among) or tells_no_change(whole, written):
        return None
    item = Item(verb=written, verb_piece=(verb.start, verb.end))
    if not has_kind(words):
        # `Karra`, and below it `Insert wreck`: the command stands among other words.
        item.faults.append(among_words(text, statement))
    if len(told) > 1:
        extent = (statement[0].start, statement[-1].end)
        item.faults.append(
            Fault("sentence-told-twice", *extent, {"written": text[slice(*extent)]})
        )
    goes_on = [e for e in behind[:places] if places == len(behind)]
    item.words = [(e.start, e.end) for e in (*before, *goes_on)]
    if not _tells_below(text, statement):
        item.words, lead = split_lead(text, [(e.start, e.end) for e in behind[:places]])
        item.groups = [Group(lead=lead, places=[Place(behind[-1])])]
        item.pieces = [(e.start, e.end) for e in statement]
        return item
    beside = beside_place(text, item.words, head) if places == len(behind) else None
    if beside is not None:
        item.words, item.groups = beside.words, [Group(beside.lead, places=[Place(beside.place)])]
        item.pieces = [(e.start, e.end) for e in statement]
        return item
    item.words, named_above = numbers_named(text, item.words)
    item.faults += told_elsewhere(text, item.words)
    _add_places(item, head)
    if named_above:
        _keep_named(text, item, named_above)
    _add_places(item, [e for e in behind if e not in goes_on])
    item.pieces = [(e.start, e.end) for e in statement]
    return item


def _keep_named(text: str, item: Item, numbers: Sequence[str]) -> None:
    """Leave an item those of the places above whose numbers it names, in that order."""
    known = {place.label: place.element for place in item.places}
    lead = item.groups[0].lead if item.groups else []
    item.groups = [Group(lead=lead, places=[Place(known[n]) for n in numbers if n in known])]
    if not known.keys() >= set(numbers):
        written = {"written": text[slice(*item.words[-1])], "letter": ", ".join(numbers)}
        item.faults.append(Fault("letter-unknown", *item.words[-1], written))


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
