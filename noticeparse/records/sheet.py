"""Where the positions of an action lie on the paper of its chart."""

from typing import Literal

from pydantic import Field

from noticeparse.numbers import Number
from noticeparse.spans import Record

SheetPart = Literal[
    "upper left", "upper centre", "upper right", "centre left", "centre", "centre right",
    "lower left", "lower centre", "lower right",
]  # fmt: skip


class SheetPlace(Record):
    """One position on the paper, by the limits and the scale that the chart list gives."""

    panel: str | None = Field(description="panel of the chart list it lies on, or null")
    x_mm: Number = Field(description="millimetres right of the south-west corner of the frame")
    y_mm: Number = Field(description="millimetres above the south-west corner of the frame")
    part: SheetPart | None = Field(description="ninth of the sheet, or null outside the frame")


class Sheet(Record):
    """A place on the paper for each position of an action, in the order of the positions."""

    positions: list[SheetPlace] = Field(description="one for each of `geometry.positions`")
    destination: list[SheetPlace] = Field(
        description="one for each of `destination.positions` of a move, else empty"
    )
