"""Moves the records of a part to their place in the whole text that it is a part of.

Spans, and the paths of findings, count in the whole text; everything else stays as it was read.
"""

from __future__ import annotations

from typing import Any, NamedTuple, Protocol, TypeVar

from pydantic import BaseModel

from noticeparse.spans import Span

Moved = TypeVar("Moved")


class Moving(Protocol):
    """Leads spans and paths to where they count."""

    def span(self, span: Span) -> Span:
        """The span where it counts."""

    def path(self, path: str) -> str:
        """The JSON Pointer where it counts."""


class Move(NamedTuple):
    """How far a part lies from where its own offsets and indexes count."""

    offset: int
    line: int
    column: int
    """How much of the first line stands in the part before."""
    notices: int
    lists: int

    def span(self, span: Span) -> Span:
        """A span of the part as one of the whole."""
        return Span(
            start=span.start + self.offset,
            end=span.end + self.offset,
            line=span.line + self.line,
            column=span.column + (self.column if span.line == 1 else 0),
        )

    def path(self, path: str) -> str:
        """A JSON Pointer into the part as one into the whole."""
        _, root, *rest = path.split("/", 3) if path else ("", "")
        by = {"notices": self.notices, "lists": self.lists}.get(root, 0)
        if not by:
            return path
        index, *below = rest
        return "/".join(["", root, str(int(index) + by), *below])


def moved(value: Moved, move: Moving) -> Moved:
    """A record, or a list of records, in the whole; one without spans is handed back as it is."""
    new: Moved = _moved(value, move)
    return new


def _moved(value: Any, move: Moving) -> Any:
    if isinstance(value, Span):
        return move.span(value)
    if isinstance(value, list):
        new = [_moved(one, move) for one in value]
        return new if any(a is not b for a, b in zip(new, value, strict=True)) else value
    if not isinstance(value, BaseModel):
        return value
    update = {}
    for name, old in value.__dict__.items():
        now = [move.path(path) for path in old] if name == "paths" else _moved(old, move)
        if now is not old:
            update[name] = now
    return value.model_copy(update=update) if update else value
