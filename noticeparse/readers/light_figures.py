"""Period, elevation and ranges out of the figures of one light.

In come the measures in the order written, with the light's colours; out come exact values in
seconds, metres and nautical miles.  A figure that cannot be given its meaning for certain is left
out with a fault.  Order and units: INT 1 section P, `Fl(3)WRG.15s21m15-11M`.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.numbers import FOOT_M
from noticeparse.readers.light_draft import Figure
from noticeparse.readers.light_parts import Measure, fault, like_character

_ORDER = {"s": 0, "m": 1, "ft": 1, "M": 2}
_GREATEST_RANGE_NM = 40
_LONGEST_PERIOD_S = 90


class Figures(NamedTuple):
    """The values read, None and empty where none stand or none is certain."""

    period: Measure | None
    period_s: Decimal | None
    elevation: Measure | None
    elevation_m: Decimal | None
    ranges_nm: list[Decimal]
    range_by_colour: dict[str, Decimal | None]
    ranges: Measure | None
    faults: list[Fault]


def settle_figures(
    figures: Sequence[Figure], colours: Sequence[str], text: str, *, is_telex: bool, is_fixed: bool
) -> Figures:
    """Gives each figure its meaning; `colours` are the light's, empty where not certain."""
    faults: list[Fault] = []
    usable = [one for one in figures if _is_usable(one, figures, text, faults, is_fixed)]
    if is_telex or _has_two_capitals(usable, text):
        usable = [_by_label(one) for one in _telex_units(usable, text, faults)]
    usable = _as_labelled(usable, text, faults)
    usable = _in_order(usable, text, faults)
    period = _only(usable, "s", "light-period-twice", text, faults)
    elevation = _elevation(usable, text, faults)
    ranges = [one for one in usable if one.measure.unit == "M"]
    values, by_colour = _ranges(ranges, colours, text, faults)
    return Figures(
        period,
        _period(period, text, faults),
        elevation,
        _metres(elevation),
        values,
        by_colour,
        ranges[0].measure if values else None,
        faults,
    )


def _is_usable(
    one: Figure, figures: Sequence[Figure], text: str, faults: list[Fault], is_fixed: bool
) -> bool:
    measure = one.measure
    start, end = measure.start_pos, measure.end_pos
    if measure.like is not None:
        letter, read = like_character(measure.like)
        values = {"letter": letter, "read": read}
        faults.append(fault("light-look-alike", text, start, end, **values))
    if not measure.unit:
        is_period = one is figures[0] and not is_fixed
        is_period = is_period and all(other.measure.unit != "s" for other in figures)
        code = "light-period-missing-unit" if is_period else "light-figure-missing-unit"
    elif measure.unit != "M" and len(measure.figures) > 1:
        code = "light-figures-unclear"
    elif 0 in measure.figures:
        code = "light-figure-zero"
    else:
        return True
    faults.append(fault(code, text, start, end))
    return False


def _has_two_capitals(figures: Sequence[Figure], text: str) -> bool:
    """`F.R.4M3M`: no small letter anywhere, and M written for two things."""
    lone = [one for one in figures if one.measure.is_lone_capital and one.colour is None]
    return len(lone) == 2 and text == text.upper()


def _telex_units(figures: list[Figure], text: str, faults: list[Fault]) -> list[Figure]:
    """In telex capitals `M` is metres or miles: told by the fixed order, or left out."""
    told: list[Figure] = []
    units = _units_by_order(figures)
    for index, one in enumerate(figures):
        start, end = one.measure.start_pos, one.measure.end_pos
        if not _is_unclear(one):
            told.append(one)
        elif index in units:
            read = "metres" if units[index] == "m" else "miles"
            faults.append(fault("light-unit-by-order", text, start, end, read=read))
            told.append(one._replace(measure=one.measure._replace(unit=units[index])))
        else:
            faults.append(fault("light-unit-unclear", text, start, end))
    return told


def _by_label(one: Figure) -> Figure:
    """`ELEVATION 12M` is metres for all its capital."""
    if one.label == "m" and one.measure.is_lone_capital:
        return one._replace(measure=one.measure._replace(unit="m"))
    return one


def _as_labelled(figures: list[Figure], text: str, faults: list[Fault]) -> list[Figure]:
    """`visible 12m`: word and unit contradict each other, and neither is believed."""
    told: list[Figure] = []
    for one in figures:
        if not one.label or _ORDER[one.label] == _ORDER[one.measure.unit]:
            told.append(one)
        else:
            start, end = one.measure.start_pos, one.measure.end_pos
            faults.append(fault("light-figures-unclear", text, start, end))
    return told


def _is_unclear(one: Figure) -> bool:
    """A lone capital M; a list of figures is a list of ranges, a colour has a range."""
    is_single = len(one.measure.figures) == 1 and one.colour is None
    return one.measure.is_lone_capital and is_single and not one.label


def _units_by_order(figures: list[Figure]) -> dict[int, str]:
    """Which figure with a lone M is metres and which miles; empty where it cannot be told."""
    unclear = [index for index, one in enumerate(figures) if _is_unclear(one)]
    told = {_by_label(one).measure.unit for one in figures if not _is_unclear(one)}
    if len(unclear) == 2 and not told & {"m", "ft", "M"}:
        return {unclear[0]: "m", unclear[1]: "M"}
    if len(unclear) == 1 and told & {"m", "ft"}:
        return {unclear[0]: "M"}
    if len(unclear) == 1 and "M" in told:
        return {unclear[0]: "m"}
    return {}


