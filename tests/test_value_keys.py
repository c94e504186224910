"""Keys of a record that only say what kind of value stands behind them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, P, actions_of, codes

HEAD = "Notice: 31/26\nArea: Tavrenne Islands, Quill Sound\nChart: 802\nPrevious: 19/26\n"


def _record(thing: str, *keys: str) -> str:
    lines = ["Action: add", f"Object: {thing}", *keys, f"At: {P}"]
    return f"{HEAD}Datum: WGS84\n\n" + "\n".join(lines) + "\n"


@pytest.mark.parametrize("key", ["Signal", "Fog signal", "Sound signal", "Sound", "SIGNAL"])
def test_a_signal_is_that_of_the_object(key: str) -> None:
    text = _record("fog signal", f"{key}: Horn(2)30s")
    bulletin = parse(text)
    (action,) = actions_of(bulletin)
    assert action.usable
    assert action.geometry.positions[0].iso6709 == AT_P
    assert action.feature.sound is not None
    assert (action.feature.sound.kind, action.feature.sound.group) == ("horn", [2])
    assert codes(bulletin) == set()
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize(
    ("value", "status"),
    [
        ("position approximate", "position_approximate"),
        ("PA", "position_approximate"),
        ("existence doubtful", "existence_doubtful"),
    ],
)
def test_a_quality_is_that_of_the_object(value: str, status: str) -> None:
    bulletin = parse(_record("dangerous wreck", f"Quality: {value}"))
    (action,) = actions_of(bulletin)
    told = [*action.feature.status, *(p.quality for p in action.geometry.positions if p.quality)]
    assert told == [status] or told == [status.removeprefix("position_")]
    assert codes(bulletin) == set()
    assert bulletin.coverage.unread == 0


def test_both_stand_in_one_record() -> None:
    text = _record("light-buoy", "Light: Q.R", "Signal: Bell", "Quality: position approximate")
    (action,) = actions_of(parse(text))
    assert action.feature.light is not None
    assert action.feature.sound is not None
    assert action.feature.status == ["position_approximate"]


@pytest.mark.parametrize(
    "line",
    [
        "Signal: discontinued since May",
        "Former signal: Horn(2)30s",
        "Quality: Horn(2)30s",
        "Quality: extinguished",
    ],
)
def test_another_key_or_value_is_told(line: str) -> None:
    bulletin = parse(_record("fog signal", line))
    assert codes(bulletin)


def test_outside_a_record_no_such_key_is_read() -> None:
    text = f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\nSignal: Horn(2)30s\nInsert rock {P}\n"
    bulletin = parse(text)
    assert [(one.verb, one.feature.kind) for one in actions_of(bulletin)] == [("insert", "rock")]
    assert all(one.feature.sound is None for one in actions_of(bulletin))
