"""Keys within a record that say what kind of value stands behind them: `Signal: Horn(2)30s`.

The value tells by itself what it is, so that the key adds nothing to it; any other key may, as
`Former signal` does, and what it says stays in doubt.
"""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Line
from noticeparse.readers.features import value_property

_KEY = re.compile(
    r"(?P<sound>(?:(?:fog|sound) )?signal|sound)[ \t]{0,20}:[ \t]{1,20}(?=\S)"
    r"|(?P<state>quality)[ \t]{0,20}:[ \t]{1,20}"
    r"(?=(?:position|existence) (?:approx|doubtful)|(?:pa|pd|ed)\b)",
    re.IGNORECASE,
)
_KEY_AND_VALUE = 2
_VALUES = {"sound": {"sound"}, "state": {"quality", "status"}}


def with_value_key(text: str, line: Line) -> Line:
    """The line; such words before their value are a key."""
    first = line.elements[0] if line.elements else None
    told = _KEY.match(text, first.start, line.end) if first else None
    if first is None or told is None or any(e.kind != "words" for e in line.elements):
        return line
    role = str(told.lastgroup)
    said = value_property(text[told.end() : line.elements[-1].end].strip(" ."))
    if not said or not said <= _VALUES[role]:
        return line
    key = first._replace(kind="key", end=told.end(), value=role)
    rest = (e._replace(start=max(e.start, told.end())) for e in line.elements)
    return line._replace(elements=(key, *(e for e in rest if e.start < e.end)))


def value_start(text: str, line: Line) -> int | None:
    """Where the value behind such a key begins; None where a line has none."""
    read = with_value_key(text, line)
    return None if read is line or len(read.elements) < _KEY_AND_VALUE else read.elements[1].start
