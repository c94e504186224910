"""Coordinates beside the places of an item that went into none of them.

A corner with a small letter for its hemisphere, or one that breaks off, leaves a line or area
that looks whole: `46°50'.81s., 125°17'.07w.` behind two places that are read.  The items they
stand with are held back (common practice, no published source).
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Sequence
from itertools import zip_longest

from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.stretch import unquoted

_UNREAD = re.compile(
    r"(?<![0-9.])[0-9]{1,3}° ?[0-9]{1,2}(?:['.]{1,2}[0-9]{0,4}['\"]{0,2}| [0-9]{1,2}[\"'])"
    r" ?[nsew](?![A-Za-z])"
    r"|(?<=\n)[ \t]{0,60}[0-9]{1,3}° ?[0-9]{0,2}['.]?[0-9]{0,2}[ \t]{0,20}(?=\n|\Z)"
    # `46?41,00?S`, and `47 O0.00     126 18.75` in a row of nothing else.
    r"|(?<![0-9.])[0-9]{1,3}[?#~^@%$!■□�_*]{1,2} ?[0-9]{1,2}[^\s\w]{1,3}"
    r"[0-9]{0,4}[^\s\w;|]{0,2} ?[NSEW](?![A-Za-z])"
    r"|(?<=\n)[ \t;|]{0,120}(?=[0-9 .,\t]{0,20}[OolISBZ?])[0-9OolI?]{2} [0-9OolISBZ?]{2}[.,]"
    r"[0-9OolISBZ?]{1,4}[ \t;|]{1,40}[0-9OolI?]{2,3} [0-9OolISBZ?]{2}[.,][0-9OolISBZ?]{1,4}"
    r"[ \t]{0,20}(?=\n|\Z)"
    r"|(?<=\n)[ \t;|]{0,120}[0-9]{2} [0-9]{2}[.,][0-9]{1,4}[ \t;|]{1,40}"
    r"(?=[0-9 .,\t]{0,20}[OolISBZ?])[0-9OolI?]{2,3} [0-9OolISBZ?]{2}[.,][0-9OolISBZ?]{1,4}"
    r"[ \t]{0,20}(?=\n|\Z)"
)
"""A coordinate with a small letter or a sign for its own; one that its line breaks off within.

In a column a row that has letters for figures is none, and is left as well.
"""
_FARTHEST = 400
"""Characters behind an item within which the rest of its list stands."""


_NEXT = re.compile(r"\n[ \t]{0,80}(?:\n|[A-Za-z]{3})")
"""The end of a list of places: a blank line, or one that opens with a word."""


def _end_of_list(text: str, end: int) -> int:
    """Where the lines end on which more places of an item may stand."""
    limit = min(end + _FARTHEST, len(text))
    following = _NEXT.search(text, end, limit)
    if following is not None:
        return following.start() + 1
    return limit if limit == len(text) else max(end, text.rfind("\n", end, limit) + 1)


def hold_back_unread(context: Context, items: Sequence[Item]) -> None:
    """Give the items of a chart section, in text order, an error where a coordinate is left."""
    read = sorted(
        (place.element.start, place.element.end) for item in items for place in item.places
    )
    starts = [start for start, _ in read]
    for item, below in zip_longest(items, items[1:]):
        if item.verb is None:
            continue
        start, end = item_extent(item)
        stop = _end_of_list(context.text, end)
        if below is not None:
            stop = max(end, min(stop, item_extent(below)[0]))
        for found in _UNREAD.finditer(unquoted(context.text[start:stop])):
            at = (start + found.start(), start + found.end())
            before = bisect_left(starts, at[1])
            if not before or read[before - 1][1] <= at[0]:
                item.faults.append(quoting(context, "position-unreadable", at))
                break
