"""A table: its columns, and what each gives to the cells below its title."""

from __future__ import annotations

import re
from collections.abc import Container, Iterator
from typing import NamedTuple

from noticeparse.layout.column.columns import column_role
from noticeparse.layout.column.hemispheres import (
    hemisphere_in,
    with_hemispheres,
    with_longitude_first,
)
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.bearings import is_way
from noticeparse.readers.features import has_kind
from noticeparse.readers.positions import Point
from noticeparse.readers.taken_back import takes_back
from noticeparse.readers.verbs import canonical_verb

Cells = dict[str, list[Element]]
"""The elements of a row by the role of their column."""

_PLACED = frozenset({"feature", "position", "latitude"})
_TELL_FEATURES = frozenset({"feature", "old", "new"})
_OF_SECOND_LINE = frozenset({"feature", "verb"})
_OF_NOTICE = re.compile(r"[0-9]{2,3}-[0-9]{2}")
_DEPTH_UNITS = {"m": "m", "metres": "m", "meters": "m", "ft": "ft", "feet": "ft", "fm": "fm"}


class Column(NamedTuple):
    """A column: its role, and where its title starts in the line."""

    role: str | None
    start: int
    hemisphere: str | None = None
    """The hemisphere letter that the title states, for the figures below it."""
    unit: str | None = None
    """The unit that the title of a depth column states."""
    degrees: int | None = None
    """The degrees that the title states, for the minutes below it."""


