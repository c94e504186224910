"""Layouts in rows: chart-first commands, and a table parted by tabs."""

from __future__ import annotations

from noticeparse.testing.generator.coordinates import FORMS, Form, Water, write_half, write_point
from noticeparse.testing.generator.jobs import Job
from noticeparse.testing.generator.truth import Point
from noticeparse.testing.generator.writing import Writing, capitalised

COLUMN_FORMS: tuple[Form, ...] = tuple(form for form in FORMS if form.has_halves)
"""Forms whose coordinates fill a column each."""


def chart_first_head(w: Writing) -> None:
    """The title of a list that is sorted by chart."""
    w.line(f"TAVRENNE ISLANDS - CORRECTIONS BY CHART     No {w.rng.randint(1, 52)} - {w.date()}")
    w.line()


def chart_first(w: Writing) -> None:
    """A chart with its last notice and the number of this one, then rows of commands."""
    notice = w.open_notice(marked=0)
    chart = w.chart(notice)
    depths = f"   {w.hand.depths.head.upper()}" if w.hand.depths.head else ""
    edition = f"ED. {w.rng.randint(1, 12)}   {w.date().upper()}"
    w.line(
        f"CHART {chart}   {edition}   LAST NOTICE {w.earlier(chart)}   NOTICE {notice.id}{depths}"
    )
    water = w.water()
    for _ in range(w.rng.randint(2, 10)):
        job = w.job(water)
        verb = w.verbs.word(job.verb).upper()
        words = capitalised(job.phrase(w.verbs)) + (f", {job.link}" if job.link else "")
        places = [write_point(water.form, point) for point in job.points]
        line = w.line(f"  {verb:<12}{words:<52}   {places[0]}")
        for place in places[1:]:
            w.line(f"  {'':<12}{'':<52}   {place}")
        if job.destination is not None:
            w.line(f"  {'':<12}{'  to':<52}   {write_point(water.form, job.destination)}")
        w.record(notice, chart, line, job)
    w.line()


def tab_table_head(w: Writing) -> None:
    """The title of the table and its columns."""
    issue = f"Issue {w.rng.randint(1, 52)}/2026"
    w.line(f"Tavrenne Islands\tTable of chart corrections\t{issue}\t{w.date()}")
    w.line("Notice\tChart\tAction\tObject\tLatitude\tLongitude")


def tab_table(w: Writing) -> None:
    """Rows parted by tabs; the end of a move and the points of a line have rows of their own."""
    notice = w.open_notice(marked=0, has_chart_heads=False)
    chart = w.chart(notice)
    water = w.water(COLUMN_FORMS)
    for _ in range(w.rng.randint(2, 10)):
        job = w.job(water)
        verb = w.verbs.word(job.verb).lower()
        words = job.phrase(w.verbs) + (f", {job.link}" if job.link else "")
        first, *others = job.points
        line = w.line(f"{notice.id}\t{chart}\t{verb}\t{words}\t{_halves(water, first)}")
        for point in others:
            w.line(f"\t\t\t\t{_halves(water, point)}")
        if job.destination is not None:
            w.line(f"\t\t\tto\t{_halves(water, job.destination)}")
        w.record(notice, chart, line, job)


def _halves(water: Water, point: Point) -> str:
    half = water.form.half
    lat = write_half(half, point.lat, letter="S")
    return f"{lat}\t{write_half(half, point.lon, letter='W')}"


def wide_table_head(w: Writing) -> None:
    """The title of a table that has one column for both coordinates."""
    w.line(f"Tavrenne Islands\tReturn of changes\t{w.rng.randint(1, 52)}/2026\t{w.date()}")
    w.line("Notice\tChart\tAction\tObject\tPosition")


def wide_table(w: Writing) -> None:
    """Rows parted by tabs, each position in one cell."""
    notice = w.open_notice(marked=0, has_chart_heads=False)
    chart = w.chart(notice)
    water = w.water()
    for _ in range(w.rng.randint(2, 8)):
        job = w.job(water)
        line = w.line(_wide_row(w, notice.id, chart, water, job))
        for point in job.points[1:]:
            w.line(f"\t\t\t\t{write_point(water.form, point)}")
        if job.destination is not None:
            w.line(f"\t\t\tto\t{write_point(water.form, job.destination)}")
        w.record(notice, chart, line, job)


def _wide_row(w: Writing, notice: str, chart: str, water: Water, job: Job) -> str:
    words = job.phrase(w.verbs) + (f", {job.link}" if job.link else "")
    place = write_point(water.form, job.points[0])
    return f"{notice}\t{chart}\t{w.verbs.word(job.verb)}\t{words}\t{place}"
