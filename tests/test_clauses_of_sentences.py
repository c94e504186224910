"""Sentences with several changes: which thing each verb is said of, and where that is not told."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told

S, AT_S = "46-00.30S 122-00.40W", "-4600.30-12200.40/"


def test_a_thing_behind_the_place_of_another_has_its_verb_and_not_the_next_one() -> None:
    """The verb `is to be deleted` tells of one thing, the last."""
    text = (
        f"A beacon is to be inserted in {P} and a wind turbine in {Q}, and the chimney in {R} "
        "is to be deleted.\n"
    )
    bulletin = parse(HEAD + text)
    assert told(bulletin) == [
        ("insert", "beacon_generic", [AT_P]),
        ("insert", "wind_turbine", [AT_Q]),
        ("delete", "chimney", [AT_R]),
    ]
    assert errors(bulletin) == set()


def test_a_comma_leads_to_a_clause_with_its_own_verb() -> None:
    text = (
        f"The chimney in {P} is to be\ndeleted, a wind turbine is to be inserted in {Q} and "
        f"another wind turbine in\n{R}, and the disused pipeline joining {P}, {Q} and {S} is to "
        "be deleted.\n"
    )
    bulletin = parse(HEAD + text)
    assert told(bulletin) == [
        ("delete", "chimney", [AT_P]),
        ("insert", "wind_turbine", [AT_Q]),
        ("insert", "wind_turbine", [AT_R]),
        ("delete", "pipeline_disused", [AT_P, AT_Q, AT_S]),
    ]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    ("change", "verb"),
    [
        ("amended to Fl.WRG.3s12m9-6M", "amend"),
        ("replaced by a light, Fl.WRG.3s12m9-6M", "replace"),
        (f"moved to {Q}", "move"),
    ],
)
@pytest.mark.parametrize("joint", [", and ", " and ", ", and\n", ", while ", ", "])
def test_what_a_thing_becomes_ends_before_the_next_thing(
    change: str, verb: str, joint: str
) -> None:
    text = (
        f"The light, Fl.WRG.5s12m9-6M, in {P} is to be {change}{joint}a mooring buoy is to be "
        f"inserted in {R}.\n"
    )
    bulletin = parse(HEAD + text)
    assert [one[0] for one in told(bulletin)] == [verb, "insert"]
    assert told(bulletin)[1] == ("insert", "buoy_mooring", [AT_R])
    assert errors(bulletin) == set()


def test_the_item_of_a_further_thing_begins_with_its_own_words() -> None:
    text = f"A wreck is to be inserted in {P} and a light-buoy, Fl(2)10s, in {Q}.\n"
    wreck, buoy = actions_of(parse(HEAD + text))
    assert wreck.usable
    assert buoy.usable
    assert (wreck.text, buoy.text) == (
        f"A wreck is to be inserted in {P}",
        f"and a light-buoy, Fl(2)10s, in {Q}.",
    )


def test_two_things_of_which_one_verb_in_the_plural_tells() -> None:
    text = (
        f"A beacon is to be inserted in {P}, and a wreck in {Q} and a rock in {R} are to be "
        "deleted.\n"
    )
    assert told(parse(HEAD + text)) == [
        ("insert", "beacon_generic", [AT_P]),
        ("delete", "wreck", [AT_Q]),
        ("delete", "rock", [AT_R]),
    ]


@pytest.mark.parametrize(
    "last",
    [
        f"and the chimneys in {R} are to be deleted",
        f"and the chimneys in {R} and {S} are to be deleted",
        f"and the chimney in {R} shall be deleted",
        f"and the chimney beside it in {R} is to be deleted",
        f"and the gizmo in {R} is to be deleted",
    ],
)
def test_a_thing_that_either_verb_may_tell_of_is_held(last: str) -> None:
    text = f"A beacon is to be inserted in {P} and a wind turbine in {Q}, {last}.\n"
    bulletin = parse(HEAD + text)
    assert told(bulletin) == []
    assert "sentence-told-twice" in errors(bulletin)


@pytest.mark.parametrize(
    "text",
    [
        f"The light in {P} is to be amended to Fl.3s, and the beacon, a stone tower in {Q}, is to "
        "be deleted.",
        f"The buoy in {P} is to be moved to {Q}, the beacon in {R}, and is to be amended to Q.R.",
        f"The beacon in {P} is to be replaced by a light-buoy, the light of which is to be "
        "amended to Fl.R.3s.",
    ],
)
def test_a_thing_that_says_more_of_the_one_before_opens_no_clause(text: str) -> None:
    bulletin = parse(f"{HEAD}{text}\n")
    assert told(bulletin) == []
    assert "sentence-told-twice" in errors(bulletin)


@pytest.mark.parametrize(
    "further",
    [
        "the beacon in {}",
        "a cable close N of {}",
        "a beacon marking a rock in {}",
        "a gizmo in {}",
    ],
)
def test_a_further_thing_that_may_be_named_for_another_reason_is_held(further: str) -> None:
    bulletin = parse(f"{HEAD}A buoy is to be inserted in {P} and {further.format(Q)}.\n")
    assert told(bulletin) == []
    assert "place-of-another" in errors(bulletin)


def test_the_place_of_a_thing_that_is_not_known_is_not_that_of_the_one_before() -> None:
    bulletin = parse(f"{HEAD}The wreck in {P} and the gizmo in {Q} are to be deleted.\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"place-of-another"}


def test_a_point_of_a_line_is_no_other_thing() -> None:
    bulletin = parse(f"{HEAD}The cable joining {P} and the shore in {Q} is to be deleted.\n")
    assert told(bulletin) == [("delete", "cable_submarine", [AT_P, AT_Q])]


@pytest.mark.parametrize(
    "lead",
    [
        "Mariners are advised that",
        "Masters and pilots are hereby informed that",
        "Notice is given that",
        "All mariners are notified that, following a survey completed on 20 February 2026,",
        "Notice is hereby given that, owing to the loss of the old buoy,",
    ],
)
@pytest.mark.parametrize("joint", [" and that ", ", and that ", "; and that ", ", while "])
def test_what_is_told_behind_a_second_that_is_another_change(lead: str, joint: str) -> None:
    text = f"{lead} a wreck has been found\nin {P}{joint}the rock in {Q} has been removed.\n"
    bulletin = parse(HEAD + text)
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert codes(bulletin) == set()


def test_whom_a_sentence_tells_it_is_no_part_of_a_change() -> None:
    text = (
        f"Mariners are advised that the character of the light in {P} has been changed from\n"
        "Fl.R.3s9m6M to Fl(2)R.6s9m8M.\n"
    )
    bulletin = parse(HEAD + text)
    assert told(bulletin) == [("amend", "light", [AT_P])]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "text",
    [
        f"Mariners are advised that until further notice the light in {P} has been removed.\n",
        f"Mariners are advised that the buoy in {P} has been moved to {Q} and that the wreck "
        "that lay beside it has been removed.\n",
        f"Mariners are advised that, following a survey near the rock in {P}, a wreck has been "
        f"found in {Q}.\n",
    ],
)
def test_what_limits_a_sentence_or_leads_to_another_place_is_not_passed_over(text: str) -> None:
    bulletin = parse(HEAD + text)
    assert told(bulletin) == []
    assert errors(bulletin) != set()


@pytest.mark.parametrize(
    "lead",
    [
        "The Harbour Master gives notice that",
        "The Port Authority hereby gives notice that",
        "Shipping is informed that",
        "Masters, pilots and fishermen are informed that",
        "Notice is hereby given to mariners that",
        "The Quill Pilots report that",
        "We inform mariners that",
        "Mariners are advised that:",
    ],
)
def test_who_tells_it_to_whom_is_no_name_and_no_pilots(lead: str) -> None:
    text = f'{lead} a port-hand light-buoy, Fl.R.4s, named "W2", has been laid in {P}.\n'
    bulletin = parse(HEAD + text)
    (action,) = actions_of(bulletin)
    assert (action.verb, action.feature.kind) == ("insert", "light_buoy_port")
    assert action.feature.name == "W2"
    assert codes(bulletin) == set()


def test_a_further_thing_is_the_next_one() -> None:
    text = f"A beacon has been laid in {P} and that a further beacon has been laid in {Q}.\n"
    for lead in (
        "Mariners are advised that a beacon",
        "Mariners are advised that a second beacon",
    ):
        bulletin = parse(HEAD + text.replace("A beacon", lead))
        assert [places for _, _, places in told(bulletin)] == [[AT_P], [AT_Q]]
