"""A plot on several sheets of A4 or A3, for who has no large printer.

Tiles overlap; marks in the overlap lie on the same places of the chart on both neighbours.  Tiles
on which nothing is to be done are left out, and named on the others.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil
from string import ascii_uppercase
from textwrap import wrap
from typing import NamedTuple

from noticeparse.caution import CAUTION
from noticeparse.chart_math import size_mm
from noticeparse.worksheet.drawing import Box, Drawing, Item, Path, Pen, Point, Ring, Words
from noticeparse.worksheet.plotting import Plot, page_of
from noticeparse.worksheet.shapes import is_within
from noticeparse.worksheet.strip import controls, left_out_words

PAPERS = {"A4": (210.0, 297.0), "A3": (297.0, 420.0)}
"""Width and height, millimetres."""
_LEFT_MM, _RIGHT_MM, _TOP_MM, _BOTTOM_MM = 30.0, 25.0, 12.0, 46.0
_OVERLAP_MM = 20.0
_MARK = Pen(0.15)
_SIZE = 3.0


class _Tile(NamedTuple):
    name: str
    window: Box


def tiles_of(plot: Plot, paper: str) -> list[Drawing]:
    """The tiles of a plot that hold something drawn, at least one."""
    tiles = list(_tiles(plot, paper))
    pages = [
        (tile, page_of(plot, tile.window, (_LEFT_MM, _BOTTOM_MM), PAPERS[paper])) for tile in tiles
    ]
    filled = [(tile, page) for tile, page in pages if page.groups] or pages[:1]
    names = [tile.name for tile, _ in filled]
    return [
        page._replace(
            title=f"{page.title}, tile {tile.name}",
            around=[
                *page.around,
                *_foot(plot, tile, names=names, count=len(tiles), paper=paper),
                *controls(),
            ],
            within=[*page.within, *_marks(plot, tile, paper)],
        )
        for tile, page in filled
    ]


def _steps(paper: str) -> tuple[float, float]:
    """From one tile to the next, right and down."""
    width, height = PAPERS[paper]
    return (
        width - _LEFT_MM - _RIGHT_MM - _OVERLAP_MM,
        height - _TOP_MM - _BOTTOM_MM - _OVERLAP_MM,
    )


def _tiles(plot: Plot, paper: str) -> Iterator[_Tile]:
    """All tiles, named by column from the west and row from the north."""
    width, height = size_mm(plot.listed.frame)
    right, down = _steps(paper)
    for row in range(max(1, ceil((height - _OVERLAP_MM) / down))):
        top = height - row * down
        bottom = max(0.0, top - down - _OVERLAP_MM)
        for column in range(max(1, ceil((width - _OVERLAP_MM) / right))):
            left = column * right
            window = Box(left, bottom, min(width - left, right + _OVERLAP_MM), top - bottom)
            yield _Tile(f"{_letters(column)}{row + 1}", window)


def _letters(column: int) -> str:
    first, last = divmod(column, 26)
    return (ascii_uppercase[first - 1] if first else "") + ascii_uppercase[last]


def _marks(plot: Plot, tile: _Tile, paper: str) -> Iterator[Item]:
    """Marks in the middle of the overlaps, on the same places of the chart on every tile."""
    width, height = size_mm(plot.listed.frame)
    right, down = _steps(paper)
    half, window = _OVERLAP_MM / 2, tile.window
    xs = [number * right + half for number in range(ceil(width / right) + 1)]
    ys = [height - number * down - half for number in range(ceil(height / down) + 1)]
    for x in xs:
        for y in ys:
            # Beyond the frame nothing lies that could be compared.
            if x < width - half and y > half and is_within(window, (x, y)):
                yield from _mark((x - window.left + _LEFT_MM, y - window.bottom + _BOTTOM_MM))


def _mark(at: Point) -> Iterator[Item]:
    x, y = at
    yield Ring(at, 2.0, _MARK)
    yield Path([(x - 3, y), (x + 3, y)], _MARK)
    yield Path([(x, y - 3), (x, y + 3)], _MARK)


def _foot(plot: Plot, tile: _Tile, *, names: list[str], count: int, paper: str) -> Iterator[Item]:
    chart = plot.listed.chart
    scale = f"1:{chart.scale:,}".replace(",", " ")
    yield Words((_LEFT_MM, 34.0), f"{plot.name}, tile {tile.name}", 5.0, is_bold=True)
    left_out = f"; the other {count - len(names)} hold no action" if count > len(names) else ""
    lines = [
        f"{scale}. Tiles {', '.join(names)}{left_out}. Ringed crosses lie on each other.",
        left_out_words(plot.found),
        CAUTION,
    ]
    y = 29.0
    columns = int((PAPERS[paper][0] - _LEFT_MM - 10) / (_SIZE * 0.53))
    for words in [part for line in lines for part in wrap(line, columns)][:5]:
        yield Words((_LEFT_MM, y), words, _SIZE)
        y -= 4.2
