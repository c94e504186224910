"""Pieces of a relation that is not whole, left before a place: `close NE fo`, `in the vicinty of`.

The place behind them is that of a reference, and never the feature's own (common practice, no
published source).
"""

from __future__ import annotations

import re

from noticeparse.layout.drafts import Group
from noticeparse.readers.places import Part

_WITHIN = 60
_COMPASS = r"(?:[NS][NS][EW]|[EW][NS][EW]|[NS]-?[EW])"
_OF = r"(?:of|fo|0f|o ?f|[of])"
# What is named as a place may be `of` the position: `in the position of P`, `at each of P and Q`.
_TORN = re.compile(
    r"(?:\bclose(?:ly)?(?:[ ,]{1,3}[A-Za-z0-9.]{1,10}){0,3}"
    r"|\bvicin[a-z]{0,7}(?: [a-z]{1,2}){0,2}"
    rf"|\b(?:{_COMPASS}|[NSEW])[ .]{{0,2}}{_OF}"
    r"|(?<!position )(?<!place )(?<!site )(?<!location )(?<!lieu )(?<!instead )"
    r"(?<!each )\b(?:of|fo|0f))"
    r"[ ,:(]{0,4}\Z"
)
# Behind a comma letters of the compass may be a name, `special light-buoy, NE`; none leads so to
# a reference.
_COMPASS_ALONE = re.compile(rf"(?<=[a-z0-9)] ){_COMPASS}[ ,(]{{0,4}}\Z")
_COMPASS_OF_REFERENCE = re.compile(rf"(?:^|(?<=[ ,])){_COMPASS}[ ,(]{{0,4}}\Z|\b[NSEW] ?\Z")


def has_torn_relation(group: Group, parts: tuple[Part, ...], words: str) -> bool:
    """Whether the words before the places of a group end in a piece of a relation."""
    ends = [part.end for part in parts if part.kind == "words"]
    end = parts[0].start if parts and not ends else max(ends, default=len(words))
    told = words[max(end - _WITHIN, 0) : end]
    before_reference = bool(group.places) and group.places[0].element.kind == "reference"
    compass = _COMPASS_OF_REFERENCE if before_reference else _COMPASS_ALONE
    return _TORN.search(told) is not None or compass.search(told) is not None
