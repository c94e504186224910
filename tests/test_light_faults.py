"""Faults of a light, the stretch each points at, and what is read all the same.

The limits and their sources stand in `test_light_borders.py`.
"""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Any

import pytest

from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.lights import read_aids, read_light
from tests.light_records import CATALOGUE, ENTRIES, arc, told

# Faults: text, code and stretch of each, and the fields that may stand all the same.
FAULTY: list[tuple[str, list[tuple[str, str]], dict[str, Any]]] = [
    # The unit letters of period and elevation exchanged.
    (
        "Fl.5m12s10M",
        [("light-figures-out-of-order", "5m12s")],
        {"period_s": None, "elevation_m": None, "ranges_nm": [10]},
    ),
    (
        "Fl(3)WRG.15s21m11-15M",
        [("light-range-order", "11-15M")],
        {"range_by_colour": {"W": None, "R": None, "G": None}},
    ),
    ("Fl(0)R.5s", [("light-group-zero", "(0)")], {"groups": []}),
    ("F.R.5s4m3M", [("light-fixed-with-period", "5s")], {"period_s": None, "elevation_m": 4}),
    ("Q(3)10sm", [("light-unit-without-figure", "m")], {"period_s": 10, "elevation_m": None}),
    ("VQ(6)+LFl.10", [("light-period-missing-unit", "10")], {"period_s": None}),
    (
        "Fl.WRG.4s12m15/12M",
        [("light-range-count", "15/12M")],
        {"ranges_nm": [15, 12], "range_by_colour": {}},
    ),
    ("Fl.XR.5s", [("light-colour-unknown", "X")], {"colours": [], "period_s": 5}),
    ("Fl(2+)R.10s", [("light-group-unreadable", "(2+)")], {"groups": [], "period_s": 10}),
    ("LF1.10s9M", [("light-look-alike", "LF1")], {"rhythm": "LFl", "period_s": 10}),
    ("Q(9)l5s", [("light-look-alike", "l5s")], {"groups": [9], "period_s": 15}),
    ("0c.R.3s", [("light-look-alike", "0c")], {"rhythm": "Oc", "period_s": 3}),
    ("1so.R.4s", [("light-look-alike", "1so")], {"rhythm": "Iso"}),
    ("Fl.R.1O.5s", [("light-look-alike", "1O.5s")], {"period_s": 10.5}),
    (
        "Fl.R.5s6m4m",
        [("light-range-in-metres", "4m")],
        {"elevation_m": 6, "ranges_nm": []},
    ),
    ("Al.W.5s", [("light-alternating-one-colour", "Al.W.5s")], {}),
    ("Fl.R.0.3s", [("light-flash-too-quick", "0.3s")], {"period_s": 0.3}),
    ("Mo(A8)8s", [("light-morse-odd", "(A8)")], {"morse": "A8", "period_s": 8}),
    ("Fl.WR.4s W 171°-195°, R 190°-268°", [("sector-overlap", "195°, R 190°")], {}),
    (
        "Fl.WRG.4s W 171°-195°, R 196°-268°, G 268°-171°",
        [("sector-gap-narrow", "195°, R 196°")],
        {},
    ),
    ("Fl(3)15s 250m 5M", [("light-elevation-great", "250m 5M")], {"elevation_m": 250}),
    ("Fl.G.5 s 3M 4M", [("light-range-twice", "3M 4M")], {"period_s": 5, "ranges_nm": []}),
    # Groups and periods.
    ("Fl(3)1s", [("light-group-too-quick", "(3)1s")], {}),
    ("Fl(5)Y.2s", [("light-group-too-quick", "(5)Y.2s")], {"groups": [5], "period_s": 2}),
    ("Q(9)5s", [("light-group-too-quick", "(9)5s")], {}),
    ("VQ(9)3s", [("light-group-too-quick", "(9)3s")], {}),
    ("Q(6)+LFl.6s", [("light-group-too-quick", "(6)+LFl.6s")], {}),
    ("LFl.2s", [("light-long-flash-too-quick", "2s")], {}),
    ("Q.R.5s", [("light-quick-period", "5s")], {}),
    ("VQ.1s", [("light-quick-period", "1s")], {}),
    ("Iso(2)R.4s", [("light-group-impossible", "(2)")], {"groups": []}),
    ("F(2)R", [("light-group-impossible", "(2)")], {"groups": []}),
    ("IQ(3)10s", [("light-group-odd", "(3)")], {"groups": [3]}),
    ("Gp Fl 10s", [("light-group-missing", "Gp Fl 10s")], {}),
    ("Fl.R(2)10s", [("light-group-out-of-place", "(2)")], {"groups": [2]}),
    ("Fl(2)(3)10s", [("light-leftover-figure", "(3)")], {"groups": [2]}),
    ("Fl.R", [("light-period-missing", "Fl.R")], {}),
    ("Fl.R.150s", [("light-period-long", "150s")], {}),
    ("Fl.R.0s", [("light-figure-zero", "0s")], {"period_s": None}),
    ("Fl.R.5s10s", [("light-period-twice", "5s10s")], {"period_s": None}),
    ("Fl.R.5/10s", [("light-figures-unclear", "5/10s")], {"period_s": None}),
    (
        "Fl.R .5s",
        [
            ("light-period-missing", "Fl.R"),
            ("light-leftover-figure", "5"),
            ("light-unit-without-figure", "s"),
        ],
        {"period_s": None},
    ),
    ("Mo 8s", [("light-morse-missing", "Mo 8s")], {"morse": None}),
    ("Mo()8s", [("light-group-unreadable", "()")], {"morse": None}),
    # Colours.
    ("Fl.WB.5s", [("light-colour-ambiguous", "B")], {"colours": []}),
    ("Fl.RR.5s", [("light-colour-twice", "R")], {"colours": ["R"]}),
    # Characters.
    ("Q(6) LFl.15s", [("light-plus-missing", "Q(6) LFl")], {"rhythm": "Q+LFl"}),
    ("Q(6) & LFl.15s", [("light-plus-missing", "Q(6) & LFl")], {"rhythm": "Q+LFl"}),
    # Elevation and range.
    ("Fl.R.5s6m7m4M", [("light-elevation-twice", "6m7m")], {"elevation_m": None}),
    ("Fl.R.5s4M6m", [("light-figures-out-of-order", "4M6m")], {"ranges_nm": []}),
    ("Fl.R.5s6m4", [("light-figure-missing-unit", "4")], {"ranges_nm": []}),
    ("Fl.WR.5s 12,9M", [("light-range-comma-unclear", "12,9M")], {"ranges_nm": []}),
    ("Fl.R.5s 150M", [("light-range-great", "150M")], {}),
    (
        "Fl(2)WR.6s9m8-6M",
        [("light-range-hyphen", "8-6M")],
        {"range_by_colour": {"W": 8, "R": 6}},
    ),
    (
        "Fl.RG.6s8-6M",
        [("light-range-hyphen", "8-6M")],
        {"range_by_colour": {"R": None, "G": None}},
    ),
    ("Fl.R.6s8-6M", [("light-range-count", "8-6M")], {"range_by_colour": {}}),
    # Capitals, where metres and miles look alike.
    (
        "LFL 10S 12M 9M",
        [("light-unit-by-order", "12M"), ("light-unit-by-order", "9M")],
        {"elevation_m": 12, "ranges_nm": [9]},
    ),
    (
        "F.R.4M3M",
        [("light-unit-by-order", "4M"), ("light-unit-by-order", "3M")],
        {"elevation_m": 4, "ranges_nm": [3]},
    ),
    ("ISO.R.4S 30FT 5M", [("light-unit-by-order", "5M")], {"ranges_nm": [5]}),
    ("FL.R.5S 9M", [("light-unit-unclear", "9M")], {"elevation_m": None, "ranges_nm": []}),
    # Leftovers: nothing is passed over.
    ("Fl.R.5s 123456", [("light-leftover-figure", "123456")], {"period_s": 5}),
    ("Fl.R.5s no such words", [("light-leftover-words", "no such words")], {}),
    ("Fl.R.5s &", [("light-leftover-words", "&")], {"written": "Fl.R.5s"}),
    ("Fl.R.5s Horn(2)30s 12m", [("light-leftover-figure", "12m")], {"elevation_m": None}),
    ("Dir Fl.WRG.5s 269.5°", [("light-axis-not-kept", "269.5°")], {"directional": True}),
    # Aids.
    (
        "Fl.5s Siren Mo(N)60s 3M",
        [("sound-morse-not-kept", "Mo(N)"), ("sound-range-not-kept", "3M")],
        {},
    ),
    ("Fl.5s Horn 30s Bell", [("sound-twice", "Bell")], {}),
    ("Fl.5s Racon(K) (3 & 10cm)", [("racon-band-not-kept", "(3 & 10cm)")], {}),
    ("Fl.5s Racon(K) Racon(M)", [("racon-twice", "Racon(M)")], {}),
    ("Fl.5s AIS V-AIS", [("ais-twice", "V-AIS")], {}),
    ("Fl.5s Horn(2)30s (occas)", [("aid-remark-not-kept", "(occas)")], {"remarks": []}),
    # Sectors.
    (
        "Fl.WR.5s W 045°-090°, R 090°-180°",
        [("sector-gap", "045°-090°, R 090°-180°")],
        {"sectors": [arc("W", 45, 90), arc("R", 90, 180)]},
    ),
    (
        "Fl.WR.5s W 000°-200°, R 180°-000°",
        [("sector-overlap", "200°, R 180°")],
        {},
    ),
    (
        "Fl.WR.5s W 045°-390°, R 090°-090°",
        [("sector-bearing-too-great", "390°"), ("sector-empty", "090°-090°")],
        {"sectors": []},
    ),
    (
        "Fl.WR.5s W 090°-180° (80°), R 180°-090°",
        [("sector-width-differs", "(80°)")],
        {},
    ),
    (
        "Fl.WR.5s W 045°-090°, G 090°-045°",
        [
            ("light-colour-without-sector", "W 045°-090°, G 090°-045°"),
            ("sector-colour-not-of-light", "G"),
        ],
        {},
    ),
    # IALA E-110: what the eye can count and tell apart.
    ("Fl(12)60s", [("light-group-large", "(12)")], {"groups": [12], "period_s": 60}),
    ("Iso.0.5s", [("light-period-short", "0.5s")], {"period_s": Decimal("0.5")}),
    ("Oc.1s", [("light-period-short", "1s")], {"period_s": 1}),
    ("IQ.1s", [("light-period-short", "1s")], {"period_s": 1}),
    (
        "Fl.WR.5s20m9/12M",
        [("light-range-white-less", "9/12M")],
        {"range_by_colour": {"W": 9, "R": 12}},
    ),
    ("Fl.R.5s R 045° to the shore", [("sector-limit-open", "045° to the shore")], {"sectors": []}),
    ("Fl.R.5s (vis 045°-090°", [("light-bracket-open", "(")], {"sectors": [arc(None, 45, 90)]}),
]


