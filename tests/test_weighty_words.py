"""Words that say much of a thing: read into its record, or told where it has no place for them."""

from __future__ import annotations

from decimal import Decimal

import pytest

import noticeparse
from noticeparse.readers.changes import read_change
from noticeparse.readers.features import read_feature

_TOLD = ("feature-words-unread", "feature-figure-unread", "light-character-missing")


def told(words: str) -> list[str]:
    """What of a phrase is told to be lost."""
    return [one.values["written"] for one in read_feature(words, "m").faults if one.code in _TOLD]


@pytest.mark.parametrize(
    ("words", "lost"),
    [
        ("special light-buoy, Fl.Y.5s, summer", "summer"),
        ("pilot boarding place (winter)", "winter"),
        ("special buoy (summer only)", "summer only"),
        ("floating platform", "floating"),
        ("floating breakwater", "floating"),
        ("derelict platform", "derelict"),
        ("damaged pier", "damaged"),
        ("training wall (covers)", "covers"),
        ("doubtful wreck", "doubtful"),
        ("approximate platform", "approximate"),
        ("wreck c", "c"),
        ("anchorage area, DW", "DW"),
        ("light, Fl.R.5s (TE)", "TE"),
        ("dangerous wreck, masts visible", "masts visible"),
        ("traffic lane, direction 045°", "045°"),
        ("radio reporting point, direction 045°", "045°"),
        ("light, Fl.R.5s5M (by day 6M)", "6"),
        ("light, Fl.R.5s5M (reserve range 10M)", "10"),
        ("R sector", "R"),
        ("fog light", "fog"),
        ('RW "QS" Mo(A) Whis', "RW"),
        ("beacon, red square dayboard", "red"),
    ],
)
def test_words_without_a_place_in_the_record(words: str, lost: str) -> None:
    assert told(words) == [lost]


@pytest.mark.parametrize(
    "words",
    [
        "buoy which the winter seas carried away",
        "floating dock",
        "wreck, masts visible",
        "rock which covers and uncovers",
        "leading line 045°-225°",
        "light, Fl.R.5s",
        "depth 5m, doubtful",
        "wreck, existence doubtful",
        "special light-buoy, Fl.Y.5s (summer)",
    ],
)
def test_words_that_are_kept_or_weigh_nothing(words: str) -> None:
    assert not told(words)


def test_amended_light_of_several() -> None:
    faults = read_change("fog light to Fl.2s").faults
    assert [one.code for one in faults] == ["light-character-missing"]


@pytest.mark.parametrize(
    ("words", "count", "vertical", "horizontal"),
    [
        ("2 vertical F.G lights", 2, True, False),
        ("two F.G. lights (vertical)", 2, True, False),
        ("light, 2F.G.vert", 2, True, False),
        ("2 F.G. lights, vertical", 2, True, False),
        ("two vertically disposed F.R lights", 2, True, False),
        ("lights, 2F.R, horizontal", 2, False, True),
        ("light-buoy, F.R, vertical stripes red and white", 1, False, False),
    ],
)
def test_lights_above_one_another(
    words: str, count: int, vertical: bool, horizontal: bool
) -> None:
    light = read_feature(words).feature.light
    assert light is not None
    assert (light.count, light.vertical, light.horizontal) == (count, vertical, horizontal)


@pytest.mark.parametrize(
    "words",
    [
        "light, Fl.WR.5s18m W14M R11M",
        "light, Fl.WR.5s18m (W14,R11)M",
        "light, Fl.WR.5s18m R11M W14M",
        "light, Fl.WR.5s 18m W 14M, R 11M",
    ],
)
def test_ranges_behind_letters(words: str) -> None:
    reading = read_feature(words)
    assert reading.feature.light is not None
    assert reading.feature.light.range_by_colour == {"W": Decimal(14), "R": Decimal(11)}
    assert not reading.faults


def test_ranges_behind_letters_of_other_colours_are_told() -> None:
    assert read_feature("light, Fl.WR.5s18m W14M G11M").faults


@pytest.mark.parametrize("words", ["Racon (Mo K)", "Racon(Mo. K)", "racon (Morse K)"])
def test_morse_letter_of_a_racon_in_one_bracket(words: str) -> None:
    racon = read_feature(f"light-beacon, Fl.R.3s, {words}").feature.racon
    assert racon is not None
    assert racon.morse == "K"


def test_light_shown_by_night() -> None:
    light = read_feature("light, Fl.R.5s (by night)").feature.light
    assert light is not None
    assert light.remarks == ["by night"]


@pytest.mark.parametrize("words", ["white mooring buoy with orange band", "white buoy, red bands"])
def test_bands_are_a_pattern(words: str) -> None:
    assert read_feature(words).feature.colour_pattern == "horizontal_stripes"


@pytest.mark.parametrize(
    ("words", "name", "code"),
    [
        ("special buoy, seasonal", "STATUS", [5]),
        ("Subm piles", "CATOBS", 1),
        ("historic wreck restricted area", "CATREA", [10]),
        ("red square dayboard", "COLOUR", [3]),
        ("depth 5.2m, quality doubtful", "QUASOU", [3]),
        ("depth 5.2m, sounding doubtful", "QUASOU", [3]),
    ],
)
def test_words_that_have_a_code(words: str, name: str, code: object) -> None:
    feature = read_feature(words, "m").feature
    assert feature.attributes[name] == code


def test_sounding_doubtful_behind_its_depth() -> None:
    depth = read_feature("depth 5.2m, sounding doubtful", "m").feature.depth
    assert depth is not None
    assert depth.quality == "doubtful sounding"


@pytest.mark.parametrize(
    ("item", "is_told"),
    [
        ("wreck at or near", True),
        ("wreck in or about", True),
        ("rock, depth 1.8m, over which the sea breaks", True),
        ("wreck at", False),
    ],
)
def test_clauses_that_weaken_a_reading(item: str, is_told: bool) -> None:
    head = "31/26 Quill Sound.\nChart 802 WGS84, depths in metres\n"
    text = f"{head}Insert {item} 47-12.1S 123-45.2W\n"
    codes = [one.code for one in noticeparse.parse(text).findings if one.severity == "warning"]
    assert ("feature-words-unread" in codes) == is_told
