"""A second thing in the words of an item: the one of a clause, or one joined by `and`, `also`.

`the buoy that marked the wreck` is the buoy; `the buoy and the beacon` are two, of which the
record of one action holds one.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import OPEN_END
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, leads_feature, read_feature, value_property
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import DANGERS, kinds

_CLAUSE = Rare(
    r"(?<![a-z-])(?:which|that|whose|formerly|previously|used to|intended to|to) "
    r"(?:an? |the |this |also |once |was |is |had |has ){0,3}(?:mark|guard|protect|indicat|carr"
    r"|show|l(?:ay|ie)|stand|stood|support|cover|serv|denot)[a-z]* (?:an? |the )?"
    r"(?P<other>[^,;]+)",
    "carr cover denot guard indicat lay lie mark protect serv show stand stood support",
)
_JOINED = re.compile(
    r"(?<![a-z-])(?:(?P<adds>(?:and )?(?:also|plus|besides|including|as well as|in addition to"
    r"|(?:together|along) with)|\+|&)|and) "
    r"(?P<article>(?:the|an?|another|one) )?(?P<other>[^,;]+)",
    re.IGNORECASE,
)
# `a wreck buoy` is a buoy; `a wreck starboard-hand buoy` are two things without a joint.
_RUN_ON = Rare(
    r"\b(?:wreck|rock|obstruction|shoal|stump|depth|foul ground)s? "
    r"(?!(?:light-?|lighted )?(?:buoy|beacon|mark)s?\b)(?P<other>[A-Za-z][^,;]+)",
    "depth ground obstruction rock shoal stump wreck",
    re.IGNORECASE,
)
_GOES_WITH = frozenset({"TOPMAR", "LIGHTS", "FOGSIG", "RTPBCN", "RADSTA", "RETRFL", "SOUNDG", ""})


def second_thing(text: str, feature: Feature) -> tuple[int, int] | None:
    """The stretch of a second thing that the record does not hold, or holds for the first."""
    for found in _CLAUSE.finditer(text):
        first = text[: found.start()]
        if not has_kind(first) or not has_kind(found["other"]):
            continue
        if read_feature(first).feature.kind != feature.kind:
            return found.span("other")
    own_kind = kinds().get(feature.kind)
    is_mark = any(one.startswith(("BOY", "BCN")) for one in feature.s57[:1])
    for found in _RUN_ON.finditer(text):
        if is_mark and read_feature(found["other"]).feature.kind == feature.kind:
            return found.span("other")
    for found in _JOINED.finditer(text):
        first, other = text[: found.start()], found["other"]
        if not (has_kind(first) and leads_feature(other)):
            continue
        second = read_feature(other).feature
        known = kinds().get(second.kind)
        has_form = known is not None and bool(known.form)
        own = set(second.s57[:1]) - _GOES_WITH
        is_danger = own <= DANGERS and DANGERS.issuperset(feature.s57[:1] or [""])
        adds = (
            found["article"]
            or found["adds"]
            or (has_form and own_kind is not None and bool(own_kind.form))
        )
        if (own or has_form) and (adds or (is_danger and own != {*feature.s57[:1]})):
            return found.span("other")
    return None


def thing_on_next_line(text: str, pieces: Sequence[Piece]) -> Piece | None:
    """The piece of an item's words that names another thing below one that is whole."""
    for above, below in pairwise(pieces):
        first, second = text[pieces[0][0] : above[1]].strip(), text[slice(*below)].strip()
        if "\n" not in text[above[1] : below[0]] or first[-1:] in ",;:-(":
            continue
        if first.count('"') % 2:
            # Within quotes a name goes on: `beacon, "Drayle` and below it `Rock"`.
            continue
        if first.rpartition(" ")[2].lower() in OPEN_END or not _names_thing(second):
            continue
        if not has_kind(first) or _is_alike(
            read_feature(first).feature, read_feature(second).feature
        ):
            continue
        return below
    return None


def thing_behind_semicolon(text: str, pieces: Sequence[Piece], places: int) -> Piece | None:
    """The piece of an item's words that names a thing of the same kind anew: `wreck; wreck`.

    `rock A; rock B` at two places is one thing at each of them.
    """
    if 1 < places == len(pieces):
        return None
    for above, below in pairwise(pieces):
        first, second = text[slice(*above)], text[slice(*below)]
        if text[above[1] : below[0]].strip() != ";" or not _names_thing(second):
            continue
        one, other = read_feature(first).feature, read_feature(second).feature
        # The record of a light keeps further ones.
        if has_kind(first) and _is_alike(one, other) and one.kind != "light":
            return below
    return None


def _names_thing(words: str) -> bool:
    return "kind" in value_property(words) and leads_feature(words)


def _is_alike(one: Feature, other: Feature) -> bool:
    """Whether two things are of one class, or both marks: the second may say more of the first."""
    forms = [kinds()[each.kind].form for each in (one, other) if each.kind in kinds()]
    return one.s57[:1] == other.s57[:1] or (len(forms) > 1 and all(forms))
