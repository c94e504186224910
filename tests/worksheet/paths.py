"""The straight lines of a plot as they stand in its file, in millimetres from the lower left."""

from __future__ import annotations

import ctypes
import re
from typing import NamedTuple
from xml.etree import ElementTree

import pypdfium2
import pypdfium2.raw as raw

Point = tuple[float, float]
MM = 25.4 / 72
_SVG = "{http://www.w3.org/2000/svg}"


class Lines(NamedTuple):
    """The paths of a page, each as its corners."""

    width_mm: float
    height_mm: float
    paths: list[list[Point]]
    closed: list[list[Point]]

    def frame(self) -> tuple[Point, Point]:
        """Two corners of the largest rectangle: lower left and upper right."""
        largest = max(self.closed, key=_area)
        xs, ys = [x for x, _ in largest], [y for _, y in largest]
        return (min(xs), min(ys)), (max(xs), max(ys))

    def crosses(self, side: float = 10) -> list[Point]:
        """Where two lines of this length, one level and one upright, cross in their middles."""
        level, upright = [], []
        for path in self.paths:
            if len(path) == 2:
                (x0, y0), (x1, y1) = path
                middle = (x0 + x1) / 2, (y0 + y1) / 2
                if abs(abs(x1 - x0) - side) < 0.01 and abs(y1 - y0) < 0.001:
                    level.append(middle)
                if abs(abs(y1 - y0) - side) < 0.01 and abs(x1 - x0) < 0.001:
                    upright.append(middle)
        return [one for one in level if any(_is_near(one, other) for other in upright)]


def _area(points: list[Point]) -> float:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return (max(xs) - min(xs)) * (max(ys) - min(ys))


def _is_near(one: Point, other: Point) -> bool:
    return abs(one[0] - other[0]) < 0.002 and abs(one[1] - other[1]) < 0.002


def svg_pages(document: str) -> list[Lines]:
    """The plots of an SVG file."""
    root = ElementTree.fromstring(document)
    width, height = (float(root.attrib[one].removesuffix("mm")) for one in ("width", "height"))
    assert [float(one) for one in root.attrib["viewBox"].split()] == [0, 0, width, height]
    pages = []
    groups = [one for one in root if one.tag == f"{_SVG}g"]
    tops = [float(one.attrib["transform"].split()[-1].rstrip(")")) for one in groups]
    for number, (group, top) in enumerate(zip(groups, tops, strict=True)):
        end = tops[number + 1] - 10 if number + 1 < len(tops) else height
        pages.append(_svg_lines(group, width, end - top))
    return pages


def _svg_lines(group: ElementTree.Element, width: float, height: float) -> Lines:
    lines = Lines(width, height, [], [])
    for path in group.iter(f"{_SVG}path"):
        written = path.attrib["d"]
        found = re.findall(r"[ML]([-0-9.]+) ([-0-9.]+)", written)
        points = [(float(x), height - float(y)) for x, y in found]
        (lines.closed if written.endswith("Z") else lines.paths).append(points)
    return lines


def pdf_pages(document: bytes) -> list[Lines]:
    """The plots of a PDF file."""
    return [_pdf_lines(page) for page in pypdfium2.PdfDocument(document)]


def _pdf_lines(page: pypdfium2.PdfPage) -> Lines:
    width, height = page.get_size()
    lines = Lines(width * MM, height * MM, [], [])
    for one in page.get_objects(filter=[raw.FPDF_PAGEOBJ_PATH]):
        matrix = one.get_matrix()
        points, is_closed, is_straight = [], False, True
        for number in range(raw.FPDFPath_CountSegments(one.raw)):
            segment = raw.FPDFPath_GetPathSegment(one.raw, number)
            x, y = ctypes.c_float(), ctypes.c_float()
            raw.FPDFPathSegment_GetPoint(segment, x, y)
            is_straight &= raw.FPDFPathSegment_GetType(segment) != raw.FPDF_SEGMENT_BEZIERTO
            is_closed |= bool(raw.FPDFPathSegment_GetClose(segment))
            x_pt, y_pt = matrix.on_point(x.value, y.value)
            points.append((x_pt * MM, y_pt * MM))
        if is_straight:
            (lines.closed if is_closed else lines.paths).append(points)
    return lines
