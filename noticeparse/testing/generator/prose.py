"""Layouts in sentences: numbered sentences, and run-on lines parted by semicolons."""

from __future__ import annotations

import re
from textwrap import wrap

from noticeparse.testing.generator.columns import listed, written_places
from noticeparse.testing.generator.coordinates import FORMS, Form, Water, write_point
from noticeparse.testing.generator.jobs import Job
from noticeparse.testing.generator.writing import Writing, capitalised, is_plural, with_article

_SENTENCE_FORMS: tuple[Form, ...] = tuple(
    form for form in FORMS if form.joint != "; " and form.name != "dm_mark_apart"
)
"""Forms that may stand between words: no semicolon within, no wide blanks."""
_LETTER_IN_FRONT = re.compile("(?<= [NSEW]) (?=[0-9]{2,3}°)")
_PASSIVE = {
    "insert": ("has been established", "has been placed", "has been inserted"),
    "delete": ("has been removed", "has been deleted", "has been discontinued"),
    "move": ("has been moved", "has been relocated", "has been shifted"),
    "amend": ("has been changed", "has been amended"),
    "replace": ("has been replaced",),
}
_WIDTH = 98


def sentences_head(w: Writing) -> None:
    """The title of a port's notices."""
    w.line("PORT ELLORY HARBOUR MASTER")
    w.line(f"Local corrections, {w.date()}")
    w.line()


def sentences(w: Writing) -> None:
    """Numbered sentences, in the imperative or telling what has been done."""
    notice = w.open_notice(marked=0)
    w.line(f"{notice.id}  {w.heading(notice)}")
    chart = w.chart(notice)
    w.line(w.chart_head(chart))
    water = w.water(_SENTENCE_FORMS)
    is_passive = w.rng.random() < 0.5
    for number in range(1, w.rng.randint(3, 8)):
        job = w.job(water)
        while is_passive and not _makes_sentence(job):
            job = w.job(water)
        words = _passive(w, water, job) if is_passive else _imperative(w, water, job)
        line = w.next_line
        _wrapped(w, f"{number}. {words}")
        w.record(notice, chart, line, job)
    w.line()


def _wrapped(w: Writing, words: str) -> None:
    # A letter in front stays with its figures: at a line end it may be a direction.
    held = _LETTER_IN_FRONT.sub("\0", words)
    for part in wrap(held, _WIDTH, break_on_hyphens=False, subsequent_indent="   "):
        w.line(part.replace("\0", " "))


def _makes_sentence(job: Job) -> bool:
    """Whether a job can be told in the passive: one feature, and a subject if it is amended."""
    if job.verb == "amend":
        return bool(job.subject)
    return job.shape != "points"


def _imperative(w: Writing, water: Water, job: Job) -> str:
    places = written_places(w, water, job.points)
    head = f"{w.verbs.word(job.verb)} {_object(w, job)}"
    if job.destination is not None:
        return f"{head} from {places[0]} to {_stopped(write_point(water.form, job.destination))}"
    link = job.link or "in"
    joint = " and in " if not job.link else " and "
    return f"{head} {link} {_stopped(listed(places, joint))}"


def _object(w: Writing, job: Job) -> str:
    if job.verb == "insert":
        return with_article(job.words)
    return "the " + job.phrase(w.verbs)


def _stopped(words: str) -> str:
    return words if words.endswith(".") else words + "."


def _passive(w: Writing, water: Water, job: Job) -> str:
    done = w.rng.choice(_PASSIVE[job.verb])
    if is_plural(job.words):
        done = done.replace("has", "have", 1)
    places = listed(written_places(w, water, job.points))
    if job.verb == "insert":
        return f"{_opened(job)} {done} {job.link or 'in'} {_stopped(places)}"
    link = "in" if job.link in ("", "from") else job.link
    subject = f"The {job.subject or job.words} {link} {places} {done}"
    if job.destination is not None:
        return f"{subject} to {_stopped(write_point(water.form, job.destination))}"
    if job.verb == "amend":
        return _stopped(f"{subject} to {job.other_words}")
    if job.verb == "replace":
        return _stopped(f"{subject} by {with_article(job.other_words)}")
    return _stopped(subject)


def _opened(job: Job) -> str:
    return capitalised(with_article(job.words))


# Run-on lines


def run_on_head(w: Writing) -> None:
    """The title of a list of run-on lines."""
    number = w.rng.randint(1, 52)
    w.line(f"TAVRENNE ISLANDS, CORRECTIONS TO CHARTS, LIST {number} OF 2026 ({w.date()})")
    w.line()


def run_on(w: Writing) -> None:
    """A notice on one line: its charts, then actions parted by semicolons."""
    notice = w.open_notice()
    charts = [w.chart(notice)]
    if w.rng.random() < 0.2:
        charts.append(w.chart(notice))
    heads = " and ".join(f"{chart} ({w.earlier(chart)})" for chart in charts)
    word = "Chart" if len(charts) == 1 else "Charts"
    unit = f", {w.hand.depths.head}" if w.hand.depths.head else ""
    water = w.water(_SENTENCE_FORMS)
    jobs = [w.job(water) for _ in range(w.rng.randint(2, 7))]
    line = w.next_line
    is_upper = w.rng.random() < 0.5
    commands = "; ".join(_command(w, water, job, is_upper=is_upper) for job in jobs)
    w.line(f"{notice.id}. {w.run_on_heading(notice)}. {word} {heads}{unit}: {_stopped(commands)}")
    for chart in charts:
        for job in jobs:
            w.record(notice, chart, line, job)


def _command(w: Writing, water: Water, job: Job, *, is_upper: bool) -> str:
    verb = w.verbs.word(job.verb)
    places = written_places(w, water, job.points)
    head = f"{verb.upper() if is_upper else verb.lower()} {job.phrase(w.verbs)}"
    if job.destination is not None:
        return f"{head} from {places[0]} to {write_point(water.form, job.destination)}"
    if job.link:
        return f"{head} {job.link} {listed(places)}"
    return f"{head}, {listed(places)}"
