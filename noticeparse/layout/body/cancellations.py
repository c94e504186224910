"""Sentences among commands that say nothing but that other notices are cancelled.

`… delete pile P. Notice 570(T)/26 is cancelled.` runs on behind the last place of an item, on its
line or over a line end, or opens a line below a place without a stop.  It is no item, and no words
of the item before it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.element_kinds import PLACES, ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.heads import head_kinds, opening_kind
from noticeparse.readers.taken_back import tells_end

_OF_SENTENCE = frozenset[ElementKind]({"words", "number", "passive"})
_LONGEST = 240
_MOST = 12
"""Elements of such a sentence."""
_STOPS = frozenset({"STOP", "COMMA"})
_NOUN = re.compile(r"[A-Z][a-z]{2,15} (?=(?:[Nn]os?\.? ?)?[0-9]{1,5} ?(?:\([TP]\) ?)?/)")
"""What an office may call its notices: `Leaf 61(P)/26 is cancelled.`"""


def without_cancellations(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Piece]]:
    """The lines of a body of commands without such sentences, and where these stand."""
    if not any(line.has("number") for line in lines) or not any(
        line.has("verb") for line in lines
    ):
        return list(lines), []
    told = [(row, at) for row, line in enumerate(lines) for at in range(len(line.elements))]
    found: list[Piece] = []
    for first, last in _runs(text, lines, told):
        elements = [lines[row].elements[at] for row, at in told[first:last]]
        piece = elements[0].start, elements[-1].end
        if piece[1] - piece[0] <= _LONGEST and _cancels(text[slice(*piece)]):
            found.append(piece)
    if not found:
        return list(lines), []
    return [_without(line, found) for line in lines], found


def _runs(
    text: str, lines: Sequence[Line], told: Sequence[tuple[int, int]]
) -> Iterator[tuple[int, int]]:
    """Stretches of words and numbers behind a place that ends its sentence, up to its end."""
    first = None
    before: Element | None = None
    for index, (row, at) in enumerate(told):
        element = lines[row].elements[at]
        if element.kind not in _OF_SENTENCE or _is_apart(lines, told, index):
            if first is not None:
                yield first, index
            first = None
        opens = at == 0 and before is not None and before.kind in PLACES
        if element.kind in _OF_SENTENCE and first is None and (opens or _ends(text, before)):
            first = index
        if first is not None and index - first >= _MOST:
            first = None
        if first is not None and element is lines[row].elements[-1] and _stops(text, element):
            yield first, index + 1
            first, before = None, None
            continue
        before = element
    if first is not None:
        yield first, len(told)


def _stops(text: str, element: Element) -> bool:
    """Whether words end with the full stop of their sentence."""
    return text[element.start : element.end].rstrip().endswith(".")


def _is_apart(lines: Sequence[Line], told: Sequence[tuple[int, int]], index: int) -> bool:
    """Whether a blank line stands between an element and the one before it."""
    rows = told[index - 1][0] if index else told[0][0], told[index][0]
    return any(line.is_blank for line in lines[rows[0] : rows[1]])


def _ends(text: str, element: Element | None) -> bool:
    """Whether a sentence ends with an element: the last place of an item, or a semicolon.

    The first one of a body has nothing before it.
    """
    if element is None:
        return True
    is_end = element.kind in PLACES and text[element.end - 1] == "."
    return is_end or element.kind == "semicolon"


_LIFTED = re.compile(
    r"(?<=[a-z])[,;.]? (?:and |so |please )?(?:take|strike|cross|rub|erase|wipe|clear|remove)"
    r" (?:it|them|this|these) (?:off|out|away|from)\b(?: [a-z]{1,12}){0,5}\.?$",
    re.IGNORECASE,
)
"""`…, take it off the board`: what is done with the sheet of a notice that has ended."""


def _cancels(words: str) -> bool:
    """Whether words name cancelled notices, and nothing else; a word may name their kind."""
    words = _LIFTED.sub("", words)
    named = _NOUN.match(words)
    words = words[named.end() :] if named is not None else words
    if not tells_end(words) or opening_kind(words) not in _STOPS | {"CANCELS"}:
        return False
    return head_kinds(words) - _STOPS == {"CANCELS"}


def _without(line: Line, found: Sequence[Piece]) -> Line:
    kept = tuple(
        e for e in line.elements if not any(a <= e.start and e.end <= b for a, b in found)
    )
    return line if len(kept) == len(line.elements) else line._replace(elements=kept)
