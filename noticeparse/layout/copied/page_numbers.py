"""Figures that number pages: lone ones on a line, and those far from the number of the edition.

`- 2 -` numbers a page wherever it stands.  Other figures do where they stand away from the lines
above or below, or count on with one that stands well away; else they may be a depth that broke
off its line, or the chart that the items below are for: `(803)`.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Container, Sequence
from itertools import pairwise

from noticeparse.layout.line.element_kinds import PLACES, ElementKind
from noticeparse.layout.line.elements import Line
from noticeparse.readers.editions import read_line_words

_LONE = re.compile(
    r"- ?(?P<dashed>[0-9]{1,4}) ?-|\[ ?(?P<square>[0-9]{1,4}) ?\]|\( ?(?P<round>[0-9]{1,4}) ?\)"
    r"|[Ss]heet (?P<sheet>[0-9]{1,4})|[0-9]{1,3}\.(?P<parted>[0-9]{1,3})|(?P<bare>[0-9]{1,4})"
)
_AWAITS = re.compile(
    r"(?:depths?|no\.?|numbers?|elevation|heights?|range|clearance|radius|every|named?|of|to|by)"
    r"[ ,:]*$",
    re.IGNORECASE,
)
_FORMS = {
    "dashed": "- page -", "square": "[page]", "round": "(page)", "parted": "part.page",
    "bare": "page", "sheet": "sheet page",
}  # fmt: skip
_OF_SHEETS = re.compile(r"^charts? [^\n]{1,60}[\]),] ?\(?sheet [0-9]{1,2}\b", re.I | re.M)
_PLAIN = (_FORMS["parted"], _FORMS["bare"])
"""Forms that depths have too."""
_TOLD = (_FORMS["dashed"], _FORMS["sheet"])
_INDENT = 10
"""Columns of a bare figure: nearer to the left edge it is no page number."""
_FAR = 6
_FAR_PLAIN = 20
"""Lines between two pages, at least; figures of rows stand nearer."""
_MOST_PAGES = 99
"""`- 4 -` and `Sheet 4` number a page up to here, wherever they stand."""
_ITEMS_AND_CHARTS: tuple[ElementKind, ...] = ("point", "half", "verb", "chart", "passive")
_FAR_RIGHT = 40
_WIDE_GAP = 2
_LONGEST = 20
_TALLEST = 8
"""Lines of a row whose cells are wrapped."""


class PageNumbers:
    """The lone figures of a text that number its pages."""

    def __init__(
        self, text: str, lines: Sequence[Line], heads: Container[int], known: frozenset[str]
    ) -> None:
        """`heads` are lines that may head pages, since they stand again elsewhere.

        Of a part that follows others, `known` holds the forms that numbered pages there.
        """
        self._text = text
        self._lines = lines
        self._heads = heads
        self._found = dict(_lone_figures(text, lines))
        self._has_sheets = _OF_SHEETS.search(text) is not None
        self._at: dict[tuple[str, int], list[int]] = {}
        for index, figure in self._found.items():
            self._at.setdefault(figure, []).append(index)
        counted = {self._found[index][0] for index in self._found if self._counts_on(index)}
        self.forms = counted | (known & set(_FORMS.values()))

    def holds(self, index: int) -> bool | None:
        """Whether a line numbers a page; None where it is no lone figure."""
        if index not in self._found:
            return None
        form, page = self._found[index]
        if form in _PLAIN and self._is_of_cell(index):
            return False
        if form == _FORMS["sheet"] and self._has_sheets:
            # Below `Chart 904 [588/26] sheet 2` another sheet heads what stands under it.
            return False
        if form not in _TOLD and form not in self.forms and self._is_awaited(index):
            return False
        is_told = form in _TOLD and page <= _MOST_PAGES
        return is_told or form in self.forms or self._stands_apart(index, form)

    def _is_of_cell(self, index: int) -> bool:
        """Whether a figure is more of the line above: `least depth`, `11`; `802, 803,`, `804`."""
        above = self._lines[index - 1] if index else self._lines[index]
        words = self._text[above.start : above.end].rstrip()
        return words.endswith((",", " and")) or goes_on_with_cell(self._lines, index)

    def _is_awaited(self, index: int) -> bool:
        """Whether the words above break off before a figure, over a blank line or not."""
        above = [line for line in self._lines[max(index - 2, 0) : index] if not line.is_blank]
        return bool(above) and awaits_figure(self._text, above[-1])

    def _stands_apart(self, index: int, form: str) -> bool:
        """Whether no line stands right above, or for a figure with marks right below.

        The head of a page may.  A figure as long as a chart's number stands apart on both sides.
        """
        if index - 1 in self._heads or index + 1 in self._heads:
            return True
        above = index == 0 or self._parts(index - 1)
        below = index + 1 == len(self._lines) or self._parts(index + 1)
        if self._found[index][1] > _MOST_PAGES:
            return above and below
        return above or (below and form not in _PLAIN)

    def _parts(self, index: int) -> bool:
        return self._lines[index].is_blank or self._lines[index].has_only("rule", "bar")

    def _counts_on(self, index: int) -> bool:
        """Whether the page before stands well above; of plain figures, with one more above it."""
        form, page = self._found[index]
        above = self._at.get((form, page - 1), [])
        count = bisect_left(above, index - _FAR)
        if form not in _PLAIN or not count:
            return bool(count)
        first = self._at.get((form, page - 2), [])
        last = above[count - 1]
        return above[0] < index - _FAR_PLAIN or (bool(first) and first[0] < last - _FAR)


def awaits_figure(text: str, line: Line) -> bool:
    """Whether the words of a line, before its place or at its end, break off before a figure."""
    places = [one for one in line.elements if one.kind in PLACES]
    ends = [line.end, *(place.start for place in places[:1])]
    return any(_AWAITS.search(text[line.start : end].rstrip()) is not None for end in ends)


def goes_on_with_cell(lines: Sequence[Line], index: int) -> bool:
    """Whether a line stands in under a cell of the row with a place that it is right below."""
    indent = lines[index].elements[0].start - lines[index].start
    for above in reversed(lines[max(index - _TALLEST, 0) : index]):
        if not indent or above.is_blank:
            return False
        starts = {one.start - above.start for one in above.elements if one.gap}
        if indent not in starts:
            return False
        if above.has("point", "half"):
            return min(starts) < indent or len(starts) > 1
    return False


def _lone_figures(text: str, lines: Sequence[Line]) -> list[tuple[int, tuple[str, int]]]:
    found = []
    for index, line in enumerate(lines):
        if line.is_blank or line.elements[-1].end - line.elements[0].start > _LONGEST:
            continue
        match = _LONE.fullmatch(text[line.start : line.end].strip(" |"))
        if match is None or match.lastgroup is None:
            continue
        if match.lastgroup != "bare" or line.elements[0].start - line.start >= _INDENT:
            found.append((index, (_FORMS[match.lastgroup], int(match[match.lastgroup]))))
    return found


def is_number_with_page(text: str, line: Line) -> bool:
    """Whether a line is the number of the edition and, far from it, that of the page."""
    numbers = [one.kind for one in line.elements].count("number")
    if numbers != 1 or line.has(*_ITEMS_AND_CHARTS):
        return False
    words = read_line_words(text[line.start : line.end])
    if words.first("PAGE") is not None and words.plain_words == 0 and _is_spread(line):
        # `Page 2          LNM 34/26          25 AUG 2026`
        return True
    if len(line.elements) != 2 or line.elements[0].kind != "number":
        return False
    page = line.elements[1]
    if page.start - line.start <= _FAR_RIGHT:
        return False
    figure = text[page.start : page.end]
    is_figure = figure.isdigit() and len(figure) < 4
    return is_figure or read_line_words(figure).first("PAGE", "PAGE_FIGURE") is not None


def _is_spread(line: Line) -> bool:
    """Whether wide gaps part what a line says."""
    return any(two.start - one.end >= _WIDE_GAP for one, two in pairwise(line.elements))
