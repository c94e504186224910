"""The body of a chart section: in which of the ways that offices write it is cut into items."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from noticeparse.layout.body.cancellations import without_cancellations
from noticeparse.layout.body.commands_for_a_time import with_commands_for_a_time
from noticeparse.layout.body.items_below_remarks import HeldBelow, hold_below_remarks
from noticeparse.layout.body.listed_aids import without_listed_names
from noticeparse.layout.body.pages_of_books import without_pages
from noticeparse.layout.body.place_headings import hold_below_names, without_place_headings
from noticeparse.layout.body.places_above import cut_below_places
from noticeparse.layout.body.places_of_lists import hold_places_of_lists
from noticeparse.layout.body.prose import cut_prose, cut_sentences
from noticeparse.layout.body.prose_bodies import is_prose_body
from noticeparse.layout.body.remarks import without_remarks
from noticeparse.layout.body.times_of_notices import without_validity
from noticeparse.layout.body.told_among_commands import without_told
from noticeparse.layout.body.turns import give_turns, without_turns
from noticeparse.layout.body.words_beside import with_words_whole
from noticeparse.layout.drafts import Item, NoticeDraft, Piece, Prose
from noticeparse.layout.item.class_headings import with_class_headings
from noticeparse.layout.item.classes_below import with_classes_below
from noticeparse.layout.item.classes_told import give_classes
from noticeparse.layout.item.codes import set_new_places
from noticeparse.layout.item.depths_changed import give_depths_changed
from noticeparse.layout.item.done_behind import stands_done_behind, with_participles_apart
from noticeparse.layout.item.empty_cells import hold_empty_cells
from noticeparse.layout.item.items import cut_items
from noticeparse.layout.item.kinds_of_names import give_kinds_of_names
from noticeparse.layout.item.parts_of_lists import give_parts
from noticeparse.layout.item.said_of_all import give_said_of_all
from noticeparse.layout.item.same_kinds import give_same_kinds, with_marks_of_kinds
from noticeparse.layout.item.sentences_both_ways import sentences_both_ways
from noticeparse.layout.item.verb_last import stands_in_the_middle, stands_verb_last
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.notice_kinds import is_for_none, is_temporary
from noticeparse.layout.place.lettered_places import with_letters_read
from noticeparse.layout.place.letters_below import with_letters_below
from noticeparse.layout.place.letters_between import with_letters_between
from noticeparse.layout.place.list_numbers import with_list_numbers
from noticeparse.layout.row.rows_of_one import hold_rows_of_one
from noticeparse.layout.sentence.glued_verbs import with_glued_verbs_apart
from noticeparse.layout.sentence.line_leads import with_marks_apart
from noticeparse.readers.features import has_kind


class CutBody(NamedTuple):
    """What a body holds, in text order."""

    items: list[Item]
    prose: list[Prose]
    idle: list[Element]
    """Verbs under which no item stands."""
    headings: list[Piece]
    """Lines that head items by their class, or by their number and name in a list."""
    places: Sequence[Item] = ()
    """Items of places that a list gives letters, and that hold nothing else."""


def cut_section(
    text: str,
    lines: Sequence[Line],
    codes: Mapping[str, str],
    notice: NoticeDraft | None,
    *,
    has_chart: bool,
) -> CutBody:
    """What the lines below the head of a notice or chart hold.

    `codes` are the signs of a column with their verbs.  The message of a radio warning stays
    prose, and so do the sentences of a notice that may tell of what goes on no chart.  Where it
    `has_chart` the chart is named above, so that no number in a column can be that of one.
    """
    is_radio = notice is not None and notice.is_radio
    may_tell = is_temporary(text, notice) or is_for_none(text, notice)
    lines, heads = with_glued_verbs_apart(text, lines)
    body = with_words_whole(text, with_marks_apart(text, lines))
    if not body:
        return CutBody([], [], [], [])
    is_for_a_time = not is_radio and is_temporary(text, notice)
    told, of_time = list[Prose](), list[Piece]()
    if is_for_a_time:
        body, told, of_time = with_commands_for_a_time(text, body)
        body, validity = without_validity(text, body)
        told += validity
    lettered, places = with_letters_read(text, with_letters_between(text, body))
    if is_radio or (may_tell and not of_time and is_prose_body(text, lettered)):
        return CutBody(
            [], sorted([*told, *cut_prose(text, body)], key=lambda one: one.pieces), [], []
        )
    body = with_list_numbers(text, lettered) if has_chart else lettered
    if notice is not None:
        body, cancelling = without_cancellations(text, body)
        notice.clauses += cancelling
    if not places:
        body, places = with_letters_below(text, body)
    found = cut_body(text, body)
    set_new_places(found.items, codes)
    hold_rows_of_one(text, found.items)
    hold_places_of_lists(text, body, found.items)
    prose = sorted([*found.prose, *told], key=lambda one: one.pieces) if told else found.prose
    return found._replace(places=places, headings=[*found.headings, *heads, *of_time], prose=prose)


def cut_body(text: str, lines: Sequence[Line]) -> CutBody:
    """The items and the prose of a body."""
    lines, entries = without_pages(text, with_marks_of_kinds(text, lines))
    lines, names = without_listed_names(text, lines)
    lines, turning, turns = without_turns(text, lines)
    lines, areas, doubtful = without_place_headings(text, lines)
    body, headings = with_class_headings(text, with_participles_apart(text, lines))
    body, classes = with_classes_below(text, body)
    headings += classes
    tells = any(line.has("passive") for line in body)
    commands = any(line.has("verb") for line in body) or (
        stands_verb_last(text, body)
        or stands_in_the_middle(text, body)
        or stands_done_behind(text, body)
    )
    remarks: list[Prose] = []
    held: list[HeldBelow] = []
    told: list[Item] = []
    if commands:
        body, remarks, held = without_remarks(text, body)
    if commands and tells:
        body, told = without_told(text, body)
    may_stand_above = (tells or commands) and not sentences_both_ways(text, body)
    found = cut_below_places(text, body) if may_stand_above else None
    if found is None:
        found = (cut_sentences if tells and not commands else cut_items)(text, body)
    if told:
        found = found._replace(items=sorted([*found.items, *told], key=lambda one: one.pieces))
    give_same_kinds(text, found.items)
    give_classes(text, found.items, headings)
    give_parts(text, found.items)
    give_kinds_of_names(text, found.items)
    give_depths_changed(text, found.items)
    give_said_of_all(text, found.items)
    hold_empty_cells(text, body, found.items)
    give_turns(text, found.items, turns)
    hold_below_remarks(text, found.items, held)
    hold_below_names(text, found.items, doubtful)
    aside = [*remarks, *entries, *turning, *areas]
    prose = sorted([*found.prose, *aside], key=lambda one: one.pieces)
    return CutBody(found.items, prose, found.idle, [*names, *(one.line for one in headings)])


def without_titles(text: str, found: CutBody) -> CutBody:
    """What stands above all notices, without words that name no thing and no place.

    `Chart depot - change records` is a title, and commands nothing.
    """
    titles = [one for one in found.items if not one.has_place and not _names_thing(text, one)]
    items = [one for one in found.items if one not in titles]
    stretches = [(one.pieces[0][0], one.pieces[-1][1]) for one in titles if one.pieces]
    prose = [Prose([stretch], []) for stretch in stretches]
    return found._replace(items=items, prose=[*found.prose, *prose])


def _names_thing(text: str, item: Item) -> bool:
    pieces = (*item.words, *item.tail, *item.change, *item.old)
    return any(has_kind(text[slice(*piece)]) for piece in pieces)
