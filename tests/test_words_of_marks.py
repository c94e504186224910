"""Words of a topmark or of paint that are not read are told by name."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature

UNREAD = [
    ("buoy, Bl/Y", "Bl/Y"),
    ("buoy, Or", "Or"),
    ("buoy, Wh", "Wh"),
    ("beacon, RWHB", "RWHB"),
    ("beacon, RW Ch", "RW Ch"),
    ("beacon, black ball over black cone", "black ball over black cone"),
    ("beacon, black ball over black ball", "black ball over black ball"),
    ("beacon, topmark: sphere over cone", "sphere over cone"),
    ("buoy, Y, St Andrew cross", "St Andrew cross"),
    ("buoy, BuYVS, upright yellow cross", "upright yellow cross"),
    ("beacon, topmarks: two cones (points down)", "two cones (points down)"),
    ("beacon, triangle point downwards", "triangle point downwards"),
    ("beacon, T topmark", "T topmark"),
    ("stake with broom, points up", "broom"),
]


@pytest.mark.parametrize(("text", "words"), UNREAD)
def test_unread_words_are_told(text: str, words: str) -> None:
    told = {
        fault.values["written"]
        for fault in read_feature(text).faults
        if fault.code == "feature-words-unread"
    }
    assert told == {words}


READ = [
    "buoy, BY, topmark 2 cones point up",
    "north cardinal buoy, two black cones points up",
    "conical buoy, green",
    "port hand buoy, red can topmark",
    "special buoy, Y, X topmark",
    "buoy, RGVS",
    "beacon, RW",
]


@pytest.mark.parametrize("text", READ)
def test_words_that_are_read_are_not_told(text: str) -> None:
    assert "feature-words-unread" not in {fault.code for fault in read_feature(text).faults}
