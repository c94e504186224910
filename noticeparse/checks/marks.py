"""Marks whose colours, topmark and light disagree (IALA Maritime Buoyage System)."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import NamedTuple

from noticeparse.checks.trouble import Placed, Trouble, actions_of
from noticeparse.records.action import Action, Amend, Replace
from noticeparse.records.feature import Feature
from noticeparse.records.light import Light
from noticeparse.records.notice import Notice

_QUARTERS = {1: "north", 2: "east", 3: "south", 4: "west"}


class _Rule(NamedTuple):
    groups: tuple[int, ...]
    periods: dict[str, int]
    topmark: int
    colours: tuple[str, ...]


# IALA Maritime Buoyage System, cardinal marks: groups, period by rhythm, S-57 TOPSHP, bands.
_CARDINAL = {
    1: _Rule((), {}, 13, ("black", "yellow")),
    2: _Rule((3,), {"Q": 10, "VQ": 5}, 11, ("black", "yellow", "black")),
    3: _Rule((6,), {"Q+LFl": 15, "VQ+LFl": 10, "Q": 15, "VQ": 10}, 14, ("yellow", "black")),
    4: _Rule((9,), {"Q": 15, "VQ": 10}, 10, ("yellow", "black", "yellow")),
}


def check_cardinal_marks(notice: Notice) -> Iterator[Trouble]:
    """A cardinal mark with the light, topmark or bands of another quarter, or of no quarter."""
    yield from _each(notice, _mark)


def check_other_marks(notice: Notice) -> Iterator[Trouble]:
    """Isolated danger, safe water and special marks with a light that such marks do not show."""
    yield from _each(notice, _other_mark)


def _each(
    notice: Notice, check: Callable[[Placed, Feature], Iterator[Trouble]]
) -> Iterator[Trouble]:
    """What a check finds in all features, once where a change leaves it as it was."""
    for placed in actions_of(notice):
        told: list[Trouble] = []
        for feature in features_of(placed.action):
            told += [trouble for trouble in check(placed, feature) if trouble not in told]
        yield from told


def features_of(action: Action) -> Iterator[Feature]:
    """The features of an action: as named, as they come, and as an amendment leaves them."""
    yield action.feature
    if isinstance(action, Replace):
        yield action.replacement
    if isinstance(action, Amend):
        light = action.feature.light
        for change in action.changes:
            first, _, rest = change.property.partition(".")
            if first != "light":
                continue
            if isinstance(change.new, Light):
                light = change.new
            elif light is not None and rest in Light.model_fields:
                light = light.model_copy(update={rest: change.new})
        if light is not action.feature.light:
            yield action.feature.model_copy(update={"light": light})


def _lights_of(feature: Feature) -> Iterator[Light]:
    if feature.light is not None:
        yield feature.light
    yield from feature.more_lights


def _other_mark(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    kind = feature.kind.partition("_")[2]
    for light in _lights_of(feature):
        if kind in _SHOWS and not _SHOWS[kind](light):
            values = {"mark": kind.replace("_", " "), "written": light.written}
            yield _trouble("mark-light", placed, values)


def _is_white(light: Light) -> bool:
    return set(light.colours) == {"W"}


# IALA Maritime Buoyage System: the rhythms of marks that are neither lateral nor cardinal.
_SHOWS: dict[str, Callable[[Light], bool]] = {
    "isolated_danger": lambda light: (
        _is_white(light) and light.rhythm == "Fl" and light.groups == [2]
    ),
    "safe_water": lambda light: (
        _is_white(light) and (light.rhythm in ("Iso", "Oc", "LFl") or light.morse == "A")
    ),
    "special": lambda light: "W" not in light.colours or not light.colour_stated,
}


def _mark(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    quarter = feature.attributes.get("CATCAM")
    if not isinstance(quarter, int) or quarter not in _CARDINAL:
        return
    rule = _CARDINAL[quarter]
    name = _QUARTERS[quarter]
    for light in _lights_of(feature):
        if not _suits(light, rule, quarter):
            values = {"quarter": name, "written": light.written}
            yield _trouble("mark-cardinal-light", placed, values)
    topmark = feature.attributes.get("TOPSHP")
    if isinstance(topmark, int) and topmark != rule.topmark:
        values = {"quarter": name, "written": feature.topmark or ""}
        yield _trouble("mark-cardinal-topmark", placed, values)
    # One colour alone may be the first word of a short description; a strange one may not.
    bands = len(feature.colours) > 1 and tuple(feature.colours) != rule.colours
    if bands or not set(feature.colours) <= set(rule.colours):
        values = {"quarter": name, "written": " ".join(feature.colours)}
        yield _trouble("mark-cardinal-colours", placed, values)


def _trouble(code: str, placed: Placed, values: dict[str, str]) -> Trouble:
    return Trouble(code, placed.action.span, [placed.pointer], values, placed.chart)


def _suits(light: Light, rule: _Rule, quarter: int) -> bool:
    if set(light.colours) != {"W"}:
        return False
    if quarter == 1:
        return light.rhythm in ("Q", "VQ") and not light.groups
    period = rule.periods.get(light.rhythm)
    if period is None or tuple(light.groups) != rule.groups:
        return False
    return light.period_s is None or light.period_s == period
