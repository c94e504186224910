"""Drawings as one PDF file, a page for each; needs the extra `sheet` (reportlab)."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO

from reportlab.lib.colors import HexColor
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from noticeparse.caution import CAUTION
from noticeparse.worksheet.drawing import Drawing, Group, Item, Path, Pen, Ring, Words
from noticeparse.worksheet.fonts import BOLD, REGULAR, register, showable


def write_plot_pdf(drawings: Sequence[Drawing]) -> bytes:
    """The document; each page has the size of its drawing."""
    register()
    stream = BytesIO()
    canvas = Canvas(stream, invariant=1, lang="en")
    canvas.setTitle("; ".join(one.title for one in drawings))
    canvas.setAuthor("noticeparse")
    canvas.setSubject(CAUTION)
    # Viewers that heed it print at 100 per cent.
    canvas.setViewerPreference("PrintScaling", "None")
    for drawing in drawings:
        canvas.setPageSize((drawing.width_mm * mm, drawing.height_mm * mm))
        draw_on(canvas, drawing)
        canvas.showPage()
    canvas.save()
    return stream.getvalue()


def draw_on(canvas: Canvas, drawing: Drawing) -> None:
    """Draw on the open page."""
    frame = drawing.frame
    canvas.saveState()
    clip = canvas.beginPath()
    clip.rect(frame.left * mm, frame.bottom * mm, frame.width * mm, frame.height * mm)
    canvas.clipPath(clip, stroke=0, fill=0)
    for item in (*drawing.within, *(item for group in drawing.groups for item in group.items)):
        _item(canvas, item)
    canvas.restoreState()
    for item in drawing.around:
        _item(canvas, item)
    for group in drawing.labels:
        _label(canvas, group)


def _label(canvas: Canvas, group: Group) -> None:
    for item in group.items:
        _item(canvas, item)
    if group.target:
        left, bottom, width, height = group.box
        box = (left * mm, bottom * mm, (left + width) * mm, (bottom + height) * mm)
        canvas.linkURL(group.target, box, relative=1)


def _item(canvas: Canvas, item: Item) -> None:
    if isinstance(item, Words):
        _words(canvas, item)
        return
    _take(canvas, item.pen)
    if item.fill:
        canvas.setFillColor(HexColor(item.fill))
    is_filled = int(item.fill is not None)
    if isinstance(item, Ring):
        x, y = item.centre
        canvas.circle(x * mm, y * mm, item.radius_mm * mm, stroke=1, fill=is_filled)
        return
    canvas.drawPath(_path(canvas, item), stroke=1, fill=is_filled)


def _path(canvas: Canvas, item: Path):  # type: ignore[no-untyped-def]
    path = canvas.beginPath()
    for number, (x, y) in enumerate(item.points):
        if number:
            path.lineTo(x * mm, y * mm)
        else:
            path.moveTo(x * mm, y * mm)
    if item.is_closed:
        path.close()
    return path


def _take(canvas: Canvas, pen: Pen) -> None:
    canvas.setLineWidth(pen.width_mm * mm)
    canvas.setStrokeColor(HexColor(pen.colour))
    canvas.setDash([one * mm for one in pen.dash_mm])


def _words(canvas: Canvas, item: Words) -> None:
    canvas.setFont(BOLD if item.is_bold else REGULAR, item.size_mm * mm)
    canvas.setFillColor(HexColor(item.colour))
    x, y = item.at[0] * mm, item.at[1] * mm
    draw = {
        "start": canvas.drawString,
        "middle": canvas.drawCentredString,
        "end": canvas.drawRightString,
    }[item.anchor]
    draw(x, y, showable(item.words))
