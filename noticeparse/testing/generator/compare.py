"""Holds what a reader found against the truth, value by value.

Takes any records shaped like the output contract; a difference is told in words, with its line.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from noticeparse.testing.generator.truth import Action, Depth, Feature, Light, Truth


def differences(bulletin: Any, truth: Truth) -> list[str]:
    """All differences between the records of a bulletin and its truth; none where it is exact."""
    return list(_notices(bulletin, truth))


def light_differences(got: Any, want: Light) -> Iterator[str]:
    """All differences between the record of a light and the light that was written."""
    return _light("light", got, want)


def depth_differences(got: Any, want: Depth) -> Iterator[str]:
    """All differences between the record of a depth and the depth that was written."""
    return _depth("depth", got, want)


def _notices(bulletin: Any, truth: Truth) -> Iterator[str]:
    found = {notice.id: notice for notice in bulletin.notices}
    if len(found) != len(bulletin.notices):
        yield "a notice number stands twice"
    wanted = {notice.id for notice in truth.notices}
    yield from (f"notice {one} is not in the text" for one in found if one not in wanted)
    for notice in truth.notices:
        got = found.get(notice.id)
        if got is None:
            yield f"line {notice.line}: notice {notice.id} is missing"
            continue
        yield from _unlike(f"line {notice.line}: status", got.status, notice.status)
        charts = [section.chart for section in got.charts]
        yield from _unlike(f"line {notice.line}: charts", charts, notice.charts)
        yield from _unlike(f"line {notice.line}: regions", got.regions, notice.regions)
        yield from _unlike(f"line {notice.line}: subjects", got.subjects, notice.subjects)
        cancels = [
            f"{one.number}({one.status[0].upper()})/{(one.year or 0) % 100}" for one in got.cancels
        ]
        yield from _unlike(f"line {notice.line}: cancels", cancels, notice.cancels)
        actions = [(one.chart, action) for one in got.charts for action in one.actions]
        yield from _actions(notice.id, actions, notice.actions)


def _actions(notice: str, got: list[tuple[Any, Any]], wanted: list[Action]) -> Iterator[str]:
    if len(got) != len(wanted):
        lines = sorted({one.line for one in wanted} ^ {action.span.line for _, action in got})
        yield f"notice {notice}: {len(got)} actions for {len(wanted)}; lines {lines}"
        return
    for (chart, action), want in zip(got, wanted, strict=True):
        for what in _action(chart, action, want):
            yield f"line {want.line}: {what}"


def _action(chart: Any, got: Any, want: Action) -> Iterator[str]:
    yield from _unlike("chart", chart, want.chart)
    yield from _unlike("line", got.span.line, want.line)
    yield from _unlike("verb", got.verb, want.verb)
    if got.verb != want.verb:
        return
    geometry = got.geometry
    yield from _unlike("usable", got.usable, True)
    yield from _unlike("shape", geometry.shape, want.shape)
    yield from _unlike("relation", geometry.relation, want.relation)
    yield from _unlike("direction", geometry.direction, want.direction)
    yield from _unlike("radius", geometry.radius_nm, want.radius_nm)
    positions = [position.exact() for position in geometry.positions]
    yield from _unlike("positions", positions, [point.exact() for point in want.points])
    yield from _feature("feature", got.feature, want.feature)
    if want.destination is not None:
        ends = [position.exact() for position in got.destination.positions]
        yield from _unlike("destination", ends, [want.destination.exact()])
    if want.replacement is not None:
        yield from _feature("replacement", got.replacement, want.replacement)
    if want.verb == "amend":
        yield from _changes(got, want)


def _feature(name: str, got: Any, want: Feature) -> Iterator[str]:
    yield from _unlike(f"{name} kind", got.kind, want.kind)
    yield from _unlike(f"{name} s57", got.s57, list(want.s57))
    yield from _unlike(f"{name} name", got.name, want.name)
    yield from _unlike(f"{name} legend", got.legend, want.legend)
    yield from _unlike(f"{name} colours", got.colours, list(want.colours))
    yield from _unlike(f"{name} shape", got.shape, want.shape)
    yield from _unlike(f"{name} status", got.status, list(want.status))
    clearance = got.clearance.value_m if got.clearance else None
    yield from _unlike(f"{name} clearance", clearance, want.clearance_m)
    companions = [one.feature.kind for one in got.companions]
    yield from _unlike(f"{name} companions", companions, list(want.companions))
    yield from _light(f"{name} light", got.light, want.light)
    yield from _depth(f"{name} depth", got.depth, want.depth)


def _light(name: str, got: Any, want: Light | None) -> Iterator[str]:
    if got is None or want is None:
        yield from _unlike(name, got, want)
        return
    same = (
        ("rhythm", got.rhythm, want.rhythm),
        ("alternating", got.alternating, want.is_alternating),
        ("groups", got.groups, list(want.groups)),
        ("morse", got.morse, want.morse),
        ("colours", got.colours, list(want.colours)),
        ("colour stated", got.colour_stated, want.is_colour_stated),
        ("period", got.period_s, want.period_s),
        ("elevation", got.elevation_m, want.elevation_m),
        ("ranges", got.ranges_nm, list(want.ranges_nm)),
        ("range by colour", got.range_by_colour, dict(want.range_by_colour)),
        ("vertical", got.vertical, want.is_vertical),
        ("count", got.count, want.count),
    )
    for what, one, other in same:
        yield from _unlike(f"{name} {what}", one, other)
    sectors = [(one.colour, one.from_deg, one.to_deg) for one in got.sectors]
    yield from _unlike(f"{name} sectors", sectors, [tuple(one) for one in want.sectors])


def _depth(name: str, got: Any, want: Depth | None) -> Iterator[str]:
    if got is None or want is None:
        yield from _unlike(name, got, want)
        return
    yield from _unlike(f"{name} value", got.value_m, want.value_m)
    yield from _unlike(f"{name} unit", got.unit, want.unit)
    yield from _unlike(f"{name} kind", got.kind, want.kind)


def _changes(got: Any, want: Action) -> Iterator[str]:
    properties = [change.property for change in got.changes]
    wanted = [change.property for change in want.changes]
    if properties != wanted:
        yield f"changes {properties} for {wanted}"
        return
    for change, other in zip(got.changes, want.changes, strict=True):
        if isinstance(other.new, Light):
            yield from _light("new light", change.new, other.new)
        elif isinstance(other.new, Depth):
            yield from _depth("new depth", change.new, other.new)
        else:
            yield from _unlike("new value", change.new, _listed(other.new))
        if other.old is not None:
            yield from _unlike("old value", change.old, _listed(other.old))


def _listed(value: Any) -> Any:
    return list(value) if isinstance(value, tuple) else value


def _unlike(name: str, got: Any, want: Any) -> Iterator[str]:
    if got != want:
        yield f"{name} is {_short(got)}, not {_short(want)}"


def _short(value: Any) -> str:
    words = repr(value)
    return words if len(words) <= 160 else words[:157] + "..."
