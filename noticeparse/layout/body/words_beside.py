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

from noticeparse.layout.evidence import OPEN_END, is_complete, lead_index
from noticeparse.layout.line.elements import Element, Line, has_words, words_of
from noticeparse.layout.line.joints import BULLETS, opens_note
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.misspelt_verbs import misspelt_verb
from noticeparse.readers.places import is_connector

_SLACK = 1
"""Figures by which places of one column may stand out of line."""
_AXES = ("latitude", "longitude")
_TALLEST = 40
"""Lines of one item."""
_LEADS_ON = frozenset(
    "and or with the a an for least old new former marking showing towards across".split()
)
"""Words that nothing ends with, not even before a place."""
_CUT = re.compile(r"(?<=[a-z])-$")
"""`coni-` above `cal`: a word cut at the end of its line."""
_OF_SEVERAL = re.compile(
    r"\b(?:joining|connecting|bounded|enclosed|limits|limited|corners|through|between|within"
    r"|positions|points)\b",
    re.IGNORECASE,
)
"""Words without which a description has one place."""
_CENTRED = re.compile(r"\bcent(?:re|er)d (?:on|at|in)(?: position)?$", re.IGNORECASE)
"""Words whose place stands beside them, and no other words below."""
_RELATES = re.compile(r"(?:centred|centered|joining|connecting|bounded|enclosed|within)\b")


def with_words_whole(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, those of such a description made one: all its words, then all its places."""
    made: list[Line] = []
    at = 0
    while at < len(lines):
        count = _height(text, lines, at)
        made.append(_joined(text, lines[at : at + count]) if count > 1 else lines[at])
        at += count
    return made


def _height(text: str, lines: Sequence[Line], at: int) -> int:
    """How many lines from one on are an item whose words run on beside its places; else 1."""
    first = lines[at]
    opens = _opening(text, first)
    if opens is None:
        return 1
    places = _places(text, first)
    place = next((one for one in places if not _is_bar(text, one)), None)
    if place is None or not place.gap:
        return 1
    column = _column(first, place)
    described = first.elements[: len(first.elements) - len(places)]
    words = words_of(text, [e for e in described if e.kind == "words"])
    if not words or is_connector(words):
        return 1
    height, count, beside, rests = 1, 1, [*places], False
    for line in lines[at + 1 : at + _TALLEST]:
        if line.is_blank:
            break
        ends = _places(text, line)
        own = tuple(e for e in ends if not _is_bar(text, e))
        told = [e for e in line.elements[: len(line.elements) - len(ends)] if not _is_bar(text, e)]
        if own and abs(_column(line, own[0]) - column) > _SLACK:
            break
        if told:
            indent = _column(line, told[0])
            if not opens <= indent < column or "\t" in text[line.start : line.end]:
                break
            breaks_off = _breaks_off(text, words, told)
            is_whole = (rests and bool(own)) or _CENTRED.search(words) is not None
            if is_whole and has_kind(words_of(text, told)):
                # `jetty, joining P`, `Q`, and below them `the wreck R`, a thing of its own.
                breaks_off = False
            # In a list the next thing stands in the same column.
            is_more = indent > opens and _is_more(text, words, told, has_place=bool(own))
            is_more |= _are_plain(text, told) and _completes(beside, own)
            if not (breaks_off or is_more):
                break
            words = f"{words} {words_of(text, told)}"
            height = count + 1
            beside += own
        rests = not told
        count += 1
    # Places without words below the last words belong to the item in any case.
    return 1 if _are_several(beside) and not _OF_SEVERAL.search(words) else height


def _are_several(places: Sequence[Element]) -> bool:
    """Whether places are more than one position, of which the halves may stand on two lines."""
    kinds = [place.kind for place in places]
    return kinds.count("point") > 1 or kinds.count("half") > len(_AXES)


def _completes(beside: Sequence[Element], own: Sequence[Element]) -> bool:
    """Whether the places of a line begin with the longitude of the latitude above them."""
    halves = [one for one in beside if one.kind in ("half", "point")]
    if not halves or halves[-1].kind != "half" or len(halves) % 2 == 0 or not own:
        return False
    return own[0].kind == "half" and (halves[-1].value.axis, own[0].value.axis) == _AXES


def _opening(text: str, line: Line) -> int | None:
    """The column in which the item of a line opens, or None if no item is described there."""
    if line.is_blank:
        return None
    first = next((e for e in line.elements if not _is_bar(text, e)), line.elements[0])
    is_listed = first.kind == "bar" and text[first.start : first.end].strip() in BULLETS
    if not is_listed and first.kind not in ("label", "verb", "words"):
        return None
    lead = line.elements[max(lead_index(line), line.elements.index(first))]
    tells = any(e.kind == "words" for e in line.elements) and lead.kind in ("verb", "words")
    return _column(line, first) if tells else None


def _is_bar(text: str, element: Element) -> bool:
    """Whether an element parts the cells of a table, and opens no item of a list."""
    return element.kind == "bar" and text[element.start : element.end].strip() not in BULLETS


def _places(text: str, line: Line) -> tuple[Element, ...]:
    """The positions that end a line, and the marks between and behind them."""
    at = len(line.elements)
    while at and _is_place(text, line.elements[at - 1]):
        at -= 1
    return line.elements[at:]


def _is_place(text: str, element: Element) -> bool:
    return element.kind in ("point", "half") or not has_words(text, element)


def _breaks_off(text: str, above: str, told: Sequence[Element]) -> bool:
    """Whether the words above cannot end there, so that those below go on with them."""
    if not _are_plain(text, told):
        return False
    words, last = words_of(text, told), above.split()[-1]
    is_open = above.count("(") > above.count(")") or _CUT.search(above) is not None
    if is_open or last in _LEADS_ON or _RELATES.match(words):
        return True
    if last.endswith(":"):
        return not has_kind(words)
    return last in OPEN_END and (words.startswith("the ") or not leads_feature(words))


def _is_more(text: str, above: str, told: Sequence[Element], *, has_place: bool) -> bool:
    """Whether words that stand in name no thing of their own."""
    words = words_of(text, told)
    if not _are_plain(text, told) or leads_feature(words) or has_kind(words):
        return False
    return has_place or not is_complete(above, is_replacement=False)


def _are_plain(text: str, told: Sequence[Element]) -> bool:
    """Whether elements are words that do more than lead to a place, and open no note or item."""
    words = words_of(text, told)
    if is_connector(words) or opens_note(words) or misspelt_verb(words) is not None:
        return False
    return all(e.kind == "words" for e in told)


def _column(line: Line, element: Element) -> int:
    return element.start - line.start


def _joined(text: str, lines: Sequence[Line]) -> Line:
    words = [e for line in lines for e in line.elements if e not in _places(text, line)]
    places = [e for line in lines for e in _places(text, line)]
    return lines[0]._replace(end=lines[-1].end, elements=(*words, *places))
