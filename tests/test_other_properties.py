"""Amounts that are none of the record: widths, draughts, counts, clearances of what lies below."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse.readers.changes import read_change
from noticeparse.readers.features import read_feature


@pytest.mark.parametrize(
    "words",
    [
        "width of channel to 100m",
        "width of fairway from 100m to 150m",
        "draught limit of channel to 9m",
        "channel, maximum draught 9m, to 8m",
        "depth of burial of cable to 2m",
        "burial depth of cable from 1m to 2m",
        "number of piles to 3",
        "number of cables to 3",
        "elevation of tower to 45m",
        "period of Racon to 60s",
        "light, height of structure to 15m",
        "height of structure of light to 15m",
        "berth, length 120m, to 150m",
        "wreck, clearance to 13m",
    ],
)
def test_no_value_of_the_record_changes(words: str) -> None:
    reading = read_change(words, "m")
    assert not reading.changes
    assert "change-value-unread" in [fault.code for fault in reading.faults]


@pytest.mark.parametrize(
    ("words", "kind", "path"),
    [
        ("number of light-buoy to 3", "light_buoy_generic", "name"),
        ("elevation of light-beacon to 4m", "light_beacon", "light.elevation_m"),
        ("elevation of lighthouse to 40m", "lighthouse", "light.elevation_m"),
        ("height of tower to 45m", "tower", "height_m"),
        ("light, height of tower to 15m", "tower", "height_m"),
        ("period of fog signal to 60s", "fog_signal", "sound.period_s"),
        ("fog signal period from 30s to 60s", "fog_signal", "sound.period_s"),
        ("period of light-buoy to 6s", "light_buoy_generic", "light.period_s"),
        ("depth of channel to 9m", "fairway", "depth"),
        ("depth over wreck from 9.1m to 8.6m", "wreck", "depth"),
        ("least depth over the rock to 8.6m", "rock", "depth"),
        ("overhead cable, clearance to 13m", "cable_overhead", "clearance"),
        ("wreck, safe clearance to 13m", "wreck", "clearance"),
    ],
)
def test_values_of_the_record_change(words: str, kind: str, path: str) -> None:
    reading = read_change(words, "m")
    assert [change.property for change in reading.changes] == [path]
    assert reading.feature.kind == kind


def test_swept_depth_over_a_wreck() -> None:
    (change,) = read_change("swept depth over wreck to 10.2m", "m").changes
    assert change.new.kind == "swept"  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "words",
    ["wreck, clearance 14m", "tidal turbine, clearance 12m", "submarine pipeline, clearance 3m"],
)
def test_clearance_of_what_lies_below_is_told(words: str) -> None:
    reading = read_feature(words, "m")
    assert reading.feature.clearance is None
    assert [fault.code for fault in reading.faults] == ["feature-figure-unread"]


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("wreck, safe clearance 14m", "safe"),
        ("obstruction, safe clearance depth 14m", "safe"),
        ("obstruction, safe clearance depth of 14m", "safe"),
        ("overhead cable, clearance 14m", "vertical"),
        ("bridge, clearance 14m", "vertical"),
    ],
)
def test_clearances(words: str, kind: str) -> None:
    reading = read_feature(words, "m")
    assert reading.feature.clearance is not None
    assert (reading.feature.clearance.kind, reading.feature.clearance.value_m) == (kind, 14)
    assert not reading.faults


def test_clear_depth_is_held() -> None:
    assert [one.code for one in read_feature("wreck, clear depth 14m").faults] == ["depth-unread"]


@pytest.mark.parametrize(
    "words", ["wreck 50m by 10m", "wreck, 100m x 20m", "platform, 50m by 10m"]
)
def test_sides_of_a_thing_are_no_depth_and_no_height(words: str) -> None:
    reading = read_feature(words, "m")
    assert (reading.feature.depth, reading.feature.height_m) == (None, None)
    assert [one.code for one in reading.faults] == ["feature-figure-unread"] * 2


@pytest.mark.parametrize("words", ["light, Fl.5s, height 18m", "light, Fl.5s, ht. 18m"])
def test_height_of_a_light_is_its_elevation(words: str) -> None:
    feature = read_feature(words, "m").feature
    assert feature.light is not None
    assert (feature.light.elevation_m, feature.height_m) == (18, None)


@pytest.mark.parametrize(
    ("words", "elevation"),
    [
        ("light, Fl.5s20m, height 18m", 20),
        ("light, Fl.5s, white tower, height 18m", None),
        ("light on tower, Fl.5s, height 18m", None),
    ],
)
def test_height_of_the_structure(words: str, elevation: int | None) -> None:
    feature = read_feature(words, "m").feature
    assert feature.light is not None
    assert (feature.light.elevation_m, feature.height_m) == (elevation, 18)


@pytest.mark.parametrize(
    "words",
    [
        "light, Oc.WR.8s20m15M(W)11M(R)",
        "light, Oc.WR.8s20m15M(W), 11M(R)",
        "light, Oc.WR.8s20m 15M (W) 11M (R)",
        "light, Oc.WR.8s20m11M(R)15M(W)",
    ],
)
def test_ranges_by_colour_close_behind_the_elevation(words: str) -> None:
    reading = read_feature(words, "m")
    assert reading.feature.light is not None
    assert reading.feature.light.range_by_colour == {"W": Decimal(15), "R": Decimal(11)}
    assert not reading.faults
