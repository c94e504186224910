"""Words of which any match of a pattern holds one, found in what Python makes of the pattern."""

from __future__ import annotations

import re
import string
from collections.abc import Callable, Iterator
from importlib import import_module
from typing import Any

_SRE = import_module("re._constants")
_REPEATS = (_SRE.MAX_REPEAT, _SRE.MIN_REPEAT)
_LONGEST = 3
_OPEN = "?"
"""Behind letters of which is not known whether more of them follow."""

Nodes = tuple[Any, ...]
Rank = Callable[[frozenset[str]], Any]


def needed(pattern: re.Pattern[str], rank: Rank) -> frozenset[str] | None:
    """The lowest by `rank` of the sets of openings of words, None where there is none."""
    tree = import_module("re._parser").parse(pattern.pattern, pattern.flags & ~re.UNICODE)
    return _best(_nodes(tree, pattern.flags), (), False, rank)[0]


def _nodes(tree: Any, flags: int) -> Nodes:
    """The steps of a pattern, groups put in their place."""
    found: list[Any] = []
    for kind, value in tree:
        if kind is _SRE.SUBPATTERN:
            found += _nodes(value[3], flags | value[1])
        elif kind is _SRE.BRANCH:
            found.append((kind, [_nodes(one, flags) for one in value[1]]))
        elif kind in _REPEATS:
            found.append((_SRE.MAX_REPEAT, (value[0], value[1], _nodes(value[2], flags))))
        elif kind in (_SRE.ASSERT, _SRE.ASSERT_NOT):
            found.append((kind, (value[0], _nodes(value[1], flags))))
        elif kind is _SRE.LITERAL:
            found.append((_SRE.IN, _folded({chr(value)}, flags)))
        elif kind is _SRE.IN:
            found.append((kind, _folded(_signs(value), flags)))
        else:
            found.append((kind, value))
    return tuple(found)


def _folded(signs: set[str], flags: int) -> frozenset[str]:
    """The signs in small letters; a capital that stands for itself alone has a mark of its own."""
    either = {sign.lower() for sign in signs}
    whole = bool(flags & re.IGNORECASE) or all({c, c.upper()} <= signs for c in either)
    return frozenset(either | ({"both"} if whole else set()))


def _signs(parts: Any) -> set[str]:
    """The signs of a set, as far as they are ASCII; others are no letters of words."""
    signs: set[str] = set()
    for kind, value in parts:
        if kind is _SRE.NEGATE:
            return set(map(chr, range(128))) - _signs(parts[1:])
        if kind is _SRE.LITERAL:
            signs.add(chr(value))
        elif kind is _SRE.RANGE:
            signs.update(map(chr, range(value[0], min(value[1], 127) + 1)))
        else:
            test = {
                _SRE.CATEGORY_SPACE: str.isspace,
                _SRE.CATEGORY_DIGIT: str.isdigit,
                _SRE.CATEGORY_WORD: lambda c: c.isalnum() or c == "_",
                _SRE.CATEGORY_NOT_SPACE: lambda c: not c.isspace(),
                _SRE.CATEGORY_NOT_WORD: lambda c: not (c.isalnum() or c == "_"),
            }[value]
            signs.update(filter(test, map(chr, range(128))))
    return signs


def _letters(signs: frozenset[str]) -> set[str]:
    return signs & set(string.ascii_lowercase)  # type: ignore[return-value]


def _is_no_letter(kind: Any, value: Any) -> bool:
    return kind is _SRE.IN and not _letters(value)


def _best(
    nodes: Nodes, tail: Nodes, opens: bool, rank: Rank
) -> tuple[frozenset[str] | None, bool]:
    """The lowest set of openings in steps before others, and whether a word may begin behind.

    `opens` is whether one may begin in front: no letter stands there.
    """
    found: list[frozenset[str]] = []
    for at, (kind, value) in enumerate(nodes):
        rest = (*nodes[at + 1 :], *tail)
        if opens and (words := _words((*nodes[at:], *tail))) is not None:
            found.append(words)
        if kind is _SRE.BRANCH:
            sides = [_best(one, rest, opens, rank) for one in value]
            opens = all(side[1] for side in sides)
            if all(side[0] is not None for side in sides):
                found.append(frozenset().union(*(side[0] or () for side in sides)))
        elif kind is _SRE.MAX_REPEAT:
            inner, behind = _best(value[2], rest, opens, rank)
            opens = behind and (opens or value[0] > 0)
            if inner is not None and value[0] > 0:
                found.append(inner)
        else:
            opens = _opens_behind(kind, value, opens)
    return min(found, key=rank, default=None), opens


def _opens_behind(kind: Any, value: Any, opens: bool) -> bool:
    """Whether a word may begin behind one step."""
    if kind is _SRE.AT:
        return value is not _SRE.AT_NON_BOUNDARY
    if kind is _SRE.ASSERT_NOT and value[0] < 0 and len(value[1]) == 1:
        signs = value[1][0][1] if value[1][0][0] is _SRE.IN else frozenset()
        return opens or signs >= {*string.ascii_lowercase, "both"}
    if kind is _SRE.ASSERT and value[0] < 0:
        return opens or _is_no_letter(*value[1][-1])
    if kind in (_SRE.ASSERT, _SRE.ASSERT_NOT):
        return opens
    return _is_no_letter(kind, value)


def _words(nodes: Nodes) -> frozenset[str] | None:
    """The openings of all words that may begin with the steps, None where not all are known."""
    words = set(_firsts(nodes, ""))
    return None if any(one.endswith(_OPEN) or not one for one in words) else frozenset(words)


def _firsts(nodes: Nodes, read: str) -> Iterator[str]:
    """What may be read of a word, with a mark behind it where more of it may follow."""
    if len(read) == _LONGEST:
        yield read
        return
    if not nodes:
        yield read + _OPEN
        return
    (kind, value), rest = nodes[0], nodes[1:]
    if kind is _SRE.IN:
        if len(_letters(value)) > _LONGEST:
            yield read + _OPEN
            return
        for letter in _letters(value):
            yield from _firsts(rest, read + letter)
        if set(value) - {"both"} - _letters(value):
            yield read
    elif kind is _SRE.BRANCH:
        for side in value:
            yield from _firsts((*side, *rest), read)
    elif kind is _SRE.MAX_REPEAT:
        least, most, inner = value
        if least == 0:
            yield from _firsts(rest, read)
        again = ((kind, (max(least - 1, 0), most - 1, inner)),) if most > 1 else ()
        yield from _firsts((*inner, *again, *rest), read)
    elif kind is _SRE.AT and read:
        yield read
    elif kind is _SRE.ASSERT and value[0] < 0 and read and _is_no_letter(*value[1][-1]):
        return  # it is a letter that stands in front
    elif kind in (_SRE.AT, _SRE.ASSERT, _SRE.ASSERT_NOT):
        yield from _firsts(rest, read)
    else:
        yield read + _OPEN
