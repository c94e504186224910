"""Cables as a length of tenths of a mile, and circles that are no topmark."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, told


@pytest.mark.parametrize(
    ("item", "kind", "places"),
    [
        (f"Insert mooring buoys 2 cables apart, {P} and {Q}", "buoy_mooring", [AT_P, AT_Q]),
        (f"Insert dolphins half a cable apart, {P} and {Q}", "dolphin", [AT_P, AT_Q]),
        (f"Insert wreck 2 cables long, {P}", "wreck", [AT_P]),
        (f"Insert wreck 2 cables off pier {P}", "wreck", [AT_P]),
        (f"Insert marine farm 2 cables square centred on {P}", "marine_farm", [AT_P]),
        (f"Insert marine farm 2 cables by 1 cable centred on {P}", "marine_farm", [AT_P]),
        (f"Insert prohibited area a cable around {P}", "entry_prohibited", [AT_P]),
        (f"Insert prohibited area, 2 cables, {P}", "entry_prohibited", [AT_P]),
        (f"Insert turning basin, diameter 2 cables, {P}", "unknown", [AT_P]),
    ],
)
def test_a_length_in_cables_is_no_cable(item: str, kind: str, places: list[str]) -> None:
    bulletin = parse(HEAD + item)
    assert told(bulletin) == [("insert", kind, places)]
    assert "feature-figure-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "item",
    [
        f"Insert 2 cables joining {P} and {Q}",
        f"Insert 2 submarine cables from {P} to {Q}",
        f"Insert two cables between {P} and {Q}",
    ],
)
def test_a_number_of_cables_counts_them(item: str) -> None:
    assert told(parse(HEAD + item)) == [("insert", "cable_submarine", [AT_P, AT_Q])]


@pytest.mark.parametrize("lead", ["centre", "its centre in", "centred on"])
def test_the_centre_of_a_circle_is_named_in_words(lead: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert spoil ground, radius 2 cables, {lead} {P}\n"))
    geometry = action.geometry
    assert (geometry.shape, str(geometry.radius_nm), action.usable) == ("circle", "0.2", True)


def test_a_swinging_circle_is_no_topmark() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert mooring buoy with 300m swinging circle {P}\n"))
    assert (action.feature.topmark, action.feature.s57) == (None, ["MORFAC"])
    (action,) = actions_of(parse(f"{HEAD}Insert buoy, topmark circle, {P}\n"))
    assert action.feature.topmark == "circle"


@pytest.mark.parametrize("words", ["and depth 12m adjacent", "depth 12m close by"])
def test_the_depth_beside_a_wreck_is_not_over_it(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck, {P}, {words}\n")
    assert [action.feature.depth for action in actions_of(bulletin)] == [None]
    assert "depth-of-surroundings" in codes(bulletin)


def test_a_wreck_alongside_something_keeps_its_depth() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert wreck, 12m, alongside quay {P}\n"))
    assert action.feature.depth is not None
