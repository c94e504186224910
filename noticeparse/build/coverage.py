"""The account of every character: read, ignored as page furniture, or unread."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterable
from itertools import accumulate, pairwise

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located, is_error
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.lines import read_lines
from noticeparse.readers.cancelled import read_numbers
from noticeparse.readers.features import has_kind
from noticeparse.readers.garbled_numbers import BEFORE_YEAR
from noticeparse.readers.heads import read_parts
from noticeparse.records.bulletin import Coverage

_NUMBERS_OF_CHARTS = ("CHART_NUMBER", "INTERNATIONAL")
_CANCELLED = re.compile(r"\b(?:cancel|supersede|withdraw|revoke|annul)", re.IGNORECASE)
_LONE_FIGURE = re.compile(r"-?[0-9]{1,4}[.,][0-9]{1,2}")
_LOST_NUMBER = re.compile(
    r"[^A-Za-z0-9\n]{0,6}(?:(?:notice|nm|ntm)(?: nos?\.?)? )?"
    rf"{BEFORE_YEAR}/[0-9?]{{1,4}}(?![0-9/])"
    r"|(?:temporary|preliminary|cancell?ed) [0-9]{1,5}/[0-9]{2}"
    r"|(?:cancell?ed|withdrawn|superseded) [-–] [A-Z]"
    r"|(?:(?:notice|nm|ntm) )?(?:19|20)[0-9]{2}-[0-9]{1,5} {1,4}(?-i:[A-Z])",
    re.IGNORECASE,
)
"""`24b7/26`, where the head of a notice stands: the actions below it are of none."""
_NUMBER_WITH_UNIT = ("m", "M", "ft", "fm", "miles", "metres", "cables", "s")


def count_coverage(context: Context, ignored: list[Piece], unread: list[Piece]) -> Coverage:
    """Counts of non-space characters of the original; the three add up to all of them."""
    given = context.repaired.given
    total = _solid(given)
    unread_here = _merged(_to_original(context, unread))
    ignored_here = _without(_merged(_to_original(context, ignored)), unread_here)
    ignored_count = sum(_solid(given[start:end]) for start, end in ignored_here)
    spans = [piece for piece in unread_here if _solid(given[piece[0] : piece[1]])]
    unread_count = sum(_solid(given[start:end]) for start, end in spans)
    return Coverage(
        characters=total,
        read=total - ignored_count - unread_count,
        ignored=ignored_count,
        unread=unread_count,
        unread_spans=[context.lines.span(start, end) for start, end in spans],
    )


def _solid(text: str) -> int:
    return len("".join(text.split()))


def _to_original(context: Context, pieces: Iterable[Piece]) -> list[Piece]:
    repaired = context.repaired
    return [(repaired.original(start), repaired.original_end(end)) for start, end in pieces]


def _merged(pieces: Iterable[Piece]) -> list[Piece]:
    found: list[Piece] = []
    for start, end in sorted(pieces):
        if end <= start:
            continue
        if found and start <= found[-1][1]:
            found[-1] = (found[-1][0], max(found[-1][1], end))
        else:
            found.append((start, end))
    return found


def _without(pieces: list[Piece], others: list[Piece]) -> list[Piece]:
    """The pieces less what the others cover; both are merged and in order."""
    found: list[Piece] = []
    for start, end in pieces:
        at = start
        for other_start, other_end in others:
            if other_end <= at:
                continue
            if other_start >= end:
                break
            if other_start > at:
                found.append((at, other_start))
            at = max(at, other_end)
        if at < end:
            found.append((at, end))
    return found


def unread_blocks(context: Context, lines: list[Line]) -> list[Piece]:
    """Unread lines that follow each other, as one stretch each."""
    found: list[Piece] = []
    last_row = -2
    for line in sorted(lines, key=lambda line: line.start):
        if not line.elements:
            continue
        start, end = line.elements[0].start, line.elements[-1].end
        if found and line.row == last_row + 1:
            found[-1] = (found[-1][0], end)
        else:
            found.append((start, end))
        last_row = line.row
    return found


def untold(lost: Iterable[Piece], located: Iterable[Located]) -> list[Piece]:
    """The lost stretches that no error lies over yet: one fault is told once."""
    told = sorted(
        (one.fault.start, one.fault.end) for one in located if one.span is None and is_error(one)
    )
    starts = [start for start, _ in told]
    reach = [0, *accumulate((end for _, end in told), max)]
    return [piece for piece in lost if reach[bisect_right(starts, piece[0])] < piece[1]]


def unread_fault(context: Context, piece: Piece, *, is_action: bool) -> Located:
    """What to say of an unread stretch: the more it may hold, the louder."""
    start, end = piece
    words = context.text[start:end]
    values = {"written": context.written(start, end)}
    if is_action:
        return Located(Fault("text-action-lost", start, end, values))
    code = "text-unread" if _may_bear(words) else "text-left-over"
    return Located(Fault(code, start, end, values))


def _may_bear(words: str) -> bool:
    """Whether words hold a position, a cancellation, a chart number, or a measure of a feature."""
    if any(line.has("point", "half") for line in read_lines(words)):
        return True
    if _LONE_FIGURE.fullmatch(words.strip()):
        # Of a cell that nobody read: it may be a depth.
        return True
    if _LOST_NUMBER.match(words) is not None:
        return True
    if _CANCELLED.search(words) and read_numbers(words):
        return True
    heads = read_parts(words)
    if any(a.kind == "CHART_WORD" and b.kind in _NUMBERS_OF_CHARTS for a, b in pairwise(heads)):
        return True
    parts = words.replace(",", " ").split()
    unit = any(
        before[-1].isdigit() and after.strip(".;") in _NUMBER_WITH_UNIT
        for before, after in pairwise(parts)
    )
    return unit and has_kind(words)
