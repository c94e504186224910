"""Lines told by their ends, places between them, and several lines or areas in one item."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors

S, T, U = "46-01.00S 122-00.50W", "46-01.50S 122-00.50W", "46-01.50S 122-01.50W"

SEVERAL = [
    f"Insert submarine cables:\n{P} to {Q}\n{R} to {S}",
    f"Insert pipelines:\n{P} to {Q}\n{R} to {S}",
    f"Insert pipelines between:\n{P} and {Q}\n{R} and {S}",
    f"Insert submarine cables joining:\n(a) {P} and {Q}\n(b) {R} and {S}",
    f"Insert two leading lines joining:\n{P} and {Q}\n{R} and {S}",
    f"Insert submarine cables, joining (a) {P} and (b) {Q}, and (c) {R} and (d) {S}",
    f"Insert submarine cables, (a)-(b) and (c)-(d): (a) {P} (b) {Q} (c) {R} (d) {S}",
    f"Insert restricted areas, bounded by:\n{P}, {Q}, {R}\n{S}, {T}, {U}",
    f"Insert restricted areas, bounded by:\n(a) {P}, {Q}, {R}\n(b) {S}, {T}, {U}",
    f"Insert two marine farms, bounded by: {P}, {Q}, {R}; {S}, {T}, {U}",
]


@pytest.mark.parametrize("words", SEVERAL)
def test_several_lines_are_not_read_as_one(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert not any(one.usable for one in actions_of(bulletin))
    assert "relation-unclear" in errors(bulletin)


ONE = {
    f"Insert submarine cable joining:\n{P}, {Q},\n{R}, {S}": "line",
    f"Insert submarine cable joining:\n{P}\n{Q}\n{R}\n{S}": "line",
    f"Insert submarine cable from {P} to {Q} to\n{R} to {S}": "line",
    f"Insert submarine cable joining {P} and {Q} and {R} and {S}": "line",
    f"Insert submarine cables, joining (a) {P}, (b) {Q}, (c) {R} and (d) {S}": "line",
    f"Insert restricted area, bounded by:\n{P}, {Q}, {R}\n{S}, {T}, {U}": "area",
    f"Insert restricted areas, bounded by:\n{P}, {Q}, {R},\n{S}, {T}, {U}": "area",
    f"Insert restricted area, bounded by:\n(a) {P}\n(b) {Q}\n(c) {R}\n(d) {S}": "area",
    f"Insert 4 fish cages, bounded by {P}, {Q}, {R}, {S}": "area",
    f"Insert buoys:\n{P} and {Q}\n{R} and {S}": "points",
}


@pytest.mark.parametrize(("words", "shape"), ONE.items())
def test_one_line_stays_one(words: str, shape: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{words}\n"))
    assert (action.geometry.shape, action.usable) == (shape, True)


BETWEEN = [
    f"Insert 10m depth contour between {P} and {Q} via {R}",
    f"Insert submarine cable joining {P} and {Q} through {R}",
    f"Insert submarine cable joining {P} and {Q}, passing through {R}",
    f"Insert submarine cable joining {P}, {S} and {Q} via {R}",
]


@pytest.mark.parametrize("words", BETWEEN)
def test_a_place_behind_both_ends_lies_between(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert not any(one.usable for one in actions_of(bulletin))
    assert "relation-unclear" in errors(bulletin)


IN_ORDER = [
    f"Insert submarine cable joining {P}, via {R}, and {Q}",
    f"Insert submarine cable from {P} through {R} to {Q}",
]


@pytest.mark.parametrize("words", IN_ORDER)
def test_places_told_in_order_stay(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{words}\n"))
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P, AT_R, AT_Q]
    assert (action.geometry.shape, action.usable) == ("line", True)


ENDS = [
    f"Insert leading line 180° from {P} to {Q}",
    f"Insert recommended track 180° from {P} to {Q}",
    f"Insert ferry route 135° from {P} to {Q}",
    f"Insert submarine cable 090° from {P} to {Q}",
    f"Insert leading line, 180°, from {P} to {Q}",
    f"Insert pipeline, {P} to {Q}",
    f"Delete pipeline, {P} to {Q}",
    f"Insert pipeline, {P} - {Q}",
    f"Insert breakwater, {P} to {Q}",
    f"Insert limit joining {P} and {Q}",
]


@pytest.mark.parametrize("words", ENDS)
def test_a_line_runs_between_its_ends(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{words}\n"))
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P, AT_Q]
    assert (action.geometry.shape, action.usable) == ("line", True)


def test_the_bearing_of_a_line_is_held_against_its_ends() -> None:
    assert "line-bearing-differs" in codes(
        parse(f"{HEAD}Insert leading line 045° from {P} to {Q}")
    )


def test_dashes_join_more_than_two() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert pipeline, {P} - {Q} - {R}\n"))
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P, AT_Q, AT_R]
    assert action.geometry.shape == "line"


NO_LINE = [
    f"Insert wreck 090° from {P}",
    f"Insert leading line 090° from {P}",
    f"Insert pipeline 090° from {P}",
]


@pytest.mark.parametrize("words", NO_LINE)
def test_a_bearing_from_one_place_is_no_line(words: str) -> None:
    assert not any(one.usable for one in actions_of(parse(f"{HEAD}{words}\n")))


def test_points_under_a_line_stay_points() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert breakwaters, {P} and {Q}\n"))
    assert action.geometry.shape == "points"


def test_a_line_that_leads_on_is_told() -> None:
    words = f"Insert submarine cable joining: the shore at {P}, {Q} thence to Brack Point"
    assert "geometry-along-coast" in codes(parse(f"{HEAD}{words}\n"))


def test_the_outer_limit_of_a_scheme_is_a_line() -> None:
    """S-57 draws TSSBND as a line and as nothing else."""
    body = f"Insert outer limit of traffic separation scheme joining {P} and {Q}\n"
    (action,) = actions_of(parse(HEAD + body))
    assert (action.feature.s57, action.geometry.shape) == (["TSSBND"], "line")


@pytest.mark.parametrize("words", ["outer limits of traffic separation scheme", "TSS boundary"])
def test_outer_limits_in_the_plural_are_that_line_too(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert {words} joining {P}, {Q} and {R}\n"))
    assert (action.feature.s57, action.geometry.shape) == (["TSSBND"], "line")


@pytest.mark.parametrize(
    "words", ["outer limit of traffic separation scheme,", "submarine cable", "10m depth contour"]
)
def test_a_line_that_comes_back_stays_a_line(words: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert {words} joining {P}, {Q}, {R} and {P}\n"))
    assert (action.geometry.shape, action.usable) == ("line", True)
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P, AT_Q, AT_R, AT_P]
