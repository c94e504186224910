"""What headings and sentences tell of the end of notices: their own, and those of others."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q

BODY = f"Chart 904 [588/26]\nInsert wreck {P}\n"


@pytest.mark.parametrize(
    "head",
    [
        "598/26 Corvane Sound - THIS NOTICE IS CANCELLED",
        "598/26 Corvane Sound (cancelled by 613/26)",
        "598/26 (withdrawn)",
        "598/26 Corvane Sound - Withdrawn",
    ],
)
def test_notice_that_tells_its_own_end_is_held_back(head: str) -> None:
    bulletin = parse(f"{head}\n{BODY}")
    (notice,) = bulletin.notices
    assert [action.usable for chart in notice.charts for action in chart.actions] == [False]
    assert "verb-limited-beside" in {one.code for one in bulletin.findings}


@pytest.mark.parametrize(
    "heading", ["Wreck cancelled from chart 12", "Cancelled Bank - Wreck", "Withdrawn buoys"]
)
def test_other_words_of_an_end_hold_nothing_back(heading: str) -> None:
    (notice,) = parse(f"598/26 Corvane Sound - {heading}\n{BODY}").notices
    assert [a.usable for chart in notice.charts if chart.actions for a in chart.actions] == [True]


@pytest.mark.parametrize("words", ["is cancelled", "is withdrawn", "cancelled", "withdrawn"])
def test_end_above_all_notices_is_told(words: str) -> None:
    bulletin = parse(f"Notice 598/26 {words}.\n{BODY}")
    (warning,) = [one for one in bulletin.findings if one.severity == "warning"]
    assert (warning.code, "598/26" in warning.message) == ("text-unread", True)


@pytest.mark.parametrize(
    ("line", "numbers"),
    [
        ("Cancels notices 598 to 601(T)/26", [598, 599, 600, 601]),
        ("Cancels 598(T)/26 to 601(T)/26", [598, 599, 600, 601]),
    ],
)
def test_range_shares_year_and_mark(line: str, numbers: list[int]) -> None:
    (notice,) = parse(f"613/26 Corvane Sound\n{line}\n{BODY}").notices
    assert [(one.number, one.status) for one in notice.cancels] == [
        (number, "temporary") for number in numbers
    ]


def test_radio_warnings_are_no_notices_of_charts() -> None:
    text = f"613/26 Corvane Sound\n{BODY}Coastal Warnings 40/26 and 41/26 are cancelled.\n"
    (notice,) = parse(text).notices
    assert [(one.number, one.status) for one in notice.cancels] == [
        (40, "radio_warning"),
        (41, "radio_warning"),
    ]


@pytest.mark.parametrize(
    "line",
    [
        "Notice 598(T)/26 para 2 is cancelled.",
        "Notice 598(T)/26, item (b), is cancelled.",
        "This notice cancels 598(T)/26, save that para 2 stays in force.",
        "This notice cancels 598(T)/26 except for the buoy.",
    ],
)
def test_end_of_a_part_is_told(line: str) -> None:
    bulletin = parse(f"613/26 Corvane Sound\n{line}\n{BODY}")
    assert [one.id for one in bulletin.notices] == ["613/26"]
    assert "cancellation-unread" in {one.code for one in bulletin.findings}


def test_end_in_the_heading_is_read() -> None:
    (notice,) = parse(f"614/26 (replaces 598/26, which is cancelled)\n{BODY}").notices
    assert [one.number for one in notice.cancels] == [598]


@pytest.mark.parametrize(
    "lines",
    [
        f"Delete: Insert wreck {P}\nInsert: Insert rock {Q}\n",
        f"Incorrect: Insert wreck {P}\nCorrect: Insert wreck {Q}\n",
        f"Wrong: insert wreck {P}\n",
    ],
)
def test_command_that_is_quoted_is_held_back(lines: str) -> None:
    (notice,) = parse(f"613/26 Corvane Sound\nChart 904 [588/26]\n{lines}").notices
    assert not [one for chart in notice.charts for one in chart.actions if one.usable]
