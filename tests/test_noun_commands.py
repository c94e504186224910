"""Nouns that command what stands behind them: `Insertion of a rock` above its position."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told, usable_of


@pytest.mark.parametrize(
    ("item", "verb", "kind"),
    [
        (f"Insertion of a port-hand beacon\n   {P}", "insert", "beacon_lateral_port"),
        (f"Establishment of a rock {P}", "insert", "rock"),
        (f"INSERTION OF A ROCK {P}", "insert", "rock"),
        (f"1. Deletion of the wreck in {P}", "delete", "wreck"),
        (f"Removal of fishing stakes\n   {P}", "delete", "fishing_stakes"),
        (f"Discontinuance of the light, F.R, {P}", "delete", "light"),
        (f"Replacement of the depth 7.2 m by the depth 6.8 m\n   {P}", "replace", "sounding"),
        (f"Substitution of light Fl.3s for light F.R in {P}", "replace", "light"),
        (f"Alteration of the range of the light Fl.15s24m16M to 14M\n   {P}", "amend", "light"),
        (f"Increase in the range of the light Fl.5s from 10M to 12M, {P}", "amend", "light"),
        (f"{P}   Insertion of a rock", "insert", "rock"),
        (f"{P}: Insertion of a rock", "insert", "rock"),
        (f"{P}: insertion of a rock", "insert", "rock"),
        (f"{P}   deletion of wreck", "delete", "wreck"),
        (f"{P}: substitution of depth 6.1 m for depth 6.8 m", "replace", "sounding"),
    ],
)
def test_a_noun_with_a_thing_behind_it_commands(item: str, verb: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}{item}\n")
    assert told(bulletin) == [(verb, kind, [AT_P])]
    assert not errors(bulletin)


@pytest.mark.parametrize("noun", ["Transfer", "Relocation", "Shifting"])
def test_a_noun_moves(noun: str) -> None:
    bulletin = parse(f"{HEAD}{noun} of the special buoy\n   from {P} to {Q}\n")
    (move,) = actions_of(bulletin)
    assert told(bulletin) == [("move", "buoy_special", [AT_P])]
    assert [p.iso6709 for p in move.destination.positions] == [AT_Q]


@pytest.mark.parametrize("title", ["Removal of a wreck", "REMOVAL OF A WRECK"])
def test_a_title_commands_nothing(title: str) -> None:
    for head in (f"12/26 {title}\n", f"12/26 Quill Sound.\n{title}\n", f"12/26\n{title}\n"):
        bulletin = parse(f"{head}Chart 802 [3/26] WGS84\nDelete wreck {P}\n")
        assert usable_of(bulletin) == [("delete", "wreck")]
        assert not errors(bulletin)


@pytest.mark.parametrize(
    "sentence",
    [
        f"Removal of the wreck in {Q} has begun.",
        f"Removal of the wreck in {Q}\nhas begun.",
        f"Removal of the wreck in {Q} by the tug MARY.",
        f"Laying of a cable between {P} and {Q} is planned.",
        f"Augmentation of the light in {Q}",
    ],
)
@pytest.mark.parametrize("above", ["", f"Insertion of a rock {P}\n"])
def test_a_sentence_that_opens_with_a_noun_commands_nothing(sentence: str, above: str) -> None:
    bulletin = parse(f"{HEAD}{above}{sentence}\nInsertion of a rock {P}\n")
    assert set(usable_of(bulletin)) <= {("insert", "rock")}
    assert errors(bulletin)


def test_a_temporary_notice_may_open_a_sentence_with_a_noun() -> None:
    bulletin = parse(
        f"15(T)/26 Quill Sound.\nChart 802 [3/26] WGS84\nRemoval of the wreck in {P}\nhas begun.\n"
    )
    assert actions_of(bulletin) == []


def test_a_noun_in_small_letters_behind_words_is_no_command() -> None:
    bulletin = parse(f"{HEAD}Insert a buoy for the insertion of piles {P}\n")
    assert [one.verb for one in actions_of(bulletin)] == ["insert"]


def test_a_noun_in_small_letters_moves() -> None:
    bulletin = parse(f"{HEAD}from {P} to {Q}: transfer of mooring buoy\n")
    (move,) = actions_of(bulletin)
    assert told(bulletin) == [("move", "buoy_mooring", [AT_P])]
    assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
