"""Where an action applies: the words that lead to its positions, the positions, what follows them.

A position that was taken over from a letter is written as that letter, if the letter stands for
just this position further up in the section as written; else it is written out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.build.positions import worked_out
from noticeparse.canonical import figures
from noticeparse.canonical.lights import bearing
from noticeparse.canonical.sameness import is_same
from noticeparse.readers.offsets import Offset as OffsetWords
from noticeparse.readers.offsets import read_offset
from noticeparse.records.geometry import Geometry, Offset
from noticeparse.records.position import Position
from noticeparse.vocabulary import primitives

_LEADS = {
    "centred_on": "centred on", "joining": "joining", "within": "bounded by",
    "between": "between", "vicinity": "in the vicinity of",
}  # fmt: skip
_SENSES = {"clockwise": ", clockwise", "anticlockwise": ", anticlockwise"}
_ENDS = {"from_centre": ", from the centre", "from_seaward": ", from seaward"}
_LONGEST_LETTER = 2


class Placed(NamedTuple):
    """The words before the positions, and the positions with what follows them."""

    lead: str
    positions: str


class Style(NamedTuple):
    """How a place is written where there is a choice."""

    spells_letters: bool = False
    """Write out the positions that a letter stands for."""
    exchanges_within: bool = False
    """`within` for `bounded by`, or the other way round."""


class NotWritable(Exception):
    """The words of a place that no wording holds; says what it is."""


class Letters:
    """The letters given so far in a section as written, and the positions they stand for."""

    def __init__(self) -> None:
        self._known: dict[str, list[Position]] = {}
        self._last: Position | None = None

    def define(self, label: str, positions: Sequence[Position]) -> None:
        """Let a letter stand for positions."""
        self._known[label] = list(positions)

    def end_item(self, geometry: Geometry, label: str | None) -> None:
        """Note the positions of an item that has been written."""
        if geometry.positions:
            self._last = geometry.positions[-1]
        if label is not None:
            self.define(label, geometry.positions)

    def written(self, positions: Sequence[Position], style: Style) -> Iterator[str]:
        """Each position, or the letter that stands for it and perhaps for those behind it."""
        at = 0
        while at < len(positions):
            one = positions[at]
            label = one.label
            known = self._known.get(label or "", [])
            taken = [known_one.model_copy(update={"label": label}) for known_one in known]
            found = positions[at : at + len(taken)]
            is_letter = label is not None and label.isalpha() and len(label) <= _LONGEST_LETTER
            is_letter = is_letter and not style.spells_letters
            if one.via != "stated" and is_letter and taken and _are_same(found, taken):
                yield f"({label})"
                at += len(taken)
                continue
            if one.via != "stated" and len(positions) == 1 and _is_one(one, self._last):
                yield _SAME
            else:
                if one.via == "offset":
                    raise NotWritable("a position that was worked out stands for itself")
                lettered = f"({label}) " if label is not None else ""
                yield lettered + figures.position(one)
                if label is not None:
                    self.define(label, [one])
            at += 1


_SAME = "the same position"


def _is_one(one: Position, other: Position | None) -> bool:
    return other is not None and is_same(one, other)


def _are_same(some: Sequence[Position], others: Sequence[Position]) -> bool:
    return len(some) == len(others) and all(map(is_same, some, others))


def listed(words: Sequence[str]) -> str:
    """`P`, `P and Q`, `P, Q and R`; letters are followed by `above`."""
    runs: list[str] = []
    letters: list[str] = []
    for word in [*words, ""]:
        if word.startswith("(") and word.endswith(")") and " " not in word:
            letters.append(word)
            continue
        if letters:
            runs.append(f"{_series(letters)} above")
            letters = []
        if word:
            runs.append(word)
    return _series(runs)


def _series(words: Sequence[str]) -> str:
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"


def place(geometry: Geometry, letters: Letters, style: Style, kind: str) -> Placed:
    """The words of a geometry of a feature of this kind.

    Raises NotWritable.
    """
    offset = _offset(geometry, letters, style) if geometry.offset is not None else ""
    if geometry.relation == "from_reference":
        lead, _, reference = offset.partition("\n")
        return Placed(f", {lead}", reference)
    words = list(letters.written(geometry.positions, style))
    if words and words[0] == _SAME and geometry.relation == "at":
        return Placed(", in", _SAME)
    if _must_be_closed(geometry, kind) and geometry.positions:
        words.append(figures.position(geometry.positions[0]))
    lead = _lead(geometry, style, kind)
    if offset:
        lead = f", {offset.replace(chr(10), ' ')}, in"
    tail = ""
    if geometry.radius_nm is not None and geometry.arc is None and geometry.shape != "arc":
        tail = f", radius {_length(geometry)}"
    return Placed(lead, listed(words) + tail)


def _length(geometry: Geometry) -> str:
    words = figures.miles(geometry.radius_nm) if geometry.radius_nm is not None else None
    if words is None:
        raise NotWritable(f"a radius of {geometry.radius_nm} miles")
    return words


def _must_be_closed(geometry: Geometry, kind: str) -> bool:
    """Whether joined positions are an area only because their ring is closed."""
    drawn = primitives(kind)
    is_area = geometry.relation == "joining" and geometry.shape == "area"
    return is_area and not ("A" in drawn and "L" not in drawn)


def _lead(geometry: Geometry, style: Style, kind: str) -> str:
    relation = geometry.relation
    if relation == "close":
        return f", close {geometry.direction} of" if geometry.direction else ", close to"
    lead = f", {_LEADS[relation]}" if relation in _LEADS else ""
    if relation == "within" and _is_bounded(geometry, kind) == style.exchanges_within:
        lead = ", within"
    arc = geometry.arc
    if arc is None and not (geometry.shape == "circle" and geometry.radius_nm is None):
        return lead
    circle = ", arc of a circle"
    if geometry.radius_nm is not None:
        circle += f" of radius {_length(geometry)}"
    if arc is not None:
        limits = f"{bearing(arc.from_deg)} and {bearing(arc.to_deg)}"
        circle += f", between the bearings {limits}"
        circle += _SENSES.get(arc.sense or "", "") + _ENDS.get(arc.bearings, "")
    return circle + lead


def _is_bounded(geometry: Geometry, kind: str) -> bool:
    """A restricted area is bounded by its positions; a legend or a buoy lies within them."""
    return geometry.shape == "area" and "A" in primitives(kind)


def _offset(geometry: Geometry, letters: Letters, style: Style) -> str:
    """`0.4 miles 128° from the light in`, then the reference behind a line end."""
    offset = geometry.offset
    assert offset is not None
    wanted = geometry.positions[0] if geometry.relation == "from_reference" else None
    words = next(_distances(offset, wanted), None)
    if words is None:
        raise NotWritable("a bearing and distance")
    if offset.reference_text:
        words += f" {offset.reference_text}"
    if offset.reference is None:
        return words
    reference = list(letters.written([offset.reference], style))
    in_ = " in" if offset.reference_text or reference[0] == _SAME else ""
    return f"{words}{in_}\n{listed(reference)}"


def _distances(offset: Offset, wanted: Position | None) -> Iterator[str]:
    """Ways to write bearing and distance that read as they do, and lead to the same place."""
    side = f"{offset.direction} of" if offset.direction else ""
    if offset.bearing_deg is not None:
        for degrees in dict.fromkeys(
            (format(offset.bearing_deg, "f"), bearing(offset.bearing_deg))
        ):
            whole, _, decimals = degrees.rstrip("°").partition(".")
            side = f"{whole.zfill(3)}{'.' + decimals if decimals else ''}° from"
            yield from _with_distance(offset, side, wanted)
        return
    yield from _with_distance(offset, side, wanted)


def _with_distance(offset: Offset, side: str, wanted: Position | None) -> Iterator[str]:
    for length in _lengths(offset):
        words = f"{length} {side}".strip()
        read = read_offset(words)
        if read is None or not _says(read, offset):
            continue
        if wanted is None or offset.reference is None:
            yield words
            continue
        there = worked_out(offset.reference, read)
        if there is not None and (there.iso6709, there.resolution_m) == (
            wanted.iso6709,
            wanted.resolution_m,
        ):
            yield words


def _says(read: OffsetWords, offset: Offset) -> bool:
    names = ("bearing_deg", "direction")
    if any(getattr(read, name) != getattr(offset, name) for name in names):
        return False
    one, other = read.distance_nm, offset.distance_nm
    if one is None or other is None:
        return one is other
    return float(one) == float(other)


def _lengths(offset: Offset) -> Iterator[str]:
    """The distance with as many decimals as may have been written, in miles or in metres."""
    length = offset.distance_nm
    if length is None:
        yield ""
        return
    words = figures.miles(length)
    if words is None:
        return
    figure, _, unit = words.partition(" ")
    yield words
    for decimals in range(1, 4):
        whole, _, rest = figure.partition(".")
        if len(rest) <= decimals:
            yield f"{whole}.{rest.ljust(decimals, '0')} {unit}"
    metres = figures.metres_of(length)
    if unit != "metres" and metres is not None:
        yield metres
