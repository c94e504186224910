"""What all layouts share: the page, the numbers of notices and charts, heads and headings."""

from __future__ import annotations

from collections.abc import Sequence
from random import Random

from noticeparse.testing.generator import names
from noticeparse.testing.generator.coordinates import FORMS, Form, Water, draw_centre
from noticeparse.testing.generator.features import Hand, draw_hand
from noticeparse.testing.generator.jobs import VERBS, Draw, Job, Verbs, draw_job
from noticeparse.testing.generator.truth import Notice, Truth

YEAR = 2026


class Writing:
    """A bulletin being written: its lines, the truth of them, and the hand that holds the pen."""

    def __init__(self, rng: Random, layout: str, plan: Sequence[Draw] = ()) -> None:
        self.rng = rng
        self._has_plan = bool(plan)
        self._plan = list(plan)
        """Actions that must stand in the text, before those that are drawn."""
        self.lines: list[str] = []
        self.size = 0
        self.truth = Truth(layout)
        self.first = self.number = rng.randint(100, 400)
        self.applied: dict[str, int] = {}
        """The last permanent notice on each chart."""
        self.head: float | None = None
        """Which form the chart heads of the open notice have."""
        self.hand: Hand = draw_hand(rng)
        self.verbs: Verbs = VERBS[0]
        self.centre = draw_centre(rng)

    def line(self, words: str = "") -> int:
        """Write one line and give its number, counted from 1."""
        self.lines.append(words)
        self.size += len(words) + 1
        return len(self.lines)

    @property
    def next_line(self) -> int:
        """The number that the next line will have."""
        return len(self.lines) + 1

    def text(self) -> str:
        """All lines."""
        return "\n".join(self.lines) + "\n"

    def open_notice(self, *, marked: float = 0.06, has_chart_heads: bool = True) -> Notice:
        """A notice with the next number and a new hand; some are temporary.

        A preliminary notice, which tells of what is to come, has no commands to write.
        """
        rng = self.rng
        self.number += rng.randint(1, 3)
        status = "temporary" if rng.random() < marked else "permanent"
        mark = {"temporary": "(T)", "preliminary": "(P)"}.get(status, "")
        notice = Notice(f"{self.number}{mark}/{YEAR % 100}", status, self.next_line)
        self.truth.notices.append(notice)
        self.head = None
        # What is planned stands in shallow water.
        is_deep = self.number % 4 == 0 and not self._has_plan
        self.hand = draw_hand(rng, has_chart_heads=has_chart_heads, is_deep=is_deep)
        self.verbs = rng.choice(VERBS)
        self.centre = draw_centre(rng)
        return notice

    def job(self, water: Water) -> Job:
        """The next action: one that is planned, else any."""
        draw = self._plan.pop(0) if self._plan else draw_job
        return draw(self.rng, self.hand, water)

    def written_id(self, notice: Notice, *, long: bool = False) -> str:
        """The number of a notice with two or four figures of its year."""
        return notice.id.replace("/26", "/2026") if long else notice.id

    def chart(self, notice: Notice) -> str:
        """A chart number that the notice does not have yet."""
        rng = self.rng
        number = str(rng.randint(201, 2999))
        pick = rng.random()
        if pick > 0.96:
            number = f"{number[:2]}-{rng.randint(10, 99)}{rng.choice('AB')}"
        elif pick > 0.92:
            number = f"TV-{number}{rng.choice('ABC')}"
        elif pick > 0.84:
            number = f"TV {number}"
        while number in notice.charts:
            number = str(rng.randint(3000, 9000) + len(notice.charts))
        notice.charts.append(number)
        return number

    def earlier(self, chart: str) -> str:
        """The number of the last notice on a chart: of this bulletin, or before it."""
        number = self.rng.randint(1, self.first)
        number = self.applied.get(chart, number)
        if self.truth.notices[-1].status == "permanent":
            self.applied[chart] = self.number
        return f"{number}/{YEAR % 100}"

    def water(self, forms: tuple[Form, ...] = FORMS) -> Water:
        """The waters of the open notice, with a form of positions of their own."""
        form = self.rng.choice(forms)
        self.truth.forms.add(form.name)
        return Water(self.rng, form, self.centre)

    def heading(self, notice: Notice) -> str:
        """The geographic heading of a notice, from general to particular, then its subjects."""
        rng = self.rng
        notice.regions = ["TAVRENNE ISLANDS", rng.choice(names.WATERS)]
        if rng.random() < 0.4:
            notice.regions.append(rng.choice(names.PARTS))
        notice.subjects = rng.sample(names.SUBJECTS, rng.randint(1, 3))
        return " - ".join(notice.regions) + " - " + ". ".join(notice.subjects) + "."

    def run_on_heading(self, notice: Notice) -> str:
        """A heading of two parts, as one sentence."""
        notice.regions = [self.rng.choice(names.WATERS), self.rng.choice(names.PARTS)]
        return ", ".join(notice.regions)

    def date(self) -> str:
        """A date in words."""
        return f"{self.rng.randint(1, 28)} {self.rng.choice(names.MONTHS)} {YEAR}"

    def chart_head(self, chart: str) -> str:
        """The head of a chart section, with the unit of its depths where the hand states one."""
        rng, depths = self.rng, self.hand.depths.head
        previous = self.earlier(chart)
        if self.head is None:
            # The heads of one notice look alike: all of them state a datum, or none.
            self.head = rng.random()
        pick = self.head
        if pick < 0.4:
            international = f" (INT {rng.randint(9000, 9999)})" if rng.random() < 0.3 else ""
            unit = f" ({depths})" if depths else ""
            return f"Chart {chart}{international}{unit} [{previous}] WGS84"
        if pick < 0.7:
            unit = f", {depths}" if depths else ""
            return f"Chart {chart}{unit}. Last notice {previous}."
        unit = f"   {depths}" if depths else ""
        number = rng.randint(9000, 9999)
        return f"Chart {chart}   INT {number}   (last correction {previous})   WGS 84{unit}"

    def record(self, notice: Notice, chart: str, line: int, job: Job) -> None:
        """Note the truth of an action that was written."""
        notice.actions.append(job.action(notice.id, chart, line))


def capitalised(words: str) -> str:
    """Words with a capital at their start."""
    return words[:1].upper() + words[1:]


def is_plural(words: str) -> bool:
    """Whether a phrase names several things: overfalls, tide rips, eddies, breakers."""
    return words in ("overfalls", "tide rips", "eddies", "breakers")


def with_article(words: str) -> str:
    """Words with `a` or `an` before them, where they name one thing."""
    if is_plural(words) or words in ("kelp", "foul ground"):
        return words
    return ("an " if words[0].lower() in "aeiou" else "a ") + words
