"""Positions that a list gives letters without brackets, and what is told of the letters.

`Positions: A P; B Q; C R` and below it `At A: insert a wreck`, `From B to C: move the buoy`.  Each
list becomes an item that is no action and only names its positions; in the other lines of the body
the letters become references.  A body in which nothing is told of its letters stays as it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import takewhile

from noticeparse.layout.drafts import Group, Item, Piece, Place
from noticeparse.layout.elements import Element, Line
from noticeparse.layout.lines import elements_between
from noticeparse.layout.prose import join_points
from noticeparse.readers.places import is_connector, read_phrase

_CODE = "[A-Z]{1,2}[0-9]{0,2}"
_IS_CODE = re.compile(rf"{_CODE}(?![\s\S])")
# What may stand before the first letter of a list.
_TITLE = re.compile(
    r"(?:the )?(?:following )?(?:positions?|po?sns?|points?)(?: are)?\b", re.IGNORECASE
)
_NAMED = re.compile(
    rf"(?<![\w\"'.(/-]){_CODE}(?:(?: ?[-–] ?| to )[A-Z](?![\w(]))?(?![\w\"'(/°-]|\.\w)(?! of\b)"
)
# What stands behind a letter that opens its line: `A: insert …`, `A and B`.
_FOLLOWS = re.compile(rf" ?[:,;–-]| (?:and|to|&) {_CODE}(?!\w)|  |\s*(?![\s\S])")
_FEWEST = 2
"""Letters; one alone is no list."""
_HEMISPHERES = "NSEW"
_ENDS = frozenset(_HEMISPHERES)
_OF_LIGHTS = frozenset("FQ")
"""Letters that are the character of a light as well: `amended to F`."""


def with_letters_read(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Item]]:
    """The lines without such lists, letters read as references, and the lists as items."""
    listed = _lists(text, lines)
    places = [place for _, item in listed for group in item.groups for place in group.places]
    codes = {str(place.label) for place in places}
    if len(places) < _FEWEST:
        return list(lines), []
    rows = {row for taken, _ in listed for row in taken}
    others = [line for line in lines if line.row not in rows]
    named = [_with_references(text, line, codes) for line in others]
    if named == others:
        return list(lines), []
    return named, [item for _, item in listed]


def is_lettered(text: str, elements: Sequence[Element]) -> bool:
    """Whether two elements are a letter and its place: `a) P`, `P1: P`."""
    if len(elements) < _FEWEST or elements[1].kind not in ("point", "half"):
        return False
    words = text[elements[0].start : elements[0].end].strip(" :=.-")
    return elements[0].kind == "label" or _IS_CODE.match(words) is not None


def _lists(text: str, lines: Sequence[Line]) -> list[tuple[list[int], Item]]:
    """The lists of lettered places: the rows of each, and its item."""
    found: list[tuple[list[int], Item]] = []
    goes_on = False
    for line in lines:
        item = found[-1][1] if goes_on else None
        last = item.groups[0].places[-1].label if item is not None else None
        lettered = None if line.is_blank else _lettered(text, line, last)
        if lettered is None:
            goes_on = False
            continue
        title, places = lettered
        if item is None or title:
            item = Item(words=title, groups=[Group()], is_list_of_places=True)
            found.append(([], item))
        found[-1][0].append(line.row)
        item.groups[0].places += places
        item.pieces += [(e.start, e.end) for e in line.elements]
        goes_on = True
    return found


def _lettered(text: str, line: Line, last: str | None) -> tuple[list[Piece], list[Place]] | None:
    """The title and the lettered places of a line that holds nothing else, or None."""
    elements = list(_with_letters_apart(text, line, last))
    lead = list(takewhile(lambda e: e.kind in ("key", "words"), elements))
    title: list[Piece] = []
    if lead and (told := _TITLE.match(text[lead[0].start : lead[0].end].strip())):
        words = text[lead[0].start : lead[0].end]
        end = lead[0].start + words.index(told[0]) + len(told[0])
        end += len(text[end : lead[0].end]) - len(text[end : lead[0].end].lstrip(" :.="))
        title = [(lead[0].start, end)]
        elements[0] = lead[0]._replace(kind="words", start=end)
    places: list[Place] = []
    code: str | None = None
    for element in join_points(text, elements):
        if element.kind in ("semicolon", "bar"):
            continue
        if element.kind == "point":
            if code is None:
                return None
            places.append(Place(element, code))
            code = None
        elif element.kind in ("words", "label"):
            words = text[element.start : element.end].strip(" ,.:=-–()[]")
            words = words.removeprefix("and ").strip(" ()[]")
            if code is not None or (words and words != "and" and not _IS_CODE.match(words)):
                return None
            code = words if words and words != "and" else None
        else:
            return None
    return (title, places) if places and code is None else None


def _with_letters_apart(text: str, line: Line, last: str | None) -> Iterator[Element]:
    """The elements; a letter read as a hemisphere in front is the next one of the list.

    `D P; E 46-52.40S 122-18.51W`: a hemisphere stands behind that latitude.
    """
    taken = line.start
    for index, element in enumerate(line.elements):
        if element.end <= taken:
            continue
        words = text[element.start : element.end]
        before = line.elements[index - 1] if index else None
        is_free = before is None or before.kind in ("semicolon", "bar") or element.gap
        end = element.end
        behind = line.elements[index + 1] if index + 1 < len(line.elements) else None
        if behind is not None and text[behind.start : behind.end].strip(" .,;") in _ENDS:
            # `E  46-52.40S  122-18.51 W`: the last hemisphere is left over.
            end = behind.end
        is_lost = element.kind in ("point", "half") and (
            end > element.end or (element.kind == "point" and element.value.point is None)
        )
        if is_lost and is_free and words[0] in _HEMISPHERES and words[1:2] in (" ", "\t"):
            yield Element("label", element.start, element.start + 1, element.gap, words[0])
            yield from elements_between(text, element.start + 1, end)
            taken = end
        else:
            yield element


def _with_references(text: str, line: Line, codes: set[str]) -> Line:
    found: list[Element] = []
    for element in line.elements:
        if element.kind == "words":
            found += _parted(text, element, codes)
        else:
            found.append(element)
    return line if tuple(found) == line.elements else line._replace(elements=tuple(found))


def _parted(text: str, element: Element, codes: set[str]) -> Iterator[Element]:
    """Words with the letters of the list among them as references."""
    at = element.start
    is_behind = False
    for match in _NAMED.finditer(text, element.start, element.end):
        before, behind = text[at : match.start()], text[match.end() : match.end() + 6]
        if not before.strip() and not is_behind and not _FOLLOWS.match(behind):
            # `A wreck has been found`: an article.
            continue
        if not _is_named(before, match[0], codes, is_behind=is_behind):
            continue
        start = match.start()
        end = match.end()
        if " to " in match[0] and before.rstrip().lower().endswith("from"):
            # `From B to C` are the two places of a move.
            end = start + match[0].index(" to ")
        yield from _words(text, at, start, element)
        gap = element.gap and start == element.start
        yield Element("reference", start, end, gap)
        at, is_behind = end, True
        if end < match.end():
            yield from _words(text, end, match.end() - 1, element)
            yield Element("reference", match.end() - 1, match.end(), False)
            at = match.end()
    yield from _words(text, at, element.end, element)


def _words(text: str, start: int, end: int, whole: Element) -> Iterator[Element]:
    """What stands between two letters; behind one a command may stand: `At A insert …`."""
    if start == whole.start:
        if text[start:end].strip():
            yield whole._replace(end=start + len(text[start:end].rstrip()))
        return
    yield from elements_between(text, start, end)


def _is_named(before: str, written: str, codes: set[str], *, is_behind: bool) -> bool:
    """Whether a capital names a place: behind a word that leads to one, or another letter."""
    code = re.split(r" ?[-–] ?| to ", written)[0]
    parts = read_phrase(before)
    if not parts:
        return code in codes and not is_behind
    if is_behind and is_connector(before.strip()):
        return True
    if parts[-1].kind in ("words", "separator"):
        return False
    return code not in _OF_LIGHTS or parts[-1].kind != "to"
