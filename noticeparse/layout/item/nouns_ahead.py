"""The noun of a list whose items have letters and only values: `wrecks: (a) depth 5m P; (b) …`.

The walk takes words that end in a colon behind a verb for a heading, which says where things are
or what they are for, and others for an item without a place.  Where they name several things, each
item below that has a letter, a value and no noun of its own is one of them.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterable, Sequence
from itertools import islice

from noticeparse.layout.drafts import Item, Piece, Prose
from noticeparse.layout.evidence import split_lead
from noticeparse.layout.item.class_headings import are_many
from noticeparse.layout.item.values_behind import value_groups
from noticeparse.readers.features import leads_feature, read_feature

_POINTING = re.compile(r"(?:(?:the|these|those|all|following|new) ){0,4}", re.IGNORECASE)
_DEPTHS = ("unknown", "sounding", "drying_height", "legend", "note")


def give_nouns(text: str, items: list[Item], prose: list[Prose]) -> None:
    """Name the things again of items with a letter below such words, which are prose no longer."""
    for at, item in reversed(list(enumerate(items))):
        noun = _noun(text, item.words) if _is_bare(item) else None
        named = _named(text, islice(items, at + 1, None)) if noun is not None else []
        if named and noun is not None and not text[noun[1] : named[0].pieces[0][0]].strip(" :\n-"):
            for one in named:
                one.words.insert(0, noun)
            named[0].pieces = sorted([*item.pieces, *named[0].pieces])
            named[0].verb_piece = item.verb_piece
            items.remove(item)
    starts = [item.pieces[0][0] for item in items]
    for paragraph in list(prose):
        _give_noun(text, items, starts, prose, paragraph)


def _is_bare(item: Item) -> bool:
    """Whether an item has a command and a noun, and nothing else."""
    others = (item.label, item.faults, item.tail, item.change, item.old, item.added, item.charts)
    return item.verb_piece is not None and not item.has_place and not any(others)


def _give_noun(
    text: str, items: list[Item], starts: list[int], prose: list[Prose], one: Prose
) -> None:
    words = " ".join(text[start:end] for start, end in one.pieces).rstrip()
    noun = _noun(text, one.pieces) if words.endswith(":") else None
    at = bisect_left(starts, noun[1]) if noun is not None else len(starts)
    if noun is None or at == len(starts) or text[noun[1] : starts[at]].strip(" :\n-"):
        return
    named = _named(text, islice(items, at, None))
    for item in named:
        item.words.insert(0, noun)
    if named:
        named[0].pieces = sorted([*one.pieces, *named[0].pieces])
        prose.remove(one)


def _noun(text: str, pieces: Sequence[Piece]) -> Piece | None:
    """The words that name several things, where they say nothing else."""
    if len(pieces) != 1:
        return None
    start, end = pieces[0]
    pointing = _POINTING.match(text, start, end)
    start = pointing.end() if pointing is not None else start
    things = text[start:end].rstrip(" :\n")
    is_noun = bool(things) and are_many(things) and leads_feature(things)
    is_noun = is_noun and read_feature(things).feature.kind not in _DEPTHS
    return (start, start + len(things)) if is_noun else None


def _named(text: str, below: Iterable[Item]) -> list[Item]:
    """The items of the list: the first ones that have a letter, a value and no noun."""
    found: list[Item] = []
    for item in below:
        is_listed = item.verb_piece is None and item.label is not None and item.has_place
        if not is_listed or not value_groups(text, split_lead(text, item.words)[0]):
            break
        found.append(item)
    return found
