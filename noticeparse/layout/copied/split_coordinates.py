"""Tables with degrees, minutes and hemisphere in columns of their own: `Lat deg | Lat min | N/S`.

Between the figures the signs are set that the titles stand for, and one title is left for each
coordinate, so that a row holds its position as it would be written.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from noticeparse.layout.drafts import Piece

_SEP = r"(?P<{0}>[ ]*[\t;|,][ ]*|[ ]{{2,}})"
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
    rf"(?P<lon>{_columns('o', 'long?', 'EW')})(?=[ ]*[\t;|,\n]|[ ]{{2,}}|\Z)",
    re.IGNORECASE,
)
_ANY_LETTER = re.compile(r"(?<![A-Za-z])[NSEW](?![A-Za-z/])")
_FIGURE = re.compile(r"[0-9]{1,3}(?:[.,][0-9]{1,4})?")
_SIGNS = "°'\""


class _Titles(NamedTuple):
    """Where such titles end, the sign that parts cells, and the cell in which they begin."""

    end: int
    mark: str
    first: int
    start: int
    """The column, in figures, at which they begin."""
    counts: tuple[int, int]
    """Cells of each coordinate that hold figures."""
    letters: tuple[bool, bool]
    """Whether a cell of its own holds the hemisphere of each."""


def with_whole_coordinates(text: str) -> tuple[str, list[Piece]]:
    """The text with the cells of each coordinate as one, and where it was changed."""
    found = _TITLES.search(text) if "deg" in text or "°" in text or " min" in text else None
    if found is None:
        return text, []
    told = list(text)
    marks: list[Piece] = []
    while found is not None:
        titles = _titles(text, found)
        for at, sign in _of_titles(found):
            told[at] = sign
        following = _TITLES.search(text, found.end())
        end = following.start() if following else len(text)
        for at, sign in _of_rows(text, titles, end):
            told[at] = sign
            marks.append((at, at + 1))
        found = following
    return "".join(told), marks


def _titles(text: str, found: re.Match[str]) -> _Titles:
    mark = found["between"].strip(" ") or " "
    line_start = text.rfind("\n", 0, found.start()) + 1
    before = text[line_start : found.start()]
    return _Titles(
        end=found.end(),
        mark=mark,
        first=before.count(mark) if mark != " " else 0,
        start=found.start() - line_start,
        counts=(2 + (found["a2"] is not None), 2 + (found["o2"] is not None)),
        letters=(found["a3"] is not None, found["o3"] is not None),
    )


def _of_titles(found: re.Match[str]) -> Iterator[tuple[int, str]]:
    """One title for each coordinate in the place of its several: `Lat S`, `Lon W`."""
    for name in ("lat", "lon"):
        start, end = found.span(name)
        letter = _ANY_LETTER.search(found[name])
        title = f"{name.capitalize()} {letter[0].upper()}" if letter else name.capitalize()
        yield from zip(range(start, end), title.ljust(end - start), strict=False)


def _of_rows(text: str, titles: _Titles, end: int) -> Iterator[tuple[int, str]]:
    """What changes in the rows below the titles."""
    at = text.find("\n", titles.end)
    while 0 <= at < end:
        line_end = text.find("\n", at + 1)
        line_end = len(text) if line_end < 0 else line_end
        yield from _of_row(text, at + 1, line_end, titles)
        at = line_end if line_end < len(text) else -1


def _of_row(text: str, start: int, end: int, titles: _Titles) -> Iterator[tuple[int, str]]:
    if titles.mark == " ":
        cells = [m.span() for m in re.finditer(r"\S+", text[start:end])]
        cells = [(start + a, start + b) for a, b in cells if a >= titles.start - 2]
    else:
        cells, at = [], start
        for part in text[start:end].split(titles.mark):
            cells.append((at, at + len(part)))
            at += len(part) + 1
        cells = cells[titles.first :]
    for count, has_letter in zip(titles.counts, titles.letters, strict=True):
        own, cells = cells[: count + has_letter], cells[count + has_letter :]
        figures = [text[a:b].strip() for a, b in own[:count]]
        if len(own) < count + has_letter or not all(map(_FIGURE.fullmatch, figures)):
            yield from _blanks(text, own, titles.mark)
            continue
        for sign, (_, stop) in zip(_SIGNS, own[: count - 1], strict=False):
            yield stop, sign
        if has_letter and titles.mark != " ":
            yield own[count - 1][1], _SIGNS[count - 1]


def _blanks(text: str, cells: list[tuple[int, int]], mark: str) -> Iterator[tuple[int, str]]:
    """Blanks for the marks between cells of which some are empty, or hold no figures."""
    for _, stop in cells[:-1] if mark != " " else ():
        if text[stop : stop + 1] == mark:
            yield stop, " "
