"""The kit: what a family of faults is, how one is planted in a notice, and what must come of it.

A family draws pairs of texts that differ by one fault.  `in_notice` makes such a pair of two lists
of phrases: both are written into the same drawn notice, in one of the generator's layouts.
`NOTICEPARSE_LAWS=full` plants each fault a thousand times, else fifty times.
"""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Collection, Iterator
from random import Random
from typing import NamedTuple

from noticeparse import parse
from noticeparse.checks.regions import Region
from noticeparse.records import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.testing.generator import ALL, generate
from noticeparse.testing.generator.coordinates import Water
from noticeparse.testing.generator.features import Hand
from noticeparse.testing.generator.jobs import Draw, Job
from noticeparse.testing.generator.truth import Feature

TIMES = 1000 if os.environ.get("NOTICEPARSE_LAWS") == "full" else 50


class Planted(NamedTuple):
    """A text with a fault and its clean twin."""

    faulty: str
    clean: str
    words: str
    """Words of the action or the stretch that the finding must point at."""


class Family(NamedTuple):
    """A kind of fault: the code that must be found, and what draws a text with the fault."""

    name: str
    code: str
    plant: Callable[[Random], Planted]
    region: Region | None = None


Phrases = tuple[str, ...]
"""One or two phrases of insertions, which every notice has room for; the last has the fault."""


def in_notice(rng: Random, faulty: Phrases, clean: Phrases, *, metric: bool = False) -> Planted:
    """Both lists of phrases in the same notice; `metric`: on no chart in fathoms or feet."""
    while True:
        seed, layout = rng.randrange(10**6), rng.choice(ALL)
        texts = [_text(seed, layout, phrases) for phrases in (faulty, clean)]
        is_metric = not any(word in texts[0].casefold() for word in _OLD_UNITS)
        # A line that ends between the letter of a coordinate and its figures is another fault.
        is_whole = not any(re.search(" [SW]$", text, re.MULTILINE) for text in texts)
        is_short = len(texts[0]) < _LONGEST
        if is_short and is_whole and (is_metric or not metric):
            return Planted(texts[0], texts[1], faulty[-1])


_LONGEST = 1200
"""Characters of a notice; a longer one takes its time and has no other kind of neighbours."""
_OLD_UNITS = ("fathom", " fm", "feet", " ft")


def _text(seed: int, layout: str, phrases: Phrases) -> str:
    plan = [_insertion(phrase) for phrase in phrases]
    return generate(seed, notices=1, layouts=(layout,), plan=plan).text


def _insertion(phrase: str) -> Draw:
    def draw(rng: Random, hand: Hand, water: Water) -> Job:
        # What the phrase must give is not compared here.
        return Job("insert", phrase, Feature("", ()), (water.point(),))

    return draw


def of_phrases(
    name: str,
    code: str,
    draw: Callable[[Random], tuple[str | Phrases, str | Phrases]],
    *,
    metric: bool = False,
    region: Region | None = None,
) -> Family:
    """A family whose faults are phrases: `draw` gives the faulty and the clean ones."""

    def plant(rng: Random) -> Planted:
        faulty, clean = draw(rng)
        return in_notice(rng, _listed(faulty), _listed(clean), metric=metric)

    return Family(name, code, plant, region)


def _listed(phrases: str | Phrases) -> Phrases:
    return (phrases,) if isinstance(phrases, str) else phrases


# What must come of it


class Outcome(NamedTuple):
    """What went wrong with the plantings of one family, each with its text."""

    missed: list[str]
    false_alarms: list[str]


def try_family(family: Family, codes: Collection[str], times: int = TIMES) -> Outcome:
    """Plant and read: the fault must be told where it stands.

    In the clean twin neither an error of its own nor any of `codes` may be told.
    """
    rng = Random(family.name)
    outcome = Outcome([], [])
    for _ in range(times):
        planted = family.plant(rng)
        bulletin = parse(planted.faulty, region=family.region)
        found = [one for one in bulletin.findings if one.code == family.code]
        if not any(_is_at(one, planted, bulletin) for one in found):
            told = sorted({one.code for one in bulletin.findings})
            outcome.missed.append(f"`{planted.words}` is not told; {told}\n{planted.faulty}")
        # An error that stands in both texts comes from the notice around.
        around = {(one.code, one.message) for one in bulletin.findings}
        for one in parse(planted.clean, region=family.region).findings:
            is_own = one.severity == "error" and (one.code, one.message) not in around
            if is_own or one.code in codes:
                outcome.false_alarms.append(f"{one.code}: {one.message}\n{planted.clean}")
    return outcome


def _is_at(finding: Finding, planted: Planted, bulletin: Bulletin) -> bool:
    """Whether a finding points at the action with the words, or at the words themselves."""
    words = _plain(planted.words)
    stretch = planted.faulty[finding.span.start : finding.span.end] if finding.span else ""
    texts = (stretch, *_texts(finding, bulletin))
    return any(words in _plain(text) for text in texts)


def _texts(finding: Finding, bulletin: Bulletin) -> Iterator[str]:
    """The texts of the actions that a finding belongs to."""
    for path in finding.paths:
        steps = path.split("/")[1:]
        if len(steps) >= 6 and steps[4] == "actions":
            notice, chart, action = (int(steps[place]) for place in (1, 3, 5))
            yield bulletin.notices[notice].charts[chart].actions[action].text


def _plain(words: str) -> str:
    return " ".join(words.split()).casefold()
