"""The unit of a change that is stated once is that of its old and its new value."""

from __future__ import annotations

from typing import Any

import pytest

from noticeparse.readers.changes import read_change

_FOOT = 0.3048

PAIRS = [
    ("vertical clearance of bridge from 60 to 58 feet", "clearance", 60 * _FOOT, 58 * _FOOT),
    ("clearance from 60ft to 58, bridge", "clearance", 60 * _FOOT, 58 * _FOOT),
    ("bridge, vertical clearance 60ft: clearance to 58", "clearance", 60 * _FOOT, 58 * _FOOT),
    ("elevation of light from 40 to 45 feet", "light.elevation_m", 40 * _FOOT, 45 * _FOOT),
    ("height of tower from 85 to 90 ft", "height_m", 85 * _FOOT, 90 * _FOOT),
    ("depth of wreck from 12 to 11 fathoms", "depth", 72 * _FOOT, 66 * _FOOT),
    ("depth of wreck from 12 fathoms to 11", "depth", 72 * _FOOT, 66 * _FOOT),
    ("drying height of rock from 4 to 5 ft", "depth", -4 * _FOOT, -5 * _FOOT),
    ("depth 3 to 4 fathoms", "depth", 18 * _FOOT, 24 * _FOOT),
    # Each with its own, and none at all.
    ("depth of wreck from 12 m to 6 fathoms", "depth", 12, 36 * _FOOT),
    ("depth of wreck from 12 to 11", "depth", 12, 11),
    ("vertical clearance of bridge from 18 to 17 m", "clearance", 18, 17),
]


def _metres(value: Any) -> float:
    return float(getattr(value, "value_m", value))


@pytest.mark.parametrize(("text", "path", "old", "new"), PAIRS)
def test_unit_of_both(text: str, path: str, old: float, new: float) -> None:
    reading = read_change(text)
    (change,) = reading.changes
    assert change.property == path
    assert _metres(change.old) == pytest.approx(old)
    assert _metres(change.new) == pytest.approx(new)


def test_words_stay_as_written() -> None:
    reading = read_change("depth 3 to 4 fathoms")
    (change,) = reading.changes
    assert (change.old.written, change.new.written) == ("3", "4 fathoms")
    assert reading.feature.text == "depth 3"
    assert reading.faults == ()
