"""Lines that are told by their two ends in words that otherwise lead to something else.

`leading line 045° from P to Q` has its bearing before `from`, and P is no reference of another
place; `breakwater, P to Q` and `pipeline, P - Q - R` run through what they name; `limit joining P
and Q` has its feature in the words of the relation.
"""

from __future__ import annotations

import re
from itertools import pairwise

from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.readers.places import Part, Split, read_phrase
from noticeparse.stretch import gather
from noticeparse.vocabulary import kinds, primitives

_BEARING_FROM = re.compile(r",? ?from$", re.IGNORECASE)
_LIMIT = re.compile(r"(?:the )?limits?(?=,? (?:joining|bounded by))", re.IGNORECASE)
_LEADS_TO = re.compile(r"[ ,]*(?:to|until)\b", re.IGNORECASE)
_RUNS_TO = re.compile(r"[ ,\n]*to[ \n]*(?:position )?", re.IGNORECASE)
_RUNS_ON = re.compile(r"[ ,]*to[ ]*(?:position )?| ?[-–—→]{1,2}>? ?", re.IGNORECASE)
_VIA = re.compile(
    r"[ ,]{0,3}(?:and )?(?:(?:passing|running) )?(?:via|through|by way of)\b", re.IGNORECASE
)
_ENDS = re.compile(r"(?:^|[ ,\n])(?:and|&|to)(?:[ \n]|$)", re.IGNORECASE)


def goes_back(context: Context, item: Item) -> bool:
    """Whether a place that is told behind both ends of a line lies between them.

    `from P to Q via R`, and `joining P and Q, passing through R`.
    """
    before: list[tuple[int, int]] = []
    for group in item.groups:
        if _VIA.match(gather(context.text, group.lead).text) and len(before) > 1:
            (_, end), (start, _) = before[-2:]
            if _ENDS.search(context.text[end:start]):
                return True
        before += sorted((place.element.start, place.element.end) for place in group.places)
    return False


def with_feature_of_limit(words: str, split: Split) -> Split:
    """`limit joining`: the limit is the feature, and only what follows is the relation."""
    limit = _LIMIT.match(words) if not split.description_end else None
    return split if limit is None else _cut(words, limit.end(), limit.end())


def with_bearing_told(context: Context, item: Item, words: str, split: Split, kind: str) -> Split:
    """`leading line 045° from` before the first of two ends: the bearing is that of the line."""
    first = split.parts[0] if split.parts else None
    if first is None or first.kind != "offset" or "L" not in primitives(kind):
        return split
    goes_on = any(
        _LEADS_TO.match(gather(context.text, group.lead).text) for group in item.groups[1:]
    )
    leads = _BEARING_FROM.search(words[first.start : first.end])
    if first.value is None or first.value.distance_nm is not None or leads is None or not goes_on:
        return split
    at = first.start + leads.start()
    return _cut(words, at, at)


def _cut(words: str, end: int, at: int) -> Split:
    """A description that ends at `end`, and the parts of what stands from `at` on."""
    parts = (
        Part(one.kind, one.start + at, one.end + at, one.value) for one in read_phrase(words[at:])
    )
    return Split(end, tuple(part for part in parts if part.kind != "separator" or part.start > at))


def runs_between(context: Context, item: Item, kind: str) -> bool:
    """Whether nothing but `to`, or dashes, stands between the places of a thing that is a line.

    What is a point as well is one only where it is built along a line, as a breakwater is.
    """
    places = sorted((place.element.start, place.element.end) for place in item.places)
    joints = [context.text[end:start] for (_, end), (start, _) in pairwise(places)]
    if not joints or not _is_line(kind):
        return False
    return all(map(_RUNS_ON.fullmatch, joints)) or (
        len(joints) == 1 and _RUNS_TO.fullmatch(joints[0]) is not None
    )


def _is_line(kind: str) -> bool:
    drawn = primitives(kind)
    known = kinds().get(kind)
    is_built = known is not None and known.s57 == "SLCONS"
    return "L" in drawn and ("A" not in drawn or is_built)
