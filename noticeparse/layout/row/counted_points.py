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


class CountedPoints:
    """Holds how many places of the open item were counted."""

    def __init__(self, text: str) -> None:
        self.text = text
        self._count = 0

    def count_of(self, cells: Cells) -> int:
        """The number of the place that a row counts, 0 for a row that does not count one."""
        words = words_of(self.text, cells.get("feature", [])).strip()
        found = _COUNT.fullmatch(words)
        is_place = any(e.kind in PLACES for cell in cells.values() for e in cell)
        return int(found["count"]) if found and is_place and "verb" not in cells else 0

    def without_count(self, cells: Cells) -> tuple[Cells, list[Fault]]:
        """A row without such a count in place of its feature; a fault where one is missing."""
        before, self._count = self._count, self.count_of(cells)
        if not self._count:
            return cells, []
        rest = {role: cell for role, cell in cells.items() if role != "feature"}
        if self._count == before + 1:
            return rest, []
        cell = cells["feature"]
        values = {"written": str(self._count), "before": str(before)}
        return rest, [Fault("place-not-next", cell[0].start, cell[-1].end, values)]
