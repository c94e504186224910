"""Rows of tables and `Key: value` blocks: what stands in which column tells what it is.

A row of titles gives the columns; a block of keys is a row whose titles stand in front of the
values. Both become cells by role, and cells become items.
"""

from __future__ import annotations

from noticeparse.faults import Fault
from noticeparse.layout.column.states_of_columns import are_states, with_states
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Added, Item
from noticeparse.layout.handed_on import RowClass
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.layout.row.cells import (
    changed_property,
    goes_on_in_cells,
    is_whole,
    lone_axes,
    quality_of,
    set_label,
    verb_above,
    verb_and_change,
    with_amendment,
    with_change,
    with_links_apart,
    with_own_feature,
    words_beside,
)
from noticeparse.layout.row.done_cells import (
    tells_otherwise,
    with_change_told,
    without_new_beside_old,
)
from noticeparse.layout.row.old_new import (
    set_old_and_new,
    with_change_apart,
    with_feature_in_place,
    with_new_below,
)
from noticeparse.layout.row.repeated_rows import RepeatedRows
from noticeparse.layout.row.row_classes import RowClasses
from noticeparse.layout.row.row_faults import radius_of, row_faults
from noticeparse.layout.row.row_places import RowPlaces, go_on, with_places_told
from noticeparse.layout.row.verb_cells import settle_rest, without_rest
from noticeparse.layout.row.wrapped_cells import Rest, take_rest
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb

_NOT_OF_ITEM = frozenset(
    {"chart", "notice", "previous", "remark", "offset", "cancels", "untitled", "chart_mark"}
)
"""Roles of what a row says of its notice or chart, or what nobody reads."""
_JOINTS = {
    "light": ", ", "elevation": " ", "range": " ", "depth": ", depth ", "name": ", ",
    "legend": ", ", "colours": ", ", "shape": ", ", "topmark": ", topmark ", "sectors": ", ",
    "clearance": ", vertical clearance ", "sound": ", ", "state": ", ",
}  # fmt: skip
"""Roles whose words go with the feature, and what is read before them."""
_OWN = frozenset(("light", "depth", "name", "legend"))
"""Roles of what a row says of a thing of its own."""
_NO_WORDS = frozenset({*PLACES, "label", "bar"})
_PLACE_ROLES = (
    "position", "numbered", "latitude", "longitude", "from", "joining", "bounded", "centred",
)  # fmt: skip


