"""Trying wordings on the readers: which of them read back, without a new doubt or a lost word."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import islice

from noticeparse.canonical.words import holds_words_of
from noticeparse.catalogue import ENTRIES
from noticeparse.faults import Fault
from noticeparse.records.feature import Feature

Faults = Sequence[Fault]

_TRIES = 400


def those_that_read(
    batches: Sequence[Iterable[str]],
    read: Callable[[str], Faults | None],
    *features: Feature,
) -> Iterator[str]:
    """The phrases that `read` takes, those first that hold every word of the features.

    `read` hands back the faults of a phrase, or None where it says something else; a phrase with
    an error is none.  Within a batch those without a warning stand before the others.
    """
    seen: set[str] = set()
    short: list[tuple[bool, str]] = []
    for batch in batches:
        doubtful: list[str] = []
        for phrase in islice(_new(batch, seen), _TRIES):
            faults = read(phrase) if phrase else None
            grades = {ENTRIES[fault.code].severity for fault in faults or ()}
            if faults is None or "error" in grades:
                continue
            if not all(holds_words_of(phrase, feature) for feature in features):
                short.append(("warning" in grades, phrase))
            elif "warning" in grades:
                doubtful.append(phrase)
            else:
                yield phrase
        yield from doubtful
    yield from (phrase for _, phrase in sorted(short, key=lambda one: one[0]))


def _new(phrases: Iterable[str], seen: set[str]) -> Iterator[str]:
    """Each phrase once, made only when it is asked for."""
    for phrase in phrases:
        if phrase not in seen:
            seen.add(phrase)
            yield phrase
