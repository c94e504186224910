"""The places of a row: by the columns they stand in, and those that go on below."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Group, Item, Place
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.layout.line.halves import join_halves, lone_half
from noticeparse.layout.row.cells import awaits_destination
from noticeparse.layout.row.place_keys import UNKNOWN
from noticeparse.readers.places import is_connector
from noticeparse.readers.positions import Point, PointReading


class RowPlaces:
    """Reads the places of rows, one after the other; a row may go on with the degrees above."""

    def __init__(self, text: str) -> None:
        self.text = text
        self._above: Point | None = None

    def groups(self, cells: Cells) -> Iterator[Group]:
        """The places of a row, in the order in which they are read."""
        merged = cells.get("latitude", []) + cells.get("longitude", [])
        sources = [
            (None, cells.get("feature", [])),
            (None, cells.get("position", [])),
            (None, merged),
            (None, cells.get(UNKNOWN, [])),
            (None, cells.get("from", [])),
            (None, cells.get("old", [])),
            ("numbered", cells.get("numbered", [])),
            ("joining", cells.get("joining", [])),
            ("bounded", cells.get("bounded", [])),
            ("centred", cells.get("centred", [])),
            ("to", cells.get("to", [])),
            ("to", cells.get("new", [])),
        ]
        for role, elements in sources:
            if elements:
                yield from self._cell_groups(role, elements)

    def _cell_groups(self, role: str | None, elements: list[Element]) -> Iterator[Group]:
        group = Group(role=role)
        lead: list[Element] = []
        label: str | None = None
        for element in self._joined(elements):
            if element.kind == "label":
                label = element.value
            elif element.kind not in PLACES:
                lead.append(element)
                continue
            else:
                words = words_of(self.text, lead)
                if group.places and words.strip(" ,;.") and is_connector(words):
                    yield group
                    group = Group(role=role, lead=[(e.start, e.end) for e in lead])
                lead = []
                group.places.append(Place(element, label))
                label = None
        if group.places:
            yield group

    def _joined(self, elements: list[Element]) -> Iterator[Element]:
        half: Element | None = None
        for element in elements:
            if half is not None and self._holds_figure(element):
                # `46-44.1 S 12, 4-31.1 W`: figures between two halves may be lost from one.
                yield lone_half(self.text, half, None)
                half = None
            if element.kind != "half":
                yield element
                continue
            if half is None:
                half = element
                continue
            point = join_halves(half, element, self._above)
            half = None
            self._above = point.value.point
            yield point
        if half is not None:
            yield lone_half(self.text, half, None)

    def _holds_figure(self, element: Element) -> bool:
        words = self.text[element.start : element.end] if element.kind == "words" else ""
        return any(char.isdigit() for char in words)


_GARBLED = re.compile(r"(?=(?:[^0-9]*[0-9]){5})(?=.*[NSEW])[0-9NSEWOolIZBgQ°'\"., ?-]{9,60}")
"""Figures and letters of hemispheres, and what figures are mistaken for: no words."""


def with_places_told(text: str, cells: Cells) -> Cells:
    """The cells of a row, garbled figures under POSITION as a place that cannot be read."""
    cell = cells.get("position", [])
    return cells if not cell else {**cells, "position": [_told(text, e) for e in cell]}


def _told(text: str, element: Element) -> Element:
    words = text[element.start : element.end]
    if element.kind != "words" or _GARBLED.fullmatch(words) is None:
        return element
    fault = Fault("position-unreadable", element.start, element.end, {"written": words})
    reading = PointReading(None, (fault,), element.start, element.end)
    return element._replace(kind="point", value=reading)


def go_on(item: Item, cells: Cells, groups: Sequence[Group]) -> None:
    """Give an item the places of a row below its own."""
    lead = [
        (e.start, e.end)
        for role in ("verb", "feature", "position")
        for e in cells.get(role, [])
        if e.kind == "words"
    ]
    roles = [group.role for group in groups]
    if not lead and roles != [None] and roles == [above.role for above in item.groups]:
        # One more place in each of the columns, of a line or an area.
        for above, group in zip(item.groups, groups, strict=True):
            above.places += group.places
        groups = ()
    for group in groups:
        if group.role is None and not lead and awaits_destination(item):
            group.role = "to"
            item.groups.append(group)
        elif group.role is None and not lead and item.groups:
            item.groups[-1].places += group.places
        else:
            group.lead = lead + group.lead
            item.groups.append(group)
    item.pieces += sorted((e.start, e.end) for cell in cells.values() for e in cell)
