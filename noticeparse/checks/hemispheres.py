"""Positions in another hemisphere than the others around them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.checks.trouble import Placed, Trouble, actions_of, positions_of
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position

_NEAR_THE_LINE_DEG = 1.0
"""So near to the equator, Greenwich or 180 degrees a notice may lie on both sides."""
_FAR_FROM_THE_LINE_DEG = 3.0
"""No chart on which things are corrected reaches so far to both sides of it (from memory)."""
_FEW = 3
"""A notice with fewer items is held against its neighbours."""
_NAMES = {("lat", 1): "north", ("lat", -1): "south", ("lon", 1): "east", ("lon", -1): "west"}


class _Spot(NamedTuple):
    """A stated position with the record and the chart that it is of."""

    position: Position
    pointer: str
    chart: str | None
    item: int
    """Where its action or remark begins: what stands once for several charts is one witness."""


def check_hemispheres(notice: Notice, neighbours: Sequence[Notice]) -> Iterator[Trouble]:
    """A position in a hemisphere that few others share, away from the lines between them.

    Where neither side has few, all are told: nobody can say which of them are wrong.
    """
    actions = actions_of(notice)
    spots = list(_spots(notice, actions))
    groups = [spots]
    if len({spot.item for spot in spots}) < _FEW:
        groups = [list(_spots(one, actions_of(one))) for one in neighbours]
    for axis in ("lat", "lon"):
        usual = _usual(groups, axis)
        if usual is not None:
            for spot in spots:
                value = getattr(spot.position, axis)
                if value * usual < 0 and _is_clear(value, axis):
                    yield _trouble(spot.position, spot.pointer, spot.chart, axis, usual)
        elif _is_mixed(spots, axis):
            yield from _of_both_sides(spots, axis)
        else:
            yield from _within_actions(actions, axis)


def _is_mixed(spots: Sequence[_Spot], axis: str) -> bool:
    """Whether places lie on both sides of the line, and all of them far from it."""
    values = [getattr(spot.position, axis) for spot in spots]
    if not values or min(values) > 0 or max(values) < 0:
        return False
    return all(_is_clear(value, axis, _FAR_FROM_THE_LINE_DEG) for value in values)


def _of_both_sides(spots: Sequence[_Spot], axis: str) -> Iterator[Trouble]:
    """The first place of each record on each side."""
    told: set[tuple[str, bool]] = set()
    for spot in spots:
        is_above = getattr(spot.position, axis) > 0
        if (spot.pointer, is_above) not in told:
            told.add((spot.pointer, is_above))
            usual = -1 if is_above else 1
            both = " and ".join(_NAMES[axis, sign] for sign in (-usual, usual))
            yield _trouble(spot.position, spot.pointer, spot.chart, axis, usual, both)


def _within_actions(actions: Sequence[Placed], axis: str) -> Iterator[Trouble]:
    """A position of an action in another hemisphere than its first one."""
    for placed in actions:
        positions = positions_of(placed.action)
        if len(positions) < 2:
            continue
        own = [one for one in positions if _is_clear(getattr(one, axis), axis)]
        for position in own[1:]:
            usual = 1 if getattr(own[0], axis) > 0 else -1
            if getattr(position, axis) * usual < 0:
                yield _trouble(position, placed.pointer, placed.chart, axis, usual)


def _trouble(
    position: Position,
    pointer: str,
    chart: str | None,
    axis: str,
    usual: int,
    around: str | None = None,
) -> Trouble:
    values = {
        "written": position.written,
        "side": _NAMES[axis, -usual],
        "usual": around or _NAMES[axis, usual],
    }
    code = "position-hemisphere-differs"
    return Trouble(code, position.span, [pointer], values, chart)


def _usual(groups: Sequence[Sequence[_Spot]], axis: str) -> int | None:
    """The sign of at least three items in four, where there are enough to tell.

    An item is one witness, whatever the number of its positions: the letters of an area may have
    been exchanged all together.
    """
    signs: Counter[int] = Counter()
    for spots in groups:
        votes: dict[int, int] = {}
        for spot in spots:
            value = getattr(spot.position, axis)
            if _is_clear(value, axis):
                votes[spot.item] = votes.get(spot.item, 0) + (1 if value > 0 else -1)
        signs.update(1 if vote > 0 else -1 for vote in votes.values() if vote)
    if signs.total() < _FEW:
        return None
    (sign, count), *_ = signs.most_common()
    return sign if count * 4 >= signs.total() * 3 or count == signs.total() - 1 else None


def _is_clear(value: float, axis: str, by_deg: float = _NEAR_THE_LINE_DEG) -> bool:
    if axis == "lon" and 180 - abs(value) < by_deg:
        return False
    return abs(value) > by_deg


def _spots(notice: Notice, actions: Sequence[Placed]) -> Iterator[_Spot]:
    for placed in actions:
        item = placed.action.span.start
        for position in positions_of(placed.action):
            if position.via == "stated":
                yield _Spot(position, placed.pointer, placed.chart, item)
    for index, remark in enumerate(notice.remarks):
        for position in remark.positions:
            yield _Spot(position, f"/remarks/{index}", None, remark.span.start)
