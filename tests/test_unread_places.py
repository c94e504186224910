"""Coordinates that are not read beside those that are: a line without a corner is not usable."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, codes, errors, told, usable_of

SMALL = "46°50'.81s., 125°17'.07w."
CORNERS = "46°50'.00S., 125°20'.00W.\n   46°51'.00S., 125°20'.00W.\n   46°51'.00S., 125°21'.00W.\n"


@pytest.mark.parametrize(
    "text",
    [
        f"Insert fish farm, bounded by\n   {CORNERS}   {SMALL}\n",
        f"Insert fish farm, bounded by\n   {CORNERS}   46°50'.\n",
        f"Insert fish farm, bounded by\n   {CORNERS}   46°\n",
        f'Insert the legend "Ferry" in {SMALL}\n',
        f"Delete the wreck in {SMALL}\n",
        'Insert legend "Speed Limit"       46.57005°\n',
        'Insert legend "Fishing Prohibited"\n      48 deg 0\n',
        f"Insert 10m contour, joining  0.3M W of {P}\n{Q}\n{R}\n",
    ],
)
def test_what_is_left_of_a_place_holds_its_item(text: str) -> None:
    bulletin = parse(HEAD + text)
    assert told(bulletin) == []
    assert errors(bulletin)


def test_a_line_without_a_corner_is_held_and_its_ends_are_not() -> None:
    text = (
        "Insert rock (c) 46°50'.00S., 125°20'.00W.\n       wreck (d) 46°50'.75S., 125°18'.90W.\n"
        "Delete submarine pipeline, joining  (c) above\n"
        "                                    (d) above\n"
        f"                                    (f) {SMALL}\n"
    )
    bulletin = parse(HEAD + text)
    assert usable_of(bulletin) == [("insert", "rock"), ("insert", "wreck")]
    assert "position-unreadable" in errors(bulletin)


@pytest.mark.parametrize(
    "text",
    [
        f"Insert fish farm, bounded by\n   {CORNERS}",
        f"Insert light, Fl.W.5s, W 045°-090° {P}\n",
        f"Insert leading line, 000° {P} {Q}\n",
        'Insert legend "Ferry" below the title\n',
        f'Insert legend "045°30\'" {P}\n',
    ],
)
def test_clean_places_stay_usable(text: str) -> None:
    bulletin = parse(HEAD + text)
    assert len(usable_of(bulletin)) == 1
    assert "position-unreadable" not in codes(bulletin)


@pytest.mark.parametrize("gap", [" ", "  "])
def test_a_distance_behind_joining_keeps_its_first_figures(gap: str) -> None:
    (action,) = actions_of(
        parse(f"{HEAD}Insert submarine cable, joining{gap}0.3M W of {P} and {Q}\n")
    )
    offset = action.geometry.offset
    assert offset is None or offset.distance_nm == Decimal("0.3")
