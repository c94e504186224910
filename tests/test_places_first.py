"""Places that stand before what is told of them: above statements, or as letters of a list."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told


class TestPlacesAboveStatements:
    """`At P`, and below it the statements that hold for that place."""

    def test_every_statement_is_an_item_at_the_place_above(self) -> None:
        text = (
            f"{HEAD}\nAt {P}\n   a wreck, least depth 19.2 metres, is inserted\n"
            f"   the rock is deleted\nAt {Q}\n   a rock is inserted\n"
        )
        assert told(parse(text)) == [
            ("insert", "wreck_least_depth", [AT_P]),
            ("delete", "rock", [AT_P]),
            ("insert", "rock", [AT_Q]),
        ]  # fmt: skip

    def test_a_move_has_both_its_places_above(self) -> None:
        moved = f"From {P} to {Q}\n   the special buoy is moved\n"
        text = f"{HEAD}\n{moved}At {R}\n   a rock is inserted\n"
        bulletin = parse(text)
        move = actions_of(bulletin)[0]
        assert isinstance(move, Move)
        assert [one.iso6709 for one in move.geometry.positions] == [AT_P]
        assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
        assert not errors(bulletin)

    @pytest.mark.parametrize(
        ("head", "statement", "shape", "relation"),
        [
            (f"Along {P}, {Q}\nand {R}", "a submarine pipeline is inserted", "line", "joining"),
            (f"Within {P}, {Q}\nand {R}", "a marine farm is inserted", "area", "within"),
            (f"Close N of {P}", "a rock is inserted", "point", "close"),
            (f"Between {P} and {Q}", "a cable is laid across the\n   channel", "points", "between"),
        ],
    )  # fmt: skip
    def test_the_words_before_the_places_tell_how_it_lies(
        self, head: str, statement: str, shape: str, relation: str
    ) -> None:
        bulletin = parse(f"{HEAD}\n{head}\n   {statement}\n")
        (action,) = actions_of(bulletin)
        assert (action.geometry.shape, action.geometry.relation) == (shape, relation)

    def test_commands_below_a_place_are_items_too(self) -> None:
        text = f"{HEAD}\nAt {P}:\n   Insert a wreck.\n   Delete the rock.\n"
        assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_P])]

    @pytest.mark.parametrize("words", ["The wreck was to be removed.", "No change."])
    def test_what_tells_of_no_change_keeps_its_place_as_a_remark(self, words: str) -> None:
        bulletin = parse(f"{HEAD}\nAt {P}\n   a rock is inserted\nAt {Q}\n   {words}\n")
        assert told(bulletin) == [("insert", "rock", [AT_P])]
        remarks = bulletin.notices[0].remarks
        assert [p.iso6709 for remark in remarks for p in remark.positions] == [AT_Q]


class TestLettersFirst:
    """Rows with a letter and a place in front, and rows that take letters given above."""

    BUOYS = f"(a)  {P}.    rock, least depth 3 m\n  (b)  {Q}.    wreck\n"

    @pytest.mark.parametrize(
        ("row", "shape", "relation", "places"),
        [
            ("At (b) above              special buoy", "point", "at", [AT_Q]),
            ("At (a) and (b) above      special buoy", "points", "at", [AT_P, AT_Q]),
            ("(a) and (b) above         special buoy", "points", "at", [AT_P, AT_Q]),
            ("Between (a) and (b) above   pile", "points", "between", [AT_P, AT_Q]),
            ("Close W of (a) above      depth 9 m", "point", "close", [AT_P]),
        ],
    )
    def test_a_row_of_letters_is_an_item_of_its_own(
        self, row: str, shape: str, relation: str, places: list[str]
    ) -> None:
        bulletin = parse(f"{HEAD}Insert\n  {self.BUOYS}  {row}\n  (c)  {R}.    beacon\n")
        actions = actions_of(bulletin)
        assert len(actions) == 4
        assert [p.iso6709 for p in actions[2].geometry.positions] == places
        assert (actions[2].geometry.shape, actions[2].geometry.relation) == (shape, relation)
        assert not errors(bulletin)

    @pytest.mark.parametrize("words", ["restricted area, bounded by", "submarine cable, joining"])
    def test_corners_below_belong_to_the_item_that_names_them(self, words: str) -> None:
        text = (
            f"{HEAD}Insert\n  (a)  {P}.    {words} (a), (b) and (c)\n"
            f"  (b)  {Q}.\n  (c)  {R}.\n  At (b) above           beacon\n"
        )
        bulletin = parse(text)
        assert [at for _, _, at in told(bulletin)] == [[AT_P, AT_Q, AT_R], [AT_Q]]
        assert not errors(bulletin)
