"""Values that cannot be read for certain: left out, and never without a finding."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES
from noticeparse.readers.clauses import read_clauses

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P = "46-00.00S 122-00.00W"

# Code, text with the slip, text without it.
SLIPS = {
    "validity-month-only": ("Works are valid until August 2026.", "Works until 1 August 2026."),
    "validity-reversed": (
        "Works from 8 June 2026 to 3 June 2026.", "Works from 3 June 2026 to 8 June 2026.",
    ),
    "validity-unread": ("Works until 3/4/26.", "Works until 3 April 2026."),
}  # fmt: skip


@pytest.mark.parametrize(("code", "slip"), [(code, slip) for code, (slip, _) in SLIPS.items()])
def test_slip_has_its_finding(code: str, slip: str) -> None:
    found = [finding for finding in parse(HEAD + slip + "\n").findings if finding.code == code]
    assert found
    assert found[0].severity == ENTRIES[code].severity
    assert found[0].span.line > 2


@pytest.mark.parametrize(("code", "good"), [(code, good) for code, (_, good) in SLIPS.items()])
def test_good_text_has_it_not(code: str, good: str) -> None:
    assert code not in [finding.code for finding in parse(HEAD + good + "\n").findings]


PERIODS = [
    ("from 8 to 2026-07-26", "2026-07-08", "2026-07-26"),
    ("from 8 to June 26, 2026", "2026-06-08", "2026-06-26"),
    ("from 8 June to 2026-07-26", "2026-06-08", "2026-07-26"),
    ("from 8 to 26 June", "2026-06-08", "2026-06-26"),
    # The turn of a year between the two.
    ("from 28 December to 3 January 2027", "2026-12-28", "2027-01-03"),
    ("from 28 December 2026 to 3 January", "2026-12-28", "2027-01-03"),
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
]


@pytest.mark.parametrize(("text", "code"), NO_PERIODS)
def test_no_period_without_a_fault(text: str, code: str) -> None:
    clauses = read_clauses(text, 2026)
    assert clauses.valid is None or clauses.valid.from_ is None
    assert [fault.code for fault in clauses.faults] == [code]


def test_date_without_any_year_is_no_validity() -> None:
    clauses = read_clauses("until 20 July", None)
    assert clauses.valid is None
    assert [fault.code for fault in clauses.faults] == ["validity-unread"]
