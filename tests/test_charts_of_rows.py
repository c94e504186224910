"""Several charts in one cell of a row, and the notice before that each of them must have."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, codes, errors

TITLES = "Position\tItem\tDo\tChart\tAfter\tNotice\n"


def read(charts: str, before: str) -> Bulletin:
    behind = f"Add\t{charts}\t{before}\t252/26\n"
    return parse(f"{TITLES}{P}\twreck\t{behind}{Q}\trock\t{behind}")


def told(bulletin: Bulletin) -> list[tuple[str | None, int | None]]:
    return [
        (one.chart, one.previous.number if one.previous else None)
        for notice in bulletin.notices
        for one in notice.charts
    ]


@pytest.mark.parametrize(
    ("charts", "before"),
    [
        ("512 and 513", "251/26 and 198/26"),
        ("512, 513", "251/26, 198/26"),
        ("512 & 513", "251/26 & 198/26"),
        ("512 + 513", "251/26 + 198/26"),
        ("512 / 513", "251/26 / 198/26"),
        ("512 (INT 7) and 513", "251/26 and 198/26"),
    ],
)
def test_each_chart_has_the_notice_of_its_place(charts: str, before: str) -> None:
    bulletin = read(charts, before)
    assert told(bulletin) == [("512", 251), ("513", 198)]
    assert codes(bulletin) == set()
    assert [one.previous_written for one in bulletin.notices[0].charts] == ["251/26", "198/26"]
    assert "text-left-over" not in {one.code for one in bulletin.findings}


def test_the_notice_before_in_the_column_of_the_charts_is_no_chart() -> None:
    assert "chart-unread" not in codes(read("512 (251/26)", ""))


def test_one_notice_holds_for_all_charts() -> None:
    assert told(read("512 and 513", "251/26")) == [("512", 251), ("513", 251)]


@pytest.mark.parametrize(
    ("charts", "before"),
    [
        ("512", "251/26, 198/26"),
        ("512, 513, 514", "251/26, 198/26"),
        ("512 and 513", "251/26 and -"),
        ("512 and 513", "251 and 198/26"),
        ("512 and 513", "513: 251/26, 512: 198/26"),
        ("512 and 513", "251/26 respectively 198/26"),
    ],
)
def test_notices_that_fit_no_charts_are_given_to_none(charts: str, before: str) -> None:
    bulletin = read(charts, before)
    assert {before for _, before in told(bulletin)} == {None}
    assert "previous-unread" in codes(bulletin)


@pytest.mark.parametrize("joint", ["/", " ", " to ", " or ", " et ", "\\"])
def test_a_chart_that_is_not_read_is_an_error(joint: str) -> None:
    assert "chart-unread" in errors(read(f"512{joint}513", "251/26"))


@pytest.mark.parametrize("joint", [" + ", " / ", " with ", " plus "])
def test_signs_between_the_charts_of_a_head(joint: str) -> None:
    head = f"12/26 Quill Sound.\nCharts 512{joint}513\nInsert wreck {P}\n"
    assert [one for one, _ in told(parse(head))] == ["512", "513"]


@pytest.mark.parametrize("joint", ["/", " to ", " or ", " et "])
def test_a_joint_that_does_not_say_both_is_an_error(joint: str) -> None:
    head = f"12/26 Quill Sound.\nChart 512{joint}513\nInsert wreck {P}\n"
    assert "chart-unread" in errors(parse(head))
