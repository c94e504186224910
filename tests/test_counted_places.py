"""Words that count the places of an item, or take some of them out."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, errors, told, usable_of


@pytest.mark.parametrize(
    ("words", "places", "is_told"),
    [
        ("wrecks at two positions:", f"{P}\n{Q}\n{R}", True),
        ("wrecks in the following two places:", f"{P}\n{Q}", False),
        ("wrecks at three positions:", f"{P}\n{Q}\n{R}", False),
    ],
)
def test_a_count_of_places_is_compared(words: str, places: str, is_told: bool) -> None:
    codes = [f.code for f in parse(f"{HEAD}Insert {words}\n{places}\n").findings]
    assert codes == (["feature-count-differs"] if is_told else [])


@pytest.mark.parametrize(
    "words",
    [
        "all but the first: wrecks",
        "the last of these wrecks",
        "all except the second of the wrecks",
        "one of the wrecks",
        "the northern of two wrecks",
        "only the last wreck",
    ],
)
def test_what_is_not_meant_of_all_places_is_held_back(words: str) -> None:
    bulletin = parse(f"{HEAD}Delete {words} {P} {Q}\n")
    assert told(bulletin) == []
    assert "feature-of-several" in errors(bulletin)


def test_all_of_them_are_meant() -> None:
    bulletin = parse(f"{HEAD}Delete wrecks {P} {Q}\n")
    assert told(bulletin) == [("delete", "wreck", [AT_P, AT_Q])]


def test_one_place_told_in_two_ways_is_not_two() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P} = 46.0000S 122.0000W\n")
    assert (told(bulletin), errors(bulletin)) == ([], {"place-of-another"})


@pytest.mark.parametrize(
    "words",
    [
        "at all corners except 2",
        "at all corners but (2)",
        "at all positions other than No. 2",
        "at each corner save 2",
        "at corners 1 to 3 except 2",
        "at all corners excluding 1 and 2",
        "at corners 1 and 3",
        "at positions (1) & (3)",
    ],
)
@pytest.mark.parametrize("mark", [":", "."])
def test_places_left_out_by_their_number_hold_the_item_back(words: str, mark: str) -> None:
    bulletin = parse(f"{HEAD}Insert piles {words}{mark}\n(1) {P}\n(2) {Q}\n(3) {R}\n")
    assert told(bulletin) == []
    assert "feature-of-several" in errors(bulletin)


@pytest.mark.parametrize("words", ["at all corners except 2", "at all positions but 1 and 2"])
def test_numbers_left_out_of_the_places_above_hold_the_item_back(words: str) -> None:
    bulletin = parse(f"{HEAD}1) {P}\n2) {Q}\n3) {R}\nInsert piles {words}.\n")
    assert told(bulletin) == []
    assert "feature-of-several" in errors(bulletin)


def test_places_that_are_all_named_are_all_meant() -> None:
    places = f"(1) {P}\n(2) {Q}\n(3) {R}\n"
    for words in ("at positions 1, 2 and 3", "at all positions", "at points (1), (2), (3)"):
        assert "feature-of-several" not in errors(parse(f"{HEAD}Insert piles {words}:\n{places}"))


@pytest.mark.parametrize(
    "change",
    [
        f"Move corner of anchorage area from {P} to {Q}",
        f"Delete NE corner of anchorage area {P}",
        f"Move the south end of the submarine cable from {P} to {Q}",
        f"Delete the seaward part of pier {P}",
    ],
)
def test_a_corner_or_an_end_is_not_the_whole_thing(change: str) -> None:
    bulletin = parse(f"{HEAD}{change}\n")
    assert told(bulletin) == []
    assert "feature-of-several" in errors(bulletin)


@pytest.mark.parametrize(
    "change",
    [
        f"Delete dolphin, N end of pier {P}",
        f"Delete light at the south end of breakwater {P}",
        f"Delete submarine cable, N part, joining {P} and {Q}",
    ],
)
def test_the_end_at_which_a_thing_stands_is_no_part_of_it(change: str) -> None:
    assert "feature-of-several" not in errors(parse(f"{HEAD}{change}\n"))


@pytest.mark.parametrize(
    ("thing", "shape"),
    [("spoil ground", "area"), ("depths 5m", "points"), ("light-buoys", "points")],
)
def test_corners_bound_what_is_wide_and_place_what_is_a_point(thing: str, shape: str) -> None:
    bulletin = parse(f"{HEAD}Insert {thing} at corners (a) {P} (b) {Q} (c) {R}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    assert (action.geometry.shape, len(action.geometry.positions)) == (shape, 3)


@pytest.mark.parametrize("depths", ["4.2m, 5.3m", "4.2m and 5.3m"])
@pytest.mark.parametrize("places", [f"{P} and {Q}", "1) and 2)", "1) to 2)"])
def test_several_depths_at_several_places_are_held_back(depths: str, places: str) -> None:
    body = f"Positions\n  1) {P}\n  2) {Q}\nDetails\nInsert depths {depths} in {places}\n"
    bulletin = parse(f"{HEAD}{body}")
    assert told(bulletin) == []
    assert "depth-place-unclear" in errors(bulletin)


def test_one_depth_at_several_places_is_that_of_each() -> None:
    body = f"Positions\n  1) {P}\n  2) {Q}\nDetails\nInsert depths 4.2m in 1) and 2)\n"
    assert told(parse(f"{HEAD}{body}")) == [("insert", "sounding", [AT_P, AT_Q])]


@pytest.mark.parametrize(
    "words",
    [
        "port-hand light-buoy, Fl.R.3s No 4, in {P} and , in {Q}", "special buoy No 12 {P} {Q}",
        'beacon "C4" in {P} and {Q}', "special buoy C4 {P} {Q}",
    ],
)  # fmt: skip
@pytest.mark.parametrize("verb", ["Insert", "Delete"])
def test_a_mark_with_a_number_of_its_own_has_one_place(verb: str, words: str) -> None:
    bulletin = parse(f"{HEAD}{verb} {words.format(P=P, Q=Q)}\n")
    assert usable_of(bulletin) == []
    assert "place-of-another" in errors(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        "special buoys No 12 and No 13 {P} {Q}", "beacons, Karra, {P} and {Q}",
        "special buoy in {P} and {Q}", "lights, Fl.R.3s, No 4, in {P} and {Q}",
    ],
)  # fmt: skip
def test_several_marks_have_several_places(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words.format(P=P, Q=Q)}\n")
    assert len(usable_of(bulletin)) == 1


def test_a_reference_may_bring_both_places_of_a_numbered_mark() -> None:
    text = f"Insert (a) rock {P}\n(b) pile {Q}\nspecial buoy No 12, (a) and (b) above\n"
    bulletin = parse(HEAD + text)
    assert [kind for _, kind in usable_of(bulletin)] == ["rock", "pile"]
    assert "place-of-another" in errors(bulletin)
