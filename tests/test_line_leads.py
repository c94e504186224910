"""What stands before the sentence of a line, and sentences that hang from their first line."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told

LEADS = [
    "km 12.4, left bank:  ",
    "Km 12,4 (right bank): ",
    "12.4 km, left bank - ",
    "Mile 7.3, mid-channel. ",
    "At km 12.4, left bank, ",
    "Lock 3, both sides: ",
    "Garrow Reach:   ",
    "Garrow Ferry: ",
    "Old Bridge: ",
]


@pytest.mark.parametrize("lead", LEADS)
def test_a_lead_tells_nothing_of_the_feature(lead: str) -> None:
    text = (
        f"{HEAD}{lead}A port-hand beacon has been erected in {P}.\n"
        f"{lead}The isolated danger beacon in {Q} has been\n"
        f"                taken down.\n"
        f"{lead}A wreck has been found in {R}.\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("insert", "beacon_lateral_port", [AT_P]),
        ("delete", "beacon_isolated_danger", [AT_Q]),
        ("insert", "wreck", [AT_R]),
    ]
    assert not errors(bulletin)
    assert not any(f.severity == "warning" for f in bulletin.findings)


@pytest.mark.parametrize("lead", [*LEADS[:3], LEADS[5], LEADS[6], LEADS[8], "km 12.4    "])
def test_a_lead_before_a_command_tells_nothing_either(lead: str) -> None:
    text = (
        f"{HEAD}{lead}insert port-hand beacon in {P}.\n{lead}delete isolated danger beacon\n"
        f"        in {Q}.\n{lead}Amend the light in {R} to F.R.\n"
    )
    bulletin = parse(text)
    actions = actions_of(bulletin)
    assert [a.feature.text for a in actions] == [
        "port-hand beacon", "isolated danger beacon", "the light",
    ]  # fmt: skip
    assert [a.usable for a in actions] == [True, True, True]
    assert bulletin.coverage.unread == 0
    assert not [f for f in bulletin.findings if f.severity == "warning"]


@pytest.mark.parametrize("lead", ["km 12.4, left bank    ", "km 12.9    "])
def test_a_station_in_a_column_of_its_own(lead: str) -> None:
    text = f"{HEAD}{lead}{P}   insert   port-hand beacon\n{lead}{Q}   delete   wreck\n"
    assert told(parse(text)) == [
        ("insert", "beacon_lateral_port", [AT_P]), ("delete", "wreck", [AT_Q]),
    ]  # fmt: skip


def test_a_feature_before_its_verb_is_no_lead() -> None:
    bulletin = parse(f"{HEAD}Wreck: delete {P}\nRock: delete {Q}\n")
    assert told(bulletin) == [("delete", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_lead_that_names_the_feature_is_kept() -> None:
    bulletin = parse(f"{HEAD}Pier light: The character in {P} has been altered to F.R.\n")
    assert [action.feature.kind for action in actions_of(bulletin)] == ["light"]


def test_a_line_that_comes_back_to_the_margin_opens_an_item() -> None:
    text = (
        f"{HEAD}wreck: a wreck has been found\n    in {P}, reported by\n    the pilots\n"
        f"rock: a rock has been found\n    in {Q}\n"
    )
    assert [at for _, _, at in told(parse(text))] == [[AT_P], [AT_Q]]


@pytest.mark.parametrize(
    "again",
    ["and is to be inserted", "and should be inserted"],
)
def test_found_and_to_be_inserted_is_one_change(again: str) -> None:
    bulletin = parse(f"{HEAD}A wreck has been found in position\n{P} {again}.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert not errors(bulletin)


def test_a_clause_without_change_before_a_semicolon() -> None:
    kept = "The clearance of the bridge is unchanged"
    text = f"{HEAD}{kept}; a light, F.R, has been established in {P}.\n"
    assert told(parse(text)) == [("insert", "light", [AT_P])]


@pytest.mark.parametrize("joint", [" and", ", and"])
def test_one_verb_of_two_features_with_their_places_is_that_of_both(joint: str) -> None:
    bulletin = parse(f"{HEAD}A wreck in {P}{joint} a rock in {Q} have been inserted.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def test_one_verb_of_two_features_that_nothing_joins_is_refused() -> None:
    bulletin = parse(f"{HEAD}A wreck in {P}; a rock in {Q} have been inserted.\n")
    assert not told(bulletin)
    assert "sentence-told-twice" in errors(bulletin)


@pytest.mark.parametrize(
    ("phrase", "name"),
    [
        ("port-hand light-buoy, Fl.R.4s, named S6,", "S6"),
        ("port-hand light-buoy, Fl.R.4s, called 7", "7"),
        ("port-hand buoy known as S6", "S6"),
        ("port-hand light-buoy, Fl.R.4s, lettered B", "B"),
        ("port-hand light-buoy, Fl.R.4s, named Sill Rock", "Sill Rock"),
        ("port-hand buoy named in the list", None),
    ],
)
def test_a_word_for_the_name_before_it(phrase: str, name: str | None) -> None:
    reading = read_feature(phrase)
    assert (reading.feature.name, reading.feature.colours) == (name, [])
    assert not reading.faults
