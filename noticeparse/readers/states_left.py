"""Words of a state, a time or the ground that the record of a feature has no place for.

`4₅ R` is a rock or rocky ground, `light by day` one of two lights, and `buoys A, B and C` have one
name in the record: in come the items of a phrase with its kind settled, out come faults.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.names_beside import listed_names
from noticeparse.readers.told import Told
from noticeparse.vocabulary import kinds

_GROUND = frozenset("R S M G P Cy Si St Cb Co Sh Wd Bo Br Rk".split())
"""Letters of the ground on charts."""
_TIME = re.compile(r"\b(?:by (?:day|night)|in fog)\b(?! and\b)", re.IGNORECASE)


def states_left(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """Faults of such words."""
    if kind == "sounding" and told.head is None:
        for item in told.items:
            if item.role == "unknown" and item.text in _GROUND:
                yield _fault("feature-words-unread", text, item.start, item.end)
    if (names := listed_names(text)) is not None:
        yield _fault("feature-words-unread", text, *names.span("list"))
    known = kinds().get(kind)
    if known is not None and known.s57 == "LIGHTS" and (time := _TIME.search(text)) is not None:
        yield _fault("light-leftover-words", text, *time.span())


def _fault(code: str, text: str, start: int, end: int) -> Fault:
    return Fault(code, start, end, {"written": shown(text[start:end])})
