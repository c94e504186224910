"""Several charts of a notice that share its items, in the forms in which offices name them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, errors, usable_of

NUMBER = "41/26 Quill Sound - Wreck, rock\n"
ITEMS = f"Insert wreck {P}\nDelete rock {Q}\n"

HEADS = {
    "and": "Charts 802 [30/26] and 803 [31/26]\n",
    "a dash": "Charts 802 [30/26] - 803 [31/26]\n",
    "an ampersand": "Charts 802 [30/26] & 803 [31/26]\n",
    "in words": "Charts 802 (last notice 30/26) and 803 (last notice 31/26)\n",
    "a line each": "Chart 802 [30/26]\nChart 803 [31/26]\n",
    "below the word": "Charts:\n802 [30/26]\n803 [31/26]\n",
    "in order": "Charts: 802, 803\nLast notices: 30/26, 31/26\n",
    "respectively": "Charts 802 and 803 (last notices 30/26 and 31/26 respectively)\n",
    "sentences": "Charts 802 and 803. Last notice on chart 802: 30/26. Last port notice\n"
    "on chart 803: 31/26.\n\n",
    "over a line": "Charts 802 and 803. Last notice for chart 802 was 30/26. Last notice on\n"
    "chart 803: 31/26.\n\n",
    "an order": "On charts 802 [30/26] and 803 [31/26]:\n",
    "international": "Charts 802 (INT 9802) [30/26] and 803 (INT 9803) [31/26]\n",
}
FEET = {
    "affected": "Charts affected: 802 [30/26], 803 [31/26]\n",
    "a sentence": "Affects charts 802 [30/26] and 803 [31/26].\n",
    "in order": "Charts: 802 - 803\nPrevious: 30/26 - 31/26\n",
    "rows": "Charts affected:\n   802   30/26\n   803   31/26\n",
    "a table": "Chart    Last notice\n802      30/26\n803      31/26\n",
    "these corrections": "These corrections are for charts 802 [30/26] and 803 [31/26].\n",
}


@pytest.mark.parametrize(
    "text",
    [
        *(NUMBER + head + ITEMS for head in HEADS.values()),
        *(NUMBER + ITEMS + f for f in FEET.values()),
    ],
    ids=[*(f"head {name}" for name in HEADS), *(f"foot {name}" for name in FEET)],
)
def test_each_chart_has_all_items_and_its_own_notice_before(text: str) -> None:
    bulletin = parse(text)
    (notice,) = bulletin.notices
    assert [
        (one.chart, one.previous.number if one.previous else None, [a.verb for a in one.actions])
        for one in notice.charts
    ] == [("802", 30, ["insert", "delete"]), ("803", 31, ["insert", "delete"])]
    assert not [one for one in bulletin.findings if one.severity != "info"]


def test_more_notices_than_charts_are_given_to_none() -> None:
    text = f"{NUMBER}Charts 802 and 803 (last notices 29/26, 30/26 and 31/26)\n{ITEMS}"
    bulletin = parse(text)
    assert [one.previous for one in bulletin.notices[0].charts] == [None, None]
    assert "chart-head-unread" in [one.code for one in bulletin.findings]


JOINT = NUMBER + "Charts 802 [30/26], 803 [31/26]\n"
W, R, B = f"wreck {P}", f"rock {Q}", "pile 46-00.70S 122-00.00W"
ALONE = {
    "heads below the joint one": (
        f"Chart 802: Insert {W}\nInsert {R}\nChart 803: Delete {B}\n",
        {"802": ["wreck", "rock"], "803": ["pile"]},
    ),
    "rows without their chart": (
        f"Insert\nChart 802   Wreck   {P}\n            Rock    {Q}\nChart 803   Pile    {B[5:]}\n",
        {"802": ["wreck", "rock"], "803": ["pile"]},
    ),
    "a heading of one": (
        f"Insert {W}\nChart 803 only: Insert\n{R}\n{B}\n",
        {"802": ["wreck"], "803": ["wreck", "rock", "pile"]},
    ),
    "all of them again": (
        f"Insert {W}\nChart 802 only\nInsert {R}\nAll charts\nDelete {B}\n",
        {"802": ["wreck", "rock", "pile"], "803": ["wreck", "pile"]},
    ),
    "in brackets without the word": (
        f"Insert wreck (802 only) {P}\nInsert rock (on 803) {Q}\nDelete {B} (803 only)\n",
        {"802": ["wreck"], "803": ["rock", "pile"]},
    ),
    "both before an item": (
        f"Chart 803 only: insert {W}\nBoth charts: insert {R}\n",
        {"802": ["rock"], "803": ["wreck", "rock"]},
    ),
}


@pytest.mark.parametrize(("items", "wanted"), ALONE.values(), ids=ALONE)
def test_items_of_one_chart(items: str, wanted: dict[str, list[str]]) -> None:
    bulletin = parse(JOINT + items)
    charts = bulletin.notices[0].charts
    found = {one.chart: [a.feature.kind for a in one.actions if a.usable] for one in charts}
    assert found == wanted
    assert len(charts) == 2


def test_an_item_below_one_of_a_single_chart_is_not_guessed() -> None:
    bulletin = parse(f"{JOINT}Insert\nChart 803 only: {W}\n{R}\n")
    assert "item-of-one-chart" in [one.code for one in bulletin.findings]
    usable = [a.feature.kind for c in bulletin.notices[0].charts for a in c.actions if a.usable]
    assert usable == ["wreck"]


@pytest.mark.parametrize(
    ("charts", "wanted"),
    [
        ("Charts 802, 803. Previous notices - 30/26 on 803, 31/26 on 802.", [31, 30]),
        ("Charts 802, 803. Previous notices - 802: 28/26, 30/26 - 803: 31/26", [28, 31]),
        ("Charts 802 - 803 [29/26] - INT 9801 [28/26]", [None, 29]),
        ("Charts 802 and 803. Previous notices: 802 and 803: 28/26", [28, 28]),
        ("Chart 802 Edition 3, 2024-05\nChart 803, Ed. 2, 05/2024.", [None, None]),
    ],
)
def test_notices_before_go_with_the_charts_they_stand_beside(
    charts: str, wanted: list[int | None]
) -> None:
    sections = parse(f"{NUMBER}{charts}\n{ITEMS}").notices[0].charts
    found = [(one.chart, one.previous.number if one.previous else None) for one in sections]
    assert found == [("802", wanted[0]), ("803", wanted[1])]


@pytest.mark.parametrize(
    ("charts", "wanted"),
    [
        ("Chart 802, sheets 2 and 3", [("802", "sheets 2 and 3")]),
        ("Chart 802 Panel 1, 2 and 3", [("802", "Panel 1, 2 and 3")]),
        ("Chart 802, plan 2 and 803 [30/26]", [("802", "plan 2"), ("803", None)]),
        ("Chart 802 (1:75,000), Chart 803 (1:50 000)", [("802", None), ("803", None)]),
        ("Chart 802, plan of Port Ellory and Quill", [("802", "plan of Port Ellory and Quill")]),
    ],
)
def test_sheets_panels_and_scales_are_no_charts(
    charts: str, wanted: list[tuple[str, str | None]]
) -> None:
    sections = parse(f"{NUMBER}{charts}\n{ITEMS}").notices[0].charts
    assert [(one.chart, one.panel) for one in sections] == wanted


def test_a_chart_that_cannot_be_read_among_others_is_told() -> None:
    bulletin = parse(f"{NUMBER}Charts 802, 803 and 805/1\n{ITEMS}")
    assert "chart-unread" in [one.code for one in bulletin.findings]


def test_a_sentence_about_the_charts_of_items_is_no_item() -> None:
    items = f"1. Insert {W}\n2. Delete {R}\n3. Insert {B}\n"
    text = f"{JOINT}{items}Items 1 and 2 apply to chart 802 only.\n"
    bulletin = parse(text)
    assert "item-of-one-chart" in [one.code for one in bulletin.findings]
    usable = [a.feature.kind for c in bulletin.notices[0].charts for a in c.actions if a.usable]
    assert "pile" not in usable


@pytest.mark.parametrize(
    ("before", "number", "codes"),
    [
        ("[30/26] [31/26]", 30, {"chart-head-unread"}),
        ("[30/26] [30/26]", 30, set()),
        ("[30/26] [31(T)/26]", 30, set()),
        ("(last correction NM 30 of 14 March 2026)", 30, set()),
        ("[3O/26]", None, {"previous-unread"}),
        ("[new series]", None, {"previous-unread"}),
        ("[]", None, set()),
    ],
)
def test_the_notice_before_is_one_and_can_be_read(
    before: str, number: int | None, codes: set[str]
) -> None:
    bulletin = parse(f"{NUMBER}Chart 802 {before}\n{ITEMS}")
    (chart,) = bulletin.notices[0].charts
    assert (chart.previous and chart.previous.number) == number
    assert {one.code for one in bulletin.findings if one.severity == "warning"} == codes


def test_a_notice_before_of_a_chart_that_is_not_named_is_told() -> None:
    listed = "Charts 802 and 803. Previous notices - 802: 30/26 - 805: 31/26"
    bulletin = parse(f"{NUMBER}{listed}\n{ITEMS}")
    sections = bulletin.notices[0].charts
    found = [(one.chart, one.previous and one.previous.number) for one in sections]
    assert found == [("802", 30), ("803", None)]
    told = [one for one in bulletin.findings if one.code == "chart-head-unread"]
    assert [one.message for one in told] == ["`805` in the head of a chart is not kept"]


def test_a_panel_is_not_the_chart_named_again() -> None:
    text = f"Chart 802, panel A [30/26]\nInsert {W}\nChart 802\nDelete {R}\n"
    sections = parse(NUMBER + text).notices[0].charts
    found = [(one.chart, one.panel, [a.verb for a in one.actions]) for one in sections]
    assert found == [("802", "panel A", ["insert"]), ("802", None, ["delete"])]


def test_the_datum_of_a_notice_is_that_of_charts_which_state_none() -> None:
    charts = f"Chart 802 [30/26]\nInsert {W}\nChart 803 [31/26] NAD27\nInsert {R}\n"
    sections = parse(f"{NUMBER}Positions referred to WGS84\n{charts}").notices[0].charts
    found = [(one.chart, one.datum and one.datum.name) for one in sections]
    assert found == [("802", "WGS84"), ("803", "NAD27")]


@pytest.mark.parametrize(
    ("head", "units"),
    [
        ("Chart 802 [30/26]\nChart 803 [31/26]\nDepths in feet.\n", ["ft", "ft"]),
        ("Chart(s): 802 [30/26]\n          803 [31/26]\nDepths in feet.\n", ["ft", "ft"]),
        ("Chart 802 [30/26]\nChart 803 [31/26] (depths in feet)\n", [None, "ft"]),
        ("Chart 802 [30/26] (metres)\nChart 803 [31/26]\nDepths in feet.\n", ["m", "ft"]),
    ],
)
def test_a_unit_below_charts_on_their_own_lines_is_that_of_all(
    head: str, units: list[str | None]
) -> None:
    sections = parse(f"{NUMBER}{head}Insert depth 12 {P}\n").notices[0].charts
    assert [one.depth_unit for one in sections] == units
    assert [len(one.actions) for one in sections] == [1, 1]


@pytest.mark.parametrize("words", ["Chart(s) affected: none", "Charts affected: nil."])
def test_a_notice_may_name_no_chart(words: str) -> None:
    bulletin = parse(f"{NUMBER}{words}\nThe office is closed on 3 August 2026.\n")
    assert bulletin.notices[0].charts == []
    assert not any(one.severity == "error" for one in bulletin.findings)


@pytest.mark.parametrize(
    "line",
    [
        "The same entries on chart 803 [31/26]",
        "the same corrections for sheet 803, last notice 31/26",
        "Chart 803 [31/26]: the same as chart 802",
        "Chart 803 [31/26]: same as above.",
    ],
)
def test_a_line_gives_a_further_chart_the_same_items(line: str) -> None:
    text = f"40/26 Quill Sound\nChart 802 [30/26]\nInsert wreck {P}\nDelete rock {Q}\n{line}\n"
    bulletin = parse(text)
    (notice,) = bulletin.notices
    read = [(c.chart, c.previous and c.previous.number, len(c.actions)) for c in notice.charts]
    assert read == [("802", 30, 2), ("803", 31, 2)]
    assert {f.code for f in bulletin.findings} == {"datum-not-stated"}


def test_items_of_a_chart_that_stands_nowhere_are_not_taken_over() -> None:
    text = f"40/26 Quill Sound\nChart 802\nInsert wreck {P}\nChart 803: same as chart 811\n"
    bulletin = parse(text)
    assert all(not c.actions for c in bulletin.notices[0].charts if c.chart != "802")
    assert "chart-without-actions" in {f.code for f in bulletin.findings}


@pytest.mark.parametrize("words", ["On both charts", "On the two charts", "On both these charts"])
def test_a_command_for_both_charts_is_for_two(words: str) -> None:
    body = f"{words} insert a wreck in {P}.\n"
    shared = parse(f"41/26 Quill Sound\nCharts 802 [30/26] and 803 [31/26]\n\n{body}")
    assert [a.usable for a in actions_of(shared)] == [True, True]
    third = parse(f"41/26 Quill Sound\nCharts 802 [30/26], 803 [31/26], 804 [32/26]\n\n{body}")
    assert not usable_of(third)
    assert errors(third) == {"item-of-one-chart"}
