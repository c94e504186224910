"""Pages for the tests: a bulletin set in columns, drawn in several orders and fonts.

A page is a list of columns, a column a list of lines.  `‹6›` is a small low figure, `^o^` a small
raised one.
"""

from __future__ import annotations

import io
import random
import re
from collections.abc import Iterator, Sequence
from typing import Literal, NamedTuple

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

WIDTH, HEIGHT = 595.0, 842.0
MARGIN = 40.0
VERA = "Vera"
pdfmetrics.registerFont(TTFont(VERA, "Vera.ttf"))

Order = Literal["columns", "rows", "shuffled"]
_PIECE = re.compile(r"‹([^›]*)›|\^([^^]*)\^")


class Setting(NamedTuple):
    """How pages are set."""

    font: str = "Helvetica"
    size: float = 8.0
    columns: int = 1
    gutter: float = 18.0
    order: Order = "columns"
    leading: float = 1.25
    is_justified: bool = False


class _Word(NamedTuple):
    x: float
    y: float
    text: str


def plain(line: str) -> str:
    """A line as the text that is expected of it."""
    small = str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")

    def read(match: re.Match[str]) -> str:
        if match[1] is not None:
            return match[1].translate(small)
        return "°" if match[2] in ("o", "0") else match[2]

    return _PIECE.sub(read, line)


def draw(canvas: Canvas, x: float, y: float, text: str, font: str, size: float) -> float:
    """Draw a stretch with its small figures; where it ends."""
    at = 0
    for match in [*_PIECE.finditer(text), None]:
        piece = text[at : match.start() if match else len(text)]
        if piece:
            canvas.setFont(font, size)
            canvas.drawString(x, y, piece)
            x += pdfmetrics.stringWidth(piece, font, size)
        if match:
            small = match[1] if match[1] is not None else match[2]
            shift = -0.15 * size if match[1] is not None else 0.33 * size
            canvas.setFont(font, 0.65 * size)
            canvas.drawString(x, y + shift, small)
            x += pdfmetrics.stringWidth(small, font, 0.65 * size)
            at = match.end()
    return x


def width_of(text: str, font: str, size: float) -> float:
    """The width of a stretch with its small figures."""
    total, at = 0.0, 0
    for match in _PIECE.finditer(text):
        total += pdfmetrics.stringWidth(text[at : match.start()], font, size)
        small = match[1] if match[1] is not None else match[2]
        total += pdfmetrics.stringWidth(small, font, 0.65 * size)
        at = match.end()
    return total + pdfmetrics.stringWidth(text[at:], font, size)


def column_width(setting: Setting) -> float:
    """The width of one column."""
    return (WIDTH - 2 * MARGIN - (setting.columns - 1) * setting.gutter) / setting.columns


def wrapped(lines: Sequence[str], setting: Setting) -> list[str]:
    """The lines cut to the width of a column, what goes on set in by two blanks."""
    room = column_width(setting)
    found: list[str] = []
    for line in lines:
        words = line.split(" ")
        current = words[0]
        for word in words[1:]:
            longer = f"{current} {word}"
            if width_of(longer, setting.font, setting.size) <= room:
                current = longer
            else:
                found.append(current)
                current = f"  {word}"
        found.append(current)
    return found


def place_lines(
    lines: Sequence[str], x: float, top: float, setting: Setting
) -> Iterator[list[_Word]]:
    """The words of each line with their places."""
    blank = pdfmetrics.stringWidth(" ", setting.font, setting.size)
    for row, line in enumerate(lines):
        y = top - row * setting.leading * setting.size
        indent = len(line) - len(line.lstrip(" "))
        pieces = line.strip().split(" ")
        room = column_width(setting) - indent * blank
        used = sum(width_of(one, setting.font, setting.size) for one in pieces)
        goes_on = row + 1 < len(lines) and lines[row + 1].startswith("  ")
        gap = blank
        if setting.is_justified and goes_on and len(pieces) > 1:
            gap = (room - used) / (len(pieces) - 1)
        at, words = x + indent * blank, []
        for one in pieces:
            words.append(_Word(at, y, one))
            at += width_of(one, setting.font, setting.size) + gap
        yield words


def set_columns(
    canvas: Canvas, columns: Sequence[Sequence[str]], setting: Setting, *, top: float = 780.0
) -> None:
    """Draw columns beside each other, word by word, in the order of the setting."""
    step = column_width(setting) + setting.gutter
    placed = [
        list(place_lines(lines, MARGIN + number * step, top, setting))
        for number, lines in enumerate(columns)
    ]
    words: list[_Word] = []
    if setting.order == "rows":
        for row in range(max(map(len, placed))):
            words += [one for column in placed if row < len(column) for one in column[row]]
    else:
        words = [one for column in placed for line in column for one in line]
    if setting.order == "shuffled":
        random.Random(7).shuffle(words)
    for word in words:
        if word.text:
            draw(canvas, word.x, word.y, word.text, setting.font, setting.size)


def pages_of(lines: Sequence[str], setting: Setting) -> list[list[list[str]]]:
    """The lines by page and column."""
    rows = int(730 / (setting.leading * setting.size))
    columns = [list(lines[at : at + rows]) for at in range(0, len(lines), rows)]
    count = setting.columns
    return [columns[at : at + count] for at in range(0, len(columns), count)]


def document(lines: Sequence[str], setting: Setting, *, head: str = "", foot: str = "") -> bytes:
    """A PDF file of the lines, each page with a head and a foot that may name `{page}`."""
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT), invariant=True)
    for number, columns in enumerate(pages_of(lines, setting), 1):
        if head:
            draw(canvas, MARGIN, HEIGHT - 25, head.format(page=number), setting.font, 7)
        set_columns(canvas, columns, setting)
        if foot:
            draw(canvas, WIDTH / 2 - 10, 22, foot.format(page=number), setting.font, 7)
        canvas.showPage()
    canvas.save()
    return made.getvalue()
