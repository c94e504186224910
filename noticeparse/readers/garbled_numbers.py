"""Numbers of notices in which a figure or sign is lost: `248O/26`, `97726`.

A notice before that is read for another one hides that a correction was missed, or asks for one
that never was.  Common practice, no published source.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.readers.head_values import Head, HeadPart
from noticeparse.readers.notices_before import blame

_NUMBERS = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS", "NOTICE_NUMBER"})
_GOES_ON = re.compile(
    r"[A-Za-z?#\ufffd]{1,2}[/0-9][0-9/]{0,8}|[?#\ufffd][0-9]{0,5}"
    r"| (?:[0-9]{2}|(?:19|20)[0-9]{2})(?= ?[\])])"
)
"""Behind a number without its year: the rest of number and year."""
BEFORE_YEAR = (
    r"(?![0-9]{1,5}(?:\([TP]\))?/(?:19|20)?[0-9]{2}(?![0-9]))"
    r"[0-9][0-9A-Za-z?#]{0,5}(?:\([TP]\))?"
)
"""What stands before the year in a number that is none of a notice: `24b7` of `24b7/26`."""
_LAST_FIGURES = re.compile(r"[0-9]{1,6}$")
_LONGEST = 4


def tell_garbled_numbers(head: Head, text: str, parts: Sequence[HeadPart]) -> None:
    """Leave out the notices before that cannot be those which are meant, and tell of them."""
    for part in parts:
        rest = _rest_of(text, part) if part.kind in _NUMBERS else None
        if rest is None:
            continue
        written = " ".join(part.text.strip("[]() ,;").split())
        for chart in head.charts:
            if chart.previous is not None and chart.previous_written == written:
                chart.previous = None
                blame(head, "previous-unread", text[part.start : rest], part)
                break


def _rest_of(text: str, part: HeadPart) -> int | None:
    """Where a number that is not whole really ends; None where it is whole."""
    if text[part.start - 1 : part.start] in ("?", "#", "\ufffd"):
        return part.end
    number = _LAST_FIGURES.search(part.text.rstrip("]) "))
    if number is None or "/" in part.text or "-" in part.text or " of " in part.text:
        return None
    behind = _GOES_ON.match(text, part.end)
    if behind is not None:
        return behind.end()
    return part.end if len(number[0]) > _LONGEST else None
