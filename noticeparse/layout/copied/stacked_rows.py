"""Tables copied from a page of the web with each cell on a line of its own.

    Number            Number | Chart | Change | Object | Position
    Chart             118/26 | 3020  | Add    | Wreck  | P
    Change      as
    ...
    118/26
    3020
    Add

Line ends become bars, so that the rows are read as those of any other table.  The lines of a row
are told by what its first cells hold; a cell of positions, or of the object, may have several.  A
row that does not fit the titles stays as it is.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.column.columns import column_role
from noticeparse.layout.column.hemispheres import hemisphere_in
from noticeparse.layout.drafts import Piece
from noticeparse.readers.verbs import canonical_verb

_FEWEST_TITLES = 4
_MOST_TITLES = 14
_LONGEST_TITLE = 30
_NEARLY_ALL = 0.6
_LONGEST_TAIL = 3
_FEWEST_ROWS = 2
_OF_HEADS = frozenset({"notice", "chart"})
_HOLDS = {
    "notice": re.compile(
        r"(?:NM ?|No\.? ?)?[0-9]{1,5}(?: ?\([TP]\))?(?: ?[/-] ?[0-9]{2,4})?(?: ?\([TP]\))?"
    ),
    "previous": re.compile(r"[0-9]{1,5}(?: ?\([TP]\))?(?: ?[/-] ?[0-9]{2,4})?|-"),
    "chart": re.compile(
        r"(?:(?:chart|INT|[A-Z]{1,3}) ?)?[0-9]{1,6}[A-Z]?(?: ?\([^()\n]{1,30}\))?"
    ),
    "datum": re.compile(r"(?:WGS|NAD|ED|ETRS)[- ]?[0-9]{2,4}|unknown|local", re.IGNORECASE),
}
_LED = re.compile(r"(?:from|to|and|centred on|at|\(?[a-z0-9]{1,2}[).])[ :]{1,3}", re.IGNORECASE)
_PLACE = re.compile(r"[0-9NSEWOolIZ°'\"., +-]{6,60}")
_SIGNS = re.compile(r"[NSEW°']")


class _Line(NamedTuple):
    start: int
    words: str

    @property
    def end(self) -> int:
        return self.start + len(self.words)


class _Titles(NamedTuple):
    """The lines of titles, with the role of each."""

    lines: Sequence[_Line]
    roles: tuple[str | None, ...]

    @property
    def place(self) -> tuple[int, int]:
        """The first column of the position, and the one behind its last."""
        at = next(i for i, role in enumerate(self.roles) if role in ("position", "latitude"))
        return at, at + (2 if self.roles[at] == "latitude" else 1)


def with_stacked_rows(text: str) -> tuple[str, list[Piece]]:
    """The text with the cells of such rows beside each other, and where it was changed."""
    if text.count("\n") < _FEWEST_TITLES * (_FEWEST_ROWS + 1):
        return text, []
    lines = list(_lines(text))
    tables: list[tuple[int, _Titles]] = []
    at = 0
    while at < len(lines):
        titles = _titles(lines, at)
        at += len(titles.lines) if titles else 1
        if titles is not None:
            tables.append((at, titles))
    if not tables:
        return text, []
    told, changed = list(text), list[Piece]()
    ends = [at - len(titles.lines) for at, titles in tables[1:]]
    for (start, titles), end in zip(tables, [*ends, len(lines)], strict=True):
        for place, sign in _of_rows(text, titles, lines[start:end]):
            if told[place] not in (sign, "\n") and not told[place].isspace():
                changed.append((place, place + 1))
            told[place] = sign
    return "".join(told), changed


def _lines(text: str) -> Iterator[_Line]:
    """The lines on which anything stands."""
    start = 0
    for words in text.split("\n"):
        if words and not words.isspace():
            yield _Line(start, words)
        start += len(words) + 1


def _titles(lines: Sequence[_Line], at: int) -> _Titles | None:
    """The titles that begin at a line and end before the first row; None where none do."""
    first = _role(lines[at])
    if first not in _OF_HEADS:
        return None
    found = [lines[at]]
    roles: list[str | None] = [first]
    for line in lines[at + 1 : at + _MOST_TITLES]:
        if _holds(first, line):
            break
        role = _role(line)
        words = line.words.strip()
        if any(map(str.isdigit, words)) or len(words) > _LONGEST_TITLE or words[-1] in ".:;":
            return None
        found.append(line)
        roles.append(role)
    known = {role for role in roles if role}
    is_told = {"verb", "feature"} <= known and known & {"position", "latitude"}
    twice = any(roles.count(one) > 1 for one in known)
    if (
        len(found) < _FEWEST_TITLES
        or not is_told
        or twice
        or len(known) < _NEARLY_ALL * len(found)
    ):
        return None
    if "latitude" in known and not _is_pair(found, roles):
        return None
    return _Titles(found, tuple(roles))


def _is_pair(found: Sequence[_Line], roles: Sequence[str | None]) -> bool:
    """Whether latitude and longitude stand beside each other and state no hemispheres."""
    at = roles.index("latitude")
    plain = not any(hemisphere_in(one.words, roles[i]) for i, one in enumerate(found))
    return (
        plain and "position" not in roles and list(roles[at : at + 2]) == ["latitude", "longitude"]
    )


def _role(line: _Line) -> str | None:
    words = line.words.strip()
    return column_role(words) if len(words) <= _LONGEST_TITLE else None


def _holds(role: str | None, line: _Line) -> bool:
    """Whether a line is what a column of this role has in a cell."""
    words = line.words.strip()
    if role == "verb":
        return len(words) <= _LONGEST_TITLE and canonical_verb(words) is not None
    return role in _HOLDS and _HOLDS[role].fullmatch(words) is not None


def _is_place(line: _Line) -> bool:
    words = line.words.strip()
    if led := _LED.match(words):
        words = words[led.end() :]
    enough = sum(map(str.isdigit, words)) >= 4 and _SIGNS.search(words) is not None
    # `to P` behind a place, and two places on one line.
    return enough and _PLACE.fullmatch(words) is not None


def _opens_row(titles: _Titles, lines: Sequence[_Line]) -> bool:
    """Whether a row begins with these lines; one cell of those that are known may be damaged."""
    told = [
        _holds(role, line)
        for role, line in zip(titles.roles[: titles.place[0]], lines, strict=False)
        if role in (*_HOLDS, "verb")
    ]
    return len(told) > 1 and sum(told) >= len(told) - (len(told) > 2)


def _of_rows(text: str, titles: _Titles, lines: Sequence[_Line]) -> Iterator[tuple[int, str]]:
    """What changes in the titles and in the rows below them; nothing where these are no rows."""
    front = titles.place[0]
    starts = [i for i in range(len(lines)) if _opens_row(titles, lines[i : i + front])]
    starts = _apart(starts, len(titles.roles) - 2)
    if len(starts) < _FEWEST_ROWS or starts[0] != 0:
        return
    tail = _tail(titles, [lines[a:b] for a, b in pairwise(starts)])
    fitting = []
    for start, end in zip(starts, [*starts[1:], len(lines)], strict=True):
        cells = _cells(titles, lines[start:end], tail, is_last=end == len(lines))
        if cells is not None:
            fitting.append((cells, lines[start:end]))
    if len(fitting) < _FEWEST_ROWS:
        return
    yield from _of_titles(text, titles)
    for cells, own in fitting:
        yield from _joined(text, cells)
        behind = own[sum(map(len, cells)) :][: len(tail)]
        for line in behind:
            yield from ((at, " ") for at in range(line.start, line.end))


def _apart(starts: Sequence[int], least: int) -> list[int]:
    """The starts, without those that lie within the row above."""
    kept: list[int] = []
    for start in starts:
        if not kept or start - kept[-1] >= least:
            kept.append(start)
    return kept


def _tail(titles: _Titles, rows: Sequence[Sequence[_Line]]) -> tuple[str, ...]:
    """The words that stand behind nearly all rows and are no cell of them: `Details`."""
    for size in range(_LONGEST_TAIL, 0, -1):
        ends = Counter(
            tuple(line.words.strip() for line in row[-size:])
            for row in rows
            if len(row) > size and _split(titles, row[:-size]) is not None
        )
        words, count = ends.most_common(1)[0] if ends else ((), 0)
        if 2 * count > len(rows) and not any(map(str.isdigit, "".join(words))):
            return words
    return ()


def _cells(
    titles: _Titles, lines: Sequence[_Line], tail: tuple[str, ...], *, is_last: bool
) -> list[Sequence[_Line]] | None:
    """The lines of each cell of a row; None where they do not fit the titles."""
    if not is_last:
        behind = tuple(line.words.strip() for line in lines[len(lines) - len(tail) :])
        own = lines[: len(lines) - len(tail)] if tail and behind == tail else lines
        return _split(titles, own)
    # The last row ends where its cells do; below it stands the foot of the page.
    for size in range(len(titles.roles) - 1, min(len(lines), 60) + 1):
        behind = tuple(line.words.strip() for line in lines[size : size + len(tail)])
        goes_on = size < len(lines) and _is_place(lines[size])
        cells = None if goes_on or behind != tail else _split(titles, lines[:size])
        if cells is not None:
            return cells
    return None


def _split(titles: _Titles, lines: Sequence[_Line]) -> list[Sequence[_Line]] | None:
    first, behind = titles.place
    count = len(titles.roles) - (behind - first) + 1
    places = [i for i, line in enumerate(lines) if _is_place(line)]
    if not places:
        return [lines[i : i + 1] for i in range(count)] if len(lines) == count else None
    if places != list(range(places[0], places[-1] + 1)):
        return None
    front = _parted(titles.roles[:first], lines[: places[0]])
    rest = _parted(titles.roles[behind:], lines[places[-1] + 1 :])
    if front is None or rest is None:
        return None
    return [*front, lines[places[0] : places[-1] + 1], *rest]


def _parted(roles: Sequence[str | None], lines: Sequence[_Line]) -> list[Sequence[_Line]] | None:
    """The lines of cells, one for each but those of the feature, which may be several."""
    more = len(lines) - len(roles)
    if more < 0 or (more > 0 and "feature" not in roles):
        return None
    at, found = 0, list[Sequence[_Line]]()
    for role in roles:
        size = 1 + more if role == "feature" else 1
        found.append(lines[at : at + size])
        at += size
    known = [(role, cell[0]) for role, cell in zip(roles, found, strict=True) if role in _HOLDS]
    return found if all(_holds(role, line) for role, line in known) or more == 0 else None


def _of_titles(text: str, titles: _Titles) -> Iterator[tuple[int, str]]:
    """The titles beside each other, one for latitude and longitude where there are two."""
    first, behind = titles.place
    if behind - first > 1:
        start, end = titles.lines[first].start, titles.lines[behind - 1].end
        yield from zip(range(start, end), "Position".ljust(end - start), strict=True)
    columns = [[line] for line in titles.lines]
    columns[first:behind] = [list(titles.lines[first:behind])]
    yield from _joined(text, columns)


def _joined(text: str, cells: Sequence[Sequence[_Line]]) -> Iterator[tuple[int, str]]:
    """Bars between the cells, and blanks between the lines of a cell."""
    for index, cell in enumerate(cells):
        for at, line in enumerate(cell):
            is_last = at + 1 == len(cell)
            if is_last and index + 1 == len(cells):
                return
            end = (
                text.index("\n", line.end - 1)
                if text[line.end : line.end + 1] != "\n"
                else line.end
            )
            below = cells[index + 1][0].start if is_last else cell[at + 1].start
            signs = ("|" if is_last else " ").ljust(below - end)
            yield from zip(range(end, below), signs, strict=True)
