"""Features of equal standing in one item: `depths 6.1m and 7.4m` are two actions."""

from __future__ import annotations

from copy import copy

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.readers.depths import read_depth
from noticeparse.readers.places import split_phrase
from noticeparse.stretch import Stretch, gather

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
    if sum(len(group.places) for group in item.groups) > 1:
        # Each at each, or the first at the first: nobody can say.
        whole = words.extent((0, end))
        values = {"written": context.written(*whole)}
        faults.append(Fault("depth-place-unclear", *whole, values))
    for start, stop in figures:
        one = copy(item)
        one.faults = list(faults)
        one.words = [head, _outer(words, start, stop), *([rest] if rest[1] > rest[0] else [])]
        found.append(one)
    return found


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
