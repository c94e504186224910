"""What stands below the items of a notice: the notices before, and books to correct."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, P, Q, told

ITEMS = f"Charts 802 and 803\nInsert wreck {P}\nChart 802\nDelete rock {Q}\n"


@pytest.mark.parametrize(
    "line",
    [
        "Preceding notices: chart 802, 30/26; chart 803, 31/26.",
        "Previous notices: 802 - 30/26, 803 - 31/26",
        "Last corrections: 802 (30/26), 803 (31/26)",
        "Former notices: chart 802: 30/2026 and chart 803: 31/2026.",
    ],
)
def test_the_notices_before_stand_below_the_items(line: str) -> None:
    text = (
        f"40/26\nQuill Sound.\n{ITEMS}{line}\n\n41/26\nQuill Sound.\nChart 804\nInsert pile {P}\n"
    )
    bulletin = parse(text)
    first, second = bulletin.notices
    read = {one.chart: one.previous and one.previous.number for one in first.charts}
    assert read == {"802": 30, "803": 31}
    assert [one.previous for one in second.charts] == [None]
    assert [one.severity for one in bulletin.findings if one.severity != "info"] == []


@pytest.mark.parametrize(
    "line",
    [
        "List of Lights: No. 88.4, Quill Point, to be amended accordingly.",
        "Book of the lights: number 3310 is to be corrected.",
        'Sailing Directions: page 112, line 20, for "no dangers" read "a wreck".',
        "Light List, Vol. 2, No. 4410 to be altered.",
        'Chapter 4, page 77: delete "fuel is available at the wharf".',
        "Item 28(T)/26 is canceled.",
    ],
)
@pytest.mark.parametrize("behind", ["", "Notice No. 28(T) of 2026 is cancelled.\n"])
def test_what_is_to_be_done_in_a_book_is_no_action(behind: str, line: str) -> None:
    text = f"40/26\nQuill Sound.\nChart 802 [3/26]\nInsert wreck {P}\n{behind}{line}\n"
    bulletin = parse(text)
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert [one.severity for one in bulletin.findings if one.severity != "info"] == []


def test_the_sheet_of_a_survey_is_no_chart() -> None:
    head = "40/26\nQuill Sound.\nAuthority: Survey launch Petrel, field sheet 88.\n"
    (notice,) = parse(f"{head}Chart 802 [3/26]\nInsert wreck {P}\n").notices
    assert [one.chart for one in notice.charts] == ["802"]


def test_a_cable_between_places_runs_from_one_to_the_other() -> None:
    text = f"40/26\nQuill Sound.\nChart 802 [3/26]\nInsert submarine cable between {P} and {Q}\n"
    (action,) = parse(text).notices[0].charts[0].actions
    assert (action.geometry.shape, action.geometry.relation) == ("line", "joining")
    assert action.usable
