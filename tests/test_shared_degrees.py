"""Positions whose degrees stand with the position before: only within their notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, actions_of, codes, errors, places, usable_of

NEXT = "\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n"
MINUTES = "12'.90S 46'.20W"


def test_degrees_of_the_position_before_hold_within_a_notice() -> None:
    text = f"{HEAD}Insert wreck 47°12'.34S 122°40'.10W\nInsert rock 13'.05S 41'.70W\n"
    assert places(parse(text)) == [["-4712.34-12240.10/"], ["-4713.05-12241.70/"]]
    assert errors(parse(text)) == set()


@pytest.mark.parametrize(
    "text",
    [
        f"{HEAD}Insert wreck {P}\n{NEXT}Insert rock {MINUTES}\n",
        f"{HEAD}Insert wreck {P}\nInsert pile 47°72'.34S 122°40'.10W\nInsert rock {MINUTES}\n",
    ],
)
def test_degrees_are_not_taken_from_elsewhere(text: str) -> None:
    assert places(parse(text))[-1] == []
    assert "position-shared-degrees-unknown" in errors(parse(text))


def test_degrees_of_a_remark_above_the_notice_are_not_those_of_a_remark() -> None:
    text = (
        f"{HEAD}Insert wreck {P}\n\n13(T)/26 Quill Sound.\nDivers work in {MINUTES} until June.\n"
    )
    assert [one.positions for one in parse(text).notices[1].remarks] == [[]]


def test_degrees_below_one_chart_head_hold_over_its_notices() -> None:
    text = (
        "Chart 802 WGS84\n12/26  Insert wreck  47°12'.34S 122°40'.10W\n"
        "13/26  Insert rock  13'.05S 41'.70W\n"
    )
    assert places(parse(text)) == [["-4712.34-12240.10/"], ["-4713.05-12241.70/"]]


def test_several_commands_by_nouns_at_the_place_above() -> None:
    rule = "-" * 60
    body = (
        "48°12'.34S 122°40'.10W\n   Insertion of light-buoy, Fl.G.3s\n"
        "   Deletion of starboard-hand buoy\n"
        "12'.90S 40'.75W\n   Insertion of rock awash\n"
        "13'.05S 41'.70W; 13'.60S 41'.95W\n"
        "   Insertion of submarine cable joining these positions\n"
    )
    # The line that comes again beside a rule is no head of a page.
    again = f"{rule}\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n{body}{rule}\n"
    text = f"{rule}\n{HEAD}{body}{again}"
    first, cable = ["-4812.34-12240.10/"], ["-4813.05-12241.70/", "-4813.60-12241.95/"]
    assert places(parse(text)) == [first, first, ["-4812.90-12240.75/"], cable] * 2
    assert errors(parse(text)) == set()


A, B = "47°59'.20S 123°00'.80W", "59'.20S 122°59'.10W"
CORNERS = ["-4759.20-12300.80/", "-4759.20-12259.10/", "-4800.60-12259.10/", "-4800.60-12300.80/"]


@pytest.mark.parametrize(
    "body",
    [
        f"{A}, {B}, 48°00'.60S 59'.10W and 00'.60S 123°00'.80W",
        f"{A}, {B}, 48°00'.60S\n  59'.10W and 00'.60S 123°00'.80W",
        f"{A}, {B}, 48°00'.60S 59'.10W and 00'.60S\n  123°00'.80W",
        f"{A},\n  {B}, 48°00'.60S\n  59'.10W and 00'.60S\n  123°00'.80W",
    ],
)
def test_degrees_are_the_latest_of_their_axis_wherever_a_line_ends(body: str) -> None:
    bulletin = parse(f"{HEAD}Insert firing practice area, bounded by {body}\n")
    assert places(bulletin) == [CORNERS]
    assert codes(bulletin) == set()


def test_degrees_of_a_latitude_left_alone_hold_too() -> None:
    text = (
        f"{HEAD}Insert wrecks in 47°59'.20S 123°00'.80W, 48°00'.60S, a pile and 00'.70S 00'.90W\n"
    )
    assert "position-half-missing" in errors(parse(text))
    assert "-4700.70-12300.90/" not in str(places(parse(text)))


def test_minutes_below_a_half_that_cannot_be_read_have_no_degrees() -> None:
    text = f"{HEAD}Insert wreck {P}\nInsert pile 47°72'.34S\nInsert rock {MINUTES}\n"
    assert places(parse(text))[-1] == []
    assert "position-shared-degrees-unknown" in errors(parse(text))


TRACK = [["-4803.00-12249.00/", "-4803.00-12251.50/"]]


@pytest.mark.parametrize(
    "words",
    [
        "and, on the same parallel, 51'.50W",
        "and, on the same\n  parallel, 51'.50W",
        "and, in the same latitude, 122°51'.50W",
        "and on the same parallel of latitude in longitude 122°51'.50W",
    ],
)
def test_the_other_coordinate_on_the_same_parallel(words: str) -> None:
    bulletin = parse(f"{HEAD}Delete recommended track, joining 48°03'.00S 122°49'.00W {words}\n")
    assert places(bulletin) == TRACK
    assert codes(bulletin) == set()


def test_the_other_coordinate_on_the_same_meridian() -> None:
    text = (
        f"{HEAD}Insert submarine cable, joining 48°03'.00S 122°49'.00W, on the same meridian, "
        "48°04'.10S and 04'.60S 49'.20W\nInsert wreck 04'.90S 49'.50W\n"
    )
    cable = ["-4803.00-12249.00/", "-4804.10-12249.00/", "-4804.60-12249.20/"]
    assert places(parse(text)) == [cable, ["-4804.90-12249.50/"]]
    assert codes(parse(text)) == set()


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ("on the same parallel, 48°04'.10S", "position-half-missing"),
        ("on the same meridian, 51'.50W", "position-half-missing"),
    ],
)
def test_a_parallel_has_longitudes_and_a_meridian_latitudes(words: str, code: str) -> None:
    text = f"{HEAD}Insert submarine cable, joining 48°03'.00S 122°49'.00W and, {words}\n"
    assert code in errors(parse(text))


def test_nothing_is_on_the_parallel_of_no_point() -> None:
    text = f"{HEAD}Insert wreck, on the same parallel, 51'.50W\n"
    assert places(parse(text)) == [[]]
    assert errors(parse(text)) == {"position-half-missing"}


def test_a_parallel_of_another_notice_is_not_taken() -> None:
    text = f"{HEAD}Insert wreck {P}\n{NEXT}Insert rock, on the same parallel, 122°51'.50W\n"
    assert places(parse(text))[-1] == []
    assert errors(parse(text)) == {"position-shared-degrees-unknown"}


def test_a_whole_position_on_the_same_meridian_is_its_own() -> None:
    text = (
        f"{HEAD}Insert submarine cable, joining 48°03'.00S 122°49'.00W and, on the same meridian, "
        "48°04'.10S 122°49'.00W\n"
    )
    assert "-4804.10-12249.00/" in str(places(parse(text)))


SHARED = "All positions are in latitude 48° South, longitude 127° West; minutes only."


@pytest.mark.parametrize("place", ["31'.00 W", "14'.45 X, 31'.10 W", "-14'.48 S, 31'.20 W"])
def test_a_longitude_without_its_latitude_takes_none_from_another_item(place: str) -> None:
    text = f"{SHARED}\nInsert depth 3.9 m: at 14'.47 S, 31'.04 W.\n  rock: at {place}.\n"
    bulletin = parse(HEAD + text)
    assert [action.usable for action in actions_of(bulletin)] == [True, False]
    assert errors(bulletin) == {"position-half-missing"}


@pytest.mark.parametrize("joint", [" and ", ", ", "\n" + 60 * " "])
def test_a_longitude_alone_in_a_list_is_told(joint: str) -> None:
    line = f"Insert cable joining 47°52'.10S 122°58'.40W, 52'.66S 58'.95W{joint}59'.30W.\n"
    bulletin = parse(HEAD + line)
    (action,) = actions_of(bulletin)
    assert action.geometry.positions[-1].iso6709 == "-4752.66-12259.30/"
    assert "position-latitude-shared" in {one.code for one in bulletin.findings}


RESTS = {
    "figure behind its word": "in Lat. 4 11'.80 S., Long. 16'.66 W.",
    "figure behind a word": "in position 4 11'.80 S., 16'.66 W.",
    "figure and signs": "4■■11'.80 S., 16'.66 W.",
    "figure and sign": "4# 11'.80 S., 16'.66 W.",
    "signs alone": "in ■■ 11'.80 S., 16'.66 W.",
    "signs for a longitude": "11'.80 S., Long. ■■■ 16'.66 W.",
}


@pytest.mark.parametrize("place", RESTS.values(), ids=RESTS)
@pytest.mark.parametrize(
    "words", ["Insert wreck {}", "Move dolphin from {} to 11'.90 S., 16'.70 W."]
)
def test_a_rest_of_degrees_is_no_sign_that_they_are_shared(words: str, place: str) -> None:
    first = "Insert rock 47° 10'.42 S., 124° 15'.20 W.\n"
    assert usable_of(parse(f"{HEAD}{first}{words.format(place)}\n")) == [("insert", "rock")]
    clean = words.format("11'.80 S., 16'.66 W.")
    assert len(usable_of(parse(f"{HEAD}{first}{clean}\n"))) == 2


@pytest.mark.parametrize("front", ["■ ", "buoy No 4 ", "depth 4 ", "4 Insert wreck in "])
def test_what_may_stand_before_minutes(front: str) -> None:
    first = "Insert rock 47° 10'.42 S., 124° 15'.20 W.\n"
    found = parse(f"{HEAD}{first}Insert pile\n{front}11'.80 S., 16'.66 W.\n")
    assert "position-unreadable" not in errors(found)
