"""Tells whether `A for B` under the verb of an insertion puts A in the place of B.

It does where both are things of one sort: `wreck for rock`, `beacon for buoy`.  A buoy for a wreck
may mark it, and a berth for ferries is a berth.
"""

from __future__ import annotations

import re

from noticeparse.readers.features import leads_feature
from noticeparse.readers.swaps import read_swap
from noticeparse.vocabulary import DANGERS, kinds

_FOR = re.compile(r" for ", re.IGNORECASE)
_WRITINGS = ("legend", "note")
_MARKS = ("buoy", "beacon")


def puts_one_for_other(text: str) -> bool:
    """Whether a phrase names two things of one sort with `for` between them."""
    if _FOR.search(text) is None:
        return False
    swap = read_swap(text)
    sides = swap.feature, swap.replacement
    if not swap.is_by_for or not all(leads_feature(side.text) for side in sides):
        return False
    sorts = {_sort_of(side.kind) for side in sides}
    return len(sorts) == 1 and "" not in sorts


def _sort_of(kind: str) -> str:
    """Danger, mark or depth, or what is written on the chart; nothing for other things."""
    known = kinds().get(kind)
    if kind in _WRITINGS:
        return "writing"
    if known is None:
        return ""
    if known.s57 in DANGERS:
        return "danger"
    return "mark" if known.form in _MARKS else "depth" if known.s57 == "SOUNDG" else ""
