"""Numbers of places: before them in a list with a title, and told of over the end of a line.

What stands before a coordinate could be part of it, so that a line alone does not tell; under the
title, `Positions: 1) P` and below it `2) Q`, each number one more than the one before, it is the
label of its place.  `bounded by pos. 1, 2` above `3 and 4.` tells of four.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.lines import elements_between

_TITLE = re.compile(
    r"(?:the )?(?:following )?(?:positions?|po?sns?\.?|pos\.|points|co-?ordinates)"
    r"(?: are)?[ \t]*[:.]?",
    re.IGNORECASE,
)
_NUMBER = re.compile(
    r"(?:(?:positions?|po?sn\.?|pos\.?|points?|pt\.?|no\.?|nr\.?|p) ?)?\(?([0-9]{1,2})[).:]?",
    re.IGNORECASE,
)
_FEWEST = 2
_ALL = r"[0-9]{1,2}(?:(?:, and |, ?| and |,? & | to | ?- ?)[0-9]{1,2}(?![0-9])){0,24}"
_NUMBERS = re.compile(
    rf"[ \t]{{0,40}}(?P<link>(?:,? ?(?:and|to)|,|&|-) )?(?P<all>{_ALL})"
    r"(?=[.;,)]?[ \t]{0,80}(?:\n|(?![\s\S]))|[.;,)] (?![0-9])"
    r"|,? (?:and|to|or|in|on|with|above)\b)",
    re.IGNORECASE,
)
_GOES_ON = frozenset({",", "and", ", and", "&", "to", "-"})
_OF_POSITIONS = ("position", "positions", "pos.", "posn", "posns", "posn.", "psn", "psns")


def with_numbers_of_places(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; numbers are labels before their places, and references where they are told of."""
    return _with_numbers_below(text, _with_labels(text, lines))


def _with_numbers_below(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; numbers that go on with those of the line above are references like them."""
    found: list[Line] = []
    for line in lines:
        above = found[-1] if found else None
        end = _end_of(text, above) if above is not None and not above.is_blank else None
        told = _NUMBERS.match(text, line.start, line.end + 1) if end is not None else None
        if line.is_blank or told is None or (end == "whole" and told["link"] is None):
            found.append(line)
            continue
        start, stop = told.span("all")
        rest = tuple(e for e in elements_between(text, stop, line.end) if e.start < line.end)
        link = told.span("link") if told["link"] else None
        lead = () if link is None else (Element("words", link[0], link[1] - 1, True),)
        numbers = Element("reference", start, stop, link is None)
        found.append(line._replace(elements=(*lead, numbers, *rest)))
    return found


def _end_of(text: str, line: Line) -> str | None:
    """How a line ends that tells of numbers of positions: `open`, `whole`; None for others.

    It is open behind a comma, or behind the word for positions, so that numbers must follow.
    """
    last = line.elements[-1]
    words = text[last.start : last.end].strip().lower()
    if _counts(text, last):
        return "open" if text[last.end : line.end].strip() == "," else "whole"
    if words in _GOES_ON and len(line.elements) > 1 and _counts(text, line.elements[-2]):
        return "open"
    is_word = last.kind == "words" and f" {words}".endswith(
        tuple(f" {one}" for one in _OF_POSITIONS)
    )
    return "open" if is_word else None


def _counts(text: str, element: Element) -> bool:
    return element.kind == "reference" and text[element.start].lower() in "p0123456789"


def _with_labels(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; the numbers of such lists are labels of their places."""
    found = list(lines)
    for at, line in enumerate(lines):
        opening = _opening(text, line)
        if opening is None:
            continue
        first = at if len(line.elements) > opening else at + 1
        rows: list[tuple[int, Line]] = []
        for row in range(first, len(lines)):
            labelled = _labelled(text, lines[row], opening if row == at else 0, len(rows) + 1)
            if labelled is None:
                break
            rows.append((row, labelled))
        if len(rows) >= _FEWEST:
            for row, labelled in rows:
                found[row] = labelled
    return found


def _opening(text: str, line: Line) -> int | None:
    """How many elements are the title of a list, 1, on the line that it opens or stands on."""
    first = line.elements[0] if line.elements else None
    if first is None or first.kind not in ("key", "words"):
        return None
    return 1 if _TITLE.fullmatch(text[first.start : first.end].strip()) else None


def _labelled(text: str, line: Line, at: int, count: int) -> Line | None:
    """The line, the number before its place a label, where it is the one that is awaited."""
    behind = line.elements[at : at + 2]
    if len(behind) < 2 or behind[1].kind not in ("point", "half"):
        return None
    number, _ = behind
    told = _NUMBER.fullmatch(text[number.start : number.end].strip())
    if number.kind not in ("words", "label") or told is None or int(told[1]) != count:
        return None
    label = Element("label", number.start, number.end, True, told[1])
    return line._replace(elements=(*line.elements[:at], label, *line.elements[at + 1 :]))
