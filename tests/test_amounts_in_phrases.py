"""Figures with a unit in a phrase: depth, height above the water, or told where neither."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"


def read(phrase: str) -> Bulletin:
    return parse(f"{HEAD}Insert {phrase} 46-00.00S 122-00.00W\n")


# phrase, kind, depth in metres, height in metres; common practice, no published source
AMOUNTS = [
    ("obstruction at 5.2m", "obstruction", "5.2", None),
    ("depth over wreck 5.2m", "sounding", "5.2", None),
    ("depth 5m over the wreck", "sounding", "5", None),
    ("rock, 2m above datum", "rock", "-2", None),
    ("rock which dries 2m above chart datum", "rock", "-2", None),
    ("rock, 2m above water", "rock_dry", None, "2"),
    ("islet 5m above high water", "island", None, "5"),
    ("rock, 2m high", "rock", None, "2"),
]


@pytest.mark.parametrize(("phrase", "kind", "depth", "height"), AMOUNTS)
def test_what_a_figure_is_measured_from(
    phrase: str, kind: str, depth: str | None, height: str | None
) -> None:
    bulletin = read(phrase)
    feature = bulletin.notices[0].charts[0].actions[0].feature
    assert feature.kind == kind
    assert (feature.depth.value_m if feature.depth else None) == (depth and Decimal(depth))
    assert feature.height_m == (height and Decimal(height))
    assert not bulletin.findings


BOUNDS = (
    "depth over 5.2m", "wreck, depth over 5.2m", "wreck, over 5.2m", "depth 5.2m or more",
    "wreck, least depth over 20m", "depth exceeding 20m", "wreck with less than 10m over it",
    "mast, height over 20m",
)  # fmt: skip


@pytest.mark.parametrize("phrase", BOUNDS)
def test_bound_is_no_depth(phrase: str) -> None:
    bulletin = read(phrase)
    action = bulletin.notices[0].charts[0].actions[0]
    assert action.feature.depth is None
    assert not action.usable
    assert "depth-bound-only" in {finding.code for finding in bulletin.findings}


@pytest.mark.parametrize("phrase", ["rock near 5m", "anchorage for vessels over 50m"])
def test_figure_beside_nothing_is_told(phrase: str) -> None:
    bulletin = read(phrase)
    assert bulletin.notices[0].charts[0].actions[0].feature.depth is None
    assert "feature-figure-unread" in {finding.code for finding in bulletin.findings}
