"""Drawings as one SVG file, its unit the millimetre; several stand one below the other.

No script and no style from elsewhere; coordinates to a tenth of a micrometre.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape

from noticeparse.caution import CAUTION
from noticeparse.worksheet.drawing import Drawing, Group, Item, Path, Pen, Point, Ring, Words
from noticeparse.writers.quoting import visible

_GAP_MM = 10.0


def write_svg(drawings: Sequence[Drawing]) -> Iterator[str]:
    """The document, piece by piece."""
    width = max(one.width_mm for one in drawings)
    height = sum(one.height_mm for one in drawings) + _GAP_MM * (len(drawings) - 1)
    title = _text("; ".join(one.title for one in drawings))
    yield (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{_mm(width)}mm" height="{_mm(height)}mm" '
        f'viewBox="0 0 {_mm(width)} {_mm(height)}" font-family="Noto Sans, DejaVu Sans, '
        'sans-serif" fill="none">\n'
        f"<title>{title}</title>\n<desc>{_text(CAUTION)}</desc>\n"
        f'<rect width="{_mm(width)}" height="{_mm(height)}" fill="#ffffff"/>\n'
    )
    top = 0.0
    for number, drawing in enumerate(drawings, 1):
        yield f'<g id="plot-{number}" transform="translate(0 {_mm(top)})">\n'
        yield from (f"{piece}\n" for piece in _Page(drawing, number).pieces())
        yield "</g>\n"
        top += drawing.height_mm + _GAP_MM
    yield "</svg>\n"


def _text(words: str) -> str:
    return escape(visible(words))


def _mm(figure: float) -> str:
    written = f"{figure:.4f}".rstrip("0").rstrip(".")
    return "0" if written == "-0" else written


class _Page:
    """One drawing, turned over: in SVG y goes down."""

    def __init__(self, drawing: Drawing, number: int) -> None:
        self._drawing = drawing
        self._number = number

    def pieces(self) -> Iterator[str]:
        drawing, frame = self._drawing, self._drawing.frame
        x, y = self._at((frame.left, frame.bottom + frame.height))
        clip = f"frame-{self._number}"
        yield (
            f'<clipPath id="{clip}"><rect x="{x}" y="{y}" width="{_mm(frame.width)}" '
            f'height="{_mm(frame.height)}"/></clipPath>'
        )
        yield f'<g clip-path="url(#{clip})">'
        yield from map(self._item, drawing.within)
        for group in drawing.groups:
            yield from self._group(group)
        yield "</g>"
        yield from map(self._item, drawing.around)
        for group in drawing.labels:
            yield from self._group(group)

    def _group(self, group: Group) -> Iterator[str]:
        yield f'<g id="plot-{self._number}-{group.key}"><title>{_text(group.title)}</title>'
        if group.target:
            yield f'<a href="{escape(group.target)}">'
        yield from map(self._item, group.items)
        if group.target:
            yield "</a>"
        yield "</g>"

    def _at(self, point: Point) -> tuple[str, str]:
        return _mm(point[0]), _mm(self._drawing.height_mm - point[1])

    def _item(self, item: Item) -> str:
        if isinstance(item, Words):
            return self._words(item)
        if isinstance(item, Ring):
            x, y = self._at(item.centre)
            return f'<circle cx="{x}" cy="{y}" r="{_mm(item.radius_mm)}"{_pen(item)}/>'
        points = " L".join(" ".join(self._at(point)) for point in item.points)
        end = " Z" if item.is_closed else ""
        return f'<path d="M{points}{end}"{_pen(item)}/>'

    def _words(self, item: Words) -> str:
        x, y = self._at(item.at)
        weight = ' font-weight="700"' if item.is_bold else ""
        anchor = "" if item.anchor == "start" else f' text-anchor="{item.anchor}"'
        return (
            f'<text x="{x}" y="{y}" font-size="{_mm(item.size_mm)}" fill="{item.colour}"'
            f"{anchor}{weight}>{_text(item.words)}</text>"
        )


def _pen(item: Path | Ring) -> str:
    pen: Pen = item.pen
    dash = " ".join(map(_mm, pen.dash_mm))
    dashed = f' stroke-dasharray="{dash}"' if dash else ""
    fill = f' fill="{item.fill}"' if item.fill else ""
    return f' stroke="{pen.colour}" stroke-width="{_mm(pen.width_mm)}"{dashed}{fill}'
