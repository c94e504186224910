"""What stands between the white stretches of a page: columns of text, or the cells of a table.

The contents tell: words alone beside positions alone are one table, words and positions on both
sides two columns.  What cannot be told is said so, and never chosen.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from statistics import median

from noticeparse.intake.pdf.glyphs import Glyph
from noticeparse.intake.pdf.rows import read_rows

_LATITUDE = re.compile(r"[0-9][0-9°'′.,\"″ -]{1,14}[NS]\b")
_LONGITUDE = re.compile(r"[0-9][0-9°'′.,\"″ -]{1,15}[EW]\b")
_BESIDE_POSITIONS = re.compile(r"\([a-z]{1,2}\)|\b(?:and|from|to)\b|[\s.,;:()-]")


class Strip:
    """What stands between two gutters."""

    def __init__(self, glyphs: Sequence[Glyph]) -> None:
        self.glyphs = glyphs
        self.rows = read_rows(glyphs) if any(one.char != " " for one in glyphs) else []
        texts = [row.text.strip() for row in self.rows]
        count = max(len(texts), 1)
        placed = [has_place(one) for one in texts]
        bare = [is_bare(one) for one in texts]
        words = [len(one.split()) for one in texts] or [0]
        self.has_places = sum(placed) >= 0.1 * count
        self.is_places = sum(bare) >= 0.75 * count
        short = sum(n <= 2 and len(one) <= 14 for n, one in zip(words, texts, strict=False))
        self.is_cells = not self.is_places and short >= 0.8 * count
        self.is_prose = median(words) >= 4
        self.axis = _axis(texts)

    def is_drawn_before(self, other: Strip) -> bool:
        """Whether the file draws this strip whole before the other one."""
        mine = [one.order for one in self.glyphs]
        return max(mine) < min(one.order for one in other.glyphs)


def has_place(text: str) -> bool:
    """Whether a latitude or a longitude stands on a row."""
    return bool(_LATITUDE.search(text) or _LONGITUDE.search(text))


def is_bare(text: str) -> bool:
    """Whether a row is positions and nothing else."""
    rest = _LONGITUDE.sub("", _LATITUDE.sub("", text))
    return rest != text and len(_BESIDE_POSITIONS.sub("", rest)) <= 2


def _axis(texts: Sequence[str]) -> str:
    north = sum(bool(_LATITUDE.search(one)) for one in texts)
    east = sum(bool(_LONGITUDE.search(one)) for one in texts)
    if north > 4 * east:
        return "latitude"
    return "longitude" if east > 4 * north else "both"


class Group:
    """Strips that make one column: the cells of its table, or one strip of text."""

    def __init__(self) -> None:
        self.has_words = False
        self.has_places = False
        self.axis = ""

    def add(self, strip: Strip) -> None:
        """Take a strip in."""
        self.has_words = self.has_words or not (strip.is_places or strip.is_cells)
        self.has_places = self.has_places or strip.has_places
        is_second = self.axis == "latitude" and strip.axis == "longitude"
        self.axis = ("both" if is_second else strip.axis) if strip.is_places else ""

    def ends_before(self, strip: Strip, before: Strip) -> bool | None:
        """Whether the next strip is another column; None where that cannot be told."""
        in_order = before.is_drawn_before(strip)
        if strip.is_places and before.axis == "latitude" and strip.axis == "longitude":
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
