"""Heads of notices that give a number without a year: `No. 511   TAVRENNE ISLANDS - MORIN BAY`.

`No. 4   Light-buoy` counts the rows of a table: only what stands behind a blank line or a rule, or
above the head of a chart, before a heading and no position, is the head of a notice.  Where
notices with a year stand in the text too, the numbers must be near theirs.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.readers.features import leads_feature
from noticeparse.readers.references import read_head_number

_HEAD = re.compile(
    r"(?:[*†‡] {0,2})?"
    r"(?P<number>(?:No|NO|Nr|NR|N\.?[°º])\.? ?(?P<figures>[0-9]{1,5})(?: {0,2}\([TP]\))?)"
    r"(?=(?P<gap>[ \t]{2,40}| ?(?:-{1,2}|[:./])[ \t]{1,40}|[ \t]|[ \t]*$))",
    re.MULTILINE,
)
_NEAR = 50
"""How far the number of a notice may be from those of others in its edition."""
_LONG = 100
"""Numbers from here on are too high to count things within a notice."""
_DASHES = (" - ", " -- ", " / ", ": ")
_OF_EDITIONS = re.compile(
    r"\b(?:weekly|fortnightly|monthly|quarterly|edition|notices|bulletin|issue)\b", re.IGNORECASE
)
_CAPITALS = re.compile(r"[A-Z][A-Z'&.-]{2,}")


class _Head(NamedTuple):
    row: int
    place: Piece
    """The stretch of its number."""
    number: int
    is_sure: bool
    """Whether its heading is set as one, and names no feature, as that of a row might."""


def with_bare_heads(text: str, lines: list[Line]) -> list[Line]:
    """The lines, those that open a notice so with its number as an element of its own."""
    if _HEAD.search(text) is None:
        return lines
    heads = list(_heads(text, lines))
    sure = [head.number for head in heads if head.is_sure]
    dated = list(_dated(text, lines)) if heads else []
    if dated and not _goes_on(heads, dated):
        return lines
    numbers = [head.number for head in heads]
    goes_up = numbers == sorted(set(numbers))
    counts_high = len(numbers) > 1 and numbers[0] >= _LONG
    found = list(lines)
    for head in heads:
        in_order = goes_up and (counts_high or _is_near(head.number, sure))
        if head.is_sure or in_order:
            found[head.row] = _parted(lines[head.row], head.place)
    return found


def _heads(text: str, lines: Sequence[Line]) -> Iterator[_Head]:
    for row, line in enumerate(lines):
        match = None if line.is_blank else _HEAD.match(text, line.elements[0].start, line.end)
        if match is None or line.has("point", "half", "reference", "label", "passive"):
            continue
        apart = row == 0 or _stands_apart(text, lines[row - 1], line)
        if not (apart or _stands_above_chart(lines, row)):
            continue
        heading = text[match.end("gap") : line.end].strip()
        if not heading and row + 1 < len(lines):
            below = lines[row + 1]
            is_told = below.has("verb", "point", "half", "label", "key") or below.is_blank
            heading = "" if is_told else text[below.start : below.end].strip()
        if _OF_EDITIONS.search(heading) is not None or heading.lower().startswith("chart"):
            continue
        if heading[:1].isupper() and not (match["gap"] == " " and heading[1:2].isdigit()):
            first = re.split(r" --? |,|: ", heading, maxsplit=1)[0]
            is_set = _is_heading(heading, is_apart=match["gap"] != " ")
            yield _Head(
                row,
                match.span("number"),
                int(match["figures"]),
                is_set and not leads_feature(first.lower()),
            )


def _stands_apart(text: str, above: Line, line: Line) -> bool:
    """Whether a line stands behind a blank one or a rule, or further left than the one above."""
    return above.is_blank or above.has("rule") or above.indent(text) > line.indent(text)


def _stands_above_chart(lines: Sequence[Line], row: int) -> bool:
    """Whether the head of a chart stands right below: no item of the chart above goes on so."""
    below = lines[row + 1] if row + 1 < len(lines) else None
    return below is not None and bool(below.elements) and below.elements[0].kind == "chart"


def _is_heading(words: str, *, is_apart: bool) -> bool:
    """Whether words are set as a heading: in capitals, or parted by dashes."""
    in_capitals = _CAPITALS.match(words) is not None
    has_dash = any(dash in words for dash in _DASHES)
    return (in_capitals or has_dash) if is_apart else (in_capitals and has_dash)


def _goes_on(heads: Sequence[_Head], dated: Sequence[tuple[int, int]]) -> bool:
    """Whether the numbers without a year go up with the dated ones, and are near them."""
    both = sorted([*dated, *((head.row, head.number) for head in heads)])
    numbers = [number for _, number in both]
    near = [number for _, number in dated]
    return numbers == sorted(set(numbers)) and all(_is_near(one.number, near) for one in heads)


def _dated(text: str, lines: Sequence[Line]) -> Iterator[tuple[int, int]]:
    """The rows and numbers of the notices that are opened with a year."""
    for row, line in enumerate(lines):
        opening = notice_opening(text, line) if line.has("number") else None
        if opening is not None:
            head = read_head_number(text[opening.number.start : opening.number.end], None)
            if head is not None:
                yield row, head.notice.number


def _is_near(number: int, others: Sequence[int]) -> bool:
    return any(abs(number - other) <= _NEAR for other in others)


def _parted(line: Line, place: Piece) -> Line:
    """The line with its number, and a mark before it, as elements of their own."""
    start, end = place
    first = line.elements[0]
    made = [Element("number", start, end, True)]
    if first.start < start:
        # `*No. 71`: first told here
        made.insert(0, first._replace(kind="words", end=start))
    behind = [
        e if e.start >= end else e._replace(start=end + 1, gap=False)
        for e in line.elements
        if e.end > end
    ]
    return line._replace(elements=(*made, *behind))
