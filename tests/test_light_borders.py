"""The borders of the rules of a light: just within, just beyond, and the words told of each.

What a description means is told in `test_lights.py`; the limits are those that the docstrings of
`light_checks.py`, `light_figures.py` and `light_sectors.py` name with their sources.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.lights import read_aids, read_light
from tests.light_records import told

# What is said of a fault beside the words written.
VALUES = [
    ("LFL 10S 12M 9M", [{"read": "metres"}, {"read": "miles"}]),
    ("LF1.10s", [{"letter": "1", "read": "l"}]),
    ("0c.R.3s", [{"letter": "0", "read": "O"}]),
    ("Q(9)l5s", [{"letter": "l", "read": "1"}]),
    ("Fl.5s Horn 3Os", [{"letter": "O", "read": "0"}]),
    ("Fl.WRG.4s12m15/12M", [{"ranges": "2", "colours": "3"}]),
    ("Fl.WR.5s W 090°-180° (80°), R 180°-090°", [{"width": "90"}]),
    ("Fl.WR.4s W 171°-195°, R 190°-171°", [{"degrees": "5"}]),
]


@pytest.mark.parametrize(("text", "wanted"), VALUES)
def test_values_of_a_fault(text: str, wanted: list[dict[str, str]]) -> None:
    faults = read_light(text).faults
    beside = [{k: v for k, v in fault.values.items() if k != "written"} for fault in faults]
    assert beside == wanted


# Figures behind an aid that are none of a fog signal's, and groups that are a second one.
AIDS = [
    ("Racon(K) 30s", None, [("light-leftover-figure", "30s")]),
    ("Racon(K) 5M", None, [("light-leftover-figure", "5M")]),
    ("AIS (2)", None, [("light-leftover-figure", "(2)")]),
    ("Horn 30s Racon(K) (2)", (), [("light-leftover-figure", "(2)")]),
    ("Horn Bell(2)", (), [("sound-twice", "Bell"), ("light-leftover-figure", "(2)")]),
    ("Horn 60m", (), [("light-leftover-figure", "60m")]),
    ("Horn 12ft", (), [("light-leftover-figure", "12ft")]),
    ("Horn 12", (), [("light-leftover-figure", "12")]),
    ("Horn(2) (3)", (2,), [("light-leftover-figure", "(3)")]),
    ("Horn 0s", (), [("light-leftover-figure", "0s")]),
    ("Horn 5/10s", (), [("light-leftover-figure", "5/10s")]),
    ("Horn 30s 20s", (), [("light-leftover-figure", "20s")]),
    ("Horn 30s Racon(K) 20s", (), [("light-leftover-figure", "20s")]),
    ("Horn Bell 10s", (), [("sound-twice", "Bell"), ("light-leftover-figure", "10s")]),
    ("Horn Bell 5M", (), [("sound-twice", "Bell"), ("light-leftover-figure", "5M")]),
    ("Bell 5M", (), [("sound-range-not-kept", "5M")]),
    ("Horn(2)30s (occas)", (2,), [("aid-remark-not-kept", "(occas)")]),
]


@pytest.mark.parametrize(("text", "group", "faults"), AIDS, ids=[row[0] for row in AIDS])
def test_figures_behind_an_aid(
    text: str, group: tuple[int, ...] | None, faults: list[tuple[str, str]]
) -> None:
    for before in ("", "Fl.5s "):
        whole = before + text
        reading = read_light(whole) if before else read_aids(whole)
        assert told(whole, reading.faults) == faults
        assert (reading.sound and tuple(reading.sound.group)) == group


# Behind an aid no part belongs to the light any more.
CLOSED = [
    ("Fl.5s Racon(K) R 12m", [("light-leftover-words", "R"), ("light-leftover-figure", "12m")]),
    ("2F AIS (vert)", [("light-leftover-words", "(vert)")]),
    ("Fl.5s Horn 30s R(2)", [("light-leftover-words", "R"), ("light-leftover-figure", "(2)")]),
]


@pytest.mark.parametrize(("text", "faults"), CLOSED, ids=[row[0] for row in CLOSED])
def test_light_ends_where_an_aid_begins(text: str, faults: list[tuple[str, str]]) -> None:
    reading = read_light(text)
    (light,) = reading.lights
    assert (light.colours, light.elevation_m, light.vertical) == (["W"], None, False)
    assert (light.groups, light.written) == ([], text.split(" ")[0])
    assert told(text, reading.faults) == faults


@pytest.mark.parametrize(
    "text", ["F.X", "F.WX", "F(2+)", "Mo(A8)", "2F.R(vert)", "F.R", "F (fog)"]
)
def test_light_is_written_to_its_last_part(text: str) -> None:
    for behind in ("", " AIS"):
        (light,) = read_light(text + behind).lights
        assert light.written == text
        assert light.colours == ([] if "X" in text else ["R"] if "R" in text else ["W"])


BRACKETS = [
    ("W 045°-090°), R 090°-045°", [("light-bracket-open", ")")]),
    ("(W 045°-090°, R 090°-045°", [("light-bracket-open", "(")]),
    ("(W 045°-090°), R 090°-045°", []),
]


@pytest.mark.parametrize(("text", "faults"), BRACKETS)
def test_brackets_of_sectors(text: str, faults: list[tuple[str, str]]) -> None:
    reading = read_sectors(text)
    assert told(text, reading.faults) == faults
    assert [one.colour for one in reading.sectors] == ["W", "R"]


BEARINGS = [
    ("W 000°-360°", "360", []),
    ("W 090°-360.5°", None, [("sector-bearing-too-great", "360.5°")]),
    ("W 361°-090°", None, [("sector-bearing-too-great", "361°")]),
    ("W 090°-180°59'", "180.98333", []),
    ("W 090°60'-180°", None, [("sector-unreadable", "090°60'")]),
    ("W 090°-090°", None, [("sector-empty", "090°-090°")]),
]


@pytest.mark.parametrize(("text", "last", "faults"), BEARINGS)
def test_bearings_end_at_a_full_circle(
    text: str, last: str | None, faults: list[tuple[str, str]]
) -> None:
    reading = read_sectors(text)
    assert told(text, reading.faults) == faults
    limits = [one.to_deg.quantize(Decimal("1.00000")) for one in reading.sectors]
    assert limits == ([Decimal(last).quantize(Decimal("1.00000"))] if last else [])


# The shortest sequences that can be counted: one second a flash or eclipse, two a long flash; of
# quick flashes 80, 160 and 300 a minute, as IALA and IHO S-12 divide them.
NEEDED = [
    ("Fl(3)", "3", "3.1"),
    ("Oc(2)", "2", "2.1"),
    ("LFl(2)", "4", "4.1"),
    ("Q(9)", "6.75", "6.8"),
    ("VQ(9)", "3.3", "3.4"),
    ("UQ(5)", "1", "1.1"),
    ("Q(6)+LFl.", "6.5", "6.6"),
    ("Fl+LFl.", "3", "3.1"),
]


@pytest.mark.parametrize(("character", "too_quick", "slow"), NEEDED)
def test_groups_need_their_time(character: str, too_quick: str, slow: str) -> None:
    told_of = [fault.code for fault in read_light(f"{character}{too_quick}s").faults]
    assert told_of == ["light-group-too-quick"]
    assert read_light(f"{character}{slow}s").faults == ()


PERIODS = [
    ("Fl.{}s", "1.1", "1.2", "light-flash-too-quick"),
    ("LFl.{}s", "2", "2.1", "light-long-flash-too-quick"),
    ("Q.{}s", "0.7", "0.75", "light-quick-period"),
    ("Q.{}s", "1.3", "1.2", "light-quick-period"),
    ("VQ.{}s", "0.8", "0.75", "light-quick-period"),
    ("Iso.{}s", "1.9", "2", "light-period-short"),
    ("Oc.{}s", "1.9", "2", "light-period-short"),
    ("IQ.{}s", "2.9", "3", "light-period-short"),
    ("Fl.{}s", "90.5", "90", "light-period-long"),
    ("Fl({})60s", "7", "6", "light-group-large"),
    ("Fl.5s{}m5M", "100", "99", "light-elevation-great"),
    ("Fl.5s{}m6M", "120", "119", "light-elevation-great"),
    ("Fl.5s10m{}M", "41", "40", "light-range-great"),
]


@pytest.mark.parametrize(("form", "beyond", "within", "code"), PERIODS)
def test_limits_of_figures(form: str, beyond: str, within: str, code: str) -> None:
    assert [fault.code for fault in read_light(form.format(beyond)).faults] == [code]
    assert read_light(form.format(within)).faults == ()


BEGUN = [
    ("Fl.5s & Dir", [("light-leftover-words", "Dir")]),
    ("Fl.5s & Gp", [("light-leftover-words", "Gp")]),
    ("Dir Racon(K)", [("light-leftover-words", "Dir")]),
    ("Fl.5s +", [("light-leftover-words", "+")]),
    ("Fl.5s range", [("light-leftover-words", "range")]),
]


@pytest.mark.parametrize(("text", "faults"), BEGUN, ids=[row[0] for row in BEGUN])
def test_a_light_begun_and_not_written_is_told(text: str, faults: list[tuple[str, str]]) -> None:
    reading = read_light(text)
    assert told(text, reading.faults) == faults
    assert len(reading.lights) == text.count("Fl")


def test_a_letter_without_brackets_is_the_one_of_the_morse_code() -> None:
    (light,) = read_light("Morse code U every 15 seconds").lights
    assert (light.morse, light.colours, light.period_s) == ("U", ["W"], 15)


@pytest.mark.parametrize("before", ["Dir", "Ldg"])
def test_an_axis_is_told_of_lights_that_have_one(before: str) -> None:
    text = f"{before} F.R 269.5°"
    assert told(text, read_light(text).faults) == [("light-axis-not-kept", "269.5°")]
    assert told("F.R 269.5°", read_light("F.R 269.5°").faults) == [
        ("light-leftover-figure", "269.5°"),
    ]