def _in_order(figures: list[Figure], text: str, faults: list[Fault]) -> list[Figure]:
    """Period, elevation, range: another order is the sign of exchanged unit letters."""
    plain = [one for one in figures if not one.label]
    wrong: set[int] = set()
    for first, second in pairwise(plain):
        if _ORDER[first.measure.unit] > _ORDER[second.measure.unit]:
            wrong |= {first.measure.start_pos, second.measure.start_pos}
            start, end = first.measure.start_pos, second.measure.end_pos
            faults.append(fault("light-figures-out-of-order", text, start, end))
    return [one for one in figures if one.measure.start_pos not in wrong]


def _only(
    figures: Sequence[Figure], unit: str, code: str, text: str, faults: list[Fault]
) -> Measure | None:
    found = [one.measure for one in figures if one.measure.unit == unit]
    if len(found) > 1:
        faults.append(fault(code, text, found[0].start_pos, found[-1].end_pos))
        return None
    return found[0] if found else None


def _period(period: Measure | None, text: str, faults: list[Fault]) -> Decimal | None:
    if period is None:
        return None
    if period.figures[0] > _LONGEST_PERIOD_S:
        faults.append(fault("light-period-long", text, period.start_pos, period.end_pos))
    return period.figures[0]


def _elevation(figures: Sequence[Figure], text: str, faults: list[Fault]) -> Measure | None:
    heights = [one.measure for one in figures if one.measure.unit in ("m", "ft")]
    if not heights:
        return None
    if len(heights) > 1:
        has_range = any(one.measure.unit == "M" for one in figures)
        if has_range or len(heights) > 2:
            start, end = heights[0].start_pos, heights[-1].end_pos
            faults.append(fault("light-elevation-twice", text, start, end))
            return None
        start, end = heights[1].start_pos, heights[1].end_pos
        faults.append(fault("light-range-in-metres", text, start, end))
    return heights[0]


def _metres(elevation: Measure | None) -> Decimal | None:
    if elevation is None:
        return None
    return elevation.figures[0] * (FOOT_M if elevation.unit == "ft" else 1)


def _ranges(
    figures: Sequence[Figure], colours: Sequence[str], text: str, faults: list[Fault]
) -> tuple[list[Decimal], dict[str, Decimal | None]]:
    if not figures:
        return [], {}
    measure = figures[0].measure
    start, end = measure.start_pos, figures[-1].measure.end_pos
    if all(one.colour and len(one.measure.figures) == 1 for one in figures):
        values = [one.measure.figures[0] for one in figures]
        own = {one.colour: one.measure.figures[0] for one in figures}
        by_colour = {colour: own.get(colour) for colour in colours}
    elif len(figures) > 1:
        faults.append(fault("light-range-twice", text, start, end))
        return [], {}
    elif measure.has_comma and len(colours) > 1:
        faults.append(fault("light-range-comma-unclear", text, start, end))
        return [], {}
    else:
        values = list(measure.figures)
        by_colour = _by_colour(measure, colours, text, faults)
    white = by_colour.get("W")
    if white is not None and any(one is not None and one > white for one in by_colour.values()):
        faults.append(fault("light-range-white-less", text, start, end))
    if max(values) > _GREATEST_RANGE_NM:
        faults.append(fault("light-range-great", text, start, end))
    return values, by_colour


def _by_colour(
    measure: Measure, colours: Sequence[str], text: str, faults: list[Fault]
) -> dict[str, Decimal | None]:
    """Which range belongs to which colour, as far as the text tells."""
    values, start, end = measure.figures, measure.start_pos, measure.end_pos
    if len(values) == 1:
        return dict.fromkeys(colours, values[0])
    if "-" in measure.splits and len(values) == 2 and len(colours) > 1:
        return _greatest_and_least(measure, colours, text, faults)
    if len(values) != len(colours) or len(set(measure.splits)) > 1:
        if colours:
            counts = {"ranges": str(len(values)), "colours": str(len(colours))}
            faults.append(fault("light-range-count", text, start, end, **counts))
        return {}
    if "-" in measure.splits:
        faults.append(fault("light-range-hyphen", text, start, end))
    return dict(zip(colours, values, strict=True))


def _greatest_and_least(
    measure: Measure, colours: Sequence[str], text: str, faults: list[Fault]
) -> dict[str, Decimal | None]:
    """`15-11M`: the greatest is white's, the least the last colour's, the others are unknown."""
    greatest, least = measure.figures
    start, end = measure.start_pos, measure.end_pos
    ranges: dict[str, Decimal | None] = dict.fromkeys(colours)
    if greatest < least:
        faults.append(fault("light-range-order", text, start, end))
        return ranges
    if len(colours) == 2:
        faults.append(fault("light-range-hyphen", text, start, end))
    if colours[0] == "W":
        ranges[colours[0]], ranges[colours[-1]] = greatest, least
    return ranges
