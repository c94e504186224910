"""Which notices touch which chart, in the order in which they go on it.

A notice goes on after the one that its chart head names as the previous; between those that do not
wait for each other the lower number comes first.  Temporary and preliminary notices come last,
radio warnings, which change no chart, behind them.  (Common practice, no published source.)
"""

from __future__ import annotations

import heapq
import re
from collections import defaultdict
from collections.abc import Iterable
from typing import NamedTuple

from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart import ChartSection
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef, NoticeStatus

_LAST_STATUSES: dict[NoticeStatus, int] = {"temporary": 2, "preliminary": 2, "radio_warning": 3}

_NO_CHART = ("", "")
_IN_CHART = re.compile(r"/notices/[0-9]+/charts/([0-9]+)")


class Step(NamedTuple):
    """One notice on one chart panel."""

    label: str
    notice: Notice
    sections: list[ChartSection]
    previous_is_here: bool
    same_as: str | None = None
    """Where the same notice stood before, if it is here twice."""
    differs: bool = False
    """Whether it asks for something else than it did there."""

    @property
    def chart(self) -> str | None:
        """The number of the chart; a notice that only cancels has none."""
        return self.sections[0].chart if self.sections else None

    @property
    def panel(self) -> str | None:
        """The plan or panel of the chart."""
        return self.sections[0].panel if self.sections else None

    @property
    def place(self) -> str:
        """`file:line` of the notice."""
        return f"{self.label}:{self.notice.span.line}"

    @property
    def previous(self) -> NoticeRef | None:
        """The notice that must be on the chart before this one."""
        return next((one.previous for one in self.sections if one.previous), None)

    @property
    def previous_written(self) -> str | None:
        """The words in that place."""
        return next((one.previous_written for one in self.sections if one.previous_written), None)

    @property
    def actions(self) -> int:
        """How many actions it has for the panel."""
        return sum(len(section.actions) for section in self.sections)

    @property
    def unusable(self) -> int:
        """How many of them must not be used."""
        return sum(not action.usable for one in self.sections for action in one.actions)

    @property
    def unread(self) -> int:
        """Errors of the notice that no action carries: something may be missing."""
        return sum(
            finding.severity == "error"
            and finding.chart in (None, self.chart)
            and not any("/actions/" in path for path in finding.paths)
            for finding in self.notice.findings
        )

    @property
    def warnings(self) -> int:
        """Warnings of the notice that bear on the panel."""
        return sum(
            finding.severity == "warning" and self._is_of(finding)
            for finding in self.notice.findings
        )

    def _is_of(self, finding: Finding) -> bool:
        """Whether a finding points into the panel, or into no chart of the notice at all."""
        within = {match[1] for path in finding.paths if (match := _IN_CHART.match(path))}
        own = {id(one) for one in self.sections}
        return not within or any(id(self.notice.charts[int(one)]) in own for one in within)


class Panel(NamedTuple):
    """A chart, or one of its plans or panels, and what goes on it, first things first."""

    chart: str | None
    international: str | None
    panel: str | None
    steps: list[Step]
    is_circular: bool
    """Whether notices of the chart name each other as the previous."""


def is_settled(panels: Iterable[Panel]) -> bool:
    """Whether every notice stands once and the order of all is certain."""
    return not any(one.is_circular or any(s.same_as for s in one.steps) for one in panels)


def order_by_chart(labelled: Iterable[tuple[str, Bulletin]]) -> list[Panel]:
    """The panels of all charts, charts by number, panels as they come in the text."""
    charts: dict[tuple[str, str], list[Step]] = defaultdict(list)
    for label, bulletin in labelled:
        for notice in bulletin.notices:
            for key, sections in _by_panel(notice).items():
                charts[key[:2]].append(Step(label, notice, sections, False))
            if notice.cancels and not notice.charts:
                charts[_NO_CHART].append(Step(label, notice, [], False))
    panels: list[Panel] = []
    for chart in sorted(charts, key=_chart_order):
        panels += _panels(charts[chart])
    return panels


