"""Descriptions that run on left of a column of places: words first, then the places beside them.

    1. Insert submarine cable between the landing    47°13.40'S 123°43.96'W
       and the islet, joining                        47°13.77'S 123°43.20'W

Words are more of the description above where that breaks off, or where they name no feature of
their own; they must stand in from where the item opens, and their place in the same column.  With
places of their own they are so only where the whole tells that it has several.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import takewhile

from noticeparse.layout.evidence import is_complete, lead_index
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.line.joints import opens_note
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import is_connector

_SLACK = 1
"""Figures by which places of one column may stand out of line."""
_TALLEST = 40
"""Lines of one item."""
_LEADS_ON = frozenset("and or with the a an for least".split())
"""Words that nothing ends with, not even before a place."""
_MAY_LEAD_ON = frozenset("of on in at by".split())
"""Words that a place may follow, or more words: `centred on`, `landing on`."""
_OF_SEVERAL = re.compile(
    r"\b(?:joining|connecting|bounded|enclosed|limits|limited|corners|through|between|within"
    r"|positions|points)\b",
    re.IGNORECASE,
)
"""Words without which a description has one place."""
_RELATES = re.compile(r"(?:centred|centered|joining|connecting|bounded|enclosed|within)\b")


def with_words_whole(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, those of such a description made one: all its words, then all its places."""
    made: list[Line] = []
    at = 0
    while at < len(lines):
        count = _height(text, lines, at)
        made.append(_joined(lines[at : at + count]) if count > 1 else lines[at])
        at += count
    return made


def _height(text: str, lines: Sequence[Line], at: int) -> int:
    """How many lines from one on are an item whose words run on beside its places; else 1."""
    first = lines[at]
    places = _places(first)
    opens = _opening(first)
    if opens is None or not places or not places[0].gap:
        return 1
    column = _column(first, places[0])
    words = words_of(text, [e for e in first.elements if e.kind == "words"])
    height, count, several = 1, 1, False
    for line in lines[at + 1 : at + _TALLEST]:
        own = _places(line)
        told = line.elements[: len(line.elements) - len(own)]
        if line.is_blank or (own and abs(_column(line, own[0]) - column) > _SLACK):
            break
        if told:
            if not _goes_on(text, words, told, has_place=bool(own)):
                break
            if not opens < _column(line, told[0]) < column or "\t" in text[line.start : line.end]:
                break
            words = f"{words} {words_of(text, told)}"
            height = count + 1
            several = several or bool(own)
        count += 1
    # Places without words below the last words belong to the item in any case.
    return 1 if several and not _OF_SEVERAL.search(words) else height


def _opening(line: Line) -> int | None:
    """The column in which the item of a line opens, or None if no item is described there."""
    if line.is_blank or line.elements[0].kind not in ("label", "verb", "words"):
        return None
    lead = line.elements[lead_index(line)]
    tells = any(e.kind == "words" for e in line.elements) and lead.kind in ("verb", "words")
    return _column(line, line.elements[0]) if tells else None


def _places(line: Line) -> tuple[Element, ...]:
    """The positions that end a line."""
    ends = takewhile(lambda e: e.kind in ("point", "half"), reversed(line.elements))
    return tuple(ends)[::-1]


def _goes_on(text: str, above: str, told: Sequence[Element], *, has_place: bool) -> bool:
    """Whether words at the beginning of a line are more of the description above."""
    if any(e.kind != "words" for e in told) or is_connector(words := words_of(text, told)):
        return False
    if opens_note(words):
        return False
    last = above.split()[-1]
    leads = leads_feature(words)
    if _RELATES.match(words) or last in _LEADS_ON or (last in _MAY_LEAD_ON and not leads):
        return True
    is_more = not (leads or has_kind(words))
    return is_more and (has_place or not is_complete(above, is_replacement=False))


def _column(line: Line, element: Element) -> int:
    return element.start - line.start


def _joined(lines: Sequence[Line]) -> Line:
    words = [e for line in lines for e in line.elements if e not in _places(line)]
    places = [e for line in lines for e in _places(line)]
    return lines[0]._replace(end=lines[-1].end, elements=(*words, *places))
