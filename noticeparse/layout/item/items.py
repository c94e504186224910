"""Cuts the body of a chart section into items: verb, description, places.

In come the lines between two heads; out come items in text order and the paragraphs that are none.
The cut is told by evidence alone: a verb opens an item; words that do not merely link positions
open one too, under the verb carried down; positions belong to the words before them, or behind
them where the lines of the section stand that way round.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from functools import partial
from typing import NamedTuple

from noticeparse.layout.drafts import Item, Prose
from noticeparse.layout.item.braces import with_braces
from noticeparse.layout.item.charts_below import with_charts_below
from noticeparse.layout.item.cutter import Cutter
from noticeparse.layout.item.done_behind import done_behind_stretches, stands_done_behind
from noticeparse.layout.item.ends_behind_places import with_ends_in_front
from noticeparse.layout.item.feature_first import FeatureFirst
from noticeparse.layout.item.mixed_rows import has_place_in_front, rows_both_ways
from noticeparse.layout.item.named_values import settle_named_values
from noticeparse.layout.item.new_as_verb import with_new_as_verb
from noticeparse.layout.item.notes_of_places import give_notes, without_notes
from noticeparse.layout.item.nouns_ahead import give_nouns
from noticeparse.layout.item.other_way_round import hold_back_other_way_round
from noticeparse.layout.item.places_in_brackets import settle_brackets
from noticeparse.layout.item.position_first import PositionFirst
from noticeparse.layout.item.position_sides import stands_position_first, told_by_lines
from noticeparse.layout.item.properties_behind import hold_properties_behind
from noticeparse.layout.item.sentences_both_ways import (
    hold_before_verbs,
    leads_with_places,
    sentences_both_ways,
)
from noticeparse.layout.item.shared_places import share_places
from noticeparse.layout.item.states_below import hold_half_told
from noticeparse.layout.item.things_above import with_things_above
from noticeparse.layout.item.things_before_verbs import with_things_apart
from noticeparse.layout.item.told_below import stands_told_below, told_below_stretches
from noticeparse.layout.item.told_states import settle_states
from noticeparse.layout.item.values_behind import settle_values_behind
from noticeparse.layout.item.verb_columns import with_verb_columns
from noticeparse.layout.item.verb_last import (
    Stretch,
    middle_stretches,
    settle_verbs,
    stands_in_the_middle,
    stands_verb_last,
    stretches,
)
from noticeparse.layout.item.verbs_behind import (
    hold_behind_inner_verbs,
    with_verbs_behind_apart,
)
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.counted import (
    with_counted_items,
    with_counted_places,
    with_counts_above,
)
from noticeparse.layout.sentence.line_leads import give_leads, without_leads


class Body(NamedTuple):
    """What the body of a chart section holds."""

    items: list[Item]
    prose: list[Prose]
    idle: list[Element]
    """Verbs under which no item stands."""


def cut_items(text: str, lines: Sequence[Line]) -> Body:
    """The items of a body, in text order."""
    lines = with_ends_in_front(text, with_verb_columns(text, with_braces(text, lines)))
    lines, leads = without_leads(text, lines)
    lines, notes = without_notes(text, lines)
    body = _cut(text, lines)
    give_nouns(text, body.items, body.prose)
    settle_brackets(text, body.items)
    share_places(text, body.items)
    settle_named_values(text, body.items)
    settle_values_behind(text, body.items)
    hold_half_told(text, body.items)
    hold_back_other_way_round(text, body.items)
    hold_behind_inner_verbs(text, lines, body.items)
    hold_properties_behind(text, body.items)
    hold_before_verbs(text, body.items)
    left = [*give_leads(text, body.items, leads), *give_notes(body.items, notes)]
    body.prose.extend(Prose([piece], []) for piece in left)
    return body


def _cut(text: str, lines: Sequence[Line]) -> Body:
    lines = with_charts_below(text, lines)
    lines = with_counts_above(text, with_counted_places(text, lines))
    lines = with_counted_items(text, lines)
    lines = with_things_apart(text, with_things_above(text, with_new_as_verb(text, lines)))
    lines = with_verbs_behind_apart(text, lines)
    if rows := rows_both_ways(text, lines):
        return _cut_stretches(text, rows, partial(_way_of_row, text))
    if sentences := sentences_both_ways(text, lines):
        return _cut_stretches(text, sentences, partial(_way_of_sentence, text))
    if stands_done_behind(text, lines):
        return _cut_stretches(text, done_behind_stretches(text, lines), partial(_way_told, text))
    if stands_in_the_middle(text, lines):
        return _cut_stretches(text, middle_stretches(text, lines), lambda _: FeatureFirst)
    if stands_told_below(text, lines):
        return _cut_stretches(text, told_below_stretches(text, lines), lambda _: FeatureFirst)
    if stands_verb_last(text, lines):
        return _cut_verb_last(text, lines)
    cutter = _way(text, lines)(text, lines)
    cutter.run()
    return Body(cutter.items, cutter.prose, cutter.idle)


def _way(text: str, lines: Sequence[Line]) -> type[Cutter]:
    """The way in which position and feature follow each other here."""
    return PositionFirst if stands_position_first(text, lines) else FeatureFirst


def _way_of_row(text: str, row: Stretch) -> type[Cutter]:
    return PositionFirst if has_place_in_front(text, row) else FeatureFirst


def _way_of_sentence(text: str, sentence: Stretch) -> type[Cutter]:
    return PositionFirst if leads_with_places(text, sentence) else FeatureFirst


def _way_told(text: str, part: Stretch) -> type[Cutter]:
    return PositionFirst if told_by_lines(text, part.lines) > 0 else FeatureFirst


def _cut_verb_last(text: str, lines: Sequence[Line]) -> Body:
    parts = list(stretches(text, lines))
    without = [
        line._replace(elements=tuple(e for e in line.elements if e is not part.verb))
        for part in parts
        for line in part.lines
    ]
    way = _way(text, without)

    def own(part: Stretch) -> type[Cutter]:
        told = told_by_lines(text, part.lines)
        return FeatureFirst if told < 0 else PositionFirst if told > 0 else way

    return _cut_stretches(text, parts, own)


def _cut_stretches(
    text: str, parts: Iterable[Stretch], way: Callable[[Stretch], type[Cutter]]
) -> Body:
    body = Body([], [], [])
    before = None
    for part in parts:
        cutter = way(part)(text, part.lines)
        cutter.before = before
        cutter.run()
        before = cutter.before
        settle_verbs(text, cutter.items)
        if part.change and cutter.items:
            cutter.items[-1].change.extend(part.change)
            cutter.items[-1].pieces.extend(part.change)
        if part.states and cutter.items:
            settle_states(text, cutter.items[-1], part.states)
            cutter.items[-1].pieces.extend(part.told)
        body.items.extend(cutter.items)
        body.prose.extend(cutter.prose)
        body.idle.extend(cutter.idle)
    for item in body.items:
        item.pieces.sort()
    return body
