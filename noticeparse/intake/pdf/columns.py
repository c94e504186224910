"""Cuts a page into parts that are read one after the other: columns, and what crosses them.

A gutter is a stretch of white as high as several lines, with text on both sides.  Whether columns
or the cells of a table stand on its sides is told by what they hold: a side with words alone
beside one with positions alone is a table, and is read row by row.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from statistics import median
from typing import NamedTuple

from noticeparse.intake.pdf.glyphs import Glyph
from noticeparse.intake.pdf.rows import Row, read_rows

_STEP = 2.0
_LEAST_LINES = 3
_MOST_TRIED = 8
_DEEPEST = 40
_FEWEST = 40
_SAME_EDGE = 8.0
_MOST_EDGES = 20

_LATITUDE = re.compile(r"[0-9][0-9°'′.,\"″ -]{1,14}[NS]\b")
_LONGITUDE = re.compile(r"[0-9][0-9°'′.,\"″ -]{1,15}[EW]\b")
_BESIDE_POSITIONS = re.compile(r"\([a-z]{1,2}\)|\b(?:and|from|to)\b|[\s.,;:()-]")


class Part(NamedTuple):
    """Rows that are read one after the other, and whether that order is in doubt."""

    rows: list[Row]
    is_doubtful: bool = False


class _Gutter(NamedTuple):
    x0: float
    x1: float
    top: float
    bottom: float
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
            for gutter in _gutters(solid)[:_MOST_TRIED]:
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
        strips = [_Strip(piece) for piece in _between(glyphs, edges)]
        if not edges or not all(strip.rows for strip in strips):
            return [], False
        cuts: list[float] = []
        sure: list[float] = []
        is_doubtful = False
        group = _Group()
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
                group = _Group()
            group.add(strip)
        self._grid += [one for one in sure if one not in self._grid][:_MOST_EDGES]
        return cuts, is_doubtful and not cuts


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
    if width > 20_000:
        return []
    taken = [0] * width
    for one in glyphs:
        mask = _rows_of(one, top)
        for x in range(int(one.x0 - left), min(int(one.x1 - left) + 1, width)):
            taken[x] |= mask
    least = max(int(_least_width(glyphs, size)), 1)
    before, behind = _sides(taken)
    fewest = _LEAST_LINES * size / _STEP
    found: dict[tuple[int, int], _Gutter] = {}
    for x in range(1, width - least):
        crossed = 0
        for at in range(x, x + least):
            crossed |= taken[at]
        both = before[x] & behind[x + least - 1]
        if (both & ~crossed).bit_count() < fewest:
            continue
        for begin, end in _free(crossed, before[x] | behind[x + least - 1]):
            run = ((1 << (end - begin)) - 1) << begin
            count = (both & run).bit_count()
            if count < fewest:
                continue
            known = found.get((begin, end))
            gutter = _Gutter(
                known.x0 if known else x + left,
                x + least + left,
                top + begin * _STEP,
                top + end * _STEP,
                count,
            )
            found[begin, end] = gutter if known is None or known.x1 >= x + left else known
    return sorted(found.values(), key=lambda one: -one.rows)


def _rows_of(one: Glyph, top: float) -> int:
    """The steps of height that a character takes, as the bits of a number."""
    first = max(int((one.base - 0.75 * one.size - top) / _STEP), 0)
    last = max(int((one.base + 0.2 * one.size - top) / _STEP), first)
    return ((1 << (min(last, 20_000) - first + 1)) - 1) << first


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
    least = 0.75 * (main.x1 - main.x0)
    size = median(one.size for one in solid) if solid else 1.0
    edges: list[float] = []
    reach = solid[0].x1 if solid else 0.0
    for one in solid:
        if one.x0 - reach >= min(least, 0.6 * size):
            edges.append((reach + one.x0) / 2)
        reach = max(reach, one.x1)
    return edges


class _Strip:
    """What stands between two gutters."""

    def __init__(self, glyphs: Sequence[Glyph]) -> None:
        self.glyphs = glyphs
        self.rows = read_rows(glyphs) if any(one.char != " " for one in glyphs) else []
        texts = [row.text.strip() for row in self.rows]
        count = max(len(texts), 1)
        placed = [bool(_LATITUDE.search(one) or _LONGITUDE.search(one)) for one in texts]
        bare = [_is_bare(one) for one in texts]
        words = [len(one.split()) for one in texts] or [0]
        self.has_places = sum(placed) >= 0.1 * count
        self.is_places = sum(bare) >= 0.75 * count
        short = sum(n <= 2 and len(one) <= 14 for n, one in zip(words, texts, strict=False))
        self.is_cells = not self.is_places and short >= 0.8 * count
        self.is_prose = median(words) >= 4
        self.axis = _axis(texts)

    def is_drawn_before(self, other: _Strip) -> bool:
        """Whether the file draws this strip whole before the other one."""
        mine = [one.order for one in self.glyphs]
        return max(mine) < min(one.order for one in other.glyphs)


def _is_bare(text: str) -> bool:
    """Whether a row is positions and nothing else."""
    rest = _LONGITUDE.sub("", _LATITUDE.sub("", text))
    return rest != text and len(_BESIDE_POSITIONS.sub("", rest)) <= 2


def _axis(texts: Sequence[str]) -> str:
    north = sum(bool(_LATITUDE.search(one)) for one in texts)
    east = sum(bool(_LONGITUDE.search(one)) for one in texts)
    if north > 4 * east:
        return "latitude"
    return "longitude" if east > 4 * north else "both"


class _Group:
    """Strips that make one column: the cells of its table, or one strip of text."""

    def __init__(self) -> None:
        self.has_words = False
        self.has_places = False
        self.axis = ""

    def add(self, strip: _Strip) -> None:
        self.has_words = self.has_words or not (strip.is_places or strip.is_cells)
        self.has_places = self.has_places or strip.has_places
        self.axis = strip.axis if strip.is_places else ""

    def ends_before(self, strip: _Strip, before: _Strip) -> bool | None:
        """Whether the next strip is another column; None where that cannot be told."""
        in_order = before.is_drawn_before(strip)
        if strip.is_places and self.axis == "latitude" and strip.axis == "longitude":
            return None if in_order else False
        if strip.is_places and self.has_places and self.axis == strip.axis == "both":
            # Corners in two columns: their order is the outline.
            return in_order or None
        if strip.is_cells or not self.has_words:
            return self.has_words and self.has_places and in_order
        if strip.is_places and not self.has_places:
            # Who draws a table goes along its rows; what is drawn apart may be two columns.
            return None if in_order else False
        if self.has_places and strip.has_places and not strip.is_places:
            return True
        if in_order:
            return True
        if self.has_places and not strip.is_places and strip.is_prose:
            return True
        if before.is_prose and strip.is_prose:
            return True
        return None