class Table(NamedTuple):
    """The columns that a row of titles announces."""

    mark: str
    """What parts the cells: a tab, a bar, or blanks."""
    columns: tuple[Column, ...]
    is_of_halves: bool = False
    """Whether the titles name latitude and longitude alone, for figures without hemisphere."""
    is_ruled: bool = False
    """Whether a rule below the titles is parted where the columns are: `------  -----`."""
    below: tuple[Column, ...] = ()
    """The columns of a second line that each row has below its first."""
    holds_items: bool = False
    """Whether its column of the verbs has the features too: `Correction`, `Action and object`."""
    is_of_text: bool = False
    """Whether the title of that column names both."""
    tells_done: bool = False
    """Whether what was done stands in its column of remarks, where a blank says nothing."""

    @property
    def roles(self) -> set[str]:
        """The roles of its columns."""
        return {column.role for column in self.columns if column.role}

    @property
    def beside_heads(self) -> Table | None:
        """The table below the head of a chart in its margin: what stands beside it are items."""
        return None if self.is_of_text else self

    def is_of_previous(self, text: str, line: Line, number: Element) -> bool:
        """Whether a number stands under the title of the notice before, and opens none."""
        if number is line.elements[0] or not (number.gap or self.mark != " "):
            return False
        column = self._column(text, line, number)
        return column is not None and column.role == "previous"

    def with_numbers(self, text: str, line: Line) -> Line:
        """The line, what stands as `64-26` under the title of a notice its number, no latitude."""
        last = line.elements[-1]
        if last.kind != "half" or not _OF_NOTICE.fullmatch(text, last.start, last.end):
            return line
        column = self._column(text, line, last)
        if column is None or column.role not in ("notice", "previous"):
            return line
        number = last._replace(kind="number", value=None)
        return line._replace(elements=(*line.elements[:-1], number))

    def holds_under(self, verb: str) -> bool:
        """Whether the columns hold on under a verb of its own line: from and to tell of moves."""
        return canonical_verb(verb) == "move" or not {"from", "to"} <= self.roles

    def cells(self, text: str, line: Line, above: Point | None) -> Cells | None:
        """The elements of a row by role, or None where the line is no row of this table.

        `above` is the position in the row above.
        """
        if self.mark != " " and self.mark not in text[line.start : line.end]:
            return None
        found: Cells = {}
        for element in self._parted(text, line):
            if element.kind in ("bar", "rule") or (
                self.mark == ";" and element.kind == "semicolon"
            ):
                continue
            column = self._column(text, line, element)
            if self.mark != " " and found and self._is_surplus(text, line, element):
                # More cells than titles: which of them stand in a wrong column is not known.
                found.setdefault("surplus", []).append(element)
                continue
            if column is None:
                return None
            if column.role is None:
                words = text[element.start : element.end]
                # A bearing under a title that is not known: the feature lies off its place.
                role = "offset" if is_way(words) else "remark" if takes_back(words) else "untitled"
                found.setdefault(role, []).append(element)
            if column.role:
                if column.role == "longitude" and self._has_longitude_first:
                    element = with_longitude_first(text, element)
                found.setdefault(column.role, []).append(element)
        if self.holds_items and "verb" in found:
            found = with_item_apart(found)
        return self._placed(text, found, above)

    def _placed(self, text: str, cells: Cells, above: Point | None) -> Cells:
        """The cells, coordinates read with the hemispheres that only the titles state."""
        letters = {column.role: column.hemisphere for column in self.columns if column.hemisphere}
        lat, lon = letters.get("latitude"), letters.get("longitude")
        if lat and lon:
            figures = cells.pop("latitude", []) + cells.pop("longitude", [])
            if figures:
                more = not {"verb", "feature"} & set(cells)
                stated = {column.role: column.degrees for column in self.columns}
                degrees = stated["latitude"], stated["longitude"]
                cells["latitude"] = with_hemispheres(
                    text, figures, (lat, lon), above, more=more, degrees=degrees
                )
        return cells

    def _is_surplus(self, text: str, line: Line, element: Element) -> bool:
        """Whether an element stands, or ends, behind the last column."""
        marks = text.count(self.mark, line.start, element.end)
        return marks - self._offset(text, line) >= len(self.columns)

    @property
    def _has_longitude_first(self) -> bool:
        roles = [column.role for column in self.columns]
        return "latitude" in roles and roles.index("longitude") < roles.index("latitude")

    @property
    def states_hemispheres(self) -> bool:
        """Whether the titles of latitude and longitude state the hemispheres of both."""
        stated = {column.role for column in self.columns if column.hemisphere}
        return {"latitude", "longitude"} <= stated

    def with_second_titles(self, text: str, line: Line) -> Table:
        """The table, with what a second line of titles adds to its columns."""
        if below := self._second_columns(text, line):
            return self._replace(below=below)
        columns = list(self.columns)
        for element in line.elements:
            column = self._column(text, line, element)
            if column is None or column not in columns:
                continue
            words = text[element.start : element.end]
            added = column._replace(
                hemisphere=column.hemisphere or hemisphere_in(words, column.role),
                unit=column.unit or unit_in(words, column.role),
            )
            columns[columns.index(column)] = added
        return self._replace(columns=tuple(columns))

    def _second_columns(self, text: str, line: Line) -> tuple[Column, ...]:
        """The columns of a second line of titles, where they are those of a second line of rows.

        One that the first line lacks, feature or verb, then stands under the title of another.
        """
        if self.mark != " " or line.has("rule"):
            return ()
        found = [
            Column(column_role(text[e.start : e.end]), e.start - line.start) for e in line.elements
        ]
        lacking = _OF_SECOND_LINE - self.roles
        if not any(one.role in lacking for one in found) or not all(one.role for one in found):
            return ()
        under = [
            (one.role, above.role)
            for one in found
            for above in self.columns
            if abs(one.start - above.start) <= 2
        ]
        # `Latitude` and `Longitude` under `Position` are no second line of the rows.
        parts = (("latitude", "position"), ("longitude", "position"))
        return tuple(found) if any(pair not in parts for pair in under) else ()

    def settled(self, text: str, line: Line, codes: Container[str]) -> Table:
        """The table, columns without a known title told by the cells of a row.

        `codes` are the letters that a key gives their verbs.
        """
        return self._with_verbs(text, line, codes)._with_features(text, line)

    def _with_verbs(self, text: str, line: Line, codes: Container[str]) -> Table:
        """The table, the verbs of a row in a column whose title says nothing of the kind."""
        if "verb" in self.roles or not self.roles & _PLACED:
            return self
        verbs = [element for element in line.elements if element.kind == "verb" and element.gap]
        coded = [] if verbs or self.mark == " " else self._codes(text, line, codes)
        column = self._column(text, line, (verbs + coded)[0]) if len(verbs + coded) == 1 else None
        if column is None or column.role is not None or (verbs and column.start == 0):
            return self
        told = tuple(one._replace(role="verb") if one is column else one for one in self.columns)
        return self._replace(columns=told)

    def _codes(self, text: str, line: Line, codes: Container[str]) -> list[Element]:
        """The letters of a key that stand alone in the first cell of a row, without a title."""
        cell = next((e for e in line.elements if e.kind != "bar"), None)
        if cell is None or cell.kind != "words" or self._column(text, line, cell) is None:
            return []
        is_first = self._column(text, line, cell) is self.columns[0]
        return [cell] if is_first and text[cell.start : cell.end].strip(" .()") in codes else []

    def _with_features(self, text: str, line: Line) -> Table:
        """The table, the features of a row in its one column whose title nobody knows."""
        if "verb" not in self.roles or self.roles & _TELL_FEATURES or not self.roles & _PLACED:
            return self
        unknown = [column for column in self.columns if column.role is None]
        if len(unknown) != 1:
            return self
        named = any(
            element.kind == "words"
            and has_kind(text[element.start : element.end])
            and self._column(text, line, element) is unknown[0]
            for element in line.elements
        )
        if not named:
            return self
        told = (one._replace(role="feature") if one is unknown[0] else one for one in self.columns)
        return self._replace(columns=tuple(told), holds_items=False)

    @property
    def depth_unit(self) -> str | None:
        """The unit that the title of its depth column states."""
        return next((column.unit for column in self.columns if column.unit), None)

    def _parted(self, text: str, line: Line) -> Iterator[Element]:
        """The elements of a row; between ruled columns a single blank may part two cells."""
        for element in line.elements:
            if self.is_ruled and element.kind == "words":
                starts = (line.start + column.start for column in self.columns)
                for cut in starts:
                    if element.start < cut < element.end and text[cut - 1] == " ":
                        yield element._replace(end=cut - 1)
                        element = element._replace(start=cut, gap=True)
            yield element

    def _column(self, text: str, line: Line, element: Element) -> Column | None:
        if self.mark != " ":
            index = text.count(self.mark, line.start, element.start) - self._offset(text, line)
            return self.columns[index] if 0 <= index < len(self.columns) else None
        at = element.start - line.start
        loose = 0 if self.is_ruled else 2
        fitting = [column for column in self.columns if column.start <= at + loose]
        if not fitting:
            return None
        column = fitting[-1]
        # A cell that opens far from every title belongs to another layout.
        return column if not element.gap or at - column.start <= 3 or column.role else None

    def _offset(self, text: str, line: Line) -> int:
        """How many bars stand before the first cell of a row."""
        opens = self.mark == "|" and bool(self.columns) and self.columns[0].start > 0
        return int(opens and text[line.start : line.end].lstrip().startswith("|"))


def with_item_apart(cells: Cells) -> Cells:
    """The cells, with verb, words and places apart where one column holds all three."""
    cell = cells.pop("verb")
    verb = next((e for e in cell if e.kind == "verb" and e.gap), None)
    if verb is not None:
        cells["verb"], cell = [verb], [e for e in cell if e is not verb]
    places = [e for e in cell if e.kind in ("point", "half", "reference", "same")]
    if words := [e for e in cell if e not in places]:
        cells["feature"] = words
    if places:
        cells["position"] = cells.get("position", []) + places
    return cells


def unit_in(title: str, role: str | None) -> str | None:
    """The unit that the title of a depth column states, or None."""
    if role != "depth":
        return None
    words = title.lower().replace("(", " ").replace(")", " ").split()
    return next((_DEPTH_UNITS[word] for word in words if word in _DEPTH_UNITS), None)
