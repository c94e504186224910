"""Lists of places of things that are named once, with what is said of each behind its place.

`wrecks: P, 12m; Q, 15m` are two wrecks, and `light-buoys Q.R at P (No 2) and Q (No 4)` two buoys.
The cut gives words to the place behind them; what the last place has behind it tells that they
belong to the one before.  Lists that do not come out even are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import split_lead
from noticeparse.readers.features import has_kind, leads_feature, read_feature, value_property
from noticeparse.readers.places import is_connector, read_phrase, split_phrase
from noticeparse.readers.positions import quality_mark
from noticeparse.readers.told import told_by
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import Stretch, gather
from noticeparse.vocabulary import DANGERS, primitives

_GROUPS = {
    **dict.fromkeys(("depth", "measure", "number", "quality"), "depth"),
    **dict.fromkeys(("light", "light_words", "sectors"), "light"),
    **dict.fromkeys(("quoted", "numbered", "proper", "code"), "name"),
    **dict.fromkeys(("sound", "racon", "ais"), "aid"),
}
_BRACKET = re.compile(r"^\([^()]{1,40}\)[ ,]*")
_ENDS_IN_BRACKET = re.compile(r"\((?P<said>[^()]{1,40})\)[ ,:]*$")
_JOINT = re.compile(r"(?:and|&),? ", re.IGNORECASE)
_DEPTH_WORD = re.compile(r"\b(?:depths?|soundings?|drying|dries)\b", re.IGNORECASE)
_SOUNDINGS = re.compile(r"(?:depths|soundings)\b", re.IGNORECASE)
_WITH_DEPTHS = DANGERS | {"SOUNDG", "DEPARE", "FSHGRD"}
"""Classes of what has a depth over it; a kind that is nothing else is no thing of a list."""
_SAYS_NOTHING = frozenset(("plain", "other"))


def settle_values_behind(text: str, items: Sequence[Item]) -> None:
    """Give the values in such lists to the places that they stand behind."""
    for run in _runs(text, items):
        heading = split_lead(text, run[0].words)[0]
        told = [value_groups(text, split_lead(text, item.words)[0]) for item in run]
        last = value_groups(text, run[-1].tail)
        said = frozenset[str]().union(*told[1:])
        own = {_GROUPS.get(role) for role in value_property(_joined(text, heading))}
        if last and not last & own and last & said:
            _move_back(text, run, heading, told[1:], last)
        elif _bare_values(text, run, told) - own and _are_many(text, heading):
            # `wrecks P, 12m, Q, 15m, and rock R`: behind the first place, or before the second?
            _hold(text, run)
        else:
            _name_again(text, run, heading, told)


def _runs(text: str, items: Sequence[Item]) -> Iterator[list[Item]]:
    """Items of one sentence, of which the first alone names a thing."""
    run: list[Item] = []
    for item in items:
        # Whether the first names a thing is asked only where another may go on with it.
        goes_on = bool(run) and _follows(text, run[-1], item, is_list=_is_list(text, run[0]))
        if goes_on and (len(run) > 1 or _names_thing(text, run[0])) and _says_values(text, item):
            run.append(item)
            continue
        if len(run) > 1:
            yield run
        run = [item]
    if len(run) > 1:
        yield run


def _names_thing(text: str, item: Item) -> bool:
    if not item.has_place or not item.words or item.verb is None or item.faults:
        return False
    words = _joined(text, item.words)
    first = item.places[0].element
    named = told_by(words).head
    is_named = named is not None and named.value not in ("legend", "note")
    return is_named and item.words[-1][1] <= first.start and "(" not in words[-1:]


def _is_list(text: str, first: Item) -> bool:
    """Whether an item names several things and has one place: `wrecks, depth 5m P`."""
    heading = split_lead(text, first.words)[0] if len(first.places) == 1 else []
    things = gather(text, heading).text
    return bool(heading) and _are_many(text, heading) and not _is_sounding(things)


def _follows(text: str, above: Item, item: Item, *, is_list: bool) -> bool:
    """Whether the place of an item may be one more of a list, by where its words stand."""
    has_own = item.verb_piece or item.label or item.change or item.old or item.added or item.charts
    if has_own or not item.has_place or not above.has_place or item.faults:
        return False
    start, end = above.places[-1].element.end, item.places[0].element.start
    if end <= start or not all(start <= a and b <= end for a, b in item.words):
        return False
    if not item.words and _names_another_verb(text[start:end]):
        # `Delete depth P; insert` above `Q`: another command, whose thing is lost.
        return False
    if not item.words or "\n" not in text[start : item.words[0][0]]:
        return True
    # `wrecks, depth 5m P` and below it `depth 6m Q`: one place is none of several wrecks.
    return is_list and value_groups(text, split_lead(text, item.words)[0]) == {"depth"}


def _names_another_verb(between: str) -> bool:
    """Whether all that stands between two places is a verb: what it is said of is lost."""
    return canonical_verb(between.strip(" ,;.:\n").removeprefix("and ")) is not None


def _says_values(text: str, item: Item) -> bool:
    """Whether values, or nothing, stand before the place of an item."""
    words = _BRACKET.sub("", _joined(text, item.words))
    if not words or is_connector(words):
        return True
    return bool(value_groups(text, split_lead(text, item.words)[0]))


def value_groups(text: str, pieces: Sequence[Piece]) -> frozenset[str]:
    """The groups of the values in some words, empty where they say anything else."""
    return _groups_of(_joined(text, pieces))


def _groups_of(words: str) -> frozenset[str]:
    roles = value_property(words) - _SAYS_NOTHING
    return frozenset(_GROUPS[role] for role in roles) if roles <= _GROUPS.keys() else frozenset()


def _bare_values(
    text: str, run: Sequence[Item], told: Sequence[frozenset[str]]
) -> frozenset[str | None]:
    """The groups of the values in front of later places; `depth 5m` is a thing of its own."""
    pairs = zip(run[1:], told[1:], strict=True)
    bare = [values for item, values in pairs if not leads_feature(_joined(text, item.words))]
    return frozenset[str | None]().union(*bare)


def _joined(text: str, pieces: Sequence[Piece]) -> str:
    return " ".join(text[a:b] for a, b in pieces).strip(" ,;:.")


def _move_back(
    text: str,
    run: Sequence[Item],
    heading: list[Piece],
    told: Sequence[frozenset[str]],
    last: frozenset[str],
) -> None:
    """Give the words in front of each place to the one before it."""
    is_even = all(one == last for one in told) and all(len(item.places) == 1 for item in run)
    if not is_even or any(item.tail for item in run[:-1]):
        _hold(text, run)
        return
    for above, item in pairwise(run):
        above.tail.extend(item.words)
        above.pieces = sorted([*above.pieces, *item.words])
        item.pieces = [piece for piece in item.pieces if piece not in item.words]
        item.words = list(heading)


def _hold(text: str, run: Sequence[Item]) -> None:
    for item in run:
        start, end = item.pieces[0][0], item.pieces[-1][1]
        values = {"written": text[start:end]}
        item.faults.append(Fault("place-of-neighbour", start, end, values))


def _is_cut(text: str, run: Sequence[Item]) -> bool:
    """Whether nothing but a joint, perhaps behind a bracket, stands before a later place."""
    words = [_BRACKET.sub("", _joined(text, item.words)) for item in run[1:]]
    return any(not one or is_connector(one) for one in words)


def _are_points(text: str, run: Sequence[Item], things: str) -> bool:
    """Whether each place of a list is one more of the thing, and no part of a line or an area."""
    drawn = primitives(read_feature(things).feature.kind)
    leads = [split_phrase(_joined(text, run[0].words) + " ").parts]
    leads += [read_phrase(_joined(text, item.words)) for item in run[1:]]
    links = {part.kind for parts in leads for part in parts} - {"words"}
    return links <= {"separator", "at"} and "L" not in drawn and drawn != {"A"}


def _name_again(
    text: str, run: Sequence[Item], heading: list[Piece], told: Sequence[frozenset[str]]
) -> None:
    """Name the thing again where nothing, or only a light, stands in front of a place."""
    things = gather(text, heading)
    head = told_by(things.text).head
    if _is_cut(text, run) and not _are_points(text, run, things.text):
        # `bounded by P (NW corner), Q (NE corner)`: brackets cut one limit in parts.
        _hold(text, run)
        return
    for (above, item), values in zip(pairwise(run), told[1:], strict=True):
        words = _joined(text, item.words)
        behind = _BRACKET.sub("", words)
        if _is_own_bracket(things.text, words):
            # `light-buoys (Q.R) P; (Q.G) Q`: in front, as the bracket of the first place.
            _name_one(text, run, item, things)
        elif not behind or is_connector(behind):
            # A bracket before a joint, `P (PA); Q`, is of the place above.
            above.tail.extend(item.words if behind != words else [])
            above.pieces.extend(item.words if behind != words else [])
            item.pieces = [piece for piece in item.pieces if piece not in item.words]
            item.words = list(heading)
        elif values == {"light"} and head is not None and _are_marks(things.text[: head.end]):
            item.words.insert(0, things.extent((0, head.end)))
        elif values == {"depth"} and item.tail and (noun := _SOUNDINGS.match(things.text)):
            item.words.insert(0, things.extent(noun.span()))
        elif values == {"depth"} and _has_own_figure(text, run[0], things.text, words):
            # `wreck, 12m, P; 9m, Q`: one more wreck, or a depth?
            _name_one(text, run, item, things)
        if len(above.places) > 1 and _is_of_one(_joined(text, above.tail)):
            # `wrecks P, Q (rep 2025), R`: said of Q, and read of P too.
            _hold(text, [above])


def _is_of_one(words: str) -> bool:
    """Whether a bracket says what is no quality of a position, which the last one alone takes."""
    bracket = _BRACKET.match(words)
    return bracket is not None and quality_mark(bracket[0].strip(" ,")) is None


def _name_one(text: str, run: Sequence[Item], item: Item, things: Stretch) -> None:
    """Name the thing again where the first place is one of several; hold the item else."""
    head = told_by(things.text).head
    if head is not None and _is_list(text, run[0]):
        start, end = item.words[0]
        joint = _JOINT.match(text, start, end)
        start = joint.end() if joint is not None else start
        item.words[:1] = [things.extent((0, head.end)), (start, end)]
    else:
        _hold(text, [item])


def _has_own_figure(text: str, first: Item, things: str, words: str) -> bool:
    """Whether a figure stands below a thing that has one itself, told in the same way.

    `wreck, 12m, P; depth 9m, Q` tells of a depth; `wreck, depth 12m, P; depth 9m, Q` may not.
    """
    own = {_GROUPS.get(role) for role in value_property(things)}
    classes = read_feature(things).feature.s57[:1]
    if "depth" not in own or not classes or _is_sounding(things):
        return False
    if not leads_feature(words) or _is_list(text, first):
        return True
    return not _WITH_DEPTHS.isdisjoint(classes) and _DEPTH_WORD.search(things) is not None


def _is_own_bracket(things: str, words: str) -> bool:
    """Whether a bracket opens the words that says what one at the end of the heading says."""
    bracket, first = _BRACKET.match(words), _ENDS_IN_BRACKET.search(things)
    if bracket is None or first is None:
        return False
    said = _groups_of(bracket[0].strip(" ,()"))
    return bool(said) and said == _groups_of(first["said"])


def _is_sounding(things: str) -> bool:
    return read_feature(things).feature.kind in ("sounding", "drying_height")


def _are_many(text: str, heading: Sequence[Piece]) -> bool:
    """Whether the words of a list name several things: `wrecks`, `light-buoys`."""
    things = gather(text, heading).text
    head = told_by(things).head
    return head is not None and things[: head.end].rstrip().lower().endswith("s")


def _are_marks(things: str) -> bool:
    return has_kind(things) and things.lower().endswith(("buoys", "beacons"))
