"""The charts that are touched and what goes on each, in order of application, for a person."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from noticeparse.chart_order import Panel, Step
from noticeparse.readers.references import notice_id
from noticeparse.writers.findings_out import counted
from noticeparse.writers.quoting import visible


def write_charts(panels: Iterable[Panel]) -> Iterator[str]:
    """A block for each panel: its name, then a line for each notice."""
    for number, panel in enumerate(panels):
        blank = "\n" if number else ""
        yield blank + _name(panel) + "\n" + "".join(f"{line}\n" for line in _lines(panel))


def _name(panel: Panel) -> str:
    if panel.chart:
        parts = [f"Chart {panel.chart}"]
        if panel.international:
            parts[0] += f" ({panel.international})"
    else:
        parts = [f"Chart {panel.international}" if panel.international else "No chart named"]
    if panel.panel:
        parts.append(panel.panel)
    return visible(", ".join(parts))


def _lines(panel: Panel) -> Iterator[str]:
    rows = [(_notice(step), _work(step), _order(step), step.place) for step in panel.steps]
    widths = [max(len(row[column]) for row in rows) for column in range(3)]
    for row in rows:
        cells = [cell.ljust(width) for cell, width in zip(row[:3], widths, strict=True)]
        yield "  " + "  ".join([*cells, row[3]])
    if panel.is_circular:
        yield "  ! notices of this chart name each other as the previous; settle the order by hand"


def _notice(step: Step) -> str:
    notice = step.notice
    if notice.id is None:
        return "no number"
    return visible(f"{notice.series} {notice.id}" if notice.series else notice.id)


def _work(step: Step) -> str:
    cancelled = ", ".join(map(notice_id, step.notice.cancels))
    parts = [f"cancels {cancelled}"] if cancelled else []
    if step.notice.status == "radio_warning":
        return ", ".join(["changes no chart", *parts])
    if step.sections:
        parts.insert(0, counted(step.actions, "action") if step.actions else "no action")
    if step.unusable:
        parts.append(f"{step.unusable} not usable")
    if step.unread:
        parts.append(f"{step.unread} not read")
    if step.warnings:
        parts.append(counted(step.warnings, "warning"))
    return ", ".join(parts)


def _order(step: Step) -> str:
    parts = []
    if step.previous is not None:
        here = "" if step.previous_is_here else " (not in this input)"
        parts.append(f"after {notice_id(step.previous)}{here}")
    elif step.previous_written:
        parts.append(f"after {visible(step.previous_written)}")
    if step.same_as:
        what = "differs from" if step.differs else "the same as"
        parts.append(f"{what} {step.same_as}")
    return ", ".join(parts)