def _by_panel(notice: Notice) -> dict[tuple[str, str, str], list[ChartSection]]:
    found: dict[tuple[str, str, str], list[ChartSection]] = defaultdict(list)
    for section in notice.charts:
        # Only a chart without a number of its own goes by its international number.
        international = "" if section.chart else section.international or ""
        found[section.chart or "", international, section.panel or ""].append(section)
    return found


def _chart_order(key: tuple[str, str]) -> tuple[bool, int, str]:
    number = key[0] or key[1]
    figures = re.search(r"[0-9]{1,9}", number)
    return not number, int(figures.group()) if figures else 0, number


def _panels(steps: list[Step]) -> list[Panel]:
    """The panels of one chart; a notice before may be for another panel of it."""
    ordered, is_circular = _in_order(steps)
    grouped: dict[str, list[Step]] = defaultdict(list)
    for step in _twice_marked(ordered):
        grouped[step.panel or ""].append(step)
    return [
        Panel(
            chart=steps[0].chart,
            international=_international(steps),
            panel=panel or None,
            steps=grouped[panel],
            is_circular=is_circular,
        )
        for panel in sorted(grouped, key=bool)
    ]


def _international(steps: list[Step]) -> str | None:
    sections = (section for step in steps for section in step.sections)
    return next((one.international for one in sections if one.international), None)


def _in_order(steps: list[Step]) -> tuple[list[Step], bool]:
    """Each step behind those it waits for; of those that wait for none the lowest number first."""
    waits = _waits(steps)
    followers: dict[int, list[int]] = defaultdict(list)
    for index, others in enumerate(waits):
        for other in others:
            followers[other].append(index)
    keys = [(*_rank(step.notice), index) for index, step in enumerate(steps)]
    left = set(range(len(steps)))
    missing = [len(others) for others in waits]
    ready = [keys[index] for index in sorted(left) if not missing[index]]
    heapq.heapify(ready)
    ordered: list[Step] = []
    is_circular = False
    while left:
        if not ready:
            is_circular = True
            heapq.heappush(ready, min(keys[index] for index in left))
        index = heapq.heappop(ready)[-1]
        if index not in left:
            continue
        left.discard(index)
        ordered.append(steps[index]._replace(previous_is_here=bool(waits[index])))
        for follower in followers[index]:
            missing[follower] -= 1
            if not missing[follower]:
                heapq.heappush(ready, keys[follower])
    return ordered, is_circular


def _waits(steps: list[Step]) -> list[list[int]]:
    """For each step the indexes of those that its previous notice means."""
    by_number: dict[int | None, list[int]] = defaultdict(list)
    for index, step in enumerate(steps):
        by_number[step.notice.number].append(index)
    waits: list[list[int]] = []
    for step in steps:
        ref = step.previous
        near = by_number.get(ref.number, []) if ref else []
        others = (index for index in near if steps[index].notice is not step.notice)
        waits.append([one for one in others if ref and _is_named(steps[one].notice, ref)])
    return waits


def _is_named(notice: Notice, ref: NoticeRef) -> bool:
    """Whether `ref` means a notice of its number."""
    same_year = notice.year == ref.year or notice.year is None or ref.year is None
    return notice.status == ref.status and same_year


def _rank(notice: Notice) -> tuple[int, int, int]:
    """Status, year, number; what has no number comes behind what has one."""
    status = _LAST_STATUSES.get(notice.status, 0 if notice.number is not None else 1)
    return status, notice.year or 9999, notice.number or 0


def _twice_marked(steps: list[Step]) -> list[Step]:
    """The steps, those of a notice that stood before marked as such."""
    seen: dict[tuple[str | None, str, str | None], Step] = {}
    marked: list[Step] = []
    for step in steps:
        notice = step.notice
        key = (notice.series, notice.id or "", step.panel)
        first = seen.setdefault(key, step) if notice.id else step
        if first is not step:
            step = step._replace(same_as=first.place, differs=_asked(first) != _asked(step))
        marked.append(step)
    return marked


def _asked(step: Step) -> tuple[object, ...]:
    """All that a notice asks for: its actions, what must be there before, what it cancels."""
    actions = [action.text for section in step.sections for action in section.actions]
    return step.previous, step.previous_written, step.notice.cancels, actions
