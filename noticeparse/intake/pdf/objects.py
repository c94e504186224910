"""What else is drawn on a page: thin level lines and small pictures, as the page is shown."""

from __future__ import annotations

import ctypes
import math
from collections.abc import Iterator
from typing import NamedTuple

import pypdfium2.raw as pdfium

from noticeparse.intake.pdf.glyphs import Frame

_MOST_OBJECTS = 20_000
_MOST_SEGMENTS = 50_000
_MOST_PICTURES = 200
_DEEPEST = 4
_THIN = 1.6
_SHORTEST = 2.0
_WHITE = 250

_Matrix = tuple[float, float, float, float, float, float]


class Bar(NamedTuple):
    """A level line: its ends and its height, points from the upper left corner."""

    x0: float
    x1: float
    y: float


class Drawn(NamedTuple):
    """The lines of a page, and its pictures: left, right, top, bottom."""

    bars: list[Bar]
    pictures: list[tuple[float, float, float, float]]


def read_objects(page: object, frame: Frame) -> Drawn:
    """The lines and pictures of a page; of very many objects the first are looked at."""
    reader = _Reader(frame)
    objects = (
        pdfium.FPDFPage_GetObject(page, number)
        for number in range(min(pdfium.FPDFPage_CountObjects(page), _MOST_OBJECTS))
    )
    reader.read(objects, (1, 0, 0, 1, 0, 0), _DEEPEST)
    return reader.drawn


class _Reader:
    def __init__(self, frame: Frame) -> None:
        self._frame = frame
        self._left = _MOST_OBJECTS
        self._segments = _MOST_SEGMENTS
        self.drawn = Drawn([], [])

    def read(self, objects: Iterator[object], outer: _Matrix, deep: int) -> None:
        for one in objects:
            self._left -= 1
            if self._left < 0:
                return
            kind = pdfium.FPDFPageObj_GetType(one)
            if kind == pdfium.FPDF_PAGEOBJ_PATH:
                self._read_path(one, outer)
            elif kind == pdfium.FPDF_PAGEOBJ_IMAGE and len(self.drawn.pictures) < _MOST_PICTURES:
                self.drawn.pictures.append(self._bounds(one, outer))
            elif kind == pdfium.FPDF_PAGEOBJ_FORM and deep:
                count = pdfium.FPDFFormObj_CountObjects(one)
                inner = (
                    pdfium.FPDFFormObj_GetObject(one, number)
                    for number in range(min(max(count, 0), _MOST_OBJECTS))
                )
                self.read(inner, _times(_matrix(one), outer), deep - 1)

    def _bounds(self, one: object, outer: _Matrix) -> tuple[float, float, float, float]:
        x0, y0, x1, y1 = (ctypes.c_float() for _ in range(4))
        pdfium.FPDFPageObj_GetBounds(one, x0, y0, x1, y1)
        corners = [self._shown(x.value, y.value, outer) for x in (x0, x1) for y in (y0, y1)]
        xs, ys = zip(*corners, strict=True)
        return min(xs), max(xs), min(ys), max(ys)

    def _shown(self, x: float, y: float, by: _Matrix) -> tuple[float, float]:
        a, b, c, d, e, f = by
        return self._frame.shown(a * x + c * y + e, b * x + d * y + f)

    def _read_path(self, one: object, outer: _Matrix) -> None:
        mode, is_stroked = ctypes.c_int(), ctypes.c_int()
        pdfium.FPDFPath_GetDrawMode(one, mode, is_stroked)
        if not (mode.value or is_stroked.value) or _is_white(one, is_filled=bool(mode.value)):
            return
        if mode.value:
            x0, x1, top, bottom = self._bounds(one, outer)
            if bottom - top <= _THIN:
                self._add(x0, x1, (top + bottom) / 2)
                return
        if is_stroked.value:
            self._read_strokes(one, _times(_matrix(one), outer))

    def _read_strokes(self, one: object, by: _Matrix) -> None:
        x, y = ctypes.c_float(), ctypes.c_float()
        last: tuple[float, float] | None = None
        for number in range(min(pdfium.FPDFPath_CountSegments(one), self._segments)):
            self._segments -= 1
            segment = pdfium.FPDFPath_GetPathSegment(one, number)
            pdfium.FPDFPathSegment_GetPoint(segment, x, y)
            here = self._shown(x.value, y.value, by)
            is_line = pdfium.FPDFPathSegment_GetType(segment) == pdfium.FPDF_SEGMENT_LINETO
            if last is not None and is_line and abs(here[1] - last[1]) <= _THIN:
                self._add(min(last[0], here[0]), max(last[0], here[0]), (here[1] + last[1]) / 2)
            last = here

    def _add(self, x0: float, x1: float, y: float) -> None:
        if x1 - x0 >= _SHORTEST and math.isfinite(x0 + x1 + y):
            self.drawn.bars.append(Bar(x0, x1, y))


def _is_white(one: object, *, is_filled: bool) -> bool:
    colours = [ctypes.c_uint() for _ in range(4)]
    get = pdfium.FPDFPageObj_GetFillColor if is_filled else pdfium.FPDFPageObj_GetStrokeColor
    if not get(one, *colours):
        return False
    return colours[3].value == 0 or all(colour.value >= _WHITE for colour in colours[:3])


def _matrix(one: object) -> _Matrix:
    m = pdfium.FS_MATRIX()
    if not pdfium.FPDFPageObj_GetMatrix(one, m):
        return (1, 0, 0, 1, 0, 0)
    return m.a, m.b, m.c, m.d, m.e, m.f


def _times(inner: _Matrix, outer: _Matrix) -> _Matrix:
    a, b, c, d, e, f = inner
    p, q, r, s, t, u = outer
    return (
        a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s,
        e * p + f * r + t, e * q + f * s + u,
    )  # fmt: skip
