"""Entries of the finding catalogue for a person."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from noticeparse.faults import Entry

_VALUE = re.compile(r"\{([a-z_]+)\}")


def write_entries(entries: Iterable[Entry]) -> Iterator[str]:
    """A block for each entry; the values that a message names stand as `<value>`."""
    for number, entry in enumerate(entries):
        blank = "\n" if number else ""
        rows = (
            ("message", _VALUE.sub(r"<\1>", entry.message)),
            ("meaning", entry.meaning),
            ("hint", entry.hint),
            ("source", entry.source),
        )
        body = "".join(f"  {name:<9}{words}\n" for name, words in rows)
        yield f"{blank}{entry.code} ({entry.severity})\n{body}"
