"""Depths, drying heights and clearances."""

from typing import Literal

from pydantic import Field

from noticeparse.numbers import Number
from noticeparse.spans import Record

DepthUnit = Literal["m", "fm", "ft", "fm_ft"]
DepthKind = Literal["sounding", "drying", "swept", "dredged", "contour", "least", "no_bottom"]


class Depth(Record):
    """A depth below chart datum; a drying height is negative."""

    written: str
    value_m: Number | None = Field(description="exact metres; null where stated unknown")
    unit: DepthUnit | None = Field(description="as written, else the chart's, else null")
    quality: str | None = Field(description="S-57 QUASOU words")
    kind: DepthKind


class Clearance(Record):
    """A clearance of a bridge, an overhead cable or pipe, or a safe clearance over a wreck."""

    written: str
    value_m: Number
    kind: Literal["vertical", "horizontal", "safe", "open", "closed"]
