"""Reads a text of any length in bounded memory: part by part, each cut where a notice begins.

In come pieces of text; out come bulletins, one for each part, with the notices, lists and
findings of that part alone.  Their spans and paths count in the whole text, and what was said
before holds on: edition, datum, unit, the titles of columns.  A text of no more than `WHOLE`
characters is one part, and is read just as `read_bulletin` reads it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from typing import NamedTuple

from noticeparse.build.editions import SaidBefore
from noticeparse.characters import nearest
from noticeparse.checks.regions import Region
from noticeparse.collector import patient_collector
from noticeparse.faults import Fault
from noticeparse.findings import in_text_order, is_outside
from noticeparse.layout.handed_on import HandedOn
from noticeparse.moving import Move, moved
from noticeparse.pipeline import Laid, laid_out, read_laid, source_of
from noticeparse.records.bulletin import Bulletin, Source
from noticeparse.records.chart_list import ChartList
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.sheets import after_applying

WHOLE = 1_000_000
"""Characters that are read as one; in a longer text, the most that are read without a cut."""
PART = 250_000
"""Characters of a part of a longer text, at least."""
_BEYOND = 4
"""A place to cut is first looked for over this share of a part beyond its least length."""


class Terms(NamedTuple):
    """How a text is to be read, and the sizes of its parts."""

    source: Source | None = None
    """Where the whole text comes from, if that is known."""
    faults: tuple[Fault, ...] = ()
    """Faults of the bytes; unlike those of readers they count in the text as it was given."""
    charts: ChartList | None = None
    as_of: date | None = None
    region: Region | None = None
    whole: int = WHOLE
    part: int = PART


def read_parts(pieces: Iterable[str], terms: Terms) -> Iterator[Bulletin]:
    """The parts of a text, in order; what one puts on a chart is on it for those that follow."""
    buffer = _Buffer(pieces)
    reader = _PartReader(buffer, terms)
    if not buffer.fill(terms.whole + 1):
        yield reader.whole()
        return
    while buffer.fill(1):
        yield reader.next_part()


class _Buffer:
    """The text that was not read yet, as far as it has come in."""

    def __init__(self, pieces: Iterable[str]) -> None:
        self._pieces = iter(pieces)
        self.text = ""

    def fill(self, least: int) -> bool:
        """Take pieces in until `least` characters are there; False if there are not so many."""
        held, length = [self.text], len(self.text)
        while length < least and (piece := next(self._pieces, None)) is not None:
            held.append(piece)
            length += len(piece)
        self.text = "".join(held)
        return length >= least


class _PartReader:
    """What is carried from part to part: what holds on, sheets, and how much was read."""

    def __init__(self, buffer: _Buffer, terms: Terms) -> None:
        self._buffer = buffer
        self._terms = terms
        self._charts = terms.charts
        self._said: SaidBefore | None = None
        self._before: HandedOn | None = None
        """What the part before hands on; None in front of the first."""
        self._read, self._lines, self._column = 0, 0, 0
        """Characters, line feeds, and characters behind the last of these that were read."""
        self._notices, self._lists = 0, 0

    def whole(self) -> Bulletin:
        """All that there is, as one."""
        return self._bulletin(laid_out(self._buffer.text))

    @patient_collector()
    def next_part(self) -> Bulletin:
        """The next part of a text that has more than one."""
        if self._said is None:
            self._said = SaidBefore()
        laid, is_torn = self._laid()
        move = Move(self._read, self._lines, self._column, self._notices, self._lists)
        bulletin = _moved(self._bulletin(laid), move)
        if self._charts is not None:
            self._charts = after_applying(self._charts, bulletin)
        self._before = laid.layout.handed_on
        if is_torn:
            self._before = self._before.behind_a_tear()
        self._take(laid.given)
        self._notices += len(bulletin.notices)
        self._lists += len(bulletin.lists)
        return bulletin

    def _laid(self) -> tuple[Laid, bool]:
        """The next part, and whether it had to be cut within something."""
        terms, buffer = self._terms, self._buffer
        # A short part at the end would show too little of what goes on, so it is none of its own.
        if not buffer.fill(2 * terms.part):
            return laid_out(buffer.text, None, self._before), False
        length = terms.part + terms.part // _BEYOND
        while True:
            has_more = buffer.fill(length + 1)
            laid = laid_out(buffer.text[:length], terms.part, self._before)
            if laid.layout.cut is not None or not has_more:
                return laid, False
            if length >= terms.whole:
                text = buffer.text[:length]
                return laid_out(text[: _last_break(text)], None, self._before), True
            length = min(2 * length, terms.whole)

    def _take(self, text: str) -> None:
        self._buffer.text = self._buffer.text[len(text) :]
        last = text.rfind("\n")
        self._column = len(text) - last - 1 if last >= 0 else self._column + len(text)
        self._read += len(text)
        self._lines += text.count("\n")

    def _bulletin(self, laid: Laid) -> Bulletin:
        terms = self._terms
        is_here = range(self._read, self._read + len(laid.given))
        return read_laid(
            laid,
            source=terms.source or source_of(laid.given, None, "text/plain", None),
            faults=[
                *self._faults_of_parts(laid),
                *(
                    Fault(one.code, *nearest(laid.repaired, one.start - self._read), one.values)
                    for one in terms.faults
                    if one.start in is_here
                ),
            ],
            charts=self._charts,
            as_of=terms.as_of,
            region=terms.region,
            said=self._said,
        )

    def _faults_of_parts(self, laid: Laid) -> Iterator[Fault]:
        """That there are parts, said once, and that something is cut in two."""
        length = _figure(self._terms.whole)
        if self._said is not None and self._read == 0:
            yield Fault("text-in-parts", 0, 0, {"most": length})
        if self._before is not None and self._before.is_torn:
            first = next((one for line in laid.lines for one in line.elements), None)
            stretch = (first.start, first.end) if first else (0, 0)
            yield Fault("text-cut", *stretch, {"length": length})


def _moved(bulletin: Bulletin, move: Move) -> Bulletin:
    """The bulletin of a part, counted in the whole text."""
    update = {
        "notices": moved(bulletin.notices, move),
        "lists": moved(bulletin.lists, move),
        "findings": moved(bulletin.findings, move),
        "coverage": moved(bulletin.coverage, move),
    }
    return bulletin.model_copy(update=update)


def with_all_findings(parts: Iterable[Bulletin]) -> Iterator[Notice]:
    """The notices; a finding outside any of them goes to the next one, or to the last."""
    last: Notice | None = None
    waiting: list[Finding] = []
    for part in parts:
        waiting += (one for one in part.findings if is_outside(one))
        for notice in part.notices:
            if last is not None:
                yield last
            end = notice.span.end
            own = [one for one in waiting if one.span is None or one.span.start < end]
            waiting = [one for one in waiting if one not in own]
            last = _with(notice, own)
    if last is not None:
        yield _with(last, waiting)


def _with(notice: Notice, findings: list[Finding]) -> Notice:
    if not findings:
        return notice
    together = sorted([*findings, *notice.findings], key=in_text_order)
    return notice.model_copy(update={"findings": together})


def _last_break(text: str) -> int:
    """Behind the last blank line of the second half, else the last line, else the end."""
    for mark in ("\n\n", "\n"):
        at = text.rfind(mark, len(text) // 2)
        if at >= 0:
            return at + len(mark)
    return len(text)


def _figure(number: int) -> str:
    """`1 000 000`."""
    return f"{number:,}".replace(",", " ")
