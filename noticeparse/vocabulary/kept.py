"""The table of phrases as an earlier run has worked it out, see `store`."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple

from noticeparse import store

_NAME = "vocabulary"


class Kept(NamedTuple):
    """Row by row what phrases mean, the row of every phrase by its key, and all their words."""

    meanings: list[list[Any]]
    rows: dict[str, int]
    words: list[str]


def read_kept(key: str) -> Kept | None:
    """What was kept for the same data files."""
    text = store.read(_NAME, key)
    return None if text is None else Kept(*json.loads(text))


def keep(key: str, table: Mapping[str, tuple[Any, ...]], words: Iterable[str]) -> None:
    """Keep the table and the words; a meaning that several phrases share is kept once."""
    meanings: dict[int, tuple[Any, ...]] = {id(one): one for one in table.values()}
    number = {identity: row for row, identity in enumerate(meanings)}
    rows = {phrase: number[id(one)] for phrase, one in table.items()}
    store.write(_NAME, key, json.dumps([[*meanings.values()], rows, sorted(words)]))
