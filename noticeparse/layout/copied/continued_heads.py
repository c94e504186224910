"""Heads that stand again where a page breaks: `17/26 (continued)`, `Chart 802 (cont.)`.

In come the lines of a text; out come the indexes of those that say again which notice and chart
are open.  The head of another notice or chart is none of them, continued or not.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening

_CONTINUED = re.compile(
    r"[ ,]*(?:[-–—(\[]| ) ?(?:continued|contd|cont['’]d|cont|ctd)\b\.?"
    r"(?: from (?:the )?(?:previous|last|page)(?: page)?(?: [0-9]{1,4})?)?[)\]]?[ .]*$",
    re.IGNORECASE,
)
_MAY = re.compile(r"\b(?:cont|ctd)", re.IGNORECASE)
_WORD = re.compile(r"[^\W_]+")
_NOUNS = frozenset(("notice", "nm", "ntm", "no"))
"""Words before the number of a notice, which its own head may lack."""


def continued_heads(text: str, lines: Sequence[Line]) -> set[int]:
    """Lines that name the open notice, or the open chart, again behind the break of a page."""
    if _MAY.search(text) is None:
        return set()
    told = {
        index: behind.start()
        for index, line in enumerate(lines)
        if not line.is_blank and (behind := _CONTINUED.search(text, line.start, line.end))
    }
    found: set[int] = set()
    notice = chart = ""
    words: set[str] = set()
    for index in range(max(told, default=-1) + 1):
        line = lines[index]
        if line.is_blank:
            continue
        opening = notice_opening(text, line)
        end = told.get(index, line.end)
        own = set(_WORD.findall(text[line.start : end].lower().replace("charts", "chart")))
        number = "" if opening is None else text[opening.number.start : opening.number.end]
        named = "" if number or line.elements[0].kind != "chart" else _first_figure(text, line)
        is_open = bool(number or named) and number in ("", notice) and named in ("", chart)
        if index in told and is_open and own <= words | _NOUNS:
            found.add(index)
        elif number:
            notice, chart, words = number, "", own
        elif named:
            chart, words = named, words | own
        elif chart == "":
            # More of the heading of the notice.
            words |= own
    return found


def _first_figure(text: str, line: Line) -> str:
    """The first word with a figure on a line: the number of its chart."""
    words = _WORD.findall(text[line.start : line.end])
    return next((one for one in words if any(map(str.isdigit, one))), "")
