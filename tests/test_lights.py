"""The light reader: characters, figures, sectors and aids of one description.

Sources beside the tables: `INT 1` is section P of the chart symbols, `S-57` the SIGGRP and LITCHR
pages, `S-12` the light table of the list-of-lights standard; rows without one are invented.
"""

from __future__ import annotations

import csv
import re
import typing
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from noticeparse.catalogue import lights, rhythms, sectors
from noticeparse.faults import Fault
from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.light_values import litchr_of, sound_of
from noticeparse.readers.lights import LightReading, read_aids, read_light
from noticeparse.records.light import Light, Rhythm

ENTRIES = lights.ENTRIES + rhythms.ENTRIES + sectors.ENTRIES
CATALOGUE = {entry.code: entry for entry in ENTRIES}

PLAIN: dict[str, Any] = {
    "alternating": False,
    "groups": [],
    "morse": None,
    "colours": ["W"],
    "period_s": None,
    "elevation_m": None,
    "ranges_nm": [],
    "range_by_colour": {},
    "sectors": [],
    "vertical": False,
    "horizontal": False,
    "directional": False,
    "leading": False,
    "aero": False,
    "count": 1,
    "remarks": [],
}


def light(rhythm: str, litchr: int | None, **fields: Any) -> dict[str, Any]:
    """Fill up the fields of a light, as JSON has them, with empty ones."""
    stated = "colours" in fields
    return {"rhythm": rhythm, "litchr": litchr, "colour_stated": stated, **PLAIN, **fields}


def one_range(miles: float, *colours: str) -> dict[str, Any]:
    return {"ranges_nm": [miles], "range_by_colour": dict.fromkeys(colours or ("W",), miles)}


def arc(
    colour: str | None,
    first: float,
    second: float,
    visibility: str | None = None,
    miles: float | None = None,
) -> dict[str, Any]:
    return {
        "colour": colour,
        "from_deg": first,
        "to_deg": second,
        "range_nm": miles,
        "visibility": visibility,
    }


def as_json(read: Light) -> dict[str, Any]:
    fields = read.model_dump(mode="json")
    del fields["written"]
    return fields


def told(text: str, faults: tuple[Fault, ...]) -> list[tuple[str, str]]:
    return [(fault.code, text[fault.start : fault.end]) for fault in faults]


WRG: list[str] = ["W", "R", "G"]

