"""What a generated bulletin says, exactly: the records that a reader must find.

Nothing here knows how the text is written.  Values are exact: positions are whole steps of the
last digit written, other figures are `Decimal`.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass, field
from decimal import Decimal
from fractions import Fraction
from typing import Any, NamedTuple


class Coordinate(NamedTuple):
    """A latitude south or a longitude west, in `steps` of the last digit written.

    `unit` is 0 for degrees, 1 for minutes, 2 for seconds; `decimals` counts the decimals of it.
    """

    steps: int
    unit: int
    decimals: int

    def exact(self) -> Fraction:
        """Degrees, exactly; south and west are negative."""
        return Fraction(-self.steps, 60**self.unit * 10**self.decimals)

    def fields(self) -> tuple[int, int, int, str]:
        """Degrees, minutes, seconds and the decimals as written."""
        whole, rest = divmod(self.steps, 10**self.decimals)
        digits = f"{rest:0{self.decimals}d}" if self.decimals else ""
        if self.unit == 0:
            return whole, 0, 0, digits
        if self.unit == 1:
            return whole // 60, whole % 60, 0, digits
        return whole // 3600, whole // 60 % 60, whole % 60, digits


class Point(NamedTuple):
    """A position."""

    lat: Coordinate
    lon: Coordinate

    def exact(self) -> tuple[Fraction, Fraction]:
        """Latitude and longitude, exactly, in degrees."""
        return self.lat.exact(), self.lon.exact()


class Sector(NamedTuple):
    """A sector of a light, true bearings from seaward in whole degrees."""

    colour: str
    from_deg: int
    to_deg: int


@dataclass(frozen=True, slots=True)
class Light:
    """The character of a light: seconds, metres, nautical miles."""

    rhythm: str
    colours: tuple[str, ...]
    groups: tuple[int, ...] = ()
    morse: str | None = None
    period_s: Decimal | None = None
    elevation_m: Decimal | None = None
    ranges_nm: tuple[int, ...] = ()
    range_by_colour: tuple[tuple[str, int | None], ...] = ()
    count: int = 1
    sectors: tuple[Sector, ...] = ()
    is_alternating: bool = False
    is_vertical: bool = False
    is_colour_stated: bool = True


@dataclass(frozen=True, slots=True)
class Depth:
    """A depth in metres, drying heights negative; `unit` is None where no unit is stated."""

    value_m: Decimal
    unit: str | None
    kind: str = "sounding"


@dataclass(frozen=True, slots=True)
class Feature:
    """What is put on, changed on or taken off the chart."""

    kind: str
    s57: tuple[str, ...]
    light: Light | None = None
    depth: Depth | None = None
    name: str | None = None
    legend: str | None = None
    clearance_m: Decimal | None = None
    colours: tuple[str, ...] = ()
    shape: str | None = None
    companions: tuple[str, ...] = ()
    status: tuple[str, ...] = ()


class Change(NamedTuple):
    """One property and its new value; `old` is None where the text does not state it."""

    property: str
    new: Light | Depth | Decimal | tuple[int, ...] | str
    old: Decimal | tuple[int, ...] | str | None = None


@dataclass(frozen=True, slots=True)
class Action:
    """One chart action; `line` is the 1-based line where its item starts."""

    notice: str
    chart: str
    line: int
    verb: str
    feature: Feature
    points: tuple[Point, ...]
    shape: str
    relation: str = "at"
    direction: str | None = None
    radius_nm: Decimal | None = None
    destination: Point | None = None
    changes: tuple[Change, ...] = ()
    replacement: Feature | None = None

    def to_json(self) -> dict[str, Any]:
        """The action as plain values; positions as exact fractions of a degree."""
        record = asdict(self)
        record["points"] = [_fractions(point) for point in self.points]
        if self.destination is not None:
            record["destination"] = _fractions(self.destination)
        return record


def _fractions(point: Point) -> list[str]:
    return [str(value) for value in point.exact()]


@dataclass(slots=True)
class Notice:
    """One notice: its identity, the notices it cancels, its actions in text order."""

    id: str
    status: str = "permanent"
    line: int = 0
    regions: list[str] = field(default_factory=list)
    subjects: list[str] = field(default_factory=list)
    cancels: list[str] = field(default_factory=list)
    charts: list[str] = field(default_factory=list)
    actions: list[Action] = field(default_factory=list)


@dataclass(slots=True)
class Truth:
    """All that a bulletin says."""

    layout: str
    notices: list[Notice] = field(default_factory=list)
    forms: set[str] = field(default_factory=set)
    """The names of the position forms that stand in the text."""

    def actions(self) -> Iterator[Action]:
        """All actions, in text order."""
        for notice in self.notices:
            yield from notice.actions

    def to_json(self) -> str:
        """One JSON document."""
        notices = [
            {
                "id": one.id, "status": one.status, "line": one.line, "cancels": one.cancels,
                "regions": one.regions, "subjects": one.subjects,
                "charts": one.charts, "actions": [action.to_json() for action in one.actions],
            }
            for one in self.notices
        ]  # fmt: skip
        document = {"layout": self.layout, "forms": sorted(self.forms), "notices": notices}
        return json.dumps(document, ensure_ascii=False, indent=1, default=str)
