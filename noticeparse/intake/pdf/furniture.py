"""Which rows are the heads and feet of pages: page numbers, and what comes again on other pages.

Nothing is taken out.  The rows are marked, so that what stands on both sides is read together.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Sequence
from statistics import median
from typing import NamedTuple

from noticeparse.intake.pdf.rows import Row

_ZONE = 0.14
_NEAR = 3.0
_FIGURES = str.maketrans("0123456789", "##########")
_PAGE_WORD = re.compile(
    r"\W{0,4}(?:page|p\.)\s{0,3}[0-9]{1,4}(?:\s{0,3}(?:of|/)\s{0,3}[0-9]{1,4})?\W{0,4}", re.I
)
_PAGE_FIGURE = re.compile(
    r"[-–— ]{0,4}(?:[0-9]{1,4}|[ivxlc]{1,7})(?:\s{0,3}(?:of|/)\s{0,3}[0-9]{1,4})?[-–— ]{0,4}"
)


class PageRows(NamedTuple):
    """The rows of a page in reading order, and its height in points."""

    rows: list[Row]
    height: float


def furniture_of(pages: Sequence[PageRows]) -> set[tuple[int, int]]:
    """Page and row, both from 0, of every row that is the head or foot of its page."""
    found: set[tuple[int, int]] = set()
    seen: dict[str, list[tuple[int, int, float]]] = defaultdict(list)
    for number, page in enumerate(pages):
        for index, row in enumerate(page.rows):
            edge = min(row.page_y, page.height - row.page_y)
            if edge > _ZONE * page.height:
                continue
            shape = " ".join(row.text.translate(_FIGURES).split())
            # From the lower edge for feet, since pages may differ in height.
            side = row.page_y if row.page_y < page.height / 2 else row.page_y - page.height
            seen[shape].append((number, index, side))
            if _is_page_number(page, index):
                found.add((number, index))
    for places in seen.values():
        for number, index, side in places:
            if any(
                other != number and abs(side - other_side) <= _NEAR
                for other, _, other_side in places[:200]
            ):
                found.add((number, index))
    return found


def _is_page_number(page: PageRows, index: int) -> bool:
    text = page.rows[index].text.strip()
    if _PAGE_WORD.fullmatch(text):
        return _is_outermost(page, index, 0.0)
    # A lone figure may be the end of a depth; only white round it makes it a page number.
    return bool(_PAGE_FIGURE.fullmatch(text)) and _is_outermost(page, index, 1.6)


def _is_outermost(page: PageRows, index: int, white: float) -> bool:
    """Whether no row stands nearer to the edge of the page, and so many sizes of white beside."""
    own = page.rows[index]
    heights = [row.page_y for at, row in enumerate(page.rows) if at != index]
    if not heights:
        return white == 0
    size = median(row.size for row in page.rows)
    gap = min(heights) - own.page_y, own.page_y - max(heights)
    return max(gap) >= -1.0 if white == 0 else max(gap) >= white * size
