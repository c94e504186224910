"""Charts that may stand below their items, where a notice names several with items between them.

    Insert wreck P          nothing stands above it
    Chart 802
    Delete rock Q           of chart 802, or of 803?
    Chart 803               nothing stands below it

Read from above, the first item has no chart and the last chart no item: the head of a notice
between them was not seen, and every item would go on the chart of the one before.
"""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.build.extents import extent_of, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft


def charts_at_foot(context: Context, draft: NoticeDraft) -> Iterator[Fault]:
    """A fault where items stand before the first chart of a notice, and behind a chart too.

    A piece of a notice, without its number, may well begin among the items of a chart: there all
    is as it seems, unless nothing stands behind the last chart.
    """
    charts = draft.charts
    heads = [chart for chart in charts if chart.head]
    if not heads or not charts[0].items or charts[0].head or charts[0].number:
        return
    is_between = any(chart.items for chart in heads)
    is_whole = draft.number_words is not None
    ends_with_chart = len(heads) > 1 and not charts[-1].items
    if is_between and (is_whole or ends_with_chart):
        start, end = extent_of(heads[-1].head)
        yield quoting(context, "chart-above-or-below", (start, end))
