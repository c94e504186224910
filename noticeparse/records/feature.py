"""What a notice puts on, changes on or takes off a chart."""

from typing import Literal

from pydantic import Field

from noticeparse.numbers import Number
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.light import Light
from noticeparse.spans import Record

Colour = Literal[
    "white", "black", "red", "green", "blue", "yellow", "grey", "brown", "amber", "violet",
    "orange", "magenta", "pink",
]  # fmt: skip
ColourPattern = Literal["horizontal_stripes", "vertical_stripes", "diagonal_stripes", "squared"]
Status = Literal[
    "private", "occasional", "extinguished", "existence_doubtful", "position_doubtful",
    "position_approximate", "reported", "temporary", "destroyed", "disused",
]  # fmt: skip


class Sound(Record):
    """A fog signal: S-57 CATFOG word, SIGGRP and SIGPER."""

    kind: str
    group: list[int]
    period_s: Number | None


class Racon(Record):
    """A radar transponder beacon and its Morse letter."""

    morse: str | None


class Ais(Record):
    """An AIS aid to navigation; a virtual one has no physical mark."""

    virtual: bool


class Feature(Record):
    """One charted feature as described by a phrase of the text."""

    kind: str = Field(description="id of the vocabulary, `unknown` where the phrase names none")
    s57: list[str] = Field(description="IHO S-57 object class acronyms, main class first")
    text: str = Field(description="the phrase as written, spaces collapsed")
    name: str | None
    legend: str | None = Field(description="words to be written on the chart, letter for letter")
    light: Light | None
    more_lights: list[Light]
    depth: Depth | None
    clearance: Clearance | None
    height_m: Number | None = Field(description="height of an object, metres")
    colours: list[Colour]
    colour_pattern: ColourPattern | None
    shape: str | None
    topmark: str | None
    sound: Sound | None
    racon: Racon | None
    ais: Ais | None
    status: list[Status]
    reported_year: int | None
    companions: list["Companion"]
    attributes: dict[str, int | list[int]] = Field(description="S-57 attribute acronym to code")


class Companion(Record):
    """Something named only as going with a feature."""

    role: Literal["with", "enclosed_by", "on"]
    feature: Feature


Feature.model_rebuild()
