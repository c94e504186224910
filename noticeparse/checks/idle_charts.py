"""Charts of a notice on which, as read, nothing is to be done."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.trouble import Trouble
from noticeparse.records.notice import Notice


def check_idle_charts(notice: Notice) -> Iterator[Trouble]:
    """A chart without an action beside others that have some: its own may be lost."""
    if notice.status != "permanent" or not any(section.actions for section in notice.charts):
        return
    for index, section in enumerate(notice.charts):
        if not section.actions and section.chart is not None:
            pointers = [f"/charts/{index}"]
            values = {"chart": section.chart}
            yield Trouble("chart-without-actions", section.span, pointers, values, section.chart)
