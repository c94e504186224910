"""The whole way from text to bulletin, in order: repair, lines, layout, records, findings.

Reads as the table of contents of the program.  Nothing is read from the clock or the machine: the
same text gives the same bulletin.
"""

from __future__ import annotations

import hashlib
from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import NamedTuple

from noticeparse.build.corrected import corrected_before
from noticeparse.build.coverage import count_coverage, unread_blocks, unread_fault, untold
from noticeparse.build.doubtful_places import doubts_in_place
from noticeparse.build.edition_lists import read_list
from noticeparse.build.editions import SaidBefore, read_edition, said_of_all
from noticeparse.build.lost_figures import without_lost_figures
from noticeparse.build.notices import NoticeBuilder, NoticeReading
from noticeparse.build.sheets import on_sheets
from noticeparse.caution import CAUTION
from noticeparse.characters import character_faults, nearest
from noticeparse.checks.given import Given
from noticeparse.checks.regions import Region
from noticeparse.checks.running import (
    check_bulletin,
    check_notice,
    check_sheets,
    is_told_by_sheets,
)
from noticeparse.collector import patient_collector
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located, merged, to_finding, with_findings
from noticeparse.layout.bulletin import lay_out
from noticeparse.layout.claims import apart_from, unclaimed, unclaimed_heads, unclaimed_words
from noticeparse.layout.copied.head_sentences import with_heads_apart
from noticeparse.layout.copied.look_alikes import with_words_mended
from noticeparse.layout.copied.lost_signs import with_degree_signs
from noticeparse.layout.copied.markup import without_marks
from noticeparse.layout.copied.page_columns import ReadingOrder, in_reading_order
from noticeparse.layout.copied.second_tongue import without_second_tongue
from noticeparse.layout.copied.verbs_below_items import as_commands, in_order_of_commands
from noticeparse.layout.copied.years_in_front import with_years_behind
from noticeparse.layout.drafts import Layout, Piece
from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.head.charts_behind import laid_out_with_charts
from noticeparse.layout.item.class_headings import with_headings_whole
from noticeparse.layout.item.states_in_brackets import tell_states_in_brackets
from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.lines import read_lines
from noticeparse.layout.place.shared_degrees import refuse_far_degrees, without_lenders
from noticeparse.moving import moved
from noticeparse.records.bulletin import Bulletin, Generator, Source
from noticeparse.records.chart_list import ChartList
from noticeparse.records.notice import Notice
from noticeparse.sheets import Sheets
from noticeparse.text import RepairedText, repair, without_surrogates
from noticeparse.version import VERSION

# How many notices on either side are the surroundings of a notice.
_BESIDE = 4


class Laid(NamedTuple):
    """A text with its layout; where that ends at a cut, all of it ends there."""

    given: str
    repaired: RepairedText
    words: str
    """The repaired text without the marks of where it was copied from."""
    lines: list[Line]
    layout: Layout
    ignored: list[Piece]
    years: tuple[Fault, ...]
    """What is told of the years that stood in front of the numbers of notices."""
    number_sign: str
    """What stood between number and year."""
    mended: tuple[Fault, ...] = ()
    """What is told of words whose letters were exchanged, and of signs that were."""
    order: ReadingOrder | None = None
    """The order in which pages of two columns are read; `repaired` is then in this order."""


def read_bulletin(
    text: str,
    *,
    name: str | None = None,
    media_type: str = "text/plain",
    sha256: str | None = None,
    faults: Iterable[Fault] = (),
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
) -> Bulletin:
    """Read one text; `faults` are those of its bytes, `charts` the sheets to hold it against.

    Of temporary notices that end before the day `as_of` it is said that they have ended; `region`
    is the region of buoyage that lateral marks are held against.
    """
    with patient_collector():
        return read_laid(
            laid_out(text),
            source=source_of(text, name, media_type, sha256),
            faults=faults,
            charts=charts,
            as_of=as_of,
            region=region,
        )


