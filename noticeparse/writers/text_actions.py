"""One action of the reading copy: what is to be done, with what, and where."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from noticeparse.records.action import Action, Amend, Move, Replace
from noticeparse.records.feature import Feature
from noticeparse.records.finding import Finding
from noticeparse.records.geometry import Geometry, Offset
from noticeparse.records.position import Position
from noticeparse.records.sheet import SheetPlace
from noticeparse.writers.coordinates import readable
from noticeparse.writers.drawing import is_of_reference
from noticeparse.writers.paragraphs import NO_BREAK, filled, hanging
from noticeparse.writers.wording import bearing, change_words, miles, plain, sheet_words

_BOX, _NO_BOX = "[ ]", " X "
_WORDS_AT = 14
_PLACE = " " * _WORDS_AT
_INSIDE = " " * (_WORDS_AT + 2)
_MARKS = {"error": "!!", "warning": "! ", "info": "- "}
_SHAPES = {
    "line": "joining",
    "area": "area with the corners",
    "circle": "circle round",
    "arc": "arc round",
}
_RELATIONS = {
    "close": "close",
    "between": "between",
    "vicinity": "in the vicinity of",
    "centred_on": "centred on",
    "within": "within",
}
_SEVERITIES = ("error", "warning", "info")


def action_lines(action: Action, findings: list[Finding]) -> Iterator[str]:
    """The lines of an action, the findings that point at it below."""
    box = _BOX if action.usable else _NO_BOX
    lead = f"  {box} {action.verb.capitalize():<8}"
    label = f"({action.label}) " if action.label else ""
    yield from hanging(lead, f"{label}{_feature(action)}")
    if isinstance(action, Amend):
        for change in action.changes:
            yield from filled(f"> {change_words(change)}", _PLACE, _INSIDE)
    depth = action.feature.depth
    if depth and depth.value_m is not None and depth.unit not in (None, "m"):
        yield f"{_PLACE}= {plain(depth.value_m)} m"
    if isinstance(action, Move):
        yield from _geometry(action.geometry, "from ")
        yield from _geometry(action.destination, "to   ")
    else:
        yield from _geometry(action.geometry, "")
    if action.sheet:
        yield from _sheet(_on_sheet(action.geometry), action.sheet.positions)
        if isinstance(action, Move):
            yield from _sheet(f"to, {_on_sheet(action.destination)}", action.sheet.destination)
    if not action.usable:
        yield f"{_PLACE}NOT TO BE USED: read line {action.span.line} in the notice"
        yield from filled(f"as written: {action.text}", _PLACE, _INSIDE)
    yield from finding_lines(findings, _PLACE)


def finding_lines(findings: Iterable[Finding], indent: str) -> Iterator[str]:
    """Findings in a line or two each, the gravest first."""
    for finding in sorted(findings, key=lambda one: _SEVERITIES.index(one.severity)):
        line = f"line {finding.span.line}: " if finding.span else ""
        words = f"{_MARKS[finding.severity]} {finding.severity}, {line}{finding.message}"
        yield from filled(words, indent, f"{indent}   ")


def _on_sheet(geometry: Geometry) -> str:
    """What is said of positions that could be taken for those of the feature."""
    return "reference on the sheet" if is_of_reference(geometry) else "on the sheet"


def _sheet(lead: str, places: list[SheetPlace]) -> Iterator[str]:
    words = sheet_words(places)
    if words:
        yield from filled(f"{lead}: {words}", _PLACE, _INSIDE)


def _feature(action: Action) -> str:
    words = _words(action.feature)
    if isinstance(action, Replace):
        return f"{words} by {_words(action.replacement)}"
    return words


def _words(feature: Feature) -> str:
    return feature.text or feature.legend or feature.kind.replace("_", " ")


def _geometry(geometry: Geometry, lead: str) -> Iterator[str]:
    """Where it applies: how, the positions, and on a line apart what they are told from."""
    inside = f"{_PLACE}{' ' * len(lead)}"
    how, positions = how_words(geometry), [_position(one) for one in geometry.positions]
    if len(positions) > 1:
        lines = [how, *positions] if how else positions
    else:
        lines = [" ".join(part for part in (how, *(positions or ["no position"])) if part)]
    if geometry.offset:
        # Not on one line: the two positions could be taken for each other.
        lines.append(f"that is {offset_words(geometry.offset)}")
    for number, line in enumerate(lines):
        yield from filled(line, inside if number else f"{_PLACE}{lead}", f"{inside}  ")


def how_words(geometry: Geometry) -> str:
    """How the positions are meant: `close NE of`, `circle of 0.2 M radius round`."""
    words = _SHAPES.get(geometry.shape) or _RELATIONS.get(geometry.relation, "")
    if geometry.relation == "close":
        words = f"close {geometry.direction} of" if geometry.direction else "close to"
    elif geometry.shape in ("circle", "arc"):
        words = "circle" if geometry.shape == "circle" else "arc"
        if geometry.radius_nm is not None:
            words += f" of {miles(geometry.radius_nm)} radius"
        words += f"{_bearings(geometry)} round"
    return words


def _bearings(geometry: Geometry) -> str:
    told = geometry.arc
    if told is None:
        return ""
    ends = {
        "from_centre": "from the centre",
        "from_seaward": "from seaward",
        "not_stated": "from which end is not stated",
    }
    sense = told.sense or "which way round is not stated"
    limits = f"{bearing(told.from_deg)} to {bearing(told.to_deg)}"
    return f", bearings {limits}, {sense}, {ends[told.bearings]},"


def offset_words(offset: Offset) -> str:
    """`0.6 M 240° true from the light`, with the position of what it is told from."""
    parts = []
    if offset.distance_nm is not None:
        parts.append(miles(offset.distance_nm))
    if offset.bearing_deg is not None:
        parts.append(f"{bearing(offset.bearing_deg)} true")
    elif offset.direction:
        parts.append(offset.direction)
    words = " ".join(parts)
    reference = offset.reference_text or ""
    if offset.reference:
        reference = f"{reference} {_held_together(offset.reference)}".strip()
    return f"{words} from {reference}" if reference else words


def _position(position: Position) -> str:
    words = f"({position.label}) " if position.label else ""
    words += _held_together(position)
    notes: list[str] = [position.quality] if position.quality else []
    if position.via == "offset":
        notes.append(f"worked out, good to {position.resolution_m:g} m")
    return f"{words} ({', '.join(notes)})" if notes else words


def _held_together(position: Position) -> str:
    return readable(position).replace(" ", NO_BREAK)
