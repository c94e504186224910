"""Lines, rings, circles and arcs on the globe in the form that RFC 7946 asks for.

Points are (longitude, latitude) in degrees.  Between two points a line is straight in these two
(RFC 7946, section 3.1.1), goes the shorter way round, and is cut at the antimeridian (3.1.9), so
that all longitudes lie from -180 to 180.  Circles are geodesic, on WGS84.  Nothing here reads text
or knows a record.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import floor
from typing import NamedTuple

Point = tuple[float, float]

CIRCLE_CORNERS = 120
"""A circle is drawn with a corner every three degrees; its sides lie within it by no more than
0.00035 of the radius (6 m for 10 miles)."""
_STEP_DEG = 360 / CIRCLE_CORNERS
_DIGITS = 7
"""Of a degree, about a centimetre, so that the last bits of a machine's sines do not show."""
_CUTS = (-540.0, -180.0, 180.0, 540.0)


class _Corner(NamedTuple):
    """A point whose longitude counts on over the antimeridian, and the longitude given."""

    x: float
    lat: float
    lon: float | None = None
    """None where the corner was put in by a cut."""


class _Chain(NamedTuple):
    """The corners of a ring from one crossing of the cut to the next, on one side of it."""

    first: int
    corners: list[_Corner]
    last: int
    is_east: bool


def circle(centre: Point, radius_m: float) -> list[Point]:
    """The corners of a circle, anticlockwise from north, not closed."""
    return arc(centre, radius_m, 0.0, -360.0)[:-1]


def arc(
    centre: Point,
    radius_m: float,
    from_deg: float,
    sweep_deg: float,
    *,
    step_deg: float = _STEP_DEG,
) -> list[Point]:
    """Points along a part of a circle, from one bearing on; a positive sweep is clockwise."""
    from geographiclib.geodesic import Geodesic  # slow to import

    count = max(1, round(abs(sweep_deg) / step_deg))
    points = []
    for number in range(count + 1):
        bearing = from_deg + sweep_deg * number / count
        end = Geodesic.WGS84.Direct(centre[1], centre[0], bearing, radius_m)
        points.append((round(end["lon2"], _DIGITS), round(end["lat2"], _DIGITS)))
    return points


def line_parts(points: Sequence[Point]) -> list[list[Point]]:
    """A line, in as many parts as the antimeridian cuts it into."""
    corners = _counted_on(points)
    turn = 0
    parts = [[corners[0]]]
    for start, end in pairwise(corners):
        east, west = 180.0 + 360 * turn, -180.0 + 360 * turn
        if west <= end.x <= east:
            parts[-1].append(end)
            continue
        cut = east if end.x > east else west
        crossing = _on_cut(start, end, cut)
        parts[-1].append(crossing)
        parts.append([crossing, end])
        turn += 1 if end.x > east else -1
    kept = [part for part in map(_without_repeats, parts) if len(part) > 1]
    return [_brought_back(part) for part in kept or [corners]]


def ring_parts(points: Sequence[Point]) -> list[list[Point]] | None:
    """A ring, closed and anticlockwise (RFC 7946, 3.1.6), in the parts the antimeridian makes.

    None where it encloses a pole, has no three corners, or crosses itself where it is cut.
    """
    ring = _without_repeats(_counted_on([*points, points[0]]))
    if len(ring) < 4 or abs(ring[0].x - ring[-1].x) > 1:
        return None
    ring = ring[:-1]
    if _doubled_area(ring) < 0:
        # The first corner stays the first.
        ring = [ring[0], *reversed(ring[1:])]
    parts = [ring]
    for cut in _CUTS:
        divided = [_divided(part, cut) for part in parts]
        parts = [piece for pieces in divided if pieces is not None for piece in pieces]
        if None in divided:
            return None
    return [_brought_back([*part, part[0]]) for part in parts]


def _counted_on(points: Sequence[Point]) -> list[_Corner]:
    """Longitudes that go on over the antimeridian, each the shorter way from the one before."""
    corners: list[_Corner] = []
    turn = 0
    for lon, lat in points:
        if corners and corners[-1].lon is not None:
            step = lon - corners[-1].lon
            turn += -360 if step > 180 else 360 if step < -180 else 0
        corners.append(_Corner(lon + turn, lat, lon))
    return corners


def _brought_back(corners: Sequence[_Corner]) -> list[Point]:
    """The longitudes of one part from -180 to 180, those given to the last bit."""
    xs = [corner.x for corner in corners]
    turn = 360 * floor(((min(xs) + max(xs)) / 2 + 180) / 360)
    points = []
    for corner in corners:
        x = corner.x - turn
        is_given = corner.lon is not None and abs(corner.lon - x) < 1
        points.append((corner.lon if is_given and corner.lon is not None else x, corner.lat))
    return points