def laid_out(
    text: str,
    least: int | None = None,
    before: HandedOn | None = None,
    *,
    furniture: Sequence[Piece] = (),
) -> Laid:
    """The text with its layout, up to the first place from `least` on where it may be cut.

    `before` is what the layout of the part before hands on, where this is no whole text;
    `furniture` are the heads and feet of pages that the file of the text shows, as it was given.
    """
    is_whole = least is None and before is None and not furniture
    order = in_reading_order(text) or in_order_of_commands(text) if is_whole else None
    repaired = repair(without_surrogates(order.text if order else text))
    signs = with_degree_signs(as_commands(repaired, order))
    tongue = without_second_tongue(signs.text)
    mended = with_words_mended(tongue.text)
    years = with_years_behind(with_heads_apart(mended.text))
    words, marks = without_marks(years.text)
    marks = sorted([*marks, *tongue.marks])
    read = [line for line in read_lines(words) if line.row not in tongue.rows]
    lines = with_headings_whole(words, read)
    rows = _rows_within(repaired, lines, furniture)
    layout = laid_out_with_charts(
        words, lines, lambda text, read: lay_out(text, read, least, before, furniture=rows)
    )
    without_lenders(words, layout)
    refuse_far_degrees(words, layout)
    tell_states_in_brackets(words, layout)
    end = layout.cut
    if end is not None:
        repaired, words = repaired.until(end), words[:end]
        marks = [mark for mark in marks if mark[0] < end]
        lines = [line for line in lines if line.start < end]
        text = text[: len(repaired.given)]
    told = years.until(len(words))
    ignored = layout.ignored + marks
    mends = signs.until(len(words)) + tongue.until(len(words)) + mended.until(len(words))
    return Laid(text, repaired, words, lines, layout, ignored, told, years.sign, mends, order)


def read_laid(
    laid: Laid,
    *,
    source: Source,
    faults: Iterable[Fault] = (),
    charts: ChartList | None = None,
    as_of: date | None = None,
    region: Region | None = None,
    said: SaidBefore | None = None,
    doubts: Sequence[Fault] = (),
) -> Bulletin:
    """From the layout to the bulletin; `doubts` are faults at offsets of the text as given.

    With `said` the text is a part of a longer one, of which that was said before; it is filled up.
    The notices are then not held against an edition of which others are missing.
    """
    given, repaired, words, lines, layout, ignored, years, sign, mended, order = laid
    text = order.text if order else given
    context = Context(repaired, words, ignored, has_years_in_front=bool(years), number_sign=sign)
    front = SaidBefore() if said is None else said
    edition, left, dates, context.year = read_edition(context, layout.front, front)
    explained = [line for one in layout.lists if one.kind == "other" for line in one.entries]
    general = [*layout.front, *layout.titles, *explained]
    context.datum, context.depth_unit = said_of_all(context, general, front)
    context.corrected = corrected_before(context, layout.front)

    located = [Located(fault) for fault in (*faults, *years, *mended)]
    located += character_faults(context, text) + dates
    located += [Located(Fault("text-in-columns", at, at + 1)) for at in _turns(repaired, order)]
    notices: list[Notice] = []
    told = ignored + layout.left_out
    lost = [*layout.left_out, *unclaimed(layout, lines, told)]
    for reading in _built(context, layout):
        notices.append(reading.notice)
        located += reading.located
        lost += reading.lost

    located += doubts_in_place(context, doubts, notices)
    sheets = Sheets(charts) if charts is not None else None
    unread = _unread(context, layout, lines, _unread_lines(left, ignored))
    unread += apart_from(unclaimed_words(words, layout, lines, told), [*unread, *lost], lines)
    located += [unread_fault(context, piece, is_action=False) for piece in untold(unread, located)]
    located += [unread_fault(context, piece, is_action=True) for piece in untold(lost, located)]
    bulletin = Bulletin(
        generator=Generator(name="noticeparse", version=VERSION),
        caution=CAUTION,
        source=source,
        edition=edition,
        notices=on_sheets(notices, sheets),
        lists=[read_list(context, draft) for draft in layout.lists],
        findings=[],
        coverage=count_coverage(context, ignored, unread + lost),
    )
    located += _checked(bulletin, Given(text, as_of), sheets, region, said is None)
    found = with_findings(bulletin, [to_finding(context, one) for one in merged(located)])
    return (
        found
        if order is None
        else with_findings(moved(found, order), moved(found.findings, order))
    )


