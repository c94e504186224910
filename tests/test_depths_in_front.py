"""A depth in front of the thing that it is of, and words in front of a depth."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse.readers.features import read_feature
from noticeparse.readers.swaps import read_swap


@pytest.mark.parametrize(
    ("words", "kind", "depth"),
    [
        ("depth 5m, wreck", "wreck", "5"),
        ("depth, 5.2m, Wk", "wreck", "5.2"),
        ("depth 5m, dangerous wreck", "wreck_dangerous", "5"),
        ("depth 5m, rock", "rock", "5"),
        ("sounding 5m, obstruction, PA", "obstruction", "5"),
        ("depth 5m, reported 2025, wreck PA", "wreck", "5"),
        ("depth 5m, shoal", "shoal", "5"),
        ("depth 5m, foul ground", "foul_ground", "5"),
    ],
)
def test_danger_behind_its_depth(words: str, kind: str, depth: str) -> None:
    reading = read_feature(words, "m")
    assert reading.feature.kind == kind
    assert reading.feature.depth is not None
    assert reading.feature.depth.value_m == Decimal(depth)
    assert not reading.faults


def test_danger_behind_its_depth_as_a_replacement() -> None:
    swap = read_swap("depth 12m with depth 11.5m, wreck", "m")
    assert (swap.feature.kind, swap.replacement.kind) == ("sounding", "wreck")


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ("depth 5m, pile", "feature-kind-apposed"),
        ("depth 5m (wreck)", "feature-kind-apposed"),
        ("depth 5m, dredged area", "feature-kind-apposed"),
        ("depth 5m, berth No 4", "feature-kind-apposed"),
        ("depth 5m, light-buoy", "feature-kinds-several"),
        ("depth 5m, wreck buoy", "feature-kind-apposed"),
    ],
)
def test_other_things_behind_a_depth_are_told(words: str, code: str) -> None:
    reading = read_feature(words, "m")
    assert reading.feature.kind == "sounding"
    assert code in [fault.code for fault in reading.faults]


@pytest.mark.parametrize(
    "words",
    ["depth 5m", "depth 5m, in fairway", "depth 5m, enclosed by 10m contour", "depth 5m, PA"],
)
def test_depths_alone(words: str) -> None:
    reading = read_feature(words, "m")
    assert reading.feature.kind == "sounding"
    assert not reading.faults


@pytest.mark.parametrize(
    ("words", "unread"),
    [
        ("sunken barge, least depth 4m", "sunken barge"),
        ("East Ledge, depth 5m", "East Ledge"),
        ("wooden barge with swept depth 4m", "wooden barge"),
        ("concrete caisson (depth 4m)", "concrete caisson"),
    ],
)
def test_words_in_front_of_a_depth_are_told(words: str, unread: str) -> None:
    faults = read_feature(words, "m").faults
    assert [(one.code, one.values["written"]) for one in faults] == [
        ("feature-words-unread", unread)
    ]


@pytest.mark.parametrize("words", ["new, depth 5m", "PA, depth 5m", "shoal, least depth 4m"])
def test_known_words_in_front_of_a_depth(words: str) -> None:
    assert not read_feature(words, "m").faults