# Well-formed characters, each with all its fields and no fault.
WELL_FORMED: list[tuple[str, list[dict[str, Any]]]] = [
    ("Fl.5s12m10M", [light("Fl", 2, period_s=5, elevation_m=12, **one_range(10))]),
    (
        "Fl(3)WRG.15s21m15-11M",  # INT 1, the full description
        [
            light(
                "Fl",
                2,
                groups=[3],
                colours=WRG,
                period_s=15,
                elevation_m=21,
                ranges_nm=[15, 11],
                range_by_colour={"W": 15, "R": None, "G": 11},
            )
        ],
    ),
    (
        "Fl(2)R.10s8m6M",
        [
            light(
                "Fl",
                2,
                groups=[2],
                colours=["R"],
                period_s=10,
                elevation_m=8,
                **one_range(6, "R"),
            )
        ],
    ),
    ("LFl.10s14m9M", [light("LFl", 3, period_s=10, elevation_m=14, **one_range(9))]),
    (
        "LFl.WR.8s18m12/9M",
        [
            light(
                "LFl",
                3,
                colours=["W", "R"],
                period_s=8,
                elevation_m=18,
                ranges_nm=[12, 9],
                range_by_colour={"W": 12, "R": 9},
            )
        ],
    ),
    ("Q", [light("Q", 4)]),
    ("VQ", [light("VQ", 5)]),
    ("Q(3)10s", [light("Q", 4, groups=[3], period_s=10)]),
    ("VQ(3)5s", [light("VQ", 5, groups=[3], period_s=5)]),
    ("Q(6)+LFl.15s", [light("Q+LFl", 25, groups=[6], period_s=15)]),  # S-57
    ("VQ(6)+LFl.10s", [light("VQ+LFl", 26, groups=[6], period_s=10)]),  # S-57
    ("UQ(6)+LFl.10s", [light("UQ+LFl", 27, groups=[6], period_s=10)]),
    ("Q(9)15s", [light("Q", 4, groups=[9], period_s=15)]),
    ("VQ(9)10s", [light("VQ", 5, groups=[9], period_s=10)]),
    ("Iso.G.4s5M", [light("Iso", 7, colours=["G"], period_s=4, **one_range(5, "G"))]),
    (
        "Iso.WRG.6s15m12/9/9M",
        [
            light(
                "Iso",
                7,
                colours=WRG,
                period_s=6,
                elevation_m=15,
                ranges_nm=[12, 9, 9],
                range_by_colour={"W": 12, "R": 9, "G": 9},
            )
        ],
    ),
    (
        "Oc.R.3s6m4M",
        [light("Oc", 8, colours=["R"], period_s=3, elevation_m=6, **one_range(4, "R"))],
    ),
    ("Oc(2)W.13s", [light("Oc", 8, groups=[2], colours=["W"], period_s=13)]),  # S-12
    ("Oc(2+1)W.12s", [light("Oc", 8, groups=[2, 1], colours=["W"], period_s=12)]),  # S-12
    ("Fl(2+1)R.10s", [light("Fl", 2, groups=[2, 1], colours=["R"], period_s=10)]),
    (
        "Fl(2+1)G.12s7m5M",
        [
            light(
                "Fl",
                2,
                groups=[2, 1],
                colours=["G"],
                period_s=12,
                elevation_m=7,
                **one_range(5, "G"),
            )
        ],
    ),
    ("F.R.4m3M", [light("F", 1, colours=["R"], elevation_m=4, **one_range(3, "R"))]),
    (
        "2F.R(vert)8m2M",
        [
            light(
                "F",
                1,
                colours=["R"],
                count=2,
                vertical=True,
                elevation_m=8,
                **one_range(2, "R"),
            )
        ],
    ),
    ("3F.G(hor)", [light("F", 1, colours=["G"], count=3, horizontal=True)]),
    (
        "2F.G(vert)(occas)",
        [light("F", 1, colours=["G"], count=2, vertical=True, remarks=["occas"])],
    ),
    (
        "FFl.W.10s30m18M",  # S-57
        [light("FFl", 13, colours=["W"], period_s=10, elevation_m=30, **one_range(18))],
    ),
    ("Mo(A)8s10m8M", [light("Mo", 12, morse="A", period_s=8, elevation_m=10, **one_range(8))]),
    ("Mo(U)15s12m10M", [light("Mo", 12, morse="U", period_s=15, elevation_m=12, **one_range(10))]),
    (
        "Al.WR.6s20m14M",
        [
            light(
                "Al",
                28,
                alternating=True,
                colours=["W", "R"],
                period_s=6,
                elevation_m=20,
                **one_range(14, "W", "R"),
            )
        ],
    ),
    (
        "Al.Fl.WR.30s45m20/17M",
        [
            light(
                "Fl",
                19,
                alternating=True,
                colours=["W", "R"],
                period_s=30,
                elevation_m=45,
                ranges_nm=[20, 17],
                range_by_colour={"W": 20, "R": 17},
            )
        ],
    ),
    (
        "Al.Fl(2W+1R)20s",  # S-57
        [light("Fl", 19, alternating=True, groups=[2, 1], colours=["W", "R"], period_s=20)],
    ),
    ("Al.BuY.3s", [light("Al", 28, alternating=True, colours=["Bu", "Y"], period_s=3)]),
    ("Al.Oc.BuY.3s", [light("Oc", 17, alternating=True, colours=["Bu", "Y"], period_s=3)]),
    (
        "IQ.R.12s9m5M",
        [light("IQ", 9, colours=["R"], period_s=12, elevation_m=9, **one_range(5, "R"))],
    ),
    ("IVQ.7s", [light("IVQ", 10, period_s=7)]),
    ("UQ.Y.3M", [light("UQ", 6, colours=["Y"], **one_range(3, "Y"))]),
    ("IUQ.10s", [light("IUQ", 11, period_s=10)]),
    ("Fl.Y.2.5s3M", [light("Fl", 2, colours=["Y"], period_s=2.5, **one_range(3, "Y"))]),
    (
        "Oc.3s12m10M & F.R.7m4M",
        [
            light("Oc", 8, period_s=3, elevation_m=12, **one_range(10)),
            light("F", 1, colours=["R"], elevation_m=7, **one_range(4, "R")),
        ],
    ),
    (
        "Dir Fl.WRG.5s16m14-10M",
        [
            light(
                "Fl",
                2,
                directional=True,
                colours=WRG,
                period_s=5,
                elevation_m=16,
                ranges_nm=[14, 10],
                range_by_colour={"W": 14, "R": None, "G": 10},
            )
        ],
    ),
    (
        "Aero Al.Fl.WG.7.5s88m21M (exting) (priv)",
        [
            light(
                "Fl",
                19,
                aero=True,
                alternating=True,
                colours=["W", "G"],
                period_s=7.5,
                elevation_m=88,
                remarks=["exting", "priv"],
                **one_range(21, "W", "G"),
            )
        ],
    ),
    (
        "Fl.WRG.4s 36ft 12/9/9M W 171°-195°, R 195°-268°, G 268°-171°",
        [
            light(
                "Fl",
                2,
                colours=WRG,
                period_s=4,
                elevation_m=10.9728,
                ranges_nm=[12, 9, 9],
                range_by_colour={"W": 12, "R": 9, "G": 9},
                sectors=[arc("W", 171, 195), arc("R", 195, 268), arc("G", 268, 171)],
            )
        ],
    ),
    (
        "Gp Oc(3) W 10s 15m 10M",  # the old prefix
        [light("Oc", 8, groups=[3], colours=["W"], period_s=10, elevation_m=15, **one_range(10))],
    ),
]


