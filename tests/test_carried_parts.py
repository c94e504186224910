"""What is taken from a mark or added to it, and one stretch of a limit."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, codes, errors


@pytest.mark.parametrize(
    ("words", "verb", "kind", "mark"),
    [
        ("Delete topmark from beacon", "delete", "topmark", "beacon_generic"),
        ("Delete topmark from port-hand beacon No 4", "delete", "topmark", "beacon_lateral_port"),
        ("Delete the racon from the light-buoy", "delete", "racon", "light_buoy_generic"),
        ("Remove radar reflector from buoy", "delete", "radar_reflector", "buoy_generic"),
        ("Delete light from beacon", "delete", "light", "beacon_generic"),
        ("Delete fog signal from light", "delete", "fog_signal", "light"),
        ("Add Racon(B) to light-buoy", "insert", "racon", "light_buoy_generic"),
        ("Add AIS to light-buoy No 2", "insert", "ais_physical", "light_buoy_generic"),
        ("Add light, Fl.R.3s, to beacon", "insert", "light", "beacon_generic"),
    ],
)
def test_the_part_alone_goes_or_comes(words: str, verb: str, kind: str, mark: str) -> None:
    bulletin = parse(f"{HEAD}{words} {P}\n")
    (action,) = actions_of(bulletin)
    assert (action.verb, action.feature.kind, action.usable) == (verb, kind, True)
    assert [(one.role, one.feature.kind) for one in action.feature.companions] == [("on", mark)]
    assert action.feature.text == words.partition(" ")[2]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        "Insert light from beacon",
        "Delete topmark to beacon",
        "Delete light from buoy and beacon",
        "Delete topmark from wreck",
        "Delete PA from wreck",
        "Add V-AIS to light-buoy",
    ],
)
def test_other_words_between_two_things_hold_back(words: str) -> None:
    assert "feature-kinds-several" in errors(parse(f"{HEAD}{words} {P}\n"))


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("limit of anchorage area, joining", "anchorage_area"),
        ("E limit of anchorage area joining", "anchorage_area"),
        ("western limit of spoil ground, joining", "spoil_ground"),
        ("boundary of restricted area, joining", "restricted_area"),
        ("the limit of territorial sea, joining:", "territorial_sea"),
        ("limit of fairway, joining", "fairway"),
    ],
)
def test_a_limit_between_two_positions_is_a_line(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P} {Q}\n")
    (action,) = actions_of(bulletin)
    assert (action.feature.kind, action.usable) == (kind, True)
    assert (action.geometry.shape, action.geometry.relation) == ("line", "joining")
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        f"Insert limits of anchorage area, joining {P} {Q}",
        f"Insert anchorage area, joining {P} {Q}",
        f"Insert limit of anchorage area, enclosed by {P} {Q}",
        # The whole area would go.
        f"Delete limit of anchorage area, joining {P} {Q}",
        f"Insert limit of anchorage area, joining {P}",
    ],
)
def test_what_needs_three_positions_is_held(words: str) -> None:
    assert "geometry-too-few-positions" in errors(parse(f"{HEAD}{words}\n"))


def test_a_limit_of_three_positions_is_that_of_an_area() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert limit of anchorage area, joining {P} {Q} {R}\n"))
    assert action.geometry.shape == "area"
