"""Charts of the head that stand again below a command, each in front of its own place.

    Charts 802 [30/26], 803 [31/26]
    1. Insert wreck
         chart 802    47 11.402 S  123 40.180 W
         chart 803    47 11.40 S   123 40.18 W

Such a row heads no section: it belongs to the command above it, and is marked for
`layout/item/charts_below.py`.  A number without the word for a chart may be a depth.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.columns import column_role
from noticeparse.layout.drafts import ChartDraft
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.item.charts_below import says_more
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.recognise import is_row_of_charts
from noticeparse.readers.head_values import HeadPart
from noticeparse.readers.heads import read_parts

_OF_CHARTS = frozenset(
    {"CHART_WORD", "CHART_NUMBER", "COMMA", "STOP", "INTERNATIONAL", "PREVIOUS_IN_BRACKETS"}
)
_BEFORE = frozenset({"for", "on", "in"})
"""Words before that for a chart."""
_LONGEST = 80
_FEWEST_TITLES = 2
_TITLES = frozenset({"chart", "position"})
_FAR_ABOVE = 60
"""Lines; a command further above has nothing to do with a row."""
_DASHES = frozenset("- -- --- – — ― −".split())
_NONE = frozenset({"nil", "none"})
_FEWEST_FIGURES = 3
"""Figures of a number without the word for a chart; fewer count something."""
_FIGURE_IS_DEPTH = re.compile(r"\b(?:depths?|soundings?)(?! {1,3}[0-9])", re.IGNORECASE)


class ChartsOfPlaces:
    """Takes the rows of a command that have chart and place, and nothing else."""

    def __init__(self, assembly: Assembly) -> None:
        self._assembly = assembly
        self._of: ChartDraft | None = None
        """The head of which the charts are known."""
        self._pieces = -1
        """How many pieces it has."""
        self._known: frozenset[str] = frozenset()

    def takes(self, line: Line) -> bool:
        """Whether a line is such a row, which then is in the body with its charts marked."""
        assembly = self._assembly
        text, body = assembly.text, assembly.body
        if is_row_of_charts(text, line, assembly.charts):
            chart, number = line.elements[:2]
            own = Element("charts_only", chart.start, number.end, True)
            body.append(line._replace(elements=(own, *line.elements[2:])))
            return True
        if assembly.is_by_chart:
            return False
        if not line.has(*PLACES):
            return self._takes_titles(line) or (bool(assembly.charts) and self._takes_none(line))
        row = with_charts_marked(text, line)
        if row is None or not _commands(body):
            return False
        charts = row.elements[lead_index(row)]
        parts = read_parts(text[charts.start : charts.end])
        is_bare = all(part.kind != "CHART_WORD" for part in parts)
        if not assembly.charts:
            # Charts that no head names before: the rows do, or a line below them.
            if assembly.notice is None or is_bare or not _awaits_place(text, body):
                return False
        elif not self._are_known(parts) or (is_bare and not _awaits_place(text, body)):
            return False
        if is_bare and _may_be_depth(text, body):
            doubt = charts._replace(value="above")
            row = line._replace(elements=(doubt, *line.elements))
        body.append(row)
        return True

    def _takes_titles(self, line: Line) -> bool:
        """Whether a line below a command has the titles of such rows: `Chart    Position`."""
        assembly = self._assembly
        titles = [assembly.words(e) for e in line.elements if e.kind != "bar"]
        if len(titles) < _FEWEST_TITLES:
            return False
        if {column_role(title) for title in titles} != _TITLES or assembly.notice is None:
            return False
        if not (_commands(assembly.body) and _awaits_place(assembly.text, assembly.body)):
            return False
        assembly.notice.class_headings.append((line.elements[0].start, line.elements[-1].end))
        return True

    def _takes_none(self, line: Line) -> bool:
        """Whether a row has nothing but a dash for its chart, on which the command is not done."""
        assembly = self._assembly
        if line.elements[0].kind != "chart" or line.elements[-1].kind not in ("words", "bar"):
            return False
        start, end = line.elements[0].start, line.elements[-1].end
        words, _, none = assembly.text[start:end].rpartition(" ")
        is_none = none.strip() in _DASHES or none.lower().strip(" .()") in _NONE
        parts = read_parts(words)
        is_whole = bool(parts) and _end_of_charts(parts) == parts[-1].end
        if not (is_none and is_whole and self._are_known(parts)):
            return False
        if assembly.notice is None or not _may_have_none(assembly.text, assembly.body):
            return False
        assembly.notice.class_headings.append((start, end))
        return True

    def _are_known(self, parts: Sequence[HeadPart]) -> bool:
        """Whether charts are those of the head, with nothing said of the notice before."""
        if any(part.kind == "PREVIOUS_IN_BRACKETS" for part in parts):
            return False
        numbers = [part.text for part in parts if _is_number(part)]
        is_short = all(part.kind != "CHART_WORD" for part in parts) and any(
            len(number) < _FEWEST_FIGURES for number in numbers
        )
        return not is_short and self._heads().issuperset(numbers)

    def _heads(self) -> frozenset[str]:
        """The charts of the heads above, between which nothing is to be done."""
        assembly = self._assembly
        last = assembly.charts[-1]
        if self._of is last and self._pieces == len(last.head):
            return self._known
        heads = [last]
        for one in reversed(assembly.notice.charts if assembly.notice is not None else []):
            if one is not last and one.items:
                break
            heads.append(one)
        parts = [p for one in heads for piece in one.head for p in self._parts(piece)]
        self._of, self._pieces = last, len(last.head)
        self._known = frozenset(part.text for part in parts if _is_number(part))
        return self._known

    def _parts(self, piece: tuple[int, int]) -> Sequence[HeadPart]:
        return read_parts(self._assembly.text[slice(*piece)])


def _is_number(part: HeadPart) -> bool:
    return part.kind == "CHART_NUMBER"


def with_charts_marked(text: str, line: Line) -> Line | None:
    """The line, its charts one element that is for them only; None for any other line."""
    at = lead_index(line)
    place = next((i for i, e in enumerate(line.elements) if e.kind in PLACES), 0)
    lead = line.elements[at:place]
    if not lead or lead[0].kind not in ("chart", "words"):
        return None
    if any(e.kind not in ("chart", "words", "label", "bar") for e in lead):
        return None
    start, end = lead[0].start, lead[-1].end
    if end - start > _LONGEST:
        return None
    parts = read_parts(text[start:end])
    stop = _end_of_charts(parts)
    rest = [e._replace(start=max(e.start, start + stop)) for e in lead if e.end > start + stop]
    words = [one for e in rest if (one := _trimmed(text, e)) is not None]
    behind = (*words, *line.elements[place:])
    if not stop or any(e.kind == "chart" or says_more(text, e) for e in behind):
        return None
    own = Element("charts_only", start, start + stop, True)
    return line._replace(elements=(*line.elements[:at], own, *behind))


def _end_of_charts(parts: Sequence[HeadPart]) -> int:
    """Where the charts that open some words end; 0 where they open with something else."""
    end, numbers = 0, 0
    for index, part in enumerate(parts):
        if index == 0 and part.kind == "OTHER_WORDS" and part.text.lower() in _BEFORE:
            continue
        if part.kind not in _OF_CHARTS:
            break
        numbers += _is_number(part)
        end = part.end
    return end if numbers else 0


def _trimmed(text: str, element: Element) -> Element | None:
    """The element without the blanks it begins with; None where nothing is left."""
    words = text[element.start : element.end]
    start = element.end - len(words.lstrip())
    return element._replace(start=start) if start < element.end else None


def _commands(body: Sequence[Line]) -> bool:
    """Whether a body commands something, and does not open with a place, as rows may."""
    if not body or body[0].is_blank or body[0].elements[lead_index(body[0])].kind in PLACES:
        return False
    return any(line.has("verb") or _is_row(line) for line in reversed(body[-_FAR_ABOVE:]))


def _is_row(line: Line) -> bool:
    return not line.is_blank and any(e.kind == "charts_only" for e in line.elements[:2])


def _awaits_place(text: str, body: Sequence[Line]) -> bool:
    """Whether the last line of a body is words without a place, or a row of such words."""
    for line in reversed(body[-_FAR_ABOVE:]):
        if line.is_blank or line.has_only("bar", "rule"):
            continue
        if not line.has(*PLACES):
            return any(element.kind == "words" for element in line.elements)
        if _is_row(line):
            return True
        if any(says_more(text, element) for element in line.elements):
            return False
    return False


def _may_have_none(text: str, body: Sequence[Line]) -> bool:
    """Whether the rows of the command above, if it has any, may go on with one of no place.

    `On chart 803 -` behind a blank line, or below a place of the command itself, heads a section.
    """
    if not body or body[-1].is_blank or not _awaits_place(text, body):
        return False
    above = next((line for line in reversed(body) if not line.has_only("bar", "rule")), body[-1])
    return _is_row(above) or not above.has(*PLACES) or any(map(_is_row, body[-_FAR_ABOVE:]))


def _may_be_depth(text: str, body: Sequence[Line]) -> bool:
    """Whether the command above is of depths that it does not tell."""
    for line in reversed(body[-_FAR_ABOVE:]):
        if not line.is_blank and not line.has(*PLACES):
            return _FIGURE_IS_DEPTH.search(text, line.start, line.end) is not None
    return True
