"""Words of an item that tell another shape than the one its places make.

`semi-circular zone, radius 500m` is no whole circle, `within 500m of a line joining P and Q` no
circle round each end, `wreck in safety zone radius 500m` no round wreck, and `breakwater extending
200m NE from P` does not lie 200 metres off.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import unquoted
from noticeparse.vocabulary import kinds, primitives

_QUARTER = r"(?:north|south|east|west|[NSEW]{1,2}\b)[a-z-]*"
_HALF = re.compile(
    r"\bsemi-? ?circ(?:le|ular)|\bhalf[- ](?:a |of (?:a |the )?)?circ(?:le|ular)"
    rf"|\b(?:half|quadrant|quarter|segment|sector|part) of (?:a |the )?circle\b"
    rf"|\b{_QUARTER} (?:half|quadrant|semi-?circle)\b"
    r"|\b(?:quarter|three[- ]quarters?|third|part|partial)[- ](?:of (?:a |the )?)?circ(?:le|ular)",
    re.IGNORECASE,
)
"""A part of a circle; what is bounded by bearings is read as an arc."""
_SECTOR = re.compile(
    r"\b(?:sector|quadrant|segment|wedge)s?\b"
    r"|[0-9]{1,3}(?:\.[0-9])?° ?(?:\(?T\)? ?)?(?:-|to|and|through|clockwise to) ?"
    r"[0-9]{1,3}(?:\.[0-9])?°",
    re.IGNORECASE,
)
"""What is left of a circle between two bearings: `sector 030°-120°, radius 0.5M`."""
_ARC = re.compile(r"\barcs?\b(?! of (?:visibility|light|illumination|obscur))", re.IGNORECASE)
_OFF_A_LINE = re.compile(r"\bof (?:a|the) (?:[a-z]+ )?line\b|\b(?:either|each|both) sides? of\b")
_IN_ANOTHER = re.compile(
    r"\b(?:in|inside|within|surrounded by|enclosed (?:by|in)|marked by|with) "
    r"(?:an? |the )?(?:[a-z-]+ ){0,2}(?:zone|area|circle|limit)\b",
    re.IGNORECASE,
)
_REACHES = re.compile(
    r"\b(?:extending|extends|stretching|stretches|running|runs|leading|leads|reaching|projecting)"
    r"(?: out| for| about| to the| approximately){0,2} (?:[0-9½¼¾a]|[NSEW]{1,3}\b)"
)
_SHORE_BOUND = re.compile(
    r"\b(?:bounded|enclosed|delimited|limited|formed) (?:by|between) (?:the |a |an )?"
    r"(?:[a-z]+ )?(?:coast|coastline|shore|shoreline|bank|quay|line|arc|parallel|meridian)\b",
    re.IGNORECASE,
)
_LEAVES_OUT = re.compile(
    r"\b(?:excluding|except(?:ing)?|with the exception of|not including|save for) "
    r"(?:for )?(?:the |that |any )?(?:area|part|portion|waters|stretch|section|strip)s?\b",
    re.IGNORECASE,
)
_ONE_SIDE = re.compile(
    r"\b(?:(?i:(?:north|south|east|west)[a-z-]*|seaward|landward|shoreward|upper|lower)"
    r"|[NSEW]{1,3}) (?i:limits?|edges?|boundar(?:y|ies)|sides?|borders?) (?:of|to|line)\b"
)
"""One side of an area, drawn as a line: `northern limit of fairway joining`."""
_SIZE = re.compile(
    r"(?<![0-9.])(?P<before>[0-9][0-9.]{0,8}) ?(?:m|met(?:re|er)s?) (?:square|wide|long"
    r"|x (?=[0-9])|in (?:diameter|length|width))\b"
    r"|\b(?:squares?|sides?|diameter|width|length) (?:of |with (?:a )?sides? of )?"
    r"(?P<behind>[0-9][0-9.]{0,8})",
    re.IGNORECASE,
)
_RADIUS = re.compile(
    r"\bradius(?: of)?:? ?(?:about )?[0-9½¼¾]|[0-9½¼¾] ?(?:m|met(?:re|er)s?|miles?|cables?) radius"
    r"|\bcircle of (?:about )?[0-9][0-9.,]* ?(?:m|met(?:re|er)s?|n\.?m\.?|(?:nautical )?miles?"
    r"|cables?)\b(?! (?:radius|diameter))"
    r"|(?<!with )(?<!with a )\b[0-9]{2,4} ?(?:m|met(?:re|er)s?) (?:wide )?(?:[a-z]+ )?zone\b",
    re.IGNORECASE,
)
"""How far an area reaches: without it the circle is a point, its middle told in other words."""
_RINGED = re.compile(
    r"\b(?:with|within|in) (?:an? )?[^,;]{0,30}\b(?:contour|zone|circle|area|limit) around\b",
    re.IGNORECASE,
)
"""What lies around is not the thing: `shoal with 10m contour around P`."""
_FEWEST_CORNERS = 3
_AN_AREA = re.compile(r"\b(?:area|zone|ground|farm|field|haven|anchorage)\b", re.IGNORECASE)

_RUNS = re.compile(
    r"\b(?:pipe-?lines?|(?:training|sea|river) ?walls?|breakwater|causeway|boom|bridge|limit"
    r"|boundary)(?![a-z-])(?! (?:light|lt|buoy|beacon|marker|post|pile|tower|mark)s?\b)",
    re.IGNORECASE,
)
"""One thing that runs from place to place, though S-57 may draw it as a point."""
_AND = re.compile(r"[ ,]*(?:and|&|;)(?: also)?(?: (?:in|at)(?: positions?)?)?\s*", re.IGNORECASE)
_TO = re.compile(r"[ ,\n]*(?:to|as far as|until)[ \n]*", re.IGNORECASE)
_MIDDLE = re.compile(r"\b(?:centre|center|middle) ?-?line\b", re.IGNORECASE)
_SEVERAL = re.compile(r"\b(?:cables|lines|routes|tracks|contours)(?![a-z-])", re.IGNORECASE)


def shapes_told(
    context: Context, item: Item, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """The fault of an item whose words tell a shape that is not read."""
    words = " ".join(context.text[start:end] for start, end in _own(item))
    text = unquoted(words.replace("\n", " "))
    if feature.legend is not None:
        return
    is_ringed = geometry.relation == "vicinity" and _RINGED.search(text) is not None
    if is_ringed or _is_other(text, feature, geometry):
        yield over(context, item, "shape-not-as-told")
    count = len(geometry.positions)
    if count >= _FEWEST_CORNERS and _has_corners_untold(feature, geometry):
        yield over(context, item, "area-of-points", count=str(count))
    elif count > 1 and _has_ends_untold(context, item, feature, geometry):
        yield over(context, item, "line-of-points", count=str(count))


def _has_corners_untold(feature: Feature, geometry: Geometry) -> bool:
    """Whether one thing that is drawn as an area stands at places that no word joins."""
    is_plain = geometry.shape == "points" and geometry.relation == "at"
    return (
        is_plain and "A" in primitives(feature.kind) and _AN_AREA.search(feature.text) is not None
    )


def _has_ends_untold(context: Context, item: Item, feature: Feature, geometry: Geometry) -> bool:
    """Whether one thing that is drawn as a line stands at places that no word joins, or several.

    S-57 knows no point for a cable: one at several places is a line, and only several cables, or
    one at `P and Q`, may be more.
    """
    if geometry.relation != "at" or geometry.shape not in ("points", "line"):
        return False
    words = feature.text.partition(",")[0]
    places = sorted((place.element.start, place.element.end) for place in item.places)
    joints = [context.text[end:start] for (_, end), (start, _) in pairwise(places)]
    if geometry.shape == "line":
        is_listed = bool(joints) and all(_AND.fullmatch(joint) for joint in joints)
        return is_listed or _SEVERAL.search(words) is not None
    drawn = primitives(feature.kind)
    runs = _RUNS.search(words) or _MIDDLE.search(feature.text) or any(map(_TO.fullmatch, joints))
    return (not drawn or "L" in drawn or "A" in drawn) and bool(runs)


def _own(item: Item) -> list[tuple[int, int]]:
    leads = [piece for group in item.groups for piece in group.lead]
    return sorted({*item.words, *leads, *item.tail})


def _is_other(text: str, feature: Feature, geometry: Geometry) -> bool:
    shape = geometry.shape
    is_alone = shape in ("point", "points", "circle")
    if geometry.relation in ("close", "from_reference") and _REACHES.search(text):
        return is_alone
    if is_alone and feature.depth is not None and _is_size(text, feature.depth.written):
        return True
    if not _may_be_area(feature):
        return False
    is_drawn = shape == "circle" and geometry.radius_nm is not None
    if is_alone and not is_drawn and _RADIUS.search(text):
        return True
    if not is_alone and _LEAVES_OUT.search(text):
        return True
    if shape == "area" and _ONE_SIDE.search(text):
        return True
    if is_alone and (_HALF.search(text) or _SHORE_BOUND.search(text)):
        return True
    if shape != "arc" and _ARC.search(text):
        # `limit, the arc of a circle of radius 2 miles`: where it begins and ends is lost.
        return True
    if shape != "circle":
        return False
    joins = len(geometry.positions) > 1 and re.search(r"\b(?:joining|between)\b", text)
    in_another = _IN_ANOTHER.search(text) and "P" in primitives(feature.kind)
    return bool(_SECTOR.search(text) or joins or in_another or _OFF_A_LINE.search(text))


def _is_size(text: str, depth: str) -> bool:
    """Whether the figure read as a depth is the length of a side, or across: `200m square`."""
    figures = (found["before"] or found["behind"] for found in _SIZE.finditer(text))
    return any(depth.startswith(figure) for figure in figures)


def _may_be_area(feature: Feature) -> bool:
    """Whether the words can be those of its extent: a mark has none, nor a light."""
    known = kinds().get(feature.kind)
    drawn = primitives(feature.kind)
    return not (known is not None and known.form) and (not drawn or bool(drawn & {"A", "L"}))
