"""Rows that count the places of one thing: `corner 1  P`, `corner 2  Q`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told

TITLES = "Action   Object                      Position\n"


def rows(thing: str, counts: list[str]) -> str:
    places = (P, Q, R, "46-00.60S 122-00.90W")
    first, *others = zip(counts, places, strict=False)
    more = "".join(f"                    {count:<17}{place}\n" for count, place in others)
    return f"Insert   {thing:<11}{first[0]:<17}{first[1]}\n{more}"


@pytest.mark.parametrize("titles", ["", TITLES])
@pytest.mark.parametrize(
    ("thing", "word", "shape"),
    [
        ("Fish farm", "corner", "area"),
        ("Anchorage", "corner no.", "area"),
        ("Cable", "end", "line"),
        ("Pipeline", "turning point", "line"),
    ],
)
@pytest.mark.parametrize("counts", ["123", "ABC"])
def test_counted_rows_are_the_places_of_one_thing(
    titles: str, thing: str, word: str, shape: str, counts: str
) -> None:
    bulletin = parse(HEAD + titles + rows(thing, [f"{word} {one}" for one in counts]))
    (action,) = actions_of(bulletin)
    assert action.usable
    assert action.geometry.shape == shape
    assert len(action.geometry.positions) == 3
    assert not errors(bulletin)


def test_counted_rows_below_a_participle() -> None:
    bulletin = parse(
        f"{HEAD}Restricted area, established:\n   corner 1   {P}\n   corner 2   {Q}\n"
        f"   corner 3   {R}\nPile, removed   {Q}\n"
    )
    assert [(one[0], one[1], len(one[2])) for one in told(bulletin)] == [
        ("insert", "restricted_area", 3),
        ("delete", "pile", 1),
    ]


@pytest.mark.parametrize("titles", ["", TITLES])
@pytest.mark.parametrize(
    "counts",
    [
        ["corner 1", "corner 2", "corner 4"],
        ["corner 2", "corner 3", "corner 4"],
        ["corner 1", "comer 2", "corner 3"],
        ["corner 1", "corner 2", "comer 3"],
        ["angle 1", "angle 2", "angle 3"],
        ["west end", "east end"],
        ["NW corner", "NE corner", "SE corner"],
        ["start", "end"],
        ["start", "bend", "end"],
        ["1st end", "2nd end"],
        ["1", "2"],
        ["P1", "P2"],
    ],
)
def test_rows_that_are_not_surely_counted_are_held_back(titles: str, counts: list[str]) -> None:
    bulletin = parse(HEAD + titles + rows("Fish farm", counts))
    assert told(bulletin) == []
    assert errors(bulletin)


@pytest.mark.parametrize(
    ("numbers", "order", "is_told"),
    [
        ("(1) {P}; (3) {Q}; (2) {R}", [AT_P, AT_Q, AT_R], True),
        ("(1) {P}; (12) {Q}; (3) {R}", [AT_P, AT_Q, AT_R], True),
        ("(1) {P}   (3) {Q}\n(2) {R}", [AT_P, AT_R, AT_Q], False),
        ("(1) {P}; (2) {Q}; (3) {R}", [AT_P, AT_Q, AT_R], False),
    ],
)
def test_only_numbers_in_columns_are_read_downwards(
    numbers: str, order: list[str], is_told: bool
) -> None:
    words = numbers.format(P=P, Q=Q, R=R)
    bulletin = parse(f"{HEAD}Insert submarine cable, joining\n{words}\n")
    assert [order_read for _, _, order_read in told(bulletin)] == [order]
    assert ("letter-out-of-order" in codes(bulletin)) is is_told


@pytest.mark.parametrize("words", ["Q.R No 12", "Fl(2)G No 3", "Oc.R No 4"])
def test_a_light_without_a_word_for_it_is_no_further_place(words: str) -> None:
    bulletin = parse(f"{HEAD}Delete\n   Pile   {P}\n   {words}   {Q}\n")
    assert told(bulletin) == [("delete", "pile", [AT_P]), ("delete", "light", [AT_Q])]
    assert errors(bulletin) == set()


def test_below_another_verb_stands_no_further_place() -> None:
    bulletin = parse(f"{HEAD}Insert\n   Fish farm   {P}\nDelete\n   Gizmo 12   {Q}\n")
    assert ("insert", "marine_farm", [AT_P]) in told(bulletin)
    assert "place-of-another" not in codes(bulletin)


@pytest.mark.parametrize("count", ["end F", "corner F"])
def test_a_letter_that_counts_is_no_light(count: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n   Fish farm   {P}\n   {count}   {Q}\n")
    assert told(bulletin) == []
