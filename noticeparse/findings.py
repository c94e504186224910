"""From faults to findings: a code and named values become a message, a hint and a span."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace

from noticeparse.catalogue import ENTRIES
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding, Severity
from noticeparse.records.notice import Notice
from noticeparse.spans import Span

_LONGEST_QUOTE = 70


@dataclass
class Located:
    """A fault in its place: offsets in the repaired text, and the records it belongs to."""

    fault: Fault
    paths: list[str] = field(default_factory=list)
    notice: str | None = None
    chart: str | None = None
    severity: Severity | None = None
    """In place of the catalogue's, for unread text that may hold an action."""
    span: Span | None = None
    """Where a check found it: a span of the original text, in place of the fault's offsets."""


def merged(located: Iterable[Located]) -> list[Located]:
    """One entry per fault: what is stated once for several charts is said once."""
    found: dict[tuple[object, ...], Located] = {}
    for one in located:
        key = (one.fault.code, *_extent(one), *sorted(one.fault.values.items()))
        known = found.get(key)
        if known is None:
            found[key] = replace(one, paths=list(one.paths))
            continue
        known.paths += [path for path in one.paths if path not in known.paths]
        if known.chart != one.chart:
            known.chart = None
    return list(found.values())


_ONCE = "depth-unit-not-stated"


def once_a_section(located: Sequence[Located]) -> list[Located]:
    """The faults of a chart section; that depths were read as metres is told once for all."""
    first: Located | None = None
    kept: list[Located] = []
    for one in located:
        if one.fault.code != _ONCE:
            kept.append(one)
        elif first is None:
            first = one
            kept.append(one)
        else:
            first.paths += one.paths
    return kept


def _extent(one: Located) -> tuple[int, int]:
    if one.span is not None:
        return one.span.start, one.span.end
    return one.fault.start, one.fault.end


def with_findings(bulletin: Bulletin, findings: Iterable[Finding]) -> Bulletin:
    """The bulletin with its findings in text order, each also in the notices it points into."""
    ordered = sorted(findings, key=in_text_order)
    own = _by_notice(ordered)
    notices = [_with_own(n, i, own.get(i, [])) for i, n in enumerate(bulletin.notices)]
    return bulletin.model_copy(update={"notices": notices, "findings": ordered})


def is_outside(finding: Finding) -> bool:
    """Whether a finding is of no notice: of the text between them, or of a list."""
    return not any(path.startswith("/notices/") for path in finding.paths)


def in_text_order(finding: Finding) -> tuple[int, int, str]:
    """The key that sorts findings: by where they stand, those of the whole text first."""
    if finding.span is None:
        return -1, -1, finding.code
    return finding.span.start, finding.span.end, finding.code


def to_finding(context: Context, located: Located) -> Finding:
    """The finding of a fault; the words come from the catalogue."""
    fault = located.fault
    return finding_at(located, located.span or context.span(fault.start, fault.end))


def finding_at(located: Located, span: Span | None) -> Finding:
    """The finding of a fault that stands at a span of the original text."""
    fault = located.fault
    entry = ENTRIES[fault.code]
    values = {name: _shortened(value) for name, value in fault.values.items()}
    return Finding(
        code=fault.code,
        severity=located.severity or entry.severity,
        message=entry.message.format(**values),
        hint=entry.hint,
        span=span,
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


def _by_notice(findings: list[Finding]) -> dict[int, list[Finding]]:
    """The findings that point into each notice, by its index."""
    found: dict[int, list[Finding]] = {}
    for finding in findings:
        paths = [path.split("/") for path in finding.paths if path.startswith("/notices/")]
        for index in {int(path[2]) for path in paths}:
            found.setdefault(index, []).append(finding)
    return found


def _with_own(notice: Notice, index: int, own: list[Finding]) -> Notice:
    """The notice with its own findings; an action that an error points at is not usable."""
    if not own:
        return notice
    prefix = f"/notices/{index}"
    return notice.model_copy(update={"findings": own, "charts": _usable(notice, prefix, own)})


def _usable(notice: Notice, prefix: str, findings: list[Finding]) -> list[object]:
    paths = {path for one in findings if one.severity == "error" for path in one.paths}
    if not paths:
        return list(notice.charts)
    # An error within an action, at whatever depth, makes the action unusable.
    bad_actions = {"/".join(path.split("/")[:7]) for path in paths}
    charts: list[object] = []
    for number, chart in enumerate(notice.charts):
        actions = []
        for index, action in enumerate(chart.actions):
            bad = f"{prefix}/charts/{number}/actions/{index}" in bad_actions
            actions.append(action.model_copy(update={"usable": False}) if bad else action)
        charts.append(chart.model_copy(update={"actions": actions}))
    return charts
