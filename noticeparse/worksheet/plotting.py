"""The plot of a chart at its own scale, to be laid over it: one page for each frame, or tiles.

A whole page has the size of the frame in millimetres, with a margin for the labels of the
graticule and a strip below that says what is not drawn, and why.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.chart_math import size_mm
from noticeparse.sheets import ListedSheet
from noticeparse.worksheet.drawing import Box, Drawing, Group, Item, Path, Pen, Point, Words
from noticeparse.worksheet.graticule import graticule
from noticeparse.worksheet.labels import find_spots, shortened
from noticeparse.worksheet.meetings import meeting
from noticeparse.worksheet.model import ChartSheet, all_frames
from noticeparse.worksheet.shapes import Drawn, Spread, is_within, spread
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


class Plot(NamedTuple):
    """What is drawn on one frame, in millimetres from its lower left corner."""

    name: str
    listed: ListedSheet
    drawn: list[Drawn]
    found: Spread
    sheet_file: str

    @property
    def many(self) -> int:
        """How many actions are drawn, whole or in part."""
        return len({one.line.number for one in self.drawn})


def plots_of(sheet: ChartSheet, sheet_file: str = "") -> list[Plot]:
    """The plots of the frames on which something is to be drawn, at least one.

    Numbers lead to the lines of the sheet in the file `sheet_file`, if that is named.
    Raises NoPlot where the chart list does not have the chart, or its frame is too large.
    """
    frames = all_frames(sheet)
    if not frames:
        words = "needs a chart list"
        if sheet.is_listed is False:
            words = "is not in the chart list, or not the panel that the notices name"
        raise NoPlot(f"{sheet.name} {words}: scale and limits must be known for a plot")
    found = spread(sheet.lines(), frames)
    return [
        _plot(sheet, frames[index], found, index=index, sheet_file=sheet_file)
        for index in sorted(found.drawn) or [0]
    ]


def _plot(
    sheet: ChartSheet, listed: ListedSheet, found: Spread, *, index: int, sheet_file: str
) -> Plot:
    width, height = size_mm(listed.frame)
    if max(width, height) > MOST_MM:
        raise NoPlot(
            f"{sheet.name} would be {width / 1000:.1f} m by {height / 1000:.1f} m on the paper; "
            "see whether its scale and limits in the chart list are right"
        )
    panel = f", {listed.chart.panel}" if listed.chart.panel else ""
    return Plot(f"{sheet.name}{panel}", listed, found.drawn.get(index, []), found, sheet_file)


def whole_page(plot: Plot) -> Drawing:
    """The plot on a page of the size of its frame, with a margin and a strip below."""
    width, height = size_mm(plot.listed.frame)
    page_width = max(width + _LEFT_MM + _RIGHT_MM, _LEAST_WIDTH_MM)
    page_height = max(height + STRIP_MM + _TOP_MM, _LEAST_HEIGHT_MM)
    at = (_LEFT_MM, page_height - _TOP_MM - height)
    words = strip(plot.name, plot.listed, plot.found, drawn=plot.many, page_width=page_width)
    around = [*words, *controls()]
    page = page_of(plot, Box(0, 0, width, height), at, (page_width, page_height))
    return page._replace(around=[*page.around, *around])


def page_of(plot: Plot, window: Box, at: Point, size: tuple[float, float]) -> Drawing:
    """A page that shows a window of the frame, the lower left corner of which stands at `at`."""
    frame = plot.listed.frame
    right, up = at[0] - window.left, at[1] - window.bottom
    box = Box(right, up, *size_mm(frame))
    shown = Box(*at, window.width, window.height)
    drawn = [moved for one in plot.drawn if (moved := _shown(one, right, up, shown)) is not None]
    within, around = graticule(frame, box, shown)
    return Drawing(
        title=f"Plot for {plot.name}, work sheet",
        width_mm=size[0],
        height_mm=size[1],
        frame=shown,
        around=around,
        within=[*within, *_ways([_moved(one, right, up) for one in plot.drawn])],
        groups=[_marks(one, number) for number, one in enumerate(drawn)],
        labels=list(_labels(drawn, shown, plot.sheet_file)),
    )


def _shown(one: Drawn, right: float, up: float, shown: Box) -> Drawn | None:
    """One end of an action on the page, with the places that are shown; None where nothing is."""
    moved = _moved(one, right, up)
    places = [place for place in moved.places if is_within(shown, place)]
    if not places and not _meetings(moved, shown):
        return None
    return moved._replace(places=places)


def _moved(one: Drawn, right: float, up: float) -> Drawn:
    def moved(points: Sequence[Point]) -> list[Point]:
        return [(x + right, y + up) for x, y in points]

    return one._replace(places=moved(one.places), paths=list(map(moved, one.paths)))


def _ways(drawn: Sequence[Drawn]) -> Iterator[Item]:
    """A dotted line from the old place of a move to the new one."""
    for old in drawn:
        for new in drawn:
            is_pair = old.line is new.line and (old.verb, new.verb) == ("from", "to")
            if is_pair and len(old.places) == len(new.places) == 1:
                yield Path([old.places[0], new.places[0]], _MOVE)


def _marks(one: Drawn, number: int) -> Group:
    items: list[Item] = [
        Path(path, LINES[one.verb], is_closed=one.is_closed) for path in one.paths
    ]
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
    spots = find_spots(wanted, _LABEL_MM + 0.6, places=places, paths=paths, within=box)
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


def _meetings(one: Drawn, box: Box) -> list[Point]:
    """Where its lines are seen in a box."""
    found = (meeting(path, box, is_closed=one.is_closed) for path in one.paths)
    return [place for place in found if place is not None]


def _named_places(one: Drawn, box: Box) -> list[Point]:
    """Where the numbers stand: at each place, of a line or an area at the first only."""
    return one.places if not one.paths else (one.places or _meetings(one, box))[:1]


def _words(one: Drawn) -> str:
    pencil = " (pencil)" if one.line.is_in_pencil else ""
    verb = {"from": "old", "to": "new"}.get(one.verb, one.verb)
    return f"{one.line.number} {verb}{pencil}"


def _width(one: Drawn) -> float:
    # A little more than any sans-serif typeface takes.
    return SIGN_MM + 2.6 + 0.72 * _LABEL_MM * len(_words(one))


def _corners(box: Box) -> list[Point]:
    right, top = box.left + box.width, box.bottom + box.height
    return [(box.left, box.bottom), (right, box.bottom), (right, top), (box.left, top)]
