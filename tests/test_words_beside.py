"""Descriptions that run on left of a column of places."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Action, Amend, Move
from tests.short_notices import HEAD, P, Q, R, codes


def actions(text: str) -> list[Action]:
    return parse(HEAD + text).notices[0].charts[0].actions


@pytest.mark.parametrize("number", ["", "1.  "])
def test_words_run_on_beside_several_places(number: str) -> None:
    pad = " " * len(number)
    text = (
        f"{number}Insert overhead power cable, vertical    {P}\n"
        f"{pad} clearance 22 m, joining the positions   {Q}\n"
        f"{pad} opposite.                               {R}\n"
        f"{number}Delete rock                                    {P}\n"
    )
    first, second = actions(text)
    assert first.feature.kind == "cable_overhead"
    assert str(first.feature.clearance and first.feature.clearance.value_m) == "22"
    assert (first.geometry.shape, len(first.geometry.positions)) == ("line", 3)
    assert second.feature.kind == "rock"
    assert all(one.usable for one in (first, second))


def test_words_below_the_place_are_more_of_a_description_that_breaks_off() -> None:
    text = (
        f"1.  Insert light, Fl.R.3s5m2M, on the head of the    {P}\n    west jetty.\n"
        f"2.  Amend dredged depth to 7.4 m in the area         {Q}\n"
        "    centred on the position opposite.\n"
    )
    light, depth = actions(text)
    assert light.feature.text == "light, Fl.R.3s5m2M, on the head of the west jetty."
    assert [one.shape for one in (light.geometry, depth.geometry)] == ["point", "point"]
    assert depth.geometry.relation == "centred_on"


def test_each_thing_of_a_list_keeps_its_own_place() -> None:
    text = (
        f"Insert pontoon, joining           {P}\n"
        f"                                  {Q}\n"
        f"       light, Fl.R.3s5m2M         {R}\n"
        f'       legend "Mud"               {P}\n'
        f"       grumble                    {Q}\n"
    )
    kinds = [(one.feature.kind, len(one.geometry.positions)) for one in actions(text)]
    assert kinds == [("pontoon", 2), ("light", 1), ("legend", 1), ("unknown", 1)]


def test_a_place_said_twice_is_one_place() -> None:
    text = f"Insert wreck in {P}\nInsert racon (K) in the same position, {P}\n"
    _, racon = actions(text)
    assert [one.via for one in racon.geometry.positions] == ["stated"]


def test_the_same_place_with_other_figures_is_told() -> None:
    bulletin = parse(f"{HEAD}Insert wreck in {P}\nInsert dolphin in the same position, {Q}\n")
    assert "position-not-the-same" in codes(bulletin)
    assert [one.usable for one in bulletin.notices[0].charts[0].actions] == [True, False]


def test_a_sentence_goes_on_over_its_line_to_its_place() -> None:
    text = (
        f"Insert a depth of 6.2 m in {P} and a depth of 5.8 m\nin {Q}. Delete the buoy, Q.R, in\n"
        f"{R}. Insert in its stead a beacon in {R}.\n"
    )
    told = [(one.verb, one.feature.kind, one.usable) for one in actions(text)]
    assert told == [
        ("insert", "sounding", True),
        ("insert", "sounding", True),
        ("delete", "light_buoy_generic", True),
        ("insert", "beacon_generic", True),
    ]


TITLES = (
    "Action    Old                  New                     Position\n"
    "--------  -------------------  ----------------------  ------------------------------\n"
)


def test_a_move_under_old_and_new_and_a_wording_with_its_noun() -> None:
    text = (
        f"{TITLES}"
        f"Move      safe-water buoy, from                        {P}\n"
        f"                               to                      {Q}\n"
        f'Amend     legend "Timber"      legend "Ferry"          {P}\n'
        f"Insert    -                    pilot boarding place    {R}\n"
    )
    move, amend, insert = actions(text)
    assert isinstance(move, Move)
    assert isinstance(amend, Amend)
    assert (len(move.geometry.positions), len(move.destination.positions)) == (1, 1)
    assert [(one.old, one.new) for one in amend.changes] == [("Timber", "Ferry")]
    assert insert.feature.kind == "pilot_boarding_place"
    assert all(one.usable for one in (move, amend, insert))


def test_words_below_a_verb_heading_run_on_in_their_own_column() -> None:
    text = (
        f"INSERT\n   Wreck, least depth 17m, report-         {P}\n   ed by the pilot cutter\n"
        "   Obstruction (lost anchor and            46-00.50S,\n"
        "   chain), least depth 21m                 122-00.00W.\n"
        f"   Rock, least depth 4.1m, on              {R}\n   the eastern edge of the reef\n"
        f"   Kelp                                    {P}\n"
        f"AMEND\n   Light, Oc.6s15m10M, to                  {Q}\n   Oc(2)8s15m12M\n"
    )
    told = [(one.feature.kind, len(one.geometry.positions), one.usable) for one in actions(text)]
    assert told == [
        ("wreck_least_depth", 1, True),
        ("obstruction", 1, True),
        ("rock", 1, True),
        ("kelp", 1, True),
        ("light", 1, True),
    ]


def test_the_ends_of_a_move_below_its_words_stay_apart() -> None:
    (move,) = actions(
        f"Move    mooring buoy\n        from   {P}\n        to     {Q}\n"
        "        and its chain too\n"
    )
    assert isinstance(move, Move)
    assert len(move.destination.positions) == 1


def test_corners_in_a_grid_within_a_list_belong_to_the_thing_above() -> None:
    text = (
        "To insert  anchorage area, bounded by:\n"
        "              +-----+--------------+---------------+\n"
        "              | (a) |  46-00.00S.  |  122-00.00W.  |\n"
        "              | (b) |  46-00.50S.  |  122-00.00W.  |\n"
        "              | (c) |  46-00.10S.  |  122-00.20W.  |\n"
        "              +-----+--------------+---------------+\n"
        f"           mooring buoy                     {P}\n"
    )
    area, buoy = actions(text)
    assert (area.geometry.shape, len(area.geometry.positions)) == ("area", 3)
    assert (buoy.feature.kind, len(buoy.geometry.positions)) == ("buoy_mooring", 1)
    assert all(one.usable for one in (area, buoy))


def _beside(*rows: tuple[str, str]) -> str:
    head = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
    return head + "".join((words.ljust(64) + place).rstrip() + "\n" for words, place in rows)


_P1, _P2, _P3 = "46-10.10S 122-00.20W", "46-11.10S 122-00.20W", "46-12.10S 122-00.20W"


@pytest.mark.parametrize("thing", ["the wreck", "the note, DREDGING, centred on", "the buoy"])
def test_a_thing_with_its_article_below_the_places_of_a_line_is_its_own(thing: str) -> None:
    rows = (("Delete   jetty, joining", _P1), ("", _P2), (f"         {thing}", _P3))
    bulletin = parse(_beside(*rows))
    assert [
        len(a.geometry.positions)
        for n in bulletin.notices
        for c in n.charts
        for a in c.actions
        if a.usable
    ] == [2, 1]


@pytest.mark.parametrize("note", ["note", "caution", "cautionary note"])
def test_a_note_below_a_place_that_another_is_centred_on(note: str) -> None:
    rows = (
        (f"Insert   the accompanying {note}, CABLES, centred on", _P1),
        (f"         the accompanying {note}, TIDAL LEVELS, below the title", ""),
        ("Delete   wreck", _P2),
    )
    bulletin = parse(_beside(*rows))
    assert [
        (a.verb, a.feature.kind, len(a.geometry.positions))
        for n in bulletin.notices
        for c in n.charts
        for a in c.actions
    ] == [("insert", "note", 1), ("insert", "note", 0), ("delete", "wreck", 1)]


def test_words_that_the_line_joins_are_no_thing_of_their_own() -> None:
    rows = (("Insert   submarine cable, joining", _P1), ("         the islet", _P2))
    bulletin = parse(_beside(*rows))
    (action,) = (a for n in bulletin.notices for c in n.charts for a in c.actions)
    assert len(action.geometry.positions) == 2
