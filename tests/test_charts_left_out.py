"""Charts that are named beside commands: in front of one, behind one, or in a sentence below."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import HEAD, P, Q, codes, errors, usable_of

BOTH = "613/26 Quill Sound.\nCharts 802 [588/26], 803 [590/26] WGS84\n"


def on_charts(bulletin: Bulletin) -> list[tuple[str | None, list[str]]]:
    """Each chart with the things that may be used on it."""
    return [
        (chart.chart, [one.feature.kind for one in chart.actions if one.usable])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


@pytest.mark.parametrize(
    "lead",
    [
        "804 [6/26]:", "804 [6/26]", "804 [6/26] -", "804 [6/26] (INT 9804):",
        "804 (INT 9804) [6/26]:", "2. 804 [6/26]",
    ],
)  # fmt: skip
def test_a_chart_with_its_notice_before_leads_the_command_behind_it(lead: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{lead} Delete rock {Q}\n")
    assert on_charts(bulletin) == [("802", ["wreck"]), ("804", ["rock"])]
    assert bulletin.notices[0].charts[1].previous is not None


def test_what_follows_is_for_that_chart_too() -> None:
    bulletin = parse(f"{HEAD}804 [6/26]: Delete rock {Q}\nInsert wreck {P}\n")
    assert on_charts(bulletin)[-1] == ("804", ["rock", "wreck"])


@pytest.mark.parametrize("lead", ["1 [6/26]:", "1.", "(804)"])
def test_a_count_of_items_leads_no_chart(lead: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{lead} Delete rock {Q}\n")
    assert [chart for chart, _ in on_charts(bulletin)] == ["802"]


@pytest.mark.parametrize("behind", ["- 803", ". (803)", " - 803."])
def test_a_chart_behind_an_item_of_several_charts_holds_it_back(behind: str) -> None:
    bulletin = parse(f"{BOTH}Insert wreck {P}\nDelete rock {Q} {behind}\n")
    assert on_charts(bulletin) == [("802", ["wreck"]), ("803", ["wreck"])]


def test_a_number_like_the_chart_behind_an_item_may_be_another_one() -> None:
    assert usable_of(parse(f"{HEAD}Insert wreck {P}. (803)\n")) == []
    assert usable_of(parse(f"{HEAD}Insert wreck {P}. (80)\n")) == [("insert", "wreck")]


@pytest.mark.parametrize(
    "said",
    [
        "This correction also applies to chart 803 [6/26].",
        "Also on chart 803 [6/26]",
        "The same insertion on chart 803 [6/26].",
    ],
)
def test_a_chart_that_a_sentence_adds_is_told(said: str) -> None:
    assert "chart-left-out" in codes(parse(f"{HEAD}Insert wreck {P}\n{said}\n"))


@pytest.mark.parametrize("bracket", ["(also 803)", "(and also on 803)"])
def test_a_chart_that_a_bracket_of_the_head_adds_is_told(bracket: str) -> None:
    bulletin = parse(f"12/26 Quill Sound.\nChart 802 {bracket} [3/26]\nInsert wreck {P}\n")
    assert on_charts(bulletin)[0] == ("802", ["wreck"])
    assert "chart-left-out" in codes(bulletin)


@pytest.mark.parametrize("said", ["See also chart 803.", "Not shown on chart 803, too."])
def test_a_chart_that_is_to_be_seen_gets_nothing(said: str) -> None:
    assert "chart-left-out" not in codes(parse(f"{HEAD}Insert wreck {P}\n\n{said}\n"))


def test_a_chart_that_has_the_items_is_not_left_out() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nThe same on chart 803 [6/26].\n")
    assert on_charts(bulletin) == [("802", ["wreck"]), ("803", ["wreck"])]
    assert not {"chart-left-out", *errors(bulletin)} & codes(bulletin)
