"""Words of an item that speak against carrying it out as it is read.

An item may be a whole sentence below a verb that does not hold for it, name a part or a second
feature behind a preposition, or hold a figure of which a sign was lost.  What is read then is not
what is meant, however well it reads.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from math import atan2, degrees

from noticeparse.build.carried import as_carried
from noticeparse.build.extents import over, own_words, quoting, within
from noticeparse.build.owners import owner
from noticeparse.build.second_things import (
    second_thing,
    thing_behind_semicolon,
    thing_on_next_line,
)
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.numbers import COUNT_WORDS, counted
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.readers.legends import lacks_wording
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import Stretch, blanked, unquoted
from noticeparse.vocabulary import kinds, primitives

_RELATIVE = re.compile(r"\b(?:which|that|who|whose|where)\b[^,;]*")
_OF_A_SENTENCE = Rare(
    r"\b(?:is|are|was|were|has|have|had|been|remains?|should|must|will|shall|may|advised"
    r"|requested|mariners|[Vv]essels)\b",
    "advised are been had has have is mariners may must remains requested shall "
    "should ves was were will",
)
_AGAINST = {
    "insert": Rare(
        r"\b(?:discontinued|cancelled|removed|deleted?|destroyed|withdrawn|extinguished|ex"
        r"|out of position)\b",
        "cancelled deleted destroyed discontinued ex extinguished position removed withdrawn",
        re.IGNORECASE,
    ),
    "delete": Rare(
        r"\b(?:new|(?:re-?)?established|erected|installed|inserted)\b",
        "erected established inserted new re ree",
        re.IGNORECASE,
    ),
}
"""States that contradict a verb carried down from above."""
# `R 131°-209° and to be obscured elsewhere` is said of a light as it is.
_DARK = r"(?:(?<=° to be )|(?<=° and to be )|(?<=°, to be )|(?<=°, and to be ))obscured elsewhere"
_NOT_YET = Rare(
    r"\b(?:proposed|planned|projected|on completion|when completed"
    rf"|to be (?!avoided|{_DARK})[a-z]+ed)\b",
    "be completed planned proposed when",
    re.IGNORECASE,
)
_A_DATE = re.compile(
    r"(?:[0-9]{1,2} )?(?:january|february|march|april|may|june|july|august|september|october"
    r"|november|december)\b|(?:lat|long?)\.?$",
    re.IGNORECASE,
)
"""Words of a date, or of a position, that stand where a name may."""
_COMPASS = (
    r"(?:(?:[NSEW][.-]?){1,3}|(?:to the )?(?:north|south|east|west)[a-z-]*|seaward"
    r"|inshore|landward)"
)
_SECOND = Rare(
    rf"\b(?:from|around|against|surrounding|opposite(?: to)?|adjacent to|between|close off"
    rf"|where|wherever|in sight of"
    rf"|(?:{_COMPASS}) of) "
    r"(?:the |an? )?(?P<other>[^,;]+)",
    "adjacent against around between close from of opposite sight surrounding where",
)
_ADDED_TO = Rare(r"(?<!channel )\bto (?!mark)(?:the |an? )?(?P<other>[^,;]+)", "to")
_OF = re.compile(r"(?P<first>[A-Za-z-]+(?: [A-Za-z-]+)?) of (?:the |an? )?(?P<other>[^,;]+)")
_PARTS = frozenset("part sector name clearance signal word remainder portion colour".split())
_WHOLES = frozenset("line lines limit limits area areas group row pair wreck extent edge".split())
_COUNT = re.compile(
    rf"(?:the |(?:row|line|group) of )*(?P<number>[1-9][0-9]?|{'|'.join(COUNT_WORDS)}) "
    r"(?:[a-z-]+ ){0,4}?(?!lights)[a-z-]+s\b(?! light)",
    re.IGNORECASE,
)
_LIGHTS = re.compile(
    rf"(?:the )?(?P<number>[1-9][0-9]?|{'|'.join(COUNT_WORDS)}) "
    r"(?:[a-z-]+ ){0,4}?(?:lights|lts)\b",
    re.IGNORECASE,
)
_ONE_COLOUR_EACH = re.compile(
    r"(?:white|black|red|green|yellow|blue|orange) and (?:white|black|red|green|yellow|blue"
    r"|orange) (?![^,;]*(?:strip|band|vertical|horizontal|diagonal|chequer))[^,;]*"
    r"\b(?:buoys|beacons|marks|bys|bns)\b",
    re.IGNORECASE,
)
_BEARING = re.compile(r"(?P<degrees>[0-9]{3}(?:\.[0-9])?)°")
_ROUGH_DEG = 2
_LOST_UNIT = re.compile(
    r"[0-9] ?(?:cm|dm|mm|km|')(?![A-Za-z0-9'])|\babove (?:the )?(?:sea ?bed|bottom)\b"
    r"|\bin (?:an? )?depths? of\b"
    r"|\b(?:depth|sounding)s?(?: of)? [0-9]+(?:\.[0-9]+)? ?(?:cables?|cbls?|miles?|n\.?miles?)\b"
)
_LOST_FIGURE = re.compile(
    r"(?:^|(?<= ))[.,][0-9]|[\ufffd?_|][0-9]|[0-9][.,]?[\ufffd?|]|[\ufffd?] ?[.,][0-9]"
    r"|(?<=[.0-9A-Za-z])\? ?[smM](?![A-Za-z])"
    r"|[₀-₉¼½¾⅓⅔⅛⅜⅝⅞][0-9]|[{}] "
    r"|\bNo\.? ?[0-9]{1,3} [0-9]{1,3}(?=$|,)"
)
_UNLIT = frozenset({"UWTROC", "WRECKS", "OBSTRN", "SBDARE", "LNDARE", "SLCONS"})
"""Classes of what no light is part of; what stands on it has the light."""
_NAMED = re.compile(r"(?:[A-Z][a-z'-]+ )+[A-Z][a-z]+(?:,|$| [A-Z])")
_CARRIES_LIGHT = re.compile(r"light|buoy|beacon|float|vessel|mark|tower|mast|lit\b", re.I)
_RAISED = frozenset("⁰¹²³⁴⁵⁶⁷⁸⁹")
_SMALL = frozenset("₀₁₂₃₄₅₆₇₈₉¼½¾⅓⅔⅛⅜⅝⅞")


def contradictions(
    context: Context, item: Item, words: Stretch, verb: Verb, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """What in the words of an item, quotations left out, speaks against its reading."""
    text = as_carried(verb, unquoted(words.text))
    if item.verb_piece is None and (said := _said_against(text, verb)) is not None:
        yield within(context, "sentence-under-verb", words, said.span())
    yield from _bearing_of_line(context, words, text, feature, geometry)
    is_round = geometry.shape in ("circle", "arc")
    if (is_round and not _may_be_round(feature)) or _is_line_at_point(feature, geometry):
        yield over(context, item, "relation-unclear")
    lost = _lost_figure(text)
    if lost is not None:
        yield within(context, "text-garbled", words, lost)
    if feature.depth is not None and (unit := _LOST_UNIT.search(text)) is not None:
        yield within(context, "depth-unread", words, unit.span())
    if _is_lit_by_name(feature, text):
        yield over(context, item, "feature-kinds-several")
    if verb in ("insert", "delete"):
        other = _second_feature(text, verb) or _several(text, geometry)
        other = other or second_thing(text, feature) or owner(text, feature)
        if other is not None:
            yield within(context, "feature-kinds-several", words, other)
        elif (below := _thing_apart(context.text, item)) is not None:
            yield quoting(context, "feature-kinds-several", below)
        yield from _counts(context, words, text, feature, geometry)
    elif verb == "move" and (other := owner(text, feature) or _second_mark(text, feature)):
        yield within(context, "feature-kinds-several", words, other)
    if feature.name is not None and _A_DATE.match(feature.name):
        at = text.find(feature.name)
        if at >= 0:
            yield within(context, "feature-words-unread", words, (at, at + len(feature.name)))
    is_empty = feature.kind == "legend" and feature.legend is None
    if verb == "insert" and is_empty and lacks_wording(words.text):
        yield over(context, item, "item-without-feature")
    if verb == "insert" and (later := _NOT_YET.search(text)) is not None:
        yield within(context, "feature-negated", words, later.span())


def _second_mark(text: str, feature: Feature) -> tuple[int, int] | None:
    """A second mark of a move: each has places of its own."""
    other = second_thing(text, feature)
    second = kinds().get(read_feature(text[slice(*other)]).feature.kind) if other else None
    return other if second is not None and second.form else None


def _thing_apart(text: str, item: Item) -> Piece | None:
    pieces, places = own_words(item), len(item.places)
    return thing_on_next_line(text, pieces) or thing_behind_semicolon(text, pieces, places)


def _said_against(text: str, verb: Verb) -> re.Match[str] | None:
    """What makes words a sentence, or contradicts the verb above them; clauses say less."""
    patterns = [one for one in (_OF_A_SENTENCE, _AGAINST.get(verb)) if one is not None]
    if all(one.search(text) is None for one in patterns):
        return None
    plain = blanked(text, _RELATIVE)
    return next(filter(None, (one.search(plain) for one in patterns)), None)


def _is_lit_by_name(feature: Feature, text: str) -> bool:
    """Whether `Brack Rock, Fl.5s` is the light on the rock, and no rock."""
    is_lit = feature.light is not None and _CARRIES_LIGHT.search(text) is None
    is_lit = is_lit and _NAMED.match(text) is not None
    return is_lit and feature.s57[:1] != [] and _UNLIT.issuperset(feature.s57[:1])


def _is_line_at_point(feature: Feature, geometry: Geometry) -> bool:
    """Whether what is drawn as a line has one place alone, worked out from another."""
    drawn = primitives(feature.kind)
    is_point = geometry.shape == "point" and geometry.relation == "from_reference"
    return is_point and bool(drawn) and "P" not in drawn and "A" not in drawn


def _may_be_round(feature: Feature) -> bool:
    """Whether a circle may be that of the feature: `platform with safety zone of radius 500 m`.

    It has an area in S-57, and nothing goes with it that is an area and no point.
    """
    beside = [primitives(one.feature.kind) for one in feature.companions]
    is_mark = feature.kind in kinds() and bool(kinds()[feature.kind].form)
    drawn = primitives(feature.kind)
    return not is_mark and (not drawn or "A" in drawn) and {"A"} not in beside


def _bearing_of_line(
    context: Context, words: Stretch, text: str, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """The bearing written of a leading line or track against that of its two positions."""
    is_line = not {"NAVLNE", "RECTRC"}.isdisjoint(feature.s57) and geometry.shape == "line"
    figures = list(_BEARING.finditer(text)) if is_line else []
    if len(geometry.positions) != 2 or len(figures) != 1:
        return
    from geographiclib.geodesic import Geodesic  # slow to import

    first, second = geometry.positions
    line = Geodesic.WGS84.Inverse(first.lat, first.lon, second.lat, second.lon)
    apart = abs((line["azi1"] - float(figures[0]["degrees"]) + 90) % 180 - 90)
    half_digits = degrees(atan2(2 * (first.resolution_m + second.resolution_m), line["s12"]))
    if apart > _ROUGH_DEG + half_digits:
        value = f"{line['azi1'] % 360:.1f}"
        span = figures[0].span()
        yield within(context, "line-bearing-differs", words, span, degrees=value)


def _counts(
    context: Context, words: Stretch, text: str, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """A number of features that is not that of their places: `3 yellow buoys` at two."""
    lights = _LIGHTS.match(text) if "LIGHTS" in feature.s57 else None
    found = lights or _COUNT.match(text)
    if found is None or geometry.shape not in ("point", "points") or geometry.relation != "at":
        return
    number = counted(found["number"])
    places = len(geometry.positions)
    if lights and feature.light is not None and feature.light.count == number and places == 1:
        return
    is_mark = bool(lights) or feature.kind.startswith(("buoy", "light_buoy", "beacon"))
    if places and number != places and (places > 1 or is_mark):
        span = found.span()
        yield within(context, "feature-count-differs", words, span, places=str(places))


def _lost_figure(text: str) -> tuple[int, int] | None:
    """A figure touched by a sign that stands for none: `.6m`, `1?m`, a circled 12."""
    found = _LOST_FIGURE.search(text)
    if found is not None:
        return found.span()
    if text.isascii():
        return None
    for at, char in enumerate(text):
        is_odd = not char.isascii() and unicodedata.category(char) == "No" and char not in _SMALL
        before, behind = text[at - 1 : at], text[at + 1 : at + 2]
        # A raised figure behind another is a decimetre set wrong, which is told elsewhere.
        if is_odd and (behind.isdigit() or (before.isdigit() and char not in _RAISED)):
            return at, at + 1
    return None


def _second_feature(text: str, verb: Verb) -> tuple[int, int] | None:
    """A feature behind a preposition: the first is meant, or only a part of this one."""
    patterns = (_SECOND, _ADDED_TO) if verb == "insert" else (_SECOND,)
    for pattern in patterns:
        for found in pattern.finditer(text):
            if has_kind(found["other"]):
                return found.span("other")
    for found in _OF.finditer(text) if " of " in text else ():
        last = found["first"].split()[-1].lower()
        is_part = last in _PARTS or (last not in _WHOLES and has_kind(found["first"]))
        if is_part and has_kind(found["other"]):
            return found.span("other")
    return None


def _several(text: str, geometry: Geometry) -> tuple[int, int] | None:
    """Two features, or two lights, that share several places: which has which is not said."""
    if geometry.shape != "points":
        return None
    if (each := _ONE_COLOUR_EACH.match(text)) is not None:
        return each.span()
    first, joint, second = text.partition(" and ")
    roles = value_property(second) if joint else frozenset()
    if has_kind(first) and roles & {"kind", "light"}:
        return len(first) + len(joint), len(text)
    return None
