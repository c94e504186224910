"""Cardinal, isolated danger, safe water, special and wreck marks whose parts disagree.

In comes a notice; out come troubles of marks whose colours, topmark or light are not those of
their kind: IALA Maritime Buoyage System; INT 1 section Q 130.  A part that is not stated is no
fault: charts leave out what the kind implies.  Lateral marks are checked elsewhere.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import NamedTuple

from noticeparse.checks.features import in_each_feature, lights_of, trouble_of
from noticeparse.checks.trouble import Placed, Trouble
from noticeparse.records.feature import Feature
from noticeparse.records.light import Light
from noticeparse.records.notice import Notice
from noticeparse.vocabulary import kinds

_QUARTERS = {1: "north", 2: "east", 3: "south", 4: "west"}


class _Rule(NamedTuple):
    groups: tuple[int, ...]
    periods: dict[str, int]
    topmark: str
    colours: tuple[str, ...]


# IALA Maritime Buoyage System, cardinal marks: groups, period by rhythm, topmark, bands.  The
# south mark is told from the others by its long flash.
_CARDINAL = {
    1: _Rule((), {}, "2 cones, points up", ("black", "yellow")),
    2: _Rule((3,), {"Q": 10, "VQ": 5}, "2 cones, base to base", ("black", "yellow", "black")),
    3: _Rule((6,), {"Q+LFl": 15, "VQ+LFl": 10}, "2 cones, points down", ("yellow", "black")),
    4: _Rule((9,), {"Q": 15, "VQ": 10}, "2 cones, point to point", ("yellow", "black", "yellow")),
}
_CARDINAL_CLASSES = frozenset(("BOYCAR", "BCNCAR"))


def check_cardinal_marks(notice: Notice) -> Iterator[Trouble]:
    """A cardinal mark with the light, topmark or bands of another quarter, or of no quarter."""
    yield from in_each_feature(notice, _cardinal)


def check_other_marks(notice: Notice) -> Iterator[Trouble]:
    """Isolated danger, safe water, special and wreck marks with parts that they do not have."""
    yield from in_each_feature(notice, _other)


def _cardinal(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    quarter = _quarter_of(feature)
    if quarter is None:
        if _CARDINAL_CLASSES.isdisjoint(feature.s57[:1]):
            return
        for light in lights_of(feature):
            if not any(_suits(light, one) for one in _CARDINAL):
                yield trouble_of("mark-light", placed, mark="cardinal", written=light.written)
        return
    rule, name = _CARDINAL[quarter], _QUARTERS[quarter]
    for light in lights_of(feature):
        if not _suits(light, quarter):
            yield trouble_of("mark-cardinal-light", placed, quarter=name, written=light.written)
    if feature.topmark not in (None, rule.topmark):
        written = feature.topmark or ""
        yield trouble_of("mark-cardinal-topmark", placed, quarter=name, written=written)
    # One colour alone may be the first word of a short description; a strange one may not.
    bands = len(feature.colours) > 1 and not shows_bands(feature, rule.colours)
    if bands or not set(feature.colours) <= set(rule.colours):
        written = " ".join(feature.colours)
        yield trouble_of("mark-cardinal-colours", placed, quarter=name, written=written)


def shows_bands(feature: Feature, bands: tuple[str, ...]) -> bool:
    """Whether the paint is these bands; `black with yellow band` names the third colour once."""
    colours = tuple(feature.colours)
    is_in_words = " with " in feature.text and "band" in feature.text
    return colours == bands or (is_in_words and bands == (*colours, colours[0]))


def _quarter_of(feature: Feature) -> int | None:
    """The quarter named, else the one that the bands of a mark show, else its topmark."""
    quarter = feature.attributes.get("CATCAM")
    if isinstance(quarter, int) and quarter in _CARDINAL:
        return quarter
    if _CARDINAL_CLASSES.isdisjoint(feature.s57[:1]) and not is_of_no_kind(feature):
        return None
    bands = tuple(feature.colours)
    for quarter, rule in _CARDINAL.items():
        if bands == rule.colours or (not bands and feature.topmark == rule.topmark):
            return quarter
    return None


def is_of_no_kind(feature: Feature) -> bool:
    """Whether it is a buoy or beacon of which no word tells what it marks."""
    known = kinds().get(feature.kind)
    is_mark = known is not None and known.form in ("buoy", "beacon") and not known.s57
    return is_mark and not any(name.startswith(("BOY", "BCN")) for name in feature.s57[:1])


def _suits(light: Light, quarter: int) -> bool:
    rule = _CARDINAL[quarter]
    if set(light.colours) != {"W"}:
        return False
    if quarter == 1:
        return light.rhythm in ("Q", "VQ") and not light.groups
    period = rule.periods.get(light.rhythm)
    if period is None or tuple(light.groups) != rule.groups:
        return False
    return light.period_s is None or light.period_s == period


_SPECIAL = frozenset(("odas", "outfall", "spoil_ground", "tsunami", "wave_recorder"))
"""Kinds that are special marks by another name; private buoys have paints of all sorts."""


class _Kind(NamedTuple):
    shows: Callable[[Light], bool]
    has_paint: Callable[[Feature], bool]
    topmark: str


def _other(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    name = feature.kind.partition("_")[2]
    name = "special" if name in _SPECIAL else name
    kind = _KINDS.get(name)
    if kind is None:
        return
    mark = name.replace("_", " ")
    for light in lights_of(feature):
        if not kind.shows(light):
            yield trouble_of("mark-light", placed, mark=mark, written=light.written)
    if feature.topmark not in (None, kind.topmark):
        written = feature.topmark or ""
        yield trouble_of("mark-topmark", placed, mark=mark, written=written)
    if feature.colours and not kind.has_paint(feature):
        yield trouble_of("mark-colours", placed, mark=mark, written=_paint(feature))


def _paint(feature: Feature) -> str:
    words = " ".join(feature.colours)
    pattern = feature.colour_pattern
    return f"{words}, {pattern.replace('_', ' ')}" if pattern else words


def _is_white(light: Light) -> bool:
    return set(light.colours) == {"W"}


def _shows_safe_water(light: Light) -> bool:
    if light.rhythm == "LFl":
        return _is_white(light) and light.period_s in (None, 10)
    return _is_white(light) and (light.rhythm in ("Iso", "Oc") or light.morse == "A")


def _has_danger_bands(feature: Feature) -> bool:
    colours = feature.colours
    # From the top down the bands begin with black; two colours in words have no order.
    begins = len(colours) < 3 or colours[0] == "black"
    return set(colours) <= {"black", "red"} and begins and not _stands(feature)


def _has_safe_stripes(feature: Feature) -> bool:
    return set(feature.colours) <= {"red", "white"} and not _lies(feature)


def _has_wreck_stripes(feature: Feature) -> bool:
    return set(feature.colours) <= {"blue", "yellow"} and not _lies(feature)


def _stands(feature: Feature) -> bool:
    return feature.colour_pattern == "vertical_stripes"


def _lies(feature: Feature) -> bool:
    return feature.colour_pattern == "horizontal_stripes"


# IALA Maritime Buoyage System: lights, paint and topmark of marks neither lateral nor cardinal.
_KINDS = {
    "isolated_danger": _Kind(
        lambda light: _is_white(light) and light.rhythm == "Fl" and light.groups == [2],
        _has_danger_bands,
        "2 spheres",
    ),
    "safe_water": _Kind(_shows_safe_water, _has_safe_stripes, "sphere"),
    # Old lists say nothing of the colour; a stated one is yellow, written amber here and there.
    "special": _Kind(
        lambda light: set(light.colours) <= {"Y", "Am"} or not light.colour_stated,
        lambda feature: set(feature.colours) == {"yellow"},
        "X-shape",
    ),
    "emergency_wreck": _Kind(
        lambda light: set(light.colours) == {"Bu", "Y"} and light.period_s in (None, 3),
        _has_wreck_stripes,
        "upright cross",
    ),
}
