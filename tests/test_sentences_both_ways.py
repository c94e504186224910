"""Bodies of sentences, some with their places in front of the verb and others behind it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told

S, AT_S = "46-05.00S 122-01.00W", "-4605.00-12201.00/"
CABLE = f"   Insert a submarine cable joining {P} and\n   {Q}.\n"
AT_CABLE = ("insert", "cable_submarine", [AT_P, AT_Q])

MOVES = {
    "from and to": f"From {R} to {S} move the special buoy.\n",
    "to behind": f"From {R} move the special buoy to {S}.\n",
    "to on its line": f"From {R} shift the special buoy\n   to {S}.\n",
    "verb first": f"Move the special buoy from {R} to {S}.\n",
    "small letters": f"from {R} to {S} move the special buoy;\n",
}
BESIDE = {
    "none": "",
    "place in front": f"   In {Q} insert a rock.\n",
    "place behind": f"   Insert a rock in {Q}.\n",
}


@pytest.mark.parametrize("move", MOVES.values(), ids=MOVES)
@pytest.mark.parametrize("behind", BESIDE.values(), ids=BESIDE)
def test_each_sentence_keeps_its_places(move: str, behind: str) -> None:
    bulletin = parse(f"{HEAD}   In {P} delete the pile.\n{CABLE}   {move}{behind}")
    rock = [("insert", "rock", [AT_Q])] if behind else []
    moved = ("move", "buoy_special", [AT_R])
    assert told(bulletin) == [("delete", "pile", [AT_P]), AT_CABLE, moved, *rock]
    (action,) = [one for one in actions_of(bulletin) if isinstance(one, Move)]
    assert [one.iso6709 for one in action.destination.positions] == [AT_S]
    assert not errors(bulletin)


def test_first_sentence_may_have_its_place_behind() -> None:
    bulletin = parse(f"{HEAD}   Insert a wreck in {P}.\n   From {R} to {S} move the buoy.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("move", "buoy_generic", [AT_R])]


def test_places_of_a_line_stand_in_front_as_well() -> None:
    bulletin = parse(
        f"{HEAD}{CABLE}   Between {R} and {S} insert a cable.\n   In {Q} delete rock.\n"
    )
    assert told(bulletin) == [
        AT_CABLE,
        ("insert", "cable_submarine", [AT_R, AT_S]),
        ("delete", "rock", [AT_Q]),
    ]


def test_sentences_without_stops_open_with_a_capital() -> None:
    rows = f"   Between {R} and {S} insert a cable\n   In {Q} delete the rock\n"
    bulletin = parse(HEAD + CABLE.replace(".\n", "\n") + rows)
    assert told(bulletin) == [
        AT_CABLE,
        ("insert", "cable_submarine", [AT_R, AT_S]),
        ("delete", "rock", [AT_Q]),
    ]


@pytest.mark.parametrize(
    "last",
    [
        "   Delete the rock.\n",
        f"   In {R} and then further on.\n",
        f"   In {R} delete the rock and insert the pile in {S}.\n",
        f"   In {R} delete the rock, in {S}.\n",
    ],
)
def test_a_sentence_that_is_not_whole_lets_no_other_be_read_so(last: str) -> None:
    bulletin = parse(f"{HEAD}{CABLE}   From {R} to {S} insert the pile.\n{last}")
    assert errors(bulletin)
    assert ("delete", "rock", [AT_S]) not in told(bulletin)


def test_a_place_before_the_next_verb_holds_both_things_back() -> None:
    last = f"   In {R} delete the rock and insert the pile in {S}.\n"
    bulletin = parse(f"{HEAD}{CABLE}   From {R} to {S} insert the beacon.\n{last}")
    assert "place-before-verb" in errors(bulletin)
    assert told(bulletin) == [("insert", "pile", [AT_S])]
