"""The plot of a chart at its own scale, to be laid over it: one drawing for each frame.

A page has the size of the frame in millimetres, with a margin for the labels of the graticule and
a strip below that says what is not drawn, and why.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.chart_math import size_mm
from noticeparse.sheets import ListedSheet
from noticeparse.worksheet.drawing import Box, Drawing, Group, Item, Path, Pen, Point, Words
from noticeparse.worksheet.graticule import graticule
from noticeparse.worksheet.labels import find_spots, shortened
from noticeparse.worksheet.model import ChartSheet, all_frames
from noticeparse.worksheet.shapes import Drawn, Spread, spread
from noticeparse.worksheet.strip import STRIP_MM, controls, strip
from noticeparse.worksheet.symbols import (
    COLOUR,
    LINES,
    RING_MM,
    SIGN_MM,
    THIN,
    cross_hair,
    ring_of,
    sign,
    sign_of,
)

MOST_MM = 5000
"""The longest side of a page of a PDF file is 5080 mm."""
_LEFT_MM, _RIGHT_MM, _TOP_MM = 30.0, 26.0, 12.0
_LEAST_WIDTH_MM, _LEAST_HEIGHT_MM = 210.0, 135.0
_LABEL_MM = 3.6
_MOVE = Pen(0.15, (1.0, 1.0), COLOUR)


class NoPlot(LookupError):
    """A chart that cannot be plotted; its words say why."""


def plots_of(sheet: ChartSheet, sheet_file: str = "") -> list[Drawing]:
    """A drawing for each frame of the chart on which something is to be drawn, at least one.

    Numbers lead to the lines of the sheet in the file `sheet_file`, if that is named.
    Raises NoPlot where the chart list does not have the chart, or its frame is too large.
    """
    frames = all_frames(sheet)
    if not frames:
        words = "is not in the chart list" if sheet.is_listed is False else "needs a chart list"
        raise NoPlot(f"{sheet.name} {words}: its scale and limits must be known for a plot")
    found = spread(sheet.lines(), frames)
    wanted = sorted(found.drawn) or [0]
    return [_plot(sheet, frames[index], found, index, sheet_file) for index in wanted]


def _plot(
    sheet: ChartSheet, listed: ListedSheet, found: Spread, index: int, sheet_file: str
) -> Drawing:
    width, height = size_mm(listed.frame)
    if max(width, height) > MOST_MM:
        raise NoPlot(
            f"{sheet.name} would be {width / 1000:.1f} m by {height / 1000:.1f} m on the paper; "
            "see whether its scale and limits in the chart list are right"
        )
    page_width = max(width + _LEFT_MM + _RIGHT_MM, _LEAST_WIDTH_MM)
    page_height = max(height + STRIP_MM + _TOP_MM, _LEAST_HEIGHT_MM)
    box = Box(_LEFT_MM, page_height - _TOP_MM - height, width, height)
    drawn = [_moved(one, box) for one in found.drawn.get(index, [])]
    within, around = graticule(listed.frame, box)
    panel = f", {listed.chart.panel}" if listed.chart.panel else ""
    name = f"{sheet.name}{panel}"
    around += strip(name, listed, found, len({one.line.number for one in drawn}), page_width)
    around += controls(page_width)
    lines = [item for one in drawn for item in _lines(one)]
    groups = [_marks(one, number) for number, one in enumerate(drawn)]
    return Drawing(
        title=f"Plot for {name}, work sheet",
        width_mm=page_width,
        height_mm=page_height,
        frame=box,
        around=around,
        within=[*within, *lines, *_ways(drawn)],
        groups=groups,
        labels=list(_labels(drawn, box, sheet_file)),
    )


def _moved(one: Drawn, box: Box) -> Drawn:
    """From the corner of the frame to that of the page."""

    def on_page(points: Sequence[Point]) -> list[Point]:
        return [(x + box.left, y + box.bottom) for x, y in points]

    return one._replace(places=on_page(one.places), paths=list(map(on_page, one.paths)))


def _lines(one: Drawn) -> Iterator[Item]:
    pen = LINES[one.verb]
    for path in one.paths:
        yield Path(path, pen, is_closed=one.is_closed)


def _ways(drawn: Sequence[Drawn]) -> Iterator[Item]:
    """A dotted line from the old place of a move to the new one."""
    for old in drawn:
        for new in drawn:
            is_pair = old.line is new.line and (old.verb, new.verb) == ("from", "to")
            if is_pair and len(old.places) == len(new.places) == 1:
                yield Path([old.places[0], new.places[0]], _MOVE)


def _marks(one: Drawn, number: int) -> Group:
    items: list[Item] = []
    for place in one.places:
        items += cross_hair(place)
        if not one.paths:
            items += ring_of(one.verb, place, is_in_pencil=one.line.is_in_pencil)
    return Group(f"mark-{one.line.number}-{number}", _told(one), items)


def _told(one: Drawn) -> str:
    return f"{one.line.number}: {one.line.verb} {one.line.title}"


def _labels(drawn: Sequence[Drawn], box: Box, sheet_file: str) -> Iterator[Group]:
    labelled = [(one, place) for one in drawn for place in _named_places(one, box)]
    places = [place for one in drawn for place in one.places]
    wanted = [(place, _width(one)) for one, place in labelled]
    paths = [path for one in drawn for path in one.paths]
    spots = find_spots(wanted, _LABEL_MM + 0.6, places, paths, box)
    for number, ((one, place), spot) in enumerate(zip(labelled, spots, strict=True)):
        left, bottom, width, height = spot.box
        action = one.line.action
        at = (left + SIGN_MM + 1.4, bottom + 1.0)
        items: list[Item] = [
            Path(_corners(spot.box), THIN, is_closed=True, fill="#ffffff"),
            *sign(sign_of(action.feature, action.geometry.shape), left + 0.6, bottom + 0.6),
            Words(at, _words(one), _LABEL_MM, "start", True, COLOUR),
        ]
        lead = shortened(place, spot.end, RING_MM * 1.5)
        if lead:
            items.insert(0, Path(lead, Pen(0.12, colour=COLOUR)))
        target = f"{sheet_file}#{one.line.key}" if sheet_file else None
        yield Group(f"label-{number}", _told(one), items, target, (left, bottom, width, height))


def _named_places(one: Drawn, box: Box) -> list[Point]:
    """Where the numbers stand: at each place, of a line or an area at the first only."""
    if not one.paths:
        return one.places
    inside = [
        (x, y)
        for path in one.paths
        for x, y in path
        if 0 <= x - box.left <= box.width and 0 <= y - box.bottom <= box.height
    ]
    return (
        one.places[:1] or inside[:1] or [(box.left + box.width / 2, box.bottom + box.height / 2)]
    )


def _words(one: Drawn) -> str:
    pencil = " (pencil)" if one.line.is_in_pencil else ""
    verb = {"from": "old", "to": "new"}.get(one.verb, one.verb)
    return f"{one.line.number} {verb}{pencil}"


def _width(one: Drawn) -> float:
    # A little more than any sans-serif typeface takes.
    return SIGN_MM + 2.4 + 0.62 * _LABEL_MM * len(_words(one))


def _corners(box: Box) -> list[Point]:
    right, top = box.left + box.width, box.bottom + box.height
    return [(box.left, box.bottom), (right, box.bottom), (right, top), (box.left, top)]
