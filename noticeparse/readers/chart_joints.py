"""What stands between the numbers of two charts in a head: `802 + 803`, `802 to 804`."""

from __future__ import annotations

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


def range_between(
    text: str, before: HeadPart | None, part: HeadPart, following: HeadPart | None
) -> str | None:
    """The words of a range where `to` joins two chart numbers."""
    if before is None or following is None or part.text.lower() != "to":
        return None
    joined = before.kind == following.kind == "CHART_NUMBER"
    return text[before.start : following.end] if joined else None
