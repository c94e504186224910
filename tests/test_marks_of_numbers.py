"""Marks of temporary and preliminary notices, apart from the number that they belong to."""

from __future__ import annotations

import pytest

from noticeparse import parse

REST = "\nChart 802 [2310/26] WGS84\nInsert wreck 46-00.00S 122-00.00W\n"
MARKED = [
    "2417/26  (T)  QUILL SOUND",
    "2417/26 ( T ) QUILL SOUND",
    "2417/26 (t) QUILL SOUND",
    "2417/26   (TEMP) QUILL SOUND",
    "2417/26 T  QUILL SOUND",
    "2417/26 - T",
    "2417/2026 T.",
    "2417/26 QUILL SOUND - Wreck. T",
    "2417/26 QUILL SOUND - Wreck (temp.)",
    "NM 2417-T-26 QUILL SOUND",
    "2417 T/26 QUILL SOUND",
    "Notice 2417/26  (T)  Quill Sound",
]


@pytest.mark.parametrize("head", MARKED)
def test_a_mark_may_stand_apart(head: str) -> None:
    (notice,) = parse(head + REST).notices
    assert (notice.id, notice.status) == ("2417(T)/26", "temporary")
    assert notice.heading in (None, "QUILL SOUND", "Quill Sound", "QUILL SOUND - Wreck")


@pytest.mark.parametrize("head", [head.replace("T", "P") for head in MARKED[:2]])
def test_so_may_that_of_a_preliminary_one(head: str) -> None:
    (notice,) = parse(head + REST).notices
    assert (notice.id, notice.status) == ("2417(P)/26", "preliminary")


@pytest.mark.parametrize("head", ["2417/26 T QUILL SOUND", "2417/26 (T&P) QUILL SOUND"])
def test_what_may_be_a_mark_is_told(head: str) -> None:
    assert "notice-mark-unclear" in {one.code for one in parse(head + REST).findings}


@pytest.mark.parametrize("head", ["2417/26 Port Ellory - Pier", "2417/26 T-head pier"])
def test_the_first_letter_of_a_name_is_none(head: str) -> None:
    bulletin = parse(head + REST)
    assert [one.id for one in bulletin.notices] == ["2417/26"]
    assert "notice-mark-unclear" not in {one.code for one in bulletin.findings}
