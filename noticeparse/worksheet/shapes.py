"""Where on the paper of a frame an action is drawn: its places and its lines, or why it is not.

Positions of `close`, `between` and `vicinity` are never drawn, nor is what lies on another datum
than the chart.  Lines of a notice are straight on the chart (rhumb lines); circles are geodesic.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.chart_math import Frame, mm_between, place_mm, size_mm
from noticeparse.globe import arc
from noticeparse.numbers import NAUTICAL_MILE_M
from noticeparse.records.action import Move
from noticeparse.records.geometry import Geometry
from noticeparse.records.position import Position
from noticeparse.sheets import ListedSheet, sheet_of
from noticeparse.worksheet.drawing import Box, Point
from noticeparse.worksheet.meetings import meeting
from noticeparse.worksheet.model import Line
from noticeparse.writers.drawing import draw, swept

REASONS = {
    "unlocated": "no position",
    "reference": "only a reference has a position",
    "datum": "on another datum than the chart",
    "arc_open": "the notice leaves open how the arc runs",
    "form": "cannot be drawn",
    "unusable": "must not be applied",
    "cancelled": "cancelled by another notice",
    "outside": "outside the frame",
    "old_end": "a move whose old place is not drawn",
    "new_end": "a move whose new place is not drawn",
    "both": "a move of which neither place can be drawn",
    "part": "drawn in part, the rest is outside the frame",
}
_STEP_DEG = 0.5
"""Between two corners of a circle, whose sides lie within it by 0.00001 of the radius."""


class Drawn(NamedTuple):
    """One end of an action on a frame: marks at places, and lines or rings between them."""

    line: Line
    verb: str
    """`insert`, `amend`, `replace`, `delete`; of a move `from` or `to`."""
    places: list[Point]
    paths: list[list[Point]]
    is_closed: bool


class Spread(NamedTuple):
    """What is drawn on each frame, by its place in the list, and what is not drawn and why."""

    drawn: dict[int, list[Drawn]]
    left_out: list[tuple[int, str]]
    """Numbers of actions with a key of `REASONS`."""


def spread(lines: Iterator[Line], frames: Sequence[ListedSheet]) -> Spread:
    """The actions on the frames of their chart."""
    found: dict[int, list[Drawn]] = {}
    left_out: list[tuple[int, str]] = []
    for line in lines:
        if not line.is_usable:
            left_out.append((line.number, "cancelled" if line.is_cancelled else "unusable"))
            continue
        own, reason = _of_line(line, frames)
        for index, drawn in own.items():
            found.setdefault(index, []).extend(drawn)
        if reason:
            left_out.append((line.number, reason))
    return Spread(found, left_out)


def _of_line(
    line: Line, frames: Sequence[ListedSheet]
) -> tuple[dict[int, list[Drawn]], str | None]:
    """What is drawn of an action, and why not all of it; half a move is no move."""
    found: dict[int, list[Drawn]] = {}
    reasons = [
        _on_frames(line, verb, geometry, frames=frames, found=found)
        for verb, geometry in _ends(line)
    ]
    left = [reason for reason in reasons if reason]
    if not left:
        return found, None
    if len(reasons) == 1:
        return found, "part" if found and left[0] == "outside" else left[0]
    if len(set(reasons)) == 1:
        return {}, left[0]
    return {}, "both" if len(left) == 2 else "old_end" if reasons[0] else "new_end"


def _ends(line: Line) -> list[tuple[str, Geometry]]:
    action = line.action
    if isinstance(action, Move):
        return [("from", action.geometry), ("to", action.destination)]
    return [(action.verb, action.geometry)]


def _on_frames(
    line: Line,
    verb: str,
    geometry: Geometry,
    *,
    frames: Sequence[ListedSheet],
    found: dict[int, list[Drawn]],
) -> str | None:
    """Put one end on the frames it is for; why not all of it is drawn."""
    if not geometry.positions:
        return "unlocated"
    own = _frames_of(line, frames)
    reason = None
    for index, positions in _shared_out(geometry, own, frames).items():
        refusal = _refusal(line, geometry, frames[index])
        if refusal:
            return refusal
        drawn = _drawn(line, verb, geometry, positions=positions, sheet=frames[index])
        if drawn is None:
            reason = "outside"
        else:
            found.setdefault(index, []).append(drawn)
            if len(drawn.places) < len(positions) and geometry.shape == "points":
                reason = "outside"
    return reason


def _frames_of(line: Line, frames: Sequence[ListedSheet]) -> list[ListedSheet]:
    """The frames its section may mean: of the panel it names, else all."""
    places = line.action.sheet.positions if line.action.sheet else []
    if line.section.panel is None:
        return list(frames)
    panels = {place.panel for place in places}
    return [frame for frame in frames if frame.chart.panel in panels] or list(frames)


def _shared_out(
    geometry: Geometry, own: Sequence[ListedSheet], frames: Sequence[ListedSheet]
) -> dict[int, list[Position]]:
    """The positions by the frame they go on; those of a line or an area stay together."""
    by_frame: dict[int, list[Position]] = {}
    known = {id(frame.chart): index for index, frame in enumerate(frames)}
    for position in geometry.positions:
        if geometry.shape in ("line", "area") and by_frame:
            next(iter(by_frame.values())).append(position)
            continue
        index = known[id(sheet_of(own, position).chart)]
        by_frame.setdefault(index, []).append(position)
    return by_frame


def _refusal(line: Line, geometry: Geometry, frame: ListedSheet) -> str | None:
    """Why a geometry cannot be drawn on a chart."""
    section, listed = line.section, frame.chart.datum
    if section.datum is not None and listed is not None:
        if section.datum.name != listed.name:
            return "datum"
        section = section.model_copy(update={"datum": None})
    return draw(geometry, section)[1]


def _drawn(
    line: Line, verb: str, geometry: Geometry, *, positions: list[Position], sheet: ListedSheet
) -> Drawn | None:
    frame = sheet.frame
    at = [(one.lat, one.lon) for one in positions]
    is_round = geometry.shape in ("circle", "arc")
    paths: list[list[Point]] = []
    if geometry.shape in ("line", "area"):
        paths = [path_mm(frame, at)]
    elif is_round:
        paths = [path_mm(frame, _round(geometry, one)) for one in at]
    places = [place_mm(frame, *one) for one, position in zip(at, positions, strict=True)
              if sheet.holds(position)]  # fmt: skip
    is_closed = geometry.shape in ("area", "circle")
    whole = Box(0, 0, *size_mm(frame))
    if not places and not any(meeting(path, whole, is_closed=is_closed) for path in paths):
        return None
    return Drawn(line, verb, places, paths, is_closed)


def path_mm(frame: Frame, at: Sequence[tuple[float, float]]) -> list[Point]:
    """Latitudes and longitudes as places on the paper, each the shorter way from the last."""
    x, y = place_mm(frame, *at[0])
    path = [(x, y)]
    for first, second in pairwise(at):
        right, up = mm_between(frame, first, second)
        x, y = x + right, y + up
        path.append((x, y))
    return path


def _round(geometry: Geometry, centre: tuple[float, float]) -> list[tuple[float, float]]:
    """The corners of a circle or an arc."""
    radius_m = float((geometry.radius_nm or 0) * NAUTICAL_MILE_M)
    start, sweep = swept(geometry) if geometry.shape == "arc" else (0.0, 360.0)
    points = arc((centre[1], centre[0]), radius_m, start, sweep, step_deg=_STEP_DEG)
    if geometry.shape == "circle":
        del points[-1]
    return [(latitude, longitude) for longitude, latitude in points]


def is_within(box: Box, at: Point) -> bool:
    """Whether a place lies in a box or on its edge; a rounded one just beyond it does too."""
    slack = 0.2
    return (
        -slack <= at[0] - box.left <= box.width + slack
        and -slack <= at[1] - box.bottom <= box.height + slack
    )
