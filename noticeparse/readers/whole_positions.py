"""A text that is one position and nothing else, read by the position grammar."""

from __future__ import annotations

from functools import cache

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.coordinates import Coordinate, read_coordinate
from noticeparse.readers.positions import PointReading, join_coordinates, quality_mark, read_signed
from noticeparse.records.position import PositionQuality


class _Callbacks:
    """Every rule gives a PointReading or a Coordinate."""

    def coordinate(self, token: Token) -> Coordinate:
        return read_coordinate(token.type, str(token), token.start_pos or 0)

    def pair(self, first: Coordinate, second: Coordinate) -> PointReading:
        written = f"{first.text} {second.text}"
        return join_coordinates(first, second, written, None)

    def iso_point(self, token: Token) -> PointReading:
        return read_signed(str(token), token.start_pos or 0)

    signed_pair = iso_point

    def bare_pair(self, token: Token) -> PointReading:
        start, end = token.start_pos or 0, token.end_pos or 0
        fault = Fault("position-hemisphere-missing", start, end, {"written": str(token)})
        return PointReading(None, (fault,), start, end)

    def quality(self, mark: Token) -> PositionQuality | None:
        return quality_mark(mark)

    def position(
        self, reading: PointReading, quality: PositionQuality | None = None
    ) -> PointReading:
        return reading._replace(quality=quality)


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("position", "position", callbacks=_Callbacks(), lexer="basic")


def read_whole_position(text: str) -> PointReading:
    """The one position that `text` is, or the faults that forbid one; never raises."""
    try:
        reading: PointReading = _parser().parse(text)
    except LarkError:
        fault = Fault("position-unreadable", 0, len(text), {"written": text.strip()})
        return PointReading(None, (fault,), 0, len(text))
    return reading
