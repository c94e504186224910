"""Things that run from place to place, at places that no word joins."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, codes


@pytest.mark.parametrize(
    "words",
    [
        f"pipeline {P}, {Q}",
        f"pipeline {P} and {Q}",
        f"pipelines {P}, {Q}",
        f"breakwater\n{P}\n{Q}",
        f"limit of dredged area {P}, {Q}",
        f"bridge (a) {P} (b) {Q}",
        f"submarine cable {P} and {Q}",
        f"submarine cable in {P} and in {Q}",
        f"submarine cables {P}, {Q}, {R}",
        f"channel, centre line {P} {Q}",
        f"fishing stakes {P} to {Q}",
    ],
)
def test_whether_it_is_one_line_is_told(words: str) -> None:
    assert "line-of-points" in codes(parse(f"{HEAD}Insert {words}\n"))


@pytest.mark.parametrize(
    "words",
    [
        f"pipeline joining {P} and {Q}",
        f"pipeline {P} to {Q}",
        f"pipeline between {P} and {Q}",
        f"pipeline {P}",
        f"submarine cable {P}, {Q}",
        f"submarine cable\n{P}\n{Q}",
        f"outfalls {P}, {Q}",
        f"bridge lights {P}, {Q}",
        f"wreck {P}, {Q}",
        f"pipeline buoys {P}, {Q}",
    ],
)
def test_one_line_or_several_points(words: str) -> None:
    assert "line-of-points" not in codes(parse(f"{HEAD}Insert {words}\n"))