def _without_repeats(corners: Sequence[_Corner]) -> list[_Corner]:
    """The corners without those that stand where the one before stands."""
    kept = [corners[0]]
    for corner in corners[1:]:
        if (corner.x, corner.lat) != (kept[-1].x, kept[-1].lat):
            kept.append(corner)
    return kept


def _without_spikes(piece: list[_Corner], cut: float) -> list[_Corner]:
    """A piece without the ways along the cut that it goes there and back."""
    piece = _without_repeats([*piece, piece[0]])[:-1]
    at = 0
    while at < len(piece) and len(piece) > 2:
        before, corner, after = piece[at - 1], piece[at], piece[(at + 1) % len(piece)]
        is_along = before.x == corner.x == after.x == cut
        if is_along and (corner.lat - before.lat) * (after.lat - corner.lat) <= 0:
            del piece[at]
            at = 0
        else:
            at += 1
    return piece


def _on_cut(start: _Corner, end: _Corner, cut: float) -> _Corner:
    """Where a side meets the cut."""
    share = (cut - start.x) / (end.x - start.x)
    return _Corner(cut, start.lat + share * (end.lat - start.lat))


def _doubled_area(ring: Sequence[_Corner]) -> float:
    """Twice the area in square degrees, positive for an anticlockwise ring."""
    base = ring[0]
    moved = [(corner.x - base.x, corner.lat - base.lat) for corner in ring]
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise([*moved, moved[0]]))


def _divided(ring: list[_Corner], cut: float) -> list[list[_Corner]] | None:
    """The pieces of an anticlockwise ring on both sides of a meridian."""
    is_east = [corner.x > cut for corner in ring]
    if all(is_east) or not any(is_east) or all(corner.x >= cut for corner in ring):
        return [ring]
    crossings, chains = _chains(ring, is_east, cut)
    partners = _partners(crossings, chains)
    starts = {(chain.is_east, chain.first): chain for chain in chains}
    if partners is None:
        return None
    pieces: list[list[_Corner]] = []
    while starts:
        key = next(iter(starts))
        piece: list[_Corner] = []
        while key in starts:
            chain = starts.pop(key)
            piece += [crossings[chain.first], *chain.corners, crossings[chain.last]]
            key = (chain.is_east, partners[chain.last])
        piece = _without_spikes(piece, cut)
        pieces += (one for one in _parted(piece, cut) if len(one) > 2 and _doubled_area(one) != 0)
    return pieces


def _parted(piece: list[_Corner], cut: float) -> list[list[_Corner]]:
    """A piece in two where a corner of it lies upon its own side along the cut."""
    for at, corner in enumerate(piece):
        if corner.x != cut:
            continue
        turned = piece[at:] + piece[:at]
        for number, (start, end) in enumerate(pairwise(turned[1:]), 2):
            if start.x == end.x == cut and _is_between(corner, start, end):
                first, second = turned[:number], [corner, *turned[number:]]
                return [*_parted(first, cut), *_parted(second, cut)]
    return [piece]


def _is_between(corner: _Corner, start: _Corner, end: _Corner) -> bool:
    low, high = sorted((start.lat, end.lat))
    return low < corner.lat < high


def _chains(
    ring: list[_Corner], is_east: list[bool], cut: float
) -> tuple[list[_Corner], list[_Chain]]:
    """The crossings in the order of the ring, and the chain of corners from each to the next."""
    count = len(ring)
    changes = [at for at in range(count) if is_east[at] != is_east[(at + 1) % count]]
    crossings = [_on_cut(ring[at], ring[(at + 1) % count], cut) for at in changes]
    chains = []
    for number, at in enumerate(changes):
        following = (number + 1) % len(changes)
        length = (changes[following] - at - 1) % count + 1
        corners = [ring[(at + 1 + step) % count] for step in range(length)]
        chains.append(_Chain(number, corners, following, is_east[(at + 1) % count]))
    return crossings, chains


def _partners(crossings: list[_Corner], chains: list[_Chain]) -> dict[int, int] | None:
    """For each crossing the other end of its stretch of the cut within the ring.

    From south to north the first two crossings bound such a stretch, then the next two; on an
    anticlockwise ring the southern one goes east.  None where that does not come out.
    """
    goes_east = {chain.first: chain.is_east for chain in chains}
    partners: dict[int, int] = {}
    for first, second in _pairs(crossings, goes_east):
        if goes_east[first] == goes_east[second]:
            return None
        partners |= {first: second, second: first}
    return partners


def _pairs(crossings: list[_Corner], goes_east: dict[int, bool]) -> Iterator[tuple[int, int]]:
    """Crossings from south to north, two and two; of those at one place the fitting one first."""
    left = sorted(range(len(crossings)), key=lambda one: (crossings[one].lat, not goes_east[one]))
    while left:
        first = left.pop(0)
        lat = crossings[left[0]].lat
        fitting = (
            at
            for at, one in enumerate(left)
            if crossings[one].lat == lat and goes_east[one] != goes_east[first]
        )
        yield first, left.pop(next(fitting, 0))
