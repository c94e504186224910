"""Bulletins in two tongues: the words that lead to places, with the same word behind a stroke."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records.action import Move, Replace
from tests.short_notices import HEAD, P, Q, R, actions_of, codes


def test_places_of_a_move() -> None:
    text = (
        f"{HEAD}MOVE / DÉPLACER\n  special buoy, from / de       {P}\n"
        f"  to / à                        {Q}\n"
    )
    bulletin = parse(text)
    (action,) = actions_of(bulletin)
    assert isinstance(action, Move)
    assert (action.usable, len(action.destination.positions)) == (True, 1)
    assert codes(bulletin) == set()


def test_corners_of_an_area() -> None:
    indent = " " * 46
    text = (
        f"{HEAD}INSERT / PORTER\n  anchorage area, bounded by / délimitée par  {P}\n"
        f"{indent}{Q}\n{indent}{R}\n"
    )
    bulletin = parse(text)
    (action,) = actions_of(bulletin)
    assert (action.geometry.shape, action.usable) == ("area", True)
    assert codes(bulletin) == set()


def test_what_comes() -> None:
    bulletin = parse(f"{HEAD}Replace depth 22 m by / par depth 20 m   {P}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Replace)
    assert (action.feature.text, action.replacement.text) == ("depth 22 m", "depth 20 m")
    assert (action.usable, codes(bulletin)) == (True, set())


def test_words_behind_a_stroke_that_lead_to_no_place_stay() -> None:
    bulletin = parse(f"{HEAD}Insert wreck / rock P1  {P}\n")
    assert codes(bulletin)
