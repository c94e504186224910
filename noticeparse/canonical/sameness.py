"""When two records say the same: all that a canonical text must give back when it is read again.

Left aside is what tells where and in which words a record stood in its text: spans, findings,
`text`, `heading`, `via`, and every key for words as written.  So is `sheet`, which comes from the
chart list and not from the text.  Figures are held as the JSON numbers they are written as.
"""

from __future__ import annotations

from typing import Any

from noticeparse.spans import Record
from noticeparse.text import repair

_OF_THE_TEXT = frozenset({"span", "spans", "findings", "text", "heading", "via", "written"})
_OF_THE_LIST = frozenset({"sheet"})


def said_by(record: Record) -> Any:
    """What a record says, as plain values."""
    return _without_words(record.model_dump(mode="json"))


def is_same(one: Record, other: Record) -> bool:
    """Whether two records say the same."""
    return bool(said_by(one) == said_by(other))


def is_alike(read: Record, other: Record) -> bool:
    """The same of a record read from repaired words, in which look-alikes have been exchanged."""
    return bool(_repaired(said_by(read)) == _repaired(said_by(other)))


def _repaired(value: Any) -> Any:
    if isinstance(value, str):
        return repair(value).text
    if isinstance(value, dict):
        return {key: _repaired(one) for key, one in value.items()}
    return [_repaired(one) for one in value] if isinstance(value, list) else value


def _without_words(value: Any) -> Any:
    if isinstance(value, dict):
        return {key: _without_words(one) for key, one in value.items() if not _is_aside(key)}
    if isinstance(value, list):
        return [_without_words(one) for one in value]
    return value


def _is_aside(key: str) -> bool:
    if key in _OF_THE_TEXT or key in _OF_THE_LIST:
        return True
    return key.startswith("written_") or key.endswith("_written")
