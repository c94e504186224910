"""Rows of a list by chart that open with the date of their notice and end in its number."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, codes, errors, told, usable_of

HEAD = "CORRECTIONS BY CHART, FIRST QUARTER OF 2026\n\nCHART 5104   Callisand Sound   1:25 000\n"
DATES = (
    "12 Jan  |12 Jan: |12 Jan - |12 Jan. |12-Jan-26  |12 January 2026  |Jan 12  "
    "|January 12, 2026  |2026-01-12  |12.1.  |12.01.2026  |12/01/2026  "
)


@pytest.mark.parametrize("date", DATES.split("|"))
def test_the_date_is_no_word_of_the_row_above(date: str) -> None:
    bulletin = parse(
        f"{HEAD}{date}Insert depth 7.2 m in {P} . . . . . 14/26\n"
        f"{date}Delete rock in {Q} . . . . . 14/26\n"
        f"{date}Delete wreck in {R} . . . . . 15/26\n"
    )
    assert told(bulletin) == [
        ("insert", "sounding", [AT_P]),
        ("delete", "rock", [AT_Q]),
        ("delete", "wreck", [AT_R]),
    ]
    assert [one.id for one in bulletin.notices] == ["14/26", "15/26"]
    assert not codes(bulletin)


def test_what_is_no_date_stays_with_the_row() -> None:
    for words in ("12/1", "3 Marks", "May Queen"):
        rows = (
            f"Insert wreck in {P} . . . . . 14/26\n{words}  Delete rock in {Q} . . . . . 14/26\n"
        )
        bulletin = parse(f"{HEAD}{rows}")
        assert codes(bulletin) or len(usable_of(bulletin)) < 2, words


def test_a_date_without_the_number_of_a_notice_is_not_left_out() -> None:
    rows = f"Insert wreck in {P}\n12 Jan  Delete rock in {Q}\n"
    bulletin = parse(f"14/26 Quill Sound.\nChart 802 [3/26] WGS84\n{rows}")
    assert errors(bulletin) or codes(bulletin)


@pytest.mark.parametrize(
    "foot",
    [
        "Charts 5100 and 5110: no corrections in this quarter.",
        "Chart 5100: no corrections.",
        "Charts 5100, 5110 had no changes.",
    ],
)
def test_charts_without_corrections_are_told_and_need_no_look(foot: str) -> None:
    bulletin = parse(f"{HEAD}12 Jan  Insert depth 7.2 m in {P} . . . . . 14/26\n\n{foot}\n")
    assert told(bulletin) == [("insert", "sounding", [AT_P])]
    assert not codes(bulletin)
