"""Several things before as many places, said to be one each: `A and B in P and Q respectively`.

`respectively` is the word of the trade for the first at the first and the second at the second;
the item is divided into one for each.  Where things and places are not of one number, or cannot
be told apart, the item is held back: all of them would be at all places.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from noticeparse.build.equals import equal_items
from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.layout.drafts import Added, Group, Item, Piece
from noticeparse.readers.features import has_kind, leads_feature, value_property
from noticeparse.readers.places import read_phrase, split_phrase
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import Stretch, blanked, gather, without_asides

_TOLD = re.compile(r"[ ,(]{0,4}\brespectively\b[ ,):.]{0,4}", re.IGNORECASE)
_AND = re.compile(r",? and |, ?| & ?")
_JOINT = re.compile(r"[ ,.]*(?:(?:and|&) ?)?")
_NUMBERS = re.compile(
    r" Nos?\.? ?(?P<list>[0-9]{1,4}[A-Z]?(?:(?:,? and |, ?| ?& ?)[0-9]{1,4}[A-Z]?){1,9})$",
    re.IGNORECASE,
)
_OWN = (
    r'No\.? ?[0-9]{1,4}[A-Z]?|"[^"]{1,40}"|[A-Z]{1,3}-?[0-9]{1,3}[A-Z]?',
    r"[0-9]{1,3}(?:\.[0-9])?(?: ?m| ?metres)?|[0-9]{1,3}[₀-₉]",
    r"[A-Z][A-Za-z]{0,3}[.(][A-Za-z0-9.()+]{1,30}",
)
"""Names, depths and lights, of which each thing has its own."""
_STYLES = [(re.compile(rf"(?:{words})"), re.compile(rf"[ ,(](?P<own>{words})$")) for words in _OWN]


class _Thing(NamedTuple):
    """One of several: the words for all of them, its own, and what to read before its own."""

    head: tuple[int, int]
    own: tuple[int, int]
    joint: str | None


def single_items(context: Context, items: Iterable[Item]) -> Iterator[Item]:
    """The items, with one for each of the things that are of equal standing in one."""
    for item in items:
        for one in items_in_turn(context, item):
            yield from equal_items(context, one)


def items_in_turn(context: Context, item: Item) -> list[Item]:
    """The item, or one for each of the things that stand one by one at its places."""
    places = item.places
    leads = [piece for group in item.groups for piece in group.lead]
    pieces = [*item.words, *leads, *item.tail]
    if len(places) < 2 or not any(_TOLD.search(context.text, *piece) for piece in pieces):
        return [item]
    words = gather(context.text, item.words)
    plain = blanked(words.text, _TOLD)
    split = split_phrase(plain)
    said = plain[: split.description_end].rstrip(" ,:")
    if _AND.search(without_asides(said)) is None:
        return [item]
    is_one = canonical_verb(item.verb or "") in ("insert", "delete") and item.label is None
    is_one &= not (item.change or item.old or item.added) and split.description_end > 0
    is_one &= all(place.element.kind == "point" for place in places)
    others = [blanked(context.text[slice(*piece)], _TOLD) for piece in (*leads, *item.tail)]
    is_one &= all(_JOINT.fullmatch(one) or _only_at(one) for one in others)
    is_one &= _only_at(plain[split.description_end :])
    things = _things(said, len(places)) if is_one else []
    if len(things) != len(places):
        item.faults.append(over(context, item, "relation-unclear"))
        return [item]
    return [
        _one(words, item, thing, Group(places=[place]))
        for thing, place in zip(things, places, strict=True)
    ]


def _only_at(words: str) -> bool:
    return all(part.kind in ("at", "separator") for part in read_phrase(words))


def _one(words: Stretch, item: Item, thing: _Thing, group: Group) -> Item:
    head, own = [_piece(words, span) for span in (thing.head, thing.own)]
    added = [] if thing.joint is None else [Added(thing.joint, own, "")]
    told = head if thing.joint is not None else [*head, *own]
    faults = list(item.faults)
    return replace(item, words=told, groups=[group], tail=[], added=added, faults=faults)


def _piece(words: Stretch, span: tuple[int, int]) -> list[Piece]:
    return [words.extent(span)] if span[1] > span[0] else []


def _things(said: str, count: int) -> list[_Thing]:
    """The things of a list, where each has its number, name, depth or light, or its own kind."""
    if (found := _NUMBERS.search(said)) is not None:
        if not _are_many(said[: found.start()]):
            return []
        numbers = re.finditer(r"[0-9]{1,4}[A-Z]?", found["list"])
        at = found.start("list")
        return [
            _Thing((0, found.start()), (at + a, at + b), " No ") for a, b in map(_span, numbers)
        ]
    joints = [one.span() for one in _AND.finditer(without_asides(said))]
    bounds = [0, *(edge for span in joints for edge in span), len(said)]
    parts = list(zip(bounds[::2], bounds[1::2], strict=True))
    if all(_is_thing(said[slice(*part)]) for part in parts):
        return [_Thing((part[0], part[0]), part, None) for part in parts]
    return _with_own(said, parts[-count:])


def _span(found: re.Match[str]) -> tuple[int, int]:
    return found.span()


def _with_own(said: str, parts: Sequence[tuple[int, int]]) -> list[_Thing]:
    """The things of which the first words are those for all: `light-buoys, Q.R and Q.G`."""
    first, *others = parts
    for whole, behind in _STYLES:
        if not all(whole.fullmatch(said, *part) for part in others):
            continue
        own = behind.search(said, 0, first[1])
        if own is None or not _are_many(said[: own.start()]):
            return []
        found = [own.span("own"), *others]
        is_light = [value_property(said[a:b]) == {"light"} for a, b in found]
        if whole is _STYLES[-1][0] and not all(is_light):
            return []
        return [_Thing((0, own.start()), one, None) for one in found]
    return []


def _is_thing(words: str) -> bool:
    return has_kind(words) and leads_feature(words) and value_property(words) != {"light"}


def _are_many(words: str) -> bool:
    """Whether words are of several things of one kind: `special light-buoys`."""
    first = words.split(",")[0].strip(" (")
    return first.lower().endswith("s") and has_kind(first)
