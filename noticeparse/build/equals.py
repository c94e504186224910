"""Features of equal standing in one item: `depths 6.1m and 7.4m` are two actions."""

from __future__ import annotations

from collections.abc import Iterator
from copy import copy

from noticeparse.build.extents import quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.readers.depths import read_depth
from noticeparse.readers.places import split_phrase
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch, gather

_UNCLEAR = "depth-place-unclear"
"""Each at each, or the first at the first: nobody can say."""
_PLURALS = ("depths ", "soundings ", "drying heights ")


def equal_items(context: Context, item: Item) -> list[Item]:
    """The item, or one for each depth that it names in the plural."""
    words = gather(context.text, item.words)
    plural = next((p for p in _PLURALS if words.text.lower().startswith(p)), None)
    if plural is None:
        return [item]
    end = split_phrase(words.text).description_end if item.groups else len(words.text)
    figures = _figures(words.text, len(plural), end)
    if len(figures) < 2 or any(
        read_depth(words.text[a:b], None).depth is None for a, b in figures
    ):
        return [item]
    head = _outer(words, 0, len(plural) - 1)
    rest = _outer(words, end, len(words.text))
    found: list[Item] = []
    faults = list(item.faults)
    whole = words.extent((0, end))
    if sum(len(group.places) for group in item.groups) > 1:
        faults.append(quoting(context, _UNCLEAR, whole))
    for start, stop in figures:
        one = copy(item)
        one.equals = whole
        one.faults = list(faults)
        one.words = [head, _outer(words, start, stop), *([rest] if rest[1] > rest[0] else [])]
        found.append(one)
    return found


def equals_at_places(context: Context, item: Item, geometry: Geometry) -> Iterator[Fault]:
    """One of several depths, where a reference alone stands for several places: `in 1) and 2)`."""
    is_told = any(fault.code == _UNCLEAR for fault in item.faults)
    if item.equals is not None and len(geometry.positions) > 1 and not is_told:
        yield quoting(context, _UNCLEAR, item.equals)


def _figures(text: str, start: int, end: int) -> list[Piece]:
    """The stretches between commas and `and`."""
    found: list[Piece] = []
    at = start
    for word in text[start:end].replace(" and ", " ,   ").split(","):
        solid = word.strip()
        if solid:
            offset = at + len(word) - len(word.lstrip())
            found.append((offset, offset + len(solid)))
        at += len(word) + 1
    return found


def _outer(words: Stretch, start: int, end: int) -> Piece:
    if end <= start:
        return (words.outer(start), words.outer(start))
    return words.extent((start, end))
