"""Items that took the places of the one beside them.

Below `Insert wreck` and `Delete buoy` two places may be one of each; the layout gives both to the
buoy.  `Through P, Q` above its thing is no more of the wreck above it; `wreck (a) and rock (b)`
puts no rock at (a); `joining P and Q` is not cut at its `and`.  All such items are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.features import has_kind

_JOINT = re.compile(r"[ ,;]{0,3}(?:and|to|&)[ ,;:]{0,3}", re.IGNORECASE)
_JOINED = re.compile(r"(?:and|&|plus)\b", re.IGNORECASE)
_GOES_ON = re.compile(r"\W*(?:to|and|or|then|thence|via|by)\b", re.IGNORECASE)
_LETTERED = re.compile(
    r"(?P<thing>[^;,]{0,60}?)[ ]\(?(?P<letter>[A-Z]|(?<=\()(?:[a-z]|[0-9]))\)?(?!\w)"
)
LEADS_ON = re.compile(
    r"\b(?:joining|connecting|between|from|bounded|enclosed|delimited|through|along)\b",
    re.IGNORECASE,
)
"""Words behind which several places are those of one thing."""


def hold_back_beside(context: Context, items: Sequence[Item]) -> None:
    """Give such items of a chart section, in text order, an error."""
    bare = [is_bare(context, item) for item in items]
    held = {
        *_beside_bare(context, items, bare),
        *_slid_by_count(items, bare),
        *_cut_at_a_joint(context, items),
        *_of_several_letters(context, items),
    }
    for index in sorted(held):
        # A command without a place has its error already, a place without a verb is no item.
        if bare[index] or items[index].verb is None:
            continue
        fault = over(context, items[index], "place-of-neighbour")
        if fault not in items[index].faults:
            items[index].faults.append(fault)


def is_bare(context: Context, item: Item) -> bool:
    """Whether an item is a command with a feature, but without a place."""
    return item.verb is not None and not item.has_place and has_kind(context.joined(item.words))


def _beside_bare(context: Context, items: Sequence[Item], bare: Sequence[bool]) -> Iterator[int]:
    """Items with several places, of which some may be those of a command beside them."""
    for index, item in enumerate(items):
        if len(item.places) < 2 or not item.words:
            continue
        follows = _follows_on_its_line(context.text, item)
        if index and bare[index - 1] and not follows:
            yield index
        if index + 1 < len(items) and bare[index + 1]:
            leads = [group.lead[0] for group in item.groups[1:] if group.lead]
            if not follows or any(_leads_anew(context.text, piece) for piece in leads):
                yield index


def _follows_on_its_line(text: str, item: Item) -> bool:
    """Whether the first place stands behind the words of the item, on one line with them."""
    first = min(place.element.start for place in item.places)
    before = [end for _, end in item.words if end <= first]
    return bool(before) and "\n" not in text[max(before) : first]


def _leads_anew(text: str, lead: Piece) -> bool:
    """Whether words open a line, and a place with it; `to` or `thence` goes on with the above."""
    return opens_a_line(text, lead[0]) and _GOES_ON.match(text[slice(*lead)]) is None


def _slid_by_count(items: Sequence[Item], bare: Sequence[bool]) -> Iterator[int]:
    """Runs of a command without a place, of some with one, and of one with two: all moved on."""
    counts = [len(item.places) for item in items]
    for start, is_bare in enumerate(bare):
        for step in (1, -1) if is_bare else ():
            at = start + step
            while 0 <= at < len(items) and counts[at] == 1 and items[at].verb is not None:
                at += step
            is_end = 0 <= at < len(items) and items[at].verb is not None
            if is_end and counts[at] == 2 and not items[at].groups[1:]:
                yield from range(start, at + step, step)


def _cut_at_a_joint(context: Context, items: Sequence[Item]) -> Iterator[int]:
    """Two items of which one ends, and the next begins, with a place: `joining P and Q`."""
    for index, (above, below) in enumerate(pairwise(items)):
        if not (above.has_place and below.has_place):
            continue
        end = max(place.element.end for place in above.places)
        start = min(place.element.start for place in below.places)
        if _JOINT.fullmatch(context.text[end:start]) is not None and end < start:
            yield from (index, index + 1)


def _of_several_letters(context: Context, items: Sequence[Item]) -> Iterator[int]:
    """Items whose letters are those of more things, or of the thing above: `wreck A; rock B`."""
    starts = [{place.element.start for place in item.places} for item in items]
    several = [_names_letters(context, item) for item in items]
    for index, item in enumerate(items):
        shares = [at for at in (index - 1, index + 1) if 0 <= at < len(items)]
        if several[index] or any(several[at] and starts[at] & starts[index] for at in shares):
            yield index
        if index and _has_letter_of(context, items[index - 1], item):
            # One without words is held back as such.
            yield from (index - 1, index) if item.words else (index - 1,)


def _has_letter_of(context: Context, above: Item, item: Item) -> bool:
    """Whether the letter of an item stands behind words on its line, and is that of the above."""
    if item.label_piece is None or not item.refers or not above.pieces:
        return False
    words = context.joined(item.words)
    end = max(end for _, end in above.pieces)
    between = context.text[end : item.label_piece[0]]
    if "\n" in between or "  " in between or end > item.label_piece[0]:
        return False
    joins = not words.strip(" .,;") or _JOINED.match(words) is not None
    return joins or is_bare(context, above)


def _names_letters(context: Context, item: Item) -> bool:
    """Whether its words give the letters of its places to things that differ."""
    if len(item.places) < 2:
        return False
    words = context.joined(item.words)
    if LEADS_ON.search(words) is not None:
        return False
    found = list(_LETTERED.finditer(words))
    things = {one["thing"].strip(" ;,.").lower() for one in found if has_kind(one["thing"])}
    codes = [ord(one["letter"]) for one in found]
    is_list = len(codes) <= len(item.places) and all(b - a == 1 for a, b in pairwise(codes))
    return is_list and len(things) > 1