@pytest.mark.parametrize(("text", "wanted"), WELL_FORMED, ids=[row[0] for row in WELL_FORMED])
def test_well_formed_characters(text: str, wanted: list[dict[str, Any]]) -> None:
    reading = read_light(text)
    assert [as_json(read) for read in reading.lights] == wanted
    assert reading.faults == ()
    assert " & ".join(read.written for read in reading.lights) == text.partition(" W 171")[0]


WITH_AIDS = [
    (
        "Fl(4)Y.20s5M Horn(2)30s Racon(K)",
        {"kind": "horn", "group": [2], "period_s": 30},
        {"morse": "K"},
        None,
    ),
    ("Q.G.1s (sync) V-AIS", None, None, {"virtual": True}),
    (
        "Fl.R.5s Whis AIS",
        {"kind": "whistle", "group": [], "period_s": None},
        None,
        {"virtual": False},
    ),
    ("Horn(2)30s", {"kind": "horn", "group": [2], "period_s": 30}, None, None),
    ("Siren 60s", {"kind": "siren", "group": [], "period_s": 60}, None, None),
    ("Bell (1) 20 s", {"kind": "bell", "group": [1], "period_s": 20}, None, None),
    ("Whis", {"kind": "whistle", "group": [], "period_s": None}, None, None),
    ("Racon(K)", None, {"morse": "K"}, None),
    ("racon (K)", None, {"morse": "K"}, None),
    ("Racon K", None, {"morse": "K"}, None),
    ("Racon", None, {"morse": None}, None),
    ("V-AIS", None, None, {"virtual": True}),
    ("AIS", None, None, {"virtual": False}),
    ("S-AIS", None, None, {"virtual": False}),
]


@pytest.mark.parametrize(
    ("text", "sound", "racon", "ais"), WITH_AIDS, ids=[r[0] for r in WITH_AIDS]
)
def test_aids_beside_a_light_or_alone(
    text: str,
    sound: dict[str, Any] | None,
    racon: dict[str, Any] | None,
    ais: dict[str, Any] | None,
) -> None:
    alone = text[:2] not in ("Fl", "Q.")
    reading = read_aids(text) if alone else read_light(text)
    dumped = [
        one and one.model_dump(mode="json") for one in (reading.sound, reading.racon, reading.ais)
    ]
    assert dumped == [sound, racon, ais]
    assert bool(reading.lights) is not alone
    assert reading.faults == ()


