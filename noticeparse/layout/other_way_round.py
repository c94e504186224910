"""Items whose place stands below them in a body that begins with a place above: held back.

`P`, `Insert wreck`, `Delete rock`, `Q`: whether the rock lies at P or at Q is not said.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.elements import Element
from noticeparse.layout.evidence import OPEN_END


def hold_back_other_way_round(text: str, items: Sequence[Item]) -> None:
    """Tell of such items; words that lead on to a place below leave no doubt."""
    if not items or not _has_place_above(text, items[0]):
        return
    for item in items[1:]:
        place = _place_below(text, item)
        if place is not None:
            written = {"written": text[place.start : place.end]}
            item.faults.append(Fault("place-of-another", place.start, place.end, written))


def _has_place_above(text: str, item: Item) -> bool:
    """Whether the place of the first item stands alone on its line, and no words above it."""
    places = [place.element for group in item.groups for place in group.places]
    if not places or (item.words and item.words[0][0] < places[0].start):
        return False
    if item.verb_piece is not None and item.verb_piece[0] < places[0].start:
        return False
    first = item.words[0][0] if item.words else None
    return first is None or "\n" in text[places[0].end : first]


def _place_below(text: str, item: Item) -> Element | None:
    """A place of an item on a line without its words, which do not lead on to it; else None."""
    if not item.words:
        return None
    places = [place.element for group in item.groups for place in group.places]
    end = item.words[-1][1]
    below = next((e for e in places if e.start > end and "\n" in text[end : e.start]), None)
    if below is None or any(e.end <= item.words[0][0] for e in places):
        return None
    leads = [piece for group in item.groups for piece in group.lead]
    last = text[item.words[0][0] : max([end, *(b for _, b in leads if b <= below.start)])]
    last += text[end : end + 2].partition("\n")[0]
    if last.rstrip().endswith((":", ",")) or last.split()[-1].lower() in OPEN_END or leads:
        return None
    return below
