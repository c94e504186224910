"""A log of a station: the day before the head of each entry, and what closes the sheet."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, P, Q, errors, told

DAYS = [
    "Tue 11 Aug 0650   Entry",
    "14 August 2026, 1015: Entry",
    "01.08.26 06:15  Entry no.",
    "0615 Sat 1 Aug - entry",
    "Fri 14 Aug 1700 Notice",
    "Tuesday 11th August, 0650 h. Entry",
    "2026-08-11 0650 | Entry",
]


@pytest.mark.parametrize("day", DAYS)
def test_the_day_stands_before_the_head_of_an_entry(day: str) -> None:
    text = (
        "PILOT STATION\nLog of chart changes, August 2026.\n\n"
        f"{day} 61/26   Chart 66, after 55/26. Outer bar.\n    laid    wreck    {P}\n"
        f"{day} 62(T)/26   No chart. Boarding.\n    The cutter keeps VHF 9.\n"
        f"{day} 63/26   Chart 66, after 61/26. Entry 60(T)/26 cancelled.\n    lifted  rock  {Q}\n"
    )
    bulletin = parse(text)
    assert [notice.id for notice in bulletin.notices] == ["61/26", "62(T)/26", "63/26"]
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert [ref.number for ref in bulletin.notices[2].cancels] == [60]
    assert not errors(bulletin)


def test_a_day_in_a_sentence_opens_no_notice() -> None:
    text = (
        f"41(T)/26 Quill Sound.\nChart 802\nThe works in {P} began on\n"
        "14 August 2026. Notice 40/26 refers to them.\n"
    )
    assert [notice.id for notice in parse(text).notices] == ["41(T)/26"]


ENTRY = "61/26   Chart 66, after 55/26. Outer bar.\n"


def test_what_stands_left_of_the_commands_closes_the_sheet() -> None:
    closes = "Sheet closed 14 Aug 1800, J. Amory.\n"
    bulletin = parse(f'{ENTRY}    changed   legend "Works" to "Ferry"   {P}\n{closes}')
    assert told(bulletin) == [("amend", "legend", [AT_P])]
    assert [remark.text for remark in bulletin.notices[0].remarks][-1:] == [closes.strip()]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "line", ["Until 1 May 2027.", f"Rock {Q}", "Red buoy also.", "and its topmark."]
)
def test_a_condition_or_a_feature_there_is_no_remark(line: str) -> None:
    bulletin = parse(f"{ENTRY}    laid    wreck    {P}\n{line}\n")
    assert all(line not in remark.text for remark in bulletin.notices[0].remarks)
