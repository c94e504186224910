"""The plans, panels and sheets that heads and lines between the items name."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.comes_back import assert_comes_back
from tests.short_notices import P, Q, R, codes, errors

NUMBER = "613/26 Quill Sound - Wreck.\n"
HEAD = f"{NUMBER}Chart 802 [588/26]\n"


def panels(bulletin: Bulletin) -> list[tuple[str | None, str | None, list[str]]]:
    """Chart, panel and the things on it, usable or not."""
    return [
        (chart.chart, chart.panel, [one.feature.kind for one in chart.actions])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


def held(bulletin: Bulletin) -> list[str]:
    """The things that may not be used."""
    return [
        one.feature.kind
        for notice in bulletin.notices
        for chart in notice.charts
        for one in chart.actions
        if not one.usable
    ]


@pytest.mark.parametrize(
    ("head", "panel"),
    [
        ("Chart 802 and its plan of Ellory Harbour", "plan of Ellory Harbour"),
        ("Chart 802 (also plan A) [588/26]", "plan A"),
        ("Chart 802 (and plan) [588/26]", "plan"),
        ("Chart 802 (main chart and plan A) [588/26]", "plan A"),
        ("Chart 802 with its inset [588/26]", "inset"),
        ("Chart 802 (plan too) [588/26]", "plan"),
        ("Chart 802 (plan A as well) [588/26]", "plan A"),
        ("Chart 802 [588/26] and plan A", "plan A"),
        ("Chart 802 [588/26]\nMain chart and plan A", "plan A"),
    ],
)
def test_a_panel_beside_the_chart_itself_has_the_items_too(head: str, panel: str) -> None:
    bulletin = parse(f"{NUMBER}{head}\nInsert wreck {P}\n")
    assert panels(bulletin) == [("802", None, ["wreck"]), ("802", panel, ["wreck"])]
    assert errors(bulletin) == set()
    assert_comes_back(bulletin.notices[0])


def test_a_panel_and_the_main_chart_share_their_items() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nPlan A and main chart\nDelete rock {Q}\n")
    assert panels(bulletin) == [
        ("802", None, ["wreck"]),
        ("802", "Plan A", ["rock"]),
        ("802", None, ["rock"]),
    ]


def test_the_panel_alone_is_meant_where_that_is_said() -> None:
    bulletin = parse(f"{NUMBER}Charts 802 (and plan), 803 (plan only)\nInsert wreck {P}\n")
    found = [(chart, panel) for chart, panel, _ in panels(bulletin)]
    assert found == [("802", None), ("802", "plan"), ("803", "plan")]


def test_a_panel_behind_several_charts_is_told_and_not_given_to_one() -> None:
    bulletin = parse(f"{NUMBER}Charts 802 [5/26], 803 [6/26] and plan A\nInsert wreck {P}\n")
    assert [panel for _, panel, _ in panels(bulletin)] == [None, None]
    assert "chart-head-unread" in codes(bulletin)


@pytest.mark.parametrize(
    ("line", "panel"),
    [
        ("Plan, Ellory Harbour", "Plan, Ellory Harbour"),
        ("ELLORY HARBOUR PLAN", "ELLORY HARBOUR PLAN"),
        ("Ellory Harbour inset", "Ellory Harbour inset"),
        ("Port of Ellory (plan on chart)", "Port of Ellory"),
        ("Continuation A", "Continuation A"),
        ("Side B", "Side B"),
    ],
)
@pytest.mark.parametrize("above", ["", f"Insert light-buoy {R}\n"], ids=["first", "below an item"])
def test_a_line_that_names_a_panel_heads_what_stands_below(
    line: str, panel: str, above: str
) -> None:
    bulletin = parse(f"{HEAD}{above}{line}\nInsert wreck {P}\nMain chart\nDelete rock {Q}\n")
    assert panels(bulletin)[-2:] == [("802", panel, ["wreck"]), ("802", None, ["rock"])]
    assert held(bulletin) == []
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize(
    "line",
    ["Main chart", "Rest of chart", "Remainder of the chart", "Chart proper", "(main chart)"],
)
def test_the_main_chart_is_gone_back_to(line: str) -> None:
    bulletin = parse(f"{HEAD}Plan A\nInsert wreck {P}\n{line}\nDelete rock {Q}\n")
    assert panels(bulletin) == [("802", "Plan A", ["wreck"]), ("802", None, ["rock"])]


@pytest.mark.parametrize(
    ("lead", "panel"),
    [
        ("Inset A:", "Inset A"),
        ('Plan "Ellory Harbour" -', "Plan Ellory Harbour"),
        ("Continuation A:", "Continuation A"),
        ("Plan:", "Plan"),
        ("On the plan:", "plan"),
    ],
)
def test_a_panel_before_a_command_on_its_line(lead: str, panel: str) -> None:
    lines = f"{lead} insert wreck {P}\nMain: delete rock {Q}\n"
    bulletin = parse(f"{HEAD}Insert rock awash {R}\n{lines}")
    assert panels(bulletin) == [
        ("802", None, ["rock_awash"]),
        ("802", panel, ["wreck"]),
        ("802", None, ["rock"]),
    ]
    assert held(bulletin) == []


def test_the_sides_and_sheets_of_a_chart_are_kept() -> None:
    sides = parse(
        f"{NUMBER}Chart 802 side A: Insert wreck {P}\nChart 802 side B: Delete rock {Q}\n"
    )
    assert panels(sides) == [("802", "side A", ["wreck"]), ("802", "side B", ["rock"])]
    sheets = f"Chart 802 [588/26]{{}}sheet 2\nInsert wreck {P}\nSheet 3\nDelete rock {Q}\n"
    for joint in (" ", ", "):
        found = parse(NUMBER + sheets.format(joint))
        assert panels(found) == [("802", "sheet 2", ["wreck"]), ("802", "Sheet 3", ["rock"])]


def test_a_lone_sheet_numbers_a_page_where_no_chart_has_sheets() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nSheet 3\nDelete rock {Q}\n")
    assert panels(bulletin) == [("802", None, ["wreck", "rock"])]


@pytest.mark.parametrize("words", ["(plan also)", "(inset only)", "(plan A as well)"])
def test_an_item_that_names_a_panel_behind_its_place_is_held_back(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P} {words}\nDelete rock {Q}\n")
    assert held(bulletin) == ["wreck"]
    assert "item-of-one-panel" in errors(bulletin)


def test_a_panel_named_between_two_commands_holds_both_back() -> None:
    bulletin = parse(f"{NUMBER}Chart 802: insert wreck {P} and, on its plan, delete rock {Q}.\n")
    assert held(bulletin) == ["wreck", "rock"]


def test_a_title_nobody_knows_ends_what_is_surely_of_a_panel() -> None:
    text = f"{HEAD}ELLORY HARBOUR PLAN\nInsert wreck {P}\nAPPROACHES\nDelete rock {Q}\n"
    bulletin = parse(text)
    assert held(bulletin) == ["rock"]
    assert errors(bulletin) == {"item-of-other-sheet"}
    assert held(parse(text.replace("ELLORY HARBOUR PLAN\n", ""))) == []


@pytest.mark.parametrize("word", ["CHT802", "CHART802", "Chart802"])
def test_a_chart_right_behind_its_word(word: str) -> None:
    bulletin = parse(f"NM613/26 {word} INS WK 4612.34S 12245.67W DEL RK 4613.34S 12245.67W\n")
    assert panels(bulletin) == [("802", None, ["wreck", "rock"])]


TITLES = "COMMAND   ITEM            LATITUDE     LONGITUDE\n\n"
ROWS = """\
CHART 802   LAST NOTICE 588/26   NOTICE 613/26
{first}PLAN A: QUILL BASIN
  ADD     Mooring buoy    46 00.115S   122 01.402W
