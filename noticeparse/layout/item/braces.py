"""Places that a brace holds together: they are those of the one thing beside it.

    14'.10S  05'.30W  }
    14'.95S  06'.80W  }  submarine cable, joining these three positions
    16'.20S  07'.15W  }

The lines become one, with all places and the words; a brace with words on several of its lines, or
on none, may hold together anything and stays as it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from typing import Literal

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line

_Side = Literal["before", "behind"]
"""Where the words stand: before the brace `{` and the places, or behind these and `}`."""
_FEWEST = 2


def with_braces(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, those that a brace holds together as one."""
    if not any(char in text[line.start : line.end] for line in lines for char in "{}"):
        return list(lines)
    found: list[Line] = []
    for side, run in groupby(lines, key=lambda line: _side(text, line)):
        rows = list(run)
        found += rows if side is None else _joined(text, rows, side)
    return found


def _side(text: str, line: Line) -> _Side | None:
    """On which side of a brace the words of a line would stand, None for a line without one."""
    at = _brace(text, line)
    if at is None:
        return None
    before, behind = line.elements[:at], line.elements[at + 1 :]
    side: _Side = "behind" if text[line.elements[at].start] == "}" else "before"
    places, words = (before, behind) if side == "behind" else (behind, before)
    held = all(one.kind in (*PLACES, "label") for one in places) and len(words) < _FEWEST
    is_whole = held and any(one.kind in PLACES for one in places)
    return side if is_whole and all(one.kind == "words" for one in words) else None


def _brace(text: str, line: Line) -> int | None:
    """The index of the one brace of a line."""
    found = [
        index
        for index, one in enumerate(line.elements)
        if text[one.start : one.end].strip() in ("{", "}")
    ]
    return found[0] if len(found) == 1 else None


def _joined(text: str, rows: Sequence[Line], side: _Side) -> Sequence[Line]:
    """The rows of one brace as one line, where one of them alone has words."""
    elements = [one for row in rows for one in row.elements]
    words = [one for one in elements if one.kind == "words" and text[one.start] not in "{}"]
    if len(rows) < _FEWEST or len(words) != 1:
        return rows
    places = [one for one in elements if one.kind != "words"]
    marks = [one._replace(kind="bar") for one in elements if one.kind == "words"]
    marks.remove(words[0]._replace(kind="bar"))
    joined = (*places, *words) if side == "behind" else (*words, *places)
    return [rows[0]._replace(end=rows[-1].end, elements=(*joined, *marks))]
