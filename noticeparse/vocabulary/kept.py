"""The table of phrases as an earlier run has worked it out, see `store`."""

from __future__ import annotations

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
    return Kept([tuple(one) for one in meanings.values()], rows, frozenset(words))


def read_kept(key: str) -> Kept | None:
    """What was kept for the same data files."""
    kept = store.read(_NAME, key)
    return None if kept is None else Kept(*kept)


def keep(key: str, kept: Kept) -> None:
    """Keep it for the next run."""
    store.write(_NAME, key, tuple(kept))
