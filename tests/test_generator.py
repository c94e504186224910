"""The generator gives the same bytes for the same seed; the reader finds exactly what they say.

Every action of every layout: verb, feature, positions as exact fractions, destination, light,
depth, shape, chart, notice and line; no error findings and next to no warnings on clean text.
"""

from __future__ import annotations

from collections import Counter
from functools import cache
from typing import NamedTuple

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin
from noticeparse.testing.generator import ALL, Truth, generate
from noticeparse.testing.generator.__main__ import read_size
from noticeparse.testing.generator.compare import differences
from noticeparse.testing.generator.coordinates import FORMS

SEEDS = range(1, 17)
NOTICES = 8


class Reading(NamedTuple):
    """A generated text as read, and the truth of it."""

    text: str
    truth: Truth
    bulletin: Bulletin


@cache
def reading(layout: str, seed: int) -> Reading:
    made = generate(seed, notices=NOTICES, layouts=(layout,))
    return Reading(made.text, made.truth, parse(made.text))


@pytest.mark.parametrize("layout", ALL)
def test_same_seed_same_bytes(layout: str) -> None:
    one = generate(4, size_bytes=20_000, layouts=(layout,))
    other = generate(4, size_bytes=20_000, layouts=(layout,))
    assert one.text.encode() == other.text.encode()
    assert one.truth.to_json() == other.truth.to_json()
    assert generate(5, size_bytes=20_000, layouts=(layout,)).text != one.text


@pytest.mark.parametrize("layout", ALL)
def test_size_is_reached_and_lines_are_true(layout: str) -> None:
    made = generate(3, size_bytes=20_000, layouts=(layout,))
    assert 20_000 <= len(made.text.encode()) < 26_000
    lines = made.text.split("\n")
    for action in made.truth.actions():
        assert lines[action.line - 1].strip()
        for lat, lon in (point.exact() for point in action.points):
            assert -49 <= lat <= -46
            assert -128 <= lon <= -122


def test_every_form_of_a_position_is_written() -> None:
    made = [generate(seed, notices=60, layouts=("notice_first",)) for seed in SEEDS]
    assert set().union(*(one.truth.forms for one in made)) == {form.name for form in FORMS}


@pytest.mark.parametrize(("words", "size"), [("500", 500), ("10kB", 10_000), ("2MB", 2_000_000)])
def test_sizes_in_words(words: str, size: int) -> None:
    assert read_size(words) == size


def test_unknown_layout_is_refused() -> None:
    with pytest.raises(ValueError, match="no layout `spiral`"):
        generate(1, notices=1, layouts=("spiral",))


@pytest.mark.parametrize("seed", SEEDS)
@pytest.mark.parametrize("layout", ALL)
def test_reader_finds_exactly_the_truth(layout: str, seed: int) -> None:
    read = reading(layout, seed)
    found = differences(read.bulletin, read.truth)
    assert not found, f"{len(found)} differences:\n" + "\n".join(_shown(read, found))


def _shown(read: Reading, found: list[str]) -> list[str]:
    """The first differences, each with its line."""
    lines = read.text.split("\n")
    shown = []
    for one in found[:12]:
        number = one.removeprefix("line ").partition(":")[0]
        line = lines[int(number) - 1] if number.isdigit() else ""
        shown.append(f"{one}\n    {line[:200]}")
    return shown


@pytest.mark.parametrize("layout", ALL)
def test_clean_text_gives_no_errors_and_few_warnings(layout: str) -> None:
    severities: Counter[str] = Counter()
    actions = 0
    for seed in SEEDS:
        read = reading(layout, seed)
        severities.update(finding.severity for finding in read.bulletin.findings)
        actions += sum(1 for _ in read.truth.actions())
    assert severities["error"] == 0
    assert severities["warning"] * 50 <= actions


@pytest.mark.parametrize("layout", ALL)
def test_every_character_is_read(layout: str) -> None:
    read = reading(layout, 1)
    assert read.bulletin.coverage.unread == 0, read.bulletin.coverage.unread_spans[:5]
