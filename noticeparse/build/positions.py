"""Positions of an item: points as records, references resolved, offsets worked out on WGS84."""

from __future__ import annotations

from decimal import Decimal
from math import log10

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Place
from noticeparse.layout.line.elements import Element
from noticeparse.readers.letters import read_letters
from noticeparse.readers.offsets import COMPASS
from noticeparse.readers.offsets import Offset as OffsetWords
from noticeparse.readers.positions import Point, two_figures
from noticeparse.records.position import Position, PositionQuality

_FULL_CIRCLE = 360
_MILE_M = 1852.0
_DEGREE_M = 60 * _MILE_M


_FIRST = frozenset({"a", "A", "i", "1"})


class Labels:
    """The letters of a chart section and the positions each stands for.

    Letters may begin again under another verb.  Only a letter used twice in one list, or one that
    is referred to after that, is in doubt.
    """

    def __init__(self) -> None:
        self._known: dict[str, list[Position]] = {}
        self._own: set[str] = set()
        """The letters of the list that is under way."""
        self._twice: set[str] = set()
        self._verb: str | None = None
        self._may_begin = False
        self.referred: set[str] = set()
        """The letters that an item has referred to."""
        self.unnamed: set[str] = set()
        """The letters of lists of positions, with which no thing is named."""
        self.last: Position | None = None
        self.doubts: dict[str, tuple[Fault, ...]] = {}
        """The faults of the places of a list, by their letters; they are told of what refers."""

    def under(self, verb: str | None) -> None:
        """Note the verb of the coming item: under another one a list may begin."""
        if verb != self._verb:
            self._verb, self._may_begin = verb, True

    def define(self, letter: str, positions: list[Position]) -> bool:
        """Let a letter stand for positions; False where it stood for others in the same list."""
        if self._may_begin and letter in self._own and letter.rpartition(".")[2] in _FIRST:
            self._own = set()
        self._may_begin = False
        if letter in self._known:
            self._twice.add(letter)
        is_new = letter not in self._own
        self._own.add(letter)
        self._known[letter] = positions
        return is_new

    def lacks_place(self, letter: str) -> bool:
        """Whether a letter is that of an item in the same list for which no position was found."""
        return letter in self._own and not self._known[letter]

    def is_double(self, letter: str) -> bool:
        """Whether a letter stands for other positions in a list further up."""
        return letter in self._twice

    def get(self, letter: str) -> list[Position] | None:
        """The positions of a letter that an item refers to, or None."""
        self.referred.add(letter)
        return self._known.get(letter)


def scoped(label: str, scope: str | None) -> str:
    """The name of a letter within its list: `(iii)` under `(b)` is `b.iii`."""
    return label if scope is None else f"{scope}.{label}"


def stated(context: Context, point: Point, element: Element, label: str | None) -> Position:
    """The record of a point that stands in the text."""
    return Position(
        lat=point.lat,
        lon=point.lon,
        iso6709=point.iso6709,
        written=context.written(element.start, element.end),
        resolution_m=point.resolution_m,
        label=label,
        via="stated",
        quality=element.value.quality,
        span=context.span(element.start, element.end),
    )


def place_positions(
    context: Context, place: Place, labels: Labels, faults: list[Fault]
) -> list[Position]:
    """The positions of one place; what cannot be resolved leaves a fault."""
    element = place.element
    if element.kind == "point":
        faults += element.value.faults
        if element.value.point is None:
            return []
        position = stated(context, element.value.point, element, place.label)
        if place.label is None:
            return [position]
        letter = scoped(place.label, place.scope)
        code = "position-of-other-item" if labels.lacks_place(letter) else "letter-used-twice"
        if not labels.define(letter, [position]):
            faults.append(Fault(code, element.start, element.end, {"letter": place.label}))
        return [position]
    if element.kind == "same":
        return _same(context, element, labels, faults)
    return _referred(context, element, labels, faults)


def _same(
    context: Context, element: Element, labels: Labels, faults: list[Fault]
) -> list[Position]:
    if labels.last is None:
        written = {"written": context.written(element.start, element.end)}
        faults.append(Fault("reference-unknown", element.start, element.end, written))
        return []
    return [_taken_over(context, labels.last, element, labels.last.label)]


