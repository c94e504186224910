"""What is wrong with a light's character in itself: rules of form and simple arithmetic.

In comes one light as gathered from its parts, with its figures; out come faults, and the period
and groups that may stand.  Whether the light suits its mark is judged elsewhere.  Rates: IHO S-12
and the IALA recommendation on rhythmic characters, from secondary sources.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal

from noticeparse.faults import Fault
from noticeparse.readers.light_draft import Draft
from noticeparse.readers.light_figures import Figures
from noticeparse.readers.light_parts import fault
from noticeparse.records.light import Rhythm

_GROUP_OR_TENTHS = re.compile(r".?(?:Fl|FL|Oc|OC|.Q)\.[2-9]\.[1-6][0-9] ?s\.?", re.DOTALL)
"""`Fl.3.10s`: every 10 seconds a group of 3, or every 3.1 seconds one."""
_SHORTEST_S = {
    "Fl": Decimal(1),
    "Oc": Decimal(1),
    "LFl": Decimal(2),
    "Q": Decimal("0.75"),
    "VQ": Decimal("0.375"),
    "UQ": Decimal("0.2"),
}
"""Seconds that one appearance needs at the quickest rate of its class."""

_RATE_S = {
    "Q": (Decimal("0.75"), Decimal("1.2")),
    "VQ": (Decimal("0.375"), Decimal("0.75")),
    "UQ": (Decimal("0.1"), Decimal("0.375")),
}
"""Seconds from flash to flash of the quick classes: 50, 80 and 160 a minute part them."""

_SHORTEST_PERIOD_S = {
    "Iso": Decimal(2), "Oc": Decimal(2), "Mo": Decimal(2),
    "IQ": Decimal(3), "IVQ": Decimal(3), "IUQ": Decimal(3),
}  # fmt: skip
"""Shorter periods show no even light, no clear eclipse, no letter and no interruption."""

_LARGEST_GROUP = 6
_COUNTED = frozenset({"Fl", "LFl", "Oc"})
"""Classes whose flashes or eclipses are counted one by one; quick ones run to nine."""

_WITHOUT_PERIOD = frozenset({"F", "Q", "VQ", "UQ"})
_SINGLE_FLASH_S = Decimal("1.2")
_LONG_FLASH_S = Decimal(2)
_HIGH_M = 100
_METRES_PER_MILE = 20


def check_character(draft: Draft, rhythm: Rhythm, figures: Figures, text: str) -> Iterator[Fault]:
    """Faults of the character as a whole: groups, colours, letters, period."""
    yield from _check_groups(draft, rhythm, text)
    yield from _check_colours(draft, text)
    yield from _check_morse(draft, rhythm, text)
    if figures.period is not None:
        yield from _check_period(draft, rhythm, figures, text)
    elif rhythm not in _WITHOUT_PERIOD and not _has_period_fault(draft):
        yield fault("light-period-missing", text, draft.start, draft.end)
    yield from _check_elevation(figures, text)


def _has_period_fault(draft: Draft) -> bool:
    """A period stands and could not be read, or a figure without unit may be it."""
    return any(one.measure.unit in ("s", "") for one in draft.figures)


def has_impossible_period(draft: Draft, rhythm: Rhythm) -> bool:
    """A fixed light shows no sequence, so that its period is a slip in one of the two."""
    return rhythm == "F" and not draft.is_alternating


def has_impossible_group(draft: Draft, rhythm: Rhythm) -> bool:
    """A group of nought, or a group of a light that has none by its nature."""
    return 0 in draft.groups or (rhythm in ("F", "Iso") and not draft.is_alternating)


def _check_groups(draft: Draft, rhythm: Rhythm, text: str) -> Iterator[Fault]:
    if not draft.groups or draft.group_stretch is None:
        if draft.asks_group and not draft.has_broken_group:
            yield fault("light-group-missing", text, draft.start, draft.end)
        return
    start, end = draft.group_stretch
    if 0 in draft.groups:
        yield fault("light-group-zero", text, start, end)
    elif has_impossible_group(draft, rhythm):
        yield fault("light-group-impossible", text, start, end)
    elif rhythm in ("IQ", "IVQ", "IUQ", "Mo"):
        yield fault("light-group-odd", text, start, end)
    elif rhythm in _COUNTED and max(draft.groups) > _LARGEST_GROUP:
        yield fault("light-group-large", text, start, end)


def _check_colours(draft: Draft, text: str) -> Iterator[Fault]:
    if draft.is_alternating and len(draft.colours) < 2 and not draft.has_lost_colour:
        yield fault("light-alternating-one-colour", text, draft.start, draft.end)


def _check_morse(draft: Draft, rhythm: Rhythm, text: str) -> Iterator[Fault]:
    if rhythm != "Mo" or draft.has_broken_group:
        return
    if draft.morse is None:
        yield fault("light-morse-missing", text, draft.start, draft.end)
    elif not draft.morse.isalpha() and len(draft.morse) > 1 and draft.group_stretch is not None:
        yield fault("light-morse-odd", text, *draft.group_stretch)


def _check_period(draft: Draft, rhythm: Rhythm, figures: Figures, text: str) -> Iterator[Fault]:
    measure, period = figures.period, figures.period_s
    if measure is None or period is None:
        return
    start, end = measure.start_pos, measure.end_pos
    if _GROUP_OR_TENTHS.fullmatch(text, max(start - 3, 0), end) and not draft.groups:
        yield fault("light-figures-unclear", text, start, end)
    if has_impossible_period(draft, rhythm):
        yield fault("light-fixed-with-period", text, start, end)
    elif draft.groups or len(draft.classes) > 1:
        if 0 not in draft.groups and period <= _needed_s(draft):
            group_start, group_end = draft.group_stretch or (start, end)
            stretch = min(start, group_start), max(end, group_end)
            yield fault("light-group-too-quick", text, *stretch)
    elif rhythm == "Fl" and period < _SINGLE_FLASH_S and not draft.is_alternating:
        yield fault("light-flash-too-quick", text, start, end)
    elif rhythm == "LFl" and period <= _LONG_FLASH_S:
        yield fault("light-long-flash-too-quick", text, start, end)
    elif rhythm in _RATE_S:
        least, most = _RATE_S[rhythm]
        if not least <= period <= most:
            yield fault("light-quick-period", text, start, end)
    elif period < _SHORTEST_PERIOD_S.get(rhythm, 0) and not draft.is_alternating:
        yield fault("light-period-short", text, start, end)


def _check_elevation(figures: Figures, text: str) -> Iterator[Fault]:
    """A high light of short range is the sign of a lost decimal point."""
    height, ranges = figures.elevation, figures.ranges
    if height is None or ranges is None or figures.elevation_m is None:
        return
    suits = _METRES_PER_MILE * max(figures.ranges_nm)
    if figures.elevation_m >= _HIGH_M and figures.elevation_m >= suits:
        start = min(height.start_pos, ranges.start_pos)
        yield fault("light-elevation-great", text, start, max(height.end_pos, ranges.end_pos))


def _needed_s(draft: Draft) -> Decimal:
    """Seconds that the flashes or eclipses of one whole sequence need at the least."""
    needed = Decimal(0)
    for index, name in enumerate(draft.classes):
        count = sum(draft.groups_of_class.get(index, ())) or 1
        needed += _SHORTEST_S.get(name, Decimal(0)) * count
    return needed
