"""Each fault of a whole edition is found every time it is planted; clean editions are silent.

Fifty draws of each, a thousand with `NOTICEPARSE_LAWS=full`.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from datetime import date
from random import Random

import pytest

from noticeparse import parse
from noticeparse.catalogue.editions import ENTRIES
from noticeparse.faults import Entry, pointed
from noticeparse.records import Bulletin, Finding
from noticeparse.testing.generator.editions import Plan, draw_editions, write_edition
from noticeparse.together import seen_together
from tests.faults.editions import PLANTS, Planted
from tests.faults.editions_together import PLANTS_TOGETHER, together_twice
from tests.specimens import under_head

DRAWS = 1000 if os.environ.get("NOTICEPARSE_LAWS") == "full" else 50
CODES = {entry.code for entry in ENTRIES} | {"date-impossible"}


def read(plans: Sequence[Plan]) -> list[tuple[str, Bulletin]]:
    """The texts of some plans and what is read in them, seen together."""
    texts = [write_edition(plan) for plan in plans]
    bulletins = seen_together([(text, parse(text)) for text in texts])
    return list(zip(texts, bulletins, strict=True))


def told(bulletin: Bulletin) -> list[str]:
    """The findings about the edition, in words."""
    return [f"{one.code}: {one.message}" for one in bulletin.findings if one.code in CODES]


def is_found(text: str, bulletin: Bulletin, planted: Planted) -> bool:
    """Whether a finding has the code of a fault, and points at its words and at a record."""
    return any(
        one.code == planted.code and planted.words in stretch(text, one) and is_placed(one)
        for one in bulletin.findings
    )


def stretch(text: str, finding: Finding) -> str:
    assert finding.span is not None
    at = finding.span.start
    assert finding.span.line == text.count("\n", 0, at) + 1
    assert finding.span.column == at - text.rfind("\n", 0, at)
    return text[at : finding.span.end]


def is_placed(finding: Finding) -> bool:
    """Whether a finding has a record; a date of an edition that has no other has none."""
    return bool(finding.paths) or finding.code == "date-impossible"


def test_clean_editions_are_silent() -> None:
    for seed in range(DRAWS):
        for text, bulletin in read(draw_editions(Random(seed), 2)):
            assert told(bulletin) == [], f"seed {seed}\n{text}"
            assert [one.id for one in bulletin.notices], text


@pytest.mark.parametrize("plant", PLANTS, ids=lambda plant: plant.__name__)
def test_each_fault_is_found(plant: Callable[[Random, Plan], Planted]) -> None:
    for seed in range(DRAWS):
        rng = Random(seed)
        (plan,) = draw_editions(rng)
        planted = plant(rng, plan)
        ((text, bulletin),) = read([plan])
        assert is_found(text, bulletin, planted), f"{planted}, {told(bulletin)}\n{text}"


@pytest.mark.parametrize("plant", PLANTS_TOGETHER, ids=lambda plant: plant.__name__)
def test_each_fault_between_editions_is_found(
    plant: Callable[[Random, list[Plan]], Planted],
) -> None:
    for seed in range(DRAWS):
        rng = Random(seed)
        plans = draw_editions(rng, 3)
        planted = plant(rng, plans)
        both = read(plans[:2])
        assert is_found(*both[1], planted), f"{planted}, {told(both[1][1])}\n{both[1][0]}"
        # A number of the first edition in the second makes both chains doubtful.
        assert plant is together_twice or told(both[0][1]) == []


def test_the_day_asked_about() -> None:
    (plan,) = draw_editions(Random(1))
    text = write_edition(plan)
    ended = [one for one in parse(text, as_of=date(2028, 1, 1)).findings if one.code in CODES]
    assert {one.code for one in ended} == {"validity-ended"}
    assert {one.severity for one in ended} == {"info"}
    assert len(ended) == len(plan.of("temporary") + plan.of("preliminary"))


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_specimens_of_the_catalogue(entry: Entry) -> None:
    bad = pointed(entry.bad)
    text = under_head(bad.text)
    before = text.index(bad.text)
    found = [one.span for one in parse(text).findings if one.code == entry.code]
    assert [(span.start, span.end) for span in found if span] == [
        (before + bad.start, before + bad.end)
    ]
    assert entry.code not in {one.code for one in parse(under_head(entry.good)).findings}
