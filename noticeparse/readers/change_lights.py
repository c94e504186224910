"""Reads the new or old value of one characteristic of a light or fog signal.

In come the words of the value; out comes the value with its path below `light` or `sound`.  The
limits are those of a whole light: a range of 250 miles is doubted here as there.
"""

from __future__ import annotations

from decimal import Decimal
from functools import cache
from typing import Any, NamedTuple

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.amounts import ChartUnit, shown
from noticeparse.readers.change_parts import Value
from noticeparse.readers.depths import read_height
from noticeparse.readers.light_colours_apart import with_colour_remarked
from noticeparse.readers.light_draft import Figure
from noticeparse.readers.light_figures import Figures, settle_figures
from noticeparse.readers.light_parts import Measure
from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.light_values import colour_of, split_colours
from noticeparse.readers.lights import read_light
from noticeparse.readers.sectors_told import is_part_of_circle, with_told
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import kinds

_PATHS = {
    "PERIOD": "light.period_s",
    "RANGE": "light.ranges_nm",
    "ELEVATION": "light.elevation_m",
    "CHARACTER": "light",
    "SECTOR_WORD": "light.sectors",
}
_HIDDEN = frozenset(("obscured", "intensified", "unintensified", "faint"))
# `range of the racon`: a record of these has no place for it.
_NO_LIGHTS = frozenset(("FOGSIG", "RTPBCN", "RADSTA", "RDOSTA"))


class _Written(NamedTuple):
    numbers: tuple[Decimal, ...]
    splits: str
    has_unit: bool
    commas: tuple[str, ...]
    """Figures written with a comma."""


class _Builder:
    """Rule by rule at parse time; keeps no state."""

    def period(self, *tokens: Token) -> _Written:
        figures = [one for one in tokens if one.type == "FIGURE"]
        joints = [str(one) for one in tokens if one.type == "JOINT"]
        return _Written(
            tuple(Decimal(one.replace(",", ".")) for one in figures),
            "".join(one if one in "-/" else "," for one in joints),
            any(one.type in ("SECONDS", "MILES") for one in tokens),
            tuple(str(one) for one in figures if "," in one),
        )

    ranges = period

    def of_colour(self, *tokens: Token) -> tuple[str, Decimal, bool]:
        letter = next(str(one) for one in tokens if one.type == "COLOUR_OF").strip(".")
        figure = next(str(one) for one in tokens if one.type == "FIGURE").replace(",", ".")
        return letter[0].upper(), Decimal(figure), any(one.type == "MILES" for one in tokens)

    def of_colours(self, *parts: Any) -> tuple[tuple[str, Decimal, bool], ...]:
        return tuple(one for one in parts if not isinstance(one, Token))


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build(
        "value", ("period", "ranges", "of_colours", "of_colour"), callbacks=_Builder()
    )


def light_value(property_type: str) -> str | None:
    """The path below `light` that a property word stands for, None where it is of no light."""
    return _PATHS.get(property_type)


def is_light(feature: Feature) -> bool:
    """Whether the feature is a light and no lit mark, so that its colour is the light's."""
    known = kinds().get(feature.kind)
    return feature.s57[:1] == ["LIGHTS"] and known is not None and not known.form


def has_no_light(feature: Feature) -> bool:
    """Whether nothing says that a thing has a light: `tower`, but not `buoy` or `lighthouse`."""
    known = kinds().get(feature.kind)
    is_lit = feature.light is not None or "LIGHTS" in feature.s57
    return known is not None and bool(known.s57) and not known.form and not is_lit


def read_period(text: str, feature: Feature) -> Value:
    """`3s`: the period of the light, or of the fog signal where that stands alone."""
    path = _PATHS["PERIOD"]
    if feature.sound is not None and (feature.light is not None or "LIGHTS" in feature.s57):
        values = {"written": shown(text), "property": "period"}
        return Value(path, None, (Fault("change-of-two", 0, len(text), values),))
    main = feature.s57[:1] if feature.light is None else []
    if feature.sound is not None or main == ["FOGSIG"]:
        path = "sound.period_s"
    elif _NO_LIGHTS.intersection(main):
        # `period of Racon`: a record of it has none.
        return Value(path, None)
    written, faults = _parsed(text, "period")
    if written is None:
        return Value(path, None)
    figures = _settled(written, text, "s", ())
    return Value(path, figures.period_s, (*faults, *figures.faults))


def read_ranges(text: str, feature: Feature) -> Value:
    """`15/12M`: a comma may be a point or part two ranges, and then neither is taken."""
    path = _PATHS["RANGE"]
    if (told := _of_colours(text)) and "LIGHTS" in feature.s57:
        return _ranges_of_colours(text, told, feature)
    written, faults = _parsed(text, "ranges")
    if written is None or (_NO_LIGHTS.intersection(feature.s57[:1]) and feature.light is None):
        return Value(path, None)
    colours = tuple(feature.light.colours) if feature.light is not None else ()
    if any(len(colours) != 1 or len(one.partition(",")[2]) > 1 for one in written.commas):
        values = {"written": shown(text)}
        return Value(path, None, (Fault("light-range-comma-unclear", 0, len(text), values),))
    figures = _settled(written, text, "M", colours)
    return Value(path, figures.ranges_nm or None, (*faults, *figures.faults))


