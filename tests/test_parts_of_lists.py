"""Lists whose first words say what is meant of each thing: its topmark, or words on the chart."""

from __future__ import annotations

import pytest

import noticeparse
from noticeparse.records.action import Action

_P, _Q, _R = "47-12.34S 123-45.67W", "47-13.34S 123-45.67W", "47-14.34S 123-45.67W"


def _actions(body: str) -> list[Action]:
    text = body.replace("<P>", _P).replace("<Q>", _Q).replace("<R>", _R)
    bulletin = noticeparse.parse(f"613/26 Corvane Sound\nChart 904 [588/26]\n{text}\n")
    return [action for chart in bulletin.notices[0].charts for action in chart.actions]


def _read(body: str) -> list[tuple[str, str | None, bool]]:
    return [(one.feature.kind, one.feature.legend, one.usable) for one in _actions(body)]


@pytest.mark.parametrize(
    ("first", "kind"),
    [
        ("topmarks of", "topmark"),
        ("the topmarks on", "topmark"),
        ("fog signals from", "fog_signal"),
        ("radar reflectors from", "radar_reflector"),
        ("racons at", "racon"),
        ("lights on", "light"),
    ],
)
@pytest.mark.parametrize("verb", ["Delete", "Insert"])
def test_part_above_rows_is_that_of_each(verb: str, first: str, kind: str) -> None:
    rows = f"{verb} {first}:\n  beacon Brack  <P>\n  light-buoy No 2  <Q>\n  pile <R>"
    assert _read(rows) == [(kind, None, True)] * 3


@pytest.mark.parametrize(
    ("first", "kind"),
    [
        ("racons on", "racon"),
        ("topmarks on", "topmark"),
        ("fog signals at", "fog_signal"),
        ("AIS transmitters on", "ais_physical"),
        ("safety zones around", "safety_zone"),
    ],
)
def test_part_of_two_things_in_a_sentence(first: str, kind: str) -> None:
    told = _read(f"Delete {first} beacon Brack, <P>, and buoy No 2, <Q>")
    assert told == [(kind, None, True)] * 2


@pytest.mark.parametrize(
    "words",
    [
        "Delete lights on beacon Brack, <P>, and buoy No 2, <Q>",
        "Delete topmarks on beacons A and B, <P>, and buoy No 2, <Q>",
        "Delete topmarks on beacon Brack, <P>\n       buoy No 2, <Q>",
        "Delete legends Works <P>\n       buoy No 2 <Q>",
        'Delete legends "Works" <P> and buoy No 2 <Q>',
        "Delete topmarks of:\n  beacon Brack  <P>\nbuoy No 2  <Q>",
        "Delete topmarks of:\n  beacon Brack  <P>\n\n  buoy No 2  <Q>",
    ],
)
def test_whether_first_words_hold_is_not_sure(words: str) -> None:
    assert [one.usable for one in _actions(words)][-1] is False


@pytest.mark.parametrize(
    "words",
    [
        "Delete legends: Obstn, <P>; Wreck, <Q>",
        "Delete the legends Obstn <P> and Wreck <Q>",
        "Delete legends:\nObstn  <P>\nWreck  <Q>",
        "Delete legends\n Obstn  <P>\n Wreck  <Q>",
        "Delete magenta legends:\n  Obstn  <P>\n  Wreck  <Q>",
        "Delete\n  Legends\n    Obstn  <P>\n    Wreck  <Q>",
        "Legends to be deleted:\n  Obstn  <P>\n  Wreck  <Q>",
        'Delete legends "Obstn" <P> and "Wreck" <Q>',
        "Delete captions: Obstn, <P>; Wreck, <Q>",
    ],
)
def test_words_on_the_chart_are_no_things(words: str) -> None:
    assert _read(words) == [("legend", "Obstn", True), ("legend", "Wreck", True)]


def test_notes_by_their_titles() -> None:
    told = _read("Delete notes: Fish farms, <P>; Wreck, <Q>")
    assert told == [("note", "Fish farms", True), ("note", "Wreck", True)]


def test_legends_below_another_command() -> None:
    told = _read("Insert wreck <P>\nInsert legends:\nFoul <Q>\nRock <R>")
    assert told == [("wreck", None, True), ("legend", "Foul", True), ("legend", "Rock", True)]


@pytest.mark.parametrize("heading", ["Topmarks to be deleted:", "Lights to be deleted:"])
def test_class_of_parts_above_what_has_them(heading: str) -> None:
    told = _actions(f"{heading}\n beacon Brack <P>\n buoy No 2 <Q>")
    assert [one.usable for one in told] == [False, False]


@pytest.mark.parametrize(
    ("words", "kinds"),
    [
        ("Delete legend Works <P> and rock <Q>", ["legend", "rock"]),
        ("Delete legends Works <P> and Foul <Q>\n  buoy No 2 <R>",
         ["legend", "legend", "buoy_generic"]),
        ("Delete:\n topmarks on beacons <P> <Q>\n wreck <R>", ["topmark", "wreck"]),
        ("Delete racons on beacon A <P> and beacon B <Q>\nDelete wreck <R>",
         ["racon", "racon", "wreck"]),
        ("Insert racon on beacon Brack <P> and buoy No 2 <Q>", ["racon", "buoy_generic"]),
        ("Lights to be inserted:\n Fl.R.2s <P>\n light-buoy No 2, Fl.R.5s <Q>",
         ["light", "light_buoy_generic"]),
        ("Insert wrecks:\n 12m <P>\n 15m <Q>", ["wreck", "wreck"]),
    ],
)  # fmt: skip
def test_lists_of_things_stay_lists_of_things(words: str, kinds: list[str]) -> None:
    told = _actions(words)
    assert [(one.feature.kind, one.usable) for one in told] == [(kind, True) for kind in kinds]
