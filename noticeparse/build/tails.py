"""What stands behind the last place of an item: a radius, the bearings of an arc, a second fix.

`in P, from 045° to 135°` makes an arc of a circle; `P (2.4 miles 137° from Quill Point)` tells the
place again.  The other words are handed back to the description.
"""

from __future__ import annotations

import re
from decimal import Decimal

from noticeparse.build.relations import Found, take_parts
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.offsets import length_nm
from noticeparse.readers.places import Part, is_connector, radius_words, read_phrase
from noticeparse.readers.positions import quality_mark
from noticeparse.records.geometry import Arc
from noticeparse.records.position import Position, PositionQuality
from noticeparse.stretch import Stretch, gather
from noticeparse.vocabulary import primitives

_DEGREES = r"(?P<{}>[0-9]{{1,3}}(?:\.[0-9]{{1,2}})?)°(?! ?[0-9]) ?(?:\(?T\)?(?![A-Za-z])|true)?"
_SENSE = r"(?P<{}>(?:anti-?|counter-?)?clockwise )?"
_ARC = re.compile(
    r"(?:,\s*)?(?:lying )?" + _SENSE.format("first") + r"(?:between|from)(?: the)?"
    r"(?: (?:true )?bearings?)?(?: of)? " + _DEGREES.format("start") + r",? "
    + _SENSE.format("second") + r"(?:through [^,;]{1,20} )?(?:and|to|-) "
    + _DEGREES.format("end") + r"(?P<third> (?:anti-?|counter-?)?clockwise)?",
    re.IGNORECASE,
)  # fmt: skip
_BRACKETS = re.compile(r"\(([^()\"]*)\)")
_ON_SAME_AXIS = Rare(
    r"\bsame (?:parallel|meridian|latitude|longitude|lat\.?|long\.?) (?:as|of|with)\b",
    "same",
    re.IGNORECASE,
)
_OFF_A_THING = Rare(r"\bclose off (?:the )?[a-z-]+(?: head)? ?\Z", "close")
_LEADS = frozenset({"close", "offset", "centred"})


def take_tail(context: Context, found: Found, item: Item) -> Stretch:
    """Radius, bearings and a second fix behind the last place; other words are handed back."""
    rest: list[tuple[int, int]] = []
    if item.radius is not None:
        words = radius_words(context.text[slice(*item.radius)])
        take_parts(found, read_phrase(words), words)
    for start, end in item.tail:
        words = context.text[start:end]
        parts = read_phrase(words)
        telling = tuple(part for part in parts if part.kind in ("radius", "bearings", "ring"))
        take_parts(found, telling, words)
        arc = take_arc(found, words)
        if arc is not None:
            rest += [(start, start + arc[0]), (start + arc[1], end)]
        elif telling:
            rest += [
                (start + part.start, start + part.end) for part in parts if part.kind == "words"
            ]
        elif _takes_fix(found, words):
            continue
        elif quality_mark(words) or not is_connector(words) or _leads_on(words, item, end):
            rest.append((start, end))
    return gather(context.text, [piece for piece in rest if piece[0] < piece[1]])


def _leads_on(words: str, item: Item, end: int) -> bool:
    """Whether words lead to what is told on the next line: `… in P to` above `Fl(3)W.15s`."""
    return words.strip(" ,").lower() == "to" and end < item.tail[-1][0]


def take_arc(found: Found, words: str) -> tuple[int, int] | None:
    """The stretch of words that bounds a circle by two bearings, noted in `found`."""
    if found.radius_nm is None or found.arc is not None:
        return None
    match = _ARC.search(words)
    if match is None:
        return None
    said = (match["first"] or match["second"] or match["third"] or "").lower()
    sense = None
    if said:
        sense = "anticlockwise" if said.strip().startswith(("anti", "counter")) else "clockwise"
    found.arc = Arc(
        from_deg=Decimal(match["start"]),
        to_deg=Decimal(match["end"]),
        sense=sense,  # type: ignore[arg-type]
        bearings="not_stated",
    )
    return match.span()


def _takes_fix(found: Found, words: str) -> bool:
    """Whether words are a bearing and distance from something named, kept beside the position."""
    inner = words.strip(" ,.()")
    if found.offset is not None or not found.positions:
        return False
    parts = read_phrase(inner)
    if len(parts) != 2 or parts[0].kind != "offset" or parts[1].kind != "words":
        return False
    found.offset = parts[0].value
    found.offset_text = inner[parts[1].start : parts[1].end]
    return True


def leads_nowhere(words: str, behind: str) -> bool:
    """Whether a relation stands where no place follows: `P, close N of.`, `(close N of) P`.

    `close off pierhead P`: whether P is the place of the pierhead or of the feature is not said.
    `on the same parallel as P` tells one half of a place, and not which the other is.
    """
    if _OFF_A_THING.search(words) or _ON_SAME_AXIS.search(words):
        return True
    return any(_ends_in_relation(one) for one in (behind, *_BRACKETS.findall(words)))


def _ends_in_relation(words: str) -> bool:
    parts = [part for part in read_phrase(words.strip(" .,()")) if part.kind != "separator"]
    return bool(parts) and parts[-1].kind in _LEADS


_QUALITIES: tuple[tuple[re.Pattern[str], PositionQuality], ...] = (
    (
        re.compile(r"\b(?:approx|estimated|dead reckoning|dr\b|about)", re.IGNORECASE),
        "approximate",
    ),
    (re.compile(r"\bdoubtful\b", re.IGNORECASE), "doubtful"),
    (re.compile(r"\breported\b", re.IGNORECASE), "reported"),
)


def told_quality(positions: list[Position], parts: tuple[Part, ...], text: str) -> list[Position]:
    """Positions with the quality that the words in front give them: `in approximate position`."""
    words = [text[part.start : part.end] for part in parts if part.kind == "at"]
    found = next((mark for sign, mark in _QUALITIES for one in words if sign.search(one)), None)
    if found is None:
        return positions
    return [one if one.quality else one.model_copy(update={"quality": found}) for one in positions]


_ZONE_OF = re.compile(
    r"^(?:a |an |the |new )?(?:circular )?(?P<first>[0-9]{2,4} ?(?:m|met(?:re|er)s?))"
    r"(?: wide| radius)? safety zone\b"
    r"|\bsafety zone,? (?:of )?(?P<last>[0-9]{2,4} ?(?:m|met(?:re|er)s?))(?![a-z])",
    re.IGNORECASE,
)
"""The breadth of a safety zone is measured from what it protects."""


def settle_within(found: Found, kind: str, says_limit: bool, words: str) -> None:
    """`within 500m of P` is a circle for an area; a wreck lies somewhere in it.

    So are `500m safety zone, P` and a zone of any radius `around P`.
    """
    zone = _ZONE_OF.search(words) if kind == "safety_zone" and found.radius_nm is None else None
    if zone is not None and found.relation in ("at", "centred_on", "vicinity"):
        found.radius_nm = length_nm(zone["first"] or zone["last"])
    is_area = says_limit or "P" not in primitives(kind)
    is_around = found.relation == "vicinity" and found.radius_nm is not None and is_area
    if "within_of" in found.kinds:
        found.relation = "centred_on" if is_area else "vicinity"
    elif is_around and "A" in primitives(kind):
        found.relation = "centred_on"
