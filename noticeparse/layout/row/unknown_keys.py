"""Keys that nobody knows among keys that are verbs: `Surveyor : Edderly Company` below `Add :`.

Their colons stand in one column.  What such a key says goes with the notice and with no item, as
long as it names neither a feature nor a place, a figure or a condition.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line
from noticeparse.layout.sentence.lead_words import hangs
from noticeparse.readers.features import has_kind

_COLON = re.compile(r"[ \t]{0,12}:(?=[ \t])")
_KEY = re.compile(r"[ \t]{0,40}[A-Z][A-Za-z .]{2,30}?[ \t]{0,12}:(?=[ \t])")
_NUMBERED = re.compile(r"\bNo\.? ?[0-9]{1,3}\b")


def key_columns(text: str, lines: Sequence[Line]) -> frozenset[int]:
    """The columns of the colons behind verbs that are keys: `Remove   : jetty`."""
    found: set[int] = set()
    for line in lines:
        if line.elements and line.elements[0].kind == "verb":
            colon = _COLON.match(text, line.elements[0].end)
            found.update([colon.end() - 1 - line.start] if colon else [])
    return frozenset(found)


def opens_key(text: str, line: Line, columns: frozenset[int]) -> bool:
    """Whether a line opens with words that are no verb, and a colon in one of these columns."""
    if not columns or line.is_blank or line.elements[0].kind not in ("words", "passive"):
        return False
    found = _KEY.match(text, line.start, line.end)
    return found is not None and found.end() - 1 - line.start in columns


def is_of_key(text: str, block: Sequence[Line], columns: frozenset[int]) -> bool:
    """Whether a paragraph is what such a key says, and nothing of an item."""
    if not block or not opens_key(text, block[0], columns):
        return False
    words = _NUMBERED.sub("", text[block[0].start : block[-1].end])
    if any(char.isdigit() for char in words) or hangs(words) or has_kind(words):
        return False
    kinds = {element.kind for line in block for element in line.elements}
    return kinds.isdisjoint((*PLACES, "verb", "label", "chart"))
