"""Items whose place stands below them in a body that begins with a place above: held back.

`P`, `Insert wreck`, `Delete rock`, `Q`: whether the rock lies at P or at Q is not said.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import OPEN_END
from noticeparse.layout.line.elements import Element
from noticeparse.readers.places import split_phrase


def hold_back_other_way_round(text: str, items: Sequence[Item]) -> None:
    """Tell of such items; words that lead on to a place below leave no doubt."""
    if not items or not _has_place_above(items[0]):
        return
    for item in items[1:]:
        place = _place_below(text, item)
        if place is not None:
            written = {"written": text[place.start : place.end]}
            item.faults.append(Fault("place-of-another", place.start, place.end, written))


def _has_place_above(item: Item) -> bool:
    """Whether the place of the first item stands in front of its words."""
    places = [place.element for place in item.places]
    if not places or (item.words and item.words[0][0] < places[0].start):
        return False
    return item.verb_piece is None or item.verb_piece[0] > places[0].start


def _place_below(text: str, item: Item) -> Element | None:
    """A place of an item on a line without its words, which do not lead on to it; else None."""
    if not item.words:
        return None
    places = [place.element for place in item.places]
    end = item.words[-1][1]
    below = next((e for e in places if e.start > end and "\n" in text[end : e.start]), None)
    if below is None or any(e.end <= item.words[0][0] for e in places):
        return None
    words = " ".join(" ".join(text[a:b] for a, b in item.words).split())
    line = text.rfind("\n", 0, below.start)
    leads = any(start < line for group in item.groups for start, _ in group.lead)
    if leads or any(part.kind != "separator" for part in split_phrase(words).parts):
        # `bounded by P` and the other corners below it.
        return None
    above = text[item.words[0][0] : below.start].rstrip()
    goes_on = above.endswith((":", ",")) or above.split()[-1].lower() in OPEN_END
    return None if goes_on else below
