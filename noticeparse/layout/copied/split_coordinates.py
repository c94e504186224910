"""Tables with degrees, minutes and hemisphere in columns of their own: `Lat deg | Lat min | N/S`.

Between the figures the signs are set that the titles stand for, and one title is left for each
coordinate, so that a row holds its position as it would be written.  Signs part the cells of such
tables; where only blanks do, the figures stay as they are and give no position.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import zip_longest
from typing import NamedTuple

from noticeparse.layout.drafts import Piece

_SEP = r"(?P<{0}>[ ]*[\t;|,][ ]*)"
_AXIS = r"(?:{0}(?:itude)?\.?)"
_LETTER = r"(?:[ ]?\(?[{0}]\)?)"
_DEG = r"[ ]?\(?(?:°|deg(?:rees)?\.?|d)\)?"
_MIN = r"[ ]?\(?(?:'|min(?:utes|s)?\.?|m)\)?"
_SEC = r"[ ]?\(?(?:\"|sec(?:onds|s)?\.?|s)\)?"


def _columns(name: str, axis: str, letters: str) -> str:
    """The pattern of the titles of one coordinate."""
    word, letter = _AXIS.format(axis), _LETTER.format(letters)
    return (
        rf"{word}{letter}?{_DEG}{letter}?" + _SEP.format(f"{name}1")
        + rf"{word}?{letter}?{_MIN}{letter}?"
        + rf"(?:{_SEP.format(name + '2')}{word}?{letter}?{_SEC}{letter}?)?"
        + rf"(?:{_SEP.format(name + '3')}(?:{letters[0]} ?/ ?{letters[1]}|hem(?:isphere)?\.?))?"
    )  # fmt: skip


_TITLES = re.compile(
    rf"(?P<lat>{_columns('a', 'lat', 'NS')}){_SEP.format('between')}"
    rf"(?P<lon>{_columns('o', 'long?', 'EW')})(?=[ ]*[\t;|,\n]|\Z)",
    re.IGNORECASE,
)
_ANY_LETTER = re.compile(r"(?<![A-Za-z])[NSEW](?![A-Za-z/])")
_DEGREES = re.compile(r"[0-9]{1,3}")
_FIGURE = re.compile(r"[0-9]{1,3}(?:[.,][0-9]{1,4})?")
_SIGNS = "°'\""


class _Titles(NamedTuple):
    """Where such titles end, the sign that parts cells, and the cell in which they begin."""

    end: int
    mark: str
    first: int
    counts: tuple[int, int]
    """Cells of each coordinate that hold figures."""
    letters: tuple[str, str]
    """The letters of which a cell of its own holds one, for each; empty where none does."""


def with_whole_titles(line: str) -> str:
    """A line of titles with one for each coordinate, whatever sign parts its cells."""
    told = list(line)
    for found in _TITLES.finditer(line):
        for at, sign in _of_titles(found):
            told[at] = sign
    return "".join(told)


def with_whole_coordinates(text: str) -> tuple[str, list[Piece]]:
    """The text with the cells of each coordinate as one, and where it was changed.

    Cells between commas are parted by bars before.
    """
    told = list(text)
    marks: list[Piece] = []
    tables = [one for one in _TITLES.finditer(text) if one["between"].strip(" ") != ","]
    for found, following in zip_longest(tables, tables[1:]):
        for at, sign in _of_titles(found):
            told[at] = sign
        end = following.start() if following else len(text)
        for at, sign in _of_rows(text, _titles(text, found), end):
            told[at] = sign
            marks.append((at, at + 1))
    return "".join(told) if tables else text, marks


def _titles(text: str, found: re.Match[str]) -> _Titles:
    mark = found["between"].strip(" ")
    line_start = text.rfind("\n", 0, found.start()) + 1
    return _Titles(
        end=found.end(),
        mark=mark,
        first=text.count(mark, line_start, found.start()),
        counts=(2 + (found["a2"] is not None), 2 + (found["o2"] is not None)),
        letters=("NS" if found["a3"] else "", "EW" if found["o3"] else ""),
    )


def _of_titles(found: re.Match[str]) -> Iterator[tuple[int, str]]:
    """One title for each coordinate in the place of its several: `Lat S`, `Lon W`."""
    for name in ("lat", "lon"):
        start, end = found.span(name)
        letter = _ANY_LETTER.search(found[name])
        title = f"{name.capitalize()} {letter[0].upper()}" if letter else name.capitalize()
        yield from zip(range(start, end), title.ljust(end - start), strict=False)


def _of_rows(text: str, titles: _Titles, end: int) -> Iterator[tuple[int, str]]:
    """What changes in the rows below the titles.

    Behind a blank line, rows may go on, but other lines may stand there that hold such marks.
    """
    is_right_below = True
    at = text.find("\n", titles.end) + 1
    while 0 < at < end:
        line_end = text.find("\n", at)
        line_end = len(text) if line_end < 0 else line_end
        is_right_below = is_right_below and bool(text[at:line_end].strip())
        for cells in _coordinates(text, at, line_end, titles):
            if cells.is_whole:
                yield from cells.signs
            elif is_right_below:
                yield from _blanks(text, cells.cells, titles.mark)
        at = line_end + 1


class _Coordinate(NamedTuple):
    """The cells of one coordinate in a row, and the signs that join them where all are told."""

    cells: list[Piece]
    signs: list[tuple[int, str]]
    is_whole: bool


def _coordinates(text: str, start: int, end: int, titles: _Titles) -> Iterator[_Coordinate]:
    cells: list[Piece] = []
    for part in text[start:end].split(titles.mark):
        cells.append((start, start + len(part)))
        start += len(part) + 1
    cells = cells[titles.first :]
    for count, letters in zip(titles.counts, titles.letters, strict=True):
        size = count + bool(letters)
        own, cells = cells[:size], cells[size:]
        told = [text[a:b].strip() for a, b in own]
        is_whole = (
            len(own) == size
            and _DEGREES.fullmatch(told[0]) is not None
            and all(map(_FIGURE.fullmatch, told[1:count]))
            and (not letters or told[-1].upper() in tuple(letters))
        )
        signs = [(stop, sign) for (_, stop), sign in zip(own[: size - 1], _SIGNS, strict=False)]
        yield _Coordinate(own, signs, is_whole)


def _blanks(text: str, cells: list[Piece], mark: str) -> Iterator[tuple[int, str]]:
    """Blanks for the marks between cells of which some are empty, or hold no figures."""
    for _, stop in cells[:-1]:
        if text[stop : stop + 1] == mark:
            yield stop, " "
