"""Lists that an edition prints about itself: rows that go on below, rows beside a page foot."""

from __future__ import annotations

import pytest

from noticeparse import parse

FRONT = "TAVRENNE ISLANDS NOTICES TO MARINERS (invented)\nWeekly Edition 27/2026, 8 July 2026\n\n"
INDEX = """INDEX OF CHARTS
Chart     Notices
805       2419, 2420, 2440(T),
          2447(T), 2449, 2458(T)
806       2420
          2451, 2455
809       2424, 2431
"""


def entries(text: str, kind: str) -> list[tuple[str | None, list[int]]]:
    (found,) = [one for one in parse(FRONT + text).lists if one.kind == kind]
    return [(e.chart, [ref.number for ref in e.notices]) for e in found.entries if e.notices]


def test_a_row_goes_on_below_its_notices() -> None:
    assert entries(INDEX, "index_of_charts") == [
        ("805", [2419, 2420, 2440, 2447, 2449, 2458]),
        ("806", [2420, 2451, 2455]),
        ("809", [2424, 2431]),
    ]
    listed = parse(FRONT + INDEX).lists[0].entries[1]
    whole = FRONT + INDEX
    assert whole[listed.span.start : listed.span.end].endswith("2458(T)")
    assert listed.text == "805 2419, 2420, 2440(T), 2447(T), 2449, 2458(T)"


def test_rows_of_charts_one_below_the_other_are_rows_of_their_own() -> None:
    rows = "INDEX OF CHARTS\n   805: 2419, 2420\n   806: 2420\n  1806: 2451\n"
    assert entries(rows, "index_of_charts") == [
        ("805", [2419, 2420]), ("806", [2420]), ("1806", [2451]),
    ]  # fmt: skip


@pytest.mark.parametrize("foot", ["", "\n                    - 1 -\nHead of a page\n"])
def test_rows_of_the_same_figures_before_a_page_foot_are_no_furniture(foot: str) -> None:
    rows = (
        "TEMPORARY AND PRELIMINARY NOTICES IN FORCE\n"
        "805     2440(T)/26\n806     2447(T)/26\n807     2427(T)/26, 2434(P)/26\n"
        "808     2458(T)/26\n809     2427(T)/26, 2456(P)/26\n"
    )
    found = entries(rows + foot, "in_force")
    assert [chart for chart, _ in found] == ["805", "806", "807", "808", "809"]
    assert found[-1] == ("809", [2427, 2456])


def test_dots_lead_from_each_chart_of_an_index_to_its_notices() -> None:
    text = (
        "INDEX OF CHARTS CORRECTED\n  31 ....... 641, 643          36 ....... 642\n"
        "  32 ....... 641               38 ....... 644(T)\n\n641/26  Quill Sound\nChart 31\n"
    )
    (index,) = parse(text).lists
    assert [(one.chart, [ref.number for ref in one.notices]) for one in index.entries] == [
        ("31", [641, 643]),
        ("36", [642]),
        ("32", [641]),
        ("38", [644]),
    ]


def test_numbers_with_a_hyphen_behind_a_chart_are_notices() -> None:
    index = (
        "INDEX OF CHARTS\n   Chart     N.T.M.\n   805       71-26, 72-26\n   806       73(T)-26\n"
    )
    assert entries(index, "index_of_charts") == [("805", [71, 72]), ("806", [73])]


def test_a_span_of_numbers_is_no_number_and_its_year() -> None:
    index = "INDEX OF CHARTS\n   Chart     Notices\n   805       71-74\n   806       73\n"
    assert entries(index, "index_of_charts") == [("806", [73])]


def test_a_notice_right_below_the_title_of_a_part_is_no_entry_of_a_list() -> None:
    text = (
        "1. INDEX OF CHARTS\n   Chart 812 ...... 3001\n"
        "2. NOTICES AND RADIO WARNINGS\n3001/26   QUILL SOUND - Hallam Channel - Depth\n"
        "Chart 812 [2950/26] WGS84\nInsert\n   rock, least depth 2.6m\n"
        "        46-00.00S 122-00.00W\n"
    )
    (notice,) = parse(text).notices
    assert (notice.id, [chart.chart for chart in notice.charts]) == ("3001/26", ["812"])


