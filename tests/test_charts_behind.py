"""Charts in brackets behind each item: sections of their own, or the item held back."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.charts_behind import read_charts_behind
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, errors

Sections = list[tuple[str | None, int | None, list[str]]]


def sections(text: str) -> Sections:
    """Charts with the number of the notice before, and the kinds that may be used on each."""
    return [
        (
            chart.chart,
            chart.previous.number if chart.previous else None,
            [action.feature.kind for action in chart.actions if action.usable],
        )
        for notice in parse(text).notices
        for chart in notice.charts
    ]


IN_COLUMNS = f"""\
12/26 Quill Sound. Buoyage.
Insert:
1. Wreck, {P} [204 (last correction 6-26)]
2. Rock, {Q} [204 (last correction 6-26),
   210 (last correction 5-26)]
Delete:
3. Beacon,
   {R}
   [210 (last correction 5-26)]
"""
SENTENCES = f"""\
12/26 Quill Sound. Buoyage.
To insert wreck in {P}
  (chart 204, previous update: 6/26).
To insert rock in {Q} (chart 204, previous update: 6/26; chart 210, previous update: 5/26).
To delete beacon in {R} (chart 210, previous update: 5/26).
"""
PROSE = f"""\
12/26 Quill Sound. Buoyage.
Insert a wreck in {P} [chart 204, after 6/26]. Insert a rock in {Q}
[charts 204 (after 6/26) and 210 (after 5/26)]. Delete the beacon in {R} [chart 210, after 5/26].
"""
BETWEEN = f"""\
12/26 Quill Sound. Buoyage.
Insert wreck [chart 204, last NM 6/26] {P}
Insert rock [chart 204, last NM 6/26; chart 210, last NM 5/26] {Q}
Delete beacon [chart 210, last NM 5/26] {R}
"""
POSITION_FIRST = f"""\
12/26 Quill Sound. Buoyage.
{P}
   Insert wreck [chart 204, last 6/26]
{Q}
   Insert rock [chart 204, last 6/26] [chart 210, last 5/26]
{R}
   Delete beacon [chart 210, last 5/26]
"""


@pytest.mark.parametrize("text", [IN_COLUMNS, SENTENCES, PROSE, BETWEEN, POSITION_FIRST])
def test_each_chart_has_the_items_that_name_it(text: str) -> None:
    assert sections(text) == [
        ("204", 6, ["wreck", "rock"]),
        ("210", 5, ["rock", "beacon_generic"]),
    ]
    places = [
        [position.iso6709 for action in chart.actions for position in action.geometry.positions]
        for chart in parse(text).notices[0].charts
    ]
    assert places == [[AT_P, AT_Q], [AT_Q, AT_R]]
    assert errors(parse(text)) == set()


def test_heads_with_charts_behind_the_items() -> None:
    text = (
        f"12/26 Quill Sound.\nCharts 204 [6/26] and 210 [5/26] WGS84\n"
        f"Insert wreck {P} [chart 204]\nInsert rock {Q}\nDelete beacon {R} [charts 204 and 210]\n"
    )
    both = ["rock", "beacon_generic"]
    assert sections(text) == [("204", 6, ["wreck", *both]), ("210", 5, both)]


@pytest.mark.parametrize(
    ("items", "usable"),
    [
        # What is not read for certain.
        (f"Insert wreck {P} [chart 204, see plan]\nInsert rock {Q} [chart 204]", ["rock"]),
        # Another chart than those of the notice before it.
        (f"Insert wreck {P} [chart 204]\nInsert rock {Q}", ["wreck"]),
        # One place for each chart.
        (f"Insert wrecks {P} [chart 4] and {Q} [chart 5]\nInsert rock {R} [chart 4]", ["rock"]),
        # Between two items of one line.
        (f"Insert wreck {P} [chart 204] insert rock {Q} [chart 210]", []),
        # Two notices before for one chart.
        (
            f"Insert wreck {P} [chart 204, last 6/26]\nInsert rock {Q} [chart 204, last 5/26]",
            ["wreck"],
        ),
        # Several items, and lines of charts behind some.
        (
            f"Insert wreck {P}\nInsert rock {Q}\n[chart 204]\nInsert pile {R}\n[chart 210]",
            ["rock", "pile"],
        ),
    ],
)  # fmt: skip
def test_what_is_not_certain_is_held_back(items: str, usable: list[str]) -> None:
    found = sections(f"12/26 Quill Sound.\n{items}\n")
    assert [kind for _, _, kinds in found for kind in kinds] == usable
    assert "item-charts-unread" in errors(parse(f"12/26 Quill Sound.\n{items}\n"))


def test_an_item_for_another_chart_than_those_of_its_notice_is_held_back() -> None:
    text = f"12/26 Quill Sound.\nCharts 204 [6/26] and 210 [5/26]\nInsert wreck {P} [chart 211]\n"
    assert sections(text) == [("204", 6, []), ("210", 5, [])]
    assert errors(parse(text)) == {"item-charts-unread"}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        # Heads of sections.
        (
            f"12/26 Quill Sound.\n[Chart 204, last 6/26]\nInsert wreck {P}\nInsert rock {Q}\n"
            f"[Chart 210, last 5/26]\nInsert wreck {P}\n",
            [("204", 6, ["wreck", "rock"]), ("210", 5, ["wreck"])],
        ),
        (
            f"12/26 Quill Sound.\nChart 204 [6/26]\nInsert wreck {P}\n"
            f"[Chart 210, last 5/26]\nInsert rock {Q}\n",
            [("204", 6, ["wreck"]), ("210", 5, ["rock"])],
        ),
        # A foot for all.
        (
            f"12/26 Quill Sound.\nInsert wreck {P}\nInsert rock {Q}\n(Charts 204, 210)\n",
            [("204", None, ["wreck", "rock"]), ("210", None, ["wreck", "rock"])],
        ),
        # Of a sentence that is no item.
        (
            f"12(T)/26 Quill Sound.\nThe light in {P} is extinguished (chart 204).\n",
            [("204", None, [])],
        ),
    ],
)
def test_brackets_that_are_not_behind_an_item(text: str, expected: Sections) -> None:
    assert sections(text) == expected


def test_a_year_left_out_is_that_of_the_edition() -> None:
    front = "Notices to Mariners, 5 May 2026\n\n"
    items = f"Insert wreck {P} [Chart 9, Prev. 8]\nInsert rock {Q} [Chart 10, Prev. 68]\n"
    bulletin = parse(f"{front}12/26 Quill Sound.\n{items}")
    before = [chart.previous for chart in bulletin.notices[0].charts]
    # Notice 68 is no notice before 12/26 of the same year.
    assert [(one.number, one.year) for one in before if one] == [(8, 2026), (68, None)]
    assert [one.code for one in bulletin.findings].count("notice-year-not-written") == 1


@pytest.mark.parametrize(
    ("words", "charts"),
    [
        ("[204, 210]", ["204", "210"]),
        ("(for charts 12 and 14)", ["12", "14"]),
        ("(chart 802 (INT 1503), plan A, after 70/26)", ["802"]),
        ("[Chart 204 [66/26]; 210 [58/26]]", ["204", "210"]),
        ("[chart 52], [chart 54]", ["52", "54"]),
        ("(charts 52, 54 (last correction 66/26))", None),
        ("(charts 802 to 804)", None),
        ("(chart 52, see 54)", None),
        ("(chart 52, 12 m)", None),
        ("[chart 52, chart 52]", None),
    ],
)
def test_words_of_brackets(words: str, charts: list[str] | None) -> None:
    head = read_charts_behind(words, 2026)
    assert (head and [chart.chart for chart in head.charts]) == charts


def test_a_heading_that_names_a_chart_for_which_nothing_is_told() -> None:
    heading = "12/26 All holders: the new edition of chart 63 is delayed to August 2026."
    assert sections(f"{heading} No chart is corrected by this number.\n") == []
    assert [one[0] for one in sections(f"{heading}\n")] == ["63"]


LISTED = f"""\
12/26 Quill Sound. Buoyage.
Positions:
  (a) {P}
  (b) {Q}
  (c) {R}
