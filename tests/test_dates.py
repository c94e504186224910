"""Dates and the time for which a notice holds; one in doubt is never without a finding."""

from __future__ import annotations

import pytest

from noticeparse.readers.clauses import read_clauses
from noticeparse.readers.dates import full_year

PERIODS = [
    ("from 8 to 2026-07-26", "2026-07-08", "2026-07-26"),
    ("from 8 to June 26, 2026", "2026-06-08", "2026-06-26"),
    ("from 8 June to 2026-07-26", "2026-06-08", "2026-07-26"),
    ("from 8 to 26 June", "2026-06-08", "2026-06-26"),
    # The turn of a year between the two.
    ("from 28 December to 3 January 2027", "2026-12-28", "2027-01-03"),
    ("from 28 December 2026 to 3 January", "2026-12-28", "2027-01-03"),
    # With hours, whose time is not told; behind titles; as a line of its own.
    ("Valid from 0800 on 3 June 2026 until 1800 on 7 June 2026.", "2026-06-03", "2026-06-07"),
    ("from 0800 hours on 3 June until 18:00 hrs on 7 June 2026", "2026-06-03", "2026-06-07"),
    ("Start date: 12 May 2026. End date: 3 June 2026.", "2026-05-12", "2026-06-03"),
    ("From: 12 May 2026\nTo: 3 June 2026", "2026-05-12", "2026-06-03"),
    ("Quill Sound\n3-7 June 2026", "2026-06-03", "2026-06-07"),
]


@pytest.mark.parametrize(("text", "since", "until"), PERIODS)
def test_period(text: str, since: str, until: str) -> None:
    clauses = read_clauses(text, 2026)
    assert clauses.valid is not None
    assert (clauses.valid.from_, clauses.valid.until) == (since, until)
    assert clauses.dates == [since, until]
    assert clauses.faults == []


NO_PERIODS = [
    ("from 28 to 3 January 2027", "validity-reversed"),
    ("from 28 December to 3 January", "validity-reversed"),
    ("from 31 to 5 June 2026", "date-impossible"),
    ("until 31 June 2026", "date-impossible"),
    ("until 45 June 2026", "validity-unread"),
    ("from 3/4/26 to 5/6/26", "validity-unread"),
    ("until the end of May 2027", "validity-month-only"),
    # Figures alone leave day and month in doubt.
    ("Valid 12.5.2026 - 30.11.2026", "validity-unread"),
    ("Valid: 12/05/2026 to 30/11/2026", "validity-unread"),
    ("Validity: 30/06/26.", "validity-unread"),
    ("12/05 - 03/06/2026", "validity-unread"),
    # To what day is not said.
    ("In effect as of 3 June 2026", "validity-unread"),
]


@pytest.mark.parametrize(("text", "code"), NO_PERIODS)
def test_no_period_without_a_fault(text: str, code: str) -> None:
    clauses = read_clauses(text, 2026)
    assert clauses.valid is None or clauses.valid.from_ is None
    assert [fault.code for fault in clauses.faults] == [code]


ENDS = ["Valid until: 3 June 2026 (inclusive)", "Not valid after 3 June 2026.",
        "No longer valid after 3 June 2026", "Valid to: 3 June 2026"]  # fmt: skip


@pytest.mark.parametrize("text", ENDS)
def test_end_of_validity(text: str) -> None:
    clauses = read_clauses(text, 2026)
    assert clauses.valid is not None
    assert (clauses.valid.from_, clauses.valid.until) == (None, "2026-06-03")
    assert clauses.faults == []


@pytest.mark.parametrize("text", ["the dives of 3-7 June 2026 are over", "in force since May"])
def test_days_within_a_sentence_are_no_validity(text: str) -> None:
    clauses = read_clauses(text, 2026)
    assert clauses.valid is None
    assert clauses.faults == []


def test_date_without_any_year_is_no_validity() -> None:
    clauses = read_clauses("until 20 July", None)
    assert clauses.valid is None
    assert [fault.code for fault in clauses.faults] == ["validity-unread"]


YEARS = [("26", 2026, 2026), ("99", 2001, 1999), ("01", 1999, 2001), ("76", 2026, 1976),
         ("77", 2026, 1977), ("75", 2026, 2075), ("49", None, 2049), ("50", None, 1950),
         ("1926", 2026, 1926), ("10", 2080, 2110)]  # fmt: skip


@pytest.mark.parametrize(("figures", "near", "year"), YEARS)
def test_year_of_two_figures_is_the_nearest(figures: str, near: int | None, year: int) -> None:
    assert full_year(figures, near) == year


@pytest.mark.parametrize("text", ["between 47-35.25S and 47-36.25S", "from 47-35-12N", "until 8"])
def test_a_coordinate_is_no_date(text: str) -> None:
    assert read_clauses(text, 2026).faults == []
