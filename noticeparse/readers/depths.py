"""Reads depths, drying heights, clearances and heights of objects as written in a phrase.

In comes one statement (`least depth 9₈`, `dries 3 feet`, `vertical clearance 18 m`) and the unit
of the chart; out comes the record in exact metres with the faults found.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from typing import Literal, NamedTuple

from lark import Token

from noticeparse.faults import Fault
from noticeparse.readers.amounts import (
    AmountReader,
    ChartUnit,
    Statement,
    divide_statement,
    shown,
    stretch_of,
)
from noticeparse.readers.phrases import divide
from noticeparse.readers.words import look_up
from noticeparse.records.depth import Clearance, Depth, DepthKind
from noticeparse.vocabulary import kinds

__all__ = [
    "GROUND_CLASSES",
    "SAFE_CLEARANCE_QUALITY",
    "ChartUnit",
    "DepthReading",
    "HeightReading",
    "read_depth",
    "read_height",
    "shown",
    "stated_kind",
]

_DEEPEST_M = 11_000
_HIGHEST_DRYING_M = 15
GROUND_CLASSES = frozenset(("WRECKS", "OBSTRN", "UWTROC", "SOUNDG", "SBDARE"))
"""Classes of what lies on the ground, over which a safe clearance is a depth."""

_UNCERTAIN_UNITS = frozenset(("ft", "fm", "fm_ft"))
"""Units of depth whose charts may have another unit for heights."""

_KINDS: tuple[tuple[str, DepthKind], ...] = (
    ("DRIES", "drying"), ("NO_BOTTOM", "no_bottom"), ("CONTOUR", "contour"), ("SWEPT", "swept"),
    ("DREDGED", "dredged"), ("MAINTAINED", "dredged"), ("LEAST", "least"), ("PLUS", "drying"),
)  # fmt: skip
SAFE_CLEARANCE_QUALITY = "least depth unknown, safe clearance at value shown"
_QUALITIES = (
    ("NO_BOTTOM", "no bottom found at value shown"),
    ("MAINTAINED", "maintained depth"),
    ("UNCONFIRMED", "value reported (not confirmed)"),
    ("REPORTED", "value reported (not surveyed)"),
    ("DOUBTFUL", "doubtful sounding"),
    ("LEAST", "least depth known"),
    ("SWEPT", "least depth known"),
)


class DepthReading(NamedTuple):
    """One statement: a depth, a clearance, or for a safe clearance over a wreck both."""

    depth: Depth | None
    clearance: Clearance | None
    faults: tuple[Fault, ...]
    reported_year: int | None = None


class HeightReading(NamedTuple):
    """The height of an object in metres."""

    height_m: Decimal | None
    faults: tuple[Fault, ...]


def _unread(text: str) -> DepthReading:
    start, end = stretch_of(text)
    return DepthReading(None, None, (Fault("depth-unread", start, end, {"written": shown(text)}),))


def stated_kind(text: str) -> tuple[DepthKind, str | None]:
    """Kind and quality that the words of a statement tell, whatever its figure."""
    statement = divide_statement(text)
    senses = statement.senses if statement is not None else {}
    kind: DepthKind = next((kind for sense, kind in _KINDS if sense in senses), "sounding")
    if "UNKNOWN" in senses:
        return kind, "depth unknown"
    return kind, next((words for sense, words in _QUALITIES if sense in senses), None)


@lru_cache(maxsize=4096)
def read_depth(
    text: str, chart_unit: ChartUnit | None = None, *, over_ground: bool = True
) -> DepthReading:
    """The depth or clearance stated by `text`; `8₄` is 8 fathoms 4 feet on a chart in fathoms.

    A safe clearance is a depth only `over_ground`: beneath a cable or a bridge it is a height.
    """
    statement = divide_statement(text)
    if statement is None:
        return _within(text, chart_unit) or _unread(text)
    if "HEIGHT_WORD" in statement.senses:
        return _unread(text)
    senses = statement.senses
    if "CLEARANCE_WORD" in senses:
        if over_ground and _is_safe(senses):
            return _safe_clearance(text, statement, chart_unit)
        return _clearance(text, statement, chart_unit)
    if statement.amount is None:
        return _unknown_depth(text, senses) if "UNKNOWN" in senses else _unread(text)
    told = set(senses) - {"BRACKET", "YEAR", "OPEN", "CLOSED", "SAFE", "HORIZONTAL"}
    unit = statement.amount.unit
    if unit is not None and unit.type == "CAPITAL_M" and not told:
        return _unread(text)
    return _depth(text, statement, chart_unit)


def _within(text: str, chart_unit: ChartUnit | None) -> DepthReading | None:
    """The one statement in a phrase such as `Wk least depth 12.4m`; None where more is said."""
    phrase = divide(text)
    if phrase.legend is not None or any(segment.companions for segment in phrase.segments):
        return None
    items = [item for segment in phrase.segments for item in look_up(segment.pieces)]
    stated = [item for item in items if item.role in _STATED]
    named = [item for item in items if item.role == "kind"]
    plain = all(item.role in _BESIDE or item.role in _STATED for item in items)
    if len(stated) != 1 or not named or not plain or stated[0].text == text:
        return None
    over_ground = kinds()[named[-1].value].s57 in GROUND_CLASSES
    reading = read_depth(stated[0].text, chart_unit, over_ground=over_ground)
    faults = tuple(fault.shifted(stated[0].start) for fault in reading.faults)
    return reading._replace(faults=faults)


_STATED = frozenset(("depth", "clearance", "measure"))
_BESIDE = frozenset(("kind", "status", "wreck", "water", "plain", "reported"))


def _depth(text: str, statement: Statement, chart_unit: ChartUnit | None) -> DepthReading:
    reader = AmountReader(text, statement, chart_unit)
    senses = statement.senses
    kind, quality = stated_kind(text)
    value, unit = reader.value()
    if value is not None and value > _DEEPEST_M:
        reader.blame("depth-impossible")
        value = None
    if value is None:
        if not any(fault.code in _NO_VALUE for fault in reader.faults):
            reader.blame("depth-unread")
        return DepthReading(None, None, tuple(reader.faults))
    if kind == "drying":
        amount = statement.amount
        is_bare = amount is not None and amount.unit is None and amount.figure.type == "WHOLE"
        if is_bare and chart_unit in ("fm", "fm_ft"):
            # On a chart in fathoms the heights of what dries are in feet, by custom alone.
            reader.blame("clearance-unit-unclear")
            return DepthReading(None, None, tuple(reader.faults))
        if value > _HIGHEST_DRYING_M:
            reader.blame("depth-drying-high")
        value = -value
    if unit is None:
        reader.blame("depth-unit-not-stated")
    start, end = stretch_of(text)
    depth = Depth(
        written=" ".join(text[start:end].split()),
        value_m=value,
        unit=unit,
        quality=quality,
        kind=kind,
    )
    return DepthReading(depth, None, tuple(reader.faults), _year(senses))


_NO_VALUE = {
    "depth-and-drying", "depth-bound-only", "depth-feet-over-five", "depth-figure-raised",
    "depth-figures-apart",
    "depth-impossible", "depth-minus", "depth-several", "depth-small-figure-of-feet",
    "depth-thousands", "depth-unread",
}  # fmt: skip


def _year(senses: dict[str, Token]) -> int | None:
    # The year behind `dredged to` is that of the survey, not of a report.
    if "REPORTED" not in senses:
        return None
    written = senses["REPORTED"] + senses.get("YEAR", "")
    digits = "".join(character for character in written if character.isdigit())
    return int(digits[:4]) if len(digits) >= 4 else None


def _unknown_depth(text: str, senses: dict[str, Token]) -> DepthReading:
    start, end = stretch_of(text)
    written = " ".join(text[start:end].split())
    kind: DepthKind = "least" if "LEAST" in senses else "sounding"
    depth = Depth(written=written, value_m=None, unit=None, quality="depth unknown", kind=kind)
    return DepthReading(depth, None, ())


def _is_safe(senses: dict[str, Token]) -> bool:
    return senses["CLEARANCE_WORD"].lower().startswith("clear") and "SAFE" in senses


def _safe_clearance(text: str, statement: Statement, chart_unit: ChartUnit | None) -> DepthReading:
    """Over a wreck it is a depth in the unit of soundings (INT 1 K30, QUASOU 7)."""
    reading = _depth(text, statement, chart_unit)
    safe = reading.depth
    if safe is None or safe.value_m is None:
        return reading
    depth = safe.model_copy(update={"kind": "swept", "quality": SAFE_CLEARANCE_QUALITY})
    clearance = Clearance(written=safe.written, value_m=safe.value_m, kind="safe")
    return reading._replace(depth=depth, clearance=clearance)


def _clearance(text: str, statement: Statement, chart_unit: ChartUnit | None) -> DepthReading:
    reader = AmountReader(text, statement, None)
    value, unit = reader.value()
    if value is None:
        if not reader.faults:
            return _unread(text)
        return DepthReading(None, None, tuple(reader.faults))
    if unit is None and chart_unit in _UNCERTAIN_UNITS:
        reader.blame("clearance-unit-unclear")
        return DepthReading(None, None, tuple(reader.faults))
    if unit is None and chart_unit is None:
        reader.blame("clearance-unit-not-stated")
    start, end = stretch_of(text)
    written = " ".join(text[start:end].split())
    clearance = Clearance(written=written, value_m=value, kind=_clearance_kind(statement.senses))
    return DepthReading(None, clearance, tuple(reader.faults))


def _clearance_kind(
    senses: dict[str, Token],
) -> Literal["vertical", "horizontal", "safe", "open", "closed"]:
    if "SAFE" in senses:
        return "safe"
    if "HORIZONTAL" in senses:
        return "horizontal"
    if "OPEN" in senses:
        return "open"
    return "closed" if "CLOSED" in senses else "vertical"


@lru_cache(maxsize=4096)
def read_height(text: str, chart_unit: ChartUnit | None = None) -> HeightReading:
    """The height of an object in metres; no height is in fathoms, dries or is least."""
    statement = divide_statement(text)
    if statement is None or statement.amount is None:
        return HeightReading(None, _unread(text).faults)
    unit_token = statement.amount.unit
    in_fathoms = unit_token is not None and unit_token.type == "FATHOMS"
    if in_fathoms or not _OF_DEPTH.isdisjoint(statement.senses):
        return HeightReading(None, _unread(text).faults)
    reader = AmountReader(text, statement, None)
    value, unit = reader.value()
    if value is None:
        return HeightReading(None, tuple(reader.faults) or _unread(text).faults)
    if unit is None and chart_unit in _UNCERTAIN_UNITS:
        reader.blame("clearance-unit-unclear")
        return HeightReading(None, tuple(reader.faults))
    if unit is None:
        reader.blame("clearance-unit-not-stated")
    return HeightReading(value, tuple(reader.faults))


_OF_DEPTH = frozenset(
    (
        "DEPTH_WORD", "LEAST", "SWEPT", "DREDGED", "MAINTAINED", "DRIES", "CONTOUR", "NO_BOTTOM",
        "PLUS",
    )
)  # fmt: skip
