"""Lists in which a letter or number stands before each place, and the features behind it."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line


def feature_column(text: str, lines: Sequence[Line]) -> int:
    """The column in which the features stand behind lettered places, the leftmost of them."""
    columns = [
        behind[0].start - line.start
        for line in lines
        if len(line.elements) > 2 and line.elements[0].kind == "label"
        if line.elements[1].kind in PLACES
        if (behind := [e for e in line.elements[2:] if tells(text, e)])
    ]
    return min(columns, default=0)


def is_listed(lines: Sequence[Line]) -> bool:
    """Whether the places that open an item have a letter or number before them."""
    led = [
        line
        for line in lines
        if len(line.elements) > 1
        and line.elements[0].kind == "label"
        and line.elements[1].kind in PLACES
    ]
    return len(led) > 1


def has_letter(item: Item) -> bool:
    """Whether a letter stands before the first place of an item."""
    return bool(item.groups and item.groups[0].places and item.groups[0].places[0].label)
