"""What of the text the layout gave to no notice, list or front matter.

The layout decides line by line; this counts from the other end, so that a position which no
decision took cannot pass for read.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import zip_longest

from noticeparse.layout.drafts import Layout, NoticeDraft, Piece
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.row.place_keys import known_key_end, with_place_key
from noticeparse.layout.row.value_keys import value_start
from noticeparse.layout.sentence.line_leads import is_key
from noticeparse.readers.references import mark_of_number, status_in_words

_BEARING = frozenset({"point", "half", "reference", "same", "passive"})
_WORDS = frozenset({"words", "number"})


def unclaimed(layout: Layout, lines: Sequence[Line], ignored: Sequence[Piece]) -> list[Piece]:
    """The positions, references and told verbs that no part of the layout holds, in text order."""
    claimed = _joined([*ignored, *_claims(layout)])
    starts = [start for start, _ in claimed]
    first = min((notice.start for notice in layout.notices), default=0)
    found: list[Piece] = []
    for line in lines:
        for element in line.elements:
            # Above all notices a letter stands for no place yet: signs are explained there.
            is_explained = element.kind == "reference" and element.start < first
            if element.kind not in _BEARING or is_explained:
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


def unclaimed_words(
    text: str, layout: Layout, lines: Sequence[Line], ignored: Sequence[Piece]
) -> list[Piece]:
    """The words and numbers that no part of the layout holds, in text order.

    The numbers of a notice, of its chart and of the notice before may stand again in each row,
    with a word before them; they are read all the same.
    """
    claimed = _joined([*ignored, *_claims(layout)])
    starts = [start for start, _ in claimed]
    known = _known_numbers(text, layout)
    marked = {told for words in known if (told := mark_of_number(words)) is not None}
    found: list[Piece] = []
    for line in lines:
        for element, following in zip_longest(line.elements, line.elements[1:]):
            if element.kind not in _WORDS:
                continue
            words = text[element.start : element.end].strip()
            # A stop before the first word belongs to what stands above.
            first = element.end - len(text[element.start : element.end].lstrip(" .,;"))
            if element is line.elements[0] and (value := value_start(text, line)) is not None:
                # What stands behind such a key is asked for.
                first = value
            elif (key_end := _key_end(text, line, element)) is not None:
                behind = text[key_end : element.end].lstrip()
                stop = following.start if following is not None else element.end
                first = element.end - len(behind) if behind else stop
            row = bisect_right(starts, first) - 1
            is_claimed = row >= 0 and claimed[row][1] > first
            if is_claimed or words in known:
                continue
            if status_in_words(words) in marked or is_key(words):
                continue
            if following is not None and text[following.start : following.end].strip() in known:
                continue
            if element is line.elements[0] and with_place_key(text, line) is not line:
                # The key of places; these are asked for themselves.
                continue
            if any(c.isalnum() for c in words):
                found.append((element.start, element.end))
    return found


def _key_end(text: str, line: Line, element: Element) -> int | None:
    """Where the key of a record ends that an element opens with, behind a number or not."""
    lead = int(line.elements[0].kind == "label")
    if line.elements[lead : lead + 1] != (element,):
        return None
    return known_key_end(text, line._replace(elements=line.elements[lead:]))


def apart_from(
    pieces: Sequence[Piece], told: Sequence[Piece], lines: Sequence[Line]
) -> list[Piece]:
    """The pieces that stand on no line of which a told piece holds anything."""
    starts = [line.start for line in lines]

    def rows(piece: Piece) -> range:
        return range(bisect_right(starts, piece[0]) - 1, bisect_right(starts, piece[1]))

    told_rows = {row for piece in told for row in rows(piece)}
    return [piece for piece in pieces if told_rows.isdisjoint(rows(piece))]


def _known_numbers(text: str, layout: Layout) -> set[str | None]:
    known: set[str | None] = {notice.number_words for notice in layout.notices}
    for notice in layout.notices:
        if notice.number is not None and notice.number_words is not None:
            # Number and year may stand in columns of their own.
            known.add(notice.number_words.partition("/")[0].partition("(")[0])
        for chart in notice.charts:
            known.add(chart.number)
            if chart.previous is not None:
                before = text[slice(*chart.previous)].strip()
                known.update((before, *before.replace(",", " ").replace(";", " ").split()))
    return known


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
    if notice.number is not None:
        yield notice.start, notice.number.end
    yield from (*notice.heading, *notice.sources, *notice.clauses, *notice.class_headings)
    yield from notice.cancelled
    for prose in notice.prose:
        yield from prose.pieces
    for chart in notice.charts:
        yield from chart.head
        yield from (piece for piece in (chart.previous, chart.letters) if piece is not None)
        for item in chart.items:
            yield from item.pieces
            if item.verb_piece is not None:
                yield item.verb_piece


def _joined(pieces: list[Piece]) -> list[Piece]:
    joined: list[Piece] = []
    for start, end in sorted(pieces):
        if joined and start <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(joined[-1][1], end))
        else:
            joined.append((start, end))
    return joined
