"""The geometry of an item: its places with the relation words before them."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any

from noticeparse.build.positions import Labels, distance_m, place_positions, worked_out
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item
from noticeparse.readers.places import Offset as OffsetWords
from noticeparse.readers.places import Part, is_connector, read_phrase
from noticeparse.readers.positions import quality_mark
from noticeparse.records.geometry import Arc, Geometry, Offset, Relation, Shape
from noticeparse.records.position import Position
from noticeparse.stretch import Stretch, gather
from noticeparse.vocabulary import primitives

_LEADING: dict[str, Relation] = {
    "joining": "joining", "bounded": "within", "within": "within", "centred": "centred_on",
    "between": "between", "vicinity": "vicinity", "along": "joining", "close": "close",
}  # fmt: skip
_OF_REFERENCE = frozenset({"close", "between", "vicinity"})


@dataclass(slots=True)
class _Found:
    """What the groups of an item say, gathered in order."""

    kinds: list[str] = field(default_factory=list)
    positions: list[Position] = field(default_factory=list)
    destination: list[Position] = field(default_factory=list)
    relation: Relation = "at"
    direction: str | None = None
    radius_nm: Decimal | None = None
    arc: Arc | None = None
    offset: OffsetWords | None = None
    offset_text: str | None = None
    offset_reference: Position | None = None
    offset_at: int = 0
    is_ring: bool = False
    has_places: bool = False


class GeometryReading:
    """The geometry, the destination of a move, and the words behind the last place."""

    def __init__(self, geometry: Geometry, destination: Geometry | None, rest: Stretch) -> None:
        self.geometry = geometry
        self.destination = destination
        self.rest = rest


def read_geometry(
    context: Context,
    item: Item,
    lead: tuple[Part, ...],
    words: Stretch,
    labels: Labels,
    *,
    kind: str,
    is_move: bool,
    says_limit: bool,
    faults: list[Fault],
) -> GeometryReading:
    """The geometry of an item; `lead` are the relation parts at the end of its words."""
    found = _Found()
    for index, group in enumerate(item.groups):
        phrase = words if index == 0 and not group.lead else gather(context.text, group.lead)
        parts = lead if index == 0 and not group.lead else read_phrase(phrase.text)
        if index == 0 and group.lead:
            _take_parts(found, lead, words.text)
        _take_group(context, found, group, parts, phrase, labels, is_move, faults)
    if not item.groups:
        _take_parts(found, lead, words.text)
    rest = _take_tail(context, found, item)
    _settle_offset(context, found, item, faults, is_move=is_move)
    _close_ring(found)
    if found.positions:
        labels.last = found.positions[-1]
    shape = _shape(found, kind, says_limit)
    geometry = Geometry(
        shape=shape,
        relation=found.relation,
        direction=found.direction,
        radius_nm=found.radius_nm,
        arc=found.arc,
        offset=_offset_record(found),
        positions=found.positions,
    )
    destination = None
    if is_move:
        destination = Geometry(
            shape=_plain_shape(found.destination),
            relation="at",
            direction=None,
            radius_nm=None,
            arc=None,
            offset=None,
            positions=found.destination,
        )
        if found.destination:
            labels.last = found.destination[-1]
    return GeometryReading(geometry, destination, rest)


def _take_group(
    context: Context,
    found: _Found,
    group: Group,
    parts: tuple[Part, ...],
    phrase: Stretch,
    labels: Labels,
    is_move: bool,
    faults: list[Fault],
) -> None:
    goes_to = group.role == "to" or (is_move and any(part.kind == "to" for part in parts))
    if group.role in ("joining", "bounded", "centred"):
        found.relation = _LEADING[group.role]
        found.kinds.append(group.role)
    is_reference = _take_parts(found, parts, phrase.text)
    positions = [
        position
        for place in group.places
        for position in place_positions(context, place, labels, faults)
    ]
    found.has_places = found.has_places or bool(group.places)
    if goes_to:
        found.destination += positions
    elif is_reference:
        found.offset_reference = positions[0] if positions else None
        found.offset_at = group.places[0].element.start if group.places else 0
    elif found.offset_reference is not None and not found.positions:
        found.positions = positions
    else:
        found.positions += _by_letters(group, positions)


def _by_letters(group: Group, positions: list[Position]) -> list[Position]:
    """Positions set in two columns are read across; their letters tell the order meant."""
    letters = [place.label for place in group.places if place.element.kind == "point"]
    if len(letters) != len(positions) or len(letters) < 3 or None in letters:
        return positions
    ordered = sorted(str(letter) for letter in letters)
    codes = [ord(letter[-1]) for letter in ordered]
    runs_on = all(b - a == 1 for a, b in zip(codes, codes[1:], strict=False))
    if not runs_on or ordered == letters:
        return positions
    return [position for _, position in sorted(zip(letters, positions, strict=True), key=_letter)]


def _letter(pair: tuple[str | None, Position]) -> str:
    return pair[0] or ""


def _take_parts(found: _Found, parts: tuple[Part, ...], text: str) -> bool:
    """Note what relation parts say; True where the coming place is an offset's reference."""
    is_reference = False
    after_comma = False
    for part in parts:
        kind = part.kind
        if kind == "offset":
            found.offset = part.value
            is_reference = True
            after_comma = False
        elif kind == "words" and is_reference:
            found.offset_text = text[part.start : part.end]
        elif kind == "separator":
            after_comma = text[part.start : part.end] == ","
            continue
        elif kind == "at":
            # `from the light, in P`: P is the feature's own; `from the light in P`: the light's.
            if is_reference and after_comma:
                is_reference = False
        elif kind == "radius":
            found.radius_nm = part.value
        elif kind == "bearings":
            found.arc = part.value
        elif kind == "close":
            found.direction = part.value
            found.relation = "close"
        elif kind in _LEADING and not (kind == "between" and found.positions):
            found.relation = _LEADING[kind]
        found.kinds.append(kind)
    return is_reference


