"""Lists of items that begin behind their first number: `2) Insert …`, `3) Delete …`.

An item may be lost in front of them (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import item_extent
from noticeparse.build.pointers import pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.records.chart import ChartSection

_NUMBER = re.compile(r"(?P<front>(?:[0-9]{1,3}\.){0,2})(?P<number>[0-9]{1,2})")

_LATE = range(2, 5)
"""A list that begins further on goes on with that of another page."""


def late_lists(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
) -> Iterator[tuple[Fault, list[str]]]:
    """The first item of a notice, where the text above it holds no number 1 for another."""
    items = [item for section in sections for item in section.items if item.label]
    told = {item.label for item in items if item.label}
    if len(told) < 2:
        return
    first = min(items, key=lambda one: item_extent(one)[0])
    number = _NUMBER.fullmatch(first.label or "")
    if number is None or int(number["number"]) not in _LATE or f"{number['front']}1" in told:
        return
    if f"{number['front']}{int(number['number']) + 1}" not in told:
        return
    start, end = item_extent(first)
    above = draft.number.start if draft.number is not None else draft.start
    if _numbered(f"{number['front']}1").search(context.text, above, start) is None:
        values = {"letter": str(first.label), "before": "nothing"}
        own = [one.pointer for one in pointed(path, charts) if one.action.label == first.label]
        if own:
            yield Fault("letter-out-of-order", start, end, values), own


def _numbered(number: str) -> re.Pattern[str]:
    """What stands above as the number of an item, of a paragraph or of a row."""
    return re.compile(
        rf"(?:^|[:;.(|\t]|  )[ \t(|*-]{{0,20}}(?:item |no\.? )?{re.escape(number)}(?=[.):|\t ])",
        re.IGNORECASE | re.MULTILINE,
    )
