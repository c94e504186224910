"""A light's character."""

from typing import Literal

from pydantic import Field

from noticeparse.numbers import Number
from noticeparse.spans import Record

Rhythm = Literal[
    "F", "Fl", "LFl", "Q", "VQ", "UQ", "IQ", "IVQ", "IUQ", "Oc", "Iso", "Mo", "FFl", "FLFl",
    "OcFl", "Fl+LFl", "Q+LFl", "VQ+LFl", "UQ+LFl", "Al",
]  # fmt: skip
LightColour = Literal["W", "R", "G", "Bu", "Y", "Am", "Vi", "Or"]


class Sector(Record):
    """One sector; bearings are true, from seaward, clockwise from first to second limit."""

    colour: LightColour | None
    from_deg: Number
    to_deg: Number
    range_nm: Number | None
    visibility: str | None = Field(
        description="obscured, intensified, unintensified, faint or null"
    )


class Light(Record):
    """The character of one light: INT 1 section P; S-57 LITCHR, SIGGRP, SIGPER, VALNMR."""

    written: str
    rhythm: Rhythm
    alternating: bool
    groups: list[int] = Field(description="figures written in brackets; empty where none stand")
    morse: str | None = Field(description="letters of Mo(...)")
    colours: list[LightColour]
    colour_stated: bool
    period_s: Number | None = Field(description="seconds")
    elevation_m: Number | None = Field(description="metres; feet converted exactly")
    ranges_nm: list[Number] = Field(description="nominal ranges as written, nautical miles")
    range_by_colour: dict[str, Number | None] = Field(description="where it follows from the text")
    sectors: list[Sector]
    vertical: bool
    horizontal: bool
    directional: bool
    leading: bool
    aero: bool
    count: int = Field(description="number of lights: 2F.R(vert) is 2")
    remarks: list[str]
    litchr: int | None = Field(description="S-57 LITCHR code of the whole character")
