"""Lights, depths and other values in words; moves by bearing and distance."""

from __future__ import annotations

import re

import pytest
from pyproj import Geod

import noticeparse
from noticeparse.worksheet.feature_words import depth_words, feature_facts
from noticeparse.worksheet.light_words import light_words
from noticeparse.worksheet.places import between

LIGHTS = [
    # INT 1, P10: one row for each class, then groups, colours, and the other parts of P16.
    ("F.R", "fixed red"),
    ("Oc.R.3s", "occulting red, every 3 seconds"),
    ("Oc(2)W.13s", "occulting white, groups of 2 eclipses, every 13 seconds"),
    ("Oc(2+1)W.12s", "occulting white, composite groups of 2 + 1 eclipses, every 12 seconds"),
    ("Iso.G.4s", "isophase green, every 4 seconds"),
    ("Fl.W.5s", "flashing white, every 5 seconds"),
    ("Fl(3)W.15s", "flashing white, groups of 3, every 15 seconds"),
    ("Fl(2+1)R.10s", "flashing red, composite groups of 2 + 1 flashes, every 10 seconds"),
    ("LFl.W.10s", "long-flashing white, every 10 seconds"),
    ("Q.W", "continuous quick-flashing white"),
    ("Q(3)W.10s", "quick-flashing white, groups of 3, every 10 seconds"),
    (
        "Q(6)+LFl.W.15s",
        "quick-flashing white, 6 flashes followed by one long flash, every 15 seconds",
    ),
    ("IQ.R.12s", "interrupted quick-flashing red, every 12 seconds"),
    ("VQ.W", "continuous very quick-flashing white"),
    ("VQ(9)W.10s", "very quick-flashing white, groups of 9, every 10 seconds"),
    ("IVQ.W.7s", "interrupted very quick-flashing white, every 7 seconds"),
    ("UQ.Y", "continuous ultra quick-flashing yellow"),
    ("IUQ.W.10s", "interrupted ultra quick-flashing white, every 10 seconds"),
    ("Mo(A)W.8s", "Morse code white, the letter A, every 8 seconds"),
    ("FFl.W.10s", "fixed and flashing white, every 10 seconds"),
    ("Al.WR.6s", "alternating white and red, every 6 seconds"),
    ("Al.Fl.WR.30s", "alternating flashing white and red, every 30 seconds"),
    ("Al.BuY.3s", "alternating blue and yellow, every 3 seconds"),
    ("Fl.5s", "flashing white (no colour written), every 5 seconds"),
    ("Fl.Y.2.5s", "flashing yellow, every 2.5 seconds"),
    ("Q.G.1s", "continuous quick-flashing green, every 1 second"),
    ("2F.R(vert)", "two fixed red lights, one above the other"),
    ("3F.G(hor)", "three fixed green lights, side by side"),
    ("Dir.Fl.W.5s", "directional flashing white, every 5 seconds"),
    ("Aero.Fl.W.5s", "aeronautical flashing white, every 5 seconds"),
    ("F.R.4m3M", "fixed red; elevation 4 metres; range 3 nautical miles"),
    ("F.R.1m1M", "fixed red; elevation 1 metre; range 1 nautical mile"),
    ("F.G(occas)(priv)", "fixed green; occasional, private"),
    (
        "LFl.WR.8s18m12/9M",
        "long-flashing white and red by sectors, every 8 seconds; elevation 18 metres; "
        "range white 12, red 9 nautical miles",
    ),
    (
        # Of the colour between no figure is made up.
        "Fl(3)WRG.15s21m15-11M",
        "flashing white, red and green by sectors, groups of 3, every 15 seconds; elevation 21 "
        "metres; range white 15, red not stated, green 11 nautical miles (from 15 to 11)",
    ),
    (
        "Fl.WRG.4s 36ft 12/9/9M W 171°-195°, R 195°-268°, G 268°-171°",
        "flashing white, red and green by sectors, every 4 seconds; elevation 10.9728 metres; "
        "range white 12, red 9, green 9 nautical miles; sectors, bearings true from seaward, "
        "clockwise: white 171° to 195°, red 195° to 268°, green 268° to 171°",
    ),
]