# The same lights written in other ways; only the fields named are compared.
VARIANTS: list[tuple[str, dict[str, Any]]] = [
    ("Fl R 5s", {"rhythm": "Fl", "colours": ["R"], "period_s": 5}),
    ("FlR5s", {"rhythm": "Fl", "colours": ["R"], "period_s": 5}),
    ("Fl,R,5s", {"rhythm": "Fl", "colours": ["R"], "period_s": 5}),
    ("Fl·R·5s", {"rhythm": "Fl", "colours": ["R"], "period_s": 5}),
    (
        "Fl (2) R. 10 s. 8 m. 6 M.",
        {"groups": [2], "period_s": 10, "elevation_m": 8, "ranges_nm": [6]},
    ),
    ("Fl.R.2,5s", {"period_s": 2.5}),
    ("Fl.R.3s30ft5M", {"period_s": 3, "elevation_m": 9.144, "ranges_nm": [5]}),
    ("Fl.R.5s 8nm", {"ranges_nm": [8]}),
    ("Fl.R.5s 8 miles", {"ranges_nm": [8]}),
    ("Fl.R.5s 6,5M", {"ranges_nm": [6.5]}),
    ("Fl.WRG.5s 16/13/11M", {"range_by_colour": {"W": 16, "R": 13, "G": 11}}),
    ("Fl.WRG.5s 15,13,11M", {"range_by_colour": {"W": 15, "R": 13, "G": 11}}),
    ("Fl.WRG.5s 15, 13, 11 M", {"range_by_colour": {"W": 15, "R": 13, "G": 11}}),
    ("Fl.WR.5s W15M R12M", {"range_by_colour": {"W": 15, "R": 12}, "ranges_nm": [15, 12]}),
    ("Fl(2)WRG.10s12M", {"range_by_colour": {"W": 12, "R": 12, "G": 12}}),
    ("Fl R ev 5s", {"period_s": 5}),
    ("Fl R every 5 s", {"period_s": 5}),
    ("Fl R 5 sec", {"period_s": 5}),
    ("Gp Fl(3) W 10s", {"rhythm": "Fl", "groups": [3], "colours": ["W"]}),
    ("Gp.Occ.(2) 8s", {"rhythm": "Oc", "groups": [2], "period_s": 8}),
    ("Alt. W R 6s", {"rhythm": "Al", "alternating": True, "colours": ["W", "R"]}),
    ("Occ. G 4s", {"rhythm": "Oc", "colours": ["G"]}),
    ("Int Qk Fl 10s", {"rhythm": "IQ", "period_s": 10}),
    ("Qk Fl", {"rhythm": "Q"}),
    ("Qk.Fl.R", {"rhythm": "Q", "colours": ["R"]}),
    ("V Qk Fl", {"rhythm": "VQ"}),
    ("S-L Fl 10s", {"rhythm": "Fl+LFl", "litchr": 14}),
    ("E Int 4s", {"rhythm": "Iso"}),
    ("Lt Fl 5s", {"rhythm": "Fl", "written": "Fl 5s"}),
    ("L.Fl.10s", {"rhythm": "LFl"}),
    ("F.Fl.R.5s", {"rhythm": "FFl", "litchr": 13}),
    ("F Fl 10s", {"rhythm": "FFl"}),
    ("FLFl.10s", {"rhythm": "FLFl", "litchr": 16}),
    ("OcFl.10s", {"rhythm": "OcFl", "litchr": 15}),
    ("Oc+Fl.10s", {"rhythm": "OcFl"}),
    ("Fl+LFl.10s", {"rhythm": "Fl+LFl"}),
    ("Fl(2)+LFl.W.15s", {"rhythm": "Fl+LFl", "groups": [2]}),
    ("Al.F.Fl.WR.10s", {"rhythm": "FFl", "alternating": True, "litchr": 29}),
    ("FAlFl.WR.10s", {"rhythm": "FFl", "alternating": True, "litchr": 29}),
    ("Al.LFl.WR.10s", {"rhythm": "LFl", "litchr": 18}),
    ("Al.Fl(2)WR.10s", {"rhythm": "Fl", "groups": [2], "litchr": 20}),
    ("Al.Iso.WG.4s", {"rhythm": "Iso", "litchr": None}),
    ("Mo(AA) 10s", {"rhythm": "Mo", "morse": "AA"}),
    ("2 F.R (vert)", {"count": 2, "vertical": True}),
    ("DirFl.WRG.5s", {"directional": True, "colours": ["W", "R", "G"]}),
    ("Ldg Oc.R.3s6m4M", {"leading": True, "rhythm": "Oc"}),
    ("Fl(2)5s (U) (fog)", {"remarks": ["U", "fog"]}),
    ("Fl.R.5s (sync) (TE 2020)", {"remarks": ["sync", "TE 2020"]}),
    ("Fl.Vi.5s", {"colours": ["Vi"]}),
    ("Fl.Bl.5s", {"colours": ["Bu"]}),
    ("flashing red every 5 seconds", {"rhythm": "Fl", "colours": ["R"], "period_s": 5}),
    ("fixed green", {"rhythm": "F", "colours": ["G"]}),
    ("fixed and flashing white every 10 s", {"rhythm": "FFl", "period_s": 10}),
    (
        "group flashing (2) white every 10 seconds, elevation 12 metres, visible 8 miles",
        {"groups": [2], "period_s": 10, "elevation_m": 12, "ranges_nm": [8]},
    ),
    ("Fl.R.5s, range 8M, elevation 12m", {"elevation_m": 12, "ranges_nm": [8]}),
    ("quick flashing", {"rhythm": "Q"}),
    ("very quick flashing", {"rhythm": "VQ"}),
    ("long flashing every 10 seconds", {"rhythm": "LFl"}),
    ("occulting red 6 s", {"rhythm": "Oc", "colours": ["R"]}),
    ("isophase white 4 seconds 8 miles", {"rhythm": "Iso", "ranges_nm": [8]}),
    ("alternating white and red every 6 seconds", {"rhythm": "Al", "colours": ["W", "R"]}),
    ("Morse code (U) every 15 seconds", {"rhythm": "Mo", "morse": "U"}),
    ("FL(5)Y.20S", {"rhythm": "Fl", "groups": [5], "colours": ["Y"], "period_s": 20}),
    ("AL.OC.BUY.3S", {"rhythm": "Oc", "alternating": True, "colours": ["Bu", "Y"]}),
    ("Q(6)+LFL.15S", {"rhythm": "Q+LFl", "groups": [6], "period_s": 15}),
    ("FL.R.4S", {"rhythm": "Fl", "colours": ["R"], "period_s": 4}),
    ("FLFL.10S", {"rhythm": "FLFl"}),
    ("MO(A)8S", {"rhythm": "Mo", "morse": "A"}),
    (
        "FLASHING RED EVERY 5 SECONDS, 12 METRES, VISIBLE 8 MILES",
        {"period_s": 5, "elevation_m": 12, "ranges_nm": [8]},
    ),
]


