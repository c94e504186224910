"""Layouts in columns: notice first, lettered list, position first."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby, pairwise

from noticeparse.testing.generator import names
from noticeparse.testing.generator.coordinates import FORMS, Form, Water, write_point, write_shared
from noticeparse.testing.generator.jobs import Job, at_reference, in_order
from noticeparse.testing.generator.truth import Notice, Point
from noticeparse.testing.generator.writing import Writing, capitalised

_QUARTERS = ("N", "NE", "E", "SE", "S", "SW", "W", "NW")


def edition_head(w: Writing) -> None:
    """The title of a weekly edition."""
    week = w.rng.randint(1, 52)
    w.line("TAVRENNE ISLANDS CHART OFFICE")
    w.line(f"Weekly chart corrections, edition {week}/2026, {w.date()}")
    w.line()


def written_places(w: Writing, water: Water, points: tuple[Point, ...]) -> list[str]:
    """Positions in the form of their water; the degrees may be written once."""
    written = [write_point(water.form, points[0])]
    shares = len(points) > 1 and w.rng.random() < 0.3
    for before, point in pairwise(points):
        is_last = point is points[-1]
        shared = write_shared(water.form, point, before, is_last=is_last) if shares else None
        written.append(shared or write_point(water.form, point))
    return written


def listed(places: list[str], last: str = " and ") -> str:
    """Places in one line: `P, P and P`."""
    if len(places) == 1:
        return places[0]
    return ", ".join(places[:-1]) + last + places[-1]


def notice_first(w: Writing) -> None:
    """A notice with its chart sections, each with verb headings and items in two columns."""
    notice = w.open_notice()
    w.line(f"{w.written_id(notice, long=w.rng.random() < 0.3)}   {w.heading(notice)}")
    if w.rng.random() < 0.5:
        w.line(f"Source: {w.rng.choice(names.SOURCES)}")
    for _ in range(w.rng.randint(1, 3)):
        w.line()
        chart = w.chart(notice)
        w.line(w.chart_head(chart))
        water = w.water()
        jobs = [w.job(water) for _ in range(w.rng.randint(2, 9))]
        under_headings(w, notice, chart, water, in_order(jobs))
    if w.rng.random() < 0.1:
        _cancel(w, notice)
    w.line()


def _cancel(w: Writing, notice: Notice) -> None:
    number = f"{w.rng.randint(1, w.first)}(T)/26"
    notice.cancels.append(number)
    w.line(f"Cancel Notice {number}.")


def under_headings(w: Writing, notice: Notice, chart: str, water: Water, jobs: list[Job]) -> None:
    """The items of a chart, each verb once above its own."""
    for verb, group in groupby(jobs, key=lambda job: job.verb):
        w.line(w.verbs.word(verb))
        for job in group:
            line = _item(w, water, job)
            w.record(notice, chart, line, job)


def _item(w: Writing, water: Water, job: Job) -> int:
    words = "   " + job.phrase(w.verbs) + (f", {job.link}" if job.link else "")
    if job.link in ("joining", "bounded by"):
        words += ":"
    places = written_places(w, water, job.points)
    line = w.line(f"{words:<56}    {places[0]}")
    for place in places[1:]:
        w.line(f"{'':<56}    {place}")
    if job.destination is not None:
        w.line(f"{'   to':<56}    {write_point(water.form, job.destination)}")
    return line


def lettered_list(w: Writing) -> None:
    """A list whose positions have letters; later items refer to `(a) above`."""
    notice = w.open_notice()
    w.line(f"{w.written_id(notice, long=True)}   {w.heading(notice)}")
    w.line()
    for _ in range(w.rng.randint(1, 2)):
        chart = w.chart(notice)
        w.line(w.chart_head(chart))
        water = w.water()
        jobs = [w.job(water) for _ in range(w.rng.randint(2, 7))]
        _Letters(w, notice, chart, water).write(in_order(jobs))
    w.line()


class _Letters:
    """Writes one section and gives a letter to every position."""

    def __init__(self, w: Writing, notice: Notice, chart: str, water: Water) -> None:
        self._w = w
        self._notice = notice
        self._chart = chart
        self._water = water
        self._known: list[Point] = []

    def write(self, jobs: list[Job]) -> None:
        """All items, the verb before the first of each group."""
        verb = ""
        for job in jobs:
            lead = "" if job.verb == verb else self._w.verbs.word(job.verb)
            verb = job.verb
            if self._refers(job):
                self._reference(job, lead)
            elif len(self._known) + len(job.points) + 1 <= 24:
                self._item(job, lead)

    def _refers(self, job: Job) -> bool:
        is_plain = job.relation == "at" and len(job.points) == 1 and job.destination is None
        return is_plain and bool(self._known) and self._w.rng.random() < 0.3

    def _reference(self, job: Job, lead: str) -> None:
        rng = self._w.rng
        index = rng.randrange(len(self._known))
        direction = rng.choice((None, *_QUARTERS))
        link = "at" if direction is None else f"close {direction} of"
        words = f"   {lead:<13}{job.phrase(self._w.verbs)}, {link}"
        line = self._w.line(f"{words:<58}    ({_letter(index)}) above")
        job = at_reference(job, (self._known[index],), direction)
        self._w.record(self._notice, self._chart, line, job)

    def _item(self, job: Job, lead: str) -> None:
        link = f", {job.link}" + (":" if job.link == "joining" else "") if job.link else ""
        words = f"   {lead:<13}{job.phrase(self._w.verbs)}{link}"
        places = list(self._lettered(job.points))
        line = self._w.line(f"{words:<58}    {places[0]}")
        for place in places[1:]:
            self._w.line(f"{'':<58}    {place}")
        if job.destination is not None:
            place = next(self._lettered((job.destination,)))
            self._w.line(f"{'                to':<58}    {place}")
        self._w.record(self._notice, self._chart, line, job)

    def _lettered(self, points: tuple[Point, ...]) -> Iterator[str]:
        for point in points:
            letter = _letter(len(self._known))
            self._known.append(point)
            yield f"({letter}) {write_point(self._water.form, point)}"


def _letter(index: int) -> str:
    return chr(ord("a") + index)


def position_first(w: Writing) -> None:
    """Rows that give the position first, then the command."""
    notice = w.open_notice()
    w.line(f"{w.written_id(notice)}  {w.heading(notice)}")
    chart = w.chart(notice)
    w.line(w.chart_head(chart))
    water = w.water(POSITION_FIRST_FORMS)
    for _ in range(w.rng.randint(3, 9)):
        job = w.job(water)
        places = listed(written_places(w, water, job.points))
        command = f"{w.verbs.word(job.verb)} {job.phrase(w.verbs)}"
        if job.destination is not None:
            command += f" to {write_point(water.form, job.destination)}"
        elif job.link:
            command += f" {_BEHIND[job.link]}"
        line = w.line(f"{places}   {command}")
        w.record(notice, chart, line, job)
    w.line()


_BEHIND = {
    "joining": "joining these positions", "bounded by": "bounded by these positions",
    "centred on": "centred on this position",
}  # fmt: skip
POSITION_FIRST_FORMS: tuple[Form, ...] = tuple(form for form in FORMS if form.joint != "; ")

__all__ = ["capitalised", "edition_head", "lettered_list", "listed", "notice_first",
           "position_first", "under_headings", "written_places"]  # fmt: skip
