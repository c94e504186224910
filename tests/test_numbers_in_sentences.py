"""Places that numbers, letters or corners count within a sentence, and lines through them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors, told

SHORT = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n"


@pytest.mark.parametrize(
    "words",
    [
        "A pipeline is inserted, joining (1) {P}; (2) {Q}; (3) {R}.",
        "A pipeline is inserted, joining (1) {P};\n(2) {Q}; (3) {R}.",
        "A pipeline, joining (1) {P}, (2) {Q} and (3) {R}, is inserted.",
        "Insert pipeline joining 1. {P}, 2. {Q}, 3. {R}",
        "Insert pipeline joining 1) {P}, 2) {Q},\n3) {R}",
    ],
)
def test_numbers_count_the_places_of_a_sentence(words: str) -> None:
    bulletin = parse(SHORT + words.format(P=P, Q=Q, R=R) + "\n")
    (action,) = actions_of(bulletin)
    assert (action.geometry.shape, action.geometry.relation) == ("line", "joining")
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P, AT_Q, AT_R]
    assert not codes(bulletin)


def test_an_area_of_numbered_corners_shares_their_degrees_over_a_line_end() -> None:
    corners = "(1) 48°14'.20S 124°31'.05W; (2) 14'.20S 30'.40W;\n(3) 14'.95S 30'.40W."
    (action,) = actions_of(parse(f"{SHORT}A dredged area is inserted, bounded by {corners}\n"))
    assert action.geometry.shape == "area"
    assert [one.iso6709 for one in action.geometry.positions] == [
        "-4814.20-12431.05/", "-4814.20-12430.40/", "-4814.95-12430.40/",
    ]  # fmt: skip


def test_a_number_out_of_order_is_told() -> None:
    bulletin = parse(f"{SHORT}Insert pipeline, joining (1) {P}; (3) {Q}; (4) {R}.\n")
    assert codes(bulletin) == {"letter-out-of-order"}


def test_the_number_of_a_buoy_counts_no_place() -> None:
    bulletin = parse(f"{SHORT}Insert buoy No 1. {P}\nInsert buoy No 2. {Q}\n")
    names = [(one.feature.name, len(one.geometry.positions)) for one in actions_of(bulletin)]
    assert names == [("No 1", 1), ("No 2", 1)]


@pytest.mark.parametrize("end", [".", "", "\nDelete rock at (b)."])
def test_letters_may_be_parted_by_semicolons(end: str) -> None:
    rows = f"(a) {P}; (b) {Q}; (c) {R}.\nInsert a pontoon joining (a); (b); (c){end}\n"
    first, *_ = actions_of(parse(SHORT + rows))
    assert [one.iso6709 for one in first.geometry.positions] == [AT_P, AT_Q, AT_R]
    assert (first.geometry.shape, first.usable) == ("line", True)


@pytest.mark.parametrize(
    "lead",
    [
        "with the corners of this table",
        "with the following corners:",
        "with the corners in the table below",
        "with corners below",
        "with its corners at",
    ],
)
def test_words_for_corners_lead_to_an_area(lead: str) -> None:
    corners = (
        "    1  47°34'.00S    125°49'.50W\n    2  47°34'.00S    125°48'.90W\n"
        "    3  47°34'.45S    125°48'.90W\n"
    )
    head = "    Corner  Latitude   Longitude\n"
    (action,) = actions_of(parse(f"{SHORT}Insert marine farm {lead}\n{head}{corners}"))
    assert (action.geometry.shape, len(action.geometry.positions)) == ("area", 3)


def test_counted_corners_below_their_word_make_an_area() -> None:
    rows = f"1. Insert marine farm, corners:\n   1) {P}\n   2) {Q}\n   3) {R}\n"
    bulletin = parse(SHORT + rows)
    (action,) = actions_of(bulletin)
    assert (action.geometry.shape, len(action.geometry.positions)) == ("area", 3)
    assert not [one for one in bulletin.findings if one.code == "text-left-over"]


def test_a_cable_runs_by_way_of_the_places_between() -> None:
    (action,) = actions_of(parse(f"{SHORT}Insert cable from {P} by way of {Q} to {R}\n"))
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P, AT_Q, AT_R]
    assert (action.geometry.shape, action.usable) == ("line", True)


@pytest.mark.parametrize("link", ["by way of", "via", ", passing through"])
def test_what_is_told_behind_both_ends_lies_between_them(link: str) -> None:
    bulletin = parse(f"{SHORT}Insert cable from {P} to {R} {link} {Q}\n")
    assert "relation-unclear" in errors(bulletin)
    assert told(bulletin) == []
