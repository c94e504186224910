"""What else is drawn on a page: thin lines and small pictures, as the page is shown."""

from __future__ import annotations

import ctypes
import math
from collections.abc import Iterator
from typing import NamedTuple

import pypdfium2.raw as pdfium

from noticeparse.intake.pdf.glyphs import Frame, read_at

_MOST_OBJECTS = 20_000
_MOST_SEGMENTS = 50_000
_MOST_PICTURES = 200
_DEEPEST = 4
_THIN = 1.6
_SHORTEST = 2.0
_WHITE = 250

_Matrix = tuple[float, float, float, float, float, float]


Box = tuple[float, float, float, float]


class Bar(NamedTuple):
    """A line along the direction of reading: its ends and its height, points."""

    x0: float
    x1: float
    y: float


class Drawn(NamedTuple):
    """What is drawn on a page, points from its upper left corner."""

    lines: list[Box]
    """x and y of one end, x and y of the other."""
    pictures: list[Box]
    """Left, right, top, bottom."""
    is_whole: bool
    """False where there is more than is looked at."""

    def bars(self, angle: int) -> list[Bar]:
        """The lines along what reads at this angle, degrees clockwise, in its coordinates."""
        found = []
        turn = math.radians(angle)
        for x0, y0, x1, y1 in self.lines:
            (left, high), (right, low) = sorted((read_at(turn, x0, y0), read_at(turn, x1, y1)))
            if abs(low - high) <= _THIN and right - left >= _SHORTEST:
                found.append(Bar(left, right, (high + low) / 2))
        return found

    def boxes(self, angle: int) -> list[Box]:
        """The pictures in the coordinates of what reads at this angle, degrees clockwise."""
        return [
            _box([read_at(math.radians(angle), x, y) for x in (x0, x1) for y in (y0, y1)])
            for x0, x1, y0, y1 in self.pictures
        ]


def read_objects(page: object, frame: Frame) -> Drawn:
    """The lines and pictures of a page; of very many objects the first are looked at."""
    reader = _Reader(frame)
    count = pdfium.FPDFPage_CountObjects(page)
    objects = (pdfium.FPDFPage_GetObject(page, number) for number in range(count))
    reader.read(objects, (1, 0, 0, 1, 0, 0), _DEEPEST)
    return Drawn(reader.lines, reader.pictures, reader.is_whole)


class _Reader:
    def __init__(self, frame: Frame) -> None:
        self._frame = frame
        self._left = _MOST_OBJECTS
        self._segments = _MOST_SEGMENTS
        self.lines: list[Box] = []
        self.pictures: list[Box] = []
        self.is_whole = True

    def read(self, objects: Iterator[object], outer: _Matrix, deep: int) -> None:
        for one in objects:
            self._left -= 1
            if self._left < 0:
                self.is_whole = False
                return
            kind = pdfium.FPDFPageObj_GetType(one)
            if kind == pdfium.FPDF_PAGEOBJ_PATH:
                self._read_path(one, outer)
            elif kind == pdfium.FPDF_PAGEOBJ_IMAGE:
                self._read_picture(one, outer)
            elif kind == pdfium.FPDF_PAGEOBJ_FORM:
                self._read_form(one, outer, deep)

    def _read_picture(self, one: object, outer: _Matrix) -> None:
        if len(self.pictures) < _MOST_PICTURES:
            self.pictures.append(self._bounds(one, outer))
        else:
            self.is_whole = False

    def _read_form(self, one: object, outer: _Matrix, deep: int) -> None:
        if not deep:
            self.is_whole = False
            return
        count = max(pdfium.FPDFFormObj_CountObjects(one), 0)
        inner = (pdfium.FPDFFormObj_GetObject(one, number) for number in range(count))
        self.read(inner, _times(_matrix(one), outer), deep - 1)

    def _bounds(self, one: object, outer: _Matrix) -> Box:
        x0, y0, x1, y1 = (ctypes.c_float() for _ in range(4))
        pdfium.FPDFPageObj_GetBounds(one, x0, y0, x1, y1)
        return _box([self._shown(x.value, y.value, outer) for x in (x0, x1) for y in (y0, y1)])

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
            middle_x, middle_y = (x0 + x1) / 2, (top + bottom) / 2
            if bottom - top <= _THIN:
                self._add((x0, middle_y), (x1, middle_y))
                return
            if x1 - x0 <= _THIN:
                self._add((middle_x, top), (middle_x, bottom))
                return
        if is_stroked.value:
            self._read_strokes(one, _times(_matrix(one), outer))

    def _read_strokes(self, one: object, by: _Matrix) -> None:
        x, y = ctypes.c_float(), ctypes.c_float()
        last: tuple[float, float] | None = None
        for number in range(pdfium.FPDFPath_CountSegments(one)):
            self._segments -= 1
            if self._segments < 0:
                self.is_whole = False
                return
            segment = pdfium.FPDFPath_GetPathSegment(one, number)
            pdfium.FPDFPathSegment_GetPoint(segment, x, y)
            here = self._shown(x.value, y.value, by)
            is_line = pdfium.FPDFPathSegment_GetType(segment) == pdfium.FPDF_SEGMENT_LINETO
            if last is not None and is_line:
                self._add(last, here)
            last = here

    def _add(self, begin: tuple[float, float], end: tuple[float, float]) -> None:
        if all(math.isfinite(one) for one in (*begin, *end)):
            self.lines.append((*begin, *end))


def _box(corners: list[tuple[float, float]]) -> Box:
    xs, ys = zip(*corners, strict=True)
    return min(xs), max(xs), min(ys), max(ys)


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
