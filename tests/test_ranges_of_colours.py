"""Ranges told by colour, and the elevation of a light in feet with its range in words."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.light import Light
from tests.short_notices import HEAD, P, actions_of, codes, errors


def light_of(bulletin: Bulletin) -> Light:
    light = actions_of(bulletin)[0].feature.light
    assert light is not None
    return light


def new_ranges(words: str) -> tuple[list[str], set[str]]:
    bulletin = parse(f"{HEAD}Amend {words} {P}\n")
    action = actions_of(bulletin)[0]
    assert isinstance(action, Amend)
    new = [one.new for one in action.changes if one.property == "light.ranges_nm"]
    return [str(one) for one in new[0]] if new and isinstance(new[0], list) else [], codes(
        bulletin
    )


@pytest.mark.parametrize(
    "ranges",
    [
        "W14M R11M", "W 14M, R 11M", "range W14M, R11M", "ranges W 14M and R 11M", "W14, R11M",
        "14M(W)11M(R)", "W14M/R11M", "R11M W14M",
    ],
)  # fmt: skip
def test_each_colour_has_its_range(ranges: str) -> None:
    bulletin = parse(f"{HEAD}Insert light, Fl.WR.5s18m {ranges} {P}\n")
    light = light_of(bulletin)
    assert {key: str(value) for key, value in light.range_by_colour.items()} == {
        "W": "14",
        "R": "11",
    }
    assert codes(bulletin) == set()


def test_ranges_of_other_colours_than_those_of_the_light_are_told() -> None:
    bulletin = parse(f"{HEAD}Insert light, Fl.WRG.5s18m W14M R11M {P}\n")
    assert light_of(bulletin).ranges_nm == []
    assert "feature-figure-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "words", ["elevation 69 feet, range 15 miles", "elevation 69 ft, visible 15 miles"]
)
def test_an_elevation_in_feet_with_a_range_in_words(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert light, Fl.5s, {words} {P}\n")
    light = light_of(bulletin)
    assert (str(light.elevation_m), [str(one) for one in light.ranges_nm]) == ("21.0312", ["15"])
    assert codes(bulletin) == set()


def test_a_light_of_colours_without_a_rhythm_is_told() -> None:
    assert codes(parse(f"{HEAD}Insert Dir WRG light {P}\n")) == {"light-character-missing"}


@pytest.mark.parametrize(
    ("words", "ranges", "told"),
    [
        ("ranges of light to W15M, R11M", ["15", "11"], {"light-ranges-of-colours"}),
        ("ranges of light to R 11M, W 15M", ["15", "11"], {"light-ranges-of-colours"}),
        ("ranges of light to white 15M and red 11M", ["15", "11"], {"light-ranges-of-colours"}),
        ("ranges of light to 15M (W), 11M (R)", ["15", "11"], {"light-ranges-of-colours"}),
        ("ranges of light to W15M, R11M, G10M", ["15", "11", "10"], set()),
        ("ranges of light, Fl.WR.5s, to W15M, R11M", ["15", "11"], set()),
        ("light, Fl.WR.5s15-11M: ranges to W14M, R10M", ["14", "10"], set()),
    ],
)
def test_new_ranges_by_colour(words: str, ranges: list[str], told: set[str]) -> None:
    assert new_ranges(words) == (ranges, told)


@pytest.mark.parametrize(
    "words",
    [
        # The other colours keep theirs, which no value can say.
        "range of light to W15M",
        "ranges of light, Fl.WRG.5s, to W15M, R11M",
        "range of white sector to 15M",
        "ranges of light to R15M, R11M",
        "range of light to 15M, R11M",
    ],
)
def test_ranges_that_leave_a_colour_out_are_held(words: str) -> None:
    assert new_ranges(words)[0] == []
    assert errors(parse(f"{HEAD}Amend {words} {P}\n")) != set()
