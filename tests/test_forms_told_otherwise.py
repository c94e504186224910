"""Racons, colours, ranges and paint written in other forms say the same."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse.readers.features import read_feature

RACONS = [
    "light-buoy, Fl.R.5s, Racon Mo (K)", "light-buoy, Fl.R.5s, racon Morse K",
    'light-buoy, Fl.R.5s, Racon "K"', "light-buoy, Fl.R.5s, racon coded K",
    "light-buoy, Fl.R.5s, racon (-.-)", "light-buoy, Fl.R.5s, Racon(K)",
]  # fmt: skip


@pytest.mark.parametrize("text", RACONS)
def test_letter_of_a_racon(text: str) -> None:
    feature = read_feature(text).feature
    assert feature.racon is not None
    assert feature.racon.morse == "K"
    assert feature.text == text
    assert (feature.name, feature.more_lights) == (None, [])


LIGHTS = [
    ("light, Red Fl 3s", ["R"], "3", None),
    ("light, green Fl(2) 10s 12m 10M", ["G"], "10", "12"),
    ("light, Fl.R.3s", ["R"], "3", None),
    ("light, Fl.5s (0.5+4.5), 12m 10M", ["W"], "5", "12"),
    ("light, Fl.5s (fl 0.5s), 12m 10M", ["W"], "5", "12"),
]


@pytest.mark.parametrize(("text", "colours", "period", "elevation"), LIGHTS)
def test_light(text: str, colours: list[str], period: str, elevation: str | None) -> None:
    feature = read_feature(text).feature
    assert feature.light is not None
    assert feature.light.colours == colours
    assert feature.light.period_s == Decimal(period)
    assert feature.light.elevation_m == (Decimal(elevation) if elevation else None)
    assert (feature.more_lights, feature.depth) == ([], None)


@pytest.mark.parametrize("told", ["0.5+4.5", "fl 0.5s", "fl 0.5s, ec 4.5s"])
def test_lengths_of_flash_and_dark_are_told(told: str) -> None:
    reading = read_feature(f"light, Fl.5s ({told}), 12m 10M")
    codes = [(fault.code, fault.values["written"]) for fault in reading.faults]
    assert codes == [("feature-figure-in-brackets", told)]


RANGES = [
    ("light, Fl.WRG.5s12m 15M(W), 12M(R), 11M(G)", ["15", "12", "11"]),
    ("light, Fl.WRG.5s12m 15M(W), 12M(G), 11M(R)", ["15", "11", "12"]),
    ("light, Oc(2)WRG.10s 21m 15M (W), 11M (R, G)", ["15", "11", "11"]),
]


@pytest.mark.parametrize(("text", "ranges"), RANGES)
def test_range_of_each_colour(text: str, ranges: list[str]) -> None:
    light = read_feature(text).feature.light
    assert light is not None
    assert list(light.range_by_colour.values()) == [Decimal(one) for one in ranges]


PAINT = [
    ("buoy, B.Y.B., east cardinal", ["black", "yellow", "black"]),
    ("buoy, Y.B.Y.", ["yellow", "black", "yellow"]),
    ("buoy, G.R.G.", ["green", "red", "green"]),
    ("beacon, R.W.", ["red", "white"]),
]


@pytest.mark.parametrize(("text", "colours"), PAINT)
def test_letters_of_paint(text: str, colours: list[str]) -> None:
    feature = read_feature(text).feature
    assert feature.colours == colours
    assert feature.light is None
