"""Numbers of notices with the year in front: `2026/71`, in texts that state no year."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q

TABLE = """\
notice,chart,previous,feature,latitude,longitude,action
2026/71,TV12,2026/63,wreck,-46.51233,-122.80450,insert
2026/71,TV12,2026/63,rock,-46.51417,-122.79883,delete
2026/72,TV15,2025/8,rock,-46.49800,-122.83217,delete
"""


def test_the_column_of_a_table() -> None:
    bulletin = parse(TABLE)
    assert [notice.id for notice in bulletin.notices] == ["71/26", "72/26"]
    before = [notice.charts[0].previous for notice in bulletin.notices]
    assert [(one.number, one.year) for one in before if one] == [(63, 2026), (8, 2025)]


@pytest.mark.parametrize("number", [3, 24, 26, 71, 101])
def test_small_numbers_that_could_be_years(number: int) -> None:
    text = (
        f"2026/{number} Sarn\nChart 18 [2026/2] WGS84\nInsert wreck {P}\n"
        f"2026/{number + 1} Sarn. Cancels 2026/1.\n"
        f"Chart 18 [2026/{number}] WGS84\nDelete rock {Q}\n"
    )
    first, second = parse(text).notices
    assert (first.id, second.id) == (f"{number}/26", f"{number + 1}/26")
    assert [(one.number, one.year) for one in second.cancels] == [(1, 2026)]
    before = second.charts[0].previous
    assert before is not None
    assert (before.number, before.year) == (number, 2026)


def test_numbers_beyond_two_thousand_have_their_year_behind() -> None:
    text = (
        f"2026/24 Sarn\nChart 18 [2019/24] WGS84\nInsert wreck {P}\n"
        f"2027/24 Sarn\nChart 19 [1999/24] WGS84\nDelete rock {Q}\n"
    )
    assert [notice.id for notice in parse(text).notices] == ["2026/24", "2027/24"]


def test_that_years_stand_in_front_is_told_and_the_words_stay_as_written() -> None:
    bulletin = parse(f"2026/71 Sarn\nChart 18 [2026/44] WGS84\nInsert wreck {P}\n")
    (notice,) = bulletin.notices
    assert (notice.id, notice.charts[0].previous_written) == ("71/26", "2026/44")
    (finding,) = bulletin.findings
    assert (finding.code, finding.severity) == ("notice-year-in-front", "info")
    assert (finding.span.start, finding.span.end) == (0, len("2026/71"))


def test_numbers_that_are_years_both_ways_are_doubtful() -> None:
    bulletin = parse(f"2025/26 Sarn\nChart 18 [2024/25] WGS84\nInsert wreck {P}\n")
    assert [one.code for one in bulletin.findings] == ["notice-year-doubtful"]


def test_one_number_told_twice_does_not_tell_where_its_year_stands() -> None:
    text = f"2026/71 Sarn\nChart 18\nInsert wreck {P}\nDelete rock {Q} (2026/71)\n"
    assert [notice.id for notice in parse(text).notices] == ["2026/71"]