@pytest.mark.parametrize(("written", "words"), LIGHTS, ids=[one for one, _ in LIGHTS])
def test_light(written: str, words: str) -> None:
    assert light_words(noticeparse.parse_light(written)) == words


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ("8.6m", "8.6 metres: depth below chart datum"),
        ("8₆m", "8.6 metres: depth below chart datum"),
        ("least depth 8.6m", "8.6 metres: least depth over it, below chart datum"),
        ("dries 1.2m", "dries: uncovers to 1.2 metres above chart datum"),
        ("swept to 12.4m", "12.4 metres: swept: nothing stands higher than this depth"),
        ("dredged to 8.0m", "8 metres: dredged to this depth"),
        ("126m no bottom", "no bottom found at 126 metres: it is deeper than that"),
        ("depth unknown", "depth unknown"),
        ("3fm 2ft", "6.096 metres: depth below chart datum (written 3fm 2ft)"),
        ("8.6", "8.6 metres: depth below chart datum (no unit is written; read as metres)"),
    ],
)
def test_depth(written: str, words: str) -> None:
    assert depth_words(noticeparse.parse_depth(written)) == words


@pytest.mark.parametrize(
    ("phrase", "facts"),
    [
        ('legend, "Foul"', ["Legend: “Foul”, letter for letter"]),
        ("bridge, vertical clearance 18.5m", ["Clearance: 18.5 metres: vertical clearance"]),
        ("buoy, Horn(2)30s", ["Fog signal: horn, groups of 2, every 30 seconds"]),
        ("Racon(K)", ["Racon: radar transponder beacon, Morse letter K"]),
        ("virtual AIS aid", ["AIS: virtual: there is no mark to be seen"]),
    ],
)
def test_feature(phrase: str, facts: list[str]) -> None:
    text = f"Chart 802 [1/26] WGS84\nInsert {phrase} 47°13'.05S., 123°44'.20W."
    action = noticeparse.parse(text).notices[0].charts[0].actions[0]
    told = [f"{one.label}: {one.words}" for one in feature_facts(action.feature)]
    assert [one for one in told if one in facts] == facts, told


PAIRS = [
    ("47-12.34S 123-45.67W", "47-12.41S 123-45.58W"),
    ("47-12.34S 123-45.67W", "47-32.34S 123-15.67W"),
    ("47-00.00S 179-59.00E", "47-00.00S 179-59.00W"),
    ("47-00.00S 123-00.00W", "46-00.00S 123-00.00W"),
    ("46-00.00S 123-00.00W", "47-00.00S 123-00.00W"),
]


@pytest.mark.parametrize(("one", "other"), PAIRS)
def test_bearing_and_distance(one: str, other: str) -> None:
    first, second = noticeparse.parse_position(one), noticeparse.parse_position(other)
    azimuth, _, metres = Geod(ellps="WGS84").inv(first.lon, first.lat, second.lon, second.lat)
    words = between(first, second)
    match = re.fullmatch(r"([0-9.]+)° true, ([0-9.]+) nautical miles \(([0-9]+) metres\)", words)
    assert match, words
    doubt = 0.05 if "." in match[1] else 0.5
    assert len(match[1].partition(".")[0]) == 3
    assert abs((float(match[1]) - azimuth + 180) % 360 - 180) <= doubt + 1e-9
    assert abs(float(match[3]) - metres) <= 0.5
    assert abs(float(match[2]) * 1852 - metres) <= 0.0051 * 1852


def test_bearing_says_no_more_than_the_positions_bear() -> None:
    near = between(*(noticeparse.parse_position(one) for one in PAIRS[0]))
    assert near == "139° true, 0.093 nautical miles (172 metres)"
    assert between(*[noticeparse.parse_position(PAIRS[0][0])] * 2) == (
        "the two positions are the same"
    )
