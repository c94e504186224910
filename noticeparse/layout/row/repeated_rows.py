"""Rows that say all of one item again for each of its places, as exports do.

`1 | insert | cable | 1 | P`, `1 | insert | cable | 2 | Q`: a column of its own counts the places,
or the number of the item alone tells that both rows are of one.
"""

from __future__ import annotations

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import words_of
from noticeparse.readers.features import read_feature
from noticeparse.readers.verbs import canonical_verb
from noticeparse.vocabulary import primitives

_COUNTS = ("vertex", "sequence")
"""Roles of the columns that count: the places of one thing, or rows of one or several."""
_PLACED = frozenset({"position", "latitude", "longitude", *_COUNTS})


class RepeatedRows:
    """Holds what the row said that opened the last item."""

    def __init__(self, text: str) -> None:
        self.text = text
        self._said: dict[str, str] = {}
        self._count = 0
        self._first = 0
        """The count of the row that opened the last item."""
        self._counts_items = False
        """Whether the counts run on from one item to the next."""

    def opens(self, cells: Cells) -> None:
        """Keep what a row that opens an item says."""
        self._said = self._words(cells)
        self._first, before = self._counted(cells), self._count
        self._counts_items |= self._first > 1 and self._first == before + 1
        self._count = self._first

    def goes_on(self, cells: Cells) -> bool:
        """Whether a row is one more place of the item that is open."""
        said, count = self._words(cells), self._counted(cells)
        if not said or not any(e.kind in PLACES for cell in cells.values() for e in cell):
            return False
        if any(self._said.get(role) != words for role, words in said.items()):
            return False
        if count:
            is_of_places = self._first == 1 and not self._counts_items
            return is_of_places and count > 1
        is_move = canonical_verb(self._said.get("verb", "")) == "move"
        return "label" in said and {"verb", "feature"} <= set(said) and not is_move

    def are_joined(self, cells: Cells) -> bool:
        """Whether the places make one line or area, and no row is of another thing alike."""
        feature = read_feature(self._said.get("feature", ""), None).feature
        return "sequence" not in cells or "P" not in primitives(feature.kind)

    def fault_of(self, cells: Cells) -> list[Fault]:
        """What is wrong with the count of a place that goes on with the one above."""
        before, self._count = self._count, self._counted(cells)
        if self._count in (0, before + 1):
            return []
        cell = next(cells[role] for role in _COUNTS if role in cells)
        values = {"written": str(self._count), "before": str(before)}
        return [Fault("place-not-next", cell[0].start, cell[-1].end, values)]

    def _words(self, cells: Cells) -> dict[str, str]:
        told = ((role, cell) for role, cell in cells.items() if role not in _PLACED)
        return {role: words_of(self.text, cell) for role, cell in told}

    def _counted(self, cells: Cells) -> int:
        cell = next((cells[role] for role in _COUNTS if role in cells), [])
        words = words_of(self.text, cell)
        return int(words) if words.isdecimal() and len(words) < 4 else 0
