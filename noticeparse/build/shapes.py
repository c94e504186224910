"""The shape that the places of an item make, and what is wrong with it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.relations import Found
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.numbers import COUNT_WORDS, counted
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.geometry import Shape
from noticeparse.records.position import Position
from noticeparse.vocabulary import primitives

_OF_REFERENCE = frozenset({"close", "between", "vicinity"})


def close_ring(found: Found, kind: str) -> None:
    """Leave out a last position that only repeats the first of a limit.

    A thing that is drawn as nothing but a line runs back to its first position.
    """
    if set(primitives(kind)) == {"L"}:
        return
    positions = found.positions
    first_last = len(positions) > 3 and (
        (positions[0].lat, positions[0].lon) == (positions[-1].lat, positions[-1].lon)
    )
    is_limit = found.relation in ("joining", "within")
    if first_last and found.relation == "at" and "A" in primitives(kind):
        # A list that comes back to its first position goes round an area.
        found.relation, is_limit = "joining", True
    if first_last and is_limit:
        found.is_ring = True
        found.positions = positions[:-1]


def join_numbered(found: Found, kind: str) -> None:
    """Join positions that keys count, `Position 1: …`, or that are told one behind the other.

    `P, thence to Q, thence to R` runs through them, and `thence to the first position` closes it.
    Corners are those of an area, `spoil ground, corners:`, but depths at its corners are points.
    A line runs between its positions, `cable between P, Q and R`; a buoy lies off them.
    """
    is_run = found.relation == "at" and len(found.positions) > 1
    may_be_area = "A" in primitives(kind) or kind == "unknown"
    if "corners" in found.kinds and is_run and may_be_area:
        found.relation = "within"
        found.kinds.append("bounded")
    leads = {"numbered", "thence", "ring"} & set(found.kinds)
    if leads and is_run and primitives(kind) & {"L", "A"}:
        found.relation = "joining"
    is_line = "L" in primitives(kind) and "A" not in primitives(kind)
    if found.relation == "between" and is_line and len(found.positions) > 1:
        found.relation = "joining"
    if "ring" in found.kinds and found.relation == "joining" and "A" in primitives(kind):
        found.is_ring = True


def plain_shape(positions: list[Position]) -> Shape:
    """The shape of positions that no relation joins."""
    if not positions:
        return "unlocated"
    return "point" if len(positions) == 1 else "points"


_LIMIT_OF = re.compile(
    r"(?:an? |the )?(?:(?:(?:north|south|east|west)[a-z-]{0,12}|seaward|landward|[NSEW]{1,3}) )?"
    r"(?:limit|boundary) of ",
    re.IGNORECASE,
)


def is_part_of_limit(item: Item, words: str) -> bool:
    """Whether what is inserted is one stretch of a limit, where two positions are its ends.

    The area itself is not inserted; what is deleted or moved might be taken for all of it.
    """
    return canonical_verb(item.verb or "") == "insert" and _LIMIT_OF.match(words) is not None


def shape_of(found: Found, kind: str, says_limit: bool, *, is_part: bool = False) -> Shape:
    """The shape told by the relation words and, for joined positions, by S-57 primitives."""
    if found.arc is not None:
        return "arc"
    is_round = found.radius_nm is not None and found.relation not in _OF_REFERENCE
    if is_round or "arc" in found.kinds:
        return "circle"
    if not found.has_places and found.offset is None:
        return "unlocated"
    count = len(found.positions)
    if found.relation in _OF_REFERENCE:
        return "points" if count > 1 else "point"
    if found.relation == "within":
        return "area" if count != 1 or "bounded" in found.kinds else "point"
    if found.is_from_to and "L" in primitives(kind) and len(found.positions) > 1:
        # A cable from P to Q runs between them.
        return "line"
    if found.relation == "joining":
        drawn = primitives(kind)
        # A limit of nothing that is named, told by its two ends, is a line; so is a thing that
        # S-57 draws as nothing else: `outer limit of traffic separation scheme`.
        is_line = (is_part or kind == "maritime_limit") and count == _FEWEST["line"]
        if is_line and is_part:
            return "line"
        is_limit = says_limit and not is_line and set(drawn) != {"L"}
        is_area = found.is_ring or is_limit or ("A" in drawn and "L" not in drawn)
        return "area" if is_area else "line"
    drawn = primitives(kind)
    if drawn and "P" not in drawn and count >= _FEWEST["line" if "L" in drawn else "area"]:
        # A cable at several positions runs through them: S-57 knows no point for it.
        return "line" if "L" in drawn else "area"
    return "points" if count > 1 else "point"


_FEWEST = {"line": 2, "area": 3}
_COUNTED = re.compile(
    r"\b(?P<first>(?:this|the above)(?: (?:position|point|place))? and the (?:next |following )?)?"
    rf"(?P<count>{'|'.join(COUNT_WORDS)}|[2-9]|[1-9][0-9]) (?:following |corner )?"
    r"(?:positions|points|corners|co-?ordinates)\b",
    re.IGNORECASE,
)
_ROUND = re.compile(r"\b(?:circles?|circular|radius)\b", re.IGNORECASE)
_ENDLESS = re.compile(
    r"\bthence\b(?! to(?:[ ,;:.]{0,8}(?:$|thence\b)| (?:the )?(?:first|start|init|orig|point of)))"
    r"|\b(?:and|to) (?:along )?(?:the )?(?:shore|coast|coastline)\b",
    re.IGNORECASE,
)


def shape_faults(
    context: Context, found: Found, item: Item, shape: Shape, *, is_move: bool
) -> Iterator[Fault]:
    """A line or area with too few corners, one that ends on the coast, moves that do not pair."""
    start, end = item.pieces[0][0], item.pieces[-1][1]
    for code, values in _wrong(context, found, item, shape, is_move):
        yield Fault(code, start, end, {"written": context.written(start, end), **values})


def _wrong(
    context: Context, found: Found, item: Item, shape: Shape, is_move: bool
) -> Iterator[tuple[str, dict[str, str]]]:
    # A place that could not be read is told of where it stands.
    if len(found.positions) < _FEWEST.get(shape, 0) and not found.has_lost_place:
        yield "geometry-too-few-positions", {"shape": shape}
    for above, number in pairwise([0, *found.counts]):
        if number != above + 1:
            yield "place-not-next", {"written": str(number), "before": str(above)}
            break
    if found.relation == "centred_on" and found.radius_nm is None:
        words = " ".join(context.text[a:b] for a, b in item.pieces)
        if found.arc is None and _ROUND.search(words):
            yield "circle-without-radius", {}
    if found.relation in ("joining", "within"):
        words = " ".join(context.text[a:b] for a, b in (*item.words, *item.tail))
        leads = " ".join(context.text[a:b] for group in item.groups for a, b in group.lead)
        if _ENDLESS.search(f"{words} {leads}"):
            yield "geometry-along-coast", {}
        count = _COUNTED.search(f"{words} {leads}")
        if count is not None and not found.has_lost_place:
            told = counted(count["count"]) + bool(count["first"])
            # A ring that is closed has its first corner twice.
            if told not in (len(found.positions), len(found.positions) + found.is_ring):
                values = {"count": str(told), "found": str(len(found.positions))}
                yield "geometry-not-as-counted", values
    elif shape == "line" and _ENDLESS.search(" ".join(context.text[a:b] for a, b in item.tail)):
        yield "geometry-along-coast", {}
    leads_on = bool(found.destination) and not is_move
    runs = shape == "line" or (shape == "area" and "thence" in found.kinds)
    if leads_on or (found.is_from_to and not is_move and not runs):
        yield "places-of-a-move", {}
    counts = {len(found.positions), len(found.destination)}
    lost = not found.positions and found.has_lost_place
    if found.destination and len(counts) > 1 and not lost:
        yield "move-unpaired", {}
