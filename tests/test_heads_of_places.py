"""Lines of places above several commands: every command is at the places above it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    WRECK_AND_ROCK,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
    usable_of,
)

BOTH = [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_P]), ("insert", "pile", [AT_Q])]
IN_HALVES = ("46-00.00S\n122-00.00W", "46-00.50S\n122-00.00W")


class TestCommandsBelowPlaces:
    """`P`, and below it `Insert wreck`, `Delete rock`."""

    @pytest.mark.parametrize(
        "body",
        [
            f"{P}\n   Insert wreck\n   Delete rock\n{Q}\n   Insert pile\n",
            f"{IN_HALVES[0]}\n   Insert a wreck.\n   Delete the rock.\n{IN_HALVES[1]}\n"
            "   Insert a pile.\n",
            f"1. {P}\n   Insert wreck\n   Delete rock\n2. {Q}\n   Insert pile\n",
            f"(a) {P}\n   Insert wreck\n   Delete rock\n(b) {Q}\n   Insert pile\n",
            f"{P}   Insert wreck\n      Delete rock\n{Q}   Insert pile\n",
            f"{P} - Insert wreck\n - Delete rock\n{Q} - Insert pile\n",
        ],
    )
    def test_each_is_at_the_place_above(self, body: str) -> None:
        bulletin = parse(f"{HEAD}\n{body}")
        assert told(bulletin) == BOTH
        assert not errors(bulletin)

    def test_a_place_of_its_own_is_that_of_its_command_alone(self) -> None:
        body = (
            f"{P}\n   Insert wreck\n   Insert rock, {R}\n{Q}\n   Insert pile\n   Delete beacon\n"
        )
        assert told(parse(f"{HEAD}\n{body}"))[:3] == [
            ("insert", "wreck", [AT_P]),
            ("insert", "rock", [AT_R]),
            ("insert", "pile", [AT_Q]),
        ]

    @pytest.mark.parametrize("link", [" in", ",", " at:"])
    def test_a_command_that_breaks_off_takes_the_place_below_it(self, link: str) -> None:
        body = f"{P}\n   Insert wreck\n   Insert pile{link}\n{R}\n{Q}\n   Delete rock\n"
        places = {verb + kind: at for verb, kind, at in told(parse(f"{HEAD}\n{body}"))}
        assert places["insertpile"] == [AT_R]

    def test_a_line_from_place_to_place_and_a_move(self) -> None:
        lines = [f"From {IN_HALVES[0]}", f"through {R}", f"to {IN_HALVES[1]}"]
        cable = "\n".join(lines) + "\n   Insert a cable joining these three positions.\n"
        moved = f"from {P} to {Q}\n   Move special buoy, No 4\n   Delete pile\n"
        bulletin = parse(f"{HEAD}\n{cable}{R}\n   Insert wreck\n   Delete rock\n{moved}")
        first, *_, move, _ = actions_of(bulletin)
        assert [p.iso6709 for p in first.geometry.positions] == [AT_P, AT_R, AT_Q]
        assert first.geometry.shape == "line"
        assert isinstance(move, Move)
        assert [p.iso6709 for p in move.destination.positions] == [AT_Q]


class TestNumbersOfPlaces:
    """`1) P`, `2) Q`, and below them a command that names the numbers."""

    HEAD_OF_THREE = f"1) {P}\n2) {Q}\n3) {R}\n"

    @pytest.mark.parametrize(
        ("command", "shape", "expected"),
        [
            ("Insert marine farm, bounded by corners 1 to 3", "area", [AT_P, AT_Q, AT_R]),
            ("Insert marine farm bounded by 1, 2 and 3", "area", [AT_P, AT_Q, AT_R]),
            ("Insert wharf, along the line through 3, 2 and 1", "line", [AT_R, AT_Q, AT_P]),
            ("Insert special buoys at 1 and 3", "points", [AT_P, AT_R]),
            ("Insert special buoys, No 1", "points", [AT_P, AT_Q, AT_R]),
        ],
    )
    def test_a_command_names_the_places_that_it_means(
        self, command: str, shape: str, expected: list[str]
    ) -> None:
        (action,) = actions_of(parse(f"{HEAD}\n{self.HEAD_OF_THREE}   {command}\n"))
        assert action.geometry.shape == shape
        assert [p.iso6709 for p in action.geometry.positions] == expected

    def test_a_number_without_a_place_holds_its_command_back(self) -> None:
        bulletin = parse(f"{HEAD}\n{self.HEAD_OF_THREE}   Insert pile at 4\n")
        assert "letter-unknown" in errors(bulletin)
        assert usable_of(bulletin) == []


@pytest.mark.parametrize(
    "body",
    [
        f"{P} (Quill spit)\n   Insert wreck\n   Delete rock\n{Q} (Quill head)\n   Insert pile\n",
        f"{P} x\n   Insert wreck\n   Insert rock, {R}\n{Q}\n   Insert pile\n   Delete pile\n",
        f"{P}\n   Insert wreck\n   Delete rock\nInsert pile, No 4\n   {Q}\n",
    ],
)
def test_a_place_above_that_is_not_understood_holds_back_what_takes_the_next(body: str) -> None:
    bulletin = parse(f"{HEAD}\n{body}")
    taken = [a for a in told(bulletin) if a[2] != [AT_P]]
    assert taken == []


def test_places_behind_their_things_are_read_as_before() -> None:
    body = f"Insert wreck\n   {P}\nDelete rock\n   {Q}\n"
    assert told(parse(f"{HEAD}\n{body}")) == WRECK_AND_ROCK


class TestOneBehindTheOther:
    """`P, thence to`, `Q, thence to the first position  Insert restricted area`."""

    @pytest.mark.parametrize(
        "end",
        [
            "thence to the first position",
            "and back to the starting point",
            "thence to the point of commencement",
        ],
    )
    def test_an_area_comes_back_to_its_first_corner(self, end: str) -> None:
        rows = f"{P}, thence to\n{Q}, thence to\n{R}, {end}  Insert restricted area.\n"
        bulletin = parse(f"{HEAD}\n{rows}{Q}  Delete rock.\n")
        assert told(bulletin) == [
            ("insert", "restricted_area", [AT_P, AT_Q, AT_R]),
            ("delete", "rock", [AT_Q]),
        ]
        assert actions_of(bulletin)[0].geometry.shape == "area"

    @pytest.mark.parametrize("thing", ["pipeline", "submarine cable"])
    def test_a_line_runs_through_its_places(self, thing: str) -> None:
        rows = f"{P}, thence to\n{Q}, thence to\n{R}.  Insert {thing}.\n{Q}  Delete rock.\n"
        first, _ = actions_of(parse(f"{HEAD}\n{rows}"))
        assert (first.geometry.shape, first.geometry.relation) == ("line", "joining")
        assert [p.iso6709 for p in first.geometry.positions] == [AT_P, AT_Q, AT_R]

    def test_from_a_place_an_area_goes_on_as_well(self) -> None:
        places = f"{P}, thence to {Q}, thence to {R}, thence to the first position."
        text = f"Insert restricted area from {places}"
        bulletin = parse(f"{HEAD}\n{text}\n")
        assert told(bulletin) == [("insert", "restricted_area", [AT_P, AT_Q, AT_R])]

    def test_one_that_ends_at_the_coast_is_told(self) -> None:
        text = f"Insert restricted area, joining {P}, {Q}, {R}, thence to the shore."
        assert "geometry-along-coast" in {one.code for one in parse(f"{HEAD}\n{text}\n").findings}


class TestTwoCommandsOnALine:
    """The second command of a line is at the place of the first."""

    @pytest.mark.parametrize(
        "rows",
        [
            f"{P}: insert wreck; delete rock\n{Q}: insert pile\n",
            f"At {P}, insert a wreck and delete the rock.\nAt {Q}, insert a pile.\n",
            f"{P}\n  Wreck, insert\n  Rock, delete\n{Q}\n  Pile, insert\n",
            f"{P}\n  Insert wreck, delete rock\n{Q}\n  Insert pile\n",
        ],
    )
    def test_and_not_at_the_next_one(self, rows: str) -> None:
        bulletin = parse(f"{HEAD}\n{rows}")
        assert told(bulletin) == BOTH
        assert not errors(bulletin)

    @pytest.mark.parametrize(
        "rows",
        [
            f"{P}: wreck (insert), rock (delete)\n{Q}: pile (insert)\n",
            f"{P}   wreck, insert\n        rock, delete\n{Q}   pile, insert\n",
            f"Wreck (insert), rock (delete) {P}\nPile (insert) {Q}\nBeacon (insert) {R}\n",
        ],
    )
    def test_a_verb_that_ends_a_row_is_not_that_of_another_thing(self, rows: str) -> None:
        expected = {("insert", "wreck"), ("delete", "rock"), ("insert", "pile")}
        assert set(usable_of(parse(f"{HEAD}\n{rows}"))) <= expected


RULE = "-" * 60 + "\n"


class TestNounsBelowPlaces:
    """`Insertion of a wreck`, `Deletion of a rock` below one place."""

    ROWS = f"{P}\n  Insertion of wreck\n  Deletion of rock\n{Q}\n  Insertion of pile\n"

    def test_every_noun_commands_at_the_place_above(self) -> None:
        assert told(parse(f"{HEAD}\n{self.ROWS}")) == BOTH

    def test_they_stand_so_in_every_notice_between_rules(self) -> None:
        second = HEAD.replace("12/26", "13/26").replace("3/26]", "12/26]")
        bulletin = parse(f"{HEAD}{self.ROWS}{RULE}{second}{self.ROWS}{RULE}")
        assert told(bulletin) == BOTH + BOTH

    def test_numbered_corners_below_titles_stand_above_their_area(self) -> None:
        rows = "".join(f"  {n}       {place}\n" for n, place in enumerate((P, Q, R), 1))
        table = f"  Corner  Latitude    Longitude\n{rows}"
        farm = "    Insertion of marine farm bounded by these three corners\n"
        works = f'  {Q}\n    Deletion of legend "Works"\n'
        bulletin = parse(f"{HEAD}{table}{farm}{works}")
        assert told(bulletin) == [
            ("insert", "marine_farm", [AT_P, AT_Q, AT_R]),
            ("delete", "legend", [AT_Q]),
        ]
        assert not errors(bulletin)


@pytest.mark.parametrize(
    "rows", ["Light\n{P}\ndelete\n", "{P}\ndelete\nBuoy\n{Q}\ninsert\nPile\n"]
)
def test_a_command_that_is_only_a_verb_breaks_nothing(rows: str) -> None:
    bulletin = parse(f"{HEAD}{rows.format(P=P, Q=Q)}")
    assert errors(bulletin) or actions_of(bulletin)


@pytest.mark.parametrize("places", [f"(a) {P}", f"(a) {P}\n(b) {Q}\n(c) {R}"])
def test_a_letter_in_a_command_keeps_the_other_places_from_it(places: str) -> None:
    text = f"{HEAD}{places}\nInsert a wreck at (a).\nReplace the rock at (d) with a wreck.\n"
    assert ("insert", "wreck", [AT_P, AT_Q, AT_R]) not in told(parse(text))
    assert "replace" not in [verb for verb, _, _ in told(parse(text))]


@pytest.mark.parametrize("title", ["", "Positions:\n"])
@pytest.mark.parametrize("letters", ["(a) (b)", "(1) (2)", "a) b)"])
def test_the_longitude_stands_below_the_lettered_latitude(title: str, letters: str) -> None:
    one, other = letters.split()
    text = (
        f"{HEAD}{title}{one}  46-00.00S\n     122-00.00W\n{other}  46-00.50S\n     122-00.00W\n"
        f"Insert a wreck at {one}.\nDelete the rock at {other}.\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == WRECK_AND_ROCK
    assert errors(bulletin) == set()
