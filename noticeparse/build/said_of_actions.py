"""What the words of a notice say of its actions from outside them, with the actions they hit."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.build.charts_at_foot import charts_at_foot
from noticeparse.build.charts_left_out import charts_left_out
from noticeparse.build.footnotes import footnotes
from noticeparse.build.head_brackets import head_brackets
from noticeparse.build.late_lists import late_lists
from noticeparse.build.limits_above import limits_above
from noticeparse.build.limits_beside import limits_beside
from noticeparse.build.limits_of_notices import limits_of_notices
from noticeparse.build.outside_charts import outside_charts
from noticeparse.build.pointers import pointed
from noticeparse.build.remarks_of_rows import remarks_of_rows
from noticeparse.build.sections import Section
from noticeparse.build.single_charts import bound_to_one_chart
from noticeparse.build.stated_units import units_unread
from noticeparse.build.untold_changes import is_for_charts
from noticeparse.build.values_apart import values_apart
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.records.chart import ChartSection
from noticeparse.records.reference import NoticeRef

_OF_NOTICE = 4
"""Parts of the JSON Pointer of a notice, or of what it says of no chart."""


def said_of_actions(
    context: Context,
    draft: NoticeDraft,
    path: str,
    number: NoticeRef | None,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    until: int,
) -> Iterator[tuple[Fault, list[str]]]:
    """Faults with the JSON Pointers of the actions they are about; the notice ends at `until`."""
    below = [one.pointer for one in pointed(path, charts)]
    for fault in (*bound_to_one_chart(context, draft, sections), *charts_at_foot(context, draft)):
        yield fault, below
    yield from outside_charts(context, draft, path, sections, charts)
    yield from charts_left_out(context, draft, path, sections, charts, until=until)
    yield from head_brackets(context, draft, path, sections, charts, until=until)
    yield from remarks_of_rows(context, draft, path, charts)
    yield from units_unread(context, draft, path, charts)
    own = (context, draft, path, sections, charts)
    is_permanent = is_for_charts(draft, number)
    above = list(limits_of_notices(*own, is_permanent=is_permanent))
    above += limits_above(*own, is_permanent=is_permanent)
    yield from above
    yield from late_lists(*own)
    yield from values_apart(context, draft, path, charts)
    yield from footnotes(context, path, sections, charts, until=until)
    yield from limits_beside(*own, until=until, told=[fault for fault, _ in above])


def chart_of(paths: Sequence[str], charts: Sequence[ChartSection]) -> str | None:
    """The chart that all of these actions are for, or None where there are several."""
    parts = [path.split("/") for path in paths]
    sections = {int(one[4]) for one in parts if len(one) > _OF_NOTICE}
    return charts[sections.pop()].chart if len(sections) == 1 else None
