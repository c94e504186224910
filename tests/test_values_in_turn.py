"""Values of several things named at once, and pairs of places on lines of their own."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, errors, told

S = "46-00.20S 122-00.30W"


@pytest.mark.parametrize(
    "item",
    [
        f"Insert leading lights, front Q.R, rear Iso.R.4s, in {P} and {Q}",
        f"Insert beacons (red, green) {P}, {Q}",
        f"Delete buoys (No 1, No 2, No 3) {P}, {Q}, {R}",
        f"Insert light-buoys (Q.R, Q.G) in {P} and {Q}",
    ],
)
def test_values_for_each_place_are_not_those_of_all(item: str) -> None:
    bulletin = parse(HEAD + item)
    assert told(bulletin) == []
    assert "feature-kinds-several" in errors(bulletin)


@pytest.mark.parametrize(
    "words", ["beacons (red, white and red)", "beacons (red, conical)", "buoys (private, lit)"]
)
def test_values_of_different_sorts_are_those_of_each(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}, {Q}")
    assert [places for *_, places in told(bulletin)] == [[AT_P, AT_Q]]


def test_leading_lights_with_one_light_have_it_at_both_places() -> None:
    bulletin = parse(f"{HEAD}Insert leading lights, Q.R, in {P} and {Q}")
    assert [places for *_, places in told(bulletin)] == [[AT_P, AT_Q]]


def test_a_line_end_parts_two_pairs_of_places() -> None:
    bulletin = parse(f"{HEAD}Insert submarine cables, joining:\n{P} and {Q}\n{R} and {S}")
    assert told(bulletin) == []
    assert errors(bulletin) == {"relation-unclear"}


@pytest.mark.parametrize(
    "places",
    [f"{P}\n{Q}\n{R}\nand {S}", f"{P}, {Q},\n{R} and {S}", f"{P} and {Q} and\n{R} and {S}"],
)
def test_one_line_may_run_over_line_ends(places: str) -> None:
    bulletin = parse(f"{HEAD}Insert submarine cable, joining:\n{places}")
    assert [len(found) for *_, found in told(bulletin)] == [4]


@pytest.mark.parametrize(
    ("rows", "kind"),
    [
        (f"obstructions:\n{P}   depth 3m\n{Q}   depth 4m", "obstruction"),
        (f"wrecks:\ndepth 3m   {P}\ndepth 4m   {Q}", "wreck"),
        (f"rocks:\n{P}   drying height 3m\n{Q}   drying height 4m", "rock"),
        (f"soundings:\n{P}   depth 3m\n{Q}   depth 4m", "sounding"),
    ],
)
def test_rows_of_depths_are_of_the_class_above_them(rows: str, kind: str) -> None:
    assert told(parse(f"{HEAD}Insert {rows}")) == [
        ("insert", kind, [AT_P]),
        ("insert", kind, [AT_Q]),
    ]


def test_a_bare_figure_below_a_danger_may_be_one_more_of_it() -> None:
    bulletin = parse(f"{HEAD}Insert wreck, 12m, {P}; 9m, {Q}")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"place-of-neighbour"}


def test_a_depth_with_its_word_below_a_danger_is_a_sounding() -> None:
    bulletin = parse(f"{HEAD}Insert wreck, 12m, {P}; depth 9m, {Q}")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "sounding", [AT_Q])]
