"""The five chart actions."""

from typing import Annotated, Literal

from pydantic import Field

from noticeparse.numbers import Number
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Ais, Feature, Racon, Sound
from noticeparse.records.geometry import Geometry
from noticeparse.records.light import Light, Sector
from noticeparse.records.sheet import Sheet
from noticeparse.spans import Record, Span

_Record = Light | Depth | Clearance | Sound | Racon | Ais
Value = _Record | Number | list[Sector] | list[Number] | list[str] | str | None


class Change(Record):
    """One property of a feature and its new value; `old` is null where not stated."""

    property: str = Field(description="`light`, `depth`, `name`, or a path `light.period_s`")
    old: Value
    new: Value


class Insert(Record):
    """`feature` is new at `geometry`."""

    verb: Literal["insert"] = "insert"
    written_verb: str
    label: str | None
    feature: Feature
    geometry: Geometry
    text: str
    span: Span
    usable: bool = True
    sheet: Sheet | None = None


class Amend(Record):
    """`feature`, as before the change, stays at `geometry` and takes `changes`."""

    verb: Literal["amend"] = "amend"
    written_verb: str
    label: str | None
    feature: Feature
    changes: list[Change]
    geometry: Geometry
    text: str
    span: Span
    usable: bool = True
    sheet: Sheet | None = None


class Replace(Record):
    """`feature` gives way to `replacement` at the same `geometry`."""

    verb: Literal["replace"] = "replace"
    written_verb: str
    label: str | None
    feature: Feature
    replacement: Feature
    geometry: Geometry
    text: str
    span: Span
    usable: bool = True
    sheet: Sheet | None = None


class Move(Record):
    """`feature` goes unchanged from `geometry` to `destination`."""

    verb: Literal["move"] = "move"
    written_verb: str
    label: str | None
    feature: Feature
    destination: Geometry
    geometry: Geometry
    text: str
    span: Span
    usable: bool = True
    sheet: Sheet | None = None


class Delete(Record):
    """`feature` goes."""

    verb: Literal["delete"] = "delete"
    written_verb: str
    label: str | None
    feature: Feature
    geometry: Geometry
    text: str
    span: Span
    usable: bool = True
    sheet: Sheet | None = None


Action = Annotated[Insert | Amend | Replace | Move | Delete, Field(discriminator="verb")]
"""One of the five chart actions; `verb` tells which."""
