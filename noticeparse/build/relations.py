"""The relation words before the places of an item, gathered place by place."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from decimal import Decimal

from noticeparse.readers.offsets import Offset as OffsetWords
from noticeparse.readers.places import Part
from noticeparse.records.geometry import Arc, Relation
from noticeparse.records.position import Position

RELATIONS: dict[str, Relation] = {
    "joining": "joining", "bounded": "within", "within": "within", "centred": "centred_on",
    "between": "between", "vicinity": "vicinity", "along": "joining", "close": "close",
}  # fmt: skip
# `½ mile`, `half a mile`, `300ft`, `20 m` before `NE of`; a depth says that it is one.
_DISTANCE_BEFORE = re.compile(
    r"(?<!depth )(?<!depth of )(?<!height )(?<!clearance )(?<!elevation )"
    r"(?:\b[0-9]+(?:[.,][0-9]+)?|[½¼¾]"
    r"|\b(?:half|quarter|one|two|three|four|five|six|few|several|some|couple of|a)"
    r"(?: an?)?)"
    r"[½¼¾]? ?(?:nautical )?(?:miles?|cables?|met(?:re|er)s?|feet|foot|ft|yards?|m|n\.?m|ca?|cbls?"
    r"|km)\.? (?:to the )?$",
    re.IGNORECASE,
)
# Before a distance that is only the last part of one (`1 mile N and`, `0.5 to`), or that lost its
# first figure (`.5 miles`).
_PART_BEFORE = re.compile(
    r"[0-9½¼¾] ?(?:nautical )?(?:miles?|cables?|n\.?m\.?)(?: (?:to the )?[A-Za-z-]{1,10})?"
    r"(?:,|,? and)? ?$|[0-9½¼¾] ?(?:to|or|-|–) ?$|(?:^| )[.,]$",
    re.IGNORECASE,
)
_BOUND_BEFORE = re.compile(
    r"(?<![a-z-])(?:within|inside|up to|out to|as far as|at (?:the )?(?:least|most)|over|under"
    r"|beyond|exceeding|in excess of|(?:no |not )?(?:more|less|further|farther|nearer|closer) than"
    r"|max(?:imum)?\.?|min(?:imum)?\.?)(?: a distance of)?"
    r"(?: about| approximately)? ?$",
    re.IGNORECASE,
)
"""Before a distance that only bounds where a thing lies: `within 0.5M S of`."""
_ROUGH = re.compile(
    r"(?<![a-z-])(?:about|approx(?:imately)?\.?|some|nearly|roughly|around|circa)$", re.I
)
"""Before a distance, or at its beginning: the place worked out is approximate."""


@dataclass
class Found:
    """What the groups of an item say, gathered in order."""

    kinds: list[str] = field(default_factory=list)
    positions: list[Position] = field(default_factory=list)
    destination: list[Position] = field(default_factory=list)
    relation: Relation = "at"
    direction: str | None = None
    radius_nm: Decimal | None = None
    arc: Arc | None = None
    offset: OffsetWords | None = None
    offset_text: str | None = None
    offset_reference: Position | None = None
    is_from_to: bool = False
    """Whether one place is led by `from` and a later one by `to`."""
    is_taken_from: bool = False
    """Whether words such as `withdrawn from position` give its own place, not a reference."""
    leads_on: bool = False
    """Whether a place that is not the first stands behind a `to`, and no `from` stands before."""
    leads_on_below: bool = False
    """Whether that `to` opens a line."""
    lost_distance: bool = False
    """Whether words of a distance stand before `NE of`, so that the place is a reference."""
    is_unclear: bool = False
    """Whether words before a distance or a direction show that it is only a part of one."""
    is_rough: bool = False
    """Whether the distance is told as about so far."""
    counts: list[int] = field(default_factory=list)
    """What counts the places, each in its own row: `corner 1`, `corner 2`."""
    is_ring: bool = False
    has_places: bool = False
    has_lost_place: bool = False
    """Whether a place could not be read, and a fault says so."""


def take_parts(found: Found, parts: tuple[Part, ...], text: str) -> bool:
    """Note what relation parts say; True where the coming place is an offset's reference."""
    is_reference = False
    after_comma = False
    for part in parts:
        kind = part.kind
        if kind == "offset":
            found.offset = part.value
            before = text[: part.start]
            found.is_unclear |= bool(_PART_BEFORE.search(before) or _BOUND_BEFORE.search(before))
            opening = text[: part.start + len(text[part.start : part.end].split(" ")[0])]
            found.is_rough |= bool(_ROUGH.search(before.rstrip()) or _ROUGH.search(opening))
            is_reference = True
            after_comma = False
        elif kind == "words" and is_reference:
            found.offset_text = text[part.start : part.end]
        elif kind == "separator":
            after_comma = text[part.start : part.end] == ","
            continue
        elif kind == "at":
            # `from the light, in P`: P is the feature's own; `from the light in P`: the light's.
            if is_reference and after_comma:
                is_reference = False
        elif kind in ("radius", "within_of"):
            found.radius_nm = part.value
        elif kind == "bearings":
            found.arc = part.value
        elif kind == "counted":
            found.counts.append(part.value.number)
            counted = "bounded" if part.value.is_corner else "numbered"
            found.relation = RELATIONS.get(counted, found.relation)
            found.kinds.append(counted)
        elif kind == "close":
            found.lost_distance = found.lost_distance or bool(
                _DISTANCE_BEFORE.search(text[: part.start])
                and not text[part.start : part.end].lower().startswith(("close", "very"))
            )
            # `close N and NE of`: of two directions neither is the one.
            is_second = found.direction is not None and part.value != found.direction
            found.is_unclear |= is_second and "close" in found.kinds[-1:]
            found.direction = part.value
            found.relation = "close"
        elif kind in RELATIONS and not (kind == "between" and found.positions):
            found.relation = RELATIONS[kind]
        is_thence = kind == "to" and text[part.start : part.end].lower().startswith("thence")
        found.kinds.append("thence" if is_thence else kind)
    # `from the light, P`: whether P is the light's or the feature's own is open.
    found.is_unclear |= is_reference and after_comma and text.rstrip().endswith(",")
    # `1.2M W of the light (P)`: so it is in brackets behind what is named.
    found.is_unclear |= is_reference and bool(found.offset_text) and text.rstrip().endswith("(")
    return is_reference
