"""Positions in a form that lost a figure or a mark elsewhere: `23°45'.67W`, `47 12 34S`.

A longitude has three figures of degrees, and minutes have their marks.  Some offices write noughts
or marks nowhere: where all positions around are like that, it is how they are written.  Where all
others write `04'`, a lone `4'` may be what is left of `14'`.
Source: common practice, no published source.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from noticeparse.checks.trouble import Trouble, actions_of, positions_of
from noticeparse.readers.positions import doubt_of_form
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position
from noticeparse.text import repair

_A_HABIT = 3
"""So many positions in one form, and none in another, are a way of writing."""
_FEW_POSITIONS = 2
_FEWEST_FIELDS = 4
_MANY_TIMES = 4
"""So many times as often as without it the nought must stand, where it is left out twice."""
_FIELD = re.compile(
    r"""(?:(?:(?<=[0-9]°)|(?<=°[ ])|(?<=[0-9]-)|(?<=[0-9]')|(?<='[ ])|(?<=[0-9][ ]))
    (?P<behind>[0-9]{1,2})(?![0-9])|(?<![0-9.,])(?P<marked>[0-9]{1,2})(?=[ ]?['"]))
    (?![ ]?°|-[0-9])""",
    re.VERBOSE,
)
"""Minutes or seconds, behind degrees or alone with their mark."""
_WORDS_WITHIN = re.compile(r'"[^"]{0,80}[A-Za-z]{2}[^"]{0,80}"')
_LETTER_FOR_FIGURE = re.compile(r"(?<=[0-9])[OolI|](?![A-Za-z])|(?<![A-Za-z])[OolI|](?=[0-9])")


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


def check_short_figures(notice: Notice, neighbours: Sequence[Notice]) -> Iterator[Trouble]:
    """Minutes or seconds of one figure, where all others have two, with noughts."""
    spots = [(spot, _fields(spot[0].written)) for spot in _spots(notice)]
    if not any(len(field) == 1 for _, fields in spots for field in fields):
        return
    around = {one.span: one for one, _, _ in _spots(notice)}
    if len(around) <= _FEW_POSITIONS:
        around |= {one.span: one for near in neighbours for one, _, _ in _spots(near)}
    written = [field for one in around.values() for field in _fields(one.written)]
    short = sum(len(field) == 1 for field in written)
    padded = sum(len(field) == 2 and field[0] == "0" for field in written)
    is_habit = padded >= (1 if short == 1 else _MANY_TIMES * short)
    if not is_habit or len(written) - short < _FEWEST_FIELDS:
        return
    for (position, pointer, chart), fields in spots:
        if any(len(field) == 1 for field in fields):
            values = {"written": position.written}
            yield Trouble("position-figure-missing", position.span, [pointer], values, chart)


def _fields(written: str) -> list[str]:
    plain = written if written.isascii() else repair(written).text
    plain = _LETTER_FOR_FIGURE.sub("0", _WORDS_WITHIN.sub(" ", plain))
    return [one["behind"] or one["marked"] for one in _FIELD.finditer(plain)]


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
