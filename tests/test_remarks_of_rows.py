"""What stands in the column or key of remarks and is said of the thing of the row."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, actions_of, errors, usable_of

TABLES = {
    "bars": f"Action | Object | Remarks | Position\nInsert | rock 0.4m | {{}} | {P}\n",
    "blanks": (
        "Action   Object       Position                  Remarks\n"
        f"Insert   rock 0.4m    {P}     {{}}\n"
    ),
    "keys": f"Object: rock 0.4m\nAction: Insert\nRemarks: {{}}\nPosition: {P}\n",
}


@pytest.mark.parametrize("layout", TABLES)
@pytest.mark.parametrize(
    "said", ["drying", "dries", "red", "chart 803 only", "in fathoms", "2.5m", "not 803"]
)
def test_what_makes_another_thing_of_it_holds_the_row_back(layout: str, said: str) -> None:
    bulletin = parse(HEAD + TABLES[layout].format(said))
    assert usable_of(bulletin) == []
    assert "cell-tells-more" in errors(bulletin)


@pytest.mark.parametrize("layout", TABLES)
@pytest.mark.parametrize("said", ["reported by the pilots", "survey of 2024", "see photograph"])
def test_other_remarks_hold_nothing_back(layout: str, said: str) -> None:
    assert usable_of(parse(HEAD + TABLES[layout].format(said))) == [("insert", "rock")]


@pytest.mark.parametrize("layout", ["bars", "blanks"])
def test_a_mark_of_quality_among_the_remarks_is_that_of_the_place(layout: str) -> None:
    bulletin = parse(HEAD + TABLES[layout].format("PA"))
    (action,) = actions_of(bulletin)
    assert action.usable
    assert [one.quality for one in action.geometry.positions] == ["approximate"]


def test_the_other_rows_stay() -> None:
    rows = TABLES["bars"].format("drying") + f"Insert | wreck | | {Q}\n"
    assert usable_of(parse(HEAD + rows)) == [("insert", "wreck")]
