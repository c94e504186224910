"""A second thing behind the places of an item, with a place that only words tell.

`jetty from P to Q and light, F.R, at the latter`, `light P and rear light, 0.3M 225° from front`:
the second is no part of the first, and would be taken for one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.verbs import Verb
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import gather, unquoted

_JOINT = re.compile(
    r"[ ,;:.()]*(?:and also|also|and|plus|together with|as well as|&) (?:the |its |an? )?",
    re.IGNORECASE,
)
_DISTANCE = r"[0-9]{1,4}(?:[.,][0-9]{1,3})? ?(?:M|n\.?m\.?|miles?|cables?|m|metres|meters)"
_OFFSET = re.compile(
    rf"{_DISTANCE},? (?:on )?[0-9]{{1,3}}(?:\.[0-9])?° ?\(?T?\)? ?(?:from|of)\b"
    rf"|[0-9]{{1,3}}(?:\.[0-9])?° ?\(?T?\)?,? {_DISTANCE} (?:from|of)\b"
    rf"|{_DISTANCE} (?:[NSEW]{{1,3}}|(?:north|south|east|west)[a-z-]*) (?:from|of)\b"
)
_FROM_IT = re.compile(r"[ ,]*(?:which|whence|where|there|it\b)")
_BESIDE = re.compile(
    rf"[ ,;:.()]*(?:(?:and|with|also|plus)[ ,]+)?(?:(?:close|just|immediately|{_DISTANCE})(?: to)?"
    r"(?: the)? |to the )(?:[NSEW]{1,3}|(?:north|south|east|west)[a-z-]*)[ ,:]+(?:an? |the )?"
    r"|[ ,;:.()]*(?:and|with|also|plus)[ ,]+(?:nearby|close by|alongside|adjacent)[ ,:]+"
    r"(?:an? |the )?",
    re.IGNORECASE,
)
"""`wreck P and, close N, depth 5m`: beside the place, and no depth of the wreck."""
_AT_A_PART = re.compile(
    r"\b(?:at|on|in|off) (?:(?:the|its) (?:former|latter|first|second|last)\b|(?:its|each) "
    r"(?:[a-z]+ )?(?:ends?|heads?|root|corners?)\b)",
    re.IGNORECASE,
)


def things_behind(context: Context, item: Item, verb: Verb, geometry: Geometry) -> Iterator[Fault]:
    """The fault of such a thing; what goes with a thing at one place is its own."""
    if verb not in ("insert", "delete") or not item.tail or not item.has_place:
        return
    behind = gather(context.text, item.tail)
    text = unquoted(behind.text)
    offset = _OFFSET.search(text)
    if offset is not None and _FROM_IT.match(text, offset.end()):
        # `wreck P, 010° 1.2M from which lies a rock`
        yield within(context, "feature-kinds-several", behind, (offset.start(), len(text)))
        return
    if opens_a_line(context.text, item.tail[0][0]):
        return
    beside = _BESIDE.match(text)
    if beside is not None and leads_feature(text[beside.end() :].rstrip(" .)")):
        yield within(context, "feature-kinds-several", behind, (beside.end(), len(text)))
        return
    joint = _JOINT.match(text)
    if joint is None:
        return
    other = text[joint.end() :]
    if not (has_kind(other) and leads_feature(other)):
        return
    is_long = geometry.shape in ("line", "area") or len(geometry.positions) > 1
    is_light = other.lower().startswith(("light,", "light ", "lights", "light."))
    if offset is not None or _AT_A_PART.search(other) or (is_long and is_light):
        yield within(context, "feature-kinds-several", behind, (joint.end(), len(text)))
