"""Charts side by side, each with its own column of positions, for one list of items."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import actions_of, errors

HEAD = """\
2207/26   Sable Tooth Rocks - Wreck. Depths.

                                 {one}        {two}
                                 last notice 2161/26         last notice 2090/26
"""
HEADS = HEAD.format(one="Chart 512 (INT 9512)", two="Chart 518")
BOTH = "Insert   wreck                   47°11.24'S 123°40.18'W      47°11.2'S 123°40.2'W\n"
FIRST = "         rock                    47°11.52'S 123°40.66'W      -\n"
SECOND = "Delete   pile                    -                           47°11.3'S 123°40.1'W\n"


@pytest.mark.parametrize(
    "rows", [BOTH, BOTH + FIRST, "Insert" + FIRST[6:], SECOND, FIRST + SECOND]
)
def test_no_item_below_is_of_both_charts_at_all_its_places(rows: str) -> None:
    bulletin = parse(HEADS + rows)
    assert actions_of(bulletin)
    assert not any(one.usable for one in actions_of(bulletin))
    assert errors(bulletin)


def test_one_column_of_positions_is_for_both_charts() -> None:
    rows = (
        "Insert   wreck                   47°11.24'S 123°40.18'W\n"
        "         restricted area, bounded by   47°11.00'S 123°40.00'W, 47°11.00'S 123°41.00'W,\n"
        "                                 47°12.00'S 123°41.00'W\n"
    )
    bulletin = parse(HEADS + rows)
    assert [one.usable for one in actions_of(bulletin)] == [True] * 4
    assert {chart.chart for chart in bulletin.notices[0].charts} == {"512", "518"}
