"""Faults of whole editions, each planted in the plan of a clean one.

A plant changes one thing of the plan and says which finding must come of it, and which words the
finding must point at.
"""

from __future__ import annotations

from collections.abc import Callable
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator.editions import DATUMS, YEAR, Entry, Plan, Ref, Sheet


class Planted(NamedTuple):
    """What must be found: the code, and the words that the finding points at."""

    code: str
    words: str


def _chained(plan: Plan) -> list[tuple[Entry, Sheet, Entry]]:
    """Notices whose previous notice is of the edition itself, with that notice."""
    own = {entry.ref: entry for entry in plan.entries}
    return [
        (entry, sheet, own[sheet.previous])
        for entry in plan.of("permanent")
        for sheet in entry.sheets
        if sheet.previous in own
    ]


def _sheet_of(entry: Entry, chart: str) -> Sheet:
    return next(sheet for sheet in entry.sheets if sheet.chart == chart)


def number_twice(rng: Random, plan: Plan) -> Planted:
    """A notice has the number of the one above."""
    place = rng.randrange(1, len(plan.entries))
    above, entry = plan.entries[place - 1 : place + 1]
    entry.ref = above.ref
    entry.commands = above.commands
    return Planted("notice-number-twice", above.ref.id)


def out_of_order(rng: Random, plan: Plan) -> Planted:
    """Two notices have changed places."""
    first, second = rng.sample(range(len(plan.of("permanent"))), 2)
    places = [i for i, one in enumerate(plan.entries) if one.ref.status == "permanent"]
    low, high = sorted((places[first], places[second]))
    plan.entries[low], plan.entries[high] = plan.entries[high], plan.entries[low]
    return Planted("notice-out-of-order", "")


def missing(rng: Random, plan: Plan) -> Planted:
    """A notice between the first and the last is lost."""
    plan.entries.pop(rng.randrange(1, len(plan.entries) - 1))
    return Planted("notice-missing", str(plan.first))


def outside_range(rng: Random, plan: Plan) -> Planted:
    """The last notice has a number beyond the stated range."""
    entry = plan.entries[-1]
    entry.ref = entry.ref._replace(number=plan.last + rng.randint(1, 900))
    return Planted("notice-outside-range", entry.ref.id)


def index_other_chart(rng: Random, plan: Plan) -> Planted:
    """The index has a notice under a chart that the notice does not name."""
    _, ref = rng.choice(plan.index)
    chart = str(rng.randint(3000, 3999))
    plan.index.append((chart, ref))
    return Planted("index-chart-not-in-notice", chart)


def index_other_notice(rng: Random, plan: Plan) -> Planted:
    """The index has a notice that does not stand in the edition."""
    place = rng.randrange(len(plan.index))
    chart, ref = plan.index[place]
    plan.index[place] = chart, ref._replace(number=ref.number + rng.randint(10, 90))
    return Planted("index-notice-not-here", chart)


def index_without(rng: Random, plan: Plan) -> Planted:
    """The index leaves out a chart of a notice."""
    permanent = [pair for pair in plan.index if pair[1].status == "permanent"]
    pair = rng.choice(permanent)
    plan.index.remove(pair)
    return Planted("index-without-chart", pair[0])


def in_force_without(rng: Random, plan: Plan) -> Planted:
    """The list of notices in force leaves out one of the edition."""
    entry = rng.choice(plan.of("temporary") + plan.of("preliminary"))
    plan.in_force.remove(entry.ref)
    # The list itself must be there, with other notices.
    plan.in_force.append(Ref(entry.ref.number - 50, "temporary"))
    return Planted("in-force-missing", entry.ref.id)


def cancelled_other(rng: Random, plan: Plan) -> Planted:
    """A notice cancels another than the list of cancelled notices has."""
    entry = rng.choice(plan.entries)
    listed = Ref(plan.first - rng.randint(20, 40), "temporary")
    # What another notice cancels stands in the list with right: no fault would be planted.
    elsewhere = {one for other in plan.entries if other is not entry for one in other.cancels}
    numbers = (listed._replace(number=listed.number - step) for step in range(1, 10))
    entry.cancels = [rng.choice([one for one in numbers if one not in elsewhere])]
    plan.cancelled = [one for other in plan.entries for one in other.cancels]
    plan.cancelled[plan.cancelled.index(entry.cancels[0])] = listed
    return Planted("cancelled-not-listed", entry.cancels[0].id)


def cancelled_by_none(rng: Random, plan: Plan) -> Planted:
    """The list of cancelled notices has one that no notice cancels."""
    plan.cancelled.append(Ref(plan.first - rng.randint(50, 90), "preliminary"))
    return Planted("cancelled-by-none", plan.cancelled[-1].id)


def cancels_permanent(rng: Random, plan: Plan) -> Planted:
    """A notice cancels the number of a permanent one, with or without a mark."""
    target = rng.choice(plan.of("permanent")).ref
    entry = rng.choice([one for one in plan.entries if one.ref != target])
    wrong = target._replace(status=rng.choice(("permanent", "temporary", "preliminary")))
    entry.cancels = [wrong]
    plan.cancelled = [one for other in plan.entries for one in other.cancels]
    return Planted("cancels-permanent", wrong.id)


