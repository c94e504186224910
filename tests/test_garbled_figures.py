"""Figures of depths, clearances and heights that break off or have more behind them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, HEAD_WITHOUT_UNIT, P, Q, codes, errors, told, usable_of

BROKEN = [
    ("wreck, least depth 14,x m", "depth-unread"),
    ("depth 10.a m", "depth-unread"),
    ("depth 10.? m", "depth-unread"),
    ("bridge, vertical clearance 12.a m", "depth-unread"),
    ("overhead power cable, vertical clearance 12.a m", "depth-unread"),
    ("tower, height 12.a m", "depth-unread"),
    ("obstruction, least depth 1 2.8 metres", "depth-several"),
    ("obstruction, least depth 15 15.6 m", "depth-several"),
    ("depth 5.9 x", "depth-unit-unread"),
    ("depth 8.6 m ft", "depth-unit-unread"),
]


@pytest.mark.parametrize("head", [HEAD, HEAD_WITHOUT_UNIT])
@pytest.mark.parametrize(("phrase", "code"), BROKEN)
def test_a_figure_that_breaks_off_is_no_value(head: str, phrase: str, code: str) -> None:
    bulletin = parse(f"{head}Insert {phrase} {P} {Q}\n")
    assert told(bulletin) == []
    assert code in errors(bulletin)


@pytest.mark.parametrize(
    "phrase", ["depth to 9.x m", "depth 8.2 m to 9.a m", "depth 8.a m to 9 m"]
)
def test_a_change_to_such_a_figure_is_held(phrase: str) -> None:
    assert told(parse(f"{HEAD}Amend {phrase} {P}\n")) == []


ODD = ["depth 05 m", "drying height 05 m", "depth 6666.3 m", "depth 33334 feet", "depth 007 m"]


@pytest.mark.parametrize("phrase", ODD)
def test_figures_as_no_chart_has_them_are_told(phrase: str) -> None:
    assert "depth-figure-odd" in codes(parse(f"{HEAD_WITHOUT_UNIT}Insert {phrase} {P}\n"))


CLEAN = [
    "depth 12 SD",
    "depth 12 R",
    "wreck, least depth 8₆ rep 2024",
    "wreck, least depth 9.5 m, depth 12 m",
    "depth 6666 m",
    "depth 33.4 m",
    "depth 0.5 m",
    "depth 14m,position approximate",
    "tower, height 120.5 m",
    "depth 8.6 (m)",
    "rock, depth 2₁, at",
]


@pytest.mark.parametrize("phrase", CLEAN)
def test_whole_figures_stay_usable(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert len(usable_of(bulletin)) == 1
    assert "depth-figure-odd" not in codes(bulletin)
