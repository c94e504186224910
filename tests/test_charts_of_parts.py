"""Charts at the foot of a notice, each for a part of it, and cancellations behind the items."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.comes_back import assert_comes_back
from tests.short_notices import P, Q, R, codes, errors

PARTS = f"Part A. Insert wreck {P}; delete rock {Q}. Part B. Insert pile {R}.\n"
RUN_ON = f"613/26. QUILL SOUND. {PARTS}"
OF_A, OF_B = "Part A: chart 802 (previous 588/26).", "Part B: chart 803, plan B (previous 590/26)."
READ = [("802", None, ["wreck", "rock"]), ("803", "plan B", ["pile"])]


def charts(bulletin: Bulletin) -> list[tuple[str | None, str | None, list[str]]]:
    """Each chart with its panel and what may be used on it."""
    return [
        (chart.chart, chart.panel, [one.feature.kind for one in chart.actions if one.usable])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


@pytest.mark.parametrize(
    "foot",
    [
        f"    {OF_A} {OF_B}\n",
        f"{OF_A}\n{OF_B}\n",
        f"{OF_A}\n\n{OF_B}\n",
        f"{OF_B} {OF_A}\n",
        "Part A: chart 802 (previous 588/26). Part B: chart 803,\nplan B (previous 590/26).\n",
        "PART A - Chart 802 [588/26]. PART B - Chart 803, plan B [590/26].\n",
        "Part B is for chart 803, plan B (previous 590/26), part A is for\nchart 802 [588/26].\n",
        "Part A for chart 802 [588/26]; part B for chart 803, plan B [590/26].\n",
    ],
)
def test_each_part_has_the_chart_that_the_foot_gives_it(foot: str) -> None:
    bulletin = parse(RUN_ON + foot)
    assert charts(bulletin) == READ
    assert [chart.previous and chart.previous.number for chart in bulletin.notices[0].charts] == [
        588,
        590,
    ]
    assert bulletin.notices[0].heading == "QUILL SOUND"
    assert not codes(bulletin)
    assert bulletin.coverage.unread == 0
    assert_comes_back(bulletin.notices[0])


def test_parts_on_lines_of_their_own() -> None:
    body = f"Group 1: Insert wreck {P}\n  Delete rock {Q}\nGroup 2: Insert pile {R}\n"
    foot = "Group 1: chart 802 [588/26]\nGroup 2: chart 803, plan B [590/26]\n"
    following = f"614/26. ELLORY HAVEN.\nChart 804 [591/26]\nInsert wreck {P}\n"
    bulletin = parse(f"613/26. QUILL SOUND.\n{body}{foot}{following}")
    assert charts(bulletin) == [*READ, ("804", None, ["wreck"])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "foot",
    [
        OF_A,
        f"{OF_A} Part B: the plan on it.",
        f"{OF_A}\nPart B: the plan on it.",
        f"{OF_A} Part C: chart 803, plan B (previous 590/26).",
        f"{OF_A} Part A: chart 803, plan B (previous 590/26).",
        f"{OF_A} {OF_B} Part C: chart 804 (previous 591/26).",
    ],
)
def test_parts_and_charts_that_do_not_go_together_hold_all_items_back(foot: str) -> None:
    bulletin = parse(f"{RUN_ON}{foot}\n")
    assert all(not kinds for _, _, kinds in charts(bulletin))
    assert "item-charts-unread" in errors(bulletin)


def test_what_stands_in_no_part_holds_all_items_back() -> None:
    bulletin = parse(f"613/26. QUILL SOUND. Amend rock to wreck {R}. {PARTS}{OF_A} {OF_B}\n")
    assert all(not kinds for _, _, kinds in charts(bulletin))


def test_a_chart_at_the_foot_without_parts_has_all_items() -> None:
    bulletin = parse(f"{RUN_ON}Chart 802 (previous 588/26).\n")
    assert charts(bulletin) == [("802", None, ["wreck", "rock", "pile"])]


def test_heads_of_parts_have_what_stands_below_them() -> None:
    items = f"Insert wreck {P}\nPart 2: chart 803\nInsert pile {R}\n"
    bulletin = parse(f"613/26. QUILL SOUND.\nPart 1: chart 802 [588/26]\n{items}")
    assert charts(bulletin) == [("802", None, ["wreck"]), ("803", None, ["pile"])]


HEAD = "613/26. QUILL SOUND.\nChart 802 [588/26] WGS84\n"


def cancelled(bulletin: Bulletin) -> list[int | None]:
    return [one.number for one in bulletin.notices[0].cancels]


@pytest.mark.parametrize(
    "said",
    [
        "Notice 570(T)/26 is cancelled.",
        "Notice 570(T)/26\nis cancelled.",
        "Cancels Notice 570(T)/26.",
        "Notice 570(T)/26 is hereby cancelled.",
    ],
)
@pytest.mark.parametrize("rest", ["", f" Delete rock {Q}."])
def test_a_cancellation_behind_the_items_is_of_the_notice(said: str, rest: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}; insert pile {R}. {said}{rest}\n")
    assert cancelled(bulletin) == [570]
    assert charts(bulletin) == [("802", None, ["wreck", "pile", *(["rock"] if rest else [])])]
    assert not codes(bulletin)
    assert all(action.feature.name is None for action in bulletin.notices[0].charts[0].actions)


@pytest.mark.parametrize(
    "said",
    [
        "Notice 570(T)/26 is not cancelled.",
        "Notice 570(T)/26 is cancelled by Notice 620/26.",
        "Notice 570(T)/26 is cancelled in part.",
        "When the pile is driven notice 570(T)/26 is cancelled.",
    ],
)
def test_what_is_said_otherwise_of_another_notice_is_told(said: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}; insert pile {R}. {said}\n")
    assert cancelled(bulletin) == []
    assert codes(bulletin)
