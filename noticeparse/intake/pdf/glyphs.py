"""The characters of a page as they are drawn: what, where, how large, in which direction.

Blanks are kept, since they part words; what the library puts in by itself is not.
"""

from __future__ import annotations

import ctypes
import math
from typing import NamedTuple

import pypdfium2.raw as pdfium

from noticeparse.intake.records import NotReadable

MOST_ON_PAGE = 200_000
_TURNED_180, _ALL_ROUND = 2, 4
_TOUCHING, _NEAR, _CELL = 0.25, 0.6, 4.0
LOST = "\ufffd"
_UNSEEN = 3
_LAST_CONTROL = 0x20
# What old symbol fonts give for themselves, from the area of Unicode that has no meaning.
_SYMBOLS = {
    "\uf0b7": "•", "\uf0b0": "°", "\uf0a2": "′", "\uf0b2": "″", "\uf02d": "-", "\uf020": " ",
}  # fmt: skip


class Glyph(NamedTuple):
    """A character in reading coordinates, points: x along its line, y down the page."""

    char: str
    x0: float
    x1: float
    base: float
    """Where its base line is."""
    size: float
    order: int
    """Its number in the file."""
    page_x: float
    """Where it stands on the page as it is shown, from the upper left corner."""
    page_y: float
    line: float
    """The base line of what it stands beside: that of its line, for a low or raised figure."""
    mark: str = ""
    """The code of what is to be said of it."""

    @property
    def middle(self) -> float:
        """The height of the middle of its line."""
        return self.line - 0.3 * self.size


class PageGlyphs(NamedTuple):
    """The characters of one page by the direction in which they read, degrees clockwise."""

    width: float
    height: float
    by_angle: dict[int, list[Glyph]]
    unseen: int
    """How many are drawn without being shown, as behind the picture of a scan."""
    outside: str
    """What stands off the page."""


class Frame:
    """From the coordinates of the file to those of the page as it is shown, y downward."""

    def __init__(self, page: object) -> None:
        box = pdfium.FS_RECTF()
        if not pdfium.FPDF_GetPageBoundingBox(page, box):
            raise NotReadable("cannot be read: a page of the file is damaged")
        self._left, self._right = sorted((box.left, box.right))
        self._bottom, self._top = sorted((box.bottom, box.top))
        self.turns = pdfium.FPDFPage_GetRotation(page) % _ALL_ROUND
        size = (self._right - self._left, self._top - self._bottom)
        self.width, self.height = size if self.turns % 2 == 0 else size[::-1]

    def shown(self, x: float, y: float) -> tuple[float, float]:
        """A point of the file on the page as shown, from its upper left corner."""
        if self.turns == 0:
            return x - self._left, self._top - y
        if self.turns == 1:
            return y - self._bottom, x - self._left
        if self.turns == _TURNED_180:
            return self._right - x, y - self._bottom
        return self._top - y, self._right - x

    def direction(self, a: float, b: float) -> float:
        """The direction of a vector of the file on the page as shown, radians clockwise."""
        x0, y0 = self.shown(0, 0)
        x1, y1 = self.shown(a, b)
        return math.atan2(y1 - y0, x1 - x0)


def read_at(angle: float, x: float, y: float) -> tuple[float, float]:
    """A point of the page in the coordinates of what reads at an angle, radians clockwise."""
    along, across = math.cos(angle), math.sin(angle)
    return x * along + y * across, y * along - x * across


def read_glyphs(page: object, text_page: object) -> PageGlyphs:
    """The characters of a page.

    Raises NotReadable where there are more than any page holds.
    """
    count = pdfium.FPDFText_CountChars(text_page)
    if count > MOST_ON_PAGE:
        raise NotReadable(f"a page holds more than {MOST_ON_PAGE} characters; take it apart first")
    frame = Frame(page)
    by_angle: dict[int, list[Glyph]] = {}
    angles: dict[tuple[float, float], float] = {}
    outside: list[str] = []
    unseen = 0
    x, y = ctypes.c_double(), ctypes.c_double()
    matrix, box = pdfium.FS_MATRIX(), pdfium.FS_RECTF()
    for index in range(count):
        if pdfium.FPDFText_IsGenerated(text_page, index) == 1:
            continue
        char = _char(text_page, index)
        pdfium.FPDFText_GetCharOrigin(text_page, index, x, y)
        pdfium.FPDFText_GetMatrix(text_page, index, matrix)
        pdfium.FPDFText_GetLooseCharBox(text_page, index, box)
        size = pdfium.FPDFText_GetFontSize(text_page, index) * math.hypot(matrix.c, matrix.d)
        if not 0 < size < 1e4 or not math.isfinite(x.value + y.value + box.left + box.right):
            continue
        direction = matrix.a, matrix.b
        if direction not in angles:
            angles[direction] = frame.direction(*direction)
        angle = angles[direction]
        glyph = _glyph(frame, char, angle, (x.value, y.value), box, size=size, order=index)
        if not (0 <= glyph.page_x <= frame.width and -size <= glyph.page_y <= frame.height):
            outside.append(char)
            continue
        if char != " " and _is_unseen(text_page, index):
            unseen += 1
        by_angle.setdefault(round(math.degrees(angle)) % 360, []).append(glyph)
    by_angle = {angle: _on_lines(found) for angle, found in by_angle.items()}
    return PageGlyphs(frame.width, frame.height, by_angle, unseen, "".join(outside).strip())


