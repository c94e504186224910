"""All that the words of an item say against carrying it out as it is read, in order."""

from __future__ import annotations

from noticeparse.build.conditions import conditions
from noticeparse.build.contradictions import contradictions
from noticeparse.build.counted_places import counted_places
from noticeparse.build.distances_left import distances_left
from noticeparse.build.limits_within import limits_within
from noticeparse.build.other_places import places_of_others
from noticeparse.build.other_states import other_states
from noticeparse.build.pairs_of_places import pairs_of_places
from noticeparse.build.said_behind import said_behind
from noticeparse.build.second_changes import second_changes
from noticeparse.build.words_of_change import words_of_change
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch


def against(
    context: Context, item: Item, words: Stretch, verb: Verb, feature: Feature, geometry: Geometry
) -> list[Fault]:
    """What in the words of an item keeps it from being carried out as it is read."""
    found = [
        *contradictions(context, item, words, verb, feature, geometry),
        *conditions(context, item, words, verb, feature),
        *words_of_change(context, item, words, feature),
        *said_behind(context, item, verb),
        *second_changes(context, words, verb, feature),
        *other_states(context, item, words, verb, feature),
        *places_of_others(context, item, verb),
        *counted_places(context, item, geometry),
        *distances_left(context, words),
        *pairs_of_places(context, item, geometry),
    ]
    return [*found, *limits_within(context, item, words, feature, found)]
