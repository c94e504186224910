"""Positions whose degrees stand with a position of another notice: `13'.62S 42'.15W`.

Within a notice, below one chart head or in the columns of one table, the degrees of the position
before hold on.  Elsewhere the position before another notice may be anywhere: none are taken.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Layout, NoticeDraft, Place
from noticeparse.layout.line.elements import Element
from noticeparse.readers.features import has_kind
from noticeparse.readers.positions import Point

_WHOLE = re.compile(r"[+-][0-9]{2}[+-][0-9]{3}/")
"""A position of whole degrees, as ISO 6709 writes it."""


def without_lenders(text: str, layout: Layout) -> None:
    """Take degrees that are told once for the positions below them for no place of a thing.

    `All positions 47° S, 125° W`, and below it `02'.35S 33'.10W  buoy`.  Where they may be the
    place of a thing as well, as in `wreck 47° S 125° W`, that is held back.
    """
    for draft in layout.notices:
        lent = {one.told_from for one in _points(draft) if one.told_from is not None}
        for chart in draft.charts if lent else ():
            kept = []
            for item in chart.items:
                lenders = [place for place in item.places if _lends(place, lent)]
                if lenders and _is_statement(text, item, lenders):
                    draft.class_headings += item.pieces
                    continue
                for place in lenders:
                    _take_out(text, draft, item, place)
                kept.append(item)
            chart.items[:] = kept


def _points(draft: NoticeDraft) -> Iterator[Point]:
    for chart in draft.charts:
        for item in chart.items:
            for place in item.places:
                if place.element.kind == "point" and place.element.value.point is not None:
                    yield place.element.value.point


def _lends(place: Place, lent: set[int]) -> bool:
    point = place.element.value.point if place.element.kind == "point" else None
    return (
        point is not None and point.start in lent and _WHOLE.fullmatch(point.iso6709) is not None
    )


def _is_statement(text: str, item: Item, lenders: list[Place]) -> bool:
    """Whether an item says nothing but the degrees: no command, and no thing."""
    if item.verb is not None or item.verb_piece is not None or len(lenders) < len(item.places):
        return False
    return not any(has_kind(text[slice(*piece)]) for piece in (*item.words, *item.tail))


def _take_out(text: str, draft: NoticeDraft, item: Item, place: Place) -> None:
    """Take degrees above the words of an item out of it; anywhere else it is held back."""
    piece = place.element.start, place.element.end
    first = min((start for start, _ in (*item.words, *item.pieces) if start > piece[0]), default=0)
    if item.pieces[0] != piece or "\n" not in text[piece[1] : first]:
        written = " ".join(text[slice(*piece)].split())
        item.faults.append(Fault("position-degrees-lent", *piece, {"written": written}))
        return
    for group in item.groups:
        group.places[:] = [one for one in group.places if one is not place]
    item.groups[:] = [group for group in item.groups if group.places or group.lead]
    item.pieces.remove(piece)
    draft.class_headings.append(piece)


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
