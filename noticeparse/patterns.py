"""Compiles regular expressions, the long ones with the help of the copy of an earlier run.

Compiling the joined terminals of a grammar takes Python longer than reading a notice.  What it
makes of a pattern is a row of numbers, which its own matcher takes, and checks, without more work.
That way in is Python's own affair: before a pattern is kept it is made both ways and compared, and
where anything is not as expected the pattern is simply compiled.
"""

from __future__ import annotations

import base64
import json
import re
import sys
from array import array
from importlib import import_module
from typing import Any

from noticeparse import store

_WORTH_KEEPING = 150
"""Characters; a shorter pattern is compiled faster than it is read."""

_WORD = "I"
"""The type code of four bytes, in which a compiled pattern counts."""


def compiled(pattern: str, name: str) -> re.Pattern[str]:
    """The compiled pattern; `name` is that of its copy."""
    if len(pattern) < _WORTH_KEEPING:
        return re.compile(pattern)
    key = f"{sys.version}\n{sys.byteorder}\n{pattern}"
    kept = store.read(name, key)
    if kept is not None:
        try:
            return _put_together(pattern, json.loads(kept))
        except Exception:  # another Python than expected, in whatever way
            return re.compile(pattern)
    made = re.compile(pattern)
    if store.folder() is not None:
        _keep(made, name, key)
    return made


def _keep(made: re.Pattern[str], name: str, key: str) -> None:
    try:
        parts = _taken_apart(made.pattern)
        if _put_together(made.pattern, parts) != made:
            return
    except Exception:  # another Python than expected, in whatever way
        return
    store.write(name, key, json.dumps(parts))


def _taken_apart(pattern: str) -> dict[str, Any]:
    """What Python's compiler makes of a pattern; it has no public way to say so."""
    tree = import_module("re._parser").parse(pattern)
    code = import_module("re._compiler")._code(tree, 0)
    return {
        "flags": int(tree.state.flags),
        "groups": tree.state.groups - 1,
        "names": tree.state.groupdict,
        "code": base64.b64encode(array(_WORD, code).tobytes()).decode("ascii"),
    }


def _put_together(pattern: str, parts: dict[str, Any]) -> re.Pattern[str]:
    code = array(_WORD, base64.b64decode(parts["code"])).tolist()
    names: dict[str, int] = parts["names"]
    by_number: list[str | None] = [None] * (parts["groups"] + 1)
    for name, number in names.items():
        by_number[number] = name
    make = import_module("_sre").compile
    made: re.Pattern[str] = make(
        pattern, parts["flags"], code, parts["groups"], names, tuple(by_number)
    )
    return made
