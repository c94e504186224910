"""Where an action applies."""

from typing import Literal

from pydantic import Field

from noticeparse.numbers import Number
from noticeparse.records.position import Position
from noticeparse.spans import Record

Shape = Literal["point", "points", "line", "area", "circle", "arc", "unlocated"]
Relation = Literal[
    "at", "centred_on", "joining", "within", "close", "between", "vicinity", "from_reference"
]
Bearings = Literal["from_centre", "from_seaward", "not_stated"]


class Arc(Record):
    """Part of a circle between two true bearings."""

    from_deg: Number
    to_deg: Number
    sense: Literal["clockwise", "anticlockwise"] | None
    bearings: Bearings


class Offset(Record):
    """A true bearing or compass direction and a distance from a reference."""

    bearing_deg: Number | None
    direction: str | None
    distance_nm: Number | None
    reference: Position | None
    reference_text: str | None


class Geometry(Record):
    """Positions and how they are meant; of close, between, vicinity they are the reference's."""

    shape: Shape
    relation: Relation
    direction: str | None = Field(description="compass point of a `close NE of`")
    radius_nm: Number | None
    arc: Arc | None
    offset: Offset | None
    positions: list[Position]
