"""Positions whose degrees stand with a position of another notice: `13'.62S 42'.15W`.

Within a notice, below one chart head or in the columns of one table, the degrees of the position
before hold on.  Elsewhere the position before another notice may be anywhere: none are taken.
"""

from __future__ import annotations

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Layout, NoticeDraft
from noticeparse.layout.line.elements import Element


def refuse_far_degrees(text: str, layout: Layout) -> None:
    """Leave positions of notices unread where their degrees stand above the notice."""
    for draft in layout.notices:
        start = _start(draft)
        for chart in draft.charts:
            for item in chart.items:
                for place in (one for group in item.groups for one in group.places):
                    place.element = _within(text, place.element, start)
        for prose in draft.prose:
            prose.elements = [_within(text, element, start) for element in prose.elements]


def _start(draft: NoticeDraft) -> int:
    """Where a notice begins, or the chart head above several notices."""
    heads = [start for chart in draft.charts for start, _ in chart.head]
    return min([draft.start, *heads])


def _within(text: str, element: Element, start: int) -> Element:
    point = element.value.point if element.kind == "point" else None
    if point is None or point.told_from is None or point.told_from >= start:
        return element
    if any(fault.code == "position-degrees-from-above" for fault in element.value.faults):
        # In a column of a table, where it is told already.
        return element
    written = " ".join(text[element.start : element.end].split())
    fault = Fault(
        "position-shared-degrees-unknown", element.start, element.end, {"written": written}
    )
    reading = element.value._replace(point=None, faults=(*element.value.faults, fault))
    return element._replace(value=reading)
