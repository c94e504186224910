"""Moves too long or of no length, changes that change nothing, and what comes and goes at once."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.outliers import distance_nm
from noticeparse.checks.trouble import Placed, Trouble, actions_of
from noticeparse.records.action import Action, Amend, Delete, Insert, Move, Replace
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.records.light import Light
from noticeparse.records.notice import Notice

_FAR_MOVE_NM = 10.0


def check_moves(notice: Notice) -> Iterator[Trouble]:
    """A move of more than ten miles, too far for most sheets, or a move to the same place."""
    for placed in actions_of(notice):
        action = placed.action
        if not isinstance(action, Move):
            continue
        starts, ends = _places(action.geometry), _places(action.destination)
        if starts and starts == ends:
            span = action.destination.positions[0].span
            yield Trouble("move-to-same-place", span, [placed.pointer], {}, placed.chart)
        elif len(starts) == len(ends) == 1:
            miles = distance_nm(starts[0], ends[0])
            if miles > _FAR_MOVE_NM:
                values = {"miles": f"{miles:.0f}"}
                span = action.destination.positions[0].span
                yield Trouble("move-too-far", span, [placed.pointer], values, placed.chart)


def _same_words(old: str, new: str) -> bool:
    return bool(old) and old.strip(" ,.").lower() == new.strip(" ,.").lower()


def _places(geometry: Geometry) -> list[tuple[float, float]]:
    return [(position.lat, position.lon) for position in geometry.positions]


def check_changes(notice: Notice) -> Iterator[Trouble]:
    """An amendment whose new state is the old one, or a thing that is replaced by itself."""
    for placed in actions_of(notice):
        action = placed.action
        if isinstance(action, Replace) and _same_words(
            action.feature.text, action.replacement.text
        ):
            values = {"property": "feature"}
            yield Trouble("change-of-nothing", action.span, [placed.pointer], values, placed.chart)
        if not isinstance(action, Amend):
            continue
        for change in action.changes:
            if change.old is not None and _state(change.old) == _state(change.new):
                values = {"property": change.property.replace(".", " ").replace("_", " ")}
                yield Trouble(
                    "change-of-nothing", action.span, [placed.pointer], values, placed.chart
                )


def _state(value: object) -> object:
    """A value without the words in which it was written."""
    if isinstance(value, Light):
        return value.model_copy(update={"written": ""})
    return value


def check_replaced_places(notice: Notice) -> Iterator[Trouble]:
    """One feature for another at two or more places, where a replacement has one."""
    for placed in actions_of(notice):
        action = placed.action
        if action.geometry.shape != "points":
            continue
        if isinstance(action, Replace) and len(action.geometry.positions) > 1:
            span = action.geometry.positions[1].span
            yield Trouble("replace-at-several-places", span, [placed.pointer], {}, placed.chart)


_OF_REFERENCE = frozenset({"close", "between", "vicinity"})


def check_come_and_gone(notice: Notice) -> Iterator[Trouble]:
    """What a notice inserts on a chart and deletes from it at the same place."""
    inserted: dict[tuple[object, ...], Placed] = {}
    for placed in actions_of(notice):
        if isinstance(placed.action, Insert):
            inserted.setdefault(_identity(placed), placed)
    for placed in actions_of(notice):
        if placed.action.geometry.relation in _OF_REFERENCE:
            # Close to what comes is not its place.
            continue
        if isinstance(placed.action, Delete) and _identity(placed) in inserted:
            values = {"written": placed.action.text}
            span = placed.action.span
            yield Trouble("insert-and-delete", span, [placed.pointer], values, placed.chart)


def _identity(placed: Placed) -> tuple[object, ...]:
    action: Action = placed.action
    feature: Feature = action.feature
    light = feature.light and _state(feature.light)
    depth = feature.depth.value_m if feature.depth else None
    what = (feature.kind, feature.name, feature.legend, repr(light), depth)
    where: list[object] = [*_places(action.geometry)] or [placed.pointer]
    return (placed.section, *what, *where)
