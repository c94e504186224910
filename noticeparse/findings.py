"""From faults to findings: a code and named values become a message, a hint and a span."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from noticeparse.build.context import Context
from noticeparse.catalogue import ENTRIES
from noticeparse.faults import Fault
from noticeparse.records.finding import Finding, Severity

_LONGEST_QUOTE = 70


@dataclass(slots=True)
class Located:
    """A fault in its place: offsets in the repaired text, and the records it belongs to."""

    fault: Fault
    paths: list[str] = field(default_factory=list)
    notice: str | None = None
    chart: str | None = None
    severity: Severity | None = None
    """In place of the catalogue's, for unread text that may hold an action."""


def merged(located: Iterable[Located]) -> list[Located]:
    """One entry per fault: what is stated once for several charts is said once."""
    found: dict[tuple[str, int, int], Located] = {}
    for one in located:
        key = (one.fault.code, one.fault.start, one.fault.end)
        known = found.get(key)
        if known is None:
            found[key] = Located(one.fault, list(one.paths), one.notice, one.chart, one.severity)
            continue
        known.paths += [path for path in one.paths if path not in known.paths]
        if known.chart != one.chart:
            known.chart = None
    return sorted(found.values(), key=lambda one: (one.fault.start, one.fault.end, one.fault.code))


def to_finding(context: Context, located: Located) -> Finding:
    """The finding of a fault; the words come from the catalogue."""
    fault = located.fault
    entry = ENTRIES[fault.code]
    values = {name: _shortened(value) for name, value in fault.values.items()}
    return Finding(
        code=fault.code,
        severity=located.severity or entry.severity,
        message=entry.message.format(**values),
        hint=entry.hint,
        span=context.span(fault.start, fault.end),
        notice=located.notice,
        chart=located.chart,
        paths=located.paths,
    )


def is_error(located: Located) -> bool:
    """Whether a fault forbids the use of what it points at."""
    return (located.severity or ENTRIES[located.fault.code].severity) == "error"


def _shortened(value: str) -> str:
    words = " ".join(value.split())
    if len(words) <= _LONGEST_QUOTE:
        return words
    return words[: _LONGEST_QUOTE - 1] + "…"
