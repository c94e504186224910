"""The heads of a sheet: the names of charts and panels, and what a notice says of itself."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.chart_order import Panel, Step
from noticeparse.readers.references import notice_id
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice
from noticeparse.sheets import ListedSheet
from noticeparse.worksheet.feature_words import Fact
from noticeparse.worksheet.model import counted

_ENDED = "validity-ended"
_UNITS = {"m": "metres", "fm_ft": "fathoms and feet", "ft": "feet"}


def panel_name(panel: Panel) -> str:
    """`Chart 802 (INT 9871)`, without the name of the panel."""
    if panel.chart:
        return f"Chart {panel.chart}" + (
            f" ({panel.international})" if panel.international else ""
        )
    return f"Chart {panel.international}" if panel.international else "No chart named"


def panel_title(frames: Sequence[ListedSheet]) -> str | None:
    """`Quill Sound and Approaches, 1:75 000`, of the chart list."""
    if not frames:
        return None
    chart = frames[0].chart
    scale = f"1:{chart.scale:,}".replace(",", " ")
    return ", ".join(part for part in (chart.title, scale) if part)


def notice_name(notice: Notice) -> str:
    """The number of a notice, behind its series where it has one."""
    return " ".join(part for part in (notice.series, notice.id) if part) or "no number"


def head_facts(step: Step) -> Iterator[Fact]:
    """What the notice says of itself and of the chart."""
    notice = step.notice
    if step.previous is not None:
        yield Fact("Goes on after", notice_id(step.previous))
    elif step.previous_written:
        yield Fact("Goes on after", step.previous_written)
    if notice.authority:
        yield Fact("Source", notice.authority)
    if notice.valid:
        yield Fact("Valid", notice.valid.written)
    if notice.cancels:
        yield Fact("Cancels", ", ".join(map(notice_id, notice.cancels)))
    for section in [one for one in step.sections if one.actions][:1]:
        yield from _section_facts(section)
    yield Fact("Stands in", step.place)


def _section_facts(section: ChartSection) -> Iterator[Fact]:
    yield Fact("Datum", section.datum.name if section.datum else "not stated")
    if section.depth_unit:
        yield Fact("Depths", _UNITS[section.depth_unit])
    if section.edition or section.edition_date:
        dated = " of ".join(part for part in (section.edition, section.edition_date) if part)
        yield Fact("Edition", dated)


def notice_alarms(step: Step, cancelled_by: Sequence[str]) -> Iterator[str]:
    """What must be known before any action of the notice is applied."""
    if cancelled_by:
        yield f"Cancelled by {', '.join(cancelled_by)}: see there before anything is applied."
    for finding in step.notice.findings:
        if finding.code == _ENDED:
            yield f"Ended: {finding.message}."
    if step.notice.status == "radio_warning":
        yield "Radio warning: it does not change the chart. It is shown to be known, not applied."
    if step.notice.status == "temporary":
        yield "Temporary: in pencil, and off the chart when the notice ends or is cancelled."
    if step.notice.status == "preliminary":
        yield "Preliminary: it tells of a change to come. In pencil, nothing in ink."
    if step.same_as:
        is_other = "asks for something else than" if step.differs else "is the same as"
        yield f"This notice {is_other} that at {step.same_as}: apply it once, and see which."
    if step.unread:
        yield (
            f"{counted(step.unread, 'error')} below belong to no action: something of this notice "
            "may be missing here. Read the notice."
        )
