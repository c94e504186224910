"""Items that say behind the thing what was done: `Pile, removed   P`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told


@pytest.mark.parametrize(
    ("item", "verb", "kind"),
    [
        (f"Wreck, least depth 11.6m, inserted     {P}", "insert", "wreck_least_depth"),
        (f"Pile, removed     {P}", "delete", "pile"),
        (f"Pile - removed     {P}", "delete", "pile"),
        (f"Pile removed     {P}", "delete", "pile"),
        (f"Pile, removed from the chart     {P}", "delete", "pile"),
        (f"Depth 5.7 m, deleted\n     {P}", "delete", "sounding"),
        (f"Rock, to be inserted     {P}", "insert", "rock"),
        (f"1. Port-hand buoy \"T4\", laid   {P}", "insert", "buoy_lateral_port"),
        (f"Light, F.R, discontinued    {P}", "delete", "light"),
        (f'Starboard-hand light-buoy, Fl.G.3s,\n   "T5", established   {P}', "insert",
         "light_buoy_starboard"),
        (f"Accompanying block, inserted, centred on   {P}", "insert", "block"),
        (f"{P}   Wreck, inserted", "insert", "wreck"),
    ],
)  # fmt: skip
def test_a_participle_behind_a_thing_is_its_verb(item: str, verb: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}{item}\n")
    assert told(bulletin) == [(verb, kind, [AT_P])]
    assert not errors(bulletin)


def test_what_a_thing_becomes_stands_behind_its_participle() -> None:
    bulletin = parse(
        f"{HEAD}Depth 6.2 m, replaced by depth 5.5 m   {P}\n"
        f"Depth 6.4 m, replaced by\n   depth 5.9 m   {Q}\n"
        f"Light, Fl.W.6s, range changed to 10M   {R}\n"
    )
    swap, broken, light = actions_of(bulletin)
    assert (swap.verb, broken.verb, light.verb) == ("replace", "replace", "amend")
    assert [str(one.replacement.depth.value_m) for one in (swap, broken)] == ["5.5", "5.9"]
    assert [change.property for change in light.changes] == ["light.ranges_nm"]
    assert not errors(bulletin)


@pytest.mark.parametrize("moved", ["moved from", "shifted, from", "transferred from"])
def test_a_participle_leads_from_one_place_to_another(moved: str) -> None:
    bulletin = parse(
        f"{HEAD}Mooring buoy, {moved}   {P}\n          to   {Q}\nPile, removed   {R}\n"
    )
    move, _ = actions_of(bulletin)
    assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
    assert told(bulletin) == [("move", "buoy_mooring", [AT_P]), ("delete", "pile", [AT_R])]
    assert not errors(bulletin)


def test_places_below_go_on_with_the_thing_above() -> None:
    bulletin = parse(
        f"{HEAD}Recommended track, inserted, joining   {P}\n      {Q}\n      {R}\n"
        f"Pile, removed   {Q}\n"
    )
    track, pile = actions_of(bulletin)
    assert (track.geometry.shape, len(track.geometry.positions)) == ("line", 3)
    assert (pile.verb, len(pile.geometry.positions)) == ("delete", 1)


@pytest.mark.parametrize(
    "words",
    [
        "Rock",
        "Rock, reported",
        "Rock, not removed",
        "Rock, temporarily removed",
        "Rock, cleared",
        "Rock, removed and wreck, inserted",
        "Rock, established for trials",
        "Rock, inserted when found",
    ],
)
def test_a_thing_without_a_sure_participle_has_no_verb(words: str) -> None:
    bulletin = parse(f"{HEAD}Wreck, inserted     {P}\n{words}     {Q}\nPile, removed     {R}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "pile", [AT_R])]
    assert errors(bulletin) & {"item-without-verb", "item-without-feature"}


def test_places_stand_above_the_things() -> None:
    bulletin = parse(
        f"{HEAD}{P}\n   Wreck, inserted\n   Pile, removed\n{Q}\n"
        "   Depth 5 m, replaced by depth 6 m\n"
    )
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("delete", "pile", [AT_P]),
        ("replace", "sounding", [AT_Q]),
    ]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "body",
    [
        f"{P}\nWreck, inserted\n{Q}\nRock\n",
        f"{P}\nWreck, inserted\n{Q}\nPile, removed\n{R}\n",
    ],
)
def test_places_that_may_be_of_others_are_held_back(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == []
    assert errors(bulletin)


def test_things_refer_to_lettered_places_above() -> None:
    bulletin = parse(
        f"{HEAD}(a) {P}\n(b) {Q}\nWreck, inserted, at (a)\nCable, removed, joining (a) and (b)\n"
    )
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("delete", "cable_submarine", [AT_P, AT_Q]),
    ]
    assert not errors(bulletin)


def test_rows_of_a_temporary_notice_are_commands_and_its_sentences_are_not() -> None:
    head = "18(T)/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
    rows = f'Light-buoy "A1", withdrawn     {P}\nSpecial buoy, Fl.Y.3s, laid     {Q}\n'
    assert [one[0] for one in told(parse(head + rows))] == ["delete", "insert"]
    for more in (f'Light-buoy "A1" withdrawn in {P}.\n', rows + "It will be replaced in May.\n"):
        assert actions_of(parse(head + more)) == []


def test_a_verb_behind_the_places_ends_its_item() -> None:
    bulletin = parse(
        f"{HEAD}wreck: inserted in {P}\n"
        f"cable joining {Q} and {R}: deleted\n"
        f"ferry route joining {Q},\n  {R} and\n  {P}: inserted\n"
        f"pipeline joining\n  {P} and {Q}, deleted\n"
        f"rock: deleted in {R}\n"
    )
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("delete", "cable_submarine", [AT_Q, AT_R]),
        ("insert", "ferry_route", [AT_Q, AT_R, AT_P]),
        ("delete", "pipeline", [AT_P, AT_Q]),
        ("delete", "rock", [AT_R]),
    ]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "item",
    [
        f"cable joining {Q}, {R}\n{P}: deleted",
        f"{Q}: deleted",
        f"cable joining {Q} and pile {R}: deleted",
        f"light, Fl.3s, {Q}: altered to Fl.5s",
        f"cable joining {Q} and {R}: deleted\n{P}",
        f"pile joining\nrock: deleted in {R}",
        f"pile {Q} and\nrock {R}: deleted",
    ],
)
def test_a_verb_behind_places_is_not_that_of_other_things(item: str) -> None:
    bulletin = parse(f"{HEAD}wreck: inserted in {P}\n{item}\n")
    for verb, kind, _ in told(bulletin):
        assert (verb, kind) in {
            ("insert", "wreck"), ("delete", "rock"), ("delete", "cable_submarine")
        }  # fmt: skip
    assert "item-without-verb" in errors(bulletin)


def test_a_verb_behind_further_places_is_not_that_of_the_thing_above() -> None:
    bulletin = parse(f"{HEAD}wreck: inserted in {P} and\n{Q}: deleted\nrock: deleted in {R}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_R])]
    assert "item-without-verb" in errors(bulletin)


def test_a_circle_may_follow_a_participle() -> None:
    items = f"wreck: inserted in {P}\nnature reserve: inserted, {{}} centred on {Q}\n"
    for circle in ("circle of radius 0.5 miles", "within a circle with radius 0.5 miles,"):
        bulletin = parse(HEAD + items.format(circle))
        assert [one.geometry.shape for one in actions_of(bulletin)] == ["point", "circle"]
        assert not errors(bulletin)
    for words in ("circle of stones", "semicircle of radius 2 miles"):
        bulletin = parse(HEAD + items.format(words))
        assert told(bulletin) == [("insert", "wreck", [AT_P])]
        assert "item-without-verb" in errors(bulletin)
