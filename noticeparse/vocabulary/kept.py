"""The table of phrases as an earlier run has worked it out, see `store`."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple

from noticeparse import store

_NAME = "vocabulary"


class Kept(NamedTuple):
    """What phrases mean row by row, the row of every phrase by its key, and all their words."""

    meanings: list[tuple[Any, ...]]
    rows: dict[str, int]
    words: frozenset[str]


def from_table(table: Mapping[str, tuple[Any, ...]], words: Iterable[str]) -> Kept:
    """The same in rows; a meaning that several phrases share is one row."""
    meanings = {id(one): one for one in table.values()}
    number = {identity: row for row, identity in enumerate(meanings)}
    rows = {phrase: number[id(one)] for phrase, one in table.items()}
    return Kept([*meanings.values()], rows, frozenset(words))


def read_kept(key: str) -> Kept | None:
    """What was kept for the same data files."""
    text = store.read(_NAME, key)
    if text is None:
        return None
    meanings, rows, words = json.loads(text)
    return Kept(meanings, rows, frozenset(words))


def keep(key: str, kept: Kept) -> None:
    """Keep it for the next run."""
    text = json.dumps([kept.meanings, kept.rows, sorted(kept.words)])
    store.write(_NAME, key, text.encode())
