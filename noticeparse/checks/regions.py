"""Lateral marks that follow another region of buoyage than the one asked for, or than the others.

In region A red is left to port, in region B green; all else is the same.  A notice lies in one
region: where no region is given, its marks are held against each other.
Source: IALA Maritime Buoyage System, lateral marks.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import Literal, NamedTuple

from noticeparse.checks.features import features_of, trouble_of
from noticeparse.checks.lateral_marks import hue_of, lateral_of
from noticeparse.checks.marks import is_of_no_kind
from noticeparse.checks.trouble import Placed, Trouble, actions_of
from noticeparse.records.feature import Feature
from noticeparse.records.notice import Notice

Region = Literal["A", "B"]

_HANDS = {"can": "port", "conical": "starboard"}


class _Mark(NamedTuple):
    placed: Placed
    name: str
    hue: str
    region: str


def check_regions(notice: Notice, region: Region | None) -> Iterator[Trouble]:
    """Marks whose side and colour go together in the other region only."""
    marks = list(_marks(notice))
    if not marks:
        return
    expected = region or _usual(marks)
    told: set[tuple[str, str]] = set()
    for mark in marks:
        if mark.region != expected and (mark.placed.pointer, mark.name) not in told:
            told.add((mark.placed.pointer, mark.name))
            values = {"mark": mark.name, "written": mark.hue}
            values |= {"region": mark.region, "other": expected}
            yield trouble_of("mark-region", mark.placed, **values)


def _usual(marks: list[_Mark]) -> str:
    """The region of most marks, of the first where both have as many."""
    return Counter(mark.region for mark in marks).most_common(1)[0][0]


def _marks(notice: Notice) -> Iterator[_Mark]:
    for placed in actions_of(notice):
        for feature in features_of(placed.action):
            hand, name = _hand_of(feature)
            hue = hue_of(feature) if hand else None
            if hue is not None:
                region = "A" if (hand, hue) in (("port", "red"), ("starboard", "green")) else "B"
                yield _Mark(placed, name, hue, region)


def _hand_of(feature: Feature) -> tuple[str, str]:
    """The hand of a lateral mark and its name, told by words or by shape and paint; else empty."""
    mark = lateral_of(feature)
    if mark is not None and mark.side is not None:
        return mark.side.hand, mark.name
    painted = feature.colours in (["red"], ["green"])
    if mark is None and painted and is_of_no_kind(feature) and feature.shape in _HANDS:
        return _HANDS[feature.shape], feature.shape
    return "", ""
