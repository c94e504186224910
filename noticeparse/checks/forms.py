"""Positions in a form that lost a figure or a mark elsewhere: `23°45'.67W`, `47 12 34S`.

A longitude has three figures of degrees, and minutes have their marks.  Some offices write noughts
or marks nowhere: where all positions around are like that, it is how they are written.  Where all
others write `04'`, a lone `4'` may be what is left of `14'`; so where its mark is lost as well, or
where another figure would bring the place back among the others.
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
_ONE_WITHOUT_MARK = re.compile(
    r"(?<=°)[ ]?[0-9](?![0-9])(?:[.,][0-9]{1,6}(?![0-9])|(?![.,]))(?![ ]?')"
)
_DEGREES_AND_MINUTES = re.compile(r"([+-][0-9]{2,3})([0-9]{2})(?:[0-9]{2})?(?![0-9])(?:\.[0-9]+)?")
_FAR_MINUTES = 3
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
    """Minutes or seconds of one figure, where all others have two, or their mark is lost too."""
    spots = [
        spot for spot in _spots(notice) if any(len(one) == 1 for one in _fields(spot[0].written))
    ]
    if not spots:
        return
    own = {one.span: one for one, _, _ in _spots(notice)}
    around = dict(own)
    if len(around) <= _FEW_POSITIONS:
        around |= {one.span: one for near in neighbours for one, _, _ in _spots(near)}
    is_habit = _writes_noughts(list(around.values()))
    minutes = [_Minutes(list(own.values()), axis) for axis in (0, 1)] if not is_habit else []
    for position, pointer, chart in spots:
        if is_habit or _lacks_mark(position.written) or any(m.lost(position) for m in minutes):
            values = {"written": position.written}
            yield Trouble("position-figure-missing", position.span, [pointer], values, chart)


def _writes_noughts(around: Sequence[Position]) -> bool:
    """Whether the text writes `04'`, so that `4'` is none of its ways."""
    written = [field for one in around for field in _fields(one.written)]
    short = sum(len(field) == 1 for field in written)
    padded = sum(len(field) == 2 and field[0] == "0" for field in written)
    is_habit = padded >= (1 if short == 1 else _MANY_TIMES * short)
    return is_habit and len(written) - short >= _FEWEST_FIELDS


def _lacks_mark(written: str) -> bool:
    """Whether minutes of one figure have no mark, and the other half of the position has it."""
    plain = written if written.isascii() else repair(written).text
    return "'" in plain and _ONE_WITHOUT_MARK.search(plain) is not None


class _Minutes:
    """The minutes of the latitudes or longitudes of a notice, by degree."""

    def __init__(self, positions: Sequence[Position], axis: int) -> None:
        self._axis = axis
        self._of_degree: dict[str, set[int]] = {}
        for degree, minute in filter(None, map(self._split, positions)):
            self._of_degree.setdefault(degree, set()).add(minute)

    def _split(self, position: Position) -> tuple[str, int] | None:
        found = _DEGREES_AND_MINUTES.findall(position.iso6709)
        return (found[self._axis][0], int(found[self._axis][1])) if len(found) == 2 else None

    def lost(self, position: Position) -> bool:
        """Whether minutes below ten lie far from all others, and a second figure among them."""
        own = self._split(position)
        if own is None or own[1] > 9:
            return False
        degree, minute = own
        others = self._of_degree[degree] - {minute}
        if len(others) < _FEW_POSITIONS or min(others) < 10:
            return False
        low, high = min(others), max(others)
        with_figure = [10 * ten + minute for ten in range(1, 6)]
        with_figure += [10 * minute + one for one in range(10)] if minute else []
        is_far = low - minute > max(_FAR_MINUTES, high - low)
        return is_far and any(low <= one <= high for one in with_figure)


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
