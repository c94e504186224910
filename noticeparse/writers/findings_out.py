"""Findings for a person: where, how grave, the words themselves, what, why, and what to do."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence

from noticeparse.catalogue import ENTRIES
from noticeparse.intake.records import Place, page_at
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.writers.quoting import pointed_at, visible

_SEVERITIES = ("error", "warning", "info")


Paint = Callable[[str, str], str]
"""Colours words by a severity."""


def write_findings(
    bulletin: Bulletin,
    text: str,
    label: str,
    paint: Paint = lambda words, _: words,
    *,
    places: Sequence[Place] = (),
) -> Iterator[str]:
    """Each finding with the line of the text it points at, and a blank line behind it."""
    for finding in bulletin.findings:
        page = _page(finding, places)
        yield "\n".join(_lines(finding, text, label, paint, page=page)) + "\n\n"


def write_headlines(bulletin: Bulletin, label: str, places: Sequence[Place] = ()) -> Iterator[str]:
    """Each finding on a line of its own."""
    for finding in bulletin.findings:
        page = _page(finding, places)
        yield headline(finding, label) + (f" ({page})" if page else "") + "\n"


def _page(finding: Finding, places: Sequence[Place]) -> str:
    """`page 3`, or nothing where the text comes from no pages."""
    span = finding.span
    # What points between two characters may be of either page, and names its own.
    if span is None or span.end == span.start:
        return ""
    number = page_at(places, span.start)
    return f"page {number}" if number is not None else ""


def headline(finding: Finding, label: str) -> str:
    """`file:line:column: severity code: message`."""
    return told(finding, _where(finding, label))


def told(finding: Finding, of: str) -> str:
    """`of: severity code: message`."""
    return f"{of}: {finding.severity} {finding.code}: {visible(finding.message)}"


def _where(finding: Finding, label: str) -> str:
    span = finding.span
    return f"{label}:{span.line}:{span.column}" if span else label


def _lines(finding: Finding, text: str, label: str, paint: Paint, *, page: str) -> Iterator[str]:
    place = ", ".join(filter(None, (page, _place(finding))))
    grave = paint(finding.severity, finding.severity)
    yield f"{_where(finding, label)}: {grave} {finding.code}{f' ({place})' if place else ''}"
    span = finding.span
    if span is not None and span.end > span.start:
        line, marks = pointed_at(text, span)
        last = span.line + text.count("\n", span.start, span.end)
        on = f" to line {last}" if last > span.line else ""
        yield f"{span.line:>6} | {line}"
        yield f"{'':>6} | {_under(marks, paint, finding.severity)}{on}"
    yield f"  {visible(finding.message)}"
    yield f"  why:  {ENTRIES[finding.code].meaning}"
    if finding.hint:
        yield f"  hint: {finding.hint}"


def _under(marks: str, paint: Paint, severity: str) -> str:
    """The marks below a line, coloured without the blanks in front."""
    signs = marks.lstrip()
    return marks[: len(marks) - len(signs)] + paint(signs, severity)


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


def count_errors(findings: Iterable[Finding]) -> int:
    """How many of the findings are errors."""
    return sum(finding.severity == "error" for finding in findings)


def is_as_grave(findings: Iterable[Finding], least: str) -> bool:
    """Whether a finding is as grave as `least`, or graver."""
    grave = _SEVERITIES[: _SEVERITIES.index(least) + 1]
    return any(finding.severity in grave for finding in findings)
