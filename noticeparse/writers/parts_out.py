"""The parts of one bulletin as JSON Lines, in bounded memory: the bytes that `write_lines` gives.

The last line holds the findings, the lists and the unread stretches of all parts; until then they
wait on disk.
"""

from __future__ import annotations

import codecs
import json
import tempfile
from collections.abc import Iterable, Iterator
from typing import IO

from pydantic import BaseModel

from noticeparse.records.bulletin import Bulletin, Coverage
from noticeparse.writers.lines_out import write_notice

_IN_MEMORY = 1_000_000
_PIECE = 65_536
_COUNTS = ("characters", "read", "ignored", "unread")


def write_parts(parts: Iterable[Bulletin]) -> Iterator[str]:
    """The line of each notice, then that of the bulletin in pieces; nothing without a part."""
    first: Bulletin | None = None
    counts = dict.fromkeys(_COUNTS, 0)
    index = 0
    with _Waiting() as lists, _Waiting() as findings, _Waiting() as unread:
        for part in parts:
            first = first or part.model_copy(update={"notices": [], "findings": [], "lists": []})
            for notice in part.notices:
                yield write_notice(notice, index)
                index += 1
            lists.add(part.lists)
            findings.add(part.findings)
            unread.add(part.coverage.unread_spans)
            for name in _COUNTS:
                counts[name] += getattr(part.coverage, name)
        if first is None:
            return
        waiting = {"lists": lists, "findings": findings}
        yield '{"record":"bulletin"'
        for name in (one for one in Bulletin.model_fields if one != "notices"):
            yield f',"{name}":'
            if name == "coverage":
                yield from _coverage(counts, unread)
            elif name in waiting:
                yield from waiting[name].pieces()
            else:
                yield first.model_dump_json(include={name})[len(f'{{"{name}":') : -1]
        yield "}\n"


def _coverage(counts: dict[str, int], unread: _Waiting) -> Iterator[str]:
    comma = "{"
    for name in Coverage.model_fields:
        yield f'{comma}"{name}":'
        comma = ","
        if name == "unread_spans":
            yield from unread.pieces()
        else:
            yield json.dumps(counts[name])
    yield "}"


class _Waiting:
    """Records that are written later, as one list."""

    def __init__(self) -> None:
        self._file: IO[bytes] = tempfile.SpooledTemporaryFile(_IN_MEMORY)  # noqa: SIM115 - by __exit__
        self._is_empty = True

    def __enter__(self) -> _Waiting:
        return self

    def __exit__(self, *_: object) -> None:
        self._file.close()

    def add(self, records: Iterable[BaseModel]) -> None:
        """Keep records until the list is written."""
        for record in records:
            comma = "" if self._is_empty else ","
            self._file.write((comma + record.model_dump_json()).encode())
            self._is_empty = False

    def pieces(self) -> Iterator[str]:
        """The list, in pieces."""
        yield "["
        self._file.seek(0)
        decoder = codecs.getincrementaldecoder("utf-8")()
        while piece := self._file.read(_PIECE):
            yield decoder.decode(piece)
        yield "]"
