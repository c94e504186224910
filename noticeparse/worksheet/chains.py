"""The chain of notices on a chart: what must be on it before, and what is missing from it."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.chart_order import Step
from noticeparse.readers.references import notice_id
from noticeparse.records.reference import NoticeRef
from noticeparse.sheets import is_same_notice
from noticeparse.worksheet.heads import notice_name


def before_of(steps: Sequence[Step], last: NoticeRef | None) -> list[str]:
    """Where the chain begins: the notice before, which must be seen on the chart."""
    begin = _begin(steps, last)
    for step in _open(steps):
        if (
            begin is not None
            and step.previous is not None
            and is_same_notice(step.previous, begin)
        ):
            by_list = "; by the chart list it is the last one applied" if last else ""
            before = f"{notice_id(step.previous)} must be on the chart"
            return [f"{before} before {notice_name(step.notice)}{by_list}"]
    return []


def alarms_of(steps: Sequence[Step], last: NoticeRef | None) -> list[str]:
    """Notices that are missing from the chain: not among these, and not the last on the chart.

    Without a chart list the first notice before is taken to be the last on the chart.
    """
    begin = _begin(steps, last)
    on_chart = f" The last one applied, by the chart list, is {notice_id(last)}." if last else ""
    return list(
        dict.fromkeys(
            f"Notice {notice_id(step.previous)} is missing: it must be on the chart before "
            f"{notice_name(step.notice)}, and does not stand among these notices.{on_chart}"
            for step in _open(steps)
            if step.previous and not (begin and is_same_notice(step.previous, begin))
        )
    )


def _open(steps: Sequence[Step]) -> list[Step]:
    """The steps whose notice before does not stand among these."""
    return [step for step in steps if step.previous is not None and not step.previous_is_here]


def _begin(steps: Sequence[Step], last: NoticeRef | None) -> NoticeRef | None:
    return last or next((step.previous for step in _open(steps)), None)