_ORDER = "WRGY"
"""In which the colours of a light stand, and so its ranges (INT 1, P14)."""


def is_range_of_colour(words: str) -> bool:
    """Whether words behind a comma are the range of one more colour: `W15M, R11M`."""
    try:
        _parser().parse(words.strip(), start="of_colour")
    except LarkError:
        return False
    return True


def _of_colours(text: str) -> dict[str, Decimal]:
    """The ranges of several colours, each once; empty where the words are no such ranges."""
    try:
        told = _parser().parse(text.strip(), start="of_colours")
    except LarkError:
        return {}
    found = {letter: figure for letter, figure, _ in told}
    return found if len(found) == len(told) and told[-1][2] else {}


def _ranges_of_colours(text: str, told: dict[str, Decimal], feature: Feature) -> Value:
    """The ranges in the order of the colours, those of the light where it states them."""
    light = feature.light
    is_stated = light is not None and light.colour_stated
    colours = (
        list(light.colours) if light is not None and is_stated else sorted(told, key=_ORDER.find)
    )
    if sorted(colours) != sorted(told):
        return Value(_PATHS["RANGE"], None)
    written = _Written(tuple(told[one] for one in colours), "/" * (len(colours) - 1), True, ())
    figures = _settled(written, text, "M", tuple(colours))
    faults = list(figures.faults)
    if not is_stated and len(colours) < len("WRG"):
        faults.append(Fault("light-ranges-of-colours", 0, len(text), {"written": shown(text)}))
    return Value(_PATHS["RANGE"], figures.ranges_nm or None, tuple(faults))


def _parsed(text: str, start: str) -> tuple[_Written | None, tuple[Fault, ...]]:
    try:
        written: _Written = _parser().parse(text.strip(), start=start)
    except LarkError:
        return None, ()
    if written.has_unit:
        return written, ()
    return written, (Fault("change-unit-missing", 0, len(text), {"written": shown(text)}),)


def _settled(written: _Written, text: str, unit: str, colours: tuple[str, ...]) -> Figures:
    measure = Measure(
        type="MEASURE",
        start_pos=0,
        end_pos=len(text),
        figures=written.numbers,
        splits=written.splits,
        unit=unit,
        is_lone_capital=False,
        is_in_capitals=False,
        has_comma=bool(written.commas),
        like=None,
    )
    figure = Figure(measure, "", None)
    return settle_figures([figure], colours, text, is_telex=False, is_fixed=False)


def read_elevation(text: str, feature: Feature, chart_unit: ChartUnit | None) -> Value:
    """`12m`, above the water: no light stands at nought, and a tower without one has a height."""
    if has_no_light(feature):
        return Value(_PATHS["ELEVATION"], None)
    height = read_height(text, chart_unit)
    if height.height_m == 0:
        fault = Fault("light-figure-zero", 0, len(text), {"written": shown(text)})
        return Value(_PATHS["ELEVATION"], None, (*height.faults, fault))
    return Value(_PATHS["ELEVATION"], height.height_m, height.faults)


def read_character(text: str) -> Value:
    """`Fl(2)R.10s Horn(1)30s`: one whole light, with the aids on its structure."""
    reading = read_light(text)
    if len(reading.lights) != 1:
        return Value("light", None, reading.faults)
    aids = (("sound", reading.sound), ("racon", reading.racon), ("ais", reading.ais))
    more = tuple((name, aid) for name, aid in aids if aid is not None)
    return Value("light", with_colour_remarked(reading.lights[0]), reading.faults, more)


def read_aid(text: str, name: str) -> Value:
    """`Horn(2)30s`, `Racon(K)`: the whole fog signal or racon."""
    reading = read_light(text)
    return Value(name, getattr(reading, name), reading.faults)


def read_new_sectors(text: str, feature: Feature, named: str = "") -> Value:
    """`W 171°-195°, R 195°-268°`; `named` may tell colour or visibility: `the red sector`."""
    light = feature.light
    colours = tuple(light.colours) if light is not None and light.colour_stated else ()
    reading = read_sectors(text, colours)
    words = named.lower().replace(",", " ").replace("/", " ").split()
    told = [one for word in words if (one := colour_of(word.upper() if len(word) < 3 else word))]
    hidden = next((word for word in words if word in _HIDDEN), None)
    sectors = with_told(reading.sectors, told, hidden)
    is_part = bool(told or hidden) or is_part_of_circle(
        sectors, is_one="sectors" not in words, is_of_one_colour=len(colours) == 1
    )
    if not is_part or not sectors:
        return Value("light.sectors", sectors or None, reading.faults)
    # The colours that are not named keep their sectors.
    faults = [one for one in reading.faults if one.code != "light-colour-without-sector"]
    faults.append(Fault("sector-others-unsaid", 0, len(text), {"written": shown(text)}))
    return Value("light.sectors", sectors, tuple(faults))


def read_light_colours(text: str) -> Value:
    """`green`, `WRG`: the letters of a light."""
    letters: list[Any] = []
    for word in text.replace(",", " ").replace("/", " ").replace("&", " and ").split():
        if word.lower() in ("and", "a", "light"):
            continue
        whole = colour_of(word)
        found = [whole] if whole else [colour_of(one) for one in split_colours(word)]
        if None in found:
            return Value("light.colours", None)
        letters += [one for one in found if one not in letters]
    return Value("light.colours", letters or None)
