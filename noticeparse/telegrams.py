"""Words of telegrams that stand for marks: `STOP` for a full stop, `QUOTE … UNQUOTE` for quotes.

Common practice, no published source: a telegraph had no sign for either.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

_STOP = re.compile(
    r"\sSTOP(?<=[A-Z0-9)]\sSTOP)(?! PRESS)(?:\s(?P<chart>(?=(?:CHARTS?|CHTS?) [0-9]))"
    r"|(?=\s{1,4}[A-Z]{2})|(?=\s{0,80}\Z))"
)
_QUOTED = re.compile(r"\bQUOTE\s(?=[A-Z0-9])[^\"]{1,120}?(?P<end>\sUNQUOTE)\b")
_OPENING = len("QUOTE ")
_BEFORE = 120
"""Characters before a word within which a quotation that holds it begins."""


def marks_of_telegrams(text: str) -> Iterator[tuple[int, int, str]]:
    """Start, end and mark of such words, in no order; a chart behind a stop opens a line."""
    if "STOP" in text:
        for found in _STOP.finditer(text):
            if _is_quoted(text, found.start()):
                continue
            breaks = "\n" in found.group() or found["chart"] is not None
            yield found.start(), found.end(), ".\n" if breaks else "."
    if "UNQUOTE" in text:
        for found in _QUOTED.finditer(text):
            yield found.start(), found.start() + _OPENING, '"'
            yield found.start("end"), found.end("end"), '"'


def _is_quoted(text: str, at: int) -> bool:
    """Whether a quotation is open on the line: `legend "FULL STOP AREA"`."""
    first = max(at - _BEFORE, text.rfind("\n", max(at - _BEFORE, 0), at) + 1, 0)
    return text.count('"', first, at) % 2 > 0
