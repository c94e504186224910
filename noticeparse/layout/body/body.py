"""The body of a chart section: in which of the ways that offices write it is cut into items."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.body.pages_of_books import without_pages
from noticeparse.layout.body.places_above import cut_below_places
from noticeparse.layout.body.prose import cut_sentences
from noticeparse.layout.body.remarks import without_remarks
from noticeparse.layout.drafts import Item, Piece, Prose
from noticeparse.layout.item.class_headings import give_classes, with_class_headings
from noticeparse.layout.item.done_behind import stands_done_behind, with_participles_apart
from noticeparse.layout.item.items import cut_items
from noticeparse.layout.item.verb_last import stands_in_the_middle, stands_verb_last
from noticeparse.layout.line.elements import Element, Line


class CutBody(NamedTuple):
    """What a body holds, in text order."""

    items: list[Item]
    prose: list[Prose]
    idle: list[Element]
    """Verbs under which no item stands."""
    headings: list[Piece]
    """Lines that head items by their class."""


def cut_body(text: str, lines: Sequence[Line]) -> CutBody:
    """The items and the prose of a body."""
    lines, entries = without_pages(text, lines)
    body, headings = with_class_headings(text, with_participles_apart(text, lines))
    tells = any(line.has("passive") for line in body)
    commands = any(line.has("verb") for line in body) or (
        stands_verb_last(text, body)
        or stands_in_the_middle(text, body)
        or stands_done_behind(text, body)
    )
    remarks: list[Prose] = []
    if commands:
        body, remarks = without_remarks(text, body)
    found = cut_below_places(text, body) if tells or commands else None
    if found is None:
        found = (cut_sentences if tells and not commands else cut_items)(text, body)
    give_classes(text, found.items, headings)
    prose = sorted([*found.prose, *remarks, *entries], key=lambda one: one.pieces)
    return CutBody(found.items, prose, found.idle, [one.line for one in headings])
