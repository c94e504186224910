"""An amount in a second unit says the same within its rounding, or is held."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import HEAD, P, actions_of, codes, errors

SAME = [
    ("depth 9.1m (30ft)", "9.1"),
    ("depth 9.1m (29ft)", "9.1"),
    ("depth 5 fathoms (9.1m)", "9.144"),
    ("depth 4¾ fathoms (8.7m)", "8.6868"),
    ("depth 30ft/9.1m", "9.144"),
    ("wreck, least depth 30ft (9.1m)", "9.144"),
    ("wreck, depth 9.1m (30 feet)", "9.1"),
    ("rock, depth 9.1m [30ft]", "9.1"),
]


@pytest.mark.parametrize(("words", "metres"), SAME)
def test_same_depth_again(words: str, metres: str) -> None:
    reading = read_feature(words)
    assert reading.feature.depth is not None
    assert reading.feature.depth.value_m == Decimal(metres)
    assert reading.faults == ()


@pytest.mark.parametrize("words", ["bridge, clearance 20m (66ft)", "tower, height 20m (66ft)"])
def test_same_clearance_or_height_again(words: str) -> None:
    assert read_feature(words).faults == ()


@pytest.mark.parametrize(
    "words",
    [
        "depth 9.1m (33ft)",
        "wreck, depth 9.1m (36ft)",
        "tower, height 20m (76ft)",
        "depth 30ft/10.1m",
        "depth 9.1m (5m)",
    ],
)
def test_other_amount_is_held(words: str) -> None:
    assert errors(parse(f"{HEAD}Insert {words} {P}\n")) == {"depth-several"}


def test_same_unit_again_is_no_conversion() -> None:
    assert codes(parse(f"{HEAD}Insert rock (2m), depth 9.1m {P}\n")) != set()


def test_both_states_of_a_bridge() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert bridge (clearance 20m closed, 40m open) {P}\n"))
    assert action.feature.clearance is not None
    assert (action.feature.clearance.value_m, action.feature.clearance.kind) == (20, "closed")


@pytest.mark.parametrize(
    ("words", "metres"),
    [
        ("depth to 9.1m (30ft)", "9.1"),
        ("depth of wreck to 8.2m (27ft)", "8.2"),
        ("depth from 9.1m (30ft) to 8.2m (27ft)", "8.2"),
    ],
)
def test_new_depth_in_two_units(words: str, metres: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend {words} {P}\n"))
    assert action.usable
    assert [one.new.value_m for one in action.changes] == [Decimal(metres)]


@pytest.mark.parametrize("words", ["depth to 9.1m (36ft)", "clearance of bridge to 20m (76ft)"])
def test_new_value_at_odds_is_held(words: str) -> None:
    assert errors(parse(f"{HEAD}Amend {words} {P}\n")) == {"depth-several"}
