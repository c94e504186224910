"""What the words of an item say of a line, and its places do not.

`cable joining wellhead P` has its other end elsewhere, `cables joining P, Q and R, S` are two,
`seaward of a line joining P and Q` is no area between these, and what is moved `120m SW from P
to Q` lay at P.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Place
from noticeparse.numbers import COUNT_WORDS
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import unquoted
from noticeparse.vocabulary import primitives

_JOINS = re.compile(r"\b(?:joining|connecting|linking)\b", re.IGNORECASE)
_TO_SHORE = re.compile(
    r"^\W*(?:and )?(?:then(?:ce)? )?(?:on )?(?:to|towards|as far as|until) (?:the |its )?"
    r"(?:nearest )?(?:shore|coast|land|beach|mainland|bank|low water|high water)",
    re.IGNORECASE,
)
_BESIDE_A_LINE = re.compile(
    r"\b(?:(?i:seaward|landward|shoreward|inshore|offshore|(?:north|south|east|west)[a-z-]*)"
    r"|[NSEW]{1,3}) of (?i:(?:a |the |this )?(?:straight )?line)\b"
)
"""The side of a line on which an area lies: how far it reaches is not said."""
_ON_A_LINE = re.compile(
    r"\bon (?:an? |the |this )?(?:straight )?line(?: (?:through|drawn|between|from))?\W*$",
    re.IGNORECASE,
)
"""A thing lies somewhere on the line through the places, and not at each: `wreck on line P, Q`."""
_SEVERAL = re.compile(
    r"\b(?:two|three|four|both|several)\b|\b(?:cables|pipelines|lines|tracks|routes|limits)\b",
    re.IGNORECASE,
)
_PARTS = re.compile(r";|\band\b", re.IGNORECASE)
_FAR = (
    rf"\b(?:[0-9][0-9.,]{{0,6}}|(?i:half an?|an?|one|{'|'.join(COUNT_WORDS)}))"
    r" ?(?:m|M|met(?:re|er)s?|(?:nautical )?miles?|cables?)\b"
)
_TRUE = r"[0-9]{1,3}(?:\.[0-9])?°(?: ?\(?T\)?)?"
_MOVED_BY = re.compile(
    r"^(?!.*\bfrom\b.*\bfrom\b).*"
    rf"(?:{_FAR},? (?:to the )?(?:[A-Za-z-]{{1,12}}|{_TRUE})|{_TRUE},? (?:and |at )?{_FAR}),? from"
    r"\W*(?:to\W*)?$"
)
"""How far and which way a thing is moved, before where it was: `120m SW from P to Q`."""
_FEWEST_PLACES = 4
"""Places of two lines."""


def lines_told(
    context: Context, item: Item, verb: Verb, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """The fault of an item whose words tell another line than its places make."""
    if feature.legend is not None or not geometry.positions:
        return
    leads = [piece for group in item.groups for piece in group.lead]
    own = unquoted(" ".join(context.text[a:b] for a, b in sorted({*item.words, *leads})))
    behind = unquoted(" ".join(context.text[a:b] for a, b in item.tail))
    is_alone = geometry.shape == "point"
    if is_alone and (_JOINS.search(own) or _leads_to_shore(behind, feature)):
        yield over(context, item, "geometry-too-few-positions", shape="line")
    elif _BESIDE_A_LINE.search(own) or _are_no_line(geometry, own):
        yield over(context, item, "shape-not-as-told")
    elif _are_several(context.text, item, geometry, f"{own} {behind}"):
        yield over(context, item, "lines-in-one")
    elif verb == "move" and geometry.relation == "from_reference" and _MOVED_BY.match(own):
        yield over(context, item, "move-distance-unclear")


def _are_no_line(geometry: Geometry, words: str) -> bool:
    """Whether several places of a thing are told to make a line, and are read one by one."""
    if geometry.shape != "points":
        return False
    is_on = geometry.relation == "at" and _ON_A_LINE.search(words) is not None
    return is_on or _JOINS.search(words) is not None


def _leads_to_shore(behind: str, feature: Feature) -> bool:
    return "L" in primitives(feature.kind) and _TO_SHORE.match(behind) is not None


def _are_several(text: str, item: Item, geometry: Geometry, words: str) -> bool:
    """Whether the places are parted as those of several lines: `P, Q and R, S`."""
    places = item.places
    if geometry.shape not in ("line", "area") or len(places) < _FEWEST_PLACES:
        return False
    parted = [_is_parted(text, one, other) for one, other in pairwise(places)]
    # `P; Q; R and S`: what stands between all of them parts none from the others.
    if all(parted[:-1]) or not any(parted[1:-1]):
        return False
    return _SEVERAL.search(words) is not None or parted.count(True) == 1


def _is_parted(text: str, place: Place, following: Place) -> bool:
    return _PARTS.search(text, place.element.end, following.element.start) is not None
