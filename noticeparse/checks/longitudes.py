"""Longitudes whose first figure may be lost: `23°45'.67W` for 123 degrees.

A longitude has three figures of degrees, with noughts in front.  Some offices leave the noughts
out: where all longitudes around are as short, that is how they are written.
Source: common practice, no published source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.checks.trouble import Trouble, actions_of, positions_of
from noticeparse.readers.positions import has_short_longitude
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position

_A_HABIT = 3
"""So many short longitudes, and none with three figures, are a way of writing."""


def check_longitudes(notice: Notice, neighbours: Sequence[Notice]) -> Iterator[Trouble]:
    """A longitude of one or two figures, unless all around are as short."""
    spots = list(_spots(notice))
    short = [spot for spot in spots if has_short_longitude(spot[0].written, spot[0].lon)]
    if not short:
        return
    around = {one.span: one for near in (notice, *neighbours) for one, _, _ in _spots(near)}
    shorts = [has_short_longitude(one.written, one.lon) for one in around.values()]
    if sum(shorts) >= _A_HABIT and all(shorts):
        return
    for position, pointer, chart in short:
        values = {"written": position.written}
        yield Trouble("position-longitude-digits", position.span, [pointer], values, chart)


def _spots(notice: Notice) -> Iterator[tuple[Position, str, str | None]]:
    """The positions stated in actions and remarks, each with the record and chart it is of."""
    for placed in actions_of(notice):
        offset = placed.action.geometry.offset
        anchors = [offset.reference] if offset is not None and offset.reference else []
        for position in (*positions_of(placed.action), *anchors):
            if position.via == "stated":
                yield position, placed.pointer, placed.chart
    for index, remark in enumerate(notice.remarks):
        for position in remark.positions:
            yield position, f"/remarks/{index}", None
