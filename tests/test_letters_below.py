"""Items under letters whose places stand in a block of letters below or above them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, places, told

S, AT_S = "46-00.20S 122-00.30W", "-4600.20-12200.30/"
WRECK_ROCK = [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
BODIES = [
    f"Insert\n(a) wreck\nDelete\n(b) rock\n(a) {P}\n(b) {Q}\n",
    f"Insert (a) wreck\nDelete (b) rock\n(a) {P}    (b) {Q}\n",
    f"Insert\n(1) wreck\nDelete\n(2) rock\n(1) {P}\n(2) {Q}\n",
    f"Insert\na. wreck\nDelete\nb. rock\n\na.  {P}\n\nb.  {Q}\n",
    f"Insert\nA. wreck\nDelete\nB. rock\nA. {P}\nB. {Q}\n",
    f"Insert\n(a) wreck\nDelete\n(b) rock\nPositions:\n(a): {P}\n(b): {Q}\n",
    f"(a) {P}\n(b) {Q}\nInsert\n(a) wreck\nDelete\n(b) rock\n",
    f"Insert\nwreck in (a)\nDelete\nrock in (b)\n(a) {P}\n(b) {Q}\n",
]


@pytest.mark.parametrize("body", BODIES)
def test_each_item_stands_at_its_letter(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == WRECK_ROCK
    assert [one.severity for one in bulletin.findings if one.severity != "info"] == []


def test_lines_areas_and_moves_name_other_letters() -> None:
    body = (
        "Insert\n(a) submarine pipeline, joining (a), (b) and (c)\n"
        f"Move\n(d) special buoy, Fl.Y.5s, to (e)\nspecial buoy, (b) to (c)\n"
        f"(a) {P}\n(b) {Q}\n(c) {R}\n(d) {S}\n(e) {P}\n"
    )
    bulletin = parse(HEAD + body)
    assert places(bulletin) == [[AT_P, AT_Q, AT_R], [AT_S], [AT_Q]]
    moves = [a for a in actions_of(bulletin) if a.verb == "move"]
    assert [[p.iso6709 for p in one.destination.positions] for one in moves] == [[AT_P], [AT_R]]
    assert errors(bulletin) == set()


HELD = {
    "a letter of two items": f"(a) wreck\n(b) rock\nDelete\n(a) pile\n(a) {P}\n(b) {Q}\n",
    "a letter of two places": f"(a) wreck\n(b) rock\n(a) {P}\n(b) {Q}\n(a) {R}\n",
    "a letter without a place": f"(b) rock\n(a) wreck\n(c) pile\n(b) {Q}\n(c) {R}\n",
    "a place of another item": f"(a) wreck\n(b) submarine cable, joining\n(a) {P}\n(c) {Q}\n",
}


@pytest.mark.parametrize("body", HELD.values(), ids=list(HELD))
def test_what_cannot_be_told_by_letters_is_held_back(body: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n{body}")
    held = [a for a in actions_of(bulletin) if not a.usable]
    assert "wreck" in {one.feature.kind for one in held}
    assert errors(bulletin)
    for one in actions_of(bulletin):
        assert len(one.geometry.positions) < 2 or not one.usable


def test_lettered_places_of_one_item_stay_with_it() -> None:
    body = f"Insert\n(a) wreck {S}\n(b) submarine cable, joining\n(c) {P}\n(d) {Q}\n"
    assert places(parse(HEAD + body)) == [[AT_S], [AT_P, AT_Q]]


def test_a_title_with_a_page_that_counts_on_is_the_head_of_a_page() -> None:
    head = "Tavrenne Hydrographic Bureau                                {}\n"
    body = f"Insert\n(a) wreck\nDelete\n(b) rock\n(a) {P}\n"
    text = head.format(3) + "Notices, Part 11 of 2026\n" + HEAD + body
    text += head.format(4) + f"Notices, Part 11 of 2026\n(b) {Q}\n" + head.format(5)
    assert told(parse(text)) == WRECK_ROCK


def test_an_index_of_charts_with_pages_names_no_notices() -> None:
    index = (
        "Index of charts\nChart     Page       Chart     Page\n802       12         803       14\n"
    )
    bulletin = parse(f"{index}\n{HEAD}Insert wreck {P}\n")
    assert [one.notices for listed in bulletin.lists for one in listed.entries][-2:] == [[], []]
    assert "index-without-chart" not in {one.code for one in bulletin.findings}


def test_numbered_corners_of_an_item_are_no_block_of_letters() -> None:
    body = (
        f"Positions:\n(a) {P}\n(b) {Q}\nInsert:\nmooring buoys, at (a) and (b)\n"
        f"spoil ground, corners:\n   1. {P}\n   2. {Q}\n   3. {R}\nrock, at (a)\n"
    )
    bulletin = parse(HEAD + body)
    assert places(bulletin) == [[AT_P, AT_Q], [AT_P, AT_Q, AT_R], [AT_P]]
    assert [one.geometry.shape for one in actions_of(bulletin)] == ["points", "area", "point"]
    assert errors(bulletin) == set()


LOST = [
    "46-00.50S 122-00.00",
    "46.1234\N{DEGREE SIGN}  122.1234\N{DEGREE SIGN}W",
    "46.O234\N{DEGREE SIGN}S 122.1234\N{DEGREE SIGN}W",
]


@pytest.mark.parametrize("lost", LOST)
def test_a_place_that_cannot_be_read_ends_no_list(lost: str) -> None:
    body = f"Positions:\n(a) {P}\n(b) {lost}\n(c) {R}\nInsert:\nwreck, at (b)\nrock, at (c)\n"
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("insert", "rock", [AT_R])]
    assert errors(bulletin)
    assert "letter-unknown" not in errors(bulletin)


@pytest.mark.parametrize("rest", ["122-00.00W, buoy", "see (a)", "12.34"])
def test_other_words_beside_a_place_are_no_rest_of_it(rest: str) -> None:
    body = f"Positions:\n(a) {P}\n(b) {Q} {rest}\nInsert:\nwreck, at (a)\nrock, at (b)\n"
    assert errors(parse(HEAD + body))


@pytest.mark.parametrize("named", ["(a) above", "(b) above", "(a) and (b) above"])
def test_a_letter_right_below_a_thing_is_its_place_however_often_named(named: str) -> None:
    body = (
        f"AMEND\n  light to Fl.G.3s\n    (a) {P}\nINSERT\n  rock\n    (b) {Q}\n"
        f"DELETE\n  pile\n    (c) {R}\n  dolphin, at\n    {named}\n  racon, at\n    (c) above\n"
    )
    bulletin = parse(HEAD + body)
    assert places(bulletin)[:3] == [[AT_P], [AT_Q], [AT_R]]
    assert errors(bulletin) == set()