def _turns(repaired: RepairedText, order: ReadingOrder | None) -> list[int]:
    """Where in the repaired text the right columns of pages begin."""
    return [nearest(repaired, at)[0] for at in order.turns] if order else []


def _rows_within(
    repaired: RepairedText, lines: Sequence[Line], pieces: Sequence[Piece]
) -> frozenset[int]:
    """The rows of the lines that stand within these stretches of the text as given."""
    if not pieces:
        return frozenset()
    ordered = sorted(pieces)
    starts = [start for start, _ in ordered]
    rows: set[int] = set()
    for line in lines:
        if line.elements:
            start = repaired.original(line.elements[0].start)
            end = repaired.original_end(line.elements[-1].end)
            at = bisect_right(starts, start) - 1
            if at >= 0 and end <= ordered[at][1]:
                rows.add(line.row)
    return frozenset(rows)


def source_of(text: str, name: str | None, media_type: str, sha256: str | None) -> Source:
    """Where a text came from; without the hash of its file, that of its own characters."""
    return Source(
        name=name,
        media_type=media_type,
        sha256=sha256 or hashlib.sha256(text.encode("utf-8", "replace")).hexdigest(),
        characters=len(text),
    )


def _checked(
    bulletin: Bulletin, given: Given, sheets: Sheets | None, region: Region | None, is_whole: bool
) -> list[Located]:
    """What the checks find, those over the chart list in the place of others that tell less."""
    notices = bulletin.notices
    found: list[Located] = []
    for index, notice in enumerate(notices):
        beside = notices[max(0, index - _BESIDE) : index + _BESIDE + 1]
        found += check_notice(notice, f"/notices/{index}", beside, region=region)
    found += check_bulletin(bulletin, given, is_whole=is_whole)
    if sheets is None:
        return found
    found = [one for one in found if not is_told_by_sheets(one, notices, sheets)]
    return found + check_sheets(notices, sheets)


def _built(context: Context, layout: Layout) -> Iterator[NoticeReading]:
    """The notices with their faults, depths in doubt held back.

    A notice ends where the next one begins, or a list of the edition, or the mark above that one.
    """
    starts = [draft.number.start if draft.number else draft.start for draft in layout.notices]
    marks = [one.mark_above[0] for one in layout.notices if one.mark_above is not None]
    titles = [one.title.start for one in layout.lists]
    ends = sorted([*starts, *marks, *titles, len(context.text)])
    for index, draft in enumerate(layout.notices):
        path = f"/notices/{index}"
        until = ends[min(bisect_right(ends, starts[index]), len(ends) - 1)]
        reading = NoticeBuilder(context, draft, path, until).build()
        yield without_lost_figures(context, reading, path)


def _unread(context: Context, layout: Layout, lines: list[Line], left: list[Line]) -> list[Piece]:
    """What stands outside notices and was not read: blocks of lines, heads, loose words."""
    heads = unclaimed_heads(layout, lines, context.ignored + layout.left_out)
    loose = [piece for prose in layout.loose for piece in prose.pieces]
    apart = [one for one in loose if not any(a <= one[0] < b for a, b in heads)]
    return [*unread_blocks(context, left), *heads, *apart]


def _unread_lines(left: list[Line], ignored: list[Piece]) -> list[Line]:
    hidden = set(ignored)
    return [line for line in left if (line.start, line.end) not in hidden]
