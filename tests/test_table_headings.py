"""Verbs on lines of their own above and among the rows of a table."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, HEAD, WRECK_AND_ROCK, P, Q, actions_of, errors, told

HEADINGS = {
    "lettered": ("A. Inserted", "B. Deleted"),
    "told": ("A. Objects inserted:", "B. Objects deleted:"),
    "in words": ("Inserted:", "Objects deleted"),
    "commands": ("INSERT", "DELETE"),
}


@pytest.mark.parametrize(("first", "second"), HEADINGS.values(), ids=HEADINGS)
def test_a_verb_among_the_rows_holds_for_those_below(first: str, second: str) -> None:
    titles = "     Object                    Position"
    rows = f"     Wreck                     {P}", f"     Rock                      {Q}"
    bulletin = parse(f"{HEAD}{first}\n{titles}\n{rows[0]}\n{second}\n{rows[1]}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    again = parse(f"{HEAD}{first}\n{titles}\n{rows[0]}\n{second}\n{titles}\n{rows[1]}\n")
    assert told(again) == WRECK_AND_ROCK


def test_columns_from_and_to_end_where_another_verb_stands() -> None:
    bulletin = parse(
        f"{HEAD}A. Moved\n"
        "     Object         From                       To\n"
        f"     Mooring buoy   {P}      {Q}\n"
        f"B. Inserted\n     Wreck          {P}\n"
        f"C. Deleted\n     Rock           {Q}\n"
    )
    move, *others = actions_of(bulletin)
    assert isinstance(move, Move)
    assert move.destination is not None
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert told(bulletin)[1:] == WRECK_AND_ROCK
    assert len(others) == 2
    assert told(bulletin)[0] == ("move", "buoy_mooring", [AT_P])
    assert not errors(bulletin)
