"""The number at the head of a notice, in the forms in which offices write it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.references import read_number
from tests.short_notices import P

EDITION = "TAVRENNE ISLANDS (INVENTED)\nWeekly Edition 12/2026, 20 March 2026\n\n"
BODY = f"Chart 802 [30/26] WGS84\nInsert wreck {P}\n"

PERMANENT = (
    "41/26", "0041/2026", "#41/26", "N° 41/2026", "No41/26", "NM41/2026", "N.M. 41/26",
    "N. to M. 41/26", "Ntm nr. 41/26", "NTM/41/26", "NTM 41-2026", "A41/26", "PE 41/26", "PE-41/26",
    "Serial 41/26", "Notice No.41/26", "Notice Number: 41/26", "Notice 41 / 2026",
    "Notice 41 - 2026", "Notice 41, 2026", "Notice 41 (2026)", "Notice: 41 of 2026",
    "Notice to Mariners No 41 of the year 2026", "Notice number 41 year 2026",
    "2026/41", "Notice 2026-41", "NM 2026/041", "Notice 41", "Notice No 41",
)  # fmt: skip
TEMPORARY = (
    "T 41/26", "41T/26", "41/T/26", "41/26 T", "41/2026/T", "(T) 41/26", "NM(T) 41/26",
    "41 (T)/26", "41(T)-26", "Notice 41 T", "T-41/26", "Notice (T) 41/26", "41 (T) of 2026",
    "Notice 41 (T) (2026)",
)  # fmt: skip


@pytest.mark.parametrize("title", ["\n", "\nQuill Sound - Wreck\n"], ids=["bare", "titled"])
@pytest.mark.parametrize("head", PERMANENT)
def test_permanent(head: str, title: str) -> None:
    (notice,) = parse(EDITION + head + title + BODY).notices
    assert (notice.id, notice.year) == ("41/26", 2026)
    assert [one.chart for one in notice.charts] == ["802"]


@pytest.mark.parametrize("head", TEMPORARY)
def test_temporary(head: str) -> None:
    (notice,) = parse(f"{EDITION}{head}\n{BODY}").notices
    assert (notice.id, notice.status) == ("41(T)/26", "temporary")
    assert [one.verb for one in notice.charts[0].actions] == ["insert"]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("2026/41", (41, 2026)),  # of 2041 no notice is known yet
        ("2026/24", (2026, 2024)),
        ("2417/26", (2417, 2026)),
        ("2026/26", (2026, 2026)),
        ("2026/041", (41, 2026)),
    ],
)
def test_number_behind_its_year(text: str, told: tuple[int, int]) -> None:
    ref = read_number(text, 2026)
    assert ref is not None
    assert (ref.number, ref.year) == told


@pytest.mark.parametrize(
    "words", ["see Notice 41", "Item 41", "Page 41", "Section 41", "Chart 41"]
)
def test_other_numbers_open_no_notice(words: str) -> None:
    ids = [notice.id for notice in parse(f"{EDITION}40/26 Quill Sound\n{BODY}{words}\n").notices]
    assert ids == ["40/26"]
