"""The number of a whole paper, where its notices have another word: `Circular No. 5 of 2026`.

    Circular No. 5 of 2026 on alterations to lights
    NOTICE 61/2026 - CORBEL HEAD - LIGHT
    …
                            Circular No. 5 of 2026, page 2

In come the lines of a text; out come the indexes of those that name the paper.  Such a line opens
no notice, and where a page ends the notice goes on behind it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening

_OF_PAPERS = re.compile(
    r"(?:[A-Za-z]{2,20} ){0,2}(?P<noun>circular|gazette|memorandum|order|advice|bulletin)"
    r"(?: to mariners)?(?: (?:nos?\.?|nr\.?|number))?",
    re.IGNORECASE,
)
_FIGURES = re.compile(r"[0-9]{1,5}")
_OF_ITEMS: tuple[ElementKind, ...] = ("chart", "verb", "point", "half", "label", "passive")
_MOST_LINES = 4
"""Lines between the number of the paper and its first notice."""
_MOST_WORDS = 12
"""Words behind the number on a line that names the paper."""
_MARK = "paper "
"""Opens what the next part of a text is told of the paper; shapes of lines have no figures."""


class PaperLines(NamedTuple):
    """The indexes of the lines that name the paper, and what the next part is told of it."""

    lines: set[int]
    told: frozenset[str]


class _Opening(NamedTuple):
    """A line that would open a notice, with the word for a paper before its number."""

    row: int
    noun: str | None
    figures: str
    is_bare: bool
    """Whether nothing of an item stands on it, and few words."""


def paper_numbers(text: str, lines: Sequence[Line], known: frozenset[str] | None) -> PaperLines:
    """The lines that name the paper; of a part that follows others it is `known`, or has none."""
    if known is not None:
        told = frozenset(one for one in known if one.startswith(_MARK))
        found = {one.row for one in _openings(text, lines) if _mark(one) in told} if told else ()
        return PaperLines(set(found), told)
    openings = _openings(text, lines)
    first = next(openings, None)
    if first is None or first.noun is None or not first.is_bare:
        return PaperLines(set(), frozenset())
    later = list(openings)
    alike = [one for one in later if one.noun == first.noun]
    others = [one for one in later if one.noun != first.noun]
    is_paper = (
        bool(others)
        and later[0] is others[0]
        and all(one.figures == first.figures and one.is_bare for one in alike)
        and all(one.figures != first.figures for one in others)
        and _says_nothing(text, lines[first.row + 1 : others[0].row])
    )
    if not is_paper:
        return PaperLines(set(), frozenset())
    return PaperLines({first.row, *(one.row for one in alike)}, frozenset({_mark(first)}))


def _mark(opening: _Opening) -> str:
    return f"{_MARK}{opening.noun} {opening.figures}" if opening.noun and opening.is_bare else ""


def _openings(text: str, lines: Sequence[Line]) -> Iterator[_Opening]:
    for index, line in enumerate(lines):
        opening = notice_opening(text, line) if line.has("number") else None
        if opening is None:
            continue
        number = opening.number
        # On a line of its own the number has the word for it too.
        words, _, _ = _FIGURES.sub("\n", text[line.start : number.end]).strip().partition("\n")
        named = _OF_PAPERS.fullmatch(" ".join(words.split()))
        figures = "/".join(_FIGURES.findall(text, number.start, number.end))
        is_bare = not line.has(*_OF_ITEMS)
        is_bare = is_bare and len(text[number.end : line.end].split()) <= _MOST_WORDS
        yield _Opening(index, named["noun"].lower() if named else None, figures, is_bare)


def _says_nothing(text: str, between: Sequence[Line]) -> bool:
    """Whether nothing but a title and a date stands between: no sentence, and no command."""
    told = [line for line in between if not line.is_blank]
    return len(told) <= _MOST_LINES and not any(
        line.has(*_OF_ITEMS) or text[line.start : line.end].rstrip().endswith(".") for line in told
    )
