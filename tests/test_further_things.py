"""Further things with places of their own, behind the place of an item."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, actions_of, errors, told

ASIDE = [
    f"Delete buoy {P}, replaced by beacon {Q}",
    f"Delete buoy {P},\nreplaced by beacon {Q}",
    f"Delete buoy {P}\n(replaced by beacon {Q})",
    f"Delete buoy {P}, its place being taken by light-buoy {Q}",
    f"Delete buoy {P} (see beacon in {Q})",
    f"Delete buoy {P}, leaving beacon {Q}",
    f"Delete buoy {P}, nearest remaining buoy {Q}",
    f"Delete buoy {P}; superseded by Fl.R.4s {Q}",
    f"Delete buoy {P}. Existing beacon {Q}",
    f"Delete buoy {P}, in position of rock {Q}",
    f"Delete buoy {P}, clear of wreck {Q}",
    f"Delete buoy {P}, with depth 5m {Q}",
    f"Delete buoy {P} near a similar buoy {Q}",
    f"Delete (a) buoy {P}, replaced by (b) beacon {Q}",
]


@pytest.mark.parametrize("item", ASIDE)
def test_a_further_thing_that_other_words_lead_to_is_held_back(item: str) -> None:
    bulletin = parse(f"{HEAD}{item}\n")
    assert told(bulletin) == [("delete", "buoy_generic", [AT_P])]
    assert "place-of-another" in errors(bulletin)


def test_what_is_joined_to_it_is_held_back_too() -> None:
    bulletin = parse(f"{HEAD}Delete buoy {P}, replaced by beacon {Q} and pile {R}\n")
    assert [one.usable for one in actions_of(bulletin)] == [True, False, False]


def test_the_other_end_of_a_line_is_no_further_thing() -> None:
    bulletin = parse(f"{HEAD}Insert overhead cable between pylon {P} and tower {Q}\n")
    assert (told(bulletin), "place-of-another" in errors(bulletin)) == ([], True)


def test_what_was_charted_before_is_not_inserted() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}, previously charted as obstruction in {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]


LISTED = [
    (f"buoy {P}, beacon {Q}", "beacon_generic"),
    (f"buoy {P} and also the old port-hand beacon {Q}", "beacon_lateral_port"),
    (f"buoy {P}; as well as Brannoch beacon {Q}", "beacon_generic"),
    (f"buoy {P} and dangerous wreck, least depth 5m {Q}", "wreck_dangerous"),
    (f"buoy {P}, head of jetty {Q}", "pier"),
    (f"buoy {P}, three piles {Q}", "pile"),
    (f"buoy {P} and a similar pile {Q}", "pile"),
    (f"buoy {P}, depth 5m {Q}", "sounding"),
    (f"buoy {P}\nexisting beacon {Q}", "beacon_generic"),
]


@pytest.mark.parametrize(("items", "kind"), LISTED)
def test_a_joint_and_words_that_describe_lead_to_one_more(items: str, kind: str) -> None:
    told_of = told(parse(f"{HEAD}Delete {items}\n"))
    assert told_of == [("delete", "buoy_generic", [AT_P]), ("delete", kind, [AT_Q])]


def test_a_bracket_behind_a_place_is_said_of_the_thing_before_it() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P} (PA), rock {Q}\n")
    first, second = actions_of(bulletin)
    qualities = [one.geometry.positions[0].quality for one in (first, second)]
    assert qualities == ["approximate", None]
    assert (second.feature.text, errors(bulletin)) == ("rock", set())


CHANGES = [
    f"Amend light {P} to Fl.R.4s, see beacon {Q}",
    f"Amend light to Fl.R.4s {P}, as light {Q}",
    f"Replace buoy {P} by beacon, wreck {Q} by rock",
]


@pytest.mark.parametrize("item", CHANGES)
def test_the_new_state_of_one_thing_is_not_that_of_the_next(item: str) -> None:
    bulletin = parse(f"{HEAD}{item}\n")
    assert not actions_of(bulletin)[-1].usable
    assert "place-of-another" in errors(bulletin)


STAYING = [
    "stays in position",
    "being retained",
    "retained",
    "to stand",
    "to remain",
    ": no change",
    "is unaltered",
    "(unchanged)",
]


@pytest.mark.parametrize("words", STAYING)
@pytest.mark.parametrize("verb", ["Insert", "Delete"])
def test_the_verb_does_not_hold_for_what_stays(verb: str, words: str) -> None:
    bulletin = parse(f"{HEAD}{verb} buoy {P}; beacon {Q} {words}\n")
    assert told(bulletin) == [(verb.lower(), "buoy_generic", [AT_P])]


@pytest.mark.parametrize("words", ["to be amended to Fl.10s", "is to be replaced by a buoy"])
def test_another_change_behind_the_place_holds_the_item_back(words: str) -> None:
    bulletin = parse(f"{HEAD}Delete light {P} {words}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"verb-within-words"})


@pytest.mark.parametrize(
    "item",
    [
        f"Insert buoy {P} to mark the wreck",
        f"Delete buoy {P} retaining the wreck",
        f"Delete buoy {P}, now removed",
        f"The buoy in {P} has been removed and is no longer needed.",
    ],
)
def test_purposes_and_the_same_change_are_left_alone(item: str) -> None:
    assert len(told(parse(f"{HEAD}{item}\n"))) == 1


def test_vice_joins_what_comes_and_what_goes() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert special buoy vice spar buoy {P}\n"))
    assert action.verb == "replace"
    assert (action.feature.kind, action.replacement.kind) == ("buoy_spar", "buoy_special")


def test_a_light_vice_another_is_held_back() -> None:
    bulletin = parse(f"{HEAD}Insert light-buoy Fl.R.4s vice Fl.R.6s in {P}\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"feature-instead"})
