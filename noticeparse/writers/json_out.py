"""Bulletins as JSON, one a line, or indented for the eye."""

from __future__ import annotations

from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import Part, Writer

_INDENT = 2


class JsonWriter(Writer):
    """One JSON object for each bulletin."""

    def part(self, bulletin: Bulletin) -> Part:
        """A line, or many lines."""
        indent = _INDENT if self.wishes.is_indented else None
        return Part(bulletin.model_dump_json(indent=indent) + "\n")
