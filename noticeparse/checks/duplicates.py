"""The same action twice in one chart section."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.trouble import Trouble, actions_of, positions_of
from noticeparse.records.notice import Notice


def check_duplicates(notice: Notice) -> Iterator[Trouble]:
    """An action that says again what one above said: same verb, feature and positions."""
    seen: set[tuple[object, ...]] = set()
    for placed in actions_of(notice):
        action = placed.action
        where = tuple((p.lat, p.lon) for p in positions_of(action))
        section = placed.pointer.rpartition("/actions")[0]
        key = (section, action.verb, action.feature.text.casefold(), where)
        if key in seen and where:
            values = {"written": action.text}
            yield Trouble("action-duplicate", action.span, [placed.pointer], values, placed.chart)
        seen.add(key)
