"""Dates of editions and periods in the head of a notice, and the notices that it ends."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.clauses import read_clauses
from noticeparse.readers.heads import read_head
from tests.short_notices import P, codes

HEAD = "17/26  TAVRENNE ISLANDS - Quill Sound - Works.\n"
REST = f"Chart 802 WGS84\nInsert wreck {P}\n"


@pytest.mark.parametrize(
    "head",
    [
        "Chart 802 [New Edition 12/3/2026]",
        "Chart 802 (New Edition, March 2026)",
        "Chart 802, Edition 4, March 2026 [9/26]",
        "Chart 802 Edition date 12/03/2024 [9/26]",
        "Chart 802 3rd Ed. March 2024 [9/26]",
        "Chart 802 51Ed. 6/15/24 LAST NM 9/26",
    ],
)
def test_date_of_an_edition_that_is_not_read_is_told(head: str) -> None:
    assert [fault.code for fault in read_head(head, 2026).faults] == ["chart-head-unread"]


@pytest.mark.parametrize(
    "head",
    ["Chart 802 [New Edition 3/2026]", "Chart 802, Edition 4, 12 March 2026 [9/26]", "Chart 802"],
)
def test_other_editions_tell_nothing(head: str) -> None:
    assert read_head(head, 2026).faults == []


@pytest.mark.parametrize("head", ["[12/26, 14(T)/26]", "[12/26; 14/26]", "[12/26 and 14(P)/26]"])
def test_second_notice_before_is_told(head: str) -> None:
    assert "chart-head-unread" in codes(parse(f"{HEAD}Chart 802 {head}\nInsert wreck {P}\n"))


PERIODS = [
    "Validity: 1 to 30 September 2026",
    "Valid: 1-30 September 2026",
    "Valid from 1 September 2026 to 30 September 2026",
    "Effective 1 September 2026 until 30 September 2026.",
]


@pytest.mark.parametrize("words", PERIODS)
def test_period_of_validity_is_read(words: str) -> None:
    valid = read_clauses(words, 2026).valid
    assert valid is not None
    assert (valid.from_, valid.until) == ("2026-09-01", "2026-09-30")


@pytest.mark.parametrize(
    "words",
    [
        "Effective 1/7/2026 - 30/9/2026",
        "From 1200 UTC 1 July 2026",
        "With effect from 1 July 2026.",
        "Effective 1 July 2026",
        "NM 12(T)/26 will be cancelled on 1 August 2026.",
        "Notice 12(T)/26 remains in force until 1 August 2026.",
        "The temporary notice 12(T)/26 is valid until 1 August 2026.",
    ],
)
def test_time_that_is_not_that_of_the_notice_is_told(words: str) -> None:
    clauses = read_clauses(words, 2026)
    assert clauses.valid is None
    assert "validity-unread" in {fault.code for fault in clauses.faults}


@pytest.mark.parametrize(
    "words",
    [
        "This notice cancels NM 12(T)/26 and is valid until 1 August 2026.",
        "Cancels 12(T)/26. Valid until 1 August 2026.",
        "Works reported in Notice 12(T)/26. This notice expires on 1 August 2026.",
    ],
)
def test_time_of_the_notice_itself_beside_another(words: str) -> None:
    valid = read_clauses(words, 2026).valid
    assert valid is not None
    assert valid.until == "2026-08-01"


@pytest.mark.parametrize(
    "line",
    [
        "Previous notice: 12/26",
        "Last notice 12/26",
        "Previous NM: 12/26",
        "Previous: 12/26",
        "Preceding notice 12/26.",
    ],
)
def test_notice_before_on_a_line_above_the_chart(line: str) -> None:
    (notice,) = parse(f"{HEAD}{line}\n{REST}").notices
    (chart,) = notice.charts
    assert chart.previous is not None
    assert chart.previous.number == 12
    assert notice.heading == "TAVRENNE ISLANDS - Quill Sound - Works"


def test_other_notice_before_in_the_head_of_the_chart_is_told() -> None:
    bulletin = parse(f"{HEAD}Previous notice: 9/26\nChart 802 [12/26]\nInsert wreck {P}\n")
    (chart,) = bulletin.notices[0].charts
    assert chart.previous is not None
    assert chart.previous.number == 12
    assert "chart-head-unread" in codes(bulletin)


def test_another_notice_on_such_a_line_is_none_before() -> None:
    (notice,) = parse(f"{HEAD}See Notice 12/26\n{REST}").notices
    assert notice.charts[0].previous is None


@pytest.mark.parametrize(
    ("line", "numbers"),
    [
        ("Cancels: 12(T)/25; 13(T)/25", [12, 13]),
        ("Cancels 12(T)/25 / 13(T)/25", [12, 13]),
        ("Cancels NM 12(T)/25; NM 13(T)/25 and NM 14(T)/25", [12, 13, 14]),
        ("Cancels: 12(T)/25;\n13(T)/25", [12, 13]),
        ("Cancels: 12(T)/25,\n13(T)/25", [12, 13]),
        ("Notices 12(T)/25; 13(T)/25 are cancelled.", [12, 13]),
        ("Cancels 12(T)/25; 13(T)/25 remains in force.", [12]),
    ],
)
def test_list_of_cancelled_notices(line: str, numbers: list[int]) -> None:
    (notice,) = parse(f"{HEAD}{line}\n{REST}").notices
    assert [one.number for one in notice.cancels] == numbers


@pytest.mark.parametrize(
    "line",
    [
        "Delete former Notice 402(T)/24.",
        "Former notice 402(T)/24 is deleted.",
        "(Cancels 402-405(T)/24)",
        "Cancels 402(T)-405(T)/24.",
        "This replaces NM 402(T)/24.",
        "In place of NM 402(T)/24.",
        "Replaces: 402(T)/24",
    ],
)
def test_what_may_end_a_notice_is_told(line: str) -> None:
    bulletin = parse(f"{HEAD}{line}\n{REST}")
    assert [one.id for one in bulletin.notices] == ["17/26"]
    assert "cancellation-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "Corrigendum: in Notice 12/26 for wreck read rock.",
        "Erratum: Notice 12/26, for 7m read 17m.",
    ],
)
def test_erratum_of_another_notice_is_told(line: str) -> None:
    bulletin = parse(f"{HEAD}{line}\n{REST}")
    assert [one.id for one in bulletin.notices] == ["17/26"]
    assert "sentence-unread" in codes(bulletin)


def test_year_that_may_stand_first_is_told() -> None:
    assert "notice-year-doubtful" in codes(parse(f"2026/17 QUILL SOUND - Works\n{REST}"))
    assert "notice-year-doubtful" not in codes(parse(f"2417/26 QUILL SOUND - Works\n{REST}"))
