"""Columns FROM and TO that hold what a feature was and becomes, its place having its own column.

    | Change  | Position | From               | To                 |
    | Amend   | P        | light, Fl.W.5s     | light, Fl(2)W.10s  |
    | Replace | Q        | east cardinal buoy | north cardinal buoy|

Elsewhere they hold the places of a move, or the days between which something holds.
"""

from __future__ import annotations

from noticeparse.layout.column.titles import Cells, Table
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import words_of
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import canonical_verb

_STATE_OF = {"from": "old", "to": "new"}
_PLACED = ("position", "latitude", "longitude")
_VALUES = frozenset({"light", "light_words", "sectors", "depth", "quoted"})
_STATES = frozenset({"old", "new", "change"})


def are_states(text: str, cells: Cells) -> bool:
    """Whether a row has states of its feature under FROM and TO, and its place elsewhere."""
    ends = [cells[role] for role in _STATE_OF if role in cells]
    if not ends or _STATES & cells.keys():
        return False
    if any(e.kind in PLACES for cell in ends for e in cell):
        return False
    if not any(e.kind in PLACES for role in _PLACED for e in cells.get(role, [])):
        return False
    verb = canonical_verb(words_of(text, cells.get("verb", [])))
    alters = verb in ("amend", "replace")
    if verb == "move" or (not alters and "feature" in cells):
        return False
    words = [words_of(text, cell) for cell in ends]
    said = [(has_kind(one), value_property(one)) for one in words if one.strip(" .-–—")]
    values = _VALUES | {"measure"} if alters else _VALUES
    return bool(said) and all(named or told & values for named, told in said)


def with_states(cells: Cells) -> Cells:
    """The cells of such a row, those under FROM and TO as the old state and the new."""
    return {_STATE_OF.get(role, role): cell for role, cell in cells.items()}


def columns_of_states(table: Table) -> Table:
    """The table of such a row: what stands under FROM and TO below it are states too."""
    told = (one._replace(role=_STATE_OF.get(one.role or "", one.role)) for one in table.columns)
    return table._replace(columns=tuple(told))
