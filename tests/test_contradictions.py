"""Words that speak against carrying an item out: never a usable action without a word."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P, Q, R = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W", "46-00.10S 122-00.20W"


def usable(bulletin: Bulletin) -> list[tuple[str, str]]:
    return [
        (action.verb, action.feature.kind)
        for notice in bulletin.notices
        for chart in notice.charts
        for action in chart.actions
        if action.usable
    ]


def errors(bulletin: Bulletin) -> set[str]:
    return {one.code for one in bulletin.findings if one.severity == "error"}


@pytest.mark.parametrize(
    "sentence",
    [
        f"The light in {Q} is reported extinguished.",
        f"The wreck in {Q} remains charted.",
        f"Vessels should keep clear of the wreck in {Q}.",
        f"New light Fl.R.3s {Q}",
        f"Light Fl.R.3s established in {Q}",
        f"Caution is advised when passing the wreck in {Q}.",
    ],
)
def test_a_verb_above_does_not_hold_for_a_sentence(sentence: str) -> None:
    bulletin = parse(f"{HEAD}Delete wreck {P}\n{sentence}\n")
    assert usable(bulletin) == [("delete", "wreck")]
    assert errors(bulletin)


@pytest.mark.parametrize("state", ["discontinued", "destroyed", "removed", "withdrawn"])
def test_a_state_contradicts_an_insertion(state: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nBeacon, {state} {Q}\n")
    assert usable(bulletin) == [("insert", "wreck")]


def test_a_description_in_a_relative_clause_is_none() -> None:
    bulletin = parse(f'{HEAD}Insert\n  rock which is awash {P}\n  legend, "Removed" {Q}\n')
    assert usable(bulletin) == [("insert", "rock_awash"), ("insert", "legend")]


@pytest.mark.parametrize("start", ["No wreck was", "Neither wreck was", "If a wreck is"])
def test_what_was_not_found_is_not_inserted(start: str) -> None:
    assert usable(parse(f"{HEAD}{start} found in {P}.\n")) == []
    assert usable(parse(f"{HEAD}Delete rock {P}\n{start} found in {Q}.\n")) == [("delete", "rock")]


@pytest.mark.parametrize(
    "phrase",
    [
        "depth from wreck", "danger circle around wreck", "topmark of port-hand buoy",
        "R sector of light",
    ],
)  # fmt: skip
def test_a_part_is_not_the_whole(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Delete {phrase} {P}\n")
    assert usable(bulletin) == []
    assert errors(bulletin)


@pytest.mark.parametrize(
    "phrase",
    [
        "buoy north of wreck", "buoy NW of wreck", "depth 5.2m N of buoy", "buoy opposite pier",
        "buoy between wreck and rock",
    ],
)  # fmt: skip
def test_a_feature_behind_a_preposition_is_not_the_one_meant(phrase: str) -> None:
    assert usable(parse(f"{HEAD}Insert {phrase} {P}\n")) == []


@pytest.mark.parametrize(
    "phrase",
    [
        "light on the head of the east mole", "preferred channel to port buoy",
        "limit of nature reserve", "area to be avoided", "light-buoy, to mark the wreck",
    ],
)  # fmt: skip
def test_prepositions_that_belong_to_the_feature(phrase: str) -> None:
    bulletin = parse(f"{HEAD}Insert {phrase} {P}\n")
    assert "feature-kinds-several" not in errors(bulletin)


@pytest.mark.parametrize(
    "depth",
    [
        ".6m", "?.6m", "1\ufffdm", "1\ufffd.6m", "\ufffd2m", "8.\ufffd m", "\u24934m", "½2m",
        "¹2m", "52 cm", "52 dm", "17'",
    ],
)  # fmt: skip
def test_a_depth_that_lost_a_sign_is_refused(depth: str) -> None:
    bulletin = parse(f"{HEAD}Insert depth {depth} {P}\n")
    assert usable(bulletin) == []
    assert errors(bulletin)


@pytest.mark.parametrize("phrase", ["wreck and obstruction", "light-buoys, Fl.R.3s and Fl.G.3s,"])
def test_two_features_share_no_list_of_places(phrase: str) -> None:
    assert usable(parse(f"{HEAD}Insert {phrase} {P} and {Q}\n")) == []


def test_a_bearing_beyond_the_circle_is_not_worked_out() -> None:
    bulletin = parse(f"{HEAD}Insert wreck 375° 2.5 miles from {P}\n")
    assert usable(bulletin) == []


@pytest.mark.parametrize(
    "words",
    [
        "Insert platform with safety zone of radius 500 m",
        "Insert platform, with a safety zone, radius 500m, centred on",
        "Insert light-buoy, Fl.Y.5s, and circular restricted area radius 200m",
        "Insert wellhead with a restricted area, radius 0.5 miles, in",
    ],
)
def test_the_circle_of_a_zone_is_not_that_of_what_it_protects(words: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    assert "relation-unclear" in errors(bulletin)
    assert usable(bulletin) == []


@pytest.mark.parametrize("words", ["safety zone", "anchorage area", "obstruction area"])
def test_an_area_may_be_a_circle(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words}, radius 500m, centred on {P}\n")
    assert not errors(bulletin)


@pytest.mark.parametrize("axis", ["parallel as", "meridian as", "latitude as"])
def test_half_a_place_that_is_told_by_another_is_none(axis: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck, on the same {axis} {P}\n")
    assert "relation-unclear" in errors(bulletin)
    assert usable(bulletin) == []


@pytest.mark.parametrize("depth", ["depth", 'sounding "7"', 'depth "5 m"', "drying height"])
def test_a_depth_without_its_figure_is_not_to_be_inserted(depth: str) -> None:
    inserted = parse(f"{HEAD}Insert {depth} {P}\n")
    assert "depth-not-stated" in errors(inserted)
    assert usable(inserted) == []
    replaced = parse(f"{HEAD}Replace depth 12m by {depth} {P}\n")
    assert usable(replaced) == []


@pytest.mark.parametrize(
    "thing", ["wreck, depth", "wreck, least depth", "WK DEP", "obstruction, drying height"]
)
def test_a_danger_whose_depth_is_announced_and_lost_is_held_back(thing: str) -> None:
    bulletin = parse(f"{HEAD}Insert {thing} {P}\n")
    assert "depth-not-stated" in errors(bulletin)
    assert usable(bulletin) == []


@pytest.mark.parametrize("thing", ["wreck, depth unknown", "wreck, depth 5.2m", "rock, dries"])
def test_a_danger_whose_depth_is_told_is_not(thing: str) -> None:
    assert "depth-not-stated" not in errors(parse(f"{HEAD}Insert {thing} {P}\n"))
