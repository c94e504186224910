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
            (f"Between {P} and {Q}", "a pile is placed in the\n   channel", "points", "between"),
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


class TestLettersOfAList:
    """A list gives letters to positions, and the lines below tell what is done at them."""

    @pytest.mark.parametrize(
        "listed",
        [
            f"Positions: A {P}; B {Q}; C {R}.",
            f"Positions: A {P};\n   B {Q};\n   C {R}.",
            f"  A  {P}\n  B  {Q}\n  C  {R}",
            f"(A) {P}, (B) {Q}, (C) {R}",
            f"The following positions are A = {P}, B = {Q} and C = {R}.",
        ],
    )
    @pytest.mark.parametrize(
        ("line", "verb", "places"),
        [
            ("(1) At A: insert rock.", "insert", [AT_P]),
            ("A   Insert rock.", "insert", [AT_P]),
            ("At C insert a rock.", "insert", [AT_R]),
            ("Insert rock at B.", "insert", [AT_Q]),
            ("A, B and C: insert rocks.", "insert", [AT_P, AT_Q, AT_R]),
            ("Joining A to C: insert submarine cable.", "insert", [AT_P, AT_Q, AT_R]),
            ("Delete the light F at B.", "delete", [AT_Q]),
            ("A rock has been found in B.", "insert", [AT_Q]),
        ],
    )
    def test_letters_stand_for_their_places(
        self, listed: str, line: str, verb: str, places: list[str]
    ) -> None:
        others = "Delete piles at A, B and C." if line[0] in "DI" else "A, B and C: delete piles."
        bulletin = parse(f"{HEAD}{listed}\n{line}\n{others}\n")
        if "has been" in line:
            bulletin = parse(f"{HEAD}{listed}\n{line} The pile in A and C has been removed.\n")
        read = told(bulletin)
        assert (read[0][0], read[0][2]) == (verb, places)
        assert not errors(bulletin)

    def test_moves_from_letter_to_letter(self) -> None:
        text = (
            f"{HEAD}Positions: A {P}; B {Q}; C {R}.\n"
            "(1) From A to B: move special buoy.\n(2) From B to C: move spar buoy.\n"
        )
        moves = [one for one in actions_of(parse(text)) if isinstance(one, Move)]
        ends = [(one.geometry.positions, one.destination.positions) for one in moves]
        written = [[one.iso6709 for one in (*old, *new)] for old, new in ends]
        assert written == [[AT_P, AT_Q], [AT_Q, AT_R]]

    def test_a_hemisphere_as_letter(self) -> None:
        text = f"{HEAD}Positions: D {P}; E {Q};\nS {R}.\nThrough D, E and S: insert pipeline.\n"
        assert [at for _, _, at in told(parse(text))] == [[AT_P, AT_Q, AT_R]]

    def test_the_fault_of_a_listed_place_is_told_where_it_stands(self) -> None:
        listed = f"Positions: A {P}; B 46-54.152 122-15.131W; C {R}."
        bulletin = parse(f"{HEAD}{listed}\nAt A and C: insert rock.\nAt B: insert wreck.\n")
        assert told(bulletin) == [("insert", "rock", [AT_P, AT_R])]
        assert {f.span.line for f in bulletin.findings if f.severity == "error" and f.span} == {3}

    def test_a_letter_that_no_list_gives_is_told(self) -> None:
        bulletin = parse(
            f"{HEAD}Positions: A {P}; B {Q}.\nA and B: insert rock.\nAt J: insert wreck.\n"
        )
        assert told(bulletin) == [("insert", "rock", [AT_P, AT_Q])]
        assert errors(bulletin) == {"letter-unknown"}

    def test_a_letter_of_which_nothing_is_told_is_no_action(self) -> None:
        bulletin = parse(f"{HEAD}Positions: A {P}; B {Q}.\nAt A: insert rock.\n")
        assert errors(bulletin) == {"item-without-verb"}


