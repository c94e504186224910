"""Where an action applies: positions exact and as written, their places on the paper, moves.

Bearings and distances are those of the geodesic on WGS84 (Karney), nautical miles of 1852 m.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil, log10, radians
from typing import NamedTuple

from noticeparse.records.action import Action, Move
from noticeparse.records.chart import ChartSection
from noticeparse.records.geometry import Geometry
from noticeparse.records.position import Position
from noticeparse.records.sheet import SheetPlace
from noticeparse.sheets import ListedSheet
from noticeparse.writers.coordinates import readable
from noticeparse.writers.drawing import is_of_reference
from noticeparse.writers.text_actions import how_words, offset_words

_NAUTICAL_MILE_M = 1852.0


class Place(NamedTuple):
    """One position: exact, as written where that differs, and on the paper."""

    exact: str
    written: str
    on_sheet: str | None
    is_outside: bool
    notes: list[str]


class Where(NamedTuple):
    """A geometry of an action: which end of a move, how the positions are meant, and they."""

    lead: str
    how: str
    places: list[Place]
    notes: list[str]
    is_reference: bool
    """Whether the places are those of something else than the feature."""


def other_datums(section: ChartSection, frames: Sequence[ListedSheet]) -> frozenset[str | None]:
    """The panels of the frames whose datum is another than that of the positions."""
    return frozenset(
        frame.chart.panel
        for frame in frames
        if section.datum and frame.chart.datum and section.datum.name != frame.chart.datum.name
    )


def wheres_of(action: Action, others: frozenset[str | None] = frozenset()) -> list[Where]:
    """Where an action applies; of a move the old place, then the new one.

    On the panels in `others`, of another datum, it has no place.
    """
    sheet = action.sheet
    here = sheet.positions if sheet else []
    if not isinstance(action, Move):
        return [_where("", action.geometry, here, others)]
    there = sheet.destination if sheet else []
    return [
        _where("from", action.geometry, here, others),
        _where("to", action.destination, there, others),
    ]


def _where(
    lead: str, geometry: Geometry, sheet: list[SheetPlace], others: frozenset[str | None]
) -> Where:
    known = [*sheet, *[None] * (len(geometry.positions) - len(sheet))]
    places = [
        _place(one, on, others, is_corner=len(geometry.positions) > 1)
        for one, on in zip(geometry.positions, known, strict=True)
    ]
    is_reference = is_of_reference(geometry)
    return Where(lead, how_words(geometry), places, list(_notes(geometry)), is_reference)


def _notes(geometry: Geometry) -> Iterator[str]:
    if not geometry.positions:
        yield "no position is given"
    elif is_of_reference(geometry):
        yield "position of the reference, not of the feature"
    if geometry.offset:
        yield f"that is {offset_words(geometry.offset)}"


def _place(
    position: Position,
    on: SheetPlace | None,
    others: frozenset[str | None],
    *,
    is_corner: bool,
) -> Place:
    notes: list[str] = []
    if position.label and position.via == "stated" and is_corner:
        notes.append(f"({position.label})")
    if position.quality:
        notes.append(position.quality)
    if position.via == "offset":
        notes.append(f"worked out, good to {position.resolution_m:g} metres")
    written = " ".join(position.written.split())
    is_outside = on is not None and on.part is None
    exact = worked_out(position) if position.via == "offset" else readable(position)
    return Place(exact, written, _on_sheet(on, others), is_outside, notes)


def worked_out(position: Position) -> str:
    """`47°12.3'S 123°45.7'W`, degrees and minutes as fine as the position is good to."""
    finest = max(position.resolution_m, 0.2)
    decimals = max(0, ceil(log10(_NAUTICAL_MILE_M / finest) - 1e-9))
    north = _minutes(position.lat, "NS", 2, decimals)
    return f"{north} {_minutes(position.lon, 'EW', 3, decimals)}"


def _minutes(angle: float, hemispheres: str, width: int, decimals: int) -> str:
    # Rounded as a whole number of last digits, so that 59.96 minutes become the next degree.
    whole, rest = divmod(round(abs(angle) * 60 * 10**decimals), 60 * 10**decimals)
    minutes = f"{rest / 10**decimals:0{3 + decimals if decimals else 2}.{decimals}f}"
    return f"{whole:0{width}d}°{minutes}'{hemispheres[angle < 0]}"


def _on_sheet(on: SheetPlace | None, others: frozenset[str | None]) -> str | None:
    if on is None:
        return None
    if on.panel in others:
        return "not placed: on another datum than the chart"
    panel = f"{on.panel}: " if on.panel else ""
    if on.part is None:
        return f"{panel}outside the frame"
    return f"{panel}{on.part}, {_from_corner(on)}"


def _from_corner(on: SheetPlace) -> str:
    sideways = "right" if on.x_mm >= 0 else "left"
    upright = "up" if on.y_mm >= 0 else "down"
    # No-break spaces: a figure and its unit stay on one line.
    return f"{abs(on.x_mm):.1f}\u00a0mm\u00a0{sideways}, {abs(on.y_mm):.1f}\u00a0mm\u00a0{upright}"


def move_words(action: Action) -> str | None:
    """`139° true, 0.09 nautical miles (172 metres)`, of a move between two places of its own.

    Bearings to a tenth of a degree only where the last figures of the positions bear it.
    """
    if not isinstance(action, Move):
        return None
    ends = (action.geometry, action.destination)
    if any(len(one.positions) != 1 or is_of_reference(one) for one in ends):
        return None
    first, second = (one.positions[0] for one in ends)
    return between(first, second)


def between(first: Position, second: Position) -> str:
    """True bearing and distance of the geodesic from one position to another."""
    from geographiclib.geodesic import Geodesic  # slow to import

    found = Geodesic.WGS84.Inverse(first.lat, first.lon, second.lat, second.lon)
    distance_m, azimuth = found["s12"], found["azi1"] % 360
    if distance_m < 0.01:
        return "the two positions are the same"
    doubt_m = first.resolution_m + second.resolution_m
    decimals = 1 if doubt_m < radians(0.1) * distance_m else 0
    # A bearing that is rounded up to 360 is 000.
    rounded = round(azimuth, decimals) % 360
    whole, _, rest = f"{rounded:.{decimals}f}".partition(".")
    degrees = f"{whole:0>3}" + (f".{rest}" if rest else "")
    miles = distance_m / _NAUTICAL_MILE_M
    written = f"{miles:.{2 if miles >= 1 else 3}f} nautical miles ({distance_m:.0f} metres)"
    return f"{degrees}° true, {written}"
