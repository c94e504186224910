"""How offices head the items of a chart: rows, titles, stacked keys."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, WRECK_AND_ROCK, P, Q, codes, told

ITEMS = f"Insert wreck {P}\nDelete rock {Q}\n"

HEADS = {
    "row with edition": (
        "82104   7Ed. 14 FEB 2015   LAST NM 318/26      NM 344/26\n"
        "        TAVRENNE ISLANDS - HALE NESS (depths in fathoms and feet)\n"
    ),
    "row under titles": (
        "Chart     Chart      Edition      Last Notice        Horizontal   This\n"
        "Number    Edition    Date                            Datum        Notice\n"
        "---------------------------------------------------------------------\n"
        "82104     4th Ed.    11-JUN-21    Last NM: 318/26    WGS84        NM 344/26\n"
        "Chart Title: TAVRENNE ISLANDS - HALE NESS\nMain Panel\n"
    ),
    "title above the notice": (
        "82104 - Hale Ness - New Edition - 14-MAR-2019 - WGS84\n"
        "344/26    26-JUN-2026                          Last notice 318/26\n"
    ),
    "number with a hyphen": "Notice 344-26\nNORTH QUILL\nChart 82104  (Former notice 318-26)\n",
    "year in brackets": (
        "Notice No. 344 (2026)   QUILL\n        Chart 82104, last corrected by No. 318 (2026).\n"
    ),
    "of the year": "344 of 2026   Hale Ness\nChart 82104 - preceding notice 318 of 2026 - WGS84\n",
    "of the year behind letters": (
        "NtM 344 of 2026.  Hale Ness - Lights.\nChart 82104. Last: NtM 318 of 2026. WGS 84.\n"
    ),
    "stacked keys": (
        "Notice 344/26\nHale Ness - Wreck\nChart\n82104 (INT 9552)\nPrevious update\n318/26\n"
        "Datum\nWGS 84\n\n"
    ),
    "wide keys": (
        "  Notice       : 344/26\n  Area         : Hale Ness\n  Chart        : 82104\n"
        "  Edition      : 4, 12 March 2021\n  Last notice  : 318/26\n  Datum        : WGS84\n"
        "---------------------------------------------------------------------\n"
    ),
}


@pytest.mark.parametrize("head", HEADS.values(), ids=HEADS)
def test_head(head: str) -> None:
    bulletin = parse(head + ITEMS)
    (notice,) = bulletin.notices
    (chart,) = notice.charts
    assert (notice.id, chart.chart, chart.panel) == ("344/26", "82104", None)
    assert chart.previous is not None
    assert (chart.previous.number, chart.previous.year) == (318, 2026)
    assert told(bulletin) == WRECK_AND_ROCK
    assert not [one for one in bulletin.findings if one.severity == "error"]


def test_date_of_a_notice_is_not_that_of_the_edition() -> None:
    chart = parse(HEADS["title above the notice"] + ITEMS).notices[0].charts[0]
    assert chart.edition_date == "2019-03-14"


def test_next_chart_of_the_same_shape_is_no_page_head() -> None:
    rows = [f"8210{n}   7Ed. 14 FEB 2015   LAST NM 31{n}/26      NM 34{n}/26\n" for n in (4, 7, 9)]
    bulletin = parse("\n".join(row + ITEMS for row in rows))
    assert [notice.charts[0].chart for notice in bulletin.notices] == ["82104", "82107", "82109"]


def test_height_in_round_brackets_is_no_chart() -> None:
    text = f"12/26 Quill Sound.\nCharts 12 [3/26], 14 [4/26] WGS84\nInsert radio mast {P} (12)\n"
    bulletin = parse(text)
    assert [len(chart.actions) for chart in bulletin.notices[0].charts] == [1, 1]
    assert "feature-figure-in-brackets" in {finding.code for finding in bulletin.findings}


def test_second_datum_of_a_chart_is_told_and_does_not_replace_the_first() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n(NAD27 DATUM)\nDelete rock {Q}\n")
    chart = bulletin.notices[0].charts[0]
    assert chart.datum is not None
    assert chart.datum.name == "WGS84"
    assert "chart-head-unread" in {finding.code for finding in bulletin.findings}


@pytest.mark.parametrize("words", ["Light-buoy No 4 withdrawn", "Range of light reduced to 5M"])
def test_statement_below_number_and_chart_is_no_heading(words: str) -> None:
    notice = parse(f"12/26   Chart: 802\n{words}\nInsert wreck {P}\n").notices[0]
    assert notice.heading is None
    assert [remark.text for remark in notice.remarks] == [words]


def test_only_what_goes_is_taken_from_a_position() -> None:
    bulletin = parse(f"{HEAD}Insert buoy from position {P}\n")
    assert not told(bulletin)
    assert "offset-not-worked-out" in {finding.code for finding in bulletin.findings}


@pytest.mark.parametrize("words", ["(Sheet 2)", ", Sheet 2", ", sheet 2 of 3", " - Sheet 2"])
def test_a_sheet_of_a_chart_is_no_chart(words: str) -> None:
    (notice,) = parse(f"344/26 Quill Sound\nChart 821{words} [318/26]\n{ITEMS}").notices
    (chart,) = notice.charts
    assert chart.panel is not None
    assert (chart.chart, chart.panel.lower()[:7]) == ("821", "sheet 2")


@pytest.mark.parametrize(
    "head", ["Notice 344", "Notice No. 344.   Hale Ness", "NM 344 - Hale Ness", "Week 9, No. 344."]
)
def test_year_of_a_number_is_that_of_the_edition(head: str) -> None:
    edition = "TAVRENNE ISLANDS (INVENTED)\nWeekly Edition 9/2026\n\n"
    bulletin = parse(f"{edition}{head}\nChart 82104 [318/26]\n{ITEMS}")
    (notice,) = bulletin.notices
    assert (notice.id, notice.year) == ("344/26", 2026)
    assert "notice-year-not-written" in [one.code for one in bulletin.findings]
    (alone,) = parse(f"{head}\nChart 82104 [318/26]\n{ITEMS}").notices
    assert (alone.id, alone.year) == ("344", None)


@pytest.mark.parametrize("number", ["1514-B", "1514A-B", "41-TV", "1514-III", "12-034", "SC-1514"])
def test_letters_behind_a_hyphen_belong_to_the_number(number: str) -> None:
    bulletin = parse(f"344/26 Hale Ness\nChart: {number}   Previous notice: 318/26\n{ITEMS}")
    assert [chart.chart for chart in bulletin.notices[0].charts] == [number]


@pytest.mark.parametrize(
    ("number", "chart", "code"),
    [
        ("1514 B", "1514", "chart-head-unread"),
        ("1514_2", None, "chart-unread"),
        ("1514:2", None, "chart-unread"),
        ("1514.B", None, "chart-unread"),
        ("1514 bis", None, "chart-unread"),
        ("1514/B", None, "chart-unread"),
    ],
)
def test_no_number_is_cut_short_in_silence(number: str, chart: str | None, code: str) -> None:
    bulletin = parse(f"344/26 Hale Ness\nChart {number} [318/26]\n{ITEMS}")
    assert [section.chart for section in bulletin.notices[0].charts] == [chart]
    assert code in [one.code for one in bulletin.findings]


def test_what_is_told_of_charts_in_a_heading_runs_on() -> None:
    text = (
        "Notice 344/26. Hale Ness, on Charts 14 (INT 9514), which should show 318/26 as the last "
        "notice,\nand 16, which should show 309/26 as the last notice, both on WGS 84; Notice "
        f"171(P)/26 is cancelled: a\nwreck is to be inserted in {P}.\n"
    )
    (notice,) = parse(text).notices
    found = [(one.chart, one.previous and one.previous.number, one.datum) for one in notice.charts]
    assert [(chart, before, datum and datum.name) for chart, before, datum in found] == [
        ("14", 318, "WGS84"),
        ("16", 309, "WGS84"),
    ]
    assert [(one.number, one.status) for one in notice.cancels] == [(171, "preliminary")]


@pytest.mark.parametrize(
    ("words", "charts"),
    [
        ("Chart(s) affected: 802 [30/26], 803 [31/26]", ["802", "803"]),
        ("Chart(s) affected: 802 [30/26]", ["802"]),
        ("CHART(S) 802 [30/26]", ["802"]),
        ("Chart(s): 802 (Last NM 30/26), 803 (Last NM 31/26)", ["802", "803"]),
        ("Chart/s affected: 802 [30/26] and 803 [31/26]", ["802", "803"]),
    ],
)
def test_one_word_for_a_chart_and_for_several(words: str, charts: list[str]) -> None:
    bulletin = parse(f"Notice 40/26\nQuill Sound - Wreck\n{words}\nInsert wreck {P}\n")
    (notice,) = bulletin.notices
    assert [one.chart for one in notice.charts] == charts
    numbers = [one.previous and one.previous.number for one in notice.charts]
    assert numbers == [30, 31][: len(charts)]
    assert [len(one.actions) for one in notice.charts] == [1] * len(charts)


@pytest.mark.parametrize(
    ("words", "unit"),
    [
        ("Depths on this chart are in fathoms and feet.", "fm_ft"),
        ("Soundings on these charts are given in feet.", "ft"),
        ("All depths are in feet", "ft"),
        ("The depths on both charts are in fathoms.", "fm_ft"),
        ("This chart is in fathoms and feet.", "fm_ft"),
        ("The chart shows depths in fathoms.", "fm_ft"),
        ("Depths and heights on this chart are in metres and decimetres.", "m"),
    ],
)
def test_a_sentence_tells_the_unit_of_the_depths(words: str, unit: str) -> None:
    text = f"Notice 40/26\nQuill Sound - Depth\nChart 802 [30/26]\n{words}\nInsert depth 4 {P}\n"
    (notice,) = parse(text).notices
    (chart,) = notice.charts
    assert chart.depth_unit == unit
    depth = chart.actions[0].feature.depth
    assert depth is not None
    assert str(depth.value_m)[:4] == {"fm_ft": "7.31", "ft": "1.21", "m": "4"}[unit]
    assert notice.remarks == []


@pytest.mark.parametrize(
    "head",
    [
        "Charts:  802   803   804",
        "Charts affected   802   803   804",
        "Charts: 802\t803\t804",
        "Charts affected: 802, 803,\n                 804",
        "Charts affected: 802, 803 and\n804",
        "Charts affected:\n802\n803\n804",
    ],
)
def test_a_list_of_charts_goes_on_over_gaps_and_line_ends(head: str) -> None:
    (notice,) = parse(f"80/26 Quill Sound\n{head}\nInsert wreck {P}\n").notices
    assert [one.chart for one in notice.charts] == ["802", "803", "804"]
    assert [len(one.actions) for one in notice.charts] == [1, 1, 1]


def test_a_figure_beside_the_number_of_one_chart_is_told() -> None:
    bulletin = parse(f"80/26 Quill Sound\nChart 802      803\nInsert wreck {P}\n")
    assert [one.chart for one in bulletin.notices[0].charts] == ["802"]
    assert "chart-head-unread" in codes(bulletin)


def test_numbers_beside_other_words_in_brackets_are_no_charts() -> None:
    head = "Charts 802, 803 and 804 [new, 58, 40]"
    bulletin = parse(f"80/26 Quill Sound\n{head}\nInsert wreck {P}\n")
    read = [(one.chart, one.previous) for one in bulletin.notices[0].charts]
    assert read == [("802", None), ("803", None), ("804", None)]
    assert "previous-unread" in codes(bulletin)


@pytest.mark.parametrize("head", ["Map: 12\nChart 802", "Chart 802\nSheet: 12"])
def test_a_map_beside_a_chart_may_be_none(head: str) -> None:
    bulletin = parse(f"2417/26 QUILL SOUND\n{head}\nInsert wreck 46-00.00S 122-00.00W\n")
    assert {chart.chart for chart in bulletin.notices[0].charts} == {None, "802"}
    assert [one.code for one in bulletin.findings if one.severity == "error"] == ["chart-unread"]


@pytest.mark.parametrize("word", ["Map", "Sheet"])
def test_a_map_is_a_chart_where_no_other_word_for_one_stands(word: str) -> None:
    bulletin = parse(
        f"2417/26 QUILL SOUND\n{word}: 12\n{word}: 14\nInsert wreck 46-00.00S 122-00.00W\n"
    )
    assert [chart.chart for chart in bulletin.notices[0].charts] == ["12", "14"]
    assert not [one.code for one in bulletin.findings if one.severity != "info"]


@pytest.mark.parametrize(
    "head", ["CHART 412    NOTICE 3503/26", "Chart 412  Notice 3503/26", "CHART 412   NM 3503/26"]
)
def test_a_chart_in_a_cell_before_its_notice_is_named(head: str) -> None:
    (notice,) = parse(f"{head}\nInsert rock 47-40.204S 126-28.771W\n").notices
    assert (notice.id, [one.chart for one in notice.charts]) == ("3503/26", ["412"])
    assert not [one.code for one in notice.findings if one.severity != "info"]


@pytest.mark.parametrize(
    "words",
    ["on which the last notice is", "whose last notice was", "to which the last correction was"],
)
def test_a_line_end_within_the_notice_before_leaves_no_chart_out(words: str) -> None:
    text = (
        f"Notice 45/26. Quarantine Reach. Chart 3302, {words}\n44/26, and Chart 3305, {words} "
        "40/26.\n\nPlease insert an obstruction, least depth 2.7 m, in 47-11.08S 123-25.36W.\n"
    )
    (notice,) = parse(text).notices
    assert [(one.chart, one.previous and one.previous.number) for one in notice.charts] == [
        ("3302", 44),
        ("3305", 40),
    ]
