"""Trying wordings on the readers: which of them read back, and without a new doubt."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import islice

from noticeparse.catalogue import ENTRIES
from noticeparse.faults import Fault

Faults = Sequence[Fault]

_TRIES = 400


def those_that_read(phrases: Iterable[str], read: Callable[[str], Faults | None]) -> Iterator[str]:
    """The phrases that `read` takes, those without a warning before the others.

    `read` hands back the faults of a phrase, or None where it says something else; a phrase with
    an error is none.
    """
    doubtful: list[str] = []
    for phrase in islice(_once(phrases), _TRIES):
        faults = read(phrase) if phrase else None
        if faults is None:
            continue
        grades = {ENTRIES[fault.code].severity for fault in faults}
        if "warning" in grades and "error" not in grades:
            doubtful.append(phrase)
        elif "error" not in grades:
            yield phrase
    yield from doubtful


def _once(phrases: Iterable[str]) -> Iterator[str]:
    """Each phrase once, made only when it is asked for."""
    seen: set[str] = set()
    for phrase in phrases:
        if phrase not in seen:
            seen.add(phrase)
            yield phrase