def _referred(
    context: Context, element: Element, labels: Labels, faults: list[Fault]
) -> list[Position]:
    found: list[Position] = []
    for letter in read_letters(context.text[element.start : element.end]):
        positions = labels.get(letter)
        doubts = labels.doubts.get(letter, ())
        faults += doubts
        if positions is None and doubts:
            continue
        if positions is None:
            values = {"letter": letter, "written": context.written(element.start, element.end)}
            faults.append(Fault("letter-unknown", element.start, element.end, values))
            continue
        if not positions:
            # The item of the letter has no place itself.
            written = {"written": context.written(element.start, element.end)}
            faults.append(Fault("reference-unknown", element.start, element.end, written))
        own = letter.rpartition(".")[2]
        if labels.is_double(letter):
            faults.append(Fault("letter-used-twice", element.start, element.end, {"letter": own}))
        found += [_taken_over(context, one, element, own) for one in positions]
    return found


def _taken_over(
    context: Context, position: Position, element: Element, label: str | None
) -> Position:
    return position.model_copy(
        update={
            "written": context.written(element.start, element.end),
            "via": "reference",
            "label": label,
            "span": context.span(element.start, element.end),
        }
    )


def with_quality(positions: list[Position], quality: PositionQuality) -> list[Position]:
    """The last position, marked approximate, doubtful or reported."""
    return [*positions[:-1], positions[-1].model_copy(update={"quality": quality})]


def bearing_of(offset: OffsetWords) -> float | None:
    """The true bearing of an offset in degrees; a compass point counts as its middle."""
    if offset.bearing_deg is not None and offset.bearing_deg > _FULL_CIRCLE:
        return None
    if offset.bearing_deg is not None:
        return float(offset.bearing_deg)
    if offset.direction is not None:
        return COMPASS.index(offset.direction) * 22.5
    return None


def worked_out(reference: Position, offset: OffsetWords) -> Position | None:
    """The position at a bearing and distance from a reference: WGS84 geodesic (Karney).

    Its digits are the decimals that the resolution supports: the largest of the reference's own,
    half the last digit of the distance, and the distance times half the last digit of the bearing.
    """
    bearing = bearing_of(offset)
    if bearing is None or offset.distance_nm is None or offset.is_magnetic:
        return None
    from geographiclib.geodesic import Geodesic  # slow to import

    distance_m = float(offset.distance_nm) * _MILE_M
    end = Geodesic.WGS84.Direct(reference.lat, reference.lon, bearing, distance_m)
    half_distance = 0.5 * 10**-offset.distance_decimals * _MILE_M
    half_bearing_deg = 0.5 * 10**-offset.bearing_decimals
    if offset.bearing_deg is None:
        half_bearing_deg = 11.25
    across = distance_m * half_bearing_deg * 0.017453292519943295
    resolution = two_figures(max(reference.resolution_m, half_distance, across))
    decimals = max(0, round(-log10(2 * resolution / _DEGREE_M)))
    lon = end["lon2"]
    return reference.model_copy(
        update={
            "lat": end["lat2"],
            "lon": lon,
            "iso6709": _decimal_iso(end["lat2"], lon, decimals),
            "resolution_m": resolution,
            "via": "offset",
            "label": None,
            "quality": None,
        }
    )


def _decimal_iso(lat: float, lon: float, decimals: int) -> str:
    def part(value: float, width: int) -> str:
        digits = f"{abs(Decimal(value)):.{decimals}f}"
        whole, _, rest = digits.partition(".")
        sign = "-" if value < 0 else "+"
        return sign + whole.zfill(width) + ("." + rest if rest else "")

    return part(lat, 2) + part(lon, 3) + "/"


def distance_m(first: Position, second: Position) -> float:
    """The WGS84 geodesic between two positions, metres."""
    from geographiclib.geodesic import Geodesic  # slow to import

    line = Geodesic.WGS84.Inverse(first.lat, first.lon, second.lat, second.lon)
    return float(line["s12"])
