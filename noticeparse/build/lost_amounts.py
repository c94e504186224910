"""Units whose figure is lost or garbled: `vertical clearance  metres`, `swept to lS.S metres`.

A depth, clearance or radius that is not read leaves a thing that looks whole (common practice, no
published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal

from noticeparse.build.extents import over, within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch, unquoted

_UNIT = r"(?:(?-i:m)|met(?:re|er)s?|feet|ft|fathoms?|fms?)(?![A-Za-z])"
_GARBLED = r"(?:[.…?*#_■-]{1,6}|(?-i:[SOZBIlo]{1,3}(?:[.,][SOZBIlo0-9]{1,3})?(?=\s))|[₀-₉])"
_NAMED = (
    r"(?:clearance|height|elevation|(?:least |swept |drying |charted )?depth|sounding|dries"
    r"|swept|dredged|maintained|cleared)(?:,? (?:of|to|at))?"
)
_LOST = re.compile(
    rf"\b{_NAMED}:?\s{{1,4}}(?:{_GARBLED}\s?)?{_UNIT}"
    rf"|(?:(?<=,)\s?|^){_GARBLED}\s?{_UNIT}(?![ ](?:of|in)\b)",
    re.IGNORECASE,
)
_RADIUS = re.compile(
    r"\bradius(?: of)?:? ?[0-9]{1,5}(?:[.,][0-9]{1,3})? ?"
    r"(?!(?:m|met(?:re|er)s?|mtrs?|miles?)(?![A-Za-z_]|\.\.))(?:m[a-z_.]{1,12}|_)",
    re.IGNORECASE,
)
_SMALLEST_RADIUS_NM = Decimal("0.0027")
"""Five metres: no circle of a chart is so small, and `0.5 m` may be 0.5 mile (from memory)."""


def lost_amounts(
    context: Context, item: Item, words: Stretch, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """A fault where words name a unit and tell no figure, and for a radius that is no length."""
    plain = unquoted(words.text)
    found = _LOST.search(plain) if feature.legend is None else None
    if found is not None:
        yield within(context, "depth-unread", words, found.span())
    leads = [piece for group in item.groups for piece in group.lead]
    pieces = sorted({*item.words, *leads, *item.tail})
    is_tiny = geometry.radius_nm is not None and geometry.radius_nm < _SMALLEST_RADIUS_NM
    if is_tiny or any(_RADIUS.search(context.text[start:end]) for start, end in pieces):
        yield over(context, item, "circle-without-radius")
