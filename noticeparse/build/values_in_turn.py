"""Values of several things named at once, one for each of their places.

`beacons (red, green) P, Q` are a red one and a green one, and `leading lights, front Q.R, rear
Iso.R.4s, in P and Q` two lights; read as one feature, each place would have both.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.readers.features import value_property
from noticeparse.readers.told import told_by
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch

_BRACKET = re.compile(r"\((?P<list>[^()]{3,80})\)")
_PARTS = re.compile(r" *[,;/] *")
_OF_EACH = frozenset(("colour", "shape", "topmark", "numbered", "code", "quoted", "light"))
_LIT = ("part", "light")


def values_in_turn(context: Context, words: Stretch, geometry: Geometry) -> Iterator[Fault]:
    """A fault where the words give as many values of a sort as there are places."""
    if geometry.shape != "points":
        return
    for found in _BRACKET.finditer(words.text):
        parts = _PARTS.split(found["list"])
        roles = [value_property(part) & _OF_EACH for part in parts]
        if " and " in found["list"]:
            # `(red, white and red)` are the bands of each.
            continue
        if len(parts) == len(geometry.positions) and all(roles) and len({*roles}) == 1:
            yield within(context, "feature-kinds-several", words, found.span("list"))
    items = [one for one in told_by(words.text).items if one.role in ("part", "light")]
    pairs = [light for one, light in pairwise(items) if (one.role, light.role) == _LIT]
    if len(pairs) > 1:
        second = pairs[1]
        yield within(context, "feature-kinds-several", words, (second.start, second.end))
