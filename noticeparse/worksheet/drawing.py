"""A drawing in millimetres of paper: what it is made of, for one writer of SVG and one of PDF.

The origin is the lower left corner of the page, x to the right and y up.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

Point = tuple[float, float]
Anchor = Literal["start", "middle", "end"]

BLACK = "#000000"


class Pen(NamedTuple):
    """How a line is drawn."""

    width_mm: float
    dash_mm: tuple[float, ...] = ()
    colour: str = BLACK


class Path(NamedTuple):
    """Straight lines from point to point."""

    points: list[Point]
    pen: Pen
    is_closed: bool = False
    fill: str | None = None


class Ring(NamedTuple):
    """A circle."""

    centre: Point
    radius_mm: float
    pen: Pen
    fill: str | None = None


class Words(NamedTuple):
    """A line of words; `size_mm` is that of the typeface."""

    at: Point
    words: str
    size_mm: float
    anchor: Anchor = "start"
    is_bold: bool = False
    colour: str = BLACK


Item = Path | Ring | Words


class Group(NamedTuple):
    """What belongs to one thing, and where a click on it leads."""

    key: str
    title: str
    items: list[Item]
    target: str | None = None
    box: tuple[float, float, float, float] = (0, 0, 0, 0)
    """Left, bottom, width and height of what can be clicked."""


class Box(NamedTuple):
    """A rectangle."""

    left: float
    bottom: float
    width: float
    height: float


class Drawing(NamedTuple):
    """One page."""

    title: str
    width_mm: float
    height_mm: float
    frame: Box
    """What is within is cut at it."""
    around: list[Item]
    within: list[Item]
    groups: list[Group]
    """Within the frame too, drawn last."""
    labels: list[Group]
    """Not cut."""
