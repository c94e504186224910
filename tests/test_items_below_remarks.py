"""Items close below a remark, under the verb that stands above both.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
)

REMARKS = [
    "Note: position approximate.",
    "NOTE: POSITION APPROXIMATE.",
    "Note: position approximate",
    "NB: position approximate.",
    "N.B. position approximate.",
    "Remark: position approximate.",
    "Remarks: position approximate.",
    "Mariners are advised to keep clear.",
    "Mariners should exercise caution",
    "Works will continue until 31 December 2026.",
    "Note: mariners are advised to keep well clear of the wreck while the divers\nare at work.",
]
ITEMS = [
    (f"rock {Q}\nobstruction {R}", [("rock", [AT_Q]), ("obstruction", [AT_R])]),
    (f"  rock {Q}\n  obstruction {R}", [("rock", [AT_Q]), ("obstruction", [AT_R])]),
    (f"Rock, PA {Q}", [("rock", [AT_Q])]),
    (f"legend, Works {Q}", [("legend", [AT_Q])]),
    (f"light-buoy No 4, Fl.R.3s {Q}", [("light_buoy_generic", [AT_Q])]),
    (f"submarine pipeline joining {Q} {R}", [("pipeline", [AT_Q, AT_R])]),
]


@pytest.mark.parametrize("remark", REMARKS)
@pytest.mark.parametrize(("items", "expected"), ITEMS)
@pytest.mark.parametrize("opens", ["Insert\nwreck", "Insert wreck"])
def test_items_below_a_remark_are_under_the_verb_above(
    opens: str, remark: str, items: str, expected: list[tuple[str, list[str]]]
) -> None:
    bulletin = parse(f"{HEAD}{opens} {P}\n{remark}\n{items}\n")
    whole = [("insert", "wreck", [AT_P]), *(("insert", *one) for one in expected)]
    assert (told(bulletin), errors(bulletin)) == (whole, set())
    (said,) = bulletin.notices[0].remarks
    assert not said.positions


def test_rows_with_their_place_in_front_are_no_remark() -> None:
    bulletin = parse(f"{HEAD}Insert\n{P} wreck\nNote: position approximate.\n{Q} rock\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def test_a_thing_may_have_its_place_on_the_next_line() -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P}\nNote: position approximate.\nrock, PA\n{Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "remark",
    [
        "Note: the following remain on the chart.",
        "Note: these were found by the survey:",
        "Note:",
        "Note: mariners are advised to keep clear of this wreck and of every other",
    ],
)
def test_what_a_remark_may_speak_of_is_held_back(remark: str) -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P}\n{remark}\nrock {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"sentence-under-verb"}


def test_what_hangs_below_the_words_of_a_note_is_held_back() -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P}\nNote: position doubtful.\n      rock {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"sentence-under-verb"}


@pytest.mark.parametrize(
    "remark",
    [
        f"Note: mariners should keep clear of the\nrock {Q}",
        f"Note: a float is moored near the wreck,\nrock {Q}",
        f"Remarks: a float is moored close to the\nrock {Q}",
        f"Note: a wreck lies close by\nin position {Q}",
        f"Note: the survey is of 2025.\nThe rock {Q} dries.",
    ],
)
def test_a_remark_that_goes_on_is_one(remark: str) -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P}\n{remark}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    (said,) = bulletin.notices[0].remarks
    assert [one.iso6709 for one in said.positions] == [AT_Q]


@pytest.mark.parametrize("link", ["", "and "])
def test_places_below_a_remark_are_taken_and_held(link: str) -> None:
    corners = f"Insert restricted area bounded by\n{P}\n{Q}\n{R}\n"
    text = f"{HEAD}{corners}Mariners are advised to keep clear.\n{link}{AT_S}\n"
    (action,) = actions_of(parse(text))
    assert len(action.geometry.positions) == 4
    assert not action.usable


AT_S = "46-00.60S 122-00.30W"


@pytest.mark.parametrize(
    "remark",
    [
        "For further details ask the pilot station.",
        "Please contact the harbour master.",
        "See also the list of lights.",
    ],
)
def test_where_more_is_told_is_no_item(remark: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{remark}\nDelete rock {Q}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert errors(bulletin) == set()


LIST = f"Insert\n  restricted area bounded by\n    (a) {P}\n    (b) {Q}\n    (c) {R}\n"
REMARK = "For details ask the pilot station.\n"


def test_a_thing_above_its_lettered_place_is_an_item_below_a_remark_too() -> None:
    bulletin = parse(f"{HEAD}{LIST}{REMARK}  wreck\n    (d) {AT_S}\n")
    area, wreck = actions_of(bulletin)
    assert (area.usable, len(area.geometry.positions)) == (True, 3)
    assert (wreck.usable, wreck.feature.kind) == (True, "wreck")


def test_a_lettered_place_whose_thing_nobody_knows_is_of_no_item_for_certain() -> None:
    bulletin = parse(f"{HEAD}{LIST}{REMARK}  zorbing float\n    (d) {AT_S}\n")
    assert [action.usable for action in actions_of(bulletin)] == [False]
