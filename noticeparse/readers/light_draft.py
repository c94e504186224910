"""One light while its parts are being gathered."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple

from noticeparse.readers.light_parts import Measure
from noticeparse.readers.light_values import NEEDS_PLUS
from noticeparse.records.light import LightColour


class Figure(NamedTuple):
    """A measure as it stands with a light."""

    measure: Measure
    label: str
    """The unit that a word before it asks for: `m` for elevation, `M` for range; empty without."""
    colour: str | None
    """The colour letter before it: `W15M R12M`."""


@dataclass
class Draft:
    """The parts of one light so far, with the stretches that faults will point at."""

    start: int
    end: int
    count: int = 1
    functions: list[str] = field(default_factory=list)
    is_alternating: bool = False
    asks_group: bool = False
    """The old prefix `Gp` or the word `group` asks for figures in brackets."""
    classes: list[str] = field(default_factory=list)
    is_broken: bool = False
    """The classes written make no rhythm; the light cannot be read."""
    groups_of_class: dict[int, tuple[int, ...]] = field(default_factory=dict)
    group_stretch: tuple[int, int] | None = None
    """Of the figures or Morse letters in brackets."""
    has_broken_group: bool = False
    has_group_colours: bool = False
    morse: str | None = None
    colours: list[LightColour] = field(default_factory=list)
    has_lost_colour: bool = False
    figures: list[Figure] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)
    is_vertical: bool = False
    is_horizontal: bool = False
    sectors: list[tuple[int, int]] = field(default_factory=list)
    is_telex: bool = False
    """A word of it is in capitals where a chart has small letters."""
    is_closed: bool = False
    """Something else has begun; figures and colours that follow belong elsewhere."""

    @property
    def has_character(self) -> bool:
        """A class stands, or `Al` alone."""
        return bool(self.classes) or self.is_alternating

    @property
    def takes_class(self) -> bool:
        """Nothing but classes and groups so far, so that another class may belong to it."""
        return not (self.is_closed or self.colours or self.figures or self.remarks or self.sectors)

    @property
    def takes_colour(self) -> bool:
        """The place of the colours is now: behind the character, before the figures."""
        return self.has_character and not (self.is_closed or self.figures or self.colours)

    @property
    def takes_group(self) -> bool:
        """A class stands that has no figures in brackets yet."""
        has_group = len(self.classes) - 1 in self.groups_of_class
        return bool(self.classes) and not (has_group or self.is_closed or self.figures)

    @property
    def groups(self) -> list[int]:
        """All figures in brackets, in order."""
        return [figure for group in self.groups_of_class.values() for figure in group]

    def is_cut_before(self, names: tuple[str, ...]) -> bool:
        """`Q(6) & LFl`: one character, its plus written as if a second light stood there."""
        return (
            self.takes_class
            and len(self.groups_of_class) == 1
            and self.classes[0] in ("Q", "VQ", "UQ")
            and (*self.classes, *names) in NEEDS_PLUS
        )

    def add_group(self, figures: tuple[int, ...], start: int, end: int) -> None:
        """The figures in brackets of the class named last."""
        self.groups_of_class[len(self.classes) - 1] = figures
        self.group_stretch = (self.group_stretch[0] if self.group_stretch else start, end)
        self.end = end
