"""Second items in one row, and numbers of items that do not run on."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_R, HEAD, P, Q, R, codes, errors, told

COLUMNS = "Notice | Chart | Action | Object | Position\n"


@pytest.mark.parametrize("second", [f"; delete rock {Q}", f"; insert rock - {Q}", f"; rock - {Q}"])
def test_a_second_item_in_the_cell_of_a_place(second: str) -> None:
    row, plain = f"33/26 | 503 | insert | wreck | {P}", f"33/26 | 503 | insert | pile | {R}\n"
    bulletin = parse(f"{COLUMNS}{row}{second}\n{plain}")
    assert told(bulletin) == [("insert", "pile", [AT_R])]
    assert errors(bulletin) & {"verb-within-words", "cell-misplaced"}
    assert errors(parse(f"{COLUMNS}{row}\n{plain}")) == set()


def test_a_second_item_in_a_row_of_columns() -> None:
    text = (
        "240/26  Sound of Orm.  Chart 56, last notice 231/26.\n"
        "         OBJECT                OLD POSITION            NEW POSITION\n"
        f"INSERT   danger buoy           -                       {P}; INSERT  wreck   -    {Q}\n"
        f"DELETE   mooring buoy          {R}    -\n"
    )
    bulletin = parse(text)
    assert [verb for verb, _, _ in told(bulletin)] == ["delete"]
    assert "verb-within-words" in errors(bulletin)


@pytest.mark.parametrize(
    ("first", "second", "is_told"),
    [
        ("1.", "2.", False),
        ("1.", "3.", True),
        ("(1)", "(2)", False),
        ("(1)", "(3)", True),
        ("2)", "3)", True),
        ("  30.1 ", "  30.2 ", False),
        ("  30.1 ", "  30.3 ", True),
        ("  30.2 ", "  30.3 ", True),
    ],
)
def test_numbers_of_items_that_do_not_run_on(first: str, second: str, is_told: bool) -> None:
    bulletin = parse(f"{HEAD}{first} Insert wreck {P}\n{second} Delete rock {Q}\n")
    assert [verb for verb, _, _ in told(bulletin)] == ["insert", "delete"]
    assert ("letter-out-of-order" in codes(bulletin)) == is_told


def test_the_first_number_may_stand_before_a_sentence() -> None:
    body = f"1. Vessels keep clear.\n2. Insert wreck {P}\n3. Delete rock {Q}\n"
    assert "letter-out-of-order" not in codes(parse(HEAD + body))
