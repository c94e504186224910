"""What of the text of a page is to be seen, and what is drawn through, under and beside it.

The page is drawn once, and looked at where each character should stand: layers that are off,
white on white, covered and clipped text leave no ink there.
"""

from __future__ import annotations

import ctypes
import math
from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import NamedTuple

import pypdfium2
import pypdfium2.raw as pdfium

from noticeparse.intake.pdf.glyphs import LOST, Frame, Glyph, PageGlyphs
from noticeparse.intake.pdf.objects import Box, Drawn, read_objects

_SCALE, _MOST_PIXELS, _NARROW = 2.0, 8e6, 4
_LEAST_CONTRAST = 20
_UNSEEN = 3
_STRUCK = (0.12, 0.6)
_UNDER = (-0.4, 0.08)
_END = 0.6
_TALL, _GAP, _BLANK = 2.5, 0.5, 0.17
_FIGURES = frozenset("0123456789.,·m")


class Seen(NamedTuple):
    """The characters of a page, marked, and those left out since the file hides them."""

    glyphs: PageGlyphs
    hidden: str
    is_whole: bool
    """False where more is drawn on the page than is looked at."""


def look(page: pypdfium2.PdfPage, text_page: object, glyphs: PageGlyphs) -> Seen:
    """Mark the characters that are not shown, struck through or underlined."""
    total = sum(one.char != " " for found in glyphs.by_angle.values() for one in found)
    if not total or glyphs.unseen * 2 > total:
        return Seen(glyphs, "", is_whole=True)
    frame = Frame(page.raw)
    ink = _Ink(page, text_page, frame)
    drawn = read_objects(page.raw, frame)
    hidden: list[str] = []
    by_angle: dict[int, list[Glyph]] = {}
    last: Glyph | None = None
    for angle, found in glyphs.by_angle.items():
        kept: list[Glyph] = []
        for one in sorted(found, key=lambda one: one.order):
            mark = ink.mark(one)
            if mark == "hidden":
                is_apart = last is None or not -1 <= one.x0 - last.x1 <= _BLANK * one.size
                hidden.append(f" {one.char}" if is_apart else one.char)
                last = one
            else:
                kept.append(one._replace(mark=mark) if mark else one)
        by_angle[angle] = _with_lines(kept, drawn, angle)
    glyphs = glyphs._replace(by_angle=by_angle, unseen=0)
    return Seen(glyphs, "".join(hidden).strip(), drawn.is_whole)


class _Ink:
    """A page as it is drawn, in shades of grey."""

    def __init__(self, page: pypdfium2.PdfPage, text_page: object, frame: Frame) -> None:
        self._text_page, self._frame = text_page, frame
        self._scale = min(_SCALE, math.sqrt(_MOST_PIXELS / max(frame.width * frame.height, 1.0)))
        bitmap = page.render(
            scale=self._scale, grayscale=True, draw_annots=False, may_draw_forms=False
        )
        self._width, self._height = bitmap.width, bitmap.height
        self._stride = bitmap.stride
        self._grey = bytes(bitmap.buffer)
        bitmap.close()

    def mark(self, glyph: Glyph) -> str:
        """`hidden` where the file says so, `text-not-shown` where there is no ink for it."""
        if glyph.char == " ":
            return ""
        piece = pdfium.FPDFText_GetTextObject(self._text_page, glyph.order)
        is_mode = bool(piece) and pdfium.FPDFTextObj_GetTextRenderMode(piece) == _UNSEEN
        if self._shows(glyph):
            return "text-not-shown" if is_mode else ""
        is_off = is_mode or (bool(piece) and _is_on_layer(piece))
        return "hidden" if is_off else "text-not-shown"

    def _shows(self, glyph: Glyph) -> bool:
        left, right, low, high = (ctypes.c_double() for _ in range(4))
        got = pdfium.FPDFText_GetCharBox(self._text_page, glyph.order, left, right, low, high)
        values = (left.value, right.value, low.value, high.value)
        if not got or not all(math.isfinite(one) for one in values):
            return True
        xs, ys = zip(
            self._frame.shown(left.value, low.value),
            self._frame.shown(right.value, high.value),
            strict=True,
        )
        scale = self._scale
        x0, x1 = max(math.floor(min(xs) * scale), 0), math.ceil(max(xs) * scale)
        y0, y1 = max(math.floor(min(ys) * scale) - 1, 0), math.ceil(max(ys) * scale) + 1
        if x1 - x0 < _NARROW:
            # The stem of an `i` fills its box.
            x0, x1 = max(x0 - 1, 0), x1 + 1
        x1, y1 = min(max(x1, x0 + 1), self._width), min(y1, self._height)
        least, most = 255, 0
        for y in range(y0, y1):
            row = self._grey[y * self._stride + x0 : y * self._stride + x1]
            if row:
                least, most = min(least, *row, 255), max(most, *row, 0)
                if most - least >= _LEAST_CONTRAST:
                    return True
        return False


