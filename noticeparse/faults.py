"""A fault found while reading, before it becomes a finding.

Readers work on a piece of the repaired text and know nothing of the whole.  They return their
value together with faults whose offsets count from the start of that piece; the pipeline turns
each into a `Finding` with a span of the original text.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from noticeparse.records.finding import Severity


class Fault(NamedTuple):
    """Catalogue code, stretch (offsets into the piece read) and the values its message names."""

    code: str
    start: int
    end: int
    values: dict[str, str] = {}

    def shifted(self, by: int) -> Fault:
        """The same fault, its offsets counted from another start."""
        return self._replace(start=self.start + by, end=self.end + by)


def shifted(faults: Iterable[Fault], by: int) -> list[Fault]:
    """Faults of a part, as faults of the whole that holds it from offset `by` on."""
    return [fault.shifted(by) for fault in faults]


class Entry(NamedTuple):
    """One kind of finding, as the catalogue lists it."""

    code: str
    severity: Severity
    message: str
    """What is wrong, with named values in braces; at most 90 characters, no full stop."""
    meaning: str
    """Why it matters on the chart."""
    hint: str
    """What to do."""
    source: str
    """Published source of the rule, `common practice, no published source`, or `from memory`."""
    bad: str = ""
    """A text that gives this finding, the stretch it points at between `‹` and `›`.

    The body of a notice, or a whole text; for a few codes one light alone.  `\\xe9` is a byte that
    stands for no character of UTF-8.
    """
    good: str = ""
    """The same without the fault."""


class Pointed(NamedTuple):
    """A specimen without its marks, and the stretch they stood round."""

    text: str
    start: int
    end: int


def pointed(specimen: str) -> Pointed:
    """The text of a bad specimen and the stretch it marks."""
    before, _, rest = specimen.partition("‹")
    within, _, behind = rest.partition("›")
    return Pointed(before + within + behind, len(before), len(before) + len(within))
