"""Positions that a list gives letters or numbers, and what is told of these.

`Positions: A P; B Q; C R` and below it `At A: insert a wreck`, `From B to C: move the buoy`.  Each
list becomes an item that is no action and only names its positions; in the other lines of the body
the letters become references.  A body in which nothing is told of its letters stays as it is.
Numbers count the places of an item as well: their list is one only under its title, `Positions:`,
above all else or below it, and where `position 2` or `pos. 2` is told of.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import takewhile
from typing import NamedTuple

from noticeparse.layout.drafts import Group, Item, Piece, Place
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.halves import join_points, with_halves_below
from noticeparse.layout.line.lines import elements_between
from noticeparse.layout.place.codes_apart import CODE
from noticeparse.layout.place.letters_named import with_references
from noticeparse.readers.features import value_property

_IS_CODE = re.compile(rf"{CODE}(?![\s\S])")
_IS_COUNT = re.compile(r"[0-9]{1,2}(?![\s\S])")
# What may stand before the first letter of a list.
_TITLE = re.compile(
    r"(?:the )?(?:following )?(?:positions?|po?sns?|points?)(?: are)?\b"
    r"|(?:the )?(?:schedule|list|table|key|annex) (?:of|to) (?:the )?positions\b"
    r"(?: \([A-Z0-9 -]{1,20}\))?",
    re.IGNORECASE,
)
_FEWEST = 2
"""Letters; one alone is no list, but below a title."""
_HEMISPHERES = "NSEW"
_ENDS = frozenset(_HEMISPHERES)


def with_letters_read(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Item]]:
    """The lines without such lists, letters read as references, and the lists as items."""
    given, lines = lines, with_halves_below(lines)
    listed = [one for one in _lists(text, lines) if one.is_titled or not one.is_counted]
    listed = [one for one in listed if not one.is_counted or _stands_apart(text, lines, one.rows)]
    codes = {str(place.label) for one in listed for place in one.places if not one.is_counted}
    # Below `farm, bounded by:` the places are those of the farm, and keep their letters there.
    led = {row for one in listed if one.is_led for row in one.rows}
    listed = [one for one in listed if not one.is_led]
    rows = {row for one in listed for row in one.rows}
    others = [line for line in lines if line.row not in rows]
    if led and not listed:
        read = with_references(text, lines, codes)
        told = [line if line.row in led else one for line, one in zip(lines, read, strict=True)]
        return (told if told != list(lines) else list(given)), []
    if sum(len(one.places) for one in listed) < _FEWEST and not any(o.is_titled for o in listed):
        return list(given), []
    named = with_references(text, others, codes) if codes else others
    if named == others and not any(one.is_counted for one in listed):
        return list(given), []
    return named, [one.item for one in listed]


def _stands_apart(text: str, lines: Sequence[Line], rows: Sequence[int]) -> bool:
    """Whether a list with numbers stands above or below all else, which tells of the numbers."""
    others = [line for line in lines if not line.is_blank and line.row not in rows]
    if not any(_tells_of_count(text, e) for line in others for e in line.elements):
        return False
    above = all(line.row > max(rows) for line in others)
    return above or all(line.row < min(rows) for line in others)


def _tells_of_count(text: str, element: Element) -> bool:
    return element.kind == "reference" and text[element.start].lower() == "p"


def is_lettered(text: str, elements: Sequence[Element]) -> bool:
    """Whether two elements are a letter and its place: `a) P`, `P1: P`."""
    if len(elements) < _FEWEST or elements[1].kind not in ("point", "half"):
        return False
    words = text[elements[0].start : elements[0].end].strip(" :=.-")
    return elements[0].kind == "label" or _IS_CODE.match(words) is not None


class _List(NamedTuple):
    """A list of lettered or numbered places: its rows, and its item."""

    rows: list[int]
    item: Item
    is_titled: bool
    is_led: bool = False
    """Whether words for a line or an area stand above it, and lead to its places."""

    @property
    def places(self) -> list[Place]:
        return self.item.groups[0].places

    @property
    def is_counted(self) -> bool:
        return all(place.label is not None and place.label.isdigit() for place in self.places)


def _lists(text: str, lines: Sequence[Line]) -> list[_List]:
    """The lists of lettered places."""
    found: list[_List] = []
    goes_on = False
    above: Line | None = None
    """The line above, where it is a title alone: `Positions:`."""
    before: Line | None = None
    for line in lines:
        leading, before = before, line
        last = found[-1].places[-1].label if goes_on else None
        lettered = None if line.is_blank else lettered_row(text, line, last)
        if lettered is None:
            goes_on = False
            above = line if _is_title(text, line) else None
            continue
        title, places = lettered
        counted = all(place.label is not None and place.label.isdigit() for place in places)
        if not goes_on or title:
            item = Item(words=title, groups=[Group()], is_list_of_places=True)
            is_led = leading is not None and not title and _leads_on(text, leading)
            found.append(_List([], item, bool(title) or above is not None, is_led))
            if above is not None and counted:
                found[-1].rows.append(above.row)
                item.pieces += [(e.start, e.end) for e in above.elements]
        above = None
        found[-1].rows.append(line.row)
        found[-1].places.extend(places)
        found[-1].item.pieces += [(e.start, e.end) for e in line.elements]
        goes_on = True
    return found


_LEADS = re.compile(r"\b(?:joining|bounded by|connecting|within|between|through|limits)\s?:?\s*$")


def _leads_on(text: str, line: Line) -> bool:
    """Whether a line ends with words that lead to the places of a thing: `farm, bounded by:`."""
    if line.is_blank or line.has("point", "half"):
        return False
    return _LEADS.search(text[line.start : line.end].lower()) is not None


def _is_title(text: str, line: Line) -> bool:
    """Whether a line is the title of a list and nothing else."""
    if line.has("point", "verb"):
        return False
    words = text[line.start : line.end].strip(" :.")
    told = _TITLE.match(words)
    return told is not None and told.end() == len(words)


def lettered_row(
    text: str, line: Line, last: str | None, *, is_any: bool = False
) -> tuple[list[Piece], list[Place]] | None:
    """The title and the lettered places of a line that holds nothing else, or None.

    With `is_any` small letters and numbers count as well: `(a) P`.
    """
    if line.has("verb", "passive") or not line.has("point", "half"):
        return None
    first = line.elements[0]
    if first.kind == "words" and not _may_open(text[first.start : first.end]):
        return None
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
    lost = False
    """Whether figures stand beside the next place that are the rest of it."""
    for element in join_points(text, elements):
        if element.kind in ("semicolon", "bar"):
            continue
        if element.kind == "point":
            if code is None or (lost and element.value.point is not None):
                return None
            places.append(Place(element, code))
            code, lost = None, False
        elif last is not None and _is_rest(text, element, places if code is None else ()):
            lost = code is not None
        elif element.kind in ("words", "label"):
            words = _bare(text[element.start : element.end])
            words = element.value if element.kind == "label" and _is_digits(element) else words
            if code is None and places and _is_name(text, element):
                continue
            if not words and is_any:
                continue
            is_code = _is_code(words) or (is_any and element.kind == "label")
            if code is not None or (words and words != "and" and not is_code):
                return None
            code = words if words and words != "and" else None
        else:
            return None
    return (title, places) if places and code is None else None


def _may_open(words: str) -> bool:
    """Whether words may open such a line: as its title, a letter, or a mark."""
    bare = _bare(words)
    return bare in ("", "and") or _is_code(bare) or _TITLE.match(words.strip()) is not None


def _bare(words: str) -> str:
    """The letter of a place without the marks beside it."""
    return words.strip(" ,.:=-–()[]").removeprefix("and ").strip(" ()[]")


_REST_OF_PLACE = re.compile(r"[0-9OlISZB]{1,3}[°.,' -][0-9OlISZB°.,' -]{1,12}[NSEW]?")


def _is_rest(text: str, element: Element, places: Sequence[Place]) -> bool:
    """Whether words are the rest of a place that cannot be read: `(c) 47.O182°S  122.4110°W`.

    Behind the last of `places` they are only where that one cannot be read.
    """
    if places and places[-1].element.value.point is not None:
        return False
    words = text[element.start : element.end].strip()
    return element.kind == "words" and _REST_OF_PLACE.fullmatch(words) is not None


def _is_digits(label: Element) -> bool:
    return isinstance(label.value, str) and label.value.isdigit()


def _is_code(words: str) -> bool:
    return _IS_CODE.match(words) is not None or _IS_COUNT.match(words) is not None


def _is_name(text: str, element: Element) -> bool:
    """Whether words behind a place of a list are its name: `(Quill north)`."""
    words = text[element.start : element.end].strip()
    if element.kind != "words" or not (words.startswith("(") and words.endswith(")")):
        return False
    says = value_property(words.strip("()")) & {"quality", "status", "condition", "negation"}
    return not says and words.strip("() ")[:1].isupper() and " " in words


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
