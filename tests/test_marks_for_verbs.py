"""Verbs in brackets behind what they concern, and signs that a key gives a verb."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, HEAD, WRECK_AND_ROCK, P, Q, actions_of, errors, told

IN_BRACKETS = {
    "place first": f"{P}   wreck   (insert)\n{Q}   rock   (delete)",
    "one blank": f"{P} wreck (insert)\n{Q} rock (delete).",
    "feature first": f"Wreck, {P} (inserted)\nRock, {Q} (to be deleted)",
    "before the places": f"Wreck (insert)    {P}\nRock (delete)     {Q}",
}


@pytest.mark.parametrize("body", IN_BRACKETS.values(), ids=IN_BRACKETS)
def test_a_verb_in_brackets_commands(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)


def test_a_word_in_brackets_that_is_no_verb_of_ours_is_told() -> None:
    bulletin = parse(f"{HEAD}{P}  wreck  (insert)\n{Q}  rock  (enlarge)\n")
    assert told(bulletin) == WRECK_AND_ROCK[:1]
    assert "item-without-verb" in errors(bulletin)


KEYS = {
    "in the title": "Signs:  + insert   - delete   = amend",
    "a sentence": "In these sheets + = insertion; - = deletion; * = amendment.",
    "in brackets": "Key: (+) insert, (-) delete",
    "opens its line": "+ means add / - means remove",
}


@pytest.mark.parametrize("key", KEYS.values(), ids=KEYS)
def test_a_sign_is_the_verb_that_a_key_gives_it(key: str) -> None:
    bulletin = parse(f"Strip 26/9, September 2026\n{key}\n\n{HEAD}+ wreck   {P}\n-  rock  {Q}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)


def test_without_a_key_a_sign_commands_nothing() -> None:
    bulletin = parse(f"Strip 26/9, September 2026\n\n{HEAD}+ wreck   {P}\n- rock  {Q}\n")
    assert not told(bulletin)
    assert "item-without-verb" in errors(bulletin)


def test_a_bullet_before_a_command_is_no_sign_of_the_key() -> None:
    key = "Signs: + insert, - delete"
    bulletin = parse(f"{key}\n\n{HEAD}- Insert wreck   {P}\n- Delete rock  {Q}\n")
    assert told(bulletin) == WRECK_AND_ROCK


@pytest.mark.parametrize(
    "key",
    [
        "+ insert, > move (the second line gives the new position)",
        "+ insert, > move\nFor moves the new position stands on the second line.",
    ],
)
def test_the_second_place_of_a_move_is_the_new_one_where_the_key_says_so(key: str) -> None:
    bulletin = parse(f"{key}\n\n{HEAD}> wreck   {P}\n          {Q}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Move)
    assert action.destination is not None
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P]
    assert [one.iso6709 for one in action.destination.positions] == [AT_Q]
    bare = parse(f"+ insert, > move\n\n{HEAD}> wreck   {P}\n          {Q}\n")
    assert "move-without-destination" in errors(bare)


def test_a_sentence_on_a_new_position_within_a_notice_is_no_key() -> None:
    said = "The lower position gives the new position of the buoy."
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{said}\nDelete rock {Q}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert errors(bulletin) == set()
    assert said in [remark.text for remark in bulletin.notices[0].remarks]
    assert all("belongs to no notice" not in one.message for one in bulletin.findings)


def test_a_sign_holds_for_its_own_line_alone() -> None:
    bulletin = parse(f"Key: + insert, - delete\n\n{HEAD}+ wreck {P}\nx rock {Q}\nrock {Q}\n")
    assert told(bulletin) == WRECK_AND_ROCK[:1]
    assert "item-without-verb" in errors(bulletin)


@pytest.mark.parametrize("rows", [f"* wreck   {P}\n- rock  {Q}\n", f"* wreck {P}\n(-) rock {Q}\n"])
def test_a_sign_that_the_key_does_not_give_commands_nothing(rows: str) -> None:
    bulletin = parse(f"Key: + insert, - delete\n\n{HEAD}{rows}")
    assert told(bulletin) == WRECK_AND_ROCK[1:]
    assert errors(bulletin) == {"item-without-verb"}


@pytest.mark.parametrize("gap", ["   ", " ", "  =  ", ": ", " - "])
def test_a_list_gives_the_letters_of_a_column_their_verbs(gap: str) -> None:
    listed = "".join(
        f"   {letter}{gap}{verb}\n"
        for letter, verb in (("I", "insert"), ("D", "delete"), ("C", "change"), ("M", "move"))
    )
    text = (
        f"The letter in column V stands for:\n{listed}\n"
        "Notice | Chart | Last   | V | Item | Latitude   | Longitude\n"
        "12/26  | 802   | 3/26   | I | wreck | 46-00.00S | 122-00.00W\n"
        "12/26  | 802   | 3/26   | D | rock  | 46-00.50S | 122-00.00W\n"
    )
    assert told(parse(text)) == WRECK_AND_ROCK


def test_one_line_of_letters_and_a_verb_is_no_key() -> None:
    text = f"DS delete\n\n{HEAD}Insert wreck {P}\nDS rock {Q}\n"
    assert [verb for verb, *_ in told(parse(text))].count("delete") == 0