def _take_tail(context: Context, found: _Found, item: Item) -> Stretch:
    """Radius and bearings behind the last place; the other words are handed back."""
    rest: list[tuple[int, int]] = []
    for start, end in item.tail:
        words = context.text[start:end]
        parts = read_phrase(words)
        if any(part.kind in ("radius", "bearings") for part in parts):
            telling = tuple(part for part in parts if part.kind in ("radius", "bearings"))
            _take_parts(found, telling, words)
            rest += [
                (start + part.start, start + part.end) for part in parts if part.kind == "words"
            ]
        elif quality_mark(words) or not is_connector(words):
            rest.append((start, end))
    return gather(context.text, rest)


def _settle_offset(
    context: Context, found: _Found, item: Item, faults: list[Fault], *, is_move: bool
) -> None:
    offset, reference = found.offset, found.offset_reference
    start, end = item.pieces[0][0], item.pieces[-1][1]
    values = {"written": context.written(start, end)}
    if offset is None:
        if "from_" in found.kinds and len(found.positions) == 1 and not is_move:
            # `buoy 045° 200M from P`: P is not where the buoy lies.
            faults.append(Fault("offset-not-worked-out", start, end, values))
            found.positions = []
        return
    if offset.is_magnetic:
        faults.append(Fault("offset-magnetic", start, end, values))
        return
    computed = worked_out(reference, offset) if reference is not None else None
    if computed is None:
        if not found.positions:
            faults.append(Fault("offset-not-worked-out", start, end, values))
        return
    if not found.positions:
        found.positions = [computed]
        found.relation = "from_reference"
        return
    apart = distance_m(computed, found.positions[0])
    if apart > 2 * (computed.resolution_m + found.positions[0].resolution_m) + 20:
        values = {"metres": f"{apart:.0f}", **values}
        faults.append(Fault("offset-disagrees", start, end, values))


def _close_ring(found: _Found) -> None:
    positions = found.positions
    first_last = len(positions) > 3 and (
        (positions[0].lat, positions[0].lon) == (positions[-1].lat, positions[-1].lon)
    )
    if first_last and found.relation in ("joining", "within"):
        found.is_ring = True
        found.positions = positions[:-1]


def _plain_shape(positions: list[Position]) -> Shape:
    if not positions:
        return "unlocated"
    return "point" if len(positions) == 1 else "points"


def _shape(found: _Found, kind: str, says_limit: bool) -> Shape:
    if found.arc is not None:
        return "arc"
    if found.radius_nm is not None or "arc" in found.kinds:
        return "circle"
    if not found.has_places and found.offset is None:
        return "unlocated"
    count = len(found.positions)
    if found.relation in _OF_REFERENCE:
        return "points" if count > 1 else "point"
    if found.relation == "within":
        return "area" if count != 1 else "point"
    if found.relation == "joining":
        drawn = primitives(kind)
        is_area = found.is_ring or says_limit or ("A" in drawn and "L" not in drawn)
        return "area" if is_area else "line"
    return "points" if count > 1 else "point"


def _offset_record(found: _Found) -> Offset | None:
    offset: Any = found.offset
    if offset is None:
        return None
    return Offset(
        bearing_deg=offset.bearing_deg,
        direction=offset.direction,
        distance_nm=offset.distance_nm,
        reference=found.offset_reference,
        reference_text=found.offset_text,
    )
