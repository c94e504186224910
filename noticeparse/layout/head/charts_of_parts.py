"""Charts at the foot of a notice, each for a part of it: `Part A: chart 802. Part B: chart 803`.

    613/26. QUILL SOUND. Part A. Insert wreck P; delete rock Q. Part B. Insert pile R.
        Part A: chart 802 (previous 588/26). Part B: chart 802, plan B (previous 588/26).

The part that heads commands has the chart that the foot gives it.  Only where each part of the
notice has one, and nothing stands outside them, is the foot read so.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.layout.head.charts_behind import charts_unread
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.heads import opening_kind, read_parts
from noticeparse.stretch import gather

_NAME = (
    r"(?P<name>(?:part|section|group|list|block) (?:[A-Z]|[0-9]{1,2}|[IVX]{1,4})(?![A-Za-z0-9]))"
)
_LEAD = re.compile(rf"(?<![A-Za-z] ){_NAME}(?:[.:]| ?-)?\s{{0,8}}\Z", re.IGNORECASE)
"""`Part B.` right in front of what it heads."""
_OF_FOOT = re.compile(
    rf"(?<![A-Za-z-] ){_NAME}(?:[.:]| ?-|,)?\s{{1,8}}(?:(?:is )?(?:for|on)\s{{1,8}})?"
    r"(?=ch(?:arts?|ts?)\b)",
    re.IGNORECASE,
)
_HEADS = frozenset(
    "CHART_WORD CHART_NUMBER INTERNATIONAL PANEL MAIN_PANEL SCALE COMMA STOP PREVIOUS "
    "PREVIOUS_IN_BRACKETS NOTICE_NUMBER NEW_EDITION EDITION DATE DATUM DEPTH_UNIT".split()
)
_NEEDED = frozenset({"CHART_WORD", "CHART_NUMBER"})
_BREAKS_OFF = (" for", " on", ":", "-")
"""How a line of a foot ends that has its chart below it."""
_MOST_LINES = 8
"""Lines of a foot."""
_LONGEST = 1000
_FEWEST = 2


class _Part(NamedTuple):
    """A part of a notice: its name in front of it, and the lines of the body."""

    lead: Piece | None
    lines: list[Line]

    def name(self, text: str) -> str:
        """Its name; of what stands in front of all parts none."""
        found = _LEAD.match(text, *self.lead) if self.lead is not None else None
        return _plain(found["name"]) if found is not None else ""


class ChartsOfParts:
    """Takes the foot of a notice in parts, and gives each part its chart."""

    def __init__(self, assembly: Assembly) -> None:
        self._assembly = assembly
        self._until = 0
        """Where the last foot that was taken ends."""

    def takes(self, line: Line) -> bool:
        """Whether a line is the foot of the open notice, or goes on with one that was taken."""
        if line.start < self._until:
            return True
        assembly = self._assembly
        notice = assembly.notice
        if notice is None or notice.is_radio or notice.charts or assembly.is_by_chart:
            return False
        if not assembly.body or not is_foot_of_parts(assembly.text, line):
            return False
        parts = list(self._parts())
        names = [part.name(assembly.text) for part in parts]
        start = line.elements[0].start
        for end in self._ends(line):
            foot = _charts(assembly.text, start, end)
            charts = {_plain(one["name"]): pieces for one, pieces in foot}
            if len(charts) == len(foot) == len(names) >= _FEWEST and charts.keys() == {*names}:
                notice.clauses += [one.span() for one, _ in foot]
                self._give(notice, parts, charts)
                self._until = end
                return True
        if any(names) or len(_OF_FOOT.findall(assembly.text, start, line.end)) >= _FEWEST:
            self._hold(notice, (start, line.end))
        return False

    def _hold(self, notice: NoticeDraft, foot: Piece) -> None:
        """Hold all items of a notice whose parts and charts do not belong together for certain."""
        self._assembly.end_body()
        reason = "the parts of the notice and their charts do not go together"
        for chart in notice.charts:
            for item in chart.items:
                item.faults.append(charts_unread(self._assembly.text, foot, reason))

    def _ends(self, line: Line) -> Iterator[int]:
        """Where a foot may end that begins with a line, the last first.

        Behind a blank line it goes on with another part only.
        """
        text, ends, at = self._assembly.text, [line.end], line.end + 1
        for _ in range(_MOST_LINES):
            stop = text.find("\n", at)
            stop = len(text) if stop < 0 else stop
            if at >= len(text) or stop - line.start > _LONGEST:
                break
            words = text[at:stop]
            is_apart = text[ends[-1] : at].strip(" \t") != "\n"
            breaks_off = text[line.start : ends[-1]].rstrip().endswith(_BREAKS_OFF)
            if opening_kind(words) == "CHART_WORD" and not breaks_off:
                break
            if is_apart and words.strip() and _OF_FOOT.match(text, at) is None:
                break
            if words.strip():
                ends.append(stop)
            at = stop + 1
        return reversed(ends)

    def _parts(self) -> Iterator[_Part]:
        """The parts of the open body, and what stands in front of the first."""
        text, notice = self._assembly.text, self._assembly.notice
        lead = _lead_of(text, notice.heading[-1]) if notice and notice.heading else None
        lines: list[Line] = []
        for line in self._assembly.body:
            start = 0
            for at, element in enumerate(line.elements):
                if not _leads(text, line.elements, at):
                    continue
                lines.append(line._replace(elements=line.elements[start:at]))
                if lead is not None or not all(one.is_blank for one in lines):
                    yield _Part(lead, lines)
                lead, lines, start = (element.start, element.end), [], at + 1
            lines.append(line._replace(elements=line.elements[start:]))
        yield _Part(lead, lines)

    def _give(
        self, notice: NoticeDraft, parts: Sequence[_Part], charts: Mapping[str, list[Piece]]
    ) -> None:
        """Open the chart of each part, and cut what stands in it."""
        assembly = self._assembly
        heading = notice.heading[-1] if notice.heading else (0, 0)
        leads = [part.lead for part in parts if part.lead is not None]
        if leads[0][1] == heading[1]:
            rest = (heading[0], leads[0][0])
            notice.heading[-1:] = [rest] if assembly.text[slice(*rest)].strip(" .") else []
        notice.clauses += leads
        for part in parts:
            assembly.body = []
            first, *more = charts[part.name(assembly.text)]
            assembly.open_chart(first)
            assembly.charts[-1].head += more
            assembly.body = [line for line in part.lines if not line.is_blank]
            assembly.end_body()


def names_part(words: str) -> bool:
    """Whether words are the name of a part of a notice, and nothing else."""
    return _LEAD.match(words) is not None


def is_foot_of_parts(text: str, line: Line) -> bool:
    """Whether a line gives a part of its notice a chart, and commands nothing itself."""
    if line.is_blank or line.has("verb", "point", "half"):
        return False
    first = line.elements[0]
    return first.kind == "words" and _OF_FOOT.match(text, first.start) is not None


def _leads(text: str, elements: Sequence[Element], at: int) -> bool:
    """Whether an element names a part, at the start of its line or behind an item."""
    element = elements[at]
    if element.kind != "words" or (at and elements[at - 1].kind not in (*PLACES, "semicolon")):
        return False
    return _LEAD.match(text, element.start, element.end) is not None


def _lead_of(text: str, piece: Piece) -> Piece | None:
    """The name of a part at the end of a heading: `Quill Sound. Part A.`."""
    words = text[slice(*piece)]
    found = _LEAD.search(words)
    if found is None or words[: found.start()].rstrip()[-1:] not in ("", "."):
        return None
    return piece[0] + found.start(), piece[1]


def _plain(name: str) -> str:
    return " ".join(name.lower().split())


def _charts(text: str, start: int, end: int) -> list[tuple[re.Match[str], list[Piece]]]:
    """The parts that a foot names, each with the charts behind it; none where it says more."""
    found = list(_OF_FOOT.finditer(text, start, end))
    made: list[tuple[re.Match[str], list[Piece]]] = []
    for index, one in enumerate(found):
        following = found[index + 1].start() if index + 1 < len(found) else end
        pieces = list(_solid_lines(text, one.end(), following))
        parts = read_parts(gather(text, pieces).text)
        kinds = {part.kind for part in parts}
        if not (kinds <= _HEADS and kinds >= _NEEDED and parts[0].kind == "CHART_WORD"):
            return []
        made.append((one, pieces))
    return made


def _solid_lines(text: str, start: int, end: int) -> Iterator[Piece]:
    """What is written on each line of a stretch."""
    for line in text[start:end].split("\n"):
        if words := line.strip():
            at = start + line.index(words)
            yield at, at + len(words)
        start += len(line) + 1