@pytest.mark.parametrize(
    ("word", "verb"),
    [
        ("Laid", "insert"), ("Relaid", "insert"), ("Built", "insert"), ("Found", "insert"),
        ("Installed", "insert"), ("Erected", "insert"), ("Discovered", "insert"),
        ("Recovered", "delete"), ("Dismantled", "delete"), ("Taken up", "delete"),
        ("Struck out", "delete"),
    ],
)  # fmt: skip
def test_what_was_done_stands_in_the_column_of_the_verbs(word: str, verb: str) -> None:
    text = f"{HEAD}{word:14}{P}   pile\nInserted      {Q}   wreck\n"
    bulletin = parse(text)
    assert told(bulletin) == [(verb, "pile", [AT_P]), ("insert", "wreck", [AT_Q])]


class TestListsWithAThingBehind:
    """`joining P, Q and R   cable`, below rows of one place each."""

    def test_the_list_is_of_the_thing_behind_it(self) -> None:
        rows = f"INSERT\n  {P}   rock\n  joining {Q} and {R}   submarine cable\n"
        bulletin = parse(HEAD + rows)
        assert told(bulletin) == [
            ("insert", "rock", [AT_P]),
            ("insert", "cable_submarine", [AT_Q, AT_R]),
        ]
        assert errors(bulletin) == set()

    def test_a_list_without_one_goes_on_with_the_item_above(self) -> None:
        rows = f"INSERT\n  {P}   submarine cable\n  joining {Q}\n  {R}   rock\n"
        assert ("insert", "cable_submarine", [AT_Q]) not in told(parse(HEAD + rows))


@pytest.mark.parametrize("lost", ["Establish .", "Establish", "Delete"])
def test_a_verb_with_nothing_to_it_leaves_its_place_alone(lost: str) -> None:
    text = f"{HEAD}{P}\n    {lost}\n{Q}\n    Establish starboard-hand light-beacon, Fl.G.4s.\n"
    bulletin = parse(text)
    assert told(bulletin) == [("insert", "beacon_lateral_starboard", [AT_Q])]
    assert errors(bulletin) == {"item-without-feature"}


def test_places_with_their_words_behind_the_verb_stay_whole() -> None:
    text = f"{HEAD}{P}\n{Q}\n    Delete wreck.\n{R}\n    Establish rock.\n"
    assert told(parse(text)) == [
        ("delete", "wreck", [AT_P, AT_Q]),
        ("insert", "rock", [AT_R]),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Move     buoy, from this position", "to this position"),
        ("Move     buoy from this place", "to this place"),
        ("Shift    buoy from this point", "to this point."),
        ("Move     buoy from here", "to here"),
        ("Move     buoy, from old position", "to new position"),
        ("Move     buoy", "to the new position"),
        ("Move     buoy", "to this position"),
        ("Move     buoy from this position", "and to this position"),
    ],
)
def test_the_new_place_stands_before_to_this_position(first: str, second: str) -> None:
    rows = f"  {R}   Insert   wreck\n  {P}   {first}\n  {Q}            {second}\n"
    bulletin = parse(f"{HEAD}{rows}  {R}   Delete   rock\n")
    assert told(bulletin) == [
        ("insert", "wreck", [AT_R]),
        ("move", "buoy_generic", [AT_P]),
        ("delete", "rock", [AT_R]),
    ]
    (action,) = [one for one in actions_of(bulletin) if isinstance(one, Move)]
    assert [one.iso6709 for one in action.destination.positions] == [AT_Q]
    assert not errors(bulletin)


def test_no_new_place_under_a_verb_that_moves_nothing() -> None:
    rows = f"  {P}   Insert   buoy\n  {Q}            to this position\n  {R}   Delete   rock\n"
    bulletin = parse(HEAD + rows)
    assert errors(bulletin) == {"places-of-a-move"}
    assert told(bulletin) == [("insert", "buoy_generic", [AT_P])]
