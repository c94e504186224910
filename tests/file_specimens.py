"""Small files that show one fault each, for the specimens of the catalogue."""

from __future__ import annotations

import html
import io
from collections.abc import Callable
from email.message import EmailMessage

from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from tests.pdf_pages import HEIGHT, MARGIN, VERA, WIDTH

_SIZE, _LEADING = 9, 12
_PIXEL = (
    b"GIF89a\x01\x00\x01\x00\x80\x00\x00\x00\x00\x00\xff\xff\xff,\x00\x00\x00\x00\x01\x00\x01\x00"
    b"\x00\x02\x02D\x01\x00;"
)

Marked = tuple[int, int]


def file_with(code: str, text: str, marked: Marked | None) -> tuple[bytes, str]:
    """A file of a text that shows the fault of `code` where it is marked, and its name."""
    if code == "attachment-not-read":
        return _mail(text, marked), "notice.eml"
    if code == "alternatives-differ":
        return _alternatives(text, marked), "notice.eml"
    if code.startswith("page-") or code in ("text-character-lost", *_PAINTED):
        return _pdf(code, text, marked), "notice.pdf"
    return _html(code, text, marked), "notice.html"


def picture() -> ImageReader:
    """A picture, as a scanner makes one of a page."""
    return ImageReader(io.BytesIO(_PIXEL))


def _mail(text: str, marked: Marked | None) -> bytes:
    message = EmailMessage()
    start = marked[0] if marked else len(text)
    message.set_content(text[:start].rstrip("\n") + "\n")
    if marked:
        message.add_attachment(_PIXEL, maintype="image", subtype="gif", filename="sketch.gif")
        message.add_attachment(text[start:], filename="more.txt")
    return message.as_bytes()


def _alternatives(text: str, marked: Marked | None) -> bytes:
    message = EmailMessage()
    start, end = marked or (0, 0)
    message.set_content(text[:start] + ("15m" if marked else "") + text[end:])
    message.add_alternative(f"<html><pre>{html.escape(text)}</pre>", subtype="html")
    return message.as_bytes()


def _row(words: str) -> str:
    """A row of three cells, the last two of two lines."""
    cells = words.replace("\t", "<td>").replace("chimney flag", "chimney<br>flag")
    return f"<table><tr><td>{cells.replace('W 46', 'W<br>46')}</table>"


_TAGS: dict[str, Callable[[str], str]] = {
    "cells-not-paired": _row,
    "figure-underlined": lambda words: f"<u>{words}</u>",
    "part-not-read": lambda words: f"<img src=a.png>{words}",
    "figure-in-doubt": lambda words: words.replace("\ufffdx", "<sub>x</sub>"),
    "list-number-left-out": lambda words: f"<ol><li>{words}",
    "text-hidden": lambda words: f'<span style="display:none">old </span>{words}',
    "text-inserted": lambda words: f"<ins>{words}</ins>",
    "text-struck-out": lambda words: f"<s>old </s>{words}",
}


_PAINTED = ("figure-underlined", "text-not-shown", "text-struck-through")


def _paint(canvas: Canvas, code: str, text: str, marked: Marked) -> None:
    """Draw under, over or through what is marked."""
    begin = text.rfind("\n", 0, marked[0]) + 1
    left, right = (MARGIN + 0.6 * _SIZE * (at - begin) for at in marked)
    base = 780 - _LEADING * text.count("\n", 0, begin)
    if code == "text-not-shown":
        canvas.setFillColorRGB(1, 1, 1)
        canvas.rect(left, base - 2, right - left, _SIZE, fill=1, stroke=0)
    else:
        y = base - 2 if code == "figure-underlined" else base + 2.5
        canvas.line(left, y, right, y)


def _html(code: str, text: str, marked: Marked | None) -> bytes:
    if marked is None:
        body = html.escape(text)
    else:
        start, end = marked
        within = _TAGS[code](html.escape(text[start:end]))
        body = html.escape(text[:start]) + within + html.escape(text[end:])
    return f"<!doctype html><html><body><pre>{body}</pre></body></html>".encode()


def _pdf(code: str, text: str, marked: Marked | None) -> bytes:
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT), invariant=True)
    is_lost = code == "text-character-lost"
    mode = 3 if marked and code == "page-text-recognised" else 0
    at = 0
    for row, line in enumerate(text.rstrip("\n").split("\n")):
        if marked and code == "page-without-text" and at == marked[0]:
            canvas.showPage()
            canvas.drawImage(picture(), 0, 0, 400, 600)
            canvas.showPage()
        at += len(line) + 1
        words = canvas.beginText(MARGIN, 780 - _LEADING * row)
        words.setFont(VERA if is_lost else "Courier", _SIZE)
        words.setTextRenderMode(mode)
        # Vera holds no small figures, and draws a box for each.
        words.textOut(line.replace("\ufffd", "₆"))
        if marked and code == "page-text-turned" and row == text.count("\n"):
            canvas.rotate(90)
            canvas.translate(300, -1000)
        canvas.drawText(words)
    if marked and code in _PAINTED:
        _paint(canvas, code, text, marked)
    if marked and code == "page-annotated":
        canvas.textAnnotation("8.6 m, not 4 m", Rect=(40, 700, 200, 720))
    canvas.save()
    return made.getvalue()
