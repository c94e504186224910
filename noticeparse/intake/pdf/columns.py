"""Cuts a page into parts that are read one after the other: columns, and what crosses them.

A gutter is a stretch of white as high as several lines, with text on both sides.  Whether columns
or the cells of a table stand on its sides is told by what they hold: a side with words alone
beside one with positions alone is a table, and is read row by row.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from statistics import median
from typing import NamedTuple

from noticeparse.intake.pdf.glyphs import Glyph
from noticeparse.intake.pdf.rows import Row, read_rows
from noticeparse.intake.pdf.strips import Group, Strip, has_place, is_bare

_STEP = 2.0
_LEAST_LINES = 3
_TALL_LINES = 10
_MOST_TRIED = 8
_DEEPEST = 40
_FEWEST = 40
_SAME_EDGE = 8.0
_OFF_EDGE = 3.0
_APART = 1.6
_MANY_ROWS = 4
_MOST_EDGES = 20


class Part(NamedTuple):
    """Rows that are read one after the other, and whether that order is in doubt."""

    rows: list[Row]
    is_doubtful: bool = False


class _Gutter(NamedTuple):
    x0: float
    x1: float
    top: float
    bottom: float
    least: float
    """How wide white must be at least, to be more than a blank between words."""
    rows: int
    """Steps of height with text on both sides."""


class Cutter:
    """Cuts the pages of one file, and remembers where its columns have been cut."""

    def __init__(self) -> None:
        self._grid: list[float] = []

    def parts(self, glyphs: Sequence[Glyph]) -> Iterator[Part]:
        """The parts of a page in reading order."""
        yield from self._parts(glyphs, _DEEPEST)

    def _parts(self, glyphs: Sequence[Glyph], deep: int) -> Iterator[Part]:
        solid = [one for one in glyphs if one.char != " "]
        if not solid:
            return
        is_doubtful = False
        if deep and len(solid) > _FEWEST:
            for found in _gutters(solid)[:_MOST_TRIED]:
                gutter, is_sure = _without_tables(glyphs, found)
                is_doubtful = is_doubtful or not is_sure
                within = [one for one in glyphs if gutter.top <= one.middle <= gutter.bottom]
                cuts, in_doubt = self._cuts(within, gutter)
                is_doubtful = is_doubtful or in_doubt
                if not cuts:
                    continue
                above = [one for one in glyphs if one.middle < gutter.top]
                below = [one for one in glyphs if one.middle > gutter.bottom]
                for piece in (above, *_between(within, cuts), below):
                    yield from self._parts(piece, deep - 1)
                return
        yield Part(read_rows(glyphs), is_doubtful)

    def _cuts(self, glyphs: Sequence[Glyph], main: _Gutter) -> tuple[list[float], bool]:
        """Where to cut at the gutters of this height, and whether the order is in doubt."""
        edges = _edges(glyphs, main)
        strips = [Strip(piece) for piece in _between(glyphs, edges)]
        if not edges or not all(strip.rows for strip in strips):
            return [], False
        cuts: list[float] = []
        sure: list[float] = []
        is_doubtful = False
        group = Group()
        group.add(strips[0])
        for edge, (before, strip) in zip(edges, pairwise(strips), strict=True):
            answer = group.ends_before(strip, before)
            if answer:
                sure.append(edge)
            elif answer is None and any(abs(edge - one) < _SAME_EDGE for one in self._grid):
                answer = True
            is_doubtful = is_doubtful or answer is None
            if answer:
                cuts.append(edge)
                group = Group()
            group.add(strip)
        self._grid += [one for one in sure if one not in self._grid][:_MOST_EDGES]
        return cuts, is_doubtful and not cuts


def _without_tables(glyphs: Sequence[Glyph], gutter: _Gutter) -> tuple[_Gutter, bool]:
    """The longest part of a gutter that goes through no table; False where that is in doubt.

    In a table whose cells leave the gutter white, nothing on the right begins at its edge, and
    words alone stand beside positions alone.
    """
    middle = (gutter.x0 + gutter.x1) / 2
    within = [one for one in glyphs if gutter.top <= one.middle <= gutter.bottom]
    left, right = (read_rows(piece) for piece in _between(within, [middle]))
    if not left or not right:
        return gutter, True
    edge = min(row.x0 for row in right)
    size = median(row.size for row in right)
    runs = [(row.base, row.x0 > edge + _OFF_EDGE * size) for row in right]
    if not any(is_off for _, is_off in runs):
        return gutter, True
    bounds = [gutter.top]
    bases = sorted(row.base for row in (*left, *right))
    is_sure = True
    for first, last, above, below in _stretches(runs, gutter):
        beside = [row for row in left if first - size <= row.base <= last + size]
        bare = [is_bare(row.text) for row in right if first <= row.base <= last]
        if not beside or any(has_place(row.text) for row in beside) or not all(bare):
            continue
        ends = [_widest_white(bases, *one) for one in ((above, first), (last, below))]
        is_apart = [
            white > _APART * size or edge_of in (gutter.top, gutter.bottom)
            for (white, _), edge_of in zip(ends, (above, below), strict=True)
        ]
        if all(is_apart):
            bounds += [at for _, at in ends]
        elif len(bare) >= _MANY_ROWS:
            is_sure = False
    bounds = sorted({*bounds, gutter.bottom})
    # Between the first and second bound stands text, between these and the next a table.
    parts = list(pairwise(bounds))[::2]
    top, bottom = max(parts, key=lambda one: one[1] - one[0])
    return gutter._replace(top=top, bottom=bottom), is_sure


def _stretches(
    runs: Sequence[tuple[float, bool]], gutter: _Gutter
) -> Iterator[tuple[float, float, float, float]]:
    """Rows off the edge that follow each other: the first, the last, those on it beside them."""
    at = 0
    while at < len(runs):
        end = at
        while end < len(runs) and runs[end][1]:
            end += 1
        if end > at:
            above = runs[at - 1][0] if at else gutter.top
            below = runs[end][0] if end < len(runs) else gutter.bottom
            yield runs[at][0], runs[end - 1][0], above, below
        at = end + 1


def _widest_white(bases: Sequence[float], begin: float, end: float) -> tuple[float, float]:
    """The greatest distance of two rows from `begin` to `end`, and the middle of it."""
    heights = [begin, *(one for one in bases if begin < one < end), end]
    white, upper = max((b - a, a) for a, b in pairwise(heights))
    return white, upper + 0.4 * white


def _between(glyphs: Sequence[Glyph], cuts: Sequence[float]) -> list[list[Glyph]]:
    """The characters by the column in which their middle stands."""
    columns: list[list[Glyph]] = [[] for _ in range(len(cuts) + 1)]
    for one in glyphs:
        middle = (one.x0 + one.x1) / 2
        columns[sum(middle > cut for cut in cuts)].append(one)
    return columns


def _gutters(glyphs: Sequence[Glyph]) -> list[_Gutter]:
    """White stretches with text on both sides, those with the most lines first."""
    left = min(one.x0 for one in glyphs)
    top = min(one.base - one.size for one in glyphs)
    width = int(max(one.x1 for one in glyphs) - left) + 2
    size = median(one.size for one in glyphs)
    taken = [0] * width
    for one in glyphs:
        mask = _rows_of(one, top)
        for x in range(int(one.x0 - left), min(int(one.x1 - left) + 1, width)):
            taken[x] |= mask
    least = max(int(_least_width(glyphs, size)) + 1, 2)
    before, behind = _sides(taken)
    line = 0.8 * size / _STEP
    fewest, tall = _LEAST_LINES * line, _TALL_LINES * line
    found: dict[tuple[int, int], _Gutter] = {}
    for x in range(1, width - least):
        crossed = 0
        for at in range(x, x + least):
            crossed |= taken[at]
        both = before[x] & behind[x + least - 1]
        if (both & ~crossed).bit_count() < 0.7 * line:
            continue
        any_text = before[x] | behind[x + least - 1]
        for begin, end in _free(crossed, any_text):
            run = ((1 << (end - begin)) - 1) << begin
            count = (both & run).bit_count()
            # The last lines of a text may be all there is in a column, beside one that is full.
            is_tall = (any_text & run).bit_count() >= tall
            if count < fewest and not (is_tall and count >= 0.7 * line):
                continue
            known = found.get((begin, end))
            gutter = _Gutter(
                known.x0 if known else x + left,
                x + least + left,
                top + begin * _STEP,
                top + end * _STEP,
                least,
                count,
            )
            found[begin, end] = gutter if known is None or known.x1 >= x + left else known
    return sorted(found.values(), key=lambda one: (-one.rows, one.top - one.bottom))


def _rows_of(one: Glyph, top: float) -> int:
    """The steps of height that a character takes, as the bits of a number."""
    first = max(int((one.base - 0.75 * one.size - top) / _STEP), 0)
    last = max(int((one.base + 0.2 * one.size - top) / _STEP), first)
    return ((1 << (last - first + 1)) - 1) << first


def _least_width(glyphs: Sequence[Glyph], size: float) -> float:
    """A gutter is wider than the blank between words: no river in one column is taken for one."""
    line: dict[float, list[Glyph]] = {}
    for one in glyphs:
        line.setdefault(round(one.base), []).append(one)
    gaps = []
    for words in line.values():
        words.sort(key=lambda one: one.x0)
        gaps += [b.x0 - a.x1 for a, b in pairwise(words)]
    blanks = [gap for gap in gaps if 0.1 * size < gap < size]
    return max(0.6 * size, 1.3 * median(blanks) if blanks else 0.0)


def _sides(taken: Sequence[int]) -> tuple[list[int], list[int]]:
    """For each place, the rows with text before it and behind it."""
    before, behind = [0] * len(taken), [0] * len(taken)
    for x in range(1, len(taken)):
        before[x] = before[x - 1] | taken[x - 1]
    for x in range(len(taken) - 2, -1, -1):
        behind[x] = behind[x + 1] | taken[x + 1]
    return before, behind


def _free(crossed: int, any_text: int) -> Iterator[tuple[int, int]]:
    """The runs of rows that nothing crosses, as far as text stands beside them."""
    at, end = 0, any_text.bit_length()
    while at < end:
        rest = crossed >> at
        if rest & 1:
            at += (~rest & (rest + 1)).bit_length() - 1
            continue
        length = (rest & -rest).bit_length() - 1 if rest else end - at
        yield at, min(at + length, end)
        at += length


def _edges(glyphs: Sequence[Glyph], main: _Gutter) -> list[float]:
    """The middles of all white stretches that go through as well as the main one."""
    solid = sorted((one for one in glyphs if one.char != " "), key=lambda one: one.x0)
    edges: list[float] = []
    reach = solid[0].x1 if solid else 0.0
    for one in solid:
        if one.x0 - reach >= main.least:
            edges.append((reach + one.x0) / 2)
        reach = max(reach, one.x1)
    return edges
