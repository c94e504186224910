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
_COUNT = r"\(?(?P<number>[0-9]{1,2})[).]$"
_COUNTED = re.compile(rf"^[,;]?[ ]?(?:(?:and|to|thence)[ ])?{_COUNT}")
_COUNTED_END = re.compile(rf"(?:^|(?<=[ ])){_COUNT}")
_FIRST = re.compile(r"(?<=[ \n])\(?1[).][ ]")
_ALL = r"[0-9]{1,2}(?:(?:, and |, ?| and |,? & | to | ?- ?)[0-9]{1,2}(?![0-9])){0,24}"
_NUMBERS = re.compile(
    rf"[ \t]{{0,40}}(?P<link>(?:,? ?(?:and|to)|,|&|-) )?(?P<all>{_ALL})"
    r"(?=[.;,)]?[ \t]{0,80}(?:\n|(?![\s\S]))|[.;,)] (?![0-9])"
    r"|,? (?:and|to|or|in|on|with|above)\b)",
    re.IGNORECASE,
)
_GOES_ON = frozenset({",", "and", ", and", "&", "to", "-"})
_OF_POSITIONS = (
    " position", " positions", " pos.", " posn", " posns", " posn.", " psn", " psns",
)  # fmt: skip


def with_numbers_of_places(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; numbers are labels before their places, and references where they are told of."""
    numbered = _with_numbers_within(text, lines) if _FIRST.search(text) else lines
    return _with_numbers_below(text, _with_labels(text, numbered))


def _with_numbers_within(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; numbers that count the places of a sentence are their labels.

    `a pipeline, joining (1) P; (2) Q;` and below it `(3) R`: the first is 1.
    """
    found = list(lines)
    chain: list[tuple[int, int]] = []
    """Rows, and elements in them, of the places that are counted so far."""
    awaits_half = False
    for row, line in enumerate(lines):
        for at, element in enumerate(line.elements):
            if element.kind not in ("point", "half"):
                continue
            number = _number_before(text, line, at, is_first=not chain)
            is_partner = element.kind == "half" and awaits_half and number is None
            awaits_half = element.kind == "half" and not is_partner
            if is_partner:
                continue
            if number is None or (number == 1 and chain):
                _label(text, found, chain)
                chain = []
            if number == 1 or (number is not None and chain):
                # One out of order is told where the letters are counted.
                chain.append((row, at))
        if line.is_blank:
            _label(text, found, chain)
            chain = []
    _label(text, found, chain)
    return found


def _number_before(text: str, line: Line, at: int, *, is_first: bool) -> int | None:
    """The number close before a place; before all but the first nothing else stands there."""
    before = line.elements[at - 1] if at else None
    if before is None or before.kind not in ("label", "words"):
        return None
    words = text[before.start : before.end]
    told = (_COUNTED_END if is_first else _COUNTED).search(words)
    return int(told["number"]) if told is not None else None


def _label(text: str, found: list[Line], chain: Sequence[tuple[int, int]]) -> None:
    """Make labels of the numbers before these places, where they are two or more."""
    if len(chain) < _FEWEST:
        return
    # From the last: a number that becomes an element of its own moves those behind it.
    for row, at in reversed(chain):
        line = found[row]
        before = line.elements[at - 1]
        told = _COUNTED_END.search(text[before.start : before.end])
        if before.kind == "label" or told is None:
            continue
        start = before.start + told.start()
        label = Element("label", start, before.end, True, told["number"])
        words = text[before.start : start].rstrip()
        kept = (before._replace(end=before.start + len(words)),) if words else ()
        elements = (*line.elements[: at - 1], *kept, label, *line.elements[at:])
        found[row] = line._replace(elements=elements)


def _with_numbers_below(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; numbers that go on with those of the line above are references like them."""
    found: list[Line] = []
    for line in lines:
        above = found[-1] if found else None
        end = None
        if above is not None and not (line.is_blank or above.is_blank):
            end = _end_of(text, above)
        told = _NUMBERS.match(text, line.start, line.end + 1) if end is not None else None
        if told is None or (end == "whole" and told["link"] is None):
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
    is_word = last.kind == "words" and f" {words}".endswith(_OF_POSITIONS)
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
        if len(rows) >= _FEWEST and not _are_codes(text, rows[0][1], rows[-1][1].end):
            for row, labelled in rows:
                found[row] = labelled
    return found


_CODE = re.compile(r"(?<!\w)P[0-9]{1,2}(?!\w)(?! {1,12}[0-9NSns])")
_FAR = 1500


def _are_codes(text: str, first: Line, end: int) -> bool:
    """Whether numbers are part of codes that items name: `P1  P`, and below `wreck at P1`."""
    number = first.elements[-2]
    written = text[number.start : number.end]
    return written.strip(" (")[:1] == "P" and _CODE.search(text, end, end + _FAR) is not None


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
