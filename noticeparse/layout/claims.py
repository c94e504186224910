"""What of the text the layout gave to no notice, list or front matter.

The layout decides line by line; this counts from the other end, so that a position which no
decision took cannot pass for read.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import replace

from noticeparse.layout.bulletin import Layout
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.layout.lines import Line

_BEARING = frozenset({"point", "half", "reference", "same", "passive"})


def unclaimed(layout: Layout, lines: Sequence[Line], ignored: Sequence[Piece]) -> list[Piece]:
    """The positions, references and told verbs that no part of the layout holds, in text order."""
    claimed = _joined([*ignored, *_claims(layout)])
    starts = [start for start, _ in claimed]
    found: list[Piece] = []
    for line in lines:
        for element in line.elements:
            if element.kind not in _BEARING:
                continue
            row = bisect_right(starts, element.start) - 1
            if row < 0 or claimed[row][1] <= element.start:
                found.append((element.start, element.end))
    return found


def unclaimed_heads(
    layout: Layout, lines: Sequence[Line], ignored: Sequence[Piece]
) -> list[Piece]:
    """The lines that name a chart and of which no notice or list holds anything."""
    claimed = _joined([*ignored, *_claims(replace(layout, loose=[]))])
    starts = [start for start, _ in claimed]
    found: list[Piece] = []
    for line in lines:
        if not line.has("chart"):
            continue
        row = bisect_right(starts, line.end) - 1
        if row < 0 or claimed[row][1] <= line.start:
            found.append((line.elements[0].start, line.elements[-1].end))
    return found


def _claims(layout: Layout) -> Iterator[Piece]:
    for line in layout.front:
        yield line.start, line.end
    for draft in layout.lists:
        for line in (draft.title, *draft.entries):
            yield line.start, line.end
    for prose in layout.loose:
        yield from prose.pieces
    for notice in layout.notices:
        yield from _of_notice(notice)


def _of_notice(notice: NoticeDraft) -> Iterator[Piece]:
    yield from (*notice.heading, *notice.sources, *notice.clauses)
    for prose in notice.prose:
        yield from prose.pieces
    for chart in notice.charts:
        yield from chart.head
        for item in chart.items:
            yield from item.pieces


def _joined(pieces: list[Piece]) -> list[Piece]:
    joined: list[Piece] = []
    for start, end in sorted(pieces):
        if joined and start <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(joined[-1][1], end))
        else:
            joined.append((start, end))
    return joined
