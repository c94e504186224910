"""Positions far from the others of their notice, as a slip of one figure makes them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import cos, hypot, radians
from statistics import median
from typing import NamedTuple

from noticeparse.checks.trouble import Placed, Trouble, actions_of, positions_of
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position

_FAR_NM = 8.0
_BEYOND_REASON_NM = 300.0
"""So far from all others no place of a notice lies, whatever may have slipped (from memory)."""
_MANY_TIMES = 5.0
_MANY_MORE_TIMES = 10.0
_LEAST_CORNERS, _MOST = 4, 400
_SCATTERED = 20
"""With more places far from all others than this, no figure of one is the odd one."""
_SAMPLE = 200
"""Places enough to tell how far apart the places of a notice usually lie."""


class _Spot(NamedTuple):
    position: Position
    placed: Placed

    @property
    def place(self) -> tuple[float, float]:
        """Latitude and longitude."""
        return self.position.lat, self.position.lon


def distance_nm(first: tuple[float, float], second: tuple[float, float]) -> float:
    """Distance on a plane at the latitude of the first position, nautical miles.

    Good to a few parts in a hundred over the distances of one notice; used to tell near from far.
    """
    d_lon = (second[1] - first[1] + 180) % 360 - 180
    return 60 * hypot(second[0] - first[0], d_lon * cos(radians(first[0])))


def check_far_positions(notice: Notice, neighbours: Sequence[Notice]) -> Iterator[Trouble]:
    """A position away from all others that a slip of one figure would bring back among them.

    Over 300 miles from all of its notice no slip need explain it.

    A notice of one or two places is held against its neighbours in the bulletin.
    """
    spots = list(_spots(notice))
    own = places = sorted({spot.place for spot in spots})
    if not places:
        return
    if len(places) < 3:
        around = {spot.place for other in neighbours for spot in _spots(other)}
        places = sorted({*places, *around})
    if len(places) < 2 or not _is_wide(places):
        return
    if len(places) == 2:
        yield from _of_two(spots, places)
        return
    lone = _lone(places)
    if not lone or len(lone) > _SCATTERED:
        return
    usual = median(_nearest(one, places) for one in places[:: len(places) // _SAMPLE + 1])
    for spot in spots:
        miles = lone.get(spot.place)
        if miles is None or miles <= _MANY_TIMES * usual:
            continue
        others = [one for one in places if one != spot.place]
        # Other notices may be of another sea.
        is_beyond = len(own) == len(places) and miles > _BEYOND_REASON_NM
        if is_beyond or _slips_back(spot.position, others, max(3.0, 3 * usual, miles / 20)):
            yield _far_away(spot, miles)


def _of_two(spots: Sequence[_Spot], places: Sequence[tuple[float, float]]) -> Iterator[Trouble]:
    """The places of two that lie beyond reason from each other: the slip, if one is to be seen."""
    if len({spot.place for spot in spots}) < 2:
        return
    miles = distance_nm(*places)
    if miles <= _BEYOND_REASON_NM:
        return
    slips = [
        spot
        for spot in spots
        if _slips_back(spot.position, [one for one in places if one != spot.place], miles / 20)
    ]
    yield from (_far_away(spot, miles) for spot in slips or spots)


def _far_away(spot: _Spot, miles: float) -> Trouble:
    values = {"written": spot.position.written, "miles": f"{miles:.0f}"}
    pointers = [spot.placed.pointer]
    return Trouble("position-far-away", spot.position.span, pointers, values, spot.placed.chart)


def _lone(places: list[tuple[float, float]]) -> dict[tuple[float, float], float]:
    """The places with no other within eight miles, and the miles to the nearest.

    Places are sought in cells of eight miles and those around, so that many take linear time.
    """
    cells: dict[tuple[int, int], list[tuple[float, float]]] = {}
    for place in places:
        cells.setdefault(_cell(place), []).append(place)
    found: dict[tuple[float, float], float] = {}
    for place in places:
        row, column = _cell(place)
        around = [
            one
            for r in (row - 1, row, row + 1)
            for c in (column - 1, column, column + 1)
            for one in cells.get((r, c), ())
            if one != place
        ]
        if any(distance_nm(place, one) <= _FAR_NM for one in around):
            continue
        miles = _nearest(place, places)
        if miles > _FAR_NM:
            found[place] = miles
            if len(found) > _SCATTERED:
                break
    return found


def _cell(place: tuple[float, float]) -> tuple[int, int]:
    row = round(place[0] * 60 / _FAR_NM)
    per_degree = 60 * cos(radians(row * _FAR_NM / 60))
    return row, int(place[1] * per_degree / _FAR_NM)


def _spots(notice: Notice) -> Iterator[_Spot]:
    for placed in actions_of(notice):
        for position in positions_of(placed.action):
            if position.via == "stated":
                yield _Spot(position, placed)


def check_stray_corners(notice: Notice) -> Iterator[Trouble]:
    """A corner of a line or area far from all its others, by many times their usual distance."""
    for placed in actions_of(notice):
        geometry = placed.action.geometry
        corners = geometry.positions
        if geometry.shape not in ("line", "area") or not _LEAST_CORNERS <= len(corners) <= _MOST:
            continue
        places = [(corner.lat, corner.lon) for corner in corners]
        nearest = [_nearest(one, places) for one in places]
        for corner, miles in zip(corners, nearest, strict=True):
            usual = median([other for other in nearest if other != miles] or nearest)
            if miles > _FAR_NM and miles > _MANY_MORE_TIMES * usual:
                values = {"written": corner.written, "miles": f"{miles:.0f}"}
                yield Trouble(
                    "corner-far-away", corner.span, [placed.pointer], values, placed.chart
                )


def _is_wide(places: list[tuple[float, float]]) -> bool:
    """Whether any two places can be far from each other at all."""
    lats = [lat for lat, _ in places]
    lons = [lon for _, lon in places]
    low, high = (min(lats), min(lons)), (max(lats), max(lons))
    return 60 * max(high[0] - low[0], high[1] - low[1]) > _FAR_NM


def _nearest(place: tuple[float, float], places: list[tuple[float, float]]) -> float:
    return min((distance_nm(place, one) for one in places if one != place), default=0.0)


def _slips_back(position: Position, others: list[tuple[float, float]], within_nm: float) -> bool:
    """Whether another figure, a lost one, two exchanged or another sign bring it near others."""
    body = position.iso6709.rstrip("/")
    cut = max(body.rfind("+"), body.rfind("-"))
    lat, lon = position.lat, position.lon
    for other_lat in _variants(body[:cut], 2):
        if _nearest((other_lat, lon), others) <= within_nm:
            return True
    return any(
        _nearest((lat, other_lon), others) <= within_nm for other_lon in _variants(body[cut:], 3)
    )


def _variants(written: str, width: int) -> Iterator[float]:
    """Degrees of a coordinate with its sign or one figure changed, lost, or two exchanged."""
    sign = -1 if written[0] == "-" else 1
    digits = written[1:]
    yield -sign * _degrees(digits, width)
    whole = digits.partition(".")[0]
    for at in range(len(whole)):
        for figure in "0123456789":
            if figure != digits[at]:
                yield sign * _degrees(digits[:at] + figure + digits[at + 1 :], width)
        if at + 1 < len(whole) and digits[at] != digits[at + 1]:
            swapped = digits[:at] + digits[at + 1] + digits[at] + digits[at + 2 :]
            yield sign * _degrees(swapped, width)
    # `4°` or `013°` for `47°` and `123°`: a figure of the degrees is lost.
    short, behind = digits[:width].lstrip("0"), digits[width:]
    if len(short) < width:
        for at in range(len(short) + 1):
            for figure in "0123456789":
                longer = (short[:at] + figure + short[at:]).zfill(width)
                yield sign * _degrees(longer + behind, width)


def _degrees(digits: str, width: int) -> float:
    whole, _, decimals = digits.partition(".")
    fields = [whole[:width], *(whole[i : i + 2] for i in range(width, len(whole), 2))]
    fields[-1] += "." + decimals if decimals else ""
    return sum(float(field) / float(60**place) for place, field in enumerate(fields))
