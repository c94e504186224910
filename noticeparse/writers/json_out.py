"""Bulletins as JSON, one a line, or indented for the eye."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from noticeparse.records.bulletin import Bulletin

_INDENT = 2


def write_json(bulletins: Iterable[Bulletin]) -> Iterator[str]:
    """One line of JSON for each bulletin."""
    for bulletin in bulletins:
        yield bulletin.model_dump_json() + "\n"


def write_indented(bulletins: Iterable[Bulletin]) -> Iterator[str]:
    """The same records over many lines."""
    for bulletin in bulletins:
        yield bulletin.model_dump_json(indent=_INDENT) + "\n"
