"""Places that may be another's: pairs read as one line, distances from nothing, lost radii."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin
from tests.short_notices import HEAD, P, Q, actions_of, codes

R, S = "46-01.00S 122-00.50W", "46-01.50S 122-00.50W"


def errors(bulletin: Bulletin) -> list[str]:
    return [one.code for one in bulletin.findings if one.severity == "error"]


HELD = [
    (f"Insert cables between {P} and {Q} and between {R} and {S}", "relation-unclear"),
    (f"Insert cable between {P} and {Q} and between {R} and {S}", "relation-unclear"),
    (f"Insert pipelines joining {P} and {Q}, {R} and {S}", "relation-unclear"),
    (f"Insert buoy 0.6 miles 240° from the light, {P}", "relation-unclear"),
    (f"Insert buoy 2 ca S of {P}", "offset-not-worked-out"),
    (f"Light Fl.3s ({P}) is replaced by a light Fl.5s, 50 metres S.", "offset-not-worked-out"),
    (f"Light Fl.3s in {P} is replaced by a light Fl.5s, 2 cables NE", "offset-not-worked-out"),
]


@pytest.mark.parametrize(("text", "code"), HELD)
def test_a_place_in_doubt_is_held_back(text: str, code: str) -> None:
    bulletin = parse(f"{HEAD}{text}\n")
    assert not any(one.usable for one in actions_of(bulletin))
    assert errors(bulletin) == [code]


READ = [
    f"Insert cable joining {P}, {Q}, {R} and {S}",
    f"Insert cable joining {P} and {Q} and {R} and {S}",
    f"Insert cable between {P} and {Q}",
    f"Insert buoy 0.6 miles 240° from the light in {P}",
    f"Insert buoy 0.6 miles 240° from the light {P}",
    f"Insert buoy 2 cables S of {P}",
    f"Insert light Fl.5s50m {P}",
]


@pytest.mark.parametrize("text", READ)
def test_a_certain_place_is_read(text: str) -> None:
    bulletin = parse(f"{HEAD}{text}\n")
    assert [one.usable for one in actions_of(bulletin)] == [True]


def test_a_distance_is_no_elevation() -> None:
    text = f"Light Fl.3s ({P}) is replaced by a light Fl.5s, 50 metres S."
    (action,) = actions_of(parse(f"{HEAD}{text}\n"))
    assert action.verb == "replace"
    assert action.replacement.light is not None
    assert action.replacement.light.elevation_m is None


CIRCLES = [
    f"safety zone {P} (500 m radius)",
    f"safety zone {P} (radius 500 m)",
    f"safety zone (500 m radius) {P}",
    f"safety zone, {P}, radius 500 m",
]


@pytest.mark.parametrize("phrase", CIRCLES)
def test_a_radius_in_brackets_makes_a_circle(phrase: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert {phrase}\n"))
    assert action.usable
    assert action.geometry.shape == "circle"
    assert action.geometry.radius_nm == Decimal(500) / Decimal(1852)
    assert action.feature.text == "safety zone"


@pytest.mark.parametrize("thing", ["anchorage area", "foul area", "spoil ground", "marine farm"])
def test_one_area_at_three_places_may_have_them_for_corners(thing: str) -> None:
    bulletin = parse(f"{HEAD}Insert {thing} {P}, {Q} and {R}\n")
    assert "area-of-points" in codes(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        f"rock {P}, {Q} and {R}",
        f"spoil grounds {P}, {Q} and {R}",
        f"spoil ground {P} and {Q}",
        f"spoil ground bounded by {P}, {Q} and {R}",
        f'legend "Foul area" {P}, {Q} and {R}',
    ],
)
def test_several_things_and_what_words_join_are_plain(words: str) -> None:
    assert "area-of-points" not in codes(parse(f"{HEAD}Insert {words}\n"))
