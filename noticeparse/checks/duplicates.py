"""The same action twice in one chart section, the same place twice in a row of one action."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from noticeparse.checks.trouble import Trouble, actions_of, positions_of
from noticeparse.records.action import Action, Amend, Replace
from noticeparse.records.notice import Notice

_WHOLE_MINUTE_M = 900
"""In whole minutes two places that lie near each other are written alike."""


def check_duplicates(notice: Notice) -> Iterator[Trouble]:
    """An action that says again what one above said: same verb, feature, changes and place."""
    seen: set[tuple[object, ...]] = set()
    for placed in actions_of(notice):
        action = placed.action
        where = tuple((p.lat, p.lon) for p in positions_of(action))
        geometry = action.geometry
        lies = (geometry.relation, geometry.direction, geometry.radius_nm, str(geometry.arc))
        what = (action.verb, action.feature.text.casefold(), _told(action))
        key = (placed.section, *what, where, lies)
        if key in seen and where:
            values = {"written": action.text}
            yield Trouble("action-duplicate", action.span, [placed.pointer], values, placed.chart)
        seen.add(key)


def check_places_in_a_row(notice: Notice) -> Iterator[Trouble]:
    """A place that stands again right behind itself; a ring closes with its first corner."""
    for placed in actions_of(notice):
        for above, one in pairwise(placed.action.geometry.positions):
            is_stated = above.via == one.via == "stated" and above.span != one.span
            is_stated &= one.resolution_m < _WHOLE_MINUTE_M
            if is_stated and (above.lat, above.lon) == (one.lat, one.lon):
                values = {"written": one.written}
                yield Trouble("position-twice", one.span, [placed.pointer], values, placed.chart)


def _told(action: Action) -> str:
    """What an action says beside its feature and place."""
    if isinstance(action, Amend):
        return repr(action.changes)
    return action.replacement.text.casefold() if isinstance(action, Replace) else ""
