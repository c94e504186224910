"""Records of aids by their numbers in a list: number and name, below them the place, the command.

`0413  Karra Bank, north side` / `P` / `Establish light-buoy, Q.`: the name says nothing that goes
on the chart, and ends the command of the record above it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line, words_of
from noticeparse.readers.features import has_kind

_NUMBER = re.compile(r"[0-9]{1,5}(?:\.[0-9]{1,3})?[A-Za-z]?")
_FEWEST = 2
"""A single such line may be anything."""


def without_listed_names(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Piece]]:
    """The lines without number and name of each record, and these."""
    written = [line for line in lines if not line.is_blank]
    places = {
        line.row
        for line, below in pairwise(written)
        if line.has_only(*PLACES) and _commands(below)
    }
    names = [
        line for line, below in pairwise(written) if below.row in places and _is_name(text, line)
    ]
    # The first name stands with the heading of the notice.
    is_headed = bool(written) and written[0].row in places
    if len(names) < _FEWEST or len(names) != len(places) - is_headed:
        return list(lines), []
    if any(line.has_only("verb") for line in written) or any(
        _names_kind(text, one) for one in names
    ):
        # A verb without its thing, or a thing without its verb.
        return list(lines), []
    rows = {line.row for line in names}
    kept = [line for line in lines if line.row not in rows]
    return kept, [(line.start, line.end) for line in names]


def _names_kind(text: str, line: Line) -> bool:
    """Whether words in small letters name a kind; `Inner Road` is the name of a place."""
    words = words_of(text, line.elements[1:]).split()
    return has_kind(" ".join(word for word in words if not word[0].isupper()))


def _commands(line: Line) -> bool:
    """Whether a line is a command with its thing; a verb alone heads the things below it."""
    return line.elements[0].kind == "verb" and len(line.elements) > 1


def _is_name(text: str, line: Line) -> bool:
    """Whether a number in a cell of its own stands before words, and nothing else does."""
    first, *rest = line.elements
    is_number = _NUMBER.fullmatch(text[first.start : first.end]) is not None
    return is_number and bool(rest) and rest[0].gap and all(e.kind == "words" for e in rest)
