"""The features that an action names, in every state that it tells of.

In comes an action; out come its features as named, as they come, and as an amendment leaves them,
so that a check of a feature sees all of them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from noticeparse.checks.trouble import Placed, Trouble, actions_of
from noticeparse.records.action import Action, Amend, Change, Replace
from noticeparse.records.feature import Feature
from noticeparse.records.light import Light
from noticeparse.records.notice import Notice

_CHANGING = frozenset(("colours", "colour_pattern", "topmark", "depth", "name"))
"""Properties whose new value stands in the feature as it stands in the change."""


def in_each_feature(
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
        changed = amended(action.feature, action.changes)
        if changed is not action.feature:
            yield changed


def amended(feature: Feature, changes: list[Change]) -> Feature:
    """A feature with its changes, as far as its marks, light and depth go."""
    values: dict[str, object] = {}
    light = feature.light
    for change in changes:
        first, _, rest = change.property.partition(".")
        if change.property in _CHANGING:
            values[change.property] = change.new
        elif first != "light":
            continue
        elif isinstance(change.new, Light):
            light = change.new
        elif light is not None and rest in Light.model_fields:
            light = light.model_copy(update={rest: change.new})
    if light is not feature.light:
        values["light"] = light
    return feature.model_copy(update=values) if values else feature


def lights_of(feature: Feature) -> Iterator[Light]:
    """All lights of a structure."""
    if feature.light is not None:
        yield feature.light
    yield from feature.more_lights


def trouble_of(code: str, placed: Placed, **values: str) -> Trouble:
    """A trouble of a whole action."""
    return Trouble(code, placed.action.span, [placed.pointer], values, placed.chart)
