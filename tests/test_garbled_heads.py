"""Numbers of charts and notices in which a figure or sign is lost."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, codes, usable_of

CHARTS = ["8?2", "80#", "80.", "41?0", ".02", "80S", "O02", "8x2", "8O2", "l02"]


@pytest.mark.parametrize("number", CHARTS)
def test_a_chart_number_is_not_cut_at_a_sign(number: str) -> None:
    bulletin = parse(f"2417/26 Quill.\nChart {number} [2310/26] WGS84\nDelete pile {P}\n")
    assert [one.chart for one in bulletin.notices[0].charts] == [None]
    assert "chart-unread" in codes(bulletin)


@pytest.mark.parametrize("word", ["Chat", "Cahrt", "C hart", "Chrat", "Charf", "Ch rt", "Ohart"])
def test_a_misspelt_word_for_a_chart_opens_a_section(word: str) -> None:
    text = (
        f"2417/26 Quill.\nChart 801 [2310/26] WGS84\nDelete pile {P}\n"
        f"{word} 802 [2310/26] WGS84\nDelete wreck {P}\n"
    )
    bulletin = parse(text)
    charts = bulletin.notices[0].charts
    assert [(one.chart, len(one.actions)) for one in charts] == [("801", 1), (None, 1)]
    assert "chart-unread" in codes(bulletin)


def test_a_chart_number_of_a_row_is_not_cut() -> None:
    rows = (
        "Notice\tChart\tAction\tObject\tLatitude\tLongitude\n"
        "2417/26\tChart 3?21\tDelete\tpile\t47°12.60'S\t123°45.77'W\n"
    )
    bulletin = parse(rows)
    assert bulletin.notices[0].charts[0].chart is None
    assert "chart-unread" in codes(bulletin)


@pytest.mark.parametrize("number", ["802", "1514B", "41-TV", "TV 802", "12-034"])
def test_whole_chart_numbers_are_read(number: str) -> None:
    bulletin = parse(f"2417/26 Quill.\nChart {number} [2310/26] WGS84\nDelete pile {P}\n")
    assert [one.chart for one in bulletin.notices[0].charts] == [number]
    assert (usable_of(bulletin), codes(bulletin)) == ([("delete", "pile")], set())


PREVIOUS = ["248O/26", "97726", "977 26", "2?8/26"]


@pytest.mark.parametrize("words", ["previous notice ", ""])
@pytest.mark.parametrize("number", PREVIOUS)
def test_a_notice_before_is_not_cut_at_a_sign(number: str, words: str) -> None:
    bulletin = parse(f"2417/26 Quill.\nChart 802 [{words}{number}] WGS84\nDelete pile {P}\n")
    assert bulletin.notices[0].charts[0].previous is None
    assert "previous-unread" in codes(bulletin)


def test_a_notice_of_long_ago_is_told() -> None:
    bulletin = parse(f"2417/26 Quill.\nChart 802 [402/99] WGS84\nDelete pile {P}\n")
    assert codes(bulletin) == {"previous-long-ago"}


@pytest.mark.parametrize("number", ["2310/26", "402/09", "previous notice 977", "last 318/2014"])
def test_whole_notices_before_are_read(number: str) -> None:
    bulletin = parse(f"2417/26 Quill.\nChart 802 [{number}] WGS84\nDelete pile {P}\n")
    assert bulletin.notices[0].charts[0].previous is not None
    assert codes(bulletin) == set()


GARBLED_NOTICES = [
    "33b3/26  TAVRENNE ISLANDS - Pile.",
    "908/2   TAVRENNE ISLANDS - Pile.",
    "== NM 306/202 ==",
    "NOTICE 73/2 - LANTERN SHOAL",
    "Notice 1804 26. Off Vessory Head.",
    "3?3/26  TAVRENNE ISLANDS - Pile.",
]


@pytest.mark.parametrize("line", GARBLED_NOTICES)
def test_a_garbled_head_ends_the_notice_before(line: str) -> None:
    text = (
        f"72/26  QUILL SOUND\nChart 802 [30/26] WGS84\nDelete pile {P}\n"
        f"{line}\nChart 803 [30/26] WGS84\nDelete wreck {P}\n"
    )
    bulletin = parse(text)
    found = [(one.number, [c.chart for c in one.charts]) for one in bulletin.notices]
    assert found == [(72, ["802"]), (None, ["803"])]
    assert codes(bulletin) == {"text-action-lost"}


@pytest.mark.parametrize("number", ["24b7/26", "9?3/26"])
def test_a_garbled_number_that_opens_the_text_is_told(number: str) -> None:
    text = f"{number}  QUILL SOUND - Pile.\nChart 802 [30/26] WGS84\nDelete pile {P}\n"
    assert codes(parse(text)) == {"text-unread"}


def test_each_of_several_garbled_heads_ends_the_notice_before() -> None:
    text = f"72/26  QUILL SOUND\nChart 802 [30/26] WGS84\nDelete pile {P}\n" + "".join(
        f"{figure}b3/26  QUILL SOUND\nChart 80{figure} [30/26] WGS84\nDelete wreck {P}\n"
        for figure in (3, 4, 5)
    )
    found = [(one.number, [c.chart for c in one.charts]) for one in parse(text).notices]
    assert found == [(72, ["802"]), (None, ["803"]), (None, ["804"]), (None, ["805"])]
