"""Gathers the work sheets of the charts that some bulletins touch, in the order of application.

Every action of the records for a chart stands on its sheet once; that is counted, and told.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import count, groupby
from typing import NamedTuple

from noticeparse.chart_order import Panel, Step, order_by_chart
from noticeparse.findings import is_outside
from noticeparse.readers.references import notice_id
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart_list import ChartList
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef
from noticeparse.sheets import ListedSheet, Sheets, chart_key, is_same_notice, own_reference
from noticeparse.worksheet.chains import alarms_of, before_of
from noticeparse.worksheet.heads import (
    head_facts,
    notice_alarms,
    notice_name,
    panel_name,
    panel_title,
)
from noticeparse.worksheet.lines import line_of, told_of
from noticeparse.worksheet.model import ChartSheet, Line, NoticeBlock, PanelSheet, counted
from noticeparse.writers.rows import findings_of_actions

_IN_CHART = re.compile(r"/notices/[0-9]+/charts/([0-9]+)")
_IN_PENCIL = frozenset({"temporary", "preliminary"})

Readings = Sequence[tuple[str, Bulletin]]


class NotTouched(LookupError):
    """A chart that no notice touches; its words say which charts are touched."""


class _Known(NamedTuple):
    """Where a notice stands in its bulletin, and what was found in it."""

    path: str
    of_actions: dict[str, list[Finding]]
    cancelled_by: list[str]


def chart_sheets(
    readings: Readings, charts: ChartList | None, wanted: Sequence[str] = ()
) -> list[ChartSheet]:
    """The sheets of the wanted charts in the order asked for, or of all charts touched by number.

    Raises NotTouched, also where no chart is touched at all.
    """
    panels = order_by_chart(readings)
    by_chart = [list(group) for _, group in groupby(panels, _key)]
    numbered = [group for group in by_chart if _names(group[0])]
    chosen = [group for one in wanted for group in _chosen(one, numbered)] or by_chart
    if not any(_names(group[0]) or _has_actions(group) for group in chosen):
        raise NotTouched("no notice touches a chart: there is nothing to make a sheet of")
    sheets = Sheets(charts) if charts is not None else None
    known = _known(readings)
    notes = list(_notes(_unnamed(by_chart), is_without_sheet=bool(wanted)))
    unique = {id(group): group for group in chosen}.values()
    return [
        _chart_sheet(group, readings, known, sheets=sheets, chart_number=number, notes=notes)
        for number, group in enumerate(unique, 1)
        if _names(group[0]) or _has_actions(group)
    ]


def _key(panel: Panel) -> tuple[str, str]:
    return panel.chart or "", "" if panel.chart else panel.international or ""


def _names(panel: Panel) -> list[str]:
    return [chart_key(one) for one in (panel.chart, panel.international) if one]


def _has_actions(group: Iterable[Panel]) -> bool:
    return any(step.actions for panel in group for step in panel.steps)


def _chosen(wanted: str, groups: list[list[Panel]]) -> list[list[Panel]]:
    """The chart of a number, and behind it what notices name by its other number alone."""
    named = [({name for panel in group for name in _names(panel)}, group) for group in groups]
    for names, group in named:
        if chart_key(wanted) in names:
            others = (other for known, other in named if known & names and other is not group)
            return [group, *others]
    touched = ", ".join(str(group[0].chart or group[0].international) for group in groups)
    words = f"those touched are {touched}" if touched else "none is touched"
    raise NotTouched(f"no notice touches chart {wanted}; {words}")


def _known(readings: Readings) -> dict[int, _Known]:
    found = {}
    cancelled: dict[int, list[tuple[NoticeRef, str]]] = defaultdict(list)
    for _, bulletin in readings:
        for notice in bulletin.notices:
            for ref in notice.cancels:
                cancelled[ref.number].append((ref, notice_name(notice)))
    for _, bulletin in readings:
        of_actions = findings_of_actions(bulletin.findings)
        for index, notice in enumerate(bulletin.notices):
            own = own_reference(notice)
            by = [
                name
                for ref, name in (cancelled.get(own.number, []) if own else [])
                if own and is_same_notice(ref, own)
            ]
            found[id(notice)] = _Known(f"/notices/{index}", of_actions, by)
    return found


def _unnamed(by_chart: list[list[Panel]]) -> list[Panel]:
    return [panel for group in by_chart for panel in group if not _names(panel)]


def _chart_sheet(
    group: list[Panel],
    readings: Readings,
    known: dict[int, _Known],
    *,
    sheets: Sheets | None,
    chart_number: int,
    notes: list[str],
) -> ChartSheet:
    numbers = count(1)
    panels = [
        _panel_sheet(one, known, sheets, chart_number=chart_number, numbers=numbers)
        for one in group
    ]
    first = panels[0]
    listed = [frame.chart for panel in panels for frame in panel.frames]
    last = next((one.last_notice for one in listed if one.last_notice), None)
    steps = [step for panel in group for step in panel.steps]
    sheet = ChartSheet(
        name=panel_name(group[0]),
        title=next((panel.title for panel in panels if panel.title), first.title),
        is_listed=None if sheets is None else bool(listed),
        alarms=[*alarms_of(steps, last), *_circle(group)],
        before=before_of(steps, last),
        notes=notes,
        panels=panels,
        told=told_of(_outside(readings)),
    )
    held = _actions_held(readings, _key(group[0]))
    if sum(1 for _ in sheet.lines()) != held:
        raise RuntimeError(f"the records hold {counted(held, 'action')} for {sheet.name}")
    return sheet


def _circle(group: list[Panel]) -> Iterator[str]:
    if any(panel.is_circular for panel in group):
        yield "Notices of this chart name each other as the previous: settle their order by hand."


def _outside(readings: Readings) -> Iterator[Finding]:
    for _, bulletin in readings:
        yield from (one for one in bulletin.findings if is_outside(one) and one.severity != "info")


def _notes(unnamed: list[Panel], *, is_without_sheet: bool) -> Iterator[str]:
    """What stands under no chart: actions, where they have no sheet, and notices that cancel."""
    actions = sum(step.actions for panel in unnamed for step in panel.steps)
    if actions and is_without_sheet:
        yield (
            f"{counted(actions, 'action')} of these notices name no chart and are not on this "
            "sheet: see whether they are for this chart."
        )
    for panel in unnamed:
        for step in panel.steps:
            if step.notice.cancels:
                cancelled = ", ".join(map(notice_id, step.notice.cancels))
                yield f"{notice_name(step.notice)} cancels {cancelled} and names no chart."


def _actions_held(readings: Readings, key: tuple[str, str]) -> int:
    """How many actions the records hold for a chart, counted without the order."""
    return sum(
        len(section.actions)
        for _, bulletin in readings
        for notice in bulletin.notices
        for section in notice.charts
        if (section.chart or "", "" if section.chart else section.international or "") == key
    )


def _panel_sheet(
    panel: Panel,
    known: dict[int, _Known],
    sheets: Sheets | None,
    *,
    chart_number: int,
    numbers: Iterator[int],
) -> PanelSheet:
    section = next((one for step in panel.steps for one in step.sections), None)
    frames = sheets.of_section(section) if sheets is not None and section is not None else []
    blocks = [
        _block(step, known[id(step.notice)], frames, chart_number=chart_number, numbers=numbers)
        for step in panel.steps
    ]
    return PanelSheet(panel.panel, panel_title(frames), frames, blocks)


def _block(
    step: Step,
    known: _Known,
    frames: Sequence[ListedSheet],
    *,
    chart_number: int,
    numbers: Iterator[int],
) -> NoticeBlock:
    notice = step.notice
    own = {
        index for index, one in enumerate(notice.charts) if any(one is s for s in step.sections)
    }
    return NoticeBlock(
        name=notice_name(notice),
        status=notice.status,
        heading=notice.heading,
        facts=list(head_facts(step)),
        alarms=list(notice_alarms(step, known.cancelled_by)),
        lines=list(_lines(step, known, own, frames, key=f"c{chart_number}", numbers=numbers)),
        remarks=[remark.text for remark in notice.remarks],
        told=told_of(_of_notice(notice, own)),
    )


def _lines(
    step: Step,
    known: _Known,
    own: set[int],
    frames: Sequence[ListedSheet],
    *,
    key: str,
    numbers: Iterator[int],
) -> Iterator[Line]:
    for index in sorted(own):
        section = step.notice.charts[index]
        for row, action in enumerate(section.actions):
            path = f"{known.path}/charts/{index}/actions/{row}"
            number = next(numbers)
            yield line_of(
                action,
                section,
                known.of_actions.get(path, []),
                number=number,
                key=f"{key}-{number}",
                source=step.label,
                notice=notice_name(step.notice),
                is_in_pencil=step.notice.status in _IN_PENCIL,
                is_cancelled=bool(known.cancelled_by),
                frames=frames,
            )


def _of_notice(notice: Notice, own: set[int]) -> Iterator[Finding]:
    """The findings of a notice that point at no action, nor at another chart of it."""
    for finding in notice.findings:
        if any("/actions/" in path for path in finding.paths):
            continue
        within = {int(m[1]) for path in finding.paths if (m := _IN_CHART.match(path))}
        if not within or within & own:
            yield finding