@pytest.mark.parametrize(("text", "faults", "fields"), FAULTY, ids=[row[0] for row in FAULTY])
def test_faults_and_their_stretches(
    text: str, faults: list[tuple[str, str]], fields: dict[str, Any]
) -> None:
    reading = read_light(text)
    assert told(text, reading.faults) == faults
    read = reading.lights[0].model_dump(mode="json")
    assert {key: read[key] for key in fields} == fields


def test_second_light_without_a_sign_is_told() -> None:
    reading = read_light("Fl.R.5s F.G")
    assert [read.written for read in reading.lights] == ["Fl.R.5s", "F.G"]
    assert told("Fl.R.5s F.G", reading.faults) == [("light-join-missing", "F")]


NO_LIGHT = [
    ("hello", "light-unreadable", "hello"),
    ("", "light-unreadable", ""),
    ("QUAY", "light-unreadable", "QUAY"),
    ("Flat", "light-unreadable", "Flat"),
    ("Q.Oc.R.5s", "light-character-unknown", "Q.Oc.R.5s"),
]


@pytest.mark.parametrize(("text", "code", "stretch"), NO_LIGHT, ids=[row[0] for row in NO_LIGHT])
def test_what_is_no_light_gives_none(text: str, code: str, stretch: str) -> None:
    reading = read_light(text)
    assert reading.lights == ()
    assert told(text, reading.faults) == [(code, stretch)]


