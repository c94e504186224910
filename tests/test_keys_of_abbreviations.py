"""Keys to the short forms of a bulletin, which command nothing, and the verb `Am.`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.codes import explains_abbreviations
from tests.short_notices import (
    AT_P,
    AT_Q,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
    usable_of,
)

NOTICE = (
    "NOTICE 12/26\nQUILL SOUND - WRECK\n\nChart 802 [3/26] WGS84, depths in metres\n"
    f"Ins.   Wk in {P}\nDel.   Rk in {Q}\n"
)

KEYS = {
    "two lines": "Abbreviations: Ins. = insert, Del. = delete, Repl. = replace,\n"
    "Mv. = move, Wk = wreck, Obstn = obstruction, Rk = rock, Lt = light",
    "semicolons": "Key: Wk = wreck; Rk = rock; N card buoy = north cardinal buoy.",
    "pair cut off": "Abbreviations used in this list:\nIns. = insert, Del. = delete, Wk =\nwreck,"
    " Rk = rock",
    "brackets": "(Wk = wreck, Rk = rock)",
    "no name": "Mv. = move, Del. = delete, Wk = wreck",
    "one a line": "Abbreviations: Wk = wreck,\nRk = rock,\nMv. = move",
}


@pytest.mark.parametrize("key", KEYS.values(), ids=KEYS)
@pytest.mark.parametrize("is_above", [True, False], ids=["above", "below"])
def test_a_key_commands_nothing(key: str, is_above: bool) -> None:
    parts = [f"TAVRENNE DISTRICT\n7 September 2026\n\n{key}\n", NOTICE]
    bulletin = parse("\n".join(parts if is_above else [*parts[1:], f"{key}\n"]))
    assert [one.id for one in bulletin.notices] == ["12/26"]
    assert told(bulletin) == WRECK_AND_ROCK
    assert len(actions_of(bulletin)) == 2
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "words",
    ["Ins. = insert", "Wk = wreck in P, Rk 12", "The rock, the wreck", "Wk = wreck, depth 12 m"],
)
def test_other_words_are_no_key(words: str) -> None:
    assert not explains_abbreviations(words)


def test_a_line_with_a_place_is_no_key() -> None:
    bulletin = parse(f"{HEAD}Ins. Wk in {P}\nDel. Rk = rock, Wk = wreck in {Q}\n")
    assert len(actions_of(bulletin)) == 2


@pytest.mark.parametrize("verb", ["Am.", "AM.", "1. Am.", "Am.   "])
def test_am_with_its_stop_is_a_verb(verb: str) -> None:
    bulletin = parse(f"{HEAD}{verb} light to Fl.3s in {P}\nDel. Rk in {Q}\n")
    assert told(bulletin) == [("amend", "light", [AT_P]), ("delete", "rock", [AT_Q])]


def test_am_takes_no_verb_from_above() -> None:
    bulletin = parse(f"{HEAD}Ins.   Rk in {P}\nAm.    depth 9.4m to 8.8m in {Q}\n")
    assert usable_of(bulletin) == [("insert", "rock"), ("amend", "sounding")]


@pytest.mark.parametrize("hour", ["10 am.", "at 0600 am."])
def test_am_behind_an_hour_is_none(hour: str) -> None:
    bulletin = parse(f"{HEAD}Insert rock in {P} from {hour} Wreck in {R}\n")
    assert "amend" not in [one.verb for one in actions_of(bulletin)]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("depths 16.1m", "15.7m"),
        ("depths 16.1m,", "15.7m,"),
        ("soundings 16.1m", "15.7m"),
        ("depths of 16 m", "15 m"),
        ("depth 16.1m", "15.7m"),
        ("the depths 16.1m", "and 15.7m"),
    ],
)
@pytest.mark.parametrize(("written", "verb"), [("Ins.", "insert"), ("Del.", "delete")])
def test_a_depth_right_below_another_is_one_more(
    first: str, second: str, written: str, verb: str
) -> None:
    bulletin = parse(f"{HEAD}{written}   {first} in {P}\n             {second} in {Q}\n")
    assert told(bulletin) == [(verb, "sounding", [AT_P]), (verb, "sounding", [AT_Q])]


@pytest.mark.parametrize("first", ["wreck, depth 16.1m,", "beacon", "drying heights 0.4m"])
def test_a_figure_right_below_another_thing_is_held_back(first: str) -> None:
    bulletin = parse(f"{HEAD}Ins.   {first} in {P}\n              15.7m in {Q}\n")
    assert errors(bulletin) == {"place-of-another"}
    assert not usable_of(bulletin)
