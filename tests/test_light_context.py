"""What stands beside a light or counts a mark is read or told, never dropped.

Common practice, no published source; bearings of sectors: INT 1 section P 40.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Action

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P, Q = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W"


def read(words: str, places: str = P) -> tuple[Action, set[str]]:
    bulletin = parse(f"{HEAD}Insert {words} {places}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    told = {one.code for one in bulletin.findings}
    return action, told - {"feature-class-unknown"}


@pytest.mark.parametrize(
    "words",
    [
        "Fl.WRG.5s10m8-5M, 170°-R-180°-W-190°-G-200°",
        "Fl.WRG.5s10m8-5M, 170°-180°(R), 180°-190°(W), 190°-200°(G)",
        "Fl.5s10m8M, 190°-200°", "Fl.5s10m8M (190°-200°)",
        "Fl.5s10m8M, obscd by land 190°-200°", "Fl.WR.5s8/5M, W l80°-020°, R 020°-l80°",
    ],
)  # fmt: skip
def test_a_bearing_without_a_sector_is_told(words: str) -> None:
    action, codes = read(f"light, {words}")
    assert "sector-not-read" in codes
    assert action.feature.light is not None
    assert action.feature.light.sectors == []


def test_the_width_of_a_sector_is_told() -> None:
    assert "feature-figure-unread" in read("light, Fl.WR.5s8M, W over 200°, R over 160°")[1]


def test_sectors_by_the_compass_are_refused() -> None:
    action, codes = read("light, Fl.WR.5s8/5M, W 180°-020°, R 020°-180° (mag)")
    assert "sector-magnetic" in codes
    assert not action.usable


@pytest.mark.parametrize("words", ["directional light, Dir.Iso.WRG.2s, 222.5°"])
def test_an_axis_is_told(words: str) -> None:
    assert read(words)[1] == {"light-axis-not-kept"}


@pytest.mark.parametrize(
    ("bearing", "is_told"), [("137°", True), ("180°", False), ("000°", False)]
)
def test_the_bearing_of_a_line_is_that_of_its_positions(bearing: str, is_told: bool) -> None:
    codes = read(f"leading line, {bearing}, from", f"{P} to 46-02.00S 122-00.00W")[1]
    assert codes == ({"line-bearing-differs"} if is_told else set())


@pytest.mark.parametrize("aid", ["AIS", "racon", "a racon"])
def test_an_aid_that_is_not_there(aid: str) -> None:
    feature = read(f"light-buoy, Fl.R.5s, without {aid}")[0].feature
    assert (feature.ais, feature.racon) == (None, None)


@pytest.mark.parametrize(
    ("words", "count"), [("light by pier, F.R", 1), ("lights by pier, 2F.R(vert)", 2)]
)
def test_a_light_by_a_pier_is_a_light(words: str, count: int) -> None:
    feature = read(words)[0].feature
    assert feature.kind == "light"
    assert feature.light is not None
    assert feature.light.count == count
    assert [one.feature.kind for one in feature.companions] == ["pier"]


@pytest.mark.parametrize("letter", ["F", "Q"])
def test_a_letter_of_a_mark_is_no_character(letter: str) -> None:
    action, codes = read(f"light-buoy {letter}, Fl.R.5s")
    assert "light-character-unknown" in codes
    assert not action.usable


@pytest.mark.parametrize(
    ("words", "places", "is_told"),
    [
        ("3 yellow buoys", f"{P} and {Q}", True),
        ("2 yellow buoys", f"{P} and {Q}", False),
        ("2 dolphins", f"{P} and {Q}", False),
        ("three dolphins", f"{P} and {Q}", True),
        ("row of 5 mooring buoys", f"{P} and {Q}", True),
        ("two special buoys", P, True),
        ("two dolphins", P, False),
    ],
)
def test_a_count_is_no_name(words: str, places: str, is_told: bool) -> None:
    action, codes = read(words, places)
    assert action.feature.name is None
    assert codes == ({"feature-count-differs"} if is_told else set())


@pytest.mark.parametrize(
    "words",
    ["2 lights F R (vert)", "two lights F.R(hor)", "two vertical lights F.R", "light 2F.R(vert)"],
)
def test_lights_on_one_structure_are_counted(words: str) -> None:
    action, codes = read(words)
    assert action.feature.light is not None
    assert (action.feature.light.count, codes) == (2, set())


@pytest.mark.parametrize(
    ("words", "places", "is_told"),
    [("2 lights F.R", P, True), ("2 lights F.R", f"{P} and {Q}", False), ("2 lights", P, True)],
)
def test_lights_without_places_of_their_own_are_told(
    words: str, places: str, is_told: bool
) -> None:
    codes = read(words, places)[1]
    assert ("feature-count-differs" in codes) is is_told


def test_a_count_in_a_word() -> None:
    light = read("light, two F.G (vert)")[0].feature.light
    assert light is not None
    assert light.count == 2


def test_one_colour_each() -> None:
    action, _ = read("red and green buoys", f"{P} and {Q}")
    assert not action.usable
    assert read("red and white buoy")[0].usable


@pytest.mark.parametrize(
    ("words", "remark"),
    [
        ("emergency light Fl.5s 3M", "emergency"), ("reserve light F", "reserve"),
        ("in fog Q", "in fog"), ("by day Fl.5s 8M", "by day"),
    ],
)  # fmt: skip
def test_when_a_second_light_shows(words: str, remark: str) -> None:
    feature = read(f"light, Fl.5s12m18M, {words}")[0].feature
    assert [one.remarks for one in feature.more_lights] == [[remark]]


def test_the_season_of_a_light() -> None:
    light = read("light-buoy, Fl.Y.5s (Apr-Oct)")[0].feature.light
    assert light is not None
    assert light.remarks == ["Apr-Oct"]


@pytest.mark.parametrize("words", [", unlit", " (light discontinued)"])
def test_a_light_that_is_not_shown(words: str) -> None:
    assert "light-said-unlit" in read(f"light-buoy, Fl.R.5s{words}")[1]


def test_the_height_of_a_light_is_not_that_of_the_tower() -> None:
    action, codes = read("tower, red light 45m")
    assert action.feature.height_m is None
    assert codes == {"feature-figure-unread", "light-character-missing"}


def test_a_roman_number_is_a_name() -> None:
    assert read("buoy No IV")[0].feature.name == "No IV"


def test_a_clearance_keeps_its_own_state() -> None:
    action, codes = read("bridge, vertical clearance closed 5m, open 30m")
    assert action.feature.clearance is not None
    assert (action.feature.clearance.kind, action.feature.clearance.value_m) == ("closed", 5)
    assert codes == {"feature-figure-unread"}
