"""References of an item to its own positions below: `Move buoy from (3) to (4): (3) P (4) Q`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from noticeparse.context import Context
from noticeparse.layout.drafts import Group, Place
from noticeparse.readers.letters import read_letters


def with_own_places(context: Context, groups: Sequence[Group]) -> list[Group]:
    """The groups, each such reference replaced by the places that it means."""
    if not any(place.element.kind == "reference" for group in groups for place in group.places):
        return list(groups)
    own = {
        place.label: place
        for group in groups
        for place in group.places
        if place.label is not None and place.element.kind == "point"
    }
    meant = {id(place): _meant(context, place, own) for group in groups for place in group.places}
    used = {str(one.label) for places in meant.values() for one in places}
    found: list[Group] = []
    for group in groups:
        places: list[Place] = []
        for place in group.places:
            if meant[id(place)]:
                places += meant[id(place)]
            elif place.label not in used:
                places.append(place)
        if places:
            found.append(replace(group, places=places))
    return found if used else list(groups)


def _meant(context: Context, place: Place, own: dict[str, Place]) -> list[Place]:
    """The places below that a reference means; none where one of its letters has none there."""
    if place.element.kind != "reference" or not own:
        return []
    start, end = place.element.start, place.element.end
    letters = read_letters(context.text[start:end])
    meant = [own[letter] for letter in letters if letter in own]
    is_told = any(one.element.start > end for one in meant)
    return meant if is_told and len(meant) == len(letters) else []
