"""Positions in another hemisphere than the others around them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from noticeparse.checks.trouble import Placed, Trouble, actions_of, positions_of
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position

_NEAR_THE_LINE_DEG = 1.0
"""So near to the equator, Greenwich or 180 degrees a notice may lie on both sides."""
_FEW = 3
"""A notice with fewer positions is held against its neighbours."""
_NAMES = {("lat", 1): "north", ("lat", -1): "south", ("lon", 1): "east", ("lon", -1): "west"}


def check_hemispheres(notice: Notice, neighbours: Sequence[Notice]) -> Iterator[Trouble]:
    """A position in a hemisphere that few others share, away from the lines between them."""
    actions = actions_of(notice)
    spots = list(_spots(notice, actions))
    around = [position for position, _, _ in spots]
    if len(around) < _FEW:
        around = [
            position for one in neighbours for position, _, _ in _spots(one, actions_of(one))
        ]
    for axis in ("lat", "lon"):
        usual = _usual(around, axis)
        if usual is None:
            yield from _within_actions(actions, axis)
            continue
        for position, pointer, chart in spots:
            value = getattr(position, axis)
            if value * usual < 0 and _is_clear(value, axis):
                yield _trouble(position, pointer, chart, axis, usual)


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
    position: Position, pointer: str, chart: str | None, axis: str, usual: int
) -> Trouble:
    values = {
        "written": position.written,
        "side": _NAMES[axis, -usual],
        "usual": _NAMES[axis, usual],
    }
    code = "position-hemisphere-differs"
    return Trouble(code, position.span, [pointer], values, chart)


def _usual(positions: Sequence[Position], axis: str) -> int | None:
    """The sign that at least three positions in four have, where there are enough to tell."""
    values = [getattr(position, axis) for position in positions]
    if not values or min(values) > 0 or max(values) < 0:
        return None
    signs = Counter(1 if value > 0 else -1 for value in values if _is_clear(value, axis))
    if signs.total() < _FEW or len(signs) < 2:
        return None
    (sign, count), _ = signs.most_common()
    return sign if count * 4 >= signs.total() * 3 or count == signs.total() - 1 else None


def _is_clear(value: float, axis: str) -> bool:
    if axis == "lon" and 180 - abs(value) < _NEAR_THE_LINE_DEG:
        return False
    return abs(value) > _NEAR_THE_LINE_DEG


def _spots(
    notice: Notice, actions: Sequence[Placed]
) -> Iterator[tuple[Position, str, str | None]]:
    """The positions stated in actions and remarks, each with the record and chart it is of."""
    for placed in actions:
        for position in positions_of(placed.action):
            if position.via == "stated":
                yield position, placed.pointer, placed.chart
    for index, remark in enumerate(notice.remarks):
        for position in remark.positions:
            yield position, f"/remarks/{index}", None
