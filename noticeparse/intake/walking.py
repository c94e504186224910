"""What HTML and .docx have in common: runs of words with a level, and what is struck or hidden.

In come runs in reading order; out comes text.  A figure whose level is in doubt, or from which
something is left out, is parted by U+FFFD, so that nobody reads another figure in it.
"""

from __future__ import annotations

import re

from noticeparse.intake.composing import Composed, Composer
from noticeparse.intake.rows import add_row
from noticeparse.intake.small_figures import DOUBT, Level, Mark, follows_figure, written

_LONGEST = 200
_MOST = 8_000_000
_SMALL = 0.93
_UNDERLINED = re.compile(r"[(]?[0-9]{1,3}(?:[.,][0-9]{1,2}|[₀-₉]{1,2}|[¼½¾])?m?[.,;)]?")
_OF_FIGURES = ".,·'′’°\"″"


class Walker:
    """Puts runs together; the word under way is held until a blank ends it."""

    def __init__(self) -> None:
        self.composer = Composer()
        self.is_inserted = False
        """Whether what comes now was put in later and is not accepted yet."""
        self.is_underlined = False
        self.size = 1.0
        """The size of what comes now, in any unit."""
        self._last_size = 1.0
        self._has_underlined = False
        self._word: list[Mark] = []
        self._has_inserted = False
        self._left_out: list[tuple[str, int, str]] = []
        """Of the word under way: the code, where in the word, and the words left out."""
        self._is_torn = False
        """Whether figures were left out right before the next character."""
        self._between = ""
        self._inserted: list[tuple[int, int]] = []
        self._has_counted = False
        self._cells: list[bool] = []
        """The cells that are open, and whether each keeps the lines in it."""
        self._rows: list[list[Composed]] = []
        """The rows that are open, and their cells so far."""
        self._outer: list[tuple[Composer, list[tuple[int, int]]]] = []
        """What the cells that are open stand in."""

    def words(self, text: str, level: Level = "plain", *, keeps_lines: bool = False) -> None:
        """Put words in; line ends within them are blanks, or line ends where they are kept."""
        for char in text:
            if char == "\xa0":
                self._put(Mark(" ", level))
            elif not char.isspace():
                self._put(Mark(char, level))
            elif char == "\n" and keeps_lines:
                self.end_line()
            elif char == "\t" and keeps_lines:
                self.tab()
            elif keeps_lines:
                self._end_word()
                self._between += " "
            else:
                self._end_word()
                self._between = self._between or " "

    def tab(self) -> None:
        """Begin the next cell of a row."""
        self._end_word()
        self._between = (self._between if self._between.strip(" ") else "") + "\t"

    def begin_row(self) -> None:
        """Begin a row of cells."""
        self._end_word()
        self._rows.append([])

    def end_row(self) -> None:
        """End a row; it stands on a line, or on one for each line of all its cells."""
        self._add_cells()
        if self._rows:
            self._rows.pop()
        self.end_line()

    def begin_cell(self, *, has_lines: bool) -> None:
        """Begin a cell; a row stays one line, but for cells that keep the lines in them."""
        self._end_word()
        if not self._rows:
            self._rows.append([])
        self._cells.append(has_lines)
        if has_lines:
            self._add_cells()
            return
        self._between = ""
        self._outer.append((self.composer, self._inserted))
        self.composer, self._inserted = Composer(), []

    def end_cell(self) -> None:
        """End the cell."""
        if not self._cells:
            return
        has_lines = self._cells.pop()
        self.end_line()
        if has_lines:
            return
        cell = self._finished()
        self.composer, self._inserted = self._outer.pop()
        self._rows[-1].append(cell)

    def _add_cells(self) -> None:
        self._end_word()
        if self._rows and self._rows[-1]:
            add_row(self.composer, self._rows[-1])
            self._rows[-1] = []

    def end_line(self) -> None:
        """End the line; an empty one is left out."""
        self._end_word()
        self._between = ""
        self.composer.end_line()

    def end_paragraph(self) -> None:
        """End the line, and leave a blank one behind it."""
        self.end_line()
        if all(self._cells[-1:]):
            self.composer.end_paragraph()

    def leave_out(self, code: str, text: str) -> None:
        """Say that words are left out here."""
        said = " ".join(text.split())
        if not said:
            return
        if self._word and not text[0].isspace() and _is_of_figure(self._word[-1].char):
            self._word.append(Mark(DOUBT, "plain"))
        elif text[0].isspace():
            self._end_word()
            self._between = self._between or " "
        self._left_out.append((code, len(self._word), said[:_LONGEST]))
        if text[-1].isspace():
            self._end_word()
            self._between = self._between or " "
        else:
            self._is_torn = _is_of_figure(text[-1])

    def count_item(self) -> None:
        """Say, once, that the number of an item is not in the text."""
        if not self._has_counted:
            self._has_counted = True
            self._left_out.append(("list-number-left-out", 0, ""))

    def no_text(self, what: str) -> None:
        """Say that something that is no text stands here; it may be a figure of the word."""
        if self._word and _is_of_figure(self._word[-1].char):
            self._word.append(Mark(DOUBT, "plain"))
        self._is_torn = True
        self.remark("part-not-read", what)

    def remark(self, code: str, what: str) -> None:
        """Say something here."""
        self._left_out.append((code, len(self._word), " ".join(what.split())[:_LONGEST]))

    def made(self) -> Composed:
        """All of it."""
        while self._cells:
            self.end_cell()
        while self._rows:
            self.end_row()
        self.end_line()
        return self._finished()

    def _finished(self) -> Composed:
        """What the composer at work holds."""
        composer = self.composer
        for code, _, said in self._left_out:
            composer.doubt(code, composer.length, composer.length, written=said)
        self._left_out.clear()
        text = composer.made().text
        for start, end in self._inserted:
            said = " ".join(text[start:end].split())
            composer.doubt("text-inserted", start, end, written=said[:_LONGEST])
        return composer.made()

    def _put(self, mark: Mark) -> None:
        is_told = bool(self._word) and self._word[-1].char == DOUBT
        if (
            self._is_torn and not (self.is_inserted or is_told) and _is_of_figure(mark.char)
        ) or self._is_small(mark):
            self._word.append(Mark(DOUBT, "plain"))
        self._is_torn, self._last_size = False, self.size
        self._has_underlined = self._has_underlined or (
            self.is_underlined and mark.char.isdecimal()
        )
        self._has_inserted = self._has_inserted or self.is_inserted
        self._word.append(mark)
        if self.composer.length + len(self._word) > _MOST:
            raise MemoryError

    def _is_small(self, mark: Mark) -> bool:
        """Whether a figure is smaller than the one it touches, and not said to be low or high."""
        return (
            self.size < _SMALL * self._last_size
            and mark.char.isdecimal()
            and mark.level == "plain"
            and bool(self._word)
            and self._word[-1].level == "plain"
            and follows_figure(self._word[-1].char)
        )

    def _end_word(self) -> None:
        self._is_torn = False
        if not self._word:
            return
        composer = self.composer
        composer.add(self._between)
        start = composer.length
        text, is_doubtful = written(self._word)
        composer.add(text)
        end = composer.length
        if is_doubtful or (DOUBT in text and any(one.isdecimal() for one in text)):
            composer.doubt("figure-in-doubt", start, end, written=text)
        if self._has_underlined and _UNDERLINED.fullmatch(text):
            composer.doubt("figure-underlined", start, end, written=text)
        for code, at, said in self._left_out:
            composer.doubt(code, min(start + at, end), min(start + at, end), written=said)
        if self._has_inserted:
            goes_on = bool(self._inserted) and start - self._inserted[-1][1] <= 1
            begin = self._inserted.pop()[0] if goes_on else start
            self._inserted.append((begin, end))
        self._word.clear()
        self._left_out.clear()
        self._has_inserted = self._has_underlined = False
        self._between = ""


def _is_of_figure(char: str) -> bool:
    return char.isdecimal() or char in _OF_FIGURES
