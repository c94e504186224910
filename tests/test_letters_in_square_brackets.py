"""Letters in square brackets that count the items: `[a]  Insert wreck`, `Delete [b] rock`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, WRECK_AND_ROCK, P, Q, actions_of, codes, told


@pytest.mark.parametrize(
    "body",
    [
        f"[A] Insert wreck {P}\n[B] Delete rock {Q}\n",
        f"  [a]  ADD       wreck      {P}\n  [b]  TAKE OUT  rock      {Q}\n",
        f"          [A]  ADD       wreck      {P}\n          [B]  DELETE    rock      {Q}\n",
        f"Insert  [a]  wreck      {P}\nDelete  [b]  rock      {Q}\n",
        f"Insert [A] wreck {P}\nDelete [B] rock {Q}\n",
        f"Insert\n  [i]   wreck   {P}\nDelete\n  [ii]  rock    {Q}\n",
        f"- [A] Insert wreck {P}\n- [B] Delete rock {Q}\n",
        f"[1] Insert wreck {P}\n[2] Delete rock {Q}\n",
    ],
)
def test_a_letter_opens_its_item(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == WRECK_AND_ROCK
    assert [one.label is not None for one in actions_of(bulletin)] == [True, True]
    assert not codes(bulletin)


@pytest.mark.parametrize("place", ["[A] above", "[A]"])
def test_the_letter_of_an_item_stands_for_its_place(place: str) -> None:
    body = f"  [A]  ADD      wreck     {P}\n  [B]  DELETE   rock, close E of      {place}\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_P])]
    (action,) = actions_of(bulletin)[1:]
    assert action.geometry.relation == "close"


def test_the_places_of_lettered_items_may_stand_in_a_list_below() -> None:
    body = f"[A] Insert wreck\n[B] Delete rock\n[B] {Q}\n[A] {P}\n"
    assert told(parse(HEAD + body)) == WRECK_AND_ROCK


def test_letters_before_places_stay_those_of_the_places() -> None:
    body = f"Insert cable joining\n   [A] {P}\n   [B] {Q}\nInsert beacons at\n   [A] and [B]\n"
    bulletin = parse(HEAD + body)
    assert [places for _, _, places in told(bulletin)] == [[AT_P, AT_Q], [AT_P, AT_Q]]
    assert [one.label for one in actions_of(bulletin)] == [None, None]


def test_a_mark_of_a_notice_is_no_letter_of_an_item() -> None:
    bulletin = parse(f"{HEAD}[T]  Insert wreck {P}\n[P]  Delete rock {Q}\n")
    assert not told(bulletin)
