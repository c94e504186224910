"""Places of several lines under one feature, which are no one line through all of them.

`cables between P and Q and between R and S` are two cables, and so are `pipelines joining P and Q,
R and S`, also on lines of their own; one line would run from the end of the first to the
beginning of the second.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.records.geometry import Geometry

_FEWEST = 4
_BEGINS_ANEW = re.compile(r"\b(?:between|joining|connecting|from)\b", re.IGNORECASE)
_AND = re.compile(r"(?:^|[ ,;.\n])(?:and|&)(?:[ \n]|$)", re.IGNORECASE)
_LISTS = re.compile(r"[,;]")


def pairs_of_places(context: Context, item: Item, geometry: Geometry) -> Iterator[Fault]:
    """A fault where the words between the places of a line part them into several lines."""
    if geometry.shape != "line" or len(geometry.positions) < _FEWEST:
        return
    places = sorted((place.element.start, place.element.end) for place in item.places)
    joints = [context.text[end:start] for (_, end), (start, _) in pairwise(places)]
    anew = any(_BEGINS_ANEW.search(joint) for joint in joints[1:])
    ended = next((at for at, joint in enumerate(joints) if _AND.search(joint)), len(joints))
    goes_on = any(_LISTS.search(joint) and not _AND.search(joint) for joint in joints[ended + 1 :])
    if anew or goes_on or any(map(_parts_lines, joints, joints[1:], joints[2:])):
        yield over(context, item, "relation-unclear")


def _parts_lines(before: str, joint: str, behind: str) -> bool:
    """Whether a bare line end parts two pairs: `P and Q`, and on the next line `R and S`."""
    is_bare = "\n" in joint and not joint.strip()
    return is_bare and all(_AND.search(one) for one in (before, behind))
