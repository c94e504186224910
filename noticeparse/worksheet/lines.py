"""One action as a line of the sheet: what is to be done, with what, where, and what is doubtful.

Of an action that must not be applied nothing is shown but its words as they stand in the notice.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from decimal import Decimal

from noticeparse.numbers import NAUTICAL_MILE_M
from noticeparse.records.action import Action, Amend, Move, Replace
from noticeparse.records.chart import ChartSection
from noticeparse.records.feature import Feature
from noticeparse.records.finding import Finding
from noticeparse.sheets import ListedSheet
from noticeparse.worksheet.feature_words import Fact, change_fact, feature_facts
from noticeparse.worksheet.light_words import amount
from noticeparse.worksheet.model import Line, Told
from noticeparse.worksheet.places import move_words, other_datums, wheres_of

_SEVERITIES = ("error", "warning", "info")
_VERBS = {
    "insert": "Insert",
    "amend": "Amend",
    "replace": "Replace",
    "move": "Move",
    "delete": "Delete",
}


def told_of(findings: Iterable[Finding]) -> list[Told]:
    """Findings for a person, the gravest first."""
    ordered = sorted(findings, key=lambda one: _SEVERITIES.index(one.severity))
    return [Told(one.severity, _words(one), one.hint) for one in ordered]


def _words(finding: Finding) -> str:
    line = f"line {finding.span.line}: " if finding.span else ""
    return f"{line}{finding.message}"


def line_of(
    action: Action,
    section: ChartSection,
    findings: Iterable[Finding],
    *,
    number: int,
    key: str,
    source: str,
    notice: str,
    is_in_pencil: bool,
    is_cancelled: bool,
    frames: Sequence[ListedSheet],
) -> Line:
    """The line of one action, whose places lie on one of `frames`."""
    is_usable = action.usable and not is_cancelled
    return Line(
        number=number,
        key=key,
        label=action.label,
        verb=_VERBS[action.verb],
        title=title_of(action) if is_usable else "",
        where=wheres_of(action, other_datums(section, frames)) if is_usable else [],
        facts=list(_facts(action)) if is_usable else [],
        told=told_of(findings),
        is_usable=is_usable,
        is_cancelled=is_cancelled,
        is_in_pencil=is_in_pencil,
        written=action.text,
        source=f"{source}:{action.span.line}",
        notice=notice,
        action=action,
        section=section,
    )


def title_of(action: Action) -> str:
    """`port-hand buoy by port-hand light-buoy, Q.R`."""
    words = _named(action.feature)
    return f"{words} by {_named(action.replacement)}" if isinstance(action, Replace) else words


def _named(feature: Feature) -> str:
    return feature.text or feature.legend or feature.kind.replace("_", " ")


def _facts(action: Action) -> Iterator[Fact]:
    move = move_words(action)
    if move:
        yield Fact("Moved by", move)
    if isinstance(action, Amend):
        yield from map(change_fact, action.changes)
    yield from map(_radius, _radii(action))
    if isinstance(action, Replace):
        for fact in feature_facts(action.feature):
            yield Fact(f"{fact.label}, old", fact.words)
        for fact in feature_facts(action.replacement):
            yield Fact(f"{fact.label}, new", fact.words)
    else:
        # An amendment names the state before it.
        mark = ", before" if isinstance(action, Amend) else ""
        for fact in feature_facts(action.feature):
            yield Fact(f"{fact.label}{mark}", fact.words)


def _radii(action: Action) -> list[Decimal]:
    ends = [action.geometry, *([action.destination] if isinstance(action, Move) else [])]
    return [one.radius_nm for one in ends if one.radius_nm is not None]


def _radius(radius_nm: Decimal) -> Fact:
    metres = f"{round(radius_nm * NAUTICAL_MILE_M):d} metres"
    return Fact("Radius", f"{amount(radius_nm, 'nautical mile')} ({metres})")
