"""Fog signals named by a noun: those of a buoy, and those beside a light."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature


@pytest.mark.parametrize(
    ("phrase", "sound"),
    [
        ("bell buoy", "bell"),
        ("Whistle buoy", "whistle"),
        ('gong buoy "3"', "gong"),
        ("lighted whistle buoy, Mo(A) 6s", "whistle"),
        ("lighted bell buoy, Fl.R.4s", "bell"),
        ("port-hand bell buoy", "bell"),
        ("bell light-buoy, Q.R", "bell"),
        ("whistle buoy, Whis", "whistle"),
    ],
)
def test_the_sound_of_a_buoy_stands_before_it(phrase: str, sound: str) -> None:
    feature, faults = read_feature(phrase)
    assert feature.sound is not None
    assert feature.sound.kind == sound
    assert "FOGSIG" in feature.s57
    assert {fault.code for fault in faults} <= {"feature-class-unknown"}


@pytest.mark.parametrize(
    "phrase",
    [
        "light, Fl.5s, and fog signal",
        "light, fog signal and Racon",
        "light-buoy, racon and fog signal",
        "lightfloat, Fl.5s, fog signal",
    ],
)
def test_a_fog_signal_beside_a_light_has_its_class(phrase: str) -> None:
    feature = read_feature(phrase).feature
    assert feature.sound is None
    assert "FOGSIG" in feature.s57
    assert "FOGSIG" not in read_feature(phrase.replace("fog signal", "daymark")).feature.s57


def test_a_signal_that_is_not_there_and_a_name_are_no_sound() -> None:
    assert "FOGSIG" not in read_feature("light, Fl.5s, no fog signal").feature.s57
    named = read_feature("Bell Rock buoy").feature
    assert (named.sound, named.name) == (None, "Bell Rock")


def test_a_second_sound_is_told() -> None:
    assert "sound-twice" in {one.code for one in read_feature("bell buoy, Horn(1)30s").faults}
    faults = read_feature("bell and whistle buoy").faults
    assert "feature-kinds-several" in {one.code for one in faults}
