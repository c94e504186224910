"""A second change told in brackets, or behind an item, keeps it from being carried out."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend, Replace
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told

IN_BRACKETS = [
    f"Delete rock {P} and {Q} (insert wreck)",
    f"Delete rock {P} (insert wreck close N)",
    f"Delete rock {P} (insert wreck and buoy)",
    f"Delete rock (insert wreck) {P}",
    f"Delete buoy {P} (insert 6₁)",
    f"Delete light-buoy {P} (substitute something)",
    f"Delete wreck (add depth 5m) {P}",
    f"Delete rock {P} (chart wreck)",
    f"Delete rock {P} (show a wreck)",
    f"Amend light to Q.R (insert buoy) {P}",
    f"Insert wreck {P} and {Q} (delete rock)",
    f"Insert wreck (delete rock) {P}",
    f"Insert wreck (rock deleted) {P}",
]


@pytest.mark.parametrize("words", IN_BRACKETS)
def test_a_command_in_brackets(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert errors(bulletin) & {"verb-within-words", "feature-kinds-several"}


BEHIND = [
    f"Delete wreck {P} and {Q}, rock inserted",
    f"Delete wreck {P}, rock inserted in old position",
    f"Insert wreck {P}, old rock deleted",
    f"Amend light to Q.R, beacon removed {P}",
    f"Move buoy from {P} to {Q}, amending light to Q.R",
    f"Insert a light, Fl.3s, in the position of the former beacon ({P}), which is deleted",
    f"Insert a light, Fl.3s, {P} (which is moved)",
    f"Wreck to be moved from {P} to {Q} and its depth amended to 12m.",
]


@pytest.mark.parametrize("words", BEHIND)
def test_what_was_done_with_another_thing(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert "verb-within-words" in errors(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        f"Delete light-buoy {P} and {Q} (replaced by beacon)",
        f"Delete buoy {P}, replaced by a light-buoy if charted",
        f"Delete buoy {P}, replaced by beacon close N",
        f"Insert wreck {P} and {Q}, replacing rock",
        f"Amend buoy to light-buoy, Q.R, (replaces beacon) {P}",
        f"Insert light Fl.R.4s (replaces F.R) {P}",
        f"Delete buoy {P} (converted to light-buoy)",
    ],
)
def test_what_takes_the_place_of_another_thing(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert errors(bulletin) & {"feature-instead", "item-limited", "feature-kinds-several"}


@pytest.mark.parametrize(
    "words",
    [
        f"Delete light-buoy {P} (unlit buoy remains)",
        f"Delete light-buoy {P} (buoy to remain)",
        f"Delete wreck {P} (leave depth)",
        f"Delete wreck (keep legend) {P}",
        f"Delete light {P} (retain tower)",
        f"Delete light-buoy {P}, buoy remaining",
    ],
)
def test_a_part_that_stays(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-limited"}


@pytest.mark.parametrize(
    "words",
    [
        f"Move light-buoy, Fl.R.4s (now Q.R), from {P} to {Q}",
        f"Insert light-buoy, Fl.R.4s (was Q.R), {P}",
        f"Insert light-buoy, Fl.R.4s, No 4 (ex No 2), {P}",
        f"Insert light-buoy, Fl.R.4s, previously Q.R, {P}",
        f"Delete light-buoy, Fl.R.4s (charted as Q.R), {P}",
        f"Delete light-buoy, Fl.R.4s, now Q.R, {P}",
        f"Delete beacon {P} (now light-beacon, Fl.5s)",
        f"Insert wreck (formerly obstruction) {P}",
        f"Insert light-buoy, Q.R (Fl.R.5s before), {P}",
        f"Insert light-buoy, Q.R (amended from Fl.R.5s), {P}",
        f"Insert light-buoy, Q.R (old: Fl.R.5s), {P}",
        f"Insert light-buoy, Q.R (shown on chart as Fl.R.5s), {P}",
        f"Insert light-buoy, Q.R, not Fl.R.5s, {P}",
        f"Move buoy from {P} to {Q} (light now Q.R)",
        f"Show wreck {P} as rock",
        f"Show rock {P} now as wreck",
        f"Insert rock as wreck {P}",
    ],
)
def test_two_states_of_one_thing(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-states-several"}


@pytest.mark.parametrize(
    "words",
    [
        "wreck (reported 2020)",
        "wreck (established 2019)",
        "light-buoy (seasonal)",
        "beacon (radar reflector)",
        "wreck (charted depth 5m)",
        "light, Fl.5s (occas)",
        "tower (conspicuous)",
        "wreck, which was found by divers",
        'legend, "Light removed (2020)"',
        "pier (under construction)",
        "well-head, production platform removed",
        "beacon as leading mark",
    ],
)
@pytest.mark.parametrize("verb", ["Insert", "Delete"])
def test_what_is_said_of_the_thing_itself(verb: str, words: str) -> None:
    found = codes(parse(f"{HEAD}{verb} {words} {P}\n"))
    ours = {"verb-within-words", "feature-instead", "item-limited", "feature-states-several"}
    assert not found & ours


@pytest.mark.parametrize(
    "words",
    [
        f"Insert wreck in place of rock {P}",
        f"Replace rock by wreck {P}",
        f"Amend light (now Fl.5s) to Fl.10s {P}",
        f"Insert wreck, now dangerous, {P}",
        f"Delete buoy {P} and insert wreck {Q}",
        f"Delete light {P} (beacon remains)",
        f"Insert light, Fl.5s & F.R (shown when closed), {P}",
    ],
)
def test_one_change_in_other_words(words: str) -> None:
    assert errors(parse(f"{HEAD}{words}\n")) == set()


def test_the_items_beside_it_hold() -> None:
    text = (
        f"{HEAD}Insert   wreck   {P}\nDelete   pile    {Q} (leave stump)\n         buoy    {P}\n"
    )
    assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("delete", "buoy_generic", [AT_P])]


@pytest.mark.parametrize(
    "words", ["Insert/amend: light to Fl.5s", "Delete/replace rock with wreck"]
)
def test_two_verbs_with_a_stroke(words: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"verb-within-words"}


@pytest.mark.parametrize(
    "words",
    [
        f"Delete\n pile {P} (moved to {Q})",
        f"Delete pile {P}, moved to {Q}",
        f"Insert wreck {P}; the rock in {Q} is deleted, and the buoy in {P} moved to {Q}",
    ],
)
def test_the_place_to_which_a_thing_is_moved(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    found = told(bulletin)
    assert all(kind not in ("pile", "buoy_generic", "unknown") for _, kind, _ in found)
    assert "verb-within-words" in errors(bulletin) or "place-of-another" in errors(bulletin)


@pytest.mark.parametrize("verb", ["deleting", "removing", "expunging"])
def test_another_verb_behind_a_place(verb: str) -> None:
    bulletin = parse(f"{HEAD}Insert 7.2m, {P}, {verb} 8.6m, {Q}\n")
    assert told(bulletin) == [("insert", "sounding", [AT_P])]
    assert errors(bulletin) - {"feature-instead", "verb-within-words"} == {"place-of-another"}


def test_a_further_depth_behind_and() -> None:
    bulletin = parse(f"{HEAD}Insert 7.2m, {P}, and 9.1m, {Q}\n")
    assert told(bulletin) == [("insert", "sounding", [AT_P]), ("insert", "sounding", [AT_Q])]


@pytest.mark.parametrize(
    ("words", "old", "new"),
    [
        ("rock as wreck", "rock", "wreck"),
        ("rock as a dangerous wreck", "rock", "wreck_dangerous"),
        ("buoy as light-buoy, Fl.R.4s,", "buoy_generic", "light_buoy_generic"),
    ],
)
def test_a_thing_shown_as_another(words: str, old: str, new: str) -> None:
    bulletin = parse(f"{HEAD}Show {words} {P}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Replace)
    assert (action.feature.kind, action.replacement.kind) == (old, new)
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    ("words", "changed"),
    [
        ("light as extinguished", "status"),
        ("light as Fl.5s", "light"),
        ("buoy as red", "colours"),
        ("buoy as lit, Fl.R.4s,", "light"),
        ("depth 7m as 12m", "depth"),
    ],
)
def test_a_thing_shown_in_another_state(words: str, changed: str) -> None:
    bulletin = parse(f"{HEAD}Show {words} {P}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Amend)
    assert [one.property for one in action.changes] == [changed]
    assert errors(bulletin) == set()


def test_what_is_shown_as_well_as_another_thing_is_not_shown_as_it() -> None:
    bulletin = parse(f"{HEAD}Show rock as well as wreck {P}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


def test_a_thing_that_is_shown_is_inserted() -> None:
    assert told(parse(f"{HEAD}Show wreck {P}\n")) == [("insert", "wreck", [AT_P])]
