"""Trying wordings on the readers: which of them read back, and without a new doubt."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import islice

from noticeparse.catalogue import ENTRIES
from noticeparse.faults import Fault

Faults = Sequence[Fault]

_MOST = 4
_TRIES = 400


def those_that_read(phrases: Iterable[str], read: Callable[[str], Faults | None]) -> list[str]:
    """The first few phrases that `read` takes, those without a warning before the others.

    `read` hands back the faults of a phrase, or None where it says something else; a phrase with
    an error is none.
    """
    plain: list[str] = []
    doubtful: list[str] = []
    for phrase in islice(dict.fromkeys(phrases), _TRIES):
        faults = read(phrase) if phrase else None
        grades = {ENTRIES[fault.code].severity for fault in faults} if faults is not None else None
        if grades is None or "error" in grades:
            continue
        (doubtful if "warning" in grades else plain).append(phrase)
        if len(plain) == _MOST:
            break
    return [*plain, *doubtful][:_MOST]
