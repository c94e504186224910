"""What stands before the head of a notice and is no word for one.

The day and hour, as in a log: `Sat 1 Aug 0615   Entry 61/26`; or that no chart is touched.
"""

from __future__ import annotations

import re

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


def behind_day(words: str) -> str:
    """The words behind the day, and perhaps the hour, that they open with; all where none does."""
    found = _IN_FRONT.match(words)
    return words[found.end() :] if found else words


def behind_no_chart(words: str) -> str:
    """The words behind `NO CHART.`; all where they do not open so."""
    found = _NO_CHART.match(words)
    return words[found.end() :] if found else words


def opens_with_no_chart(words: str) -> bool:
    """Whether words open with `NO CHART.`."""
    return behind_no_chart(words) != words
