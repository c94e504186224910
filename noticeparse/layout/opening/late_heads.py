"""Heads behind a blank line that no word for a notice opens: `A. 2650/26`, `Ref: 2650/26`.

What tells them is what stands below: a heading, and a chart of its own.  Where the line holds no
number that can be read, as `NEXT NOTICE`, a notice begins all the same, and its number is lost.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.notice_openings import NoticeOpening, speaks_of_notice
from noticeparse.readers.garbled_numbers import BEFORE_YEAR
from noticeparse.readers.heads import head_kinds
from noticeparse.readers.references import read_head_number

_LETTERED = re.compile(
    r"(?:\(?[A-Za-z0-9]{1,2}[.)]|(?:(?:our|your) )?ref(?:erence)?(?: no)?\.?:?"
    r"|(?:no|nr|number)\.?:?)"
    r" {1,4}(?P<number>[0-9]{1,5}(?: ?\([TP]\))?(?:(?:/| of |, )(?:19|20)[0-9]{2}|/[0-9]{2})"
    r"(?: ?\([TP]\))?)[.:]?",
    re.IGNORECASE,
)
_UNREAD = re.compile(
    r"(?:(?:the )?(?:next|another|further|new|second|third|following|separate) )?"
    r"notice(?: to mariners)?[ .:]{0,3}|(?:no|nr|number)\.?:? ?[0-9]{2,5}"
    r"|[0-9]{1,5}(?:\([TP]\)[0-9]{2}|-(?:19|20)?[0-9]{2})",
    re.IGNORECASE,
)
_LIKE_A_NUMBER = re.compile(
    r"(?=[^\n]{0,22}[0-9])[(\[]?"
    r"(?:(?i:notices? to mariners|notice|nm|ntm|n\.m\.|no\.?|temp|serial)[ .:/-]{0,3})?"
    r"[(\[]?(?:[A-Z&+]{0,3}[ ./-]?\)?) ?[0-9lIO]{1,5}(?![0-9]*[.)] )(?![0-9]*:)"
)
_LONGEST_HEAD = 90
_LINES_OF_HEADING = 3


def late_opening(text: str, line: Line, below: Sequence[Line]) -> NoticeOpening | None:
    """The number that opens a notice, where a heading and a chart stand below the line."""
    words = text[line.start : line.end].strip() if below else ""
    found = _LETTERED.fullmatch(words)
    if found is None or not _heading_above_chart(text, below):
        return None
    start = text.index(words, line.start) + found.start("number")
    end = start + len(found["number"])
    if read_head_number(text[start:end], None) is None:
        return None
    return NoticeOpening(Element("number", start, end, False), len(line.elements), False, None)


def is_lost_head(text: str, line: Line, below: Sequence[Line]) -> bool:
    """Whether a line begins a notice above its chart, but holds no number that can be read.

    Asked of lines that stand behind a blank one: `42(T)26 Port Ellory`.
    """
    words = text[line.start : line.end].strip()
    above_chart = bool(below) and _is_chart(below[0])
    if is_like_head(text, line):
        return above_chart or line.has("chart") or _heading_above_chart(text, below)
    if _UNREAD.fullmatch(words) or _LETTERED.fullmatch(words):
        return above_chart or _heading_above_chart(text, below)
    if not above_chart:
        return False
    if line.has("point", "half", "verb", "passive", "chart", "label", "charts_only"):
        return False
    if speaks_of_notice(text, line) or "CANCELS" in head_kinds(words):
        return False
    return len(words) <= _LONGEST_HEAD and _LIKE_A_NUMBER.match(words) is not None


_GARBLED = re.compile(
    r"[=*#|~>\[ -]{0,8}(?:(?P<noun>notice|n\.?t?\.?m\.?)(?: nos?\.?)? )?"
    rf"{BEFORE_YEAR}(?:/[0-9A-Za-z?#]{{1,4}}|(?P<blank> (?:20)?[0-9]{{2}}))"
    r"(?![0-9A-Za-z/?])(?:[.:,]? ?[=*#|~-]{1,6}|[.:,]? {1,12}[A-Z\[|]|[ .|]*$)",
    re.IGNORECASE,
)
"""`33b3/26  TAVRENNE ISLANDS`, `== NM 306/202 ==`, `Notice 1804 26.`: no number of a notice."""


def is_like_head(text: str, line: Line) -> bool:
    """Whether a line opens like the head of a notice, with a number that is none."""
    if line.has("point", "half", "verb", "passive", "label", "reference"):
        return False
    found = _GARBLED.match(text, line.start, line.end)
    return found is not None and (found["blank"] is None or found["noun"] is not None)


def _heading_above_chart(text: str, below: Sequence[Line]) -> bool:
    """Whether a heading stands right below, and the head of a chart below it."""
    for index, line in enumerate(below[: _LINES_OF_HEADING + 1]):
        if _is_chart(line):
            return index > 0
        words = text[line.start : line.end].strip()
        if not line.has_only("words", "key") or not (index or words[:1].isupper()):
            return False
    return False


def _is_chart(line: Line) -> bool:
    return bool(line.elements) and line.elements[0].kind == "chart"
