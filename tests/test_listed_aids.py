"""Records of aids in the order of a list: number and name, the place, the command."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors, told

HEAD = "MEMORANDUM ITEM 77/26     CHART 802     PREVIOUS ITEM 70/26\n"
RECORDS = (
    f"  0412    Karra Head\n          {P}\n          Establish light, Fl.5s.\n"
    f"  0413.4  Karra Bank, east side\n          {Q}\n          Withdraw special buoy.\n"
    f"  0420    Inner Road\n          {R}\n          Establish mooring buoy.\n"
)


def test_the_name_of_an_aid_ends_the_command_above_it() -> None:
    bulletin = parse(HEAD + RECORDS)
    assert told(bulletin) == [
        ("insert", "light", [AT_P]), ("delete", "buoy_special", [AT_Q]),
        ("insert", "buoy_mooring", [AT_R]),
    ]  # fmt: skip
    assert codes(bulletin) == set()
    assert bulletin.coverage.unread == 0


def test_a_command_to_move_has_the_old_place_above_it() -> None:
    moved = f"  0421    Outer Road\n          {P}\n          Resite special beacon to {Q}.\n"
    move = actions_of(parse(HEAD + RECORDS + moved))[-1]
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.geometry.positions] == [AT_P]
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert move.usable


def test_numbered_things_above_their_places_are_no_names() -> None:
    body = f"To be inserted\n 7  wreck\n      {P}\nTo be deleted\n 8  rock\n      {Q}\n"
    assert told(parse(HEAD + body)) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_place_beside_a_name_leaves_open_which_place_is_whose() -> None:
    beside = RECORDS.replace("Karra Bank, east side\n", f"Karra Bank  {R}\n")
    bulletin = parse(HEAD + beside)
    assert told(bulletin) == []
    assert "place-of-another" in codes(bulletin)


def test_a_name_that_may_be_a_thing_is_held() -> None:
    bulletin = parse(HEAD + RECORDS.replace("east side", "old wreck"))
    assert errors(bulletin)


def test_a_verb_without_its_thing_is_held() -> None:
    text = RECORDS.replace("Withdraw special buoy.", "Withdraw")
    assert errors(parse(HEAD + text))
