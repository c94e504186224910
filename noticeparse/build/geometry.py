"""The geometry of an item: its places with the relation words before them."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Any

from noticeparse.build.extents import over
from noticeparse.build.line_ends import goes_back, runs_between
from noticeparse.build.own_places import with_own_places
from noticeparse.build.positions import Labels, distance_m, place_positions, worked_out
from noticeparse.build.relations import RELATIONS, Found, take_parts
from noticeparse.build.shapes import (
    close_ring,
    is_part_of_limit,
    join_numbered,
    plain_shape,
    shape_faults,
    shape_of,
)
from noticeparse.build.shifts import without_shift
from noticeparse.build.tails import leads_nowhere, settle_within, take_arc, take_tail, told_quality
from noticeparse.build.told_again import without_told_again
from noticeparse.build.torn_relations import has_torn_relation
from noticeparse.catalogue import ENTRIES
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.places import Part, read_phrase
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.geometry import Geometry, Offset
from noticeparse.records.position import Position
from noticeparse.stretch import Stretch, gather
from noticeparse.vocabulary import primitives


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
    found = Found()
    for index, group in enumerate(with_own_places(context, item.groups)):
        phrase = words if index == 0 and not group.lead else gather(context.text, group.lead)
        parts = lead if index == 0 and not group.lead else read_phrase(phrase.text)
        if index == 0 and group.lead:
            take_parts(found, lead, words.text)
        _take_group(context, found, group, parts, phrase, labels, is_move, faults)
    if not item.groups:
        take_parts(found, lead, words.text)
    _insert_where_it_goes(found, item, kind)
    found.is_taken_from = found.is_taken_from and _is_taken(item, words.text)
    rest = take_tail(context, found, item)
    found.is_unclear |= leads_nowhere(words.text, rest.text) or goes_back(context, item)
    _settle_offset(context, found, item, faults, is_move=is_move)
    take_arc(found, words.text)
    settle_within(found, kind, says_limit, words.text)
    join_numbered(found, kind)
    close_ring(found, kind)
    if found.positions:
        labels.last = found.positions[-1]
    found.is_from_to = found.is_from_to or (not is_move and runs_between(context, item, kind))
    shape = shape_of(found, kind, says_limit, is_part=is_part_of_limit(item, words.text))
    if found.is_from_to and shape == "line":
        found.relation = "joining"
    if _is_led_on(found, kind):
        faults.append(over(context, item, "places-of-a-move"))
    faults += shape_faults(context, found, item, shape, is_move=is_move)
    geometry = Geometry(
        shape=shape,
        relation=found.relation,
        direction=found.direction,
        radius_nm=found.radius_nm,
        arc=found.arc,
        offset=_offset_record(found),
        positions=found.positions,
    )
    destination = _destination(found) if is_move else None
    if destination is not None and destination.positions:
        labels.last = destination.positions[-1]
        rest = without_shift(geometry, destination, rest, faults)
    return GeometryReading(geometry, destination, rest)


def _destination(found: Found) -> Geometry:
    return Geometry(
        shape=plain_shape(found.destination),
        relation="at",
        direction=None,
        radius_nm=None,
        arc=None,
        offset=None,
        positions=found.destination,
    )


def _insert_where_it_goes(found: Found, item: Item, kind: str) -> None:
    """In columns FROM and TO a new cable runs from one to the other; a new rock has TO alone."""
    if not found.destination or canonical_verb(item.verb or "") != "insert":
        return
    runs = len(found.positions) == len(found.destination) == 1 and "L" in primitives(kind)
    if runs or not (found.positions or found.has_lost_place):
        found.is_from_to = found.is_from_to or runs
        found.positions += found.destination
        found.destination = []


_MEASURED_BEFORE_FROM = re.compile(
    r"(?:[0-9½¼¾] ?(?:m|n\.?m|c|cbls?|ft|feet|met(?:re|er)s?|yards?|km)\.?|\b(?:mile|cable)s?"
    r"|\b(?:[NSEW]{1,3}|(?:north|south|east|west)[a-z-]{0,12}))[ ,]{0,3}(?:from\b.{0,80})?$",
    re.IGNORECASE | re.DOTALL,
)


_VALUE_BEFORE_FROM = re.compile(
    r"\b(?:depth|clearance|height|elevation|dries|sounding(?=[^,]{1,20},))(?: of)? "
    r"[0-9]{1,4}(?:[.,][0-9]{1,2})? ?(?:m|ft|fms?|feet|fathoms|met(?:re|er)s)\.?"
    r"[ ,]{0,3}(?:from\b.{0,80})?$",
    re.IGNORECASE | re.DOTALL,
)
"""Behind the word for it the figure is no distance: `Delete depth 8.8 m, from P`."""


def _is_taken(item: Item, words: str) -> bool:
    """`deleted from P` is its own place, `045° 200M from P` or `a mile N from P` a reference."""
    if canonical_verb(item.verb or "") != "delete" or "°" in words:
        return False
    return (
        _MEASURED_BEFORE_FROM.search(words) is None or _VALUE_BEFORE_FROM.search(words) is not None
    )


def _take_group(
    context: Context,
    found: Found,
    group: Group,
    parts: tuple[Part, ...],
    phrase: Stretch,
    labels: Labels,
    is_move: bool,
    faults: list[Fault],
) -> None:
    kinds = {part.kind for part in parts}
    goes_to = group.role == "to" or (is_move and "to" in kinds)
    found.is_from_to = found.is_from_to or ("to" in kinds and "from_" in found.kinds)
    if is_move and found.destination and "from_" not in kinds:
        # `from P and Q to R and S`: what follows the first destination is another.
        goes_to = True
    if not is_move and found.has_places and _opens_with_to(parts):
        found.leads_on = True
        opens = bool(group.lead) and opens_a_line(context.text, group.lead[0][0])
        found.leads_on_below |= opens
    if "from_" in kinds:
        found.is_taken_from = True
    if group.role is not None:
        found.relation = RELATIONS.get(group.role, found.relation)
        found.kinds.append(group.role)
    is_reference = take_parts(found, parts, phrase.text)
    found.is_unclear |= found.relation == "at" and has_torn_relation(group, parts, phrase.text)
    known = len(faults)
    of_places = [place_positions(context, place, labels, faults) for place in group.places]
    of_places = without_told_again(context, group.places, of_places, faults)
    positions = [position for positions in of_places for position in positions]
    positions = told_quality(positions, parts, phrase.text)
    found.has_places = found.has_places or bool(group.places)
    if any(ENTRIES[fault.code].severity == "error" for fault in faults[known:]):
        found.has_lost_place = True
    if goes_to:
        found.destination += positions
    elif is_reference:
        found.offset_reference = positions[0] if positions else None
        # `090° 2M from (a), P`: P is neither told of the thing nor the place of (a).
        found.is_unclear |= any(_are_apart(positions[0], one) for one in positions[1:])
    else:
        found.positions += _by_letters(context, group, positions)


def _opens_with_to(parts: tuple[Part, ...]) -> bool:
    """Whether `to` leads straight to a place; `to mark the wreck in` is said of another thing."""
    told = [part.kind for part in parts if part.kind != "separator"]
    return told[:1] == ["to"] and "words" not in told


def _is_led_on(found: Found, kind: str) -> bool:
    """Whether `P to Q` stands with a thing that runs from nowhere to nowhere: it is moved."""
    is_plain = found.relation == "at" and not {"thence", "from_"} & set(found.kinds)
    drawn = set(primitives(kind))
    # On a line of its own it is the other end of what can be nothing but a line.
    runs = drawn == {"L"} if found.leads_on_below else "L" in drawn
    return found.leads_on and is_plain and not runs


def _by_letters(context: Context, group: Group, positions: list[Position]) -> list[Position]:
    """Positions set in two columns are read across; their letters tell the order meant.

    `(1) P; (3) Q; (2) R` stands in no columns: one of the numbers or the order is wrong.
    """
    points = [place for place in group.places if place.element.kind == "point"]
    letters = [str(place.label) for place in points if place.label is not None]
    if not len(letters) == len(positions) == len(group.places) or len(letters) < 3:
        return positions
    starts = [context.text.rfind("\n", 0, place.element.start) for place in points]
    rows = [[at for at, one in enumerate(starts) if one == start] for start in sorted({*starts})]
    down = [row[at] for at in range(max(map(len, rows))) for row in rows if at < len(row)]
    codes = [ord(letters[at][-1]) for at in down]
    if not all(b - a == 1 for a, b in pairwise(codes)):
        return positions
    return [positions[at] for at in down]


def _settle_offset(
    context: Context, found: Found, item: Item, faults: list[Fault], *, is_move: bool
) -> None:
    offset, reference = found.offset, found.offset_reference
    if found.is_unclear:
        start, end = item.pieces[0][0], item.pieces[-1][1]
        values = {"written": context.written(start, end)}
        faults.append(Fault("relation-unclear", start, end, values))
        found.positions = []
        return
    if offset is None and not found.lost_distance and "from_" not in found.kinds:
        return
    start, end = item.pieces[0][0], item.pieces[-1][1]
    values = {"written": context.written(start, end)}
    if offset is None:
        if found.lost_distance:
            faults.append(Fault("offset-not-worked-out", start, end, values))
            found.positions = []
            return
        has_own = is_move or found.is_taken_from
        if "from_" in found.kinds and len(found.positions) == 1 and not has_own:
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
        quality = "approximate" if found.is_rough else None
        found.positions = [computed.model_copy(update={"quality": quality})]
        found.relation = "from_reference"
        return
    if _are_apart(computed, found.positions[0]):
        apart = distance_m(computed, found.positions[0])
        values = {"metres": f"{apart:.0f}", **values}
        faults.append(Fault("offset-disagrees", _line_of_place(context, item), end, values))


def _line_of_place(context: Context, item: Item) -> int:
    """Where an item begins, or its last words where they stand with its place on another line."""
    start = item.pieces[0][0]
    last, places = item.words[-1:], item.places
    if not last or not places or "\n" not in context.text[start : last[0][0]]:
        return start
    is_beside = "\n" not in context.text[last[0][0] : places[0].element.start]
    return last[0][0] if is_beside and last[0][0] < places[0].element.start else start


def _are_apart(one: Position, other: Position) -> bool:
    """Whether two positions differ by more than their figures leave open."""
    return distance_m(one, other) > 2 * (one.resolution_m + other.resolution_m) + 20


def _offset_record(found: Found) -> Offset | None:
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
