"""Faults between editions, planted in the plans of clean ones as `editions.py` plants its own."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

from noticeparse.testing.generator.editions import YEAR, Plan, Ref, Sheet
from tests.faults.editions import Planted


def _later_sheet(rng: Random, plans: list[Plan]) -> Sheet:
    """The first section for a chart in the second edition that has one in the first as well."""
    known = {sheet.chart for entry in plans[0].of("permanent") for sheet in entry.sheets}
    firsts: dict[str, Sheet] = {}
    for entry in plans[1].of("permanent"):
        for sheet in entry.sheets:
            firsts.setdefault(sheet.chart, sheet)
    return rng.choice([sheet for chart, sheet in firsts.items() if chart in known])


def together_fork(rng: Random, plans: list[Plan]) -> Planted:
    """The next edition names the same notice before as a notice of the one before."""
    sheet = _later_sheet(rng, plans)
    last = [one for entry in plans[0].of("permanent") for one in entry.sheets]
    sheet.previous = next(one for one in reversed(last) if one.chart == sheet.chart).previous
    assert sheet.previous is not None
    return Planted("previous-fork", sheet.previous.id)


def together_back(rng: Random, plans: list[Plan]) -> Planted:
    """The next edition names a notice before that is older than the edition before."""
    sheet = _later_sheet(rng, plans)
    sheet.previous = Ref(rng.randint(1, 9999), year=YEAR - 1)
    return Planted("previous-goes-back", sheet.previous.id)


def together_gap(_: Random, plans: list[Plan]) -> Planted:
    """The edition between two others is not here."""
    del plans[1]
    charts = {sheet.chart for entry in plans[0].of("permanent") for sheet in entry.sheets}
    between = next(
        sheet.previous
        for sheet in plans[1].of("permanent")[0].sheets
        if sheet.chart in charts and sheet.previous and sheet.previous.number > plans[0].last
    )
    return Planted("previous-gap", between.id)


def together_cancels(rng: Random, plans: list[Plan]) -> Planted:
    """The next edition cancels what the one before has as a permanent notice."""
    target = rng.choice(plans[0].of("permanent")).ref
    entry = rng.choice(plans[1].entries)
    entry.cancels = [target._replace(status="temporary")]
    plans[1].cancelled = [one for other in plans[1].entries for one in other.cancels]
    return Planted("cancels-permanent", entry.cancels[0].id)


def together_twice(rng: Random, plans: list[Plan]) -> Planted:
    """The next edition has a number of the one before again."""
    old = rng.choice(plans[0].of("permanent")).ref
    plans[1].of("permanent")[0].ref = old
    return Planted("notice-number-twice", old.id)


PLANTS_TOGETHER: tuple[Callable[[Random, list[Plan]], Planted], ...] = (
    together_fork, together_back, together_gap, together_cancels, together_twice,
)  # fmt: skip