@pytest.mark.parametrize("title", ["Notices in this digest and the charts they touch\n", ""])
def test_an_index_on_one_line_opens_no_notice(title: str) -> None:
    index = f"{title}  1948/26  610, 611        1949/26  610        1951(T)/26  614\n"
    rows = (
        "CHART 610   Ambrel Strait      Last notice: 1922/26\n"
        "1948/26  Insert   wreck      46 20.15S 122 51.60W\n"
        "1949/26  Delete   rock       46 26.00S 122 58.00W\n"
        "CHART 611   Ambrel Strait, western part      Last notice: 1875/26\n"
        "1948/26  Insert   wreck      46 20.15S 122 51.60W\n"
    )
    bulletin = parse(FRONT + index + "All positions refer to WGS84.\n---------\n" + rows)
    assert [(one.id, [section.chart for section in one.charts]) for one in bulletin.notices] == [
        ("1948/26", ["610", "611"]),
        ("1949/26", ["610"]),
    ]
    datums = [section.datum for one in bulletin.notices for section in one.charts]
    assert [one and one.name for one in datums] == ["WGS84"] * 3


@pytest.mark.parametrize("words", ["NOTICES 17 TO 19 OF 2026", "Notices 17/26 to 19/26"])
def test_the_range_of_an_edition_is_read_in_capitals_too(words: str) -> None:
    edition = parse(f"TAVRENNE WEEKLY EDITION 5/2026\n{words}\n").edition
    assert edition is not None
    first, last = edition.first_notice, edition.last_notice
    assert first is not None
    assert last is not None
    assert (first.number, last.number, last.year) == (17, 19, 2026)


TITLES_OF_NOTICES = [
    "NOTICES IN THIS LIST",
    "Notices of this week",
    "INDEX OF NOTICES",
    "Contents",
]


@pytest.mark.parametrize("title", TITLES_OF_NOTICES)
def test_a_list_of_the_notices_holds_none_of_its_own(title: str) -> None:
    rows = (
        "CHART 70   Last: 640/26\n\n   Add   rock   47-04.30S 123-30.10W   702/26\n"
        "   Add   wreck  47-06.00S 123-32.00W   703/26\n"
    )
    listed = f"\n{title}\n\n   702/26   Port Ellory. Rock.\n   703/26   Quill Sound. Wreck.\n"
    bulletin = parse(rows + listed)
    assert [notice.id for notice in bulletin.notices] == ["702/26", "703/26"]
    whole = "702/26  Port Ellory. Rock.\nChart 70 [640/26]\nAdd rock 47-04.30S 123-30.10W\n"
    (notice,) = parse(f"{title}\n\n{whole}").notices
    assert [one.chart for one in notice.charts] == ["70"]


@pytest.mark.parametrize(
    ("line", "charts"),
    [
        ("Charts affected by this edition: 802 803", ["802", "803"]),
        ("Charts affected by this edition: 802, 803 and TV 41.", ["802", "803", "TV 41"]),
        ("INDEX OF CHARTS: 802; 803", ["802", "803"]),
        ("Charts corrected in this list : 802", ["802"]),
    ],
)
def test_charts_may_stand_beside_the_title_of_their_index(line: str, charts: list[str]) -> None:
    notice = "17/26 Quill Sound\nChart 802 [9/26] WGS84\nInsert wreck 46-00.00S 122-00.00W\n"
    bulletin = parse(f"{FRONT}{line}\n\n{notice}")
    (found,) = bulletin.lists
    assert found.kind == "index_of_charts"
    assert [(one.chart, one.notices) for one in found.entries] == [(one, []) for one in charts]
    assert [one.id for one in bulletin.notices] == ["17/26"]


def test_charts_of_a_notice_are_no_index() -> None:
    bulletin = parse(
        "17/26 Quill Sound\nCharts affected: 802 803\nInsert wreck 46-00.00S 122-00.00W\n"
    )
    assert bulletin.lists == []
    assert [one.chart for one in bulletin.notices[0].charts] == ["802", "803"]
