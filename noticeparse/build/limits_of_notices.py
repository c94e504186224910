"""What the heading of a notice, or a line above its charts, says of all its commands.

`Quill Sound - Works. Do not apply until 1 July 2026.`, and `Draft.` above the head of a chart:
they are held back, or told to be for a day.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.pointers import pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.readers.limiting_lines import limits_last
from noticeparse.readers.limits_of_notices import limits_notice, starts_on_day, tells_end_of_itself
from noticeparse.readers.taken_back import takes_back, tells_own_end
from noticeparse.records.chart import ChartSection

_STOP = re.compile(r"(?<=[a-z)0-9])[.;] {1,4}|\n")
_LONGEST = 160
_MOST_LINES = 12


def limits_of_notices(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    is_permanent: bool,
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such sentence, with all the actions of the notice."""
    hit = [one.pointer for one in pointed(path, charts)]
    if not hit:
        if not draft.is_radio:
            yield from _ends_untold(context, draft, path)
        return
    for piece in (*draft.heading, *draft.idle_verbs):
        words = context.text[slice(*piece)]
        if tells_own_end(words) or (takes_back(words) and limits_last(words)):
            # `Notice 12/26 (cancelled)`, and below it what it said.
            yield quoting(context, "verb-limited-beside", piece), hit
    told = [_behind_heading(context.text, draft), _above_charts(context.text, draft, sections)]
    for piece in (one for pieces in told for one in pieces):
        words = context.text[slice(*piece)]
        if len(words) > _LONGEST:
            continue
        if limits_notice(words, is_permanent=is_permanent):
            yield quoting(context, "verb-limited-beside", piece), hit
        elif is_permanent and starts_on_day(words):
            yield quoting(context, "verb-dated", piece), hit


def _ends_untold(
    context: Context, draft: NoticeDraft, path: str
) -> Iterator[tuple[Fault, list[str]]]:
    """A notice that commands nothing and has ended: `Cancelled.` below its head."""
    prose = [(one.pieces[0][0], one.pieces[-1][1]) for one in draft.prose]
    for piece in (*draft.heading, *prose):
        if piece[1] - piece[0] <= _LONGEST and tells_end_of_itself(context.text[slice(*piece)]):
            yield quoting(context, "cancellation-unread", piece), [path]


def _behind_heading(text: str, draft: NoticeDraft) -> Iterator[Piece]:
    """The sentences of a heading behind the first one, which names the place."""
    for index, (start, end) in enumerate(draft.heading):
        cuts = [one.end() for one in _STOP.finditer(text, start, end)]
        starts = cuts if index == 0 else [start, *cuts]
        for first, last in zip(starts, [*starts[1:], end], strict=True) if starts else ():
            yield _without_blanks(text, first, last)


def _above_charts(text: str, draft: NoticeDraft, sections: Sequence[Section]) -> Iterator[Piece]:
    """The lines between the heading of a notice and its first chart or item, each a sentence."""
    if draft.number is None:
        return
    starts = [section.extent[0] for section in sections]
    starts += [item_extent(item)[0] for section in sections for item in section.items]
    at = max([draft.number.end, *(end for _, end in draft.heading)])
    stop = min((one for one in starts if one > draft.number.end), default=at)
    lines = text[at:stop].split("\n")
    for row, line in enumerate(lines[:_MOST_LINES]):
        if row and line.strip():
            yield _without_blanks(text, at, at + len(line))
        at += len(line) + 1


def _without_blanks(text: str, start: int, end: int) -> Piece:
    words = text[start:end]
    start += len(words) - len(words.lstrip())
    return start, start + len(words.strip())
