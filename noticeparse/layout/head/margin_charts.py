"""Charts of the head that stand again in the margin, each before the entry that is for them.

    Charts 210 (1388/26), 211 (1401/26)
    210, 211    Insert    light, Fl.R.2s8m5M    46°37'.66 S   124°11'.79 W
    211         Insert    dolphin               46°37'.60 S   124°12'.02 W

The place may stand between: `211   46°37'.60 S   124°12'.02 W   insert dolphin`.
Where no head names them, several numbers with a colon are charts: `802, 803: Insert wreck P`.

A command without charts in its margin, among others that have them, may be for those above it or
for all: it is held back.
"""

from __future__ import annotations

import re

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import ChartDraft, NoticeDraft
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.heads import read_parts

_NUMBER = r"[A-Z]{0,3}[0-9]{1,6}[A-Z]?"
_MARGIN = re.compile(
    rf"(?P<first>{_NUMBER})(?P<more>(?: ?[,;&] ?(?:and )?| and ){_NUMBER}){{0,11}} ?:?"
    r"|all(?: charts)? ?:?",
    re.IGNORECASE,
)
_COUNTS = 2
"""Figures of a number that may count the items of a notice."""
_SEVERAL = (
    r"[A-Z]{0,3}[0-9]{3,6}[A-Z]?"
    r"(?P<%s>(?: ?[,;&/] ?(?:and )?| and )[A-Z]{0,3}[0-9]{3,6}[A-Z]?){0,11}"
)
_UNHEADED = re.compile(
    rf"(?P<on>[Oo]n |[Ff]or )?{_SEVERAL % 'more'} ?:|[\[(]{_SEVERAL % 'within'}[\])] ?:?"
)


def _entry_at(line: Line) -> int:
    """Where the entry behind a margin begins: with its verb, or its place and the verb behind."""
    return next((i for i, one in enumerate(line.elements) if _opens_entry(line, one)), 0)


def _opens_entry(line: Line, element: Element) -> bool:
    if element.kind in PLACES:
        return any(one.kind == "verb" and one.start > element.start for one in line.elements)
    return element.kind == "verb"


class MarginCharts:
    """Takes the entries that have their charts in the margin."""

    def __init__(self, assembly: Assembly) -> None:
        self._assembly = assembly
        self._of: ChartDraft | None = None
        self._above: Element | None = None
        """The margin of the entry above, under the same head."""
        self._named: tuple[int, set[str]] = (-1, set())
        """How many pieces the head has, and the charts that it and those above it name."""
        self._unheaded: NoticeDraft | None = None
        """The notice without a head of charts in which several stood in a margin."""

    def takes(self, line: Line) -> bool:
        """Whether a line is an entry with charts in its margin, or one that lacks them."""
        assembly = self._assembly
        if not assembly.charts:
            return self._takes_unheaded(line)
        if assembly.charts[-1].number is not None:
            return False
        if self._of is not assembly.charts[-1]:
            self._of, self._above, self._named = assembly.charts[-1], None, (-1, set())
        first, *behind = line.elements
        if self._above is not None and behind and _opens_entry(line, first):
            doubt = self._above._replace(value="above")
            assembly.body.append(line._replace(elements=(doubt, *line.elements)))
            return True
        at = _entry_at(line)
        margin = line.elements[:at]
        if not margin or any(one.gap for one in margin[1:]):
            return False
        is_place = line.elements[at].kind in PLACES
        if not is_place and not line.elements[at].gap:
            return False
        if any(one.kind not in ("words", "semicolon") for one in margin):
            return False
        start, end = margin[0].start, margin[-1].end
        words = assembly.text[start:end]
        if not self._is_margin(words):
            is_list = not is_place or _MARGIN.fullmatch(words) is not None
            if not is_list or self._known().isdisjoint(re.findall(_NUMBER, words)):
                # `Light-buoy No 4   P   delete` under chart 4.
                return False
            # `not 211`, `all except 211`: it is for some of them, and nobody reads which.
            doubt = Element("charts_only", start, end, True, "above")
            assembly.body.append(line._replace(elements=(doubt, *line.elements[at:])))
            return True
        self._above = Element("charts_only", start, end, True)
        assembly.body.append(line._replace(elements=(self._above, *line.elements[at:])))
        return True

    def _takes_unheaded(self, line: Line) -> bool:
        """Whether charts that no head names stand in front of a command, or what may be one."""
        notice, text = self._assembly.notice, self._assembly.text
        if notice is None or len(line.elements) < 2 or line.elements[1].kind != "verb":
            return False
        margin = line.elements[0]
        found = _UNHEADED.fullmatch(text, margin.start, margin.end)
        if margin.kind != "words" or found is None:
            return False
        # The number of a light in its list may stand in front too.
        is_told = any(found.groupdict().values())
        is_list = is_told and "light" not in text[margin.end : line.end].lower()
        self._unheaded = notice if is_list else self._unheaded
        doubt = None if self._unheaded is notice else "above"
        own = Element("charts_only", margin.start, margin.end, True, doubt)
        self._assembly.body.append(line._replace(elements=(own, *line.elements[1:])))
        return True

    def _is_margin(self, words: str) -> bool:
        """Whether words are as charts of the head, or `all`; few figures may count items."""
        found = _MARGIN.fullmatch(words)
        if found is None:
            return False
        if found["first"] is None:
            return True
        named = set(re.findall(_NUMBER, words))
        if found["more"] is None and len(found["first"]) <= _COUNTS:
            return False
        known = self._known()
        # Another number as long as those of the head is that of a chart too, and is told so.
        return not named.isdisjoint(known) or {*map(len, named)} <= {*map(len, known)}

    def _known(self) -> set[str]:
        """The charts of the heads above, between which nothing is to be done."""
        assembly = self._assembly
        heads = [assembly.charts[-1]]
        pieces = len(heads[0].head)
        if self._named[0] == pieces:
            return self._named[1]
        before = assembly.notice.charts if assembly.notice is not None else []
        for one in reversed(before):
            if one is not heads[0] and one.items:
                break
            heads.append(one)
        head = " ".join(assembly.text[slice(*piece)] for one in heads for piece in one.head)
        named = {part.text for part in read_parts(head) if part.kind == "CHART_NUMBER"}
        self._named = (pieces, named)
        return named