class RowReader:
    """Turns rows into items, one after the other; a verb left blank is carried down."""

    def __init__(
        self,
        text: str,
        codes: dict[str, str],
        verb: str | None = None,
        row_class: RowClass | None = None,
    ) -> None:
        self.text = text
        self.codes = codes
        """The verbs that letters stand for in the column of the verbs."""
        self.items: list[Item] = []
        self.verb = verb
        self.classes = RowClasses(text, row_class)
        self._places = RowPlaces(text)
        self._repeated = RepeatedRows(text)
        self._above: Cells = {}
        """The cells of the last row that opened an item."""
        self._is_headed = False
        """Whether the row above is a verb over the rows below it."""
        self._held: tuple[Cells, str | None] | None = None
        """The row above, and its unit of depths; the row below may hold the rest of its cells."""

    def row(self, cells: Cells, depth_unit: str | None = None) -> None:
        """Read one row: a new item, or more positions of the one before.

        `depth_unit` is the unit that the title of the depth column states.  A row with `band`
        stands over those below and ends the verb of those above.
        """
        if band := cells.get("band"):
            self._lose_verb(band)
            return
        if are_states(self.text, cells):
            cells = with_states(cells)
        if self.takes_rest(cells):
            return
        if self._held is not None and set(self._held[0]) == {"feature"} and "feature" in cells:
            # The name above has no place of its own, and may go on here.
            cells = {**cells, "rest": cells["feature"]}
        self._give()
        heading = verb_above(self.text, cells)
        if heading is None:
            self._held = (cells, depth_unit)
        else:
            self.classes.opens([e for cell in cells.values() for e in cell])
            self._above, self._is_headed = {}, True
        self.verb = heading or self.verb

    def _lose_verb(self, told: list[Element]) -> None:
        """Let no verb hold for the rows below what stands over them in the place of one."""
        self._give()
        self.verb, self.classes.above = None, None
        start, end = told[0].start, told[-1].end
        fault = Fault("verb-unknown", start, end, {"written": words_of(self.text, told)})
        self.items.append(Item(pieces=[(e.start, e.end) for e in told], faults=[fault]))

    def takes_rest(self, cells: Cells) -> bool:
        """Take a row that is the rest of the one above it: longitudes, or more words."""
        if self._held is None:
            return False
        above = self._held[0]
        is_stacked = (
            lone_axes(above) == {"latitude"}
            and "latitude" not in above
            and lone_axes(cells) == {"longitude"}
            and set(cells) <= set(above)
        )
        # A long name stands alone above the columns of where its thing was and goes.
        is_named = set(above) == {"feature"} and set(cells) == {"from", "to"}
        if not (is_stacked or is_named or goes_on_in_cells(self.text, above, cells)):
            return False
        for role, elements in cells.items():
            above[role] = above.get(role, []) + elements
        return True

    def takes_wrapped(self, rest: Rest) -> bool:
        """Take a line below the row above it as more of its cells."""
        return self._held is not None and take_rest(self.text, self._held[0], rest)

    def add_second_line(self, cells: Cells, *, is_first: bool) -> bool:
        """Give the row above the cells of its second line, where it has none of their roles."""
        if not is_first:
            return self._add_other_verb(cells)
        if self._held is None or set(cells) & set(self._held[0]):
            return False
        self._held[0].update(cells)
        return True

    def _add_other_verb(self, cells: Cells) -> bool:
        """Read a row for the thing of the row above, which then has two verbs.

        Which of them holds for a row below without a verb cannot be told.
        """
        if self._held is None or "feature" in cells or "feature" not in self._held[0]:
            return False
        self.row({"feature": self._held[0]["feature"], **cells}, self._held[1])
        self._give()
        self.verb = None
        return True

    def finished(self) -> list[Item]:
        """The items of all rows."""
        self._give()
        without_new_beside_old(self.text, self.items)
        return self.items

    def _give(self) -> None:
        held, self._held = self._held, None
        if held is not None:
            cells = with_feature_in_place(self.text, with_own_feature(held[0]))
            self._row(with_links_apart(self.text, cells), held[1])

    def _row(self, cells: Cells, depth_unit: str | None) -> None:
        cells = with_change_told(self.text, with_places_told(self.text, cells))
        cells = with_new_below(self.text, with_change(self.text, cells))
        cells = with_amendment(self.text, cells, self.verb)
        cells = with_change_apart(self.text, cells, self.verb)
        groups = list(self._places.groups(cells))
        unread = list(row_faults(self.text, cells))
        last = self.items[-1] if self.items and not self._is_headed else None
        self._is_headed = False
        if last is not None and self._goes_on(cells) and not is_whole(self._above, cells):
            go_on(last, cells, groups)
            last.faults += unread
            return
        if last is not None and last.groups and self._repeated.goes_on(cells):
            last.faults += [*unread, *self._repeated.fault_of(cells)]
            if self._repeated.are_joined(cells):
                last.groups[-1].role = last.groups[-1].role or "numbered"
            last.groups[-1].places += [place for group in groups for place in group.places]
            last.pieces += sorted((e.start, e.end) for cell in cells.values() for e in cell)
            return
        self._repeated.opens(cells)
        self._above = cells
        item = Item(groups=groups, faults=unread)
        self._set_verb(item, cells)
        self._set_words(item, cells, depth_unit)
        settle_rest(self.text, item, cells)
        if item.change and not cells.get("new") and not cells.get("change"):
            # `Replaced by light-buoy`: light and name are those of the new one.
            item.change += [piece for added in item.added for piece in added.pieces]
            item.added = []
        self.classes.give(item)
        set_old_and_new(self.text, item, cells)
        set_label(self.text, item, cells, self.codes)
        item.radius = radius_of(cells)
        item.pieces = sorted(
            (e.start, e.end)
            for role, cell in cells.items()
            for e in cell
            if role not in (*_NOT_OF_ITEM, "quality") or (e.start, e.end) in item.tail
        ) or sorted((e.start, e.end) for cell in cells.values() for e in cell)
        self.items.append(item)

    def _words(self, elements: list[Element]) -> str:
        return words_of(self.text, elements)

    def _goes_on(self, cells: Cells) -> bool:
        told = [role for role in ("old", "new", "number") if role in cells]
        # `to` in the column of the verbs, and `same buoy` in that of the new state.
        is_same = told == ["new"] and self._words(cells["new"]).lower().startswith("same ")
        if told and not is_same:
            return False
        for role in ("verb", "feature", "position"):
            words = self._words([e for e in cells.get(role, []) if e.kind not in _NO_WORDS])
            if words and not is_connector(words):
                return False
        for role in _OWN & cells.keys():
            words = self._words(cells[role])
            if not is_connector(words) and words != self._words(self._above.get(role, [])):
                return False
        return any(role in cells for role in (*_PLACE_ROLES, "to", "feature"))

    def _set_verb(self, item: Item, cells: Cells) -> None:
        cell = without_rest(self.text, cells.get("verb", []))
        if cell and cell[0].kind == "key":
            self.verb, cell = None, []
        if cell:
            written = self._words(cell)
            words = self.codes.get(written.strip(" .()"), written)
            # An empty one is that of a form in which no box is crossed, or several.
            given = cell[0].value if cell[0].kind == "verb" else None
            words = given or words
            start, end = cell[0].start, cell[-1].end
            divided = verb_and_change(self.text, start, end)
            if divided is not None:
                (start, end), new = divided
                words, item.change = self.text[start:end], [new]
            is_none = canonical_verb(words) is None and ":" not in words
            if given == "" or is_none or tells_otherwise(self.text, cells):
                self.verb = None
                item.faults.append(Fault("verb-unknown", start, end, {"written": words}))
                return
            self.verb = words
            item.verb_piece = (start, end)
            item.added += changed_property(self.text, cell[0])
        else:
            own = next((e for e in cells.get("feature", []) if e.kind == "verb"), None)
            if own is not None:
                self.verb = self.text[own.start : own.end]
                item.verb_piece = (own.start, own.end)
        item.verb = self.verb

    def _set_words(self, item: Item, cells: Cells, depth_unit: str | None) -> None:
        for element in cells.get("feature", []):
            if element.kind not in PLACES and element.kind not in ("label", "verb"):
                item.words.append((element.start, element.end))
        before, behind = words_beside(self.text, cells)
        item.words += before
        item.tail += behind + quality_of(self.text, cells)
        for role, joint in _JOINTS.items():
            pieces = [(e.start, e.end) for e in cells.get(role, []) if e.kind not in PLACES]
            if not pieces:
                continue
            if not item.words:
                item.words += pieces
                continue
            written = self._words(cells[role])
            quoted = '"' if role in ("name", "legend") and '"' not in written else ""
            unit = f" {depth_unit}" if role == "depth" and depth_unit else ""
            if role == "depth" and cells.get("unit"):
                unit = f" {self._words(cells['unit'])}"
            item.added.append(Added(joint + quoted, pieces, quoted + unit))
        item.change += [(e.start, e.end) for e in cells.get("change", [])]
