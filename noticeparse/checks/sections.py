"""The same feature on several charts of one notice, at places that do not agree."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.outliers import distance_nm
from noticeparse.checks.trouble import Placed, Trouble, actions_of
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position

_MILE_M = 1852.0
_ALLOWED = 1.5
"""Times the resolution of both positions together: rounding may go either way."""


def check_places_on_charts(notice: Notice) -> Iterator[Trouble]:
    """A named or lit feature whose position differs by more than the digits written allow.

    What stands twice in one section is passed over: nobody can say which is which.
    """
    found: dict[tuple[object, ...], list[Placed]] = {}
    for placed in actions_of(notice):
        action = placed.action
        feature = action.feature
        located = action.geometry.shape == "point" and action.geometry.positions
        if located and (feature.name or feature.light):
            what = (action.verb, feature.kind, feature.text.casefold())
            found.setdefault(what, []).append(placed)
    for alike in found.values():
        if len({placed.section for placed in alike}) < len(alike):
            continue
        known = alike[0].action.geometry.positions[0]
        for placed in alike[1:]:
            position = placed.action.geometry.positions[0]
            if not _agree(known, position):
                values = {"written": position.written, "other": known.written}
                yield Trouble(
                    "position-differs-by-chart",
                    position.span, [placed.pointer], values, placed.chart,
                )  # fmt: skip


def _agree(first: Position, second: Position) -> bool:
    metres = _MILE_M * distance_nm((first.lat, first.lon), (second.lat, second.lon))
    return metres <= _ALLOWED * (first.resolution_m + second.resolution_m)