@pytest.mark.parametrize(("text", "wanted"), VARIANTS, ids=[row[0] for row in VARIANTS])
def test_written_variants(text: str, wanted: dict[str, Any]) -> None:
    reading = read_light(text)
    assert len(reading.lights) == 1
    fields = reading.lights[0].model_dump(mode="json")
    assert {key: fields[key] for key in wanted} == wanted
    assert reading.faults == ()


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


@pytest.mark.parametrize(
    ("text", "code", "stretch"),
    [
        ("Racon(KK K", "racon-letter-unreadable", "(KK K"),
        ("racon (a)", "racon-letter-unreadable", "(a)"),
        ("hello", "aid-unreadable", "hello"),
    ],
)
def test_unreadable_aids(text: str, code: str, stretch: str) -> None:
    reading = read_aids(text)
    assert told(text, reading.faults) == [(code, stretch)]
    assert reading.racon is None or reading.racon.morse is None


SECTORS = [
    ("G 330°-010° (40°), W 010°-045° (35°)", [arc("G", 330, 10), arc("W", 10, 45)]),
    ("with sectors W 000°-090°, R 090°-170°", [arc("W", 0, 90), arc("R", 90, 170)]),
    ("white 045° to 090° and red from 090° to 120°", [arc("W", 45, 90), arc("R", 90, 120)]),
    ("(vis 180°-270°)", [arc(None, 180, 270)]),
    ("obscd 020°-045°", [arc(None, 20, 45, "obscured")]),
    ("W 045°-090° (intens 050°-060°)", [arc("W", 45, 90), arc(None, 50, 60, "intensified")]),
    ("(unintens R 100°-110°)", [arc("R", 100, 110, "unintensified")]),
    ("faint 100°-110°, G 110°-120°", [arc(None, 100, 110, "faint"), arc("G", 110, 120)]),
    ("W 000-090, R 090-360", [arc("W", 0, 90), arc("R", 90, 360)]),
    ("W 171°30'-195.5°T", [arc("W", 171.5, 195.5)]),
    (
        "W 171°-195° 12M, R 195°-268° 9M",
        [arc("W", 171, 195, miles=12), arc("R", 195, 268, miles=9)],
    ),
    ("vis 180°-270°, 300°-310°", [arc(None, 180, 270), arc(None, 300, 310)]),
]