"""


def test_positions_of_a_list_are_there_for_all_charts() -> None:
    text = (
        f"{LISTED}Insert:\n  wreck, at (a)\n    (chart 204, last correction 6/26)\n"
        "  rock, at (b)\n    (chart 204, last correction 6/26; chart 210, last correction 5/26)\n"
        "Delete:\n  pile, at (c) (chart 210, last correction 5/26)\n"
    )
    assert sections(text) == [("204", 6, ["wreck", "rock"]), ("210", 5, ["rock", "pile"])]
    assert errors(parse(text)) == set()
    found = [a for c in parse(text).notices[0].charts for a in c.actions]
    assert [one.geometry.positions[0].iso6709 for one in found] == [AT_P, AT_Q, AT_Q, AT_R]


def test_a_position_of_a_list_that_no_item_names_is_told() -> None:
    text = f"{LISTED}Insert:\n  wreck, at (a)\n    (chart 204)\n  rock, at (b)\n    (chart 210)\n"
    assert errors(parse(text)) == {"item-without-verb"}


@pytest.mark.parametrize("joint", [" and ", ", and ", "; ", ", and also "])
def test_charts_below_a_line_are_those_of_all_its_items(joint: str) -> None:
    text = (
        f"{LISTED}Insert:\n  wreck, at (a){joint}rock, at (b)\n    (chart 204, last 6/26)\n"
        "  pile, at (c)\n    (chart 210, last correction 5/26)\n"
    )
    assert sections(text) == [("204", 6, ["wreck", "rock"]), ("210", 5, ["pile"])]
    assert errors(parse(text)) == set()


def test_charts_between_two_items_of_a_line_leave_both_in_doubt() -> None:
    text = (
        f"{LISTED}Insert:\n  wreck, at (a) (chart 204) and rock, at (b)\n    (chart 210)\n"
        "  pile, at (c) (chart 210)\n"
    )
    assert sections(text) == [("204", None, []), ("210", None, ["pile"])]


def test_charts_below_a_verb_head_the_items_and_stand_behind_none() -> None:
    text = (
        "12/26 Quill Sound. Buoyage.\nInsert:\n   (chart 204, last correction 6/26)\n"
        f"   wreck, {P}\n   rock, {Q}\n   (chart 210, last correction 5/26)\n   pile, {R}\n"
    )
    assert [kinds for _, _, kinds in sections(text) if kinds] == []
    assert errors(parse(text))
