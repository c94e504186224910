"""Compiles long regular expressions once, and keeps what came of it for the next run.

Compiling the joined terminals of a grammar takes Python longer than reading a notice.  What it
makes of a pattern is a row of numbers, which its own matcher takes, and checks, without more work.
That way in is Python's own affair: before a pattern is kept it is made both ways and compared, and
where anything is not as expected the pattern is simply compiled.
"""

from __future__ import annotations

import json
import re
import sys
from array import array
from importlib import import_module
from typing import Any

from noticeparse import store

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
    head, _, code = kept.partition(b"\n")
    try:
        return _put_together(json.loads(head), code)
    except Exception:  # another Python than expected, in whatever way
        return None


def write(name: str, key: str, made: re.Pattern[str]) -> None:
    """Keep a pattern under a name for a key."""
    if store.folder() is None:
        return
    try:
        parts, code = _taken_apart(made.pattern)
        if _put_together(parts, code) != made:
            return
    except Exception:  # another Python than expected, in whatever way
        return
    store.write(name, _key(key), json.dumps(parts).encode() + b"\n" + code)


def _key(key: str) -> str:
    return f"{sys.version}\n{sys.byteorder}\n{key}"


def _taken_apart(pattern: str) -> tuple[dict[str, Any], bytes]:
    """What Python's compiler makes of a pattern; it has no public way to say so."""
    tree = import_module("re._parser").parse(pattern)
    code = import_module("re._compiler")._code(tree, 0)
    parts = {
        "pattern": pattern,
        "flags": int(tree.state.flags),
        "groups": tree.state.groups - 1,
        "names": tree.state.groupdict,
    }
    return parts, array(_WORD, code).tobytes()


def _put_together(parts: dict[str, Any], code: bytes) -> re.Pattern[str]:
    names: dict[str, int] = parts["names"]
    by_number: list[str | None] = [None] * (parts["groups"] + 1)
    for name, number in names.items():
        by_number[number] = name
    made: re.Pattern[str] = import_module("_sre").compile(
        parts["pattern"],
        parts["flags"],
        array(_WORD, code).tolist(),
        parts["groups"],
        names,
        tuple(by_number),
    )
    return made
