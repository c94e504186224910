"""The typeface of the PDF files, which is shipped with the program, and what it cannot show.

Noto Sans in two weights, cut down to Latin, Greek, Cyrillic, the signs of positions and figures
above and below the line (SIL Open Font License 1.1, `fonts/LICENSE`).  A character that it lacks
is written as its code point, so that nothing vanishes in silence.
"""

from __future__ import annotations

from functools import cache
from io import BytesIO

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from noticeparse.packaged import packaged
from noticeparse.writers.quoting import visible

REGULAR = "NoticeparseSans"
BOLD = "NoticeparseSans-Bold"
_FILES = {REGULAR: "NotoSans-Regular.ttf", BOLD: "NotoSans-Bold.ttf"}


@cache
def register() -> frozenset[int]:
    """Make both weights known to reportlab; the code points that both can show."""
    shown: set[int] | None = None
    for name, file in _FILES.items():
        font = TTFont(name, BytesIO(packaged(__package__, f"fonts/{file}")))
        pdfmetrics.registerFont(font)
        own = set(font.face.charToGlyph)
        shown = own if shown is None else shown & own
    pdfmetrics.registerFontFamily(
        REGULAR, normal=REGULAR, bold=BOLD, italic=REGULAR, boldItalic=BOLD
    )
    return frozenset(shown or ())


def showable(words: str) -> str:
    """Words on one line, with `[U+2693]` for a character that the typeface lacks."""
    shown = register()
    return "".join(one if ord(one) in shown else f"[U+{ord(one):04X}]" for one in visible(words))


def width_mm(words: str, size_mm: float, *, is_bold: bool = False) -> float:
    """How wide showable words are."""
    register()
    return float(pdfmetrics.stringWidth(words, BOLD if is_bold else REGULAR, size_mm))
