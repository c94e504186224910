"""Reads the phrase of a replacement: `A with B`, `A by B`, `B for A`.

The joint that divides the phrase is the one with a whole feature on both sides; where several
have, or none, nothing is taken and an error says so.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache, lru_cache
from typing import NamedTuple

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.amounts import ChartUnit, shown
from noticeparse.readers.features import (
    FeatureReading,
    has_kind,
    leads_feature,
    read_feature,
    value_property,
)
from noticeparse.readers.told import told_by
from noticeparse.readers.unchanged import without_the_rest
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import DANGERS, kinds

# `was examined by divers. It is replaced with …`: the joint of another sentence.
_OF_TWO_SENTENCES = re.compile(r"[a-z]\. (?:it|this|that|they|them|these)\b", re.IGNORECASE)
# What `with` adds to a feature more often than it replaces one.
_JOINTS = frozenset(("with", "by", "for", "to"))
_NEW_FIRST = ("FOR", "IN_PLACE_OF")
"""Joints before which stands what comes."""
_SAME_KIND = "one of "
_GOES_WITH = frozenset(("topmark", "radar_reflector", "retroreflector", "racon", "depth_contour"))


class SwapReading(NamedTuple):
    """`feature` goes, `replacement` comes; faults count from the start of the phrase."""

    feature: Feature
    replacement: Feature
    faults: tuple[Fault, ...]
    is_by_for: bool = False
    """Whether nothing but `for` tells which of the two comes: `exchange A for B`."""


class _Joint(NamedTuple):
    type: str
    start: int
    end: int


class _Division(NamedTuple):
    first: tuple[int, int]
    second: tuple[int, int]
    joint: _Joint


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("swap", "swap")


def _joints(text: str) -> list[_Joint]:
    found = _scanner().scan(text, 0, len(text))
    return [_Joint(*one) for one in found if one[0] in ("WITH", "BY", *_NEW_FIRST, "TO")]


@lru_cache(maxsize=4096)
def read_swap(text: str, chart_unit: ChartUnit | None = None) -> SwapReading:
    """What goes and what comes; behind `for` and `in place of` stands what goes."""
    text = without_the_rest(text)
    division = _divided(text)
    if division is None:
        return _undivided(text, chart_unit)
    is_new_first = division.joint.type in _NEW_FIRST
    goes, comes = division[1::-1] if is_new_first else division[:2]
    same = _same_thing(text[slice(*goes)], text[slice(*comes)])
    lead = "legend, " if _is_new_wording(text, division) else ""
    first = _side(text, division.first, chart_unit, same if is_new_first else "")
    second = _side(text, division.second, chart_unit, lead or ("" if is_new_first else same))
    faults = (*first.faults, *second.faults)
    old, new = (second.feature, first.feature) if is_new_first else (first.feature, second.feature)
    if _is_depth_alone(old, new):
        faults += (
            Fault("replace-by-depth-alone", *comes, {"written": shown(text[slice(*comes)])}),
        )
    return SwapReading(old, new, faults, is_by_for=division.joint.type == "FOR")


def names_both(text: str) -> bool:
    """Whether words on both sides of the joint name a kind, as a value alone does not."""
    division = _divided(text)
    return division is not None and all(has_kind(text[slice(*side)]) for side in division[:2])


# `depth of wreck to …`, `limits of area`: what changes is something of the thing.
_OF_A_THING = re.compile(r"\b(?:of|over|from)\b", re.IGNORECASE)


def things_stand_alone(text: str) -> bool:
    """Whether both sides of the joint are things, without a property or a name of theirs.

    `rock to rock awash`; not `name of rock to Wreck Point`.
    """
    division = _divided(text)
    if division is None:
        return False
    first, second = text[slice(*division.first)], text[slice(*division.second)]
    is_name = second[:1].isupper() and not second.isupper()
    is_thing = leads_feature(first) and _OF_A_THING.search(first) is None
    return is_thing and leads_feature(second) and not is_name


_LEGEND = re.compile(r"(?:the )?(?:legend|label|inscription|wording)\b")
_WORDING = re.compile(r'"[^"]{1,200}"$|[A-Z][^",;:]{1,60}$')


def _is_new_wording(text: str, division: _Division) -> bool:
    """Whether words with a capital, or in quotes, replace those of a legend.

    `legend, Works, with Marina` is another legend: in a sentence a marina has a small letter.
    """
    first, second = text[slice(*division.first)], text[slice(*division.second)]
    is_wording = _LEGEND.match(first) is not None and _WORDING.match(second) is not None
    return is_wording and read_feature(second, None).feature.kind not in ("legend", "note")


def _same_thing(goes: str, comes: str) -> str:
    """The thing that goes, where what comes tells a value of it alone; else nothing.

    `wreck, least depth 5m, by least depth 4m`, `port-hand light-buoy, Fl.R.3s, by Fl.R.5s`.
    """
    head, comma, _ = goes.partition(",")
    if not comma and (named := told_by(goes).head) is not None and named.start == 0:
        head, comma = goes[: named.end], ","  # `light-buoy Fl.R.3s with Fl.R.5s`
    if not comma or has_kind(comes) or not has_kind(head):
        return ""
    thing, roles = read_feature(head, None).feature, value_property(comes)
    is_danger = roles == {"depth"} and not DANGERS.isdisjoint(thing.s57)
    is_lit = "LIGHTS" in thing.s57 and kinds()[thing.kind].s57 != "LIGHTS"
    # `by VQ.R No 4`: the number is that of the same mark.
    is_lit &= roles == {"light"} or (roles == {"light", "numbered"} and thing.name is None)
    return f"{head}, " if is_danger or is_lit else ""


def _is_depth_alone(old: Feature, new: Feature) -> bool:
    """Whether a danger with a depth gives way to a depth: `rock, depth 2m, with depth 1.8m`."""
    is_danger = old.depth is not None and not DANGERS.isdisjoint(old.s57)
    return is_danger and new.kind == "sounding" and new.depth is not None


def _side(
    text: str, side: tuple[int, int], chart_unit: ChartUnit | None, lead: str = ""
) -> FeatureReading:
    """One side; a bare figure is a depth, since the other side names one."""
    words = text[slice(*side)]
    lead = lead or ("depth " if is_bare(words) else "")
    reading = read_feature(lead + words, chart_unit)
    moved = [fault.shifted(side[0] - len(lead)) for fault in reading.faults]
    faults = tuple(fault._replace(start=max(side[0], fault.start)) for fault in moved)
    feature = reading.feature
    if lead:
        depth = feature.depth and feature.depth.model_copy(update={"written": words.strip(" .")})
        feature = feature.model_copy(update={"text": words, "depth": depth})
    return FeatureReading(feature, faults)


def is_bare(words: str) -> bool:
    """Whether words are a figure alone, which is a depth where the other side names one."""
    roles = value_property(words)
    return bool(roles) and roles <= {"number", "measure"}


def _undivided(text: str, chart_unit: ChartUnit | None) -> SwapReading:
    """What is wrong with the whole, read as one feature, follows from this and is not told."""
    fault = Fault("swap-not-divided", 0, len(text), {"written": shown(text)})
    nothing = read_feature("", None).feature
    return SwapReading(read_feature(text, chart_unit).feature, nothing, (fault,))


# No phrase of a replacement is as long or has as many joints; each joint costs two readings.
_LONGEST = 1000
_MOST_JOINTS = 12


@lru_cache(maxsize=4096)
def _divided(text: str) -> _Division | None:
    if len(text) > _LONGEST:
        return None
    if (led := _LED_BY_FOR.match(text)) is not None:
        return _behind_comma(text, led.end())
    found = [
        division
        for joint in _joints(text)[:_MOST_JOINTS]
        if (division := _at(text, joint)) is not None
    ]
    found = _without_short_buoys(text, found)
    for types in (("BY", *_NEW_FIRST), ("WITH",), ("TO",)):
        fit = [division for division in found if division.joint.type in types]
        fit = _without_parts(text, fit) if len(fit) > 1 else fit
        if fit:
            # Two quotations on one side are two legends or names.
            one = len(fit) == 1 and not any(
                text[slice(*side)].count('"') > 2 for side in (fit[0].first, fit[0].second)
            )
            return fit[0] if one else None
    return None


def _without_short_buoys(text: str, found: list[_Division]) -> list[_Division]:
    """Those that do not part at the `BY` of a buoy: `LT BY E CARD FOR BN E CARD`."""
    ends = [one.joint.end for one in found if one.joint.type != "BY"]
    return [one for one in found if not (ends and _ends_buoy(text, one.joint, ends))]


def _ends_buoy(text: str, joint: _Joint, ends: Sequence[int]) -> bool:
    """Whether a joint is the short word for a buoy, with what is said of it in front."""
    if joint.type != "BY" or text[joint.start] != "B":
        return False
    start = max((end for end in ends if end < joint.start), default=0)
    own = text[start : joint.end].strip()
    # Right behind another joint it is the first word of what stands there.
    return own == text[joint.start : joint.end] or "buoy" in read_feature(own, None).feature.kind


_LED_BY_FOR = re.compile(r"for (?=(?:the|an?) )", re.IGNORECASE)
_NEW_BEHIND = re.compile(r", ?(?=(?:an?|the) )", re.IGNORECASE)


def _behind_comma(text: str, start: int) -> _Division | None:
    """`For the depth of 7 fathoms, a depth of 5 fathoms`, which is substituted."""
    commas = list(_NEW_BEHIND.finditer(text, start))[:_MOST_JOINTS]
    joints = (_Joint("TO", comma.start(), comma.end()) for comma in commas)
    fit = [one for joint in joints if (one := _at(text, joint, start)) is not None]
    return fit[0] if len(fit) == 1 else None


def _without_parts(text: str, fit: list[_Division]) -> list[_Division]:
    """Those that do not part a danger from its depth: `wreck with a wreck with a depth of 9m`."""
    kept = [
        one
        for one in fit
        if one.joint.type != "WITH"
        or read_feature(text[slice(*one.second)], None).feature.kind != "sounding"
        or read_feature(text[slice(*one.first)], None).feature.kind == "sounding"
    ]
    return kept or fit


def _at(text: str, joint: _Joint, start: int = 0) -> _Division | None:
    first, second = _trimmed(text, start, joint.start), _trimmed(text, joint.end, len(text))
    if text[second[0] :].lower().startswith(_SAME_KIND):
        # `the sounding of 4.8 metres by one of 4.3 metres`
        second = (second[0] + len(_SAME_KIND), second[1])
    before, after = text[slice(*first)], text[slice(*second)]
    if _OF_TWO_SENTENCES.search(before) or _OF_TWO_SENTENCES.search(after):
        return None
    if is_bare(before) != is_bare(after):
        named = after if is_bare(before) else before
        fits = _is_whole(named) and read_feature(named, None).feature.kind == "sounding"
        return _Division(first, second, joint) if fits else None
    is_legend = joint.type in ("WITH", "BY", "TO") and _LEGEND.match(before) is not None
    is_quoted = is_legend and after.count('"') == 2 and _WORDING.match(after) is not None
    if not _is_whole(before) or not (_is_whole(after) or is_quoted):
        return None
    # The light that follows a mark without its name is still a new state of it.
    if joint.type == "WITH" and read_feature(after, None).feature.kind in _GOES_WITH:
        same = read_feature(before, None).feature.kind == read_feature(after, None).feature.kind
        return _Division(first, second, joint) if same else None
    return _Division(first, second, joint)


def _is_whole(phrase: str) -> bool:
    """Whether a side of the joint stands for a feature: a kind, or a light or depth alone."""
    if leads_feature(phrase) or has_kind(phrase):
        return phrase.split()[0].lower() not in _JOINTS
    feature = read_feature(phrase, None).feature
    return feature.light is not None or feature.kind == "sounding"


def _trimmed(text: str, start: int, end: int) -> tuple[int, int]:
    while start < end and text[start] in " ,;:":
        start += 1
    while end > start and text[end - 1] in " ,;:":
        end -= 1
    return start, end
