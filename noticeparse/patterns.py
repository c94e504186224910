"""Compiles long regular expressions once, and keeps what came of it for the next run.

Compiling the joined terminals of a grammar takes Python longer than reading a notice, and so does
compiling the short patterns of all modules.  What it
makes of a pattern is a row of numbers, which its own matcher takes, and checks, without more work.
That way in is Python's own affair: before a pattern is kept it is made both ways and compared, and
where anything is not as expected the pattern is simply compiled.
"""

from __future__ import annotations

import re
import sys
from array import array
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from importlib import import_module
from typing import Any

from noticeparse import store
from noticeparse.version import VERSION

_WORD = "I"
"""The type code of four bytes, in which a compiled pattern counts."""


def compiled(pattern: str, name: str) -> re.Pattern[str]:
    """The pattern, compiled; `name` is that of its copy."""
    kept = read(name, pattern)
    if kept is None:
        kept = re.compile(pattern)
        write(name, pattern, kept)
    return kept


def read(name: str, key: str) -> re.Pattern[str] | None:
    """The pattern kept under a name for a key, None where none is."""
    kept = store.read(name, _key(key))
    if kept is None:
        return None
    try:
        return _put_together(*kept)
    except Exception:  # another Python than expected, in whatever way
        return None


def write(name: str, key: str, made: re.Pattern[str]) -> None:
    """Keep a pattern under a name for a key."""
    if store.folder() is None:
        return
    try:
        parts = _taken_apart(made.pattern)
        if _put_together(*parts) != made:
            return
    except Exception:  # another Python than expected, in whatever way
        return
    store.write(name, _key(key), parts)


@contextmanager
def kept_together(name: str) -> Iterator[None]:
    """Keep all patterns that are compiled within the block, by modules that it imports.

    Python looks for a pattern among those that it compiled before; there the copies are put.  It
    keeps fewer of them than the modules have, and would drop some before they are asked for.
    """
    table, most = getattr(re, "_cache", None), getattr(re, "_MAXCACHE", None)
    if store.folder() is None or not isinstance(table, dict) or most is None:
        yield
        return
    known, others = _read_all(name), set(table)
    table.update(known)
    setattr(re, "_MAXCACHE", max(most, 2 * _MOST))  # noqa: B010  # no type checker knows of it
    try:
        yield
    finally:
        setattr(re, "_MAXCACHE", most)  # noqa: B010
    fresh = [(key, made) for key, made in list(table.items()) if key not in known]
    new = {key: made for key, made in fresh if key not in others and key[0] is str}
    if new:
        _write_all(name, {**(known if len(known) < _MOST else {}), **new})


_Key = tuple[type, str, int]
"""The type of a pattern, the pattern, and its flags: how Python finds it again."""
_MOST = 2000
"""Patterns beyond which those of modules that are no more are forgotten with the others."""


def _read_all(name: str) -> dict[_Key, re.Pattern[str]]:
    kept = store.read(name, _key(VERSION))
    found: dict[_Key, re.Pattern[str]] = {}
    try:
        for flags, parts in kept or ():
            found[str, parts[0], flags] = _put_together(*parts)
    except Exception:  # another Python than expected, in whatever way
        return {}
    return found


def _write_all(name: str, patterns: dict[_Key, re.Pattern[str]]) -> None:
    rows: list[tuple[int, _Parts]] = []
    for (_, pattern, flags), made in patterns.items():
        try:
            parts = _taken_apart(pattern, flags)
            if _put_together(*parts) == made:
                rows.append((int(flags), parts))
        except Exception:  # another Python than expected, in whatever way
            return
    store.write(name, _key(VERSION), rows)


def _key(key: str) -> str:
    return f"{sys.version}\n{sys.byteorder}\n{key}"


_Parts = tuple[str, int, int, dict[str, int], bytes]
"""A pattern, its flags, the number of its groups, those with names, and its code."""


def _taken_apart(pattern: str, flags: int = 0) -> _Parts:
    """What Python's compiler makes of a pattern; it has no public way to say so."""
    tree = import_module("re._parser").parse(pattern, flags)
    code = import_module("re._compiler")._code(tree, flags)
    state = tree.state
    words = array(_WORD, code).tobytes()
    return pattern, int(state.flags), state.groups - 1, dict(state.groupdict), words


@cache
def _compiler() -> Any:
    """What makes a pattern of a row of numbers."""
    return import_module("_sre").compile


def _put_together(
    pattern: str, flags: int, groups: int, names: dict[str, int], words: bytes
) -> re.Pattern[str]:
    by_number: list[str | None] = [None] * (groups + 1)
    for name, number in names.items():
        by_number[number] = name
    code = array(_WORD, words).tolist()
    made: re.Pattern[str] = _compiler()(pattern, flags, code, groups, names, tuple(by_number))
    return made
