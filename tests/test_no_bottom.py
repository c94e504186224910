"""Depths at which no bottom was found: they are deeper than their figure."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse.readers.changes import read_change, read_swap
from noticeparse.readers.features import read_feature


@pytest.mark.parametrize(
    "words",
    [
        "depth 80m, no bottom",
        "depth 80m no bottom",
        "depth 80m, no bottom found",
        "depth 80m (no bottom)",
        "depth 80m; no bottom reached",
        "depth 80m, bottom not found",
        "depth 80m, no ground",
        "no bottom at 80m",
        "no-bottom sounding 80m",
    ],
)
def test_no_bottom_behind_a_depth(words: str) -> None:
    reading = read_feature(words, "m")
    depth = reading.feature.depth
    assert depth is not None
    assert (reading.feature.kind, depth.kind, depth.value_m) == (
        "depth_no_bottom", "no_bottom", Decimal(80),
    )  # fmt: skip
    assert reading.feature.attributes["QUASOU"] == [5]


def test_no_bottom_as_a_new_value() -> None:
    (change,) = read_change("depth to 80m, no bottom", "m").changes
    assert change.new.kind == "no_bottom"  # type: ignore[union-attr]
    swap = read_swap("depth 80m by depth 80m, no bottom", "m")
    assert (swap.feature.kind, swap.replacement.kind) == ("sounding", "depth_no_bottom")


@pytest.mark.parametrize("words", ["depth 80m, sandy bottom", "depth 80m", "depth 80m, no name"])
def test_other_words_behind_a_depth(words: str) -> None:
    assert read_feature(words, "m").feature.kind == "sounding"
