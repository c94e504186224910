"""The charts that are touched and what goes on each, in order of application, for a person."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from noticeparse.chart_order import Panel, Step
from noticeparse.readers.references import notice_id
from noticeparse.records.chart_list import ListedChart
from noticeparse.records.reference import NoticeRef
from noticeparse.sheets import Sheets, is_same_notice
from noticeparse.writers.findings_out import counted
from noticeparse.writers.quoting import visible


def write_charts(panels: Iterable[Panel], sheets: Sheets | None = None) -> Iterator[str]:
    """A block for each panel: its name, then a line for each notice.

    A chart list adds title and scale, and which previous notice is on the chart already.
    """
    for number, panel in enumerate(panels):
        blank = "\n" if number else ""
        listed = _listed(panel, sheets)
        lines = "".join(f"{line}\n" for line in _lines(panel, listed))
        yield f"{blank}{_name(panel)}{_title(listed, sheets)}\n{lines}"


def _listed(panel: Panel, sheets: Sheets | None) -> ListedChart | None:
    """The chart or panel in the list; a notice that only cancels is for none."""
    sections = (section for step in panel.steps for section in step.sections)
    section = next(sections, None)
    found = sheets.of_section(section) if sheets is not None and section is not None else []
    return found[0].chart if found else None


def _title(listed: ListedChart | None, sheets: Sheets | None) -> str:
    if listed is None:
        return "" if sheets is None else " (not in the chart list)"
    scale = f"1:{listed.scale:,}".replace(",", " ")
    return visible(", ".join(["", *([listed.title] if listed.title else []), scale]))


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


def _lines(panel: Panel, listed: ListedChart | None) -> Iterator[str]:
    last = listed.last_notice if listed else None
    rows = [(_notice(step), _work(step), _order(step, last), step.place) for step in panel.steps]
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


def _order(step: Step, last: NoticeRef | None) -> str:
    parts = []
    if step.previous is not None:
        here = "" if step.previous_is_here else " (not in this input)"
        if last is not None and is_same_notice(step.previous, last):
            here = " (on the chart)"
        parts.append(f"after {notice_id(step.previous)}{here}")
    elif step.previous_written:
        parts.append(f"after {visible(step.previous_written)}")
    if step.same_as:
        what = "differs from" if step.differs else "the same as"
        parts.append(f"{what} {step.same_as}")
    return ", ".join(parts)