@pytest.mark.parametrize(("text", "wanted"), SECTORS, ids=[row[0] for row in SECTORS])
def test_sectors(text: str, wanted: list[dict[str, Any]]) -> None:
    reading = read_sectors(text)
    assert [one.model_dump(mode="json") for one in reading.sectors] == wanted
    assert {fault.code for fault in reading.faults} <= {"sector-gap"}


@pytest.mark.parametrize("text", ["", "hello", "W", "W 045° 090°", "171°"])
def test_unreadable_sectors(text: str) -> None:
    reading = read_sectors(text)
    assert reading.sectors == ()
    assert told(text, reading.faults) == [("sector-unreadable", text)]


def test_colour_without_limits_at_the_end_is_told() -> None:
    reading = read_sectors("W 171°-195°, R")
    assert told("W 171°-195°, R", reading.faults) == [("sector-unreadable", "R")]


def test_every_code_has_a_specimen() -> None:
    texts = [row[0] for row in (*FAULTY, *NO_LIGHT)] + ["Fl.R.5s F.G", "Racon(KK K"]
    codes = {fault.code for text in texts for fault in read_light(text).faults}
    codes |= {read_aids("hello").faults[0].code, read_sectors("hello").faults[0].code}
    # The one-value reader tells of several lights, a check of the fog signal's period.
    assert codes | {"light-several", "light-period-of-signal"} == set(CATALOGUE)


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


# The code lists of S-57, as GDAL ships them.
LABELS = {
    "F": "fixed",
    "Fl": "flashing",
    "LFl": "long-flashing",
    "Q": "quick-flashing",
    "VQ": "very quick-flashing",
    "UQ": "ultra quick-flashing",
    "Iso": "isophased",
    "Oc": "occulting",
    "IQ": "interrupted quick-flashing",
    "IVQ": "interrupted very quick-flashing",
    "IUQ": "interrupted ultra quick-flashing",
    "Mo": "morse",
    "FFl": "fixed / flash",
    "Fl+LFl": "flash / long-flash",
    "OcFl": "occulting / flash",
    "FLFl": "fixed / long-flash",
    "Q+LFl": "quick-flash plus long-flash",
    "VQ+LFl": "very quick-flash plus long-flash",
    "UQ+LFl": "ultra quick-flash plus long-flash",
}
ALTERNATING_LABELS = {
    "Oc": "occulting alternating",
    "LFl": "long-flash alternating",
    "Fl": "flash alternating",
    "Al": "alternating",
    "F": "alternating",
    "FFl": "fixed and alternating flashing",
}


