"""Positions that items refer to: announced, numbered, counted or below them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told


def test_positions_with_letters_behind_leaders() -> None:
    body = (
        "Insert\n"
        "  cable joining ............ a. 46° 00'.00 S, 122° 00'.00 W\n"
        "                             b. 46° 00'.50 S, 122° 00'.00 W\n"
        "  wreck at ................. position (b)\n"
    )
    assert told(parse(HEAD + body)) == [
        ("insert", "cable_submarine", [AT_P, AT_Q]), ("insert", "wreck", [AT_Q]),
    ]  # fmt: skip


def test_a_letter_whose_item_has_no_place_is_no_place() -> None:
    bulletin = parse(f"{HEAD}(a) Insert wreck\n(b) Delete depth 12m, close E of (a)\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-without-position", "reference-unknown"}


class TestAnnounced:
    """Positions numbered first, and items that refer to them by number."""

    def test_relations(self) -> None:
        text = (
            f"{HEAD}Positions  (1) {P}\n           (2) {Q}\n"
            "Insert submarine cable joining (1) and (2).\nMove buoy from (2) to (1).\n"
            "Delete depth 8m, close N of (1).\n"
        )
        bulletin = parse(text)
        cable, move, depth = bulletin.notices[0].charts[0].actions
        assert (cable.geometry.shape, [p.iso6709 for p in cable.geometry.positions]) == (
            "line", [AT_P, AT_Q],
        )  # fmt: skip
        assert isinstance(move, Move)
        assert [p.iso6709 for p in move.destination.positions] == [AT_P]
        assert (depth.geometry.relation, depth.geometry.direction) == ("close", "N")
        assert not errors(bulletin)

    def test_one_that_no_item_refers_to_is_told(self) -> None:
        text = f"{HEAD}Positions  (1) {P}\n           (2) {Q}\nInsert wreck at (1).\n"
        bulletin = parse(text)
        assert told(bulletin) == [("insert", "wreck", [AT_P])]
        assert errors(bulletin) == {"item-without-verb"}

    def test_unknown_number_is_told(self) -> None:
        bulletin = parse(f"{HEAD}Positions  (1) {P}\nInsert wreck at (1).\nDelete rock at (3).\n")
        assert told(bulletin) == [("insert", "wreck", [AT_P])]
        assert errors(bulletin)


def test_letters_may_leave_out_i_and_o() -> None:
    rows = [f"[{letter}] 46-0{n}.00S 122-00.00W" for n, letter in enumerate("FGHJK")]
    bulletin = parse(f"{HEAD}Insert cable, joining {rows[0]}\n" + "\n".join(rows[1:]) + "\n")
    assert "letter-out-of-order" not in {finding.code for finding in bulletin.findings}
    assert len(bulletin.notices[0].charts[0].actions[0].geometry.positions) == 5


class TestCountedGrid:
    """A ruled table that counts its rows: a cell may wrap, and a place be that of another row."""

    def test_wrapped_cells_and_references(self) -> None:
        text = (
            f"{HEAD}"
            "| Item | Action | Object                  | Position                  |\n"
            f"| 1    | Insert | Overhead cable, safe    | {P} |\n"
            f"|      |        | clearance 9 m, joining  | {Q} |\n"
            f"| 2    | Move   | Mooring buoy, from      | {P} |\n"
            f"|      |        | to                      | {Q} |\n"
            "| 3    | Delete | Depth 15.1 m, close N of | as item 1 |\n"
            "| 4    | Delete | Depth 13.6 m, close E of | as item 9 |\n"
        )
        bulletin = parse(text)
        cable, move, depth, _ = bulletin.notices[0].charts[0].actions
        assert [p.iso6709 for p in cable.geometry.positions] == [AT_P, AT_Q]
        assert cable.feature.clearance is not None
        assert isinstance(move, Move)
        assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
        assert (depth.geometry.relation, depth.geometry.direction) == ("close", "N")
        assert [p.iso6709 for p in depth.geometry.positions] == [AT_P, AT_Q]
        assert errors(bulletin) == {"letter-unknown"}


def test_positions_with_letters_and_details_below() -> None:
    text = (
        f"12/26. TAVRENNE ISLANDS. Quill Sound.\nChart:       802 (last correction 3/26).\n"
        f"Position:    a) {P}\n             b) {Q}\n             c) {R}\n"
        "Details:     Insert a pier joining a) and b).\n"
        "             Move the buoy from b) to c).\n"
        "             Delete the rocks in a), b) and c).\n"
        "Source:      Harbour office, 3 June 2026.\n"
    )
    bulletin = parse(text)
    pier, move, rocks = bulletin.notices[0].charts[0].actions
    assert [p.iso6709 for p in pier.geometry.positions] == [AT_P, AT_Q]
    assert isinstance(move, Move)
    assert [p.iso6709 for p in move.destination.positions] == [AT_R]
    assert [p.iso6709 for p in rocks.geometry.positions] == [AT_P, AT_Q, AT_R]
    assert bulletin.notices[0].authority == "Harbour office, 3 June 2026"
    assert not errors(bulletin)


def test_a_move_between_numbers_that_stand_below_it() -> None:
    bulletin = parse(f"{HEAD}Move the buoy from (3) to (4):\n(3) {P}\n(4) {Q}\n")
    (move,) = bulletin.notices[0].charts[0].actions
    assert isinstance(move, Move)
    assert [p.iso6709 for p in move.geometry.positions] == [AT_P]
    assert [p.iso6709 for p in move.destination.positions] == [AT_Q]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    ("feature", "shape"),
    [("breakwater", "line"), ("anchorage area", "area"), ("special buoys", "points")],
)
def test_positions_that_keys_count(feature: str, shape: str) -> None:
    keys = "".join(f"Position {n}: {one}\n" for n, one in enumerate((P, Q, R), 1))
    bulletin = parse(f"{HEAD}Action: Insert\nObject: {feature}\n{keys}")
    (action,) = bulletin.notices[0].charts[0].actions
    assert (action.geometry.shape, len(action.geometry.positions)) == (shape, 3)
    assert not [one for one in bulletin.findings if one.severity == "warning"]


def test_numbers_name_items_as_letters_do() -> None:
    body = f"(1) Insert wreck {P}\n(2) Delete rock {Q}\n(3) Insert cable joining (1)-(2) above\n"
    assert told(parse(HEAD + body))[-1] == ("insert", "cable_submarine", [AT_P, AT_Q])
    assert errors(parse(HEAD + body.replace("(1)-(2)", "(1) and (7)"))) == {"letter-unknown"}


class TestHalfBrackets:
    """`1) P` in a list, and `in 1)` in what is told below it."""

    LIST = f"Positions\n  1) {P}\n  2) {Q}\n  3) {R}\nDetails\n"

    def test_numbers_with_half_a_bracket_are_places_of_the_list(self) -> None:
        body = (
            "Insert wreck in 1)\nInsert cable through 1), 2) and 3)\nInsert piles in 2) and 3)\n"
        )
        assert told(parse(HEAD + self.LIST + body)) == [
            ("insert", "wreck", [AT_P]),
            ("insert", "cable_submarine", [AT_P, AT_Q, AT_R]),
            ("insert", "pile", [AT_Q, AT_R]),
        ]

    @pytest.mark.parametrize("words", ["in 1) to 3)", "in positions 1) to 3)", "in 1)-3)"])
    def test_a_range_names_all_between(self, words: str) -> None:
        bulletin = parse(f"{HEAD}{self.LIST}Insert piles {words}\n")
        assert told(bulletin) == [("insert", "pile", [AT_P, AT_Q, AT_R])]

    @pytest.mark.parametrize("mark", ["{})", "{}."])
    def test_the_number_of_an_item_is_no_place_of_the_item_above(self, mark: str) -> None:
        lines = ("Insert wreck in 2)", "Insert rock in 1)", "Delete pile in 3)")
        body = "".join(f"{mark.format(at)} {line}\n" for at, line in enumerate(lines, 1))
        blank = self.LIST.replace("Details\n", "\n")
        assert told(parse(HEAD + blank + body)) == [
            ("insert", "wreck", [AT_Q]), ("insert", "rock", [AT_P]), ("delete", "pile", [AT_R]),
        ]  # fmt: skip

    def test_a_thing_moves_from_one_to_another(self) -> None:
        bulletin = parse(HEAD + self.LIST + "Move mooring buoy from 1) to 2)\nInsert rock in 3)\n")
        move = bulletin.notices[0].charts[0].actions[0]
        assert isinstance(move, Move)
        assert [p.iso6709 for p in move.geometry.positions] == [AT_P]
        assert [p.iso6709 for p in move.destination.positions] == [AT_Q]

    def test_a_list_of_one_place_has_its_title(self) -> None:
        body = f"Position\n  1) {P}\nDetails\nInsert wreck in 1)\n"
        assert told(parse(HEAD + body)) == [("insert", "wreck", [AT_P])]

    @pytest.mark.parametrize("place", [f"  {P}\n", f"  1) {P}\n"])
    def test_commands_below_one_place_are_all_there(self, place: str) -> None:
        bulletin = parse(f"{HEAD}Position\n{place}Details\nInsert wreck\nDelete pile\n")
        assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "pile", [AT_P])]

    def test_a_command_among_other_words_is_reported(self) -> None:
        bulletin = parse(f"{HEAD}Position\n  {P}\nKarra\nInsert wreck\nDelete pile\n")
        assert "verb-within-words" in errors(bulletin)

    def test_a_number_that_the_list_lacks_is_reported(self) -> None:
        bulletin = parse(HEAD + self.LIST + "Insert wreck in 5)\n")
        assert told(bulletin) == []
        assert "letter-unknown" in errors(bulletin)


class TestFirstOfAList:
    """The place in front of a row is the first, and the others stand below it."""

    @pytest.mark.parametrize(
        "words", ["the next position", "the following position", "the one position which follows"]
    )
    def test_this_and_the_next(self, words: str) -> None:
        body = f"{P}  Insert  pier joining this and {words}\n {Q}\n{R}  Insert  pile\n"
        assert told(parse(HEAD + body))[0] == ("insert", "pier", [AT_P, AT_Q])

    def test_this_and_the_two_which_follow(self) -> None:
        rows = f"{P}  Insert  pier joining this and the two positions which follow\n {Q}\n {R}\n"
        bulletin = parse(f"{HEAD}{rows}{Q}  Insert  pile\n")
        assert told(bulletin) == [
            ("insert", "pier", [AT_P, AT_Q, AT_R]), ("insert", "pile", [AT_Q]),
        ]  # fmt: skip
        assert errors(bulletin) == set()

    def test_a_place_behind_a_complete_list_is_not_that_of_the_next_row(self) -> None:
        rows = f"{P}  Insert  pier joining this and the next position\n {Q}\n {R}\n"
        bulletin = parse(f"{HEAD}{rows}{P}  Insert  pile\n")
        assert told(bulletin) == [("insert", "pier", [AT_P, AT_Q])]
        assert "place-of-neighbour" in errors(bulletin)

    def test_a_count_that_differs_is_an_error(self) -> None:
        rows = f"{P}  Insert  pier joining this and the three positions which follow\n {Q}\n {R}\n"
        bulletin = parse(f"{HEAD}{rows}{Q}  Insert  pile\n")
        assert "geometry-not-as-counted" in errors(bulletin) or not told(bulletin)

    @pytest.mark.parametrize("end", ["this position with", "this position and", "this point,"])
    def test_this_position_with_those_below(self, end: str) -> None:
        rows = f"{P}  pier, joining {end}\n{Q}  and\n{R}\n{P}  pile\n"
        bulletin = parse(f"{HEAD}Insert\n{rows}")
        assert told(bulletin) == [
            ("insert", "pier", [AT_P, AT_Q, AT_R]),
            ("insert", "pile", [AT_P]),
        ]
        assert actions_of(bulletin)[0].geometry.shape == "line"
        assert errors(bulletin) == set()

    def test_an_area_begins_at_the_place_in_front(self) -> None:
        rows = f"{P}  anchorage area, bounded by this position,\n{Q}\n{R}\n{P}  pile\n"
        bulletin = parse(f"{HEAD}Delete\n{rows}")
        area, pile = actions_of(bulletin)
        assert (area.geometry.shape, len(area.geometry.positions)) == ("area", 3)
        assert (pile.feature.kind, area.usable, pile.usable) == ("pile", True, True)

    @pytest.mark.parametrize(
        "rows",
        [
            f"{P}  pier, joining this position with\n{Q}  pile\n",
            f"{P}  anchorage area, bounded by this position,\n{Q}\n{R}  pile\n",
            f"{P}  pier, joining this position with the light\n{Q}\n{R}  pile\n",
            f"{P}  pier, joining this position\n{Q}  and this position\n",
        ],
    )
    def test_a_list_that_lacks_places_is_held(self, rows: str) -> None:
        bulletin = parse(f"{HEAD}Insert\n{rows}")
        assert not [one for one in told(bulletin) if one[1] != "pile"]
        assert errors(bulletin)

    def test_a_place_behind_the_last_of_a_list_is_not_that_of_the_next_row(self) -> None:
        rows = f"{P}  pier, joining this position with\n{Q} and\n{R}\n{P}\n{Q}  pile\n"
        bulletin = parse(f"{HEAD}Insert\n{rows}")
        assert told(bulletin) == [("insert", "pier", [AT_P, AT_Q, AT_R])]
        assert "place-of-neighbour" in errors(bulletin)

    @pytest.mark.parametrize(
        ("end", "count"), [("with the following:", 3), ("with the next two", 3), ("with", 3)]
    )
    def test_all_that_it_announces_are_of_the_list(self, end: str, count: int) -> None:
        rows = f"{P}  pier, joining this position {end}\n{Q}\n{R}\n{P}  pile\n"
        bulletin = parse(f"{HEAD}Insert\n{rows}")
        assert [len(places) for *_, places in told(bulletin)] == [count, 1]
        assert errors(bulletin) == set()

    @pytest.mark.parametrize(
        "lead", ["from here to", "joining this position to", "joining this and the next position"]
    )
    def test_more_places_than_it_announces_are_held(self, lead: str) -> None:
        rows = f"{P}  pier, {lead}\n{Q}\n{R}\n{P}  pile\n"
        bulletin = parse(f"{HEAD}Insert\n{rows}")
        assert not [one for one in told(bulletin) if one[1] == "pile"]
        assert "place-of-neighbour" in errors(bulletin)


def test_items_and_their_places_have_each_a_series_of_letters() -> None:
    body = (
        f"A. Insert\n  (i)   cable, joining:   (a) {P}\n                         (b) {Q}\n"
        f"  (ii)  pile, at           (a) above\n"
        f"B. Delete\n  (i)   wreck              (c) {R}\n  (ii)  rock, at  (b) above\n"
    )
    assert "letter-out-of-order" not in {f.code for f in parse(HEAD + body).findings}
    lost = body.replace("(c)", "(e)")
    assert "letter-out-of-order" in {f.code for f in parse(HEAD + lost).findings}
