"""Names beside words of the trade: what is the name, and what the kind."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature

CATEGORIES = [
    ("Ellory North Cardinal light-buoy, Q", "Ellory", "buoy_cardinal_north"),
    ("Ellory E cardinal light-buoy", "Ellory", "buoy_cardinal_east"),
    ("Ellory Port-hand light-buoy", "Ellory", "light_buoy_port"),
    ("Port Ellory Special light-buoy No 3", "Port Ellory No 3", "buoy_special"),
    ("Ellory Isolated Danger light-buoy", "Ellory", "buoy_isolated_danger"),
    ("Ellory Safe Water light-buoy", "Ellory", "buoy_safe_water"),
    ("Ellory Emergency Wreck Marking buoy", "Ellory", "buoy_emergency_wreck"),
    ("Outer Ellory Mooring buoy", "Outer Ellory", "buoy_mooring"),
    ("Ellory Leading lights", "Ellory", "leading_lights"),
    ("Ellory Sector light", "Ellory", "sector_light"),
    ("Ellory Directional light", "Ellory", "directional_light"),
    ("light-buoy, Q, Ellory North Cardinal", "Ellory", "buoy_cardinal_north"),
    # A side, a quarter or a shape alone may be part of the name.
    ("Ellory North light-buoy", "Ellory North", "light_buoy_generic"),
    ("Ellory Port light", "Ellory Port", "light"),
    ("Ellory Spar buoy", "Ellory Spar", "buoy_generic"),
    ("N Ellory buoy", "N Ellory", "buoy_generic"),
    ("Ellory N buoy", "Ellory N", "buoy_generic"),
    ("North Cardinal light-buoy", None, "buoy_cardinal_north"),
    ("W Cardinal light-buoy", None, "buoy_cardinal_west"),
]


@pytest.mark.parametrize(("words", "name", "kind"), CATEGORIES)
def test_category_is_no_part_of_the_name(words: str, name: str | None, kind: str) -> None:
    feature = read_feature(words).feature
    assert (feature.name, feature.kind) == (name, kind)


ROCKS = [
    ("Bell Rock", "Bell Rock"),
    ("Gong Shoal", "Gong Shoal"),
    ("Racon Rock", "Racon Rock"),
    ("Black Rock, dries 1m", "Black Rock"),
    ("Green Shoal, depth 5m", "Green Shoal"),
    ("the Red Rock", "Red Rock"),
    ("Tower Shoal", "Tower Shoal"),
    ("Outer Shoal", "Outer Shoal"),
    ("Dangerous Rock", None),
    ("Submerged Rock", None),
    ("rock", None),
]


@pytest.mark.parametrize(("words", "name"), ROCKS)
def test_rock_named_by_a_word_of_the_trade(words: str, name: str | None) -> None:
    feature = read_feature(words).feature
    assert feature.name == name
    assert (feature.sound, feature.racon, feature.colours) == (None, None, [])


def test_small_letters_tell_the_colour_of_a_rock() -> None:
    feature = read_feature("black rock").feature
    assert (feature.name, feature.colours) == (None, ["black"])


WHOLE = [
    ("Ellory Wind Farm", "Ellory Wind Farm"),
    ("Ellory Marine Reserve", "Ellory Marine Reserve"),
    ("Ellory Anchorage", "Ellory Anchorage"),
    ("Ellory Oil Platform", "Ellory Oil Platform"),
    ("Pier II", "II"),
    ("Submarine Cable", None),
    ("Wooden Wind Farm", None),
    ("Ellory wind farm", None),
]


@pytest.mark.parametrize(("words", "name"), WHOLE)
def test_name_with_the_words_of_its_kind(words: str, name: str | None) -> None:
    assert read_feature(words).feature.name == name


NUMBERS = [
    ("buoy No 2-A", "No 2-A"),
    ("buoy 2-A", "2-A"),
    ("light-buoy, Fl.R.4s No 4-A", "No 4-A"),
    ("buoy No. 2 bis", "No. 2 bis"),
    ("buoy No. 2bis", "No. 2bis"),
    ("light-buoy E.2", "E.2"),
    ("light-buoy No 4A", "No 4A"),
    ("buoy No 2", "No 2"),
]


@pytest.mark.parametrize(("words", "name"), NUMBERS)
def test_whole_number_of_a_mark(words: str, name: str) -> None:
    assert read_feature(words).feature.name == name


def test_two_numbers_are_no_number_with_its_letter() -> None:
    assert "feature-figure-unread" in {one.code for one in read_feature("buoys No 2-4").faults}


@pytest.mark.parametrize(
    ("phrase", "name"),
    [
        ("wreck Masters", "Masters"),
        ("light-buoy Mariners, Q.R", "Mariners"),
        ("Mariners are advised of a wreck", None),
    ],
)
def test_who_is_addressed_gives_no_name_and_a_thing_keeps_its_own(
    phrase: str, name: str | None
) -> None:
    assert read_feature(phrase, None).feature.name == name
