"""Positions far from all others of their notice, as a changed or a lost figure makes them.

Common practice, no published source: the places of one notice lie on one chart.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD

NEAR = ("46°22'.31S 122°18'.02W", "46°22'.10S 122°18'.34W", "46°22'.45S 122°18'.20W")
SLIPS = {
    "figure of latitude lost": "4°22'.39S 122°10'.10W",
    "other figure lost": "6°22'.39S 122°10'.10W",
    "figure of longitude lost": "46°22'.39S 022°10'.10W",
    "hyphens": "4-22.39S 122-10.10W",
    "hemisphere in front": "S 4 ° 22.39' W 122 ° 10.10'",
    "no slip explains it": "31°02'.39S 171°50'.10W",
}


def far(*places: str) -> list[str]:
    lines = "".join(f"Insert wreck {place}\n" for place in places)
    found = parse(HEAD + lines).findings
    return [one.message.split("`")[1] for one in found if one.code == "position-far-away"]


@pytest.mark.parametrize("place", SLIPS.values(), ids=SLIPS)
def test_a_place_beyond_reason_is_told(place: str) -> None:
    assert far(*NEAR, place) == [place]
    assert far(NEAR[0], place, *NEAR[1:]) == [place]


def test_an_end_of_a_line_is_told() -> None:
    text = f"{HEAD}Insert cable joining {NEAR[0]} and 4°22'.39S 122°18'.10W\n"
    assert "position-far-away" in [one.code for one in parse(text).findings]


def test_of_two_places_the_one_that_lost_a_figure_is_told() -> None:
    place = "4°12'.39S 122°10'.10W"
    assert far("48°12'.31S 122°18'.02W", place) == [place]
    both = [NEAR[0], SLIPS["no slip explains it"]]
    assert far(*both) == both


@pytest.mark.parametrize(
    "places",
    [
        NEAR,
        ("9°58'.31N 079°18'.02W", "10°02'.10N 079°18'.34W", "9°59'.10N 079°18'.34W"),
        ("46°22'.31S 122°18'.02W", "48°01'.10S 124°18'.34W", "49°22'.10S 127°02'.34W"),
    ],
    ids=["near", "degrees of one figure and of two", "one coast"],
)
def test_what_is_not_beyond_reason(places: tuple[str, ...]) -> None:
    assert far(*places) == []


def test_another_sea_in_the_notice_beside_it_is_no_slip() -> None:
    other = "13/26 Far Sound.\nChart 910 [4/26] WGS84\nInsert wreck 31°02'.39S 171°50'.10W\n"
    lines = "".join(f"Insert wreck {place}\n" for place in NEAR)
    codes = [one.code for one in parse(f"{HEAD}{lines}\n" + other).findings]
    assert "position-far-away" not in codes
