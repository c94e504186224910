"""Words of a feature: kinds, names and sides; a second one is never passed over."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature

KINDS_LOST = [
    "N and S cardinal buoys",
    "north and south cardinal buoys",
    "wreck, buoy",
    "Dangerous wreck Isolated danger buoy",
    "wreck/obstruction",
    "rocks, wrecks and obstructions",
    "conical or can buoy",
    "wreck (or rock)",
    "wreck, possibly rock",
    "wreck, possibly a rock",
    "wreck, or possibly rock",
    "wreck (possibly rock)",
    "obstruction, perhaps wreck",
    "wreck, probably an obstruction",
]


@pytest.mark.parametrize("phrase", KINDS_LOST)
def test_second_kind_has_a_fault(phrase: str) -> None:
    codes = {fault.code for fault in read_feature(phrase).faults}
    assert codes & {"feature-kinds-several", "feature-kind-apposed"}


@pytest.mark.parametrize("phrase", ["wreck?", "wreck (rock?)", "rock?, depth 3m"])
def test_a_question_mark_behind_a_kind_has_a_fault(phrase: str) -> None:
    assert [fault.code for fault in read_feature(phrase).faults] == ["feature-words-unread"]


@pytest.mark.parametrize("phrase", ["rock (wreck)", "wreck, depth 3m", "possible wreck"])
def test_other_words_beside_a_kind_are_no_second_one(phrase: str) -> None:
    codes = {fault.code for fault in read_feature(phrase).faults}
    assert "feature-kinds-several" not in codes


@pytest.mark.parametrize(
    ("phrase", "status"),
    [
        ("wreck, Marked on the chart as PA", "position_approximate"),
        ("wreck, shown on charts as PA", "position_approximate"),
        ("wreck, shown on all charts as ED", "existence_doubtful"),
        ("wreck, charted as PD", "position_doubtful"),
    ],
)
def test_as_what_a_thing_stands_on_the_chart(phrase: str, status: str) -> None:
    feature = read_feature(phrase).feature
    assert (feature.status, feature.companions) == ([status], [])


VALUES_LOST = [
    "light, Fl.5s, Racon(K), on pier, Racon(B)",
    "can buoy, conical",
    "buoy, topmark can, topmark 2 cones points up",
]


@pytest.mark.parametrize("phrase", VALUES_LOST)
def test_second_value_has_one_fault(phrase: str) -> None:
    codes = [fault.code for fault in read_feature(phrase).faults]
    assert codes.count("feature-stated-twice") == 1


COLOURS = [
    ("red can buoy, port hand, red", ["red"]),
    ("buoy, BYB, black, yellow and black", ["black", "yellow", "black"]),
    ("west cardinal buoy, yellow, black, yellow", ["yellow", "black", "yellow"]),
]


@pytest.mark.parametrize(("phrase", "colours"), COLOURS)
def test_no_colour_is_said_twice(phrase: str, colours: list[str]) -> None:
    assert read_feature(phrase).feature.colours == colours


def test_topmark_can_is_no_shape_of_the_buoy() -> None:
    feature = read_feature("buoy, topmark can").feature
    assert (feature.shape, feature.topmark) == (None, "cylinder")


NAMES = [
    ("Light Mull Stack", "light", "Mull Stack"),
    ("Light - Brannoch Rock, Fl.5s", "light", "Brannoch Rock"),
    ("Light Vessel Anna", "light_vessel", "Anna"),
    ("Light Port Brannoch", "light", "Port Brannoch"),
    ("Buoy Mull Stack, yellow", "buoy_generic", "Mull Stack"),
]


@pytest.mark.parametrize(("phrase", "kind", "name"), NAMES)
def test_capitals_behind_a_mark_are_its_name(phrase: str, kind: str, name: str) -> None:
    feature = read_feature(phrase).feature
    assert (feature.kind, feature.name) == (kind, name)


def test_a_name_of_known_words_alone_is_an_error() -> None:
    assert "feature-kinds-several" in [fault.code for fault in read_feature("Light Stack").faults]


# `Port` directly before a strange word begins a name; elsewhere it is a side.
SIDES = [
    ("buoy Port Brannoch", None),
    ("can buoy, port brannoch", None),
    ("buoy, port, brannoch", 1),
    ("port hand buoy", 1),
    ("starboard buoy Brannoch", 2),
]


@pytest.mark.parametrize(("phrase", "side"), SIDES)
def test_side_or_name(phrase: str, side: int | None) -> None:
    assert read_feature(phrase).feature.attributes.get("CATLAM") == side


def test_companions_end_at_the_fourth() -> None:
    feature = read_feature("wreck" + " and wreck" * 9).feature
    depth = 0
    while feature.companions:
        feature, depth = feature.companions[0].feature, depth + 1
    assert depth == 4


@pytest.mark.parametrize(
    "phrase",
    [
        "wreck buoy",
        "breakwater light",
        "light, Fl.5s, white tower",
        "light, Fl.5s, Racon(K), on pier, Horn(1)10s",
        "north cardinal beacon, topmark two cones, points up",
        "special buoy to mark the wreck",
    ],
)
def test_what_belongs_together_has_no_fault(phrase: str) -> None:
    codes = [fault.code for fault in read_feature(phrase).faults]
    assert [code for code in codes if code != "feature-class-unknown"] == []


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("beacon, destroyed in the storm of 12 March", None),
        ("beacon destroyed in March", None),
        ("light buoy reported missing 12 March 2026", None),
        ("wreck, sunk 3 May 2025", None),
        ("light buoy March", "March"),
        ("May Shoal light buoy", "May Shoal"),
        ("wreck of May Queen", "May Queen"),
    ],
)
def test_the_month_of_a_date_is_no_name(words: str, name: str | None) -> None:
    assert read_feature(words, None).feature.name == name
