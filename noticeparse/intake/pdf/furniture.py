"""Which rows are the heads and feet of pages: page numbers, and what comes again on other pages.

Nothing is taken out.  The rows are marked, so that what stands on both sides is read together.
Only what stands apart from the text, in white, can be one: notices repeat their lines too.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import pairwise
from statistics import median
from typing import NamedTuple

from noticeparse.intake.pdf.rows import Row

_ZONE = 0.14
_NEAR = 3.0
_MOST_ROWS = 4
_WHITE = 1.4
_FIGURES = str.maketrans("0123456789", "##########")
_PAGE_NUMBER = re.compile(
    r"[-–— ]{0,4}(?:(?:page|p\.)\s{0,3})?(?:[0-9]{1,4}|[ivxlc]{1,7})"
    r"(?:\s{0,3}(?:of|/)\s{0,3}[0-9]{1,4})?[-–— ]{0,4}",
    re.I,
)


class PageRows(NamedTuple):
    """The rows of a page in reading order, and its height in points."""

    rows: list[Row]
    height: float


class _Level(NamedTuple):
    """The rows at one height, at the edge of a page and apart from its text."""

    page: int
    side: float
    """The height from the upper edge, from the lower one for feet: pages differ in height."""
    rows: list[int]
    shapes: list[str]


def furniture_of(pages: Sequence[PageRows]) -> set[tuple[int, int]]:
    """Page and row, both from 0, of every row that is the head or foot of its page."""
    levels = [level for number, page in enumerate(pages) for level in _levels(number, page)]
    seen: dict[str, list[tuple[int, float]]] = defaultdict(list)
    for level in levels:
        for shape in level.shapes:
            seen[shape].append((level.page, level.side))
    found: set[tuple[int, int]] = set()
    for level in levels:
        if all(_comes_again(level, shape, seen[shape]) for shape in level.shapes):
            found |= {(level.page, row) for row in level.rows}
    return found


def _comes_again(level: _Level, shape: str, places: Sequence[tuple[int, float]]) -> bool:
    if _PAGE_NUMBER.fullmatch(shape.replace("#", "1")):
        return True
    return any(
        page != level.page and abs(side - level.side) <= _NEAR for page, side in places[:500]
    )


def _levels(number: int, page: PageRows) -> Iterator[_Level]:
    """The heights at both edges of a page, from the edge on to the first white."""
    by_height: dict[int, list[int]] = defaultdict(list)
    for index, row in enumerate(page.rows):
        by_height[round(row.page_y)].append(index)
    heights = sorted(by_height)
    if len(heights) < 2:
        return
    usual = median(b - a for a, b in pairwise(heights))
    # Rows of columns that do not stand at one height lie closer than lines do.
    usual = max(usual, 1.1 * median(row.size for row in page.rows))
    for edge in (heights, heights[::-1]):
        for at, height in enumerate(edge[: _MOST_ROWS + 1]):
            if at and abs(height - edge[at - 1]) > _WHITE * usual:
                for one in edge[:at]:
                    side = one if edge is heights else one - page.height
                    if abs(side) <= _ZONE * page.height:
                        rows = by_height[one]
                        shapes = [_shape(page.rows[row]) for row in rows]
                        yield _Level(number, side, rows, shapes)
                break


def _shape(row: Row) -> str:
    return " ".join(row.text.translate(_FIGURES).split())
