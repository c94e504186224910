"""Whole editions: notices in chains, an index of charts, lists of notices in force and cancelled.

An edition is planned first and written afterwards, so that a fault can be planted in its plan:
`draw_editions` gives plans of weeks that follow one another and have no fault, `write_edition` the
text of a plan, faults and all.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, timedelta
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator import names
from noticeparse.testing.generator.columns import under_headings
from noticeparse.testing.generator.coordinates import write_point
from noticeparse.testing.generator.jobs import draw_job, in_order
from noticeparse.testing.generator.truth import Notice
from noticeparse.testing.generator.writing import YEAR, Writing

DATUMS = ("WGS84", "WGS72")
_MARKS = {"permanent": "", "temporary": "(T)", "preliminary": "(P)"}


class Ref(NamedTuple):
    """A notice by number, status and year."""

    number: int
    status: str = "permanent"
    year: int = YEAR

    @property
    def id(self) -> str:
        """`417(T)/26`."""
        return f"{self.bare}/{self.year % 100:02d}"

    @property
    def bare(self) -> str:
        """`417(T)`, as an index of charts has it."""
        return f"{self.number}{_MARKS[self.status]}"


@dataclass
class Sheet:
    """A chart of a notice: the notice before on it, if it is in the chain, and its datum."""

    chart: str
    previous: Ref | None
    datum: str | None = "WGS84"


@dataclass
class Entry:
    """A notice of the edition; one that changes no chart for good is told in prose."""

    ref: Ref
    sheets: list[Sheet]
    cancels: list[Ref] = field(default_factory=list)
    until: str | None = None
    commands: bool = True


@dataclass
class Plan:
    """An edition: what it says of itself, its lists, its notices."""

    seed: int
    week: int
    issued: str
    first: int
    last: int
    index: list[tuple[str, Ref]]
    in_force: list[Ref]
    cancelled: list[Ref]
    entries: list[Entry]

    def of(self, status: str) -> list[Entry]:
        """The notices of one status."""
        return [entry for entry in self.entries if entry.ref.status == status]


class _Office:
    """The chart office over the weeks: what stands on the charts, what is in force."""

    def __init__(self, rng: Random) -> None:
        self.rng = rng
        self.number = rng.randint(100, 8000)
        self.week = rng.randint(3, 40)
        self.charts = [str(number) for number in rng.sample(range(200, 3000), 5)]
        before = [Ref(rng.randint(1, self.number)) for _ in self.charts]
        self.applied = dict(zip(self.charts, before, strict=True))
        marked = rng.sample(range(1, self.number), 4)
        self.in_force = [Ref(one, rng.choice(("temporary", "preliminary"))) for one in marked]

    def edition(self) -> Plan:
        """The edition of the next week."""
        rng = self.rng
        self.week += 1
        issued = date(YEAR, 1, 2) + timedelta(weeks=self.week)
        first = self.number + 1
        statuses = ["permanent", rng.choice((*_MARKS,)), "permanent", "permanent"]
        statuses += ["temporary", "preliminary"]
        entries = [self._entry(status, issued) for status in statuses]
        cancelled = [ref for entry in entries for ref in entry.cancels]
        self.in_force = [ref for ref in self.in_force if ref not in cancelled]
        self.in_force += [one.ref for one in entries if one.ref.status != "permanent"]
        pairs = [(sheet.chart, entry.ref) for entry in entries for sheet in entry.sheets]
        return Plan(
            seed=rng.randrange(2**32),
            week=self.week,
            issued=f"{issued.day} {names.MONTHS[issued.month - 1]} {YEAR}",
            first=first,
            last=self.number,
            index=sorted(pairs),
            in_force=list(self.in_force),
            cancelled=cancelled,
            entries=entries,
        )

    def _entry(self, status: str, issued: date) -> Entry:
        rng = self.rng
        self.number += 1
        ref = Ref(self.number, status)
        cancels = []
        own = [one for one in self.in_force if one.status == status or status == "permanent"]
        if own and rng.random() < 0.6:
            cancels = [rng.choice(own)]
            self.in_force.remove(cancels[0])
        if status != "permanent":
            sheets = [Sheet(rng.choice(self.charts), None, None)]
            last = issued + timedelta(days=rng.randint(30, 200))
            until = f"{last.day} {names.MONTHS[last.month - 1]} {last.year}"
            return Entry(ref, sheets, cancels, until, commands=False)
        sheets = []
        datum = rng.choice(DATUMS)
        # One chart is in every notice and another in two, so that every edition has a chain.
        charts = {self.charts[0], *rng.sample(self.charts, rng.randint(0, 2))}
        for chart in sorted(charts):
            sheets.append(Sheet(chart, self.applied[chart], datum))
            self.applied[chart] = ref
        return Entry(ref, sheets, cancels)


def draw_editions(rng: Random, count: int = 1) -> list[Plan]:
    """The plans of so many weeks that follow one another."""
    office = _Office(rng)
    return [office.edition() for _ in range(count)]


def write_edition(plan: Plan) -> str:
    """The text of an edition, always the same for one plan."""
    w = Writing(Random(plan.seed), "edition")
    _front(w, plan)
    _lists(w, plan)
    w.line("NOTICES")
    for entry in plan.entries:
        w.line()
        _notice(w, entry)
    return w.text()


def _front(w: Writing, plan: Plan) -> None:
    w.line("TAVRENNE ISLANDS CHART OFFICE")
    w.line(f"Weekly edition {plan.week}/{YEAR}, {plan.issued}")
    to = w.rng.choice((" to ", "-"))
    w.line(f"Notices {plan.first}{to}{plan.last}/{YEAR % 100}")
    w.line("The islands and all notices are invented. Not for navigation.")
    w.line()


def _lists(w: Writing, plan: Plan) -> None:
    rng = w.rng
    w.line(rng.choice(("INDEX OF CHARTS", "CHARTS AFFECTED", "Index of charts affected")))
    if rng.random() < 0.5:
        w.line("Chart      Notices")
    leader = rng.choice(("      ", " ........ "))
    charts = sorted({chart for chart, _ in plan.index})
    for chart in charts:
        refs = [ref.bare for one, ref in plan.index if one == chart]
        w.line(f"{chart}{leader}{', '.join(refs)}")
    w.line()
    w.line("TEMPORARY AND PRELIMINARY NOTICES IN FORCE")
    for start in range(0, len(plan.in_force), 4):
        w.line(", ".join(ref.id for ref in plan.in_force[start : start + 4]))
    w.line()
    if plan.cancelled:
        w.line(rng.choice(("NOTICES CANCELLED", "Cancelled notices")))
        w.line(", ".join(ref.id for ref in plan.cancelled))
        w.line()


def _notice(w: Writing, entry: Entry) -> None:
    notice = w.open_notice(marked=0)
    notice.id, notice.status = entry.ref.id, entry.ref.status
    w.line(f"{notice.id}   {w.heading(notice)}")
    if entry.commands:
        for sheet in entry.sheets:
            _sheet(w, notice, sheet)
    else:
        water = w.water()
        point = write_point(water.form, water.point())
        until = f" until {entry.until}" if entry.until else ""
        w.line(f"The light in {point} is extinguished{until}.")
    for ref in entry.cancels:
        w.line(f"Notice {ref.id} is cancelled.")
    if not entry.commands:
        w.line("Charts " + ", ".join(sheet.chart for sheet in entry.sheets))


def _sheet(w: Writing, notice: Notice, sheet: Sheet) -> None:
    before = sheet.previous.id if sheet.previous else "New edition"
    datum = sheet.datum or ""
    forms = (
        f"Chart {sheet.chart} [{before}] {datum}",
        f"Chart {sheet.chart} (INT 9{int(sheet.chart) % 1000:03d}) [{before}] {datum}",
        f"Chart {sheet.chart}   (last correction {before})   {datum}",
    )
    w.line(w.rng.choice(forms).rstrip())
    water = w.water()
    jobs = [draw_job(w.rng, w.hand, water) for _ in range(w.rng.choice((1, 1, 2)))]
    under_headings(w, notice, sheet.chart, water, in_order(jobs))


__all__ = ["DATUMS", "Entry", "Plan", "Ref", "Sheet", "draw_editions", "write_edition"]
