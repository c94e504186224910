"""Lateral and preferred-channel marks whose colours, topmark, shape and light disagree.

In comes a notice; out come troubles.  Which side is red depends on the region of buoyage, so that
what is checked here holds in both: paint and light agree, a can stands on the port hand and a cone
on the starboard hand, and Fl(2+1) is shown by preferred-channel marks alone.
Source: IALA Maritime Buoyage System, lateral marks of regions A and B; INT 1 section Q 130.1.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from noticeparse.checks.features import in_each_feature, lights_of, trouble_of
from noticeparse.checks.marks import is_of_no_kind, shows_bands
from noticeparse.checks.trouble import Placed, Trouble
from noticeparse.records.feature import Feature
from noticeparse.records.light import Light
from noticeparse.records.notice import Notice

_HUES = {"R": "red", "G": "green"}
_BANDS = (("red", "green", "red"), ("green", "red", "green"))
_COMPOSITE = [2, 1]


class _Side(NamedTuple):
    hand: str
    topmarks: tuple[str, ...]
    """Cans and cones; on beacons they are boards of the same outline."""
    other_shape: str
    """The shape that only marks of the other hand have; pillars and spars serve both."""


_PORT = _Side("port", ("cylinder", "square", "rectangle vertical", "board"), "conical")
_STARBOARD = _Side("starboard", ("cone, point up", "triangle point up", "board"), "can")
_CLASSES = frozenset(("BOYLAT", "BCNLAT"))


class Lateral(NamedTuple):
    """What a lateral mark is said to be: its hand where words tell it, preferred or plain."""

    side: _Side | None
    is_preferred: bool

    @property
    def name(self) -> str:
        """As a message names it."""
        hand = f"{self.side.hand}-hand" if self.side else "lateral"
        return "preferred-channel" if self.is_preferred else hand


def lateral_of(feature: Feature) -> Lateral | None:
    """The lateral mark that words make of a feature; None for any other feature.

    A preferred-channel mark to starboard is left to port, as a port-hand mark is.
    """
    is_preferred = feature.kind == "buoy_preferred_channel"
    side = {1: _PORT, 2: _STARBOARD, 3: _PORT, 4: _STARBOARD}.get(_code(feature, "CATLAM"))
    if _code(feature, "CATLAM") in (3, 4):
        is_preferred = True
    if side is None and not is_preferred and _CLASSES.isdisjoint(feature.s57[:1]):
        return None
    return Lateral(side, is_preferred)


def _code(feature: Feature, acronym: str) -> int:
    code = feature.attributes.get(acronym)
    return code if isinstance(code, int) else 0


def hue_of(feature: Feature) -> str | None:
    """Red or green, as paint and lights of a lateral mark agree; None where they do not tell."""
    hues = {hue for light in lights_of(feature) if (hue := _hue(light)) is not None}
    if feature.colours and set(feature.colours) <= {"red", "green"}:
        # The broad band of a preferred-channel mark stands between those of its main colour.
        hues.add(feature.colours[0])
    return hues.pop() if len(hues) == 1 else None


def _hue(light: Light) -> str | None:
    return _HUES.get(light.colours[0]) if len(light.colours) == 1 else None


def check_lateral_marks(notice: Notice) -> Iterator[Trouble]:
    """Paint, light, topmark, shape and rhythm that no lateral mark of either region has."""
    yield from in_each_feature(notice, _check)


def _check(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    mark = lateral_of(feature)
    if mark is None:
        if is_of_no_kind(feature):
            yield from _check_unnamed(placed, feature)
        return
    yield from _check_paint(placed, feature, mark)
    yield from _check_lights(placed, feature, mark)
    if mark.side is not None:
        yield from _check_form(placed, feature, mark, mark.side)


def _check_unnamed(placed: Placed, feature: Feature) -> Iterator[Trouble]:
    """A mark that only its colour shows to be lateral."""
    colours = tuple(feature.colours)
    if colours in (("red",), ("green",), *_BANDS):
        mark = Lateral(None, colours in _BANDS)
        yield from _check_lights(placed, feature, mark)
        shape = {"can": _PORT, "conical": _STARBOARD}.get(feature.shape or "")
        if shape is not None and feature.topmark not in (None, *shape.topmarks):
            written = feature.topmark or ""
            name = f"{feature.shape} lateral"
            yield trouble_of("mark-lateral-topmark", placed, mark=name, written=written)


def _check_paint(placed: Placed, feature: Feature, mark: Lateral) -> Iterator[Trouble]:
    colours = tuple(feature.colours)
    written = " ".join(colours)
    if mark.is_preferred:
        # One colour alone may be the first word of a short description.
        is_banded = len(colours) < 2 or any(shows_bands(feature, bands) for bands in _BANDS)
        if not is_banded or not set(colours) <= {"red", "green"}:
            yield trouble_of("mark-preferred-colours", placed, written=written)
    elif colours and colours not in (("red",), ("green",)):
        yield trouble_of("mark-lateral-colours", placed, mark=mark.name, written=written)


def _check_lights(placed: Placed, feature: Feature, mark: Lateral) -> Iterator[Trouble]:
    paint: str | None = feature.colours[0] if feature.colours else None
    for light in lights_of(feature):
        written, hue = light.written, _hue(light)
        paint = paint or hue
        # The sectors of a light on a beacon say nothing of the mark.
        if light.colour_stated and hue is None and len(light.colours) == 1:
            yield trouble_of("mark-lateral-light", placed, mark=mark.name, written=written)
        if hue is not None and paint in _HUES.values() and paint != hue:
            yield trouble_of("mark-colour-light", placed, colour=str(paint), written=written)
        is_composite = light.rhythm == "Fl" and light.groups == _COMPOSITE
        if is_composite and not mark.is_preferred:
            yield trouble_of("mark-lateral-composite", placed, mark=mark.name, written=written)
        elif mark.is_preferred and not is_composite:
            yield trouble_of("mark-preferred-rhythm", placed, written=written)


def _check_form(placed: Placed, feature: Feature, mark: Lateral, side: _Side) -> Iterator[Trouble]:
    if feature.topmark not in (None, *side.topmarks):
        written = feature.topmark or ""
        yield trouble_of("mark-lateral-topmark", placed, mark=_of_hand(mark), written=written)
    if feature.shape == side.other_shape:
        written = feature.shape
        yield trouble_of("mark-lateral-shape", placed, mark=_of_hand(mark), written=written)


def _of_hand(mark: Lateral) -> str:
    hand = mark.side.hand if mark.side else ""
    way = "starboard" if hand == "port" else "port"
    return f"preferred channel to {way}" if mark.is_preferred else f"{hand}-hand"
