"""A phrase made of the values of a feature alone, for records whose own words do not do.

`port-hand light-buoy "Teal 2", Fl(2)R.5s`: the name of the kind, then each value in its own words.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import cache
from typing import NamedTuple

from noticeparse.canonical import figures, lights
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import kinds, phrases
from noticeparse.vocabulary.codes import Attributes

_HEADS = 8
_NAMES = {"enclosed_by": "enclosed by"}
_DEPTH_LEADS = {
    "sounding": "depth", "drying": "dries", "swept": "swept to", "dredged": "dredged to",
    "least": "least depth",
}  # fmt: skip
_QUALITY_ENDS = {
    "value reported (not surveyed)": " reported",
    "value reported (not confirmed)": " reported, not confirmed",
    "doubtful sounding": " doubtful",
    "maintained depth": " maintained",
}
_STATUS = {
    "private": "private", "occasional": "occasional", "extinguished": "extinguished",
    "existence_doubtful": "ED", "position_doubtful": "PD", "position_approximate": "PA",
    "reported": "reported", "temporary": "temporary", "destroyed": "destroyed",
    "disused": "disused",
}  # fmt: skip
_WORDS: dict[str, dict[int, str]] = {
    "WATLEV": {
        1: "partly submerged", 2: "always dry", 3: "always under water",
        4: "covers and uncovers", 5: "awash", 6: "subject to flooding",
    },
    "CONDTN": {1: "under construction", 2: "ruined", 5: "planned"},
    "CONVIS": {1: "conspicuous"},
    "CONRAD": {1: "radar conspicuous"},
}  # fmt: skip
"""Words for attributes that stand beside the kind of a feature."""
_DRIES: Attributes = {"WATLEV": 4}


class _Form(NamedTuple):
    """Where a value may stand here or there, or be told by another."""

    name_first: bool = True
    tells_status: bool = True
    colour_first: bool = False


_FORMS = (
    _Form(),
    _Form(name_first=False),
    _Form(tells_status=False),
    _Form(colour_first=True),
)


def composed(feature: Feature) -> Iterator[str]:
    """Phrases made of the values, the likeliest first."""
    if feature.kind in ("legend", "note") and feature.name is None:
        yield f'{feature.kind}, "{feature.legend}"' if feature.legend else feature.kind
        return
    for head in _heads(feature):
        for form in _FORMS:
            yield ", ".join(part for part in _parts(feature, head, form) if part)


def _parts(feature: Feature, head: str, form: _Form) -> Iterator[str]:
    name = f'"{feature.name}"' if feature.name else ""
    colours = " and ".join(feature.colours) + _pattern(feature)
    head = f"{colours} {head}" if colours and form.colour_first else head
    yield f"{head} {name}" if name and form.name_first else head
    yield "" if form.name_first else name
    yield "" if form.colour_first else colours
    yield feature.shape or ""
    yield f"topmark {feature.topmark}" if feature.topmark else ""
    every = [one for one in (feature.light, *feature.more_lights) if one is not None]
    yield " & ".join(lights.light(one) for one in every)
    yield from _aids(feature)
    yield from _amounts(feature)
    yield from _attributes(feature, head)
    yield from _statuses(feature) if form.tells_status else ()
    for companion in feature.companions:
        words = next(composed(companion.feature), companion.feature.text)
        yield f"{_NAMES.get(companion.role, companion.role)} {words}"


def _aids(feature: Feature) -> Iterator[str]:
    yield lights.sound(feature.sound) if feature.sound else ""
    yield lights.racon(feature.racon) if feature.racon and feature.kind != "racon" else ""
    yield lights.ais(feature.ais) if feature.ais and not feature.kind.startswith("ais") else ""


def _amounts(feature: Feature) -> Iterator[str]:
    is_safe = feature.clearance is not None and feature.clearance.kind == "safe"
    yield _depth(feature.depth) if feature.depth and not is_safe else ""
    yield _clearance(feature.clearance) if feature.clearance else ""
    yield f"height {figures.metres(feature.height_m)}" if feature.height_m is not None else ""


def _pattern(feature: Feature) -> str:
    return f" {feature.colour_pattern.replace('_', ' ')}" if feature.colour_pattern else ""


def _statuses(feature: Feature) -> Iterator[str]:
    for status in feature.status:
        if status == "reported" and feature.reported_year is not None:
            yield f"(rep {feature.reported_year})"
        elif status != "reported" or not (feature.depth and feature.depth.quality):
            yield _STATUS[status]


def _depth(depth: Depth) -> str:
    if depth.value_m is None:
        return "depth unknown"
    figure = figures.depth(depth.value_m, depth.unit) or ""
    if depth.kind == "contour":
        return f"{figure} contour"
    if depth.kind == "no_bottom":
        return f"depth {figure} no bottom"
    return f"{_DEPTH_LEADS[depth.kind]} {figure}{_QUALITY_ENDS.get(depth.quality or '', '')}"


def _clearance(clearance: Clearance) -> str:
    return f"{clearance.kind} clearance {figures.metres(clearance.value_m)}"


def _heads(feature: Feature) -> list[str]:
    """The phrases of a kind, those first that tell of its attributes and of nothing else."""
    if feature.kind == "racon" and feature.racon is not None:
        return [lights.racon(feature.racon)]
    is_lit = "LIGHTS" in feature.s57[1:]
    named = [_lit(phrase, feature.kind) if is_lit else phrase for phrase, _ in _of(feature.kind)]
    misses = [_misses(codes, feature.attributes) for _, codes in _of(feature.kind)]
    order = sorted(range(len(named)), key=lambda row: misses[row])
    return list(dict.fromkeys(named[row] for row in order))[:_HEADS] or [
        feature.kind.replace("_", " ")
    ]


def _lit(phrase: str, kind: str) -> str:
    known = kinds().get(kind)
    if known is None or known.form not in ("buoy", "beacon") or "light" in phrase:
        return phrase
    ahead, _, last = phrase.rpartition(" ")
    return f"{ahead} light-{last}".strip()


def _misses(codes: Attributes, wanted: Attributes) -> tuple[int, int]:
    """How many attributes a phrase tells that the record has not, and how many it leaves open."""
    strange = sum(wanted.get(name) != code for name, code in codes.items())
    return strange, len(wanted) - len(codes)


@cache
def _of(kind: str) -> tuple[tuple[str, Attributes], ...]:
    return tuple((phrase, codes) for phrase, of, codes in phrases() if of == kind)


def _attributes(feature: Feature, head: str) -> Iterator[str]:
    """Words for the attributes that neither the kind nor another value tells."""
    told = dict(kinds()[feature.kind].attributes) if feature.kind in kinds() else {}
    told |= next((codes for phrase, codes in _of(feature.kind) if phrase == head), {})
    if feature.depth is not None and feature.depth.kind == "drying":
        told |= _DRIES
    for name, code in feature.attributes.items():
        if told.get(name) == code:
            continue
        beside = _WORDS.get(name, {}).get(code) if isinstance(code, int) else None
        yield beside or _phrase_for(name, code)


@cache
def _of_one_attribute() -> Mapping[tuple[str, str], str]:
    found: dict[tuple[str, str], str] = {}
    for phrase, kind, codes in phrases():
        told = {**(kinds()[kind].attributes if kind in kinds() else {}), **codes}
        for name, code in told.items() if len(told) == 1 else ():
            found.setdefault((name, str(code)), phrase)
    return found


def _phrase_for(name: str, code: int | list[int]) -> str:
    """A phrase that tells one attribute and no other: `entry prohibited`."""
    return _of_one_attribute().get((name, str(code)), "")
