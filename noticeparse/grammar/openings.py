"""Which characters a terminal may begin with.

Python tries the alternatives of a pattern one after the other, and enters each to find that it
does not fit.  A guard that looks at one character sends it on at once.  The tree that a pattern is
parsed to is Python's own affair: what is not known here may begin with anything.
"""

from __future__ import annotations

import re
from functools import cache
from importlib import import_module
from typing import Any, NamedTuple

_ASCII = [chr(code) for code in range(128)]
_ANYTHING = frozenset(_ASCII)


@cache
def guarded(pattern: str) -> str:
    """The pattern behind a look at the next character, where some ASCII characters cannot open it.

    For patterns that never match nothing.
    """
    try:
        tree = import_module("re._parser").parse(pattern)
        opening = _opening(tree, tree.state.flags)
    except Exception:  # another Python than expected, in whatever way
        return pattern
    idle = "" if opening.is_passable else "".join(c for c in _ASCII if c not in opening.characters)
    return f"(?=[^{re.escape(idle)}]){pattern}" if idle else pattern


class _Opening(NamedTuple):
    """The ASCII characters that may open a stretch of a pattern."""

    characters: frozenset[str]
    is_passable: bool
    """Whether the stretch may match nothing, so that what follows may open it too."""


def _opening(items: Any, flags: int) -> _Opening:
    found: frozenset[str] = frozenset()
    for item in items:
        opening = _of_item(str(item[0]), item, flags)
        found |= opening.characters
        if not opening.is_passable:
            return _Opening(found, False)
    return _Opening(found, True)


def _of_item(name: str, item: Any, flags: int) -> _Opening:
    value = item[1]
    if name in ("LITERAL", "NOT_LITERAL", "IN", "ANY"):
        return _Opening(_fitting(item, flags), False)
    if name in ("AT", "ASSERT", "ASSERT_NOT"):
        return _Opening(frozenset(), True)
    if name == "SUBPATTERN":
        _, more, less, inner = value
        return _opening(inner, (flags | more) & ~less)
    if name == "BRANCH":
        ways = [_opening(way, flags) for way in value[1]]
        characters = frozenset[str]().union(*(way.characters for way in ways))
        return _Opening(characters, any(way.is_passable for way in ways))
    if name in ("MAX_REPEAT", "MIN_REPEAT"):
        least, _, inner = value
        opening = _opening(inner, flags)
        return opening._replace(is_passable=opening.is_passable or least == 0)
    return _Opening(_ANYTHING, True)


def _fitting(item: Any, flags: int) -> frozenset[str]:
    """The ASCII characters that a part of one character matches; Python itself is asked."""
    parser, compiler = import_module("re._parser"), import_module("re._compiler")
    one = compiler.compile(parser.SubPattern(parser.State(), [item]), flags)
    return frozenset(character for character in _ASCII if one.fullmatch(character))
