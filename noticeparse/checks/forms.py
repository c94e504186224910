"""Positions in a form that lost a figure or a mark elsewhere: `23°45'.67W`, `47 12 34S`.

A longitude has three figures of degrees, and minutes have their marks.  Some offices write noughts
or marks nowhere: where all positions around are like that, it is how they are written.
Source: common practice, no published source.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from noticeparse.checks.trouble import Trouble, actions_of, positions_of
from noticeparse.readers.positions import doubt_of_form
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position

_A_HABIT = 3
"""So many positions in one form, and none in another, are a way of writing."""


def check_forms(notice: Notice, neighbours: Sequence[Notice]) -> Iterator[Trouble]:
    """A position in a doubtful form, unless all around have the same."""
    spots = [(spot, doubt_of_form(spot[0].written, spot[0].iso6709)) for spot in _spots(notice)]
    if not any(code for _, code in spots):
        return
    around = {one.span: one for near in (notice, *neighbours) for one, _, _ in _spots(near)}
    forms = Counter(doubt_of_form(one.written, one.iso6709) for one in around.values())
    for (position, pointer, chart), code in spots:
        if code is None or (forms[code] >= _A_HABIT and len(forms) == 1):
            continue
        values = {"written": position.written}
        yield Trouble(code, position.span, [pointer], values, chart)


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
