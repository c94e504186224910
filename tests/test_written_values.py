"""Positions, lights and depths as a person reads them: a word for everything that is read."""

from __future__ import annotations

from typing import Any, get_args

import pytest

from noticeparse import parse_depth, parse_light, parse_position
from noticeparse.records.depth import DepthKind
from noticeparse.records.light import LightColour, Rhythm
from noticeparse.writers.values_out import write_value

VALUES = [
    (
        "position",
        parse_position,
        "47°12'.340S., 123°45'.67W.",
        {"latitude": "47° 12.340' S", "longitude": "123° 45.67' W"},
    ),
    (
        "position in seconds",
        parse_position,
        "47°12'34\"S 123°45'06\"W",
        {"latitude": "47° 12' 34\" S", "longitude": "123° 45' 06\" W"},
    ),
    ("position in degrees", parse_position, "-47.205, -123.761", {"latitude": "47.205° S"}),
    (
        "light",
        parse_light,
        "Fl(2+1)WRG.10s12m15-11M",
        {
            "rhythm": "flashing, group (2+1)",
            "colour": "white, red, green",
            "period": "10 s",
            "elevation": "12 m",
            "range": "white 15, red not stated, green 11 nautical miles",
        },
    ),
    ("light without colour", parse_light, "Q(6)+LFl.15s", {"colour": "white (none is written)"}),
    ("two lights", parse_light, "2F.R(vert)", {"lights": "2", "further": "vertical"}),
    ("Morse", parse_light, "Mo(K)R.5s", {"rhythm": "Morse code K"}),
    ("alternating", parse_light, "Al.Fl.WR.5s", {"rhythm": "alternating flashing"}),
    ("depth", parse_depth, "8₂m", {"depth": "8.2 m", "unit": "metres"}),
    ("depth without unit", parse_depth, "4₂", {"unit": "not stated, read as metres"}),
    ("drying height", parse_depth, "dries 1.2m", {"dries": "1.2 m"}),
    ("fathoms", parse_depth, "3fm4ft", {"depth": "6.7056 m", "unit": "fathoms and feet"}),
]


@pytest.mark.parametrize(
    ("read", "text", "expected"), [case[1:] for case in VALUES], ids=[case[0] for case in VALUES]
)
def test_value_for_a_person(read: Any, text: str, expected: dict[str, str]) -> None:
    first = write_value(read(text)).splitlines()[0]
    assert first == text
    assert expected.items() <= rows_of(read(text)).items()


def rows_of(value: Any) -> dict[str, str]:
    """What is shown below the words read, by the name of the part; sectors are joined."""
    shown: dict[str, str] = {}
    for row in write_value(value).splitlines()[1:]:
        name, words = row.strip().split("  ", 1)
        shown[name] = "; ".join(filter(None, [shown.get(name), words.strip()]))
    return shown


SECTORS = [
    (
        "colours",
        "Fl.WRG.5s10m9-6M R120°-200°(80°), G200°-250°(50°), W250°-120°(230°)",
        "red 120°-200° true, from seaward; green 200°-250° true, from seaward; "
        "white 250°-120° true, from seaward",
    ),
    (
        "ranges",
        "Fl.WR.5s W 090°-120° 15M, R 120°-150° 12M",
        "white 90°-120° true, from seaward, 15 nautical miles; "
        "red 120°-150° true, from seaward, 12 nautical miles",
    ),
    ("seen brighter", "Fl.5s intens 090°-100°", "intensified 90°-100° true, from seaward"),
]


@pytest.mark.parametrize(
    ("text", "words"), [case[1:] for case in SECTORS], ids=[case[0] for case in SECTORS]
)
def test_sectors_for_a_person(text: str, words: str) -> None:
    assert rows_of(parse_light(text))["sector"] == words


RHYTHMS = {
    "F": ("F.R", "fixed"),
    "Fl": ("Fl.5s", "flashing"),
    "LFl": ("LFl.10s", "long-flashing"),
    "Q": ("Q", "quick"),
    "VQ": ("VQ", "very quick"),
    "UQ": ("UQ", "ultra quick"),
    "IQ": ("IQ.10s", "interrupted quick"),
    "IVQ": ("IVQ.10s", "interrupted very quick"),
    "IUQ": ("IUQ.10s", "interrupted ultra quick"),
    "Oc": ("Oc.5s", "occulting"),
    "Iso": ("Iso.4s", "isophase"),
    "Mo": ("Mo(U)15s", "Morse code U"),
    "FFl": ("FFl.5s", "fixed and flashing"),
    "FLFl": ("FLFl.10s", "fixed and long-flashing"),
    "OcFl": ("Oc+Fl.10s", "occulting and flashing"),
    "Fl+LFl": ("Fl+LFl.15s", "flashing and long-flashing"),
    "Q+LFl": ("Q(6)+LFl.15s", "quick and one long flash, group (6)"),
    "VQ+LFl": ("VQ(6)+LFl.10s", "very quick and one long flash, group (6)"),
    "UQ+LFl": ("UQ(6)+LFl.10s", "ultra quick and one long flash, group (6)"),
    "Al": ("Al.WR.5s", "alternating"),
}

COLOURS = {
    "W": "white", "R": "red", "G": "green", "Bu": "blue", "Y": "yellow", "Am": "amber",
    "Vi": "violet", "Or": "orange",
}  # fmt: skip

DEPTHS = {
    "sounding": ("8.6m", "depth", "8.6 m"),
    "drying": ("dries 1.2m", "dries", "1.2 m"),
    "swept": ("swept to 8m", "swept depth", "8 m"),
    "dredged": ("dredged to 8m", "dredged depth", "8 m"),
    "contour": ("10m contour", "contour", "10 m"),
    "least": ("least depth 8m", "least depth", "8 m"),
    "no_bottom": ("no bottom at 20m", "no bottom at", "20 m"),
}


def test_every_rhythm_colour_and_kind_has_its_row_here() -> None:
    assert [*RHYTHMS] == [*get_args(Rhythm)]
    assert [*COLOURS] == [*get_args(LightColour)]
    assert [*DEPTHS] == [*get_args(DepthKind)]


@pytest.mark.parametrize(("rhythm", "case"), RHYTHMS.items(), ids=RHYTHMS)
def test_rhythm(rhythm: str, case: tuple[str, str]) -> None:
    light = parse_light(case[0])
    assert light.rhythm == rhythm
    assert rows_of(light)["rhythm"] == case[1]


@pytest.mark.parametrize(("letters", "word"), COLOURS.items(), ids=COLOURS)
def test_colour(letters: str, word: str) -> None:
    assert rows_of(parse_light(f"Fl.{letters}.5s"))["colour"] == word


@pytest.mark.parametrize(("kind", "case"), DEPTHS.items(), ids=DEPTHS)
def test_kind_of_depth(kind: str, case: tuple[str, str, str]) -> None:
    depth = parse_depth(case[0])
    assert depth.kind == kind
    assert rows_of(depth)[case[1]] == case[2]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("least depth 8m", "least depth known"),
        ("no bottom at 20m", "no bottom found at value shown"),
        ("least depth 8m, reported", "value reported (not surveyed)"),
    ],
)
def test_quality_of_a_depth(text: str, words: str) -> None:
    assert rows_of(parse_depth(text))["quality"] == words


def test_depth_that_is_not_known() -> None:
    depth = parse_depth("8m").model_copy(update={"value_m": None, "unit": None})
    assert rows_of(depth) == {"depth": "not known"}
