"""What stands between the numbers of two charts in a head: `802 + 803`, `802 to 804`."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.readers.head_values import HeadPart

JOINTS = frozenset(("+", "/", "with", "plus"))
"""What joins the numbers of charts as `and` does."""
UNSURE = frozenset(("or", "to", "et", "und", "y", "\\", "also", "resp"))
"""What stands between two charts and does not say that both are meant."""


def is_alike(text: str, before: HeadPart | None, part: HeadPart) -> bool:
    """Whether a number stands right behind another of its length: `Charts 802   803`."""
    if before is None or before.kind != part.kind or text[before.end : part.start].strip():
        return False
    return len(before.text) == len(part.text)


def is_joined(three: Sequence[HeadPart], joints: frozenset[str]) -> bool:
    """Whether one of some joints stands between two numbers of one length: `512 / 513`."""
    if len(three) < 3 or three[1].text.lower() not in joints:
        return False
    first, _, last = three
    return first.kind == last.kind == "CHART_NUMBER" and len(first.text) == len(last.text)


def tells_of_several(words: str) -> bool:
    """Whether the word for a chart is one for several: `Charts`, `Chart(s)`, `Chart Nos`."""
    return _SEVERAL.match(words) is not None


def range_between(text: str, parts: Sequence[HeadPart], at: int) -> str | None:
    """The words of a range where `to`, or a dash, joins two chart numbers and no more.

    A dash parts the charts of a list too, `Charts - 802 - 803 - 805`, and between numbers that
    follow each other it means the same both ways.
    """
    word = parts[at].text.lower()
    around = [part.kind for part in parts[max(at - 2, 0) : at + 2]]
    if word not in ("to", "-") or around[-3:] != ["CHART_NUMBER", parts[at].kind, "CHART_NUMBER"]:
        return None
    first, last = parts[at - 1], parts[at + 1]
    if word == "-":
        is_first = around[0] == "CHART_WORD" and not parts[at - 2].text.rstrip().endswith("-")
        goes_on = parts[at + 2 : at + 3] and parts[at + 2].text == "-"
        if not is_first or goes_on or not _skips(first.text, last.text):
            return None
    return text[first.start : last.end]


def _skips(first: str, last: str) -> bool:
    is_alike = first.isdecimal() and last.isdecimal() and len(first) == len(last)
    return is_alike and int(last) > int(first) + 1


_SEVERAL = re.compile(r"charts|chart\(s\)|chart/s|[^0-9]{1,40}\bnos\b", re.IGNORECASE)
