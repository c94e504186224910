"""Notices as they are printed on pages, and what is read of them."""

from __future__ import annotations

import io
import random
from collections.abc import Sequence
from typing import Any

from reportlab.pdfgen.canvas import Canvas

from noticeparse.intake import Intake
from noticeparse.records import Bulletin
from tests.pdf_pages import HEIGHT, MARGIN, WIDTH, draw, plain

HEAD = "TAVRENNE ISLANDS NOTICES TO MARINERS (invented, not for navigation)"


def bulletin(notices: int, seed: int = 1) -> list[str]:
    """Lines of a bulletin with depths in small figures."""
    dice = random.Random(seed)

    def place() -> str:
        south, west = (f"{dice.randint(0, 59):02}'.{dice.randint(0, 99):02}" for _ in "ab")
        return f"47°{south}S., 123°{west}W."

    def depth() -> str:
        return f"{dice.randint(3, 30)}‹{dice.randint(1, 9)}›"

    lines: list[str] = []
    for number in range(notices):
        lines += [
            f"{2417 + number}/26 TAVRENNE ISLANDS - Quill Sound - Wreck. Buoyage.",
            "Source: Port Ellory Harbour Master",
            f"Chart {802 + number % 5} [{2310 + number}/26] WGS84",
            f"Insert dangerous wreck, least depth {depth()} m {place()}",
            f"Delete depth {depth()} {place()}",
            f"Move port-hand light-buoy, Fl.R.4s, from {place()} to {place()}",
            f"Amend light to Fl(3)WRG.15s21m15-11M {place()}",
            f"Insert submarine cable, joining {place()} {place()} {place()}",
            "",
        ]
    return lines


def facts(read_in: Bulletin) -> list[tuple[Any, ...]]:
    """What the actions of a bulletin say."""
    return [
        (
            notice.id,
            section.chart,
            section.previous,
            action.verb,
            action.feature.kind,
            action.feature.depth and action.feature.depth.value_m,
            action.feature.light and action.feature.light.written,
            [one.iso6709 for one in action.geometry.positions],
            action.usable,
        )
        for notice in read_in.notices
        for section in notice.charts
        for action in section.actions
    ]


def told(intake: Intake) -> list[str]:
    return [one.code for one in intake.doubts]


def body_lines(intake: Intake) -> list[str]:
    """The lines without page heads and feet, blanks as one, blank lines left out."""
    text = intake.text
    for start, end in reversed(intake.furniture):
        text = text[:start] + text[end:]
    return [" ".join(line.split()) for line in text.split("\n") if line.strip()]


def expected(lines: Sequence[str]) -> list[str]:
    return [" ".join(plain(line).split()) for line in lines if line.strip()]


def page(*strings: tuple[float, float, str], font: str = "Helvetica", size: float = 9) -> bytes:
    """A page with strings at their places, points from the lower left corner."""
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT), invariant=True)
    for x, y, words in strings:
        draw(canvas, x, y, words, font, size)
    canvas.save()
    return made.getvalue()


def drawn(paint: Any) -> bytes:
    """A file of what `paint` draws on a canvas."""
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT), invariant=True)
    paint(canvas)
    canvas.save()
    return made.getvalue()


NOTICE = ("2417/26 TAVRENNE ISLANDS - Quill Sound - Wreck.", "Chart 802 [2310/26] WGS84")
ROWS = [
    ("Insert", "dangerous wreck, least depth 8‹6› m", "47°13'.05S., 123°44'.20W."),
    ("Delete", "depth 12‹4›", "47°13'.02S., 123°44'.31W."),
    ("Insert", "submarine cable, joining", "47°20'.15S., 123°30'.50W."),
    ("", "", "47°20'.62S., 123°31'.74W."),
    ("Amend", "range of light to 11M", "47°20'.07S., 123°30'.11W."),
    ("Delete", "obstruction, least depth 4‹3› m", "47°20'.44S., 123°31'.02W."),
]


def table(canvas: Canvas, top: float, *, by_column: bool = False, x: float = MARGIN) -> float:
    """Draw `ROWS` as a table of three columns; where it ends."""
    cells = [
        (x + left, top - 12 * row, words)
        for row, line in enumerate(ROWS)
        for left, words in zip((0, 60, 330), line, strict=True)
        if words
    ]
    for left, y, words in sorted(cells, key=lambda one: one[0]) if by_column else cells:
        draw(canvas, left, y, words, "Helvetica", 9)
    return top - 12 * len(ROWS)


def head(canvas: Canvas, top: float) -> float:
    for row, words in enumerate(NOTICE):
        draw(canvas, MARGIN, top - 12 * row, words, "Helvetica", 9)
    return top - 12 * len(NOTICE)


def table_text() -> str:
    return "\n".join(NOTICE) + "\n" + "\n".join("   ".join(map(plain, row)) for row in ROWS)


def item(words: str) -> bytes:
    """A page of one notice with one action line."""
    lines = [*NOTICE, words]
    return page(*((MARGIN, 780 - 12.0 * row, line) for row, line in enumerate(lines)))
