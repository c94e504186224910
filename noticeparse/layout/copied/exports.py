"""Rows of an export whose cells stand in quotes or between commas: they become cells between bars.

A row of column titles tells that such rows stand below it, as far as no line is blank.  A sign or
a quote mark within the quotes of a cell is the cell's own (RFC 4180).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.column.columns import column_role
from noticeparse.layout.copied.split_coordinates import with_whole_titles
from noticeparse.layout.drafts import Piece

_FEWEST = 4
"""Cells of a row."""
_TITLES = {
    sign: re.compile(rf"^[^{sign}\n]{{1,40}}(?:{sign}[^{sign}\n]{{0,40}}){{3,40}}$", re.MULTILINE)
    for sign in (",", ";", "\t")
}
"""Rows of titles by the sign that parts their cells."""
_QUOTED = re.compile(r'(?:^|[;\t])"[^\n]*"(?:$|[;\t])', re.MULTILINE)
_TALLEST = 60
"""Lines of a cell in quotes."""
_PLACED = frozenset({"position", "latitude"})


def with_bars(text: str) -> tuple[str, list[Piece]]:
    """The text with bars for the signs that part cells, and where these stood.

    Cells between semicolons or tabs are read as they are, unless some stand in quotes.
    """
    for sign, pattern in _TITLES.items():
        titles = next((one for one in pattern.finditer(text) if _are_titles(one[0], sign)), None)
        if titles is not None and (sign == "," or _QUOTED.search(text, titles.end())):
            return _with_bars_for(text, titles.start(), sign)
    return text, []


def _with_bars_for(text: str, start: int, sign: str) -> tuple[str, list[Piece]]:
    """The text with bars for a sign, from the row of titles on."""
    parts, marks, at = [text[:start]], [], start
    is_below = True
    for line in _records(text[start:].split("\n"), sign):
        is_below = is_below and bool(line.strip())
        signs = list(_signs(line, sign)) if is_below and not line.startswith("#") else []
        # A row of more cells than titles is told as such; one of fewer may leave out the last.
        if sum(line[one] == sign for one in signs) >= _FEWEST - 1:
            told = list(line)
            for one in signs:
                told[one] = "|" if line[one] == sign else " "
                if line[one] != "\n":
                    marks.append((at + one, at + one + 1))
            line = "".join(told)
        parts.append(line + "\n")
        at += len(line) + 1
    return "".join(parts)[:-1], marks


def _are_titles(line: str, sign: str) -> bool:
    cells = [cell.strip(' "') for cell in with_whole_titles(line).split(sign)]
    roles = [column_role(cell) for cell in cells]
    known = [role for role in roles if role]
    is_told = len(known) >= _FEWEST and len(known) * 5 >= len(roles) * 3
    return is_told and {"verb", "feature"} & set(known) != set() and not _PLACED.isdisjoint(known)


def _records(lines: Sequence[str], sign: str) -> Iterator[str]:
    """The lines, those that a cell in quotes holds together as one."""
    at = 0
    while at < len(lines):
        end = at + 1
        while lines[at].count(sign) and "\n".join(lines[at:end]).count('"') % 2:
            end += 1
            if end > min(len(lines), at + _TALLEST):
                # The quote is never closed: the line stands alone.
                end = at + 1
                break
        yield "\n".join(lines[at:end])
        at = end


def _signs(line: str, sign: str) -> Iterator[int]:
    """The signs that part cells, the line ends and quote marks that a cell only holds."""
    start = 0
    while start <= len(line):
        end = _end_of_cell(line, start, sign)
        cell = line[start:end]
        if _is_quoted(cell):
            yield start
            yield from (start + 1 + one.start() for one in re.finditer('""|\n', cell[1:-1]))
            yield end - 1
        if end < len(line):
            yield end
        start = end + 1


def _is_quoted(cell: str) -> bool:
    """Whether quote marks hold the whole cell, and are no part of what it says."""
    return len(cell) > 1 and cell[0] == '"' == cell[-1] and '"' not in cell[1:-1].replace('""', "")


def _end_of_cell(line: str, start: int, sign: str) -> int:
    """Where a cell ends: at the next sign, or at the one behind its closing quote."""
    at = start
    if line[start : start + 1] == '"':
        at = start + 1
        while (closing := line.find('"', at)) >= 0:
            at = closing + 1
            if line[at : at + 1] != '"':
                break
            at += 1
    end = line.find(sign, at)
    return len(line) if end < 0 else end