PLAN B: ELLORY ROADS
  ADD     Pile            46 00.131S   122 01.377W
"""
FIRST = "  DELETE  Rock            46 00.050S   122 01.100W\n"


@pytest.mark.parametrize("titles", ["", TITLES])
@pytest.mark.parametrize("first", ["", FIRST])
def test_panels_between_the_rows_of_a_table(titles: str, first: str) -> None:
    found = panels(parse(titles + ROWS.format(first=first)))
    of_chart = [("802", None, ["rock"])] if first else []
    assert found == [*of_chart, ("802", "PLAN A", ["buoy_mooring"]), ("802", "PLAN B", ["pile"])]


@pytest.mark.parametrize(
    ("head", "charts"),
    [
        ("Chart 802 sheet 2 of 3 [3/26]", [("802", "sheet 2 of 3", 3)]),
        ("Chart 802 sheet 2, last notice 3/26", [("802", "sheet 2", 3)]),
        ("Chart 802 sheet B (INT 9802) [3/26]", [("802", "sheet B", 3)]),
        (
            "Charts 802 sheet 2 and 803 sheet A WGS 84",
            [("802", "sheet 2", 0), ("803", "sheet A", 0)],
        ),
        ("Sheets 802 and 803 WGS 84", [("802", None, 0), ("803", None, 0)]),
        ("Sheet 9 [3/26]", [("9", None, 3)]),
    ],
)
def test_a_sheet_right_behind_the_number_of_a_chart_is_no_other_chart(
    head: str, charts: list[tuple[str, str | None, int]]
) -> None:
    (notice,) = parse(f"12/26 Quill Sound\n{head}\nInsert wreck {P}\n").notices
    assert [
        (one.chart, one.panel, one.previous.number if one.previous else 0) for one in notice.charts
    ] == charts
