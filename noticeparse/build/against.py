"""All that the words of an item say against carrying it out as it is read, in order."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.bare_changes import bare_change
from noticeparse.build.conditions import conditions
from noticeparse.build.contradictions import contradictions
from noticeparse.build.counted_places import counted_places, numbered_marks
from noticeparse.build.deeds_within import deeds_within
from noticeparse.build.distances_left import distances_left
from noticeparse.build.equals import equals_at_places
from noticeparse.build.extents import over
from noticeparse.build.limits_within import limits_within
from noticeparse.build.lines_told import lines_told
from noticeparse.build.lost_amounts import lost_amounts
from noticeparse.build.lost_clauses import lost_clauses
from noticeparse.build.lost_corners import lost_corners
from noticeparse.build.other_places import places_of_others
from noticeparse.build.other_states import other_states
from noticeparse.build.pairs_of_places import pairs_of_places
from noticeparse.build.places_of_companions import places_of_companions
from noticeparse.build.said_behind import said_behind
from noticeparse.build.second_changes import second_changes
from noticeparse.build.shapes_told import shapes_told
from noticeparse.build.things_behind import things_behind
from noticeparse.build.torn_items import torn_items
from noticeparse.build.unbounded import unbounded
from noticeparse.build.values_in_turn import values_in_turn
from noticeparse.build.words_of_change import words_of_change
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch

_DEPTHS = frozenset(("sounding", "drying_height"))
"""Kinds that are nothing but a depth."""
_ANNOUNCED = re.compile(
    r"\b(?:dep|dpths?|dpts?|depths?|drying height|sounding)(?: (?:of|over it|is))?[ .:,=]*$",
    re.IGNORECASE,
)
"""The word of a depth whose figure is lost: `wreck, least depth P`."""
_TOLD = frozenset(
    ("verb-within-words", "feature-kinds-several", "item-limited", "sentence-under-verb")
)
"""Errors that hold an item back for the same words."""


def _lacks_figure(feature: Feature, words: str, read: Sequence[Fault]) -> bool:
    """Whether a feature is nothing but a depth, or ends in the word that announces one."""
    if feature.kind in _DEPTHS:
        # Where its figure cannot be read that is told already.
        return not read
    is_told = any(one.code.startswith("depth-") for one in read)
    return feature.legend is None and not is_told and _ANNOUNCED.search(words) is not None


def against(
    context: Context,
    item: Item,
    words: Stretch,
    verb: Verb,
    feature: Feature,
    geometry: Geometry,
    *,
    replacement: Feature | None,
    read: Sequence[Fault],
) -> list[Fault]:
    """What in the words of an item keeps it from being carried out as it is read.

    `read` is what the reading of its words has told.
    """
    found = [
        *contradictions(context, item, words, verb, feature, geometry),
        *conditions(context, item, words, verb, feature),
        *words_of_change(context, item, words, feature),
        *said_behind(context, item, verb),
        *places_of_others(context, item, verb),
        *places_of_companions(context, item, verb, feature, geometry),
        *things_behind(context, item, verb, geometry),
        *unbounded(context, item, feature, geometry),
        *counted_places(context, item, geometry),
        *numbered_marks(context, item, words, feature, geometry),
        *equals_at_places(context, item, geometry),
        *bare_change(context, item, words, verb),
        *distances_left(context, words),
        *pairs_of_places(context, item, geometry),
        *values_in_turn(context, words, geometry),
        *shapes_told(context, item, feature, geometry),
        *lines_told(context, item, verb, feature, geometry),
        *torn_items(context, item),
        *lost_corners(context, item),
        *lost_clauses(context, item),
        *lost_amounts(context, item, words, feature, geometry),
    ]
    found += limits_within(context, item, words, feature, found)
    further = (
        *deeds_within(context, item, words, verb, feature),
        *second_changes(context, words, verb, feature),
        *other_states(context, item, words, verb, feature),
    )
    new = feature if verb == "insert" else replacement
    if new is not None and new.depth is None and _lacks_figure(new, words.text, read):
        found.append(over(context, item, "depth-not-stated"))
    if any(one.code == "feature-kinds-several" for one in read):
        # The reader has told of the second thing, and the item is held back for it.
        return found
    # What is told of these words already is not told again.
    told = [(one.start, one.end) for one in found if one.code in _TOLD]
    found += [one for one in further if not any(a < one.end and one.start < b for a, b in told)]
    return found
