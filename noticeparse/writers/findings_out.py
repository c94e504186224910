"""Findings for a person: where, how grave, what, the words themselves, and what to do."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator

from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.writers.quoting import pointed_at, visible

_SEVERITIES = ("error", "warning", "info")


def write_findings(bulletin: Bulletin, text: str, label: str) -> Iterator[str]:
    """Each finding with the line of the text it points at, and a hint."""
    for finding in bulletin.findings:
        yield "\n".join([headline(finding, label), *_details(finding, text)]) + "\n"


def write_headlines(bulletin: Bulletin, label: str) -> Iterator[str]:
    """Each finding on a line of its own."""
    for finding in bulletin.findings:
        yield headline(finding, label) + "\n"


def headline(finding: Finding, label: str) -> str:
    """`file:line:column: severity code: message`."""
    span = finding.span
    return told(finding, f"{label}:{span.line}:{span.column}" if span else label)


def told(finding: Finding, of: str) -> str:
    """`of: severity code: message`."""
    return f"{of}: {finding.severity} {finding.code}: {visible(finding.message)}"


def _details(finding: Finding, text: str) -> Iterator[str]:
    if finding.span is not None and finding.span.end > finding.span.start:
        line, marks = pointed_at(text, finding.span)
        number = f"{finding.span.line:>6}"
        yield f"{number} | {line}"
        yield f"{'':>6} | {marks}"
    place = _place(finding)
    if place:
        yield f"  in:   {place}"
    if finding.hint:
        yield f"  hint: {finding.hint}"


def _place(finding: Finding) -> str:
    parts = []
    if finding.notice:
        parts.append(f"notice {visible(finding.notice)}")
    if finding.chart:
        parts.append(f"chart {visible(finding.chart)}")
    return ", ".join(parts)


class Tally:
    """Counts over all inputs."""

    def __init__(self) -> None:
        self._severities: Counter[str] = Counter()
        self._notices = 0
        self._actions = 0

    def add(self, bulletin: Bulletin) -> None:
        """Count one more bulletin."""
        self._severities.update(finding.severity for finding in bulletin.findings)
        self._notices += len(bulletin.notices)
        self._actions += sum(
            len(chart.actions) for notice in bulletin.notices for chart in notice.charts
        )

    @property
    def is_without_findings(self) -> bool:
        """Whether nothing was found."""
        return not self._severities.total()

    def line(self) -> str:
        """`3 notices, 12 actions; 1 error, 0 warnings, 4 infos`."""
        read = [counted(self._notices, "notice"), counted(self._actions, "action")]
        found = [counted(self._severities[one], one) for one in _SEVERITIES]
        return f"{', '.join(read)}; {', '.join(found)}"


def counted(number: int, thing: str) -> str:
    """`1 action`, `2 actions`."""
    return f"{number} {thing}" if number == 1 else f"{number} {thing}s"


def is_outside(finding: Finding) -> bool:
    """Whether a finding is of no notice: of the text between them, or of a list."""
    return not any(path.startswith("/notices/") for path in finding.paths)


def count_errors(findings: Iterable[Finding]) -> int:
    """How many of the findings are errors."""
    return sum(finding.severity == "error" for finding in findings)
