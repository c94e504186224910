"""What is said of a chart in the margin, beside the items that are for it.

Chart 802    Insert   west cardinal light-buoy, Q(9)15s    46°37'.66 S   124°11'.79 W
INT 9802              isolated danger buoy                 46°37'.60 S   124°12'.02 W
[310/26]     Delete   special buoy                         46°37'.52 S   124°12'.40 W
"""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.heads import head_kinds

_DETAILS = frozenset(
    {"INTERNATIONAL", "PREVIOUS", "PREVIOUS_IN_BRACKETS", "NEW_EDITION", "EDITION", "DATUM"}
)
_BESIDE = frozenset({"STOP", "COMMA", "DATE"})
_FAR = 400
"""Characters of a line within which its beginning lies."""


def takes_margin_detail(assembly: Assembly, line: Line) -> bool:
    """Whether a line has such words in its margin, which are taken to the head of the chart."""
    head = assembly.charts[-1].head if assembly.charts else []
    if not head or not assembly.body or not assembly.body[0].elements:
        return False
    text, first = assembly.text, assembly.body[0].elements[0]
    if "\n" in text[head[0][0] : first.start] or not text[first.start - 2 : first.start].isspace():
        # The items begin below the chart, or right behind it.
        return False
    margin, rest = _parted(line)
    at = _column(text, margin[0].start)
    if at != _column(text, head[0][0]) or margin[-1].end - margin[0].start + at >= _column(
        text, first.start
    ):
        return False
    if rest and _column(text, rest[0].start) < _column(text, first.start):
        return False
    piece: Piece = (margin[0].start, margin[-1].end)
    kinds = head_kinds(text[slice(*piece)])
    if not kinds & _DETAILS or not kinds <= _DETAILS | _BESIDE:
        return False
    head.append(piece)
    if rest:
        assembly.body.append(line._replace(elements=rest))
    return True


def _parted(line: Line) -> tuple[tuple[Element, ...], tuple[Element, ...]]:
    """What stands in front of the first gap of a line, and behind it."""
    at = next((i for i, one in enumerate(line.elements) if i and one.gap), len(line.elements))
    return line.elements[:at], line.elements[at:]


def _column(text: str, offset: int) -> int:
    return offset - text.rfind("\n", max(offset - _FAR, 0), offset) - 1