def fork(rng: Random, plan: Plan) -> Planted:
    """A notice names the same one before as the notice before it on the chart."""
    _, sheet, before = rng.choice(_chained(plan))
    sheet.previous = _sheet_of(before, sheet.chart).previous
    assert sheet.previous is not None
    return Planted("previous-fork", sheet.previous.id)


def goes_back(rng: Random, plan: Plan) -> Planted:
    """A notice names one before that is older than all it should come after."""
    _, sheet, _ = rng.choice(_chained(plan))
    sheet.previous = Ref(rng.randint(1, plan.first), year=YEAR - 1)
    return Planted("previous-goes-back", sheet.previous.id)


def later(rng: Random, plan: Plan) -> Planted:
    """A notice names one before that is later than itself."""
    entry = rng.choice(plan.of("permanent"))
    sheet = rng.choice(entry.sheets)
    year = rng.choice((YEAR, YEAR + 1))
    sheet.previous = Ref(entry.ref.number + rng.randint(0, 99), year=year)
    return Planted("previous-later", sheet.previous.id)


def gap(rng: Random, plan: Plan) -> Planted:
    """A notice in the middle of a chain is lost."""
    chained = _chained(plan)
    _, sheet, before = rng.choice(chained)
    first = Ref(before.ref.number + 1)
    entry = next(one for one, other, _ in chained if other is sheet)
    # The number between the two is free: all later ones move up by one.
    for one in plan.entries:
        if one.ref.number > before.ref.number:
            _renumber(plan, one)
    assert entry.ref.number > first.number
    sheet.previous = first
    plan.last += 1
    return Planted("previous-gap", first.id)


def _renumber(plan: Plan, entry: Entry) -> None:
    old, new = entry.ref, entry.ref._replace(number=entry.ref.number + 1)
    entry.ref = new
    plan.index = [(chart, new if ref == old else ref) for chart, ref in plan.index]
    plan.in_force = [new if ref == old else ref for ref in plan.in_force]
    for other in plan.entries:
        for sheet in other.sheets:
            if sheet.previous == old and other.ref.number > new.number:
                sheet.previous = new


def ended(rng: Random, plan: Plan) -> Planted:
    """A temporary notice ended before the edition appeared."""
    entry = rng.choice(plan.of("temporary") + plan.of("preliminary"))
    entry.until = f"{rng.randint(1, 28)} December {YEAR - 1}"
    return Planted("validity-ended", f"until {entry.until}")


def no_such_day(rng: Random, plan: Plan) -> Planted:
    """A date that does not exist."""
    words = rng.choice(("31 June", "30 February", "31 November", "29 February"))
    if rng.random() < 0.5:
        plan.issued = f"{words} {YEAR}"
        return Planted("date-impossible", plan.issued)
    entry = rng.choice(plan.of("temporary"))
    entry.until = f"{words} {YEAR + 1}"
    return Planted("date-impossible", entry.until)


def commands(rng: Random, plan: Plan) -> Planted:
    """A temporary or preliminary notice commands what to do to a chart."""
    entry = rng.choice(plan.of("temporary") + plan.of("preliminary"))
    entry.commands = True
    for sheet in entry.sheets:
        sheet.previous, sheet.datum = Ref(plan.first - 1), "WGS84"
    return Planted(f"{entry.ref.status}-with-actions", entry.ref.id)


def _wide(rng: Random, plan: Plan) -> tuple[Entry, Sheet]:
    """A notice with two charts, and the second of them."""
    entry = rng.choice(plan.of("permanent"))
    first = entry.sheets[0]
    if len(entry.sheets) == 1:
        chart = str(rng.randint(3000, 3999))
        entry.sheets.append(Sheet(chart, Ref(1), first.datum))
        plan.index.append((chart, entry.ref))
    return entry, entry.sheets[1]


def datum_of_some(rng: Random, plan: Plan) -> Planted:
    """One chart of a notice states no datum."""
    _, sheet = _wide(rng, plan)
    sheet.datum = None
    return Planted("datum-of-some-charts", sheet.chart)


def datum_differs(rng: Random, plan: Plan) -> Planted:
    """One chart of a notice is on another datum."""
    entry, sheet = _wide(rng, plan)
    sheet.datum = next(one for one in DATUMS if one != entry.sheets[0].datum)
    return Planted("datum-differs", sheet.chart)


def no_datum(_: Random, plan: Plan) -> Planted:
    """No chart states a datum."""
    for entry in plan.entries:
        for sheet in entry.sheets:
            sheet.datum = None
    return Planted("datum-not-stated", "")


PLANTS: tuple[Callable[[Random, Plan], Planted], ...] = (
    number_twice, out_of_order, missing, outside_range,
    index_other_chart, index_other_notice, index_without,
    in_force_without, cancelled_other, cancelled_by_none, cancels_permanent,
    fork, goes_back, later, gap,
    ended, no_such_day, commands, datum_of_some, datum_differs, no_datum,
)  # fmt: skip
