"""What stands before the head of a notice and is no word for one.

The day and hour, as in a log: `Sat 1 Aug 0615   Entry 61/26`; or that no chart is touched; or the
count of the tracing or block that the notice stands in: `~~~ TRACING 1 ~~~ Notice 61/26 ~~~`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element
from noticeparse.readers.dates import MONTH

_TIME = r"(?:[0-2]?[0-9][:.]?[0-5][0-9] ?(?:h(?:rs?|ours)?\b\.?|UTC|GMT|Z|LT)?)(?![0-9])"
_WEEKDAY = r"(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\b\.?,? "
_MONTH = rf"{MONTH}\b\.?"
_YEAR = r"(?:,? (?:19|20)[0-9]{2}(?![0-9]))?"
_DATE = (
    rf"(?:[0-3]?[0-9](?:st|nd|rd|th)? {_MONTH}{_YEAR}|{_MONTH} [0-3]?[0-9](?:st|nd|rd|th)?{_YEAR}"
    r"|[0-3]?[0-9][./][01]?[0-9](?:[./](?:(?:19|20)?[0-9]{2}))?\.?"
    r"|(?:19|20)[0-9]{2}-[01][0-9]-[0-3][0-9])(?![0-9])"
)
_IN_FRONT = re.compile(
    rf"(?:{_TIME}[ ,]{{1,4}})?(?:{_WEEKDAY})?{_DATE}(?:,? {{1,4}}(?:at )?{_TIME})?"
    r"[ ,.:;|-]{1,12}(?=[A-Za-z#])",
    re.IGNORECASE,
)

_NO_CHART = re.compile(
    r"[^A-Za-z0-9]{0,8}"
    r"(?:no charts?(?: (?:affected|concerned|touched|corrected))?|all charts|general)"
    r" ?(?:[.:;,]|[-–]{1,2}(?= ))? {1,12}(?=[A-Za-z])",
    re.IGNORECASE,
)


_THINGS = r"(?:tracing|overlay|cutting|slip|card|block|panel|item|entry|serial|record)s?"
_COUNTED = re.compile(
    rf"{_THINGS}(?: (?:no\.?|nr\.?|number))? [0-9]{{1,4}}[a-z]?"
    r"|no (?:tracing|overlay|cutting|block)",
    re.IGNORECASE,
)
"""What a notice is sent out with, and its count: `TRACING 4`, `NO TRACING`."""
_COUNT_IN_FRONT = re.compile(
    rf"[\[(](?:{_COUNTED.pattern})[\])][ :,.-]{{1,4}}|(?:{_COUNTED.pattern})(?: ?[:/]| -{{1,2}}) ",
    re.IGNORECASE,
)
_WORDS_IN_FRONT = 3
"""Elements that may stand before the number of a notice, besides the marks that part them."""
_MOST_IN_FRONT = 8
_SHORT_CELL = 14


def behind_day(words: str) -> str:
    """The words behind the day, and perhaps the hour, that they open with; all where none does."""
    found = _IN_FRONT.match(words)
    return words[found.end() :] if found else words


def behind_count(words: str) -> str:
    """The words behind `[Tracing 4]` or `Tracing 4: `; all where they do not open so."""
    found = _COUNT_IN_FRONT.match(words)
    return words[found.end() :] if found else words


def behind_no_chart(words: str) -> str:
    """The words behind `NO CHART.`; all where they do not open so."""
    found = _NO_CHART.match(words)
    return words[found.end() :] if found else words


def opens_with_no_chart(words: str) -> bool:
    """Whether words open with `NO CHART.`."""
    return behind_no_chart(words) != words


def first_number(elements: Sequence[Element]) -> int | None:
    """The index of a number among the first elements of a line, marks between them not counted."""
    told = 0
    for index, element in enumerate(elements[:_MOST_IN_FRONT]):
        if element.kind == "number":
            return index
        told += element.kind != "bar"
        if told > _WORDS_IN_FRONT:
            return None
    return None


def words_of_number(text: str, elements: Sequence[Element], at: int) -> list[Element]:
    """The elements in front of a number that are of its notice.

    The word `NM` or `Notice` may open a cell of its own, behind the letter of a schedule or the
    count of a tracing; so does the number with its word, behind such a count.
    """
    before = [e for e in elements[:at] if e.kind not in ("bar", "rule")]
    if not before or before[0].kind in ("key", "chart"):
        return before
    if len(before) > 1:
        is_short = before[-2].end - before[0].start <= _SHORT_CELL
        return before[-1:] if before[-1].gap and is_short else before
    is_parted = elements[at - 1].kind == "bar" and text[elements[at].start].isalpha()
    counts = _COUNTED.fullmatch(text[before[0].start : before[0].end].strip(" ~=*-|#"))
    return [] if is_parted and counts else before
