"""Where a text that is too long to be held as a whole may be cut, and what goes over the cut.

A cut falls before a line that opens something of its own: the head of a notice, in a list by chart
that of a chart, or a row that names notice, chart and verb.  What was told above and still holds
there, such as the titles of columns, is handed on to the layout of the next part.
"""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.layout.column.titles import Table
from noticeparse.layout.line.elements import Line
from noticeparse.readers.positions import Point


class RowClass(NamedTuple):
    """What a heading says of the rows below it, besides its verb."""

    heading: tuple[int, int] | None = None
    """None where it stands in the part of the text before this one."""
    things: tuple[int, int] | None = None
    """None where it names a thing, but no class that can be told."""

    def without_words(self) -> RowClass:
        """The same for the next part of a text, in which its offsets mean nothing."""
        return RowClass()


class HandedOn(NamedTuple):
    """What the layout of a part hands on to that of the next; offsets in it mean nothing there."""

    furniture: frozenset[str] = frozenset()
    """The shapes of lines that are page furniture when they come again."""
    table: Table | None = None
    table_holds_for_all: bool = False
    dropped: frozenset[str] | None = None
    names_notices: bool = False
    """Whether rows of the open table have named their notices."""
    row_count: int = 0
    """The last number of a row that counts the rows."""
    point_above: Point | None = None
    """The position whose degrees rows of minutes alone go on with."""
    codes: dict[str, str] = {}
    at_margin: frozenset[str] = frozenset()
    has_numbers: bool = False
    is_by_chart: bool = False
    row_verb: str | None = None
    """The verb of the last row, which holds for rows without one under the next chart."""
    row_class: RowClass | None = None
    """What a heading says of such rows, without its words, which are those of the part before."""
    is_behind_blank: bool = True
    leaves_out: bool = False
    """Whether the last line tells what a text in the canonical layout leaves out."""
    margin_number: int | None = None
    """The last of the numbers that open the notices in the margin, without a year."""
    is_torn: bool = False
    """Whether the text is cut within something, of which the next part holds the rest."""

    def behind_a_tear(self) -> HandedOn:
        """The same where the text is cut within something: head and verb above are lost."""
        has_numbers = self.has_numbers and not self.is_by_chart
        return self._replace(
            is_torn=True, is_by_chart=False, has_numbers=has_numbers, row_verb=None
        )


class Cut:
    """The line before which the layout ends, of those that were met."""

    def __init__(self, text: str) -> None:
        self._text = text
        self.least: int | None = None
        """The layout ends before the first such line from this offset on; None: it goes on."""
        self.end: int | None = None

    def falls_before(self, line: Line) -> bool:
        """To be asked before anything of such a line is taken: whether the layout ends here."""
        if line.start and self._text[line.start - 1] != "\n":
            # Part of a line, cut at a notice that opens within it.
            return False
        if self.least is None or line.start < self.least:
            return False
        self.end = line.start
        return True