def _is_on_layer(piece: object) -> bool:
    """Whether a text stands on a layer that can be put off."""
    size = ctypes.c_ulong()
    for number in range(min(pdfium.FPDFPageObj_CountMarks(piece), 20)):
        mark = pdfium.FPDFPageObj_GetMark(piece, number)
        name = (pdfium.FPDF_WCHAR * 16)()
        got = pdfium.FPDFPageObjMark_GetName(mark, name, ctypes.sizeof(name), size)
        if got and bytes(name).decode("utf-16-le", "replace").split("\0")[0] == "OC":
            return True
    return False


def _with_lines(glyphs: Sequence[Glyph], drawn: Drawn, angle: int) -> list[Glyph]:
    """The characters, marked where lines cross or underline them, pictures among figures."""
    by_height: dict[int, list[int]] = defaultdict(list)
    bars = drawn.bars(angle)
    for number, bar in enumerate(bars):
        by_height[int(bar.y)].append(number)
    found: list[Glyph] = []
    under: dict[int, list[int]] = defaultdict(list)
    for at, one in enumerate(glyphs):
        found.append(one)
        if one.char == " ":
            continue
        middle = (one.x0 + one.x1) / 2
        heights = range(int(one.base - one.size), int(one.base + one.size) + 1)
        for number in (number for height in heights for number in by_height.get(height, ())):
            bar = bars[number]
            rise = (one.base - bar.y) / one.size
            if not bar.x0 <= middle <= bar.x1:
                continue
            if _STRUCK[0] <= rise <= _STRUCK[1]:
                found[at] = one._replace(mark="text-struck-through")
            elif _UNDER[0] <= rise <= _UNDER[1]:
                under[number].append(at)
    for number, covered in under.items():
        bar, over = bars[number], [found[at] for at in covered]
        room = _END * over[0].size
        is_close = min(one.x0 for one in over) - bar.x0 < room
        is_close = is_close and bar.x1 - max(one.x1 for one in over) < room
        is_figure = any(one.char.isdecimal() for one in over)
        if is_close and is_figure and all(one.char in _FIGURES for one in over):
            for at in covered:
                mark = found[at].mark or "figure-underlined"
                found[at] = found[at]._replace(mark=mark)
    return found + list(_pictures(found, drawn.boxes(angle)))


def _pictures(glyphs: Sequence[Glyph], boxes: Sequence[Box]) -> Iterator[Glyph]:
    """A lost character for each small picture that touches a figure in its row."""
    for x0, x1, top, bottom in boxes:
        for one in glyphs:
            is_level = top < one.base and bottom > one.base - 0.8 * one.size
            if not is_level or bottom - top > _TALL * one.size or not one.char.isdecimal():
                continue
            if min(abs(x0 - one.x1), abs(one.x0 - x1)) < _GAP * one.size:
                yield one._replace(char=LOST, x0=x0, x1=x1)
                break
