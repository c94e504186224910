"""Numbers of the records of keys, in front of the first key or on a line of their own.

    [2]  Action: Insert              Correction 2
         Object: wreck               Action: Insert

Only where keys stand below is such a number that of a record: elsewhere it opens an item.
"""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.row.place_keys import as_key, known_key_end, opens_with_key

_ALONE = re.compile(
    r"(?:(?:correction|item|record|entry|change|amendment|action|no|nr|number|card|object)\.? ?"
    r"(?:no\.? ?)?)?[#(\[]?[0-9]{1,3}(?: ?(?:of|/) ?[0-9]{1,3})?[.:)\]]{0,2}",
    re.IGNORECASE,
)


def number_alone(text: str, line: Line, below: Line | None) -> Element | None:
    """The number of the record of keys below, where a line holds nothing else."""
    if not line.has_only("words", "label", "bar") or not opens_with_key(text, below):
        return None
    solid = [e for e in line.elements if e.kind != "bar"]
    if not solid or _ALONE.fullmatch(words_of(text, solid)) is None:
        return None
    return solid[0]._replace(end=solid[-1].end)


def with_number_apart(text: str, line: Line, below: Line | None) -> tuple[Element, Line] | None:
    """The number in front of the first key of a record, and the line without it."""
    if not line.elements or line.elements[0].kind != "label" or not opens_with_key(text, below):
        return None
    label, *behind = line.elements
    rest = line._replace(elements=tuple(behind))
    end = known_key_end(text, rest)
    return None if end is None else (label, as_key(text, rest, end))
