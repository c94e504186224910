"""Several things at one place: `P` and below it `light, Fl.R.3s` and `tide gauge`.

A verb above holds for all of them; each is an item of its own at the same place.  Within a
sentence each has its verb: `In P insert a beacon and delete the buoy`.  A place whose verb has
nothing to it is none of the thing below it: the words of its own item are lost.
"""

from __future__ import annotations

from dataclasses import replace

from noticeparse.layout.drafts import Group, Item
from noticeparse.layout.evidence import OPEN_END
from noticeparse.layout.item.open_item import OpenItem
from noticeparse.layout.line.elements import Element
from noticeparse.readers.features import has_kind, leads_feature, value_property


def begins_thing(text: str, item: Item, element: Element) -> bool:
    """Whether words at the beginning of a line are one more thing at the places of an item.

    These stand on lines above; the words stand in the column of the first thing, which is whole.
    """
    places = [place.element.end for place in item.places]
    if not places or not item.words or item.verb_piece is not None:
        return False
    start, end = item.words[0][0], item.words[-1][1]
    if "\n" not in text[max(places) : start] or _column(text, element.start) != _column(
        text, start
    ):
        return False
    above, words = text[start:end].rstrip(), text[element.start : element.end]
    if above[-1:] in ",;:-" or above.rpartition(" ")[2].lower() in OPEN_END:
        return False
    # `wreck` and below it `depth 5 m`: the depth is that of the wreck.
    is_thing = "kind" in value_property(words) or words.lstrip().lower().startswith(_LEGENDS)
    return is_thing and has_kind(above) and leads_feature(words)


_LEGENDS = ("legend", "note")


def shares_places(text: str, above: Item, verb: Element) -> bool:
    """Whether a verb is said at the places of an item, of which they stood in front.

    `In P insert a beacon and delete the buoy`: the buoy is at P, if no place follows it.
    """
    places = [place.element for place in above.places]
    if not places or above.verb_piece is None or above.verb_piece[0] < places[-1].start:
        return False
    return text[max(verb.start - 40, 0) : verb.start].rstrip().endswith((" and", "\nand", " then"))


def open_behind_verb(cutter: OpenItem, above: Item) -> Item:
    """The open item for a second verb: of its own where places stand between the two.

    `P / Establish / Q / Establish beacon`: the beacon is at Q, and what lies at P is not told.
    """
    if above.verb_piece is None or above.words:
        return above
    end = above.verb_piece[1]
    behind = [place for place in above.places if place.element.start >= end]
    if len(behind) in (0, len(above.places)):
        return above
    first = behind[0].element.start
    pieces = [piece for piece in above.pieces if piece[0] >= first]
    above.pieces = [piece for piece in above.pieces if piece[0] < first]
    for group in above.groups:
        group.places = [place for place in group.places if place.element.start < first]
    above.groups = [group for group in above.groups if group.places]
    cutter.open_item()
    below = cutter.items[-1]
    below.groups, below.pieces = [Group(places=behind)], [*below.pieces, *pieces]
    return below


def places_of(item: Item) -> list[Group]:
    """The places of an item for another one; its letters stay with the first."""
    return [
        replace(group, places=[replace(place, label=None) for place in group.places])
        for group in item.groups
    ]


def _column(text: str, offset: int) -> int:
    return offset - (text.rfind("\n", 0, offset) + 1)
