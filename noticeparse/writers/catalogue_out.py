"""Entries of the finding catalogue for a person."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from itertools import chain, repeat

from noticeparse.faults import Entry, pointed
from noticeparse.writers.quoting import columns, visible

_VALUE = re.compile(r"\{([a-z_]+)\}")


def write_entries(entries: Iterable[Entry]) -> Iterator[str]:
    """A block for each entry; the values that a message names stand as `<value>`."""
    for number, entry in enumerate(entries):
        blank = "\n" if number else ""
        rows = (
            ("message", [_VALUE.sub(r"<\1>", entry.message)]),
            ("meaning", [entry.meaning]),
            ("hint", [entry.hint]),
            ("bad", list(marked(entry.bad))),
            ("good", [visible(line) for line in entry.good.splitlines()]),
            ("source", [entry.source]),
        )
        body = "".join(_row(name, lines) for name, lines in rows)
        yield f"{blank}{entry.code} ({entry.severity})\n{body}"


def _row(name: str, lines: Iterable[str]) -> str:
    """A name with its words, further lines set in below the first."""
    heads = chain([f"  {name}"], repeat(""))
    return "".join(
        f"{head:<11}{words}".rstrip() + "\n" for head, words in zip(heads, lines, strict=False)
    )


def marked(specimen: str) -> Iterator[str]:
    """The lines of a bad specimen, with marks below what is pointed at."""
    text, start, end = pointed(specimen)
    at = 0
    for line in text.splitlines(keepends=True):
        words = line.rstrip("\n")
        yield visible(words)
        first, last = max(start - at, 0), min(end - at, len(words))
        at += len(line)
        if first < last or at - len(line) <= start == end < at:
            lead = " " * columns(visible(words[:first]))
            yield lead + "^" * max(1, columns(visible(words[first:last])))