def test_every_code_has_a_specimen() -> None:
    texts = [row[0] for row in (*FAULTY, *NO_LIGHT)] + ["Fl.R.5s F.G", "Racon(KK K"]
    codes = {fault.code for text in texts for fault in read_light(text).faults}
    codes |= {read_aids("hello").faults[0].code, read_sectors("hello").faults[0].code}
    # The one-value reader tells of several lights, a check of the fog signal's period, the reader
    # of phrases of what stands beside a light, that of changes of sectors alone, the items of
    # letters that stand apart.
    beside = {
        "light-said-unlit",
        "light-character-missing",
        "light-ranges-of-colours",
        "sector-others-unsaid",
        "light-letters-apart",
        "light-colour-apart",
        "sector-magnetic",
        "sector-not-read",
    }
    assert codes | beside | {"light-several", "light-period-of-signal"} == set(CATALOGUE)


def test_messages_name_what_was_written() -> None:
    for text in [row[0] for row in (*FAULTY, *NO_LIGHT)]:
        for fault in read_light(text).faults:
            message = CATALOGUE[fault.code].message.format(**fault.values)
            assert len(message) <= 90
            assert not message.endswith(".")
            assert set(fault.values) >= set(re.findall(r"{(\w+)}", CATALOGUE[fault.code].message))


@pytest.mark.parametrize("entry", ENTRIES, ids=[entry.code for entry in ENTRIES])
def test_catalogue_entries_keep_the_form(entry: Any) -> None:
    assert len(entry.message) <= 90
    assert re.fullmatch(r"(?:light|sector|sound|racon|ais|aid)(?:-[a-z]+)+", entry.code)
    assert all((entry.meaning, entry.hint, entry.source))


def test_severities_fit_the_faults() -> None:
    """What could not be read or cannot be is an error, what is read all the same is none."""
    lost = {"light-fixed-with-period", "light-group-zero", "light-range-twice", "sector-empty"}
    doubtful = {"light-look-alike", "sector-overlap", "light-group-too-quick", "light-range-order"}
    assert {CATALOGUE[code].severity for code in lost} == {"error"}
    assert {CATALOGUE[code].severity for code in doubtful} == {"warning"}
