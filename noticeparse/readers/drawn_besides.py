"""Tells of what is drawn around a danger or depth and named behind it: `depth 5m and danger line`.

In comes a phrase with the class of its feature; out come faults.  The record holds no line around
a danger, so that whoever deletes the depth by it would leave the line standing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.vocabulary import DANGERS

_DRAWN = re.compile(
    r"(?:\b(?:and|also|plus|with)|[,;&+(]) ?(?:(?:the|its|their|an?|any|also|associated"
    r"|surrounding|accompanying|enclosing|encircling|adjacent) ){0,3}(?P<drawn>(?:(?:danger|dotted"
    r"|pecked|dashed|broken|black|magenta|firm|solid|limiting) ){0,2}(?:lines?|arrows?|outlines?"
    r"|limits?|tints?)|(?:danger|dotted|pecked|dashed|broken) circles?)(?![a-z-])"
    r"(?! (?:of|from|to|at|in)\b)",
    re.IGNORECASE,
)
_RINGED = DANGERS | {"SOUNDG"}


def drawn_besides(text: str, s57: str) -> Iterator[Fault]:
    """A fault of a line or a circle around a depth or a danger."""
    found = _DRAWN.search(text) if s57 in _RINGED else None
    if found is not None and found.start():
        start, end = found.span("drawn")
        yield Fault("feature-words-unread", start, end, {"written": shown(found["drawn"])})