def _char(text_page: object, index: int) -> str:
    code = pdfium.FPDFText_GetUnicode(text_page, index)
    if pdfium.FPDFText_IsHyphen(text_page, index) == 1 or code in (0xFFFE, 0x02):
        return "-"
    char = chr(code) if code <= 0x10FFFF else LOST
    if char in _SYMBOLS:
        return _SYMBOLS[char]
    if char.isspace():
        return " "
    is_lost = code < _LAST_CONTROL or 0xE000 <= code <= 0xF8FF or 0xD800 <= code <= 0xDFFF
    if is_lost or pdfium.FPDFText_HasUnicodeMapError(text_page, index) == 1:
        return LOST
    return char


def _is_unseen(text_page: object, index: int) -> bool:
    piece = pdfium.FPDFText_GetTextObject(text_page, index)
    return bool(piece) and pdfium.FPDFTextObj_GetTextRenderMode(piece) == _UNSEEN


def _glyph(
    frame: Frame,
    char: str,
    angle: float,
    origin: tuple[float, float],
    box: pdfium.FS_RECTF,
    *,
    size: float,
    order: int,
) -> Glyph:
    if angle == 0:
        page_x, base = frame.shown(*origin)
        x1 = max(frame.shown(box.left, box.bottom)[0], frame.shown(box.right, box.top)[0])
        top = base - size
        return Glyph(char, page_x, max(x1, page_x), base, size, order, page_x, top, base)
    along, across = math.cos(angle), math.sin(angle)
    page_x, page_y = frame.shown(*origin)
    x0, base = read_at(angle, page_x, page_y)
    corners = ((box.left, box.bottom), (box.right, box.top))
    x1 = max(read_at(angle, *frame.shown(*corner))[0] for corner in corners)
    if abs(along * across) > 1e-3:
        # The box stands square to the page, and says little of a slanted character.
        x1 = x0 + 0.5 * size
    top_x, top_y = page_x + size * across, page_y - size * along
    return Glyph(char, x0, max(x1, x0), base, size, order, top_x, top_y, base)


def _on_lines(glyphs: list[Glyph]) -> list[Glyph]:
    """The characters, each on the line of the one that it touches on its left."""
    found = sorted(glyphs, key=lambda one: (one.x0, one.order))
    by_end: dict[tuple[int, int], list[Glyph]] = {}
    placed: list[Glyph] = []
    for glyph in found:
        reach, high = _TOUCHING * glyph.size, _NEAR * glyph.size
        columns = range(int(glyph.x0 - reach), int(glyph.x0 + min(reach, 50)) + 1)
        rows = range(int((glyph.base - high) / _CELL), int((glyph.base + high) / _CELL) + 1)
        near = [
            one
            for column in columns
            for row in rows
            for one in by_end.get((column, row), ())
            if _touches(one, glyph, reach)
        ]
        if near:
            # The nearest in height, and of these the nearest along the line.
            beside = min(near, key=lambda one: (abs(one.base - glyph.base), glyph.x0 - one.x1))
            glyph = glyph._replace(line=beside.line)
        placed.append(glyph)
        by_end.setdefault((int(glyph.x1), int(glyph.base / _CELL)), []).append(glyph)
    return placed


def _touches(before: Glyph, glyph: Glyph, reach: float) -> bool:
    if abs(before.x1 - glyph.x0) > reach or before.x0 >= glyph.x0:
        return False
    if abs(before.base - glyph.base) < 0.01 * glyph.size:
        return True
    is_near = abs(before.base - glyph.base) < _NEAR * max(before.size, glyph.size)
    return is_near and before.size >= 0.95 * glyph.size and glyph.char != " "
