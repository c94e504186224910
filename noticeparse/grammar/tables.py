"""Keeps the tables of a parser for the next run.

In the form in which Lark itself writes parsers that stand alone, as JSON and not as a pickle.
"""

from __future__ import annotations

import json
from typing import Any

from lark import Lark
from lark.grammar import Rule
from lark.lexer import TerminalDef

from noticeparse import store


def write(name: str, key: str, lark: Lark) -> None:
    """Keep the tables of a parser."""
    if store.folder() is None:
        return
    for terminal in lark.terminals:
        _ = terminal.pattern.max_width  # worked out when asked for the first time, then kept
    data, memo = lark.memo_serialize([TerminalDef, Rule])
    frontend = data["parser"]
    frontend["lexer_conf"]["lexer_type"] = None
    data["options"] = {}
    store.write(name, key, json.dumps({"data": data, "memo": memo}).encode())


def read(name: str, key: str, options: dict[str, Any]) -> Lark | None:
    """The parser whose tables are kept under a name; None where none are."""
    kept = store.read(name, key)
    if kept is None:
        return None
    try:
        parts = json.loads(kept)
        data, memo = parts["data"], _by_number(parts["memo"])
        data["parser"]["lexer_conf"]["lexer_type"] = options["lexer"]
        # Within a state the numbers of terminals may stay strings, as in the table of their names.
        data["parser"]["parser"]["states"] = _by_number(data["parser"]["parser"]["states"])
        data["options"] = options
        lark: Lark = Lark._load_from_dict(data, memo)  # type: ignore[no-untyped-call]
        return lark
    except Exception:  # not the tables that this version of Lark reads, in whatever way
        return None


def _by_number(record: dict[str, Any]) -> dict[int, Any]:
    """The same by numbers, which JSON has as strings."""
    return {int(key): value for key, value in record.items()}
