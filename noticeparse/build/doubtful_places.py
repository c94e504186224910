"""Leads what a file shows beyond its text to the records that stand there.

A doubt counts in the text as given, as spans do; it belongs to every action over whose span it
lies, else to the chart section, else to the notice.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.records.notice import Notice
from noticeparse.spans import Span


def doubts_in_place(
    context: Context, doubts: Sequence[Fault], notices: Sequence[Notice]
) -> Iterator[Located]:
    """The doubts as faults of the records that they lie over."""
    for doubt in doubts:
        span = context.lines.span(doubt.start, doubt.end)
        for index, notice in enumerate(notices):
            if not _touches(notice.span, doubt):
                continue
            for chart, paths in _paths(notice, f"/notices/{index}", doubt):
                yield Located(doubt, paths, notice.id, chart, span=span)
            break
        else:
            yield Located(doubt, span=span)


def _paths(notice: Notice, path: str, doubt: Fault) -> Iterator[tuple[str | None, list[str]]]:
    """The chart and the paths of the narrowest records that a doubt lies over."""
    is_any = False
    for number, section in enumerate(notice.charts):
        own = f"{path}/charts/{number}"
        actions = [
            f"{own}/actions/{index}"
            for index, action in enumerate(section.actions)
            if _touches(action.span, doubt)
        ]
        if actions or _touches(section.span, doubt):
            is_any = True
            yield section.chart, actions or [own]
    if not is_any:
        yield None, [path]


def _touches(span: Span, doubt: Fault) -> bool:
    if doubt.start == doubt.end:
        return span.start <= doubt.start <= span.end
    return span.start < doubt.end and doubt.start < span.end
