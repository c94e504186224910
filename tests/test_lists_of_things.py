"""Things that are named once, with a figure or a light of each in front of its place."""

from __future__ import annotations

import pytest

import noticeparse
from noticeparse.records.action import Action

P, Q, R = "47-12.10S 123-45.20W", "47-12.60S 123-45.20W", "47-12.60S 123-45.90W"


def read(body: str) -> list[Action]:
    text = f"31/26 Quill Sound.\nChart 802 WGS84, depths in metres\n{body}\n"
    (notice,) = noticeparse.parse(text).notices
    return [action for chart in notice.charts for action in chart.actions]


@pytest.mark.parametrize(
    ("body", "kind", "depths"),
    [
        (f"Insert wrecks: depth 5m, {P}; depth 6m, {Q}", "wreck", [5, 6]),
        (f"Insert obstructions: depth 5m, {P}; depth 6m, {Q}", "obstruction", [5, 6]),
        (f"Insert rocks, depth 5m {P}, depth 6m {Q}", "rock", [5, 6]),
        (f"Insert rocks: drying 0.5m, {P}; depth 2m, {Q}", "rock", [-0.5, 2]),
        (f"Insert wrecks: 5m, {P}; 6m, {Q}; 7m, {R}", "wreck", [5, 6, 7]),
        (f"Insert wrecks, 5m, {P}; depth 6m, {Q}", "wreck", [5, 6]),
        (f"Insert wrecks, depth 5m, {P} and depth 6m, {Q}", "wreck", [5, 6]),
        (f"Delete shoals: depth 5m, {P}; depth 6m, {Q}", "shoal", [5, 6]),
        (f"Insert wrecks, depth 5m  {P}\n       depth 6m  {Q}", "wreck", [5, 6]),
        (
            f"Insert wrecks: least depth 5m, {P}; least depth 6m, {Q}",
            "wreck_least_depth", [5, 6],
        ),
    ],
)  # fmt: skip
def test_noun_of_several_holds_for_each(body: str, kind: str, depths: list[float]) -> None:
    actions = read(body)
    assert [one.feature.kind for one in actions] == [kind] * len(depths)
    assert [
        float(one.feature.depth.value_m or 0) for one in actions if one.feature.depth
    ] == depths
    assert all(one.usable for one in actions)


@pytest.mark.parametrize(
    ("body", "kinds"),
    [
        (f"Insert wrecks: (a) depth 5m, {P}; (b) depth 6m, {Q}", ["wreck", "wreck"]),
        (f"Insert wrecks: (a) 5m, {P} (b) 6m, {Q}", ["wreck", "wreck"]),
        (f"Insert wrecks (a) depth 5m, {P}; (b) depth 6m, {Q}", ["wreck", "wreck"]),
        (f"Insert the following wrecks: (a) depth 5m, {P}; (b) rock {Q}", ["wreck", "rock"]),
        (
            f"Delete obstructions: (a) least depth 5m {P} (b) least depth 6m {Q}",
            ["obstruction", "obstruction"],
        ),
        (
            f"Insert special light-buoys: (a) Fl.Y.3s, {P}; (b) Fl.Y.5s, {Q}\nDelete rock {R}",
            ["buoy_special", "buoy_special", "rock"],
        ),
    ],
)
def test_noun_in_front_of_letters(body: str, kinds: list[str]) -> None:
    actions = read(body)
    assert [one.feature.kind for one in actions] == kinds
    assert all(one.usable for one in actions)


@pytest.mark.parametrize("words", ["in the new basin:", "off the wrecks:", "depths:"])
def test_no_noun_in_front_of_letters(words: str) -> None:
    actions = read(f"Insert {words} (a) depth 5m, {P}; (b) depth 6m, {Q}")
    assert [one.feature.kind for one in actions] == ["sounding", "sounding"]


@pytest.mark.parametrize("said", ["(rep 2025)", "(ED)", "(No 4)"])
def test_bracket_behind_the_last_of_two_places_is_held(said: str) -> None:
    first, second = read(f"Insert buoys {P}, {Q} {said}, {R}")
    assert (first.usable, second.usable) == (False, True)


def test_heights_of_several_are_no_depths() -> None:
    actions = read(f"Insert masts, 30m, {P}; 40m, {Q}")
    assert [one.feature.kind for one in actions] == ["radio_mast"] * 2
    assert [one.feature.height_m for one in actions] == [30, 40]


@pytest.mark.parametrize(
    "body",
    [
        f"Insert wreck, depth 5m, {P}; depth 6m, {Q}",
        f"Insert shoal, depth 5m, {P}; depth 6m, {Q}",
        f"Insert mast, 30m, {P}; 40m, {Q}",
        f"Insert contour, 5m, joining {P} {Q}; 10m, joining {Q} {R}",
        f"Insert wrecks, depth 5m, {P} and {Q}; depth 6m, {R}",
    ],
)
def test_one_thing_or_a_list_is_held(body: str) -> None:
    first, second = read(body)
    assert first.usable
    assert not second.usable


@pytest.mark.parametrize(
    ("body", "kinds"),
    [
        (f"Insert wreck {P}; depth 6m, {Q}", ["wreck", "sounding"]),
        (f"Insert depths, 5m, {P}; 6m, {Q}", ["sounding", "sounding"]),
        (f"Insert wreck, 5m, {P}; depth 6m, {Q}", ["wreck", "sounding"]),
        (f"Insert wreck, depth 5m  {P}\n       depth 6m  {Q}", ["wreck", "sounding"]),
    ],
)
def test_depths_of_their_own(body: str, kinds: list[str]) -> None:
    actions = read(body)
    assert [one.feature.kind for one in actions] == kinds
    assert all(one.usable for one in actions)


def test_lights_in_brackets_in_front_of_each_place() -> None:
    actions = read(f"Insert special light-buoys (Fl.Y.3s) {P}; (Fl.Y.5s) {Q} and (Q.Y) {R}")
    lights = [one.feature.light for one in actions]
    assert [light.written for light in lights if light] == ["Fl.Y.3s", "Fl.Y.5s", "Q.Y"]
    assert {one.feature.kind for one in actions} == {"buoy_special"}
    assert all(one.usable for one in actions)


def test_bracket_of_one_thing_is_held() -> None:
    _, second = read(f"Insert light-buoy (Q.R) {P}, (Q.G) {Q}")
    assert not second.usable


def test_bracket_behind_a_place_is_of_that_place() -> None:
    first, second = read(f"Insert wrecks {P} (PA); {Q} (PD)")
    qualities = [one.geometry.positions[0].quality for one in (first, second)]
    assert qualities == ["approximate", "doubtful"]


@pytest.mark.parametrize(
    "behind",
    [
        "and, close N, depth 5m", "and close N, depth 5m", "with, close E, a rock",
        "and, 50m N, a rock", "(close E, depth 5m)", "and, to the N, depth 5m",
        "and, nearby, depth 5m",
    ],
)  # fmt: skip
def test_thing_beside_the_place_is_held(behind: str) -> None:
    (action,) = read(f"Insert wreck {P} {behind}")
    assert not action.usable


@pytest.mark.parametrize("behind", [", depth 5m", "and depth 5m", "with depth 5m"])
def test_depth_behind_the_place_is_its_own(behind: str) -> None:
    (action,) = read(f"Insert wreck {P} {behind}")
    assert action.usable
