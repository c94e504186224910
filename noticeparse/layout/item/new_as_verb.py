"""`New:` among keys that tell what was done: `* New: rock P` beside `* Removed: buoy Q`.

Where states are told too, `Old: F.R` and `New: F.G`, the word is that of a state.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.elements import Element, Line

_NEW = re.compile(r"new(?: (?:object|feature|item)s?)? ?: {1,4}(?=\S)", re.IGNORECASE)
_STATES = re.compile(r"^[ \t>*•-]{0,8}(?:old|was|former|previous|before|now) ?:", re.I | re.M)


def with_new_as_verb(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, with such a word as the verb of its item."""
    if not lines or not any(_is_key_of_change(text, line) for line in lines):
        return list(lines)
    if _STATES.search(text, lines[0].start, lines[-1].end):
        return list(lines)
    return [_with_verb(text, line) for line in lines]


def _is_key_of_change(text: str, line: Line) -> bool:
    """Whether a line opens with a verb and a colon: `Removed: buoy`."""
    lead = line.elements[lead_index(line)] if line.elements else None
    is_verb = lead is not None and lead.kind == "verb"
    return is_verb and lead is not None and text[lead.end : lead.end + 2].lstrip()[:1] == ":"


def _with_verb(text: str, line: Line) -> Line:
    at = lead_index(line) if line.elements else 0
    first = line.elements[at] if line.elements else None
    told = _NEW.match(text, first.start, first.end) if first and first.kind == "words" else None
    if first is None or told is None:
        return line
    verb = Element("verb", first.start, first.start + len("new"), first.gap, "insert")
    rest = first._replace(start=told.end(), gap=False)
    return line._replace(elements=(*line.elements[:at], verb, rest, *line.elements[at + 1 :]))
