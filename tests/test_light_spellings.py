"""The same lights written in other ways; only the fields named are compared."""

from __future__ import annotations

from typing import Any

import pytest

from noticeparse.readers.lights import read_light

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