def s57_values(acronym: str) -> dict[int, str]:
    pyogrio = pytest.importorskip("pyogrio")
    folder = Path(pyogrio.get_gdal_data_path())

    def rows(name: str) -> Iterator[dict[str, str]]:
        with (folder / name).open(encoding="latin-1", newline="") as file:
            yield from csv.DictReader(file)

    code = next(row["Code"] for row in rows("s57attributes.csv") if row["Acronym"] == acronym)
    return {
        int(row["ID"]): row["Meaning"]
        for row in rows("s57expectedinput.csv")
        if row["Code"] == code
    }


def test_litchr_codes_are_those_of_s57() -> None:
    values = s57_values("LITCHR")
    for labels, is_alternating in ((LABELS, False), (ALTERNATING_LABELS, True)):
        for rhythm in typing.get_args(Rhythm):
            code = litchr_of(rhythm, alternating=is_alternating, plain_group=False)
            assert (values[code] if code is not None else None) == labels.get(rhythm)
    group = litchr_of("Fl", alternating=True, plain_group=True)
    assert group is not None
    assert values[group] == "group alternating"


def test_sounds_are_categories_of_s57() -> None:
    known = set(s57_values("CATFOG").values())
    words = ["Horn", "Siren", "Whis", "Whistle", "Bell", "Gong", "Dia", "Explos", "Reed", "Naut"]
    assert {sound_of(word) for word in (*words, "Nautophone", "Tyfon", "Foghorn")} <= known


@given(st.text(alphabet=" .,()+-/&°'0123456789FlQVOcIsoMoALWRGBuYsmMfthorne\n", max_size=40))
def test_no_text_raises_and_faults_lie_within(text: str) -> None:
    for reading in (read_light(text), read_aids(text), read_sectors(text)):
        for fault in reading.faults:
            assert 0 <= fault.start <= fault.end <= len(text)
            assert fault.code in CATALOGUE


@given(st.text(max_size=30))
def test_no_characters_raise(text: str) -> None:
    # `SIREN` is a sound and no light: something is read, or a fault tells that nothing is.
    assert any(read_light(text))


PIECES = [
    *(
        "Fl",
        "Q",
        "VQ",
        "F",
        "LFl",
        "Oc",
        "Mo(A)",
        "Al",
        "FL",
        "(3)",
        "(2+1)",
        "(2W+1R)",
        "W",
        "WRG",
    ),
    *("5s", "l5s", "12m", "5M", "15-11M", "16/13/11M", "15,13M", "2F", "3", "7,5", "100", "269°"),
    *(".", " ", ",", "&", "W 171°-195°", "G 330°-010° (40°)", "(vis 180°-270°)", "W 100°-120° 9M"),
    *("R 045° to the shore", "(vert)", "(TE 2020)", "Horn", "30s", "(2)", "Racon(K)", "AIS"),
]


@given(
    st.lists(st.sampled_from(PIECES), min_size=1, max_size=7),
    st.sampled_from(["", " ", "."]),
    st.data(),
)
def test_no_figure_is_passed_over(pieces: list[str], between: str, data: st.DataObject) -> None:
    """Another figure in the same place gives another reading, or a fault stands there."""
    text = between.join(pieces)
    figures = [at for at, letter in enumerate(text) if letter.isdigit()]
    if not figures:
        return
    at = data.draw(st.sampled_from(figures))
    reading = read_light(text)
    if any(fault.start <= at < fault.end for fault in reading.faults):
        return
    other = read_light(f"{text[:at]}{(int(text[at]) + 1) % 10}{text[at + 1 :]}")
    assert _values(reading) != _values(other)


def _values(reading: LightReading) -> list[Any]:
    lights = [one.model_dump(exclude={"written"}) for one in reading.lights]
    stretches = [(fault.code, fault.start, fault.end) for fault in reading.faults]
    return [lights, reading.sound, reading.racon, reading.ais, stretches]
