"""Places of the rows of tables, and what is read of a row with its notice and chart."""

from __future__ import annotations

from noticeparse.records.action import Move
from noticeparse.records.bulletin import Bulletin

P, Q, R = "46 10.10 S", "46 11.10 S", "46 12.10 S"
W = "122 00.20 W"
AT_P, AT_Q, AT_R = "-4610.10-12200.20/", "-4611.10-12200.20/", "-4612.10-12200.20/"


def told(bulletin: Bulletin) -> list[tuple[str | None, str | None, str, str, list[str]]]:
    """Notice, chart, verb, kind and positions of every action, those of a destination behind."""
    found = []
    for notice in bulletin.notices:
        for section in notice.charts:
            for action in section.actions:
                ends = action.destination.positions if isinstance(action, Move) else []
                places = [p.iso6709 for p in (*action.geometry.positions, *ends)]
                kind = action.feature.kind
                found.append((notice.id, section.chart, action.verb, kind, places))
    return found
