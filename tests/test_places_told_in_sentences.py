"""Places that a second sentence tells of the same thing: `Alter the light. It stands in P`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, told

SAID = [
    "It stands in",
    "It lies in",
    "It now lies at",
    "It is in position",
    "Its position is",
    "It lay in",
]


@pytest.mark.parametrize("said", SAID)
@pytest.mark.parametrize(
    ("command", "verb", "kind"),
    [
        ("Alter the light on the pier to Iso.G.4s7m5M.", "amend", "light"),
        ("Put in a wreck.", "insert", "wreck"),
        ("Put in a wreck, least depth 5m.", "insert", "wreck_least_depth"),
        ("Take out the wreck;", "delete", "wreck"),
    ],
)
def test_a_sentence_with_it_leads_to_the_place(
    said: str, command: str, verb: str, kind: str
) -> None:
    bulletin = parse(f"{HEAD}{command} {said} {P}.\nTake out the rock in {Q}.\n")
    assert told(bulletin) == [(verb, kind, [AT_P]), ("delete", "rock", [AT_Q])]
    assert actions_of(bulletin)[0].feature.name is None
    assert not codes(bulletin)


def test_a_sentence_with_they_leads_to_several_places() -> None:
    bulletin = parse(f"{HEAD}Put in two special buoys, Fl.Y.5s. They lie in {P} and {Q}.\n")
    assert told(bulletin) == [("insert", "buoy_special", [AT_P, AT_Q])]
    assert not codes(bulletin)


@pytest.mark.parametrize("said", ["It lies upright", "The bow rests", "They mark the reef"])
def test_the_first_word_of_a_sentence_is_no_name(said: str) -> None:
    bulletin = parse(f"{HEAD}Put in a wreck. {said} in {P}.\n")
    assert [one.feature.name for one in actions_of(bulletin)] == [None]


def test_a_name_behind_an_article_stays_one() -> None:
    (action,) = actions_of(parse(f"{HEAD}Put in a light-buoy, The Brannock, in {P}.\n"))
    assert action.feature.name == "The Brannock"
