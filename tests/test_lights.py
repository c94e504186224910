"""Well-formed characters of a light, each with all its fields and no fault.

Sources beside the tables: `INT 1` is section P of the chart symbols, `S-57` the SIGGRP and LITCHR
pages, `S-12` the light table of the list-of-lights standard; rows without one are invented.
"""

from __future__ import annotations

from typing import Any

import pytest

from noticeparse.readers.lights import read_light
from tests.light_records import WRG, arc, as_json, light, one_range

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
