"""Rows whose words only count a place of the item above: `pt 1`, `corner 2`, `point 3`."""

from __future__ import annotations

import re

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.evidence import PLACES
from noticeparse.layout.line.elements import words_of

_COUNT = re.compile(
    r"(?:pt|point|posn?|position|corner|vertex|node|turning point)\.? ?(?:no\.? ?)?"
    r"(?P<count>[1-9][0-9]?)[.:]?",
    re.IGNORECASE,
)


def has_place(cells: Cells) -> bool:
    """Whether a place stands in any cell of a row."""
    return any(e.kind in PLACES for cell in cells.values() for e in cell)


class CountedPoints:
    """Holds how many places of the open item were counted, where its own row has none.

    `Fish farm, corner 1  P` has the first of them: its rows are read as one phrase.
    """

    def __init__(self, text: str) -> None:
        self.text = text
        self._count = 0
        self._is_without_place = False

    def count_of(self, cells: Cells) -> int:
        """The number of the place that a row counts, 0 for a row that does not count one."""
        words = words_of(self.text, cells.get("feature", [])).strip()
        found = _COUNT.fullmatch(words)
        return int(found["count"]) if found and has_place(cells) and "verb" not in cells else 0

    def without_count(self, cells: Cells) -> tuple[Cells, list[Fault]]:
        """A row without such a count in place of its feature; a fault where one is missing."""
        before, self._count = self._count, self.count_of(cells)
        if not self._count:
            self._is_without_place = not has_place(cells)
        if not self._count or not self._is_without_place:
            return cells, []
        rest = {role: cell for role, cell in cells.items() if role != "feature"}
        if self._count == before + 1:
            return rest, []
        cell = cells["feature"]
        values = {"written": str(self._count), "before": str(before)}
        return rest, [Fault("place-not-next", cell[0].start, cell[-1].end, values)]
