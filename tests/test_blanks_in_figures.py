"""Blanks among the figures of a coordinate: what stands before the blank may be its first figures.

Common practice, no published source: a blank is easily put in where a text is typed or copied, and
no figure beside a coordinate is passed over.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, actions_of, codes, errors

SPLIT = {
    "longitude": "46-12.34 S 12 4-21.11 W",
    "first figure of longitude": "46-12.34 S 1 24-21.11 W",
    "longitude behind a gap": "46-12.34 S   12 4-21.11 W",
    "latitude": "4 6-12.34 S 124-21.11 W",
    "symbols": "46°12'.34S 12 4°21'.11W",
    "minutes": "46°12.34'S 124°2 1.11'W",
    "figures and a comma": "46-12.34 S 12, 4-21.11 W",
}


@pytest.mark.parametrize("place", SPLIT.values(), ids=SPLIT)
@pytest.mark.parametrize(
    "row",
    [
        "CHANGE   POSITION                       NEW\nInsert   {}   wreck\n"
        "Insert   46-12.90 S 124-21.15 W   rock\n",
        "| Action | Position | Object |\n| Insert | {} | wreck |\n",
        "Insert wreck {}\n",
    ],
    ids=["columns", "bars", "line"],
)
def test_a_blank_within_a_coordinate_is_told(row: str, place: str) -> None:
    bulletin = parse(HEAD + row.format(place))
    wrecks = [one for one in actions_of(bulletin) if one.feature.kind == "wreck"]
    assert wrecks
    assert not any(one.usable for one in wrecks)
    assert errors(bulletin)


@pytest.mark.parametrize(
    ("place", "iso"),
    [
        ("46-12.34 S 124-21.11 W", "-4612.34-12421.11/"),
        ("No 4 46-12.34 S 124-21.11 W", "-4612.34-12421.11/"),
        ("No 4 6-12.34 N 004-21.11 E", "+0612.34+00421.11/"),
        ("12 6-12.34 N 004-21.11 E", "+0612.34+00421.11/"),
        ("8.6 6-12.34 N 004-21.11 E", "+0612.34+00421.11/"),
    ],
)
def test_a_figure_that_can_be_none_of_the_degrees(place: str, iso: str) -> None:
    bulletin = parse(f"{HEAD}Insert depth {place}\n")
    assert [p.iso6709 for one in actions_of(bulletin) for p in one.geometry.positions] == [iso]
    assert "position-unreadable" not in errors(bulletin)


@pytest.mark.parametrize("longitude", ["4-21.11W", "24-21.11W", "4°21'.11W"])
def test_longitudes_have_three_figures(longitude: str) -> None:
    found = codes(parse(f"{HEAD}Insert wreck 46-12.34S {longitude}\n"))
    assert "position-longitude-digits" in found


LACKING = {
    "before the point": "46-0 .55S 122-10.60W",
    "before the point of the longitude": "46-03.59S 122-1 .66W",
    "before the point, symbols": "46°0 .55'S 122°10.60'W",
    "before the minute sign": "46°0 '.55S. 122°10'.60W.",
    "before the second sign": "46°33'3 \"S 122°10'10\"W",
    "hemisphere in front": "S 46° 33'.10 W 122° 0 '.14",
}


@pytest.mark.parametrize("place", LACKING.values(), ids=LACKING)
def test_a_blank_in_place_of_a_figure_is_told(place: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {place}\n")
    assert [one.usable for one in actions_of(bulletin)] == [False]
    assert errors(bulletin) == {"position-unreadable"}


@pytest.mark.parametrize(
    "place",
    [
        "46 ° 5 ' 3 \" S 122 ° 10 ' 4 \" W", "46 ° 5 '.35 S 122 ° 10 '.44 W",
        "46° 5'.35 S 122° 10'.44 W", "46 ° 33' S 122 ° 08' W", "6 ° 4 ' S 8 ° 2 ' W",
        "46 12 .35S 122 10 .44W",
    ],
)  # fmt: skip
def test_blanks_before_all_signs_are_a_way_of_writing(place: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {place}\n")
    assert [one.usable for one in actions_of(bulletin)] == [True]


@pytest.mark.parametrize(
    "place",
    [
        "46°~3.8'S 122°58.4'W", "46°_3'·00 S 122°58'.40 W", "46° ~3.8'S 122°58.4'W",
        "46°13.8'S 122°~8.4'W", "46°13'.8S 122°5`.1'W",
    ],
)  # fmt: skip
def test_an_unknown_sign_in_place_of_a_figure_is_told(place: str) -> None:
    rows = f"1  INSERT  46°13.2'S 122°52.7'W  rock\n2  INSERT  {place}  wreck\n"
    bulletin = parse(HEAD + rows + "3  DELETE  46°13.3'S 122°52.9'W  pile\n")
    told = {one.feature.kind: one.usable for one in actions_of(bulletin)}
    assert told["rock"]
    assert told["pile"]
    assert not told["wreck"]
    assert "position-unreadable" in errors(bulletin)
