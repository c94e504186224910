"""A thing with its place, and below it its former and its new state or what became of it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend, Move
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
    usable_of,
)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("Former character    F.G", "New character       Fl.G.3s7m4M"),
        ("Old character: F.G", "Present character: Fl.G.3s7m4M"),
        ("Present light   F.G", "New light   Fl.G.3s7m4M"),
        ("Previous characteristics  F.G", "Amended characteristics  Fl.G.3s7m4M"),
    ],
)
def test_a_former_and_a_new_character(old: str, new: str) -> None:
    text = f"{HEAD}\nSouth mole light   {P}\n     {old}\n     {new}\n"
    bulletin = parse(text)
    (amend,) = actions_of(bulletin)
    assert isinstance(amend, Amend)
    assert amend.usable
    assert amend.feature.light is not None
    assert (amend.feature.light.rhythm, amend.feature.light.colours) == ("F", ["G"])
    (change,) = amend.changes
    assert (change.property, change.new.period_s, change.new.ranges_nm) == ("light", 3, [4])
    assert not errors(bulletin)


@pytest.mark.parametrize(
    ("thing", "states", "property_name"),
    [
        ("Spit light", "Former range  10M\n  New range     12M", "light.ranges_nm"),
        ("Wreck", "Former depth  5.2 m\n  New depth     4.8 m", "depth"),
        ("Special buoy", 'Existing name  "Alpha"\n  New name    "Beta"', "name"),
        ("Spit light", "New elevation: 12m", "light.elevation_m"),
    ],
)
def test_a_former_and_a_new_value(thing: str, states: str, property_name: str) -> None:
    bulletin = parse(f"{HEAD}\n{thing}  {P}\n  {states}\n")
    (amend,) = actions_of(bulletin)
    assert isinstance(amend, Amend)
    assert [one.property for one in amend.changes] == [property_name]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "states",
    [
        f"Former position  as above\n  New position   {Q}",
        f"Former position  {P}\n  New position   {Q}",
        f"New position   {Q}",
    ],
)
def test_a_new_position_is_a_move(states: str) -> None:
    bulletin = parse(f"{HEAD}\nSpecial buoy  {P}\n  {states}\n")
    (move,) = actions_of(bulletin)
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.geometry.positions] == [AT_P]
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "states",
    [
        f"Former position  {R}\n  New position   {Q}",
        f"Former position  off the pier\n  New position   {Q}",
        "Former character  F.R",
        f"New position  {Q}\n  New character  F.R",
        "New character  F.R\n  New character  F.G",
    ],
)
def test_states_that_do_not_go_together_are_refused(states: str) -> None:
    bulletin = parse(f"{HEAD}\nSpecial buoy  {P}\n  {states}\n")
    assert not told(bulletin)
    assert errors(bulletin)


def test_a_verb_alone_on_its_line_below_each_thing() -> None:
    text = (
        f"{HEAD}\nSpit light, F.R   {P}\n     Discontinued\n"
        f"Tarn Head light    {Q}\n     Established    Oc.WRG.6s12m9/7/6M\n"
        f"     Sectors        R 020°-065°, W 065°-080°, G 080°-130°\n"
        f"Tarn Head racon (B)    {R}\n     Established\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("delete", "light", [AT_P]),
        ("insert", "light", [AT_Q]),
        ("insert", "racon", [AT_R]),
    ]
    light = actions_of(bulletin)[1].feature.light
    assert light is not None
    assert [one.colour for one in light.sectors] == ["R", "W", "G"]
    assert not errors(bulletin)


def test_a_verb_that_heads_what_stands_below_it_is_not_told_of_what_stands_above() -> None:
    text = f"{HEAD}\nSpit light, F.R   {P}\nDiscontinued\nwreck  {Q}\nrock  {R}\n"
    assert ("delete", "light", [AT_P]) not in told(parse(text))


def test_a_cancelled_change_behind_the_chart_is_no_command() -> None:
    text = (
        "54/26   Mallow Harbour\nChart 310, last change 38/26. Change 40(T)/26 is cancelled.\n\n"
        f"South mole light  {P}\n   Discontinued.\n"
    )
    bulletin = parse(text)
    assert [(ref.number, ref.status) for ref in bulletin.notices[0].cancels] == [(40, "temporary")]
    assert told(bulletin) == [("delete", "light", [AT_P])]


@pytest.mark.parametrize(
    "states",
    [
        "Charted depth  8.2m\n  Surveyed depth  9.1m",
        "Surveyed least depth  9.1m\n  Charted least depth  8.2m",
        "Charted depth  8.2m\n  Present depth  9.1m",
        "Published depth  8.2m\n  Correct depth  9.1m",
    ],
)
def test_what_is_charted_is_the_former_state(states: str) -> None:
    bulletin = parse(f"{HEAD}\nWreck  {P}\n  {states}\n")
    (amend,) = actions_of(bulletin)
    assert isinstance(amend, Amend)
    (change,) = amend.changes
    assert (str(change.old.value_m), str(change.new.value_m)) == ("8.2", "9.1")
    assert not errors(bulletin)


def test_what_is_proposed_is_not_so_yet() -> None:
    text = f"{HEAD}\nWreck  {P}\n  Present depth  8.2m\n  Proposed depth  9.1m\n"
    bulletin = parse(text)
    assert usable_of(bulletin) == []
    assert errors(bulletin) == {"change-planned"}


def test_a_found_position_is_a_move_from_the_charted_one() -> None:
    text = f"{HEAD}\nSpecial buoy  {P}\n  Charted position  as above\n  Surveyed position  {Q}\n"
    assert usable_of(parse(text)) == [("move", "buoy_special")]


def test_a_new_position_without_one_is_no_move() -> None:
    text = f"{HEAD}\nSpecial buoy  {P}\n  New position  0.2 miles N\n"
    bulletin = parse(text)
    assert usable_of(bulletin) == []
    assert errors(bulletin) == {"move-without-destination"}


@pytest.mark.parametrize(
    "states",
    [
        "Former character  F.G\nNew range  5M\n",
        "New character  Fl.G.3s\nNew position  46-00.50S 122-00.00W\n",
        "Proposed character  Fl.G.3s\n",
        "Reported character  Fl.G.3s\n",
    ],
)
def test_states_that_are_no_pair_change_nothing(states: str) -> None:
    bulletin = parse(f"{HEAD}Light-buoy\n{P}\n{states}")
    assert actions_of(bulletin) == []
    assert errors(bulletin) == {"item-without-verb"}


def test_a_line_with_a_place_is_no_part_of_the_light_above() -> None:
    bulletin = parse(f"{HEAD}Light\n{P}\nEstablished  Oc.6s\nElevation  12m {Q}\n")
    assert told(bulletin) == [("insert", "light", [AT_P])]
    assert errors(bulletin) == {"item-without-verb"}
