"""Letters between the places of one line, that may be of the place before each or behind it.

In `joining P (a) Q (b) R` the first place has no letter in front, so that (a) may be that of P or
of Q.  The places are read as they stand and the letters as marks: what refers to one of them is
held back, since no place has it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.layout.line.elements import Element, Line

_LINKS = frozenset(("", "and", "to", "thence", "&"))
_FEWEST = 2


def with_letters_between(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, such letters as marks."""
    return [_settled(text, line) if line.has("label") else line for line in lines]


def _settled(text: str, line: Line) -> Line:
    unclear = {letter for run in _runs(text, line) for letter in _unclear(text, run)}
    if not unclear:
        return line
    return line._replace(
        elements=tuple(
            one._replace(kind="bar", value=None) if one in unclear else one
            for one in line.elements
        )
    )


def _runs(text: str, line: Line) -> Iterator[list[Element]]:
    """The places and letters of a line that stand beside each other, without links and commas."""
    run: list[Element] = []
    for element in line.elements:
        if element.kind in ("point", "label"):
            run.append(element)
        elif element.kind != "words" or _bare(text, element.start, element.end) not in _LINKS:
            # `joining P Q (b) rock R`: the letter is of the next item.
            yield run[:-1] if run and run[-1].kind == "label" else run
            run = []
    yield run


def _unclear(text: str, run: Sequence[Element]) -> list[Element]:
    """The letters of a run that opens with a place, each close behind one."""
    letters = [one for one in run if one.kind == "label"]
    placed = [one for one in run if one.kind == "point"]
    if len(placed) < _FEWEST or not letters or run[0].kind == "label":
        return []
    if run[-1].kind == "label" and len(letters) < len(placed):
        # `joining P Q (a)`: the last may be a place that was told above.
        return []
    behind = [
        second
        for first, second in pairwise(run)
        if first.kind == "point" and second.kind == "label" and _is_close(text, first, second)
    ]
    return letters if behind == letters else []


def _is_close(text: str, place: Element, letter: Element) -> bool:
    """Whether nothing parts a letter from the place before it: no comma, and no `and`."""
    return not text[place.end : letter.start].strip() and text[place.end - 1] not in ",;"


def _bare(text: str, start: int, end: int) -> str:
    return text[start:end].strip(" ,;").lower()
