"""Commands that are written once, with a row below for each chart that has its own place.

    1. Insert wreck
         chart 802    47 11.402 S  123 40.180 W
         chart 803    47 11.40 S   123 40.18 W

Each row is an item of its own, of the command above it and for its charts alone.  Where the
command has a place already, that place may be of any chart: it is held back.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.evidence import AXIS_WORDS, lead_index
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.places import only_relates
from noticeparse.readers.positions import quality_mark

_LONGEST = 12
"""Lines of a command."""
_MOST = 40
"""Elements of a command, and rows below it; no notice is for more charts."""
_LEADS = frozenset({"label", "bar"})


def with_charts_below(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, each such row with the words of its command."""
    if not any(line.has("charts_only") and line.has(*PLACES) for line in lines):
        return list(lines)
    command = _Command(text)
    for line in lines:
        command.take(line)
    return command.lines


class _Command:
    """The command under way, while the lines are gone through once."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.lines: list[Line] = []
        self._at: int | None = None
        """Where in the lines the command begins that is under way."""
        self._rows = 0
        """The rows below it so far."""
        self._told: tuple[Element, ...] = ()
        """The words of the command, where rows stand below it."""
        self._is_placed = False
        """Whether it has a place of its own."""
        self._behind_row = False

    def take(self, line: Line) -> None:
        """Take the next line of the body."""
        if line.is_blank:
            if not self._told and self._is_placed:
                self._at = None
            self.lines.append(line)
        elif line.has_only("bar", "rule"):
            self.lines.append(line)
        elif _is_row(self.text, line):
            self._row(line)
        elif self._behind_row and _links(self.text, line):
            self.lines.append(line)
        else:
            self._other(line)

    def _row(self, line: Line) -> None:
        at = self._at
        if at is not None and not self._told and not self._is_placed:
            self._told, self._rows = self._taken(at), 0
            self._at = at if self._told else None
        elif at is not None and self._is_placed:
            above = self.lines[at]
            doubt = next(e for e in line.elements if e.kind == "charts_only")
            doubt = doubt._replace(value="above")
            self.lines[at] = above._replace(elements=(doubt, *above.elements))
            self._at = None
        self._rows += 1
        told = self._told if self._rows <= _MOST else ()
        self.lines.append(_with_command(line, told))
        self._behind_row = True

    def _taken(self, at: int) -> tuple[Element, ...]:
        """The words of the command, taken out of the lines; a verb alone above them stays."""
        told = self.lines[at:]
        if told[0].has_only("verb", "bar") and any(not line.is_blank for line in told[1:]):
            at += 1
        taken = [e for line in self.lines[at:] for e in line.elements]
        if len(told) > _LONGEST or len(taken) > _MOST:
            return ()
        del self.lines[at:]
        return tuple(taken)

    def _other(self, line: Line) -> None:
        """A line that is no row: it opens another command, or goes on with the one above."""
        opens = line.elements[lead_index(line)].kind == "verb" or line.elements[0].kind == "label"
        is_new = (
            self._at is None
            or self._behind_row
            or (self._is_placed and not _links(self.text, line))
        )
        if opens or is_new:
            self._at, self._is_placed = len(self.lines), False
        self._told, self._behind_row = (), False
        self._is_placed = self._is_placed or line.has(*PLACES)
        self.lines.append(line)


def says_more(text: str, element: Element) -> bool:
    """Whether an element is more than a place, its letter or quality, or words that lead to it."""
    if element.kind in PLACES or element.kind in ("label", "bar", "semicolon"):
        return False
    words = text[element.start : element.end]
    is_axis = words.lower().strip(" .:") in AXIS_WORDS
    is_plain = is_axis or only_relates(words) or quality_mark(words) is not None
    return element.kind != "words" or not is_plain


def _is_row(text: str, line: Line) -> bool:
    """Whether a line has nothing but charts and a place on them."""
    at = lead_index(line)
    first = line.elements[at]
    if first.kind != "charts_only" or not line.has(*PLACES):
        return False
    if not any(map(str.isdigit, text[first.start : first.end])):
        return False
    # A row whose figure may be a depth has words that are left in it.
    return first.value == "above" or not any(says_more(text, e) for e in line.elements[at + 1 :])


def _links(text: str, line: Line) -> bool:
    """Whether a line holds further places of the row above it."""
    is_plain = not line.has("label") and line.has(*PLACES)
    return is_plain and not any(says_more(text, element) for element in line.elements)


def _with_command(line: Line, told: tuple[Element, ...]) -> Line:
    """A row with the words of its command; a letter of the row is that of its place."""
    at = next(i for i, e in enumerate(line.elements) if e.kind == "charts_only")
    place = next(i for i, e in enumerate(line.elements) if e.kind in PLACES)
    letter = [e for e in line.elements[:at] if e.kind == "label"]
    number = [e for e in told[:1] if e.kind in _LEADS]
    words = (*told[len(number) :], *line.elements[at + 1 : place])
    return line._replace(
        elements=(*number, line.elements[at], *words, *letter, *line.elements[place:])
    )
