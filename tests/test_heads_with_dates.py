"""Heads of notices in which days, other notices and their marks stand beside the own number."""

from __future__ import annotations

import pytest

from noticeparse import parse

_BODY = "\nChart 904 [588/26]\nInsert wreck 47-12.34S 123-45.67W\n"

OWN = [
    # The mark of a notice that is cancelled.
    ("613/26 Corvane Sound. Cancels 402(T)/24 and 17(P).", "613/26"),
    ("613/26 Corvane Sound. Cancels 402/24 and 17 (T).", "613/26"),
    # The days of a period are no number of a notice.
    ("613(T)/26 Corvane Sound - Lights. 12/05 - 03/06/2026.", "613(T)/26"),
    ("613(T)/26 Corvane Sound - Buoy\n12/05 to 03/06/2026", "613(T)/26"),
    ("No. 613 of 26. CORVANE SOUND", "613/26"),
    ("No. 613 (T) of 26. CORVANE SOUND", "613(T)/26"),
    # The own mark, also behind the number of a buoy.
    ("613/26 Corvane Sound - Buoy No 7 (T)", "613(T)/26"),
    ("613/26 Corvane Sound - Works (P)", "613(P)/26"),
]


@pytest.mark.parametrize(("head", "number"), OWN)
def test_own_number(head: str, number: str) -> None:
    notices = parse(head + _BODY).notices
    assert [notice.id for notice in notices] == [number]
    assert [len(section.actions) for section in notices[0].charts] == [1]


def test_edition_with_a_short_year_is_no_notice() -> None:
    assert [one.id for one in parse(f"No. 22 of 26\n\n613/26 Quill Sound{_BODY}").notices] == [
        "613/26"
    ]


@pytest.mark.parametrize(
    ("head", "below"),
    [
        ("613/26 Corvane Sound (replaces 588(T)/25)", ""),
        ("613/26 Corvane Sound (this notice replaces NM 588(T)/25)", ""),
        ("613/26 Corvane Sound", "NM 588/25 (T) is hereby cancelled and replaced by this notice."),
        ("613/26 Corvane Sound", "Notice 588(T)/25 is cancelled and superseded."),
    ],
)
def test_cancelled(head: str, below: str) -> None:
    (notice,) = parse(head + _BODY + below).notices
    told = [(one.number, one.status, one.year) for one in notice.cancels]
    assert told == [(588, "temporary", 2025)]
    assert notice.charts[0].actions[0].feature.text == "wreck"


@pytest.mark.parametrize(
    ("head", "until"),
    [
        ("613(T)/26 Corvane Sound. Valid until: 3 June 2026. Chart: 904.", "2026-06-03"),
        ("613(T)/26 Corvane Sound - Works until 3 June 2026", "2026-06-03"),
    ],
)
def test_time_told_in_the_heading(head: str, until: str) -> None:
    (notice,) = parse(head + _BODY).notices
    assert notice.valid is not None
    assert notice.valid.until == until


def test_figures_in_the_heading_are_told() -> None:
    bulletin = parse("613(T)/26 Corvane Sound (until 30.11.2026)" + _BODY)
    assert bulletin.notices[0].valid is None
    assert "validity-unread" in {finding.code for finding in bulletin.findings}


def test_a_line_may_end_within_the_words_that_cancel() -> None:
    text = (
        "Notice 19/26. The breakwater.\n\nThe light has moved. Notice 9(T)/26 is hereby\n"
        "cancelled. On chart 72 (last corrected by notice 16/26) masters are to insert a wreck\n"
        "in 46-00.00S 122-00.00W.\n"
    )
    (notice,) = parse(text).notices
    assert [(one.number, one.status) for one in notice.cancels] == [(9, "temporary")]
