"""Items of several charts of which something is said for one of them: in brackets, in notes."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, R, codes, errors

NUMBER = "613/26 Quill Sound.\n"
HEAD = f"{NUMBER}Charts 802 [588/26], 803 [590/26]\n"


def usable(bulletin: Bulletin) -> list[tuple[str | None, list[str]]]:
    """Each chart with the things that may be used on it."""
    return [
        (chart.chart, [one.feature.kind for one in chart.actions if one.usable])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


@pytest.mark.parametrize(
    "words",
    ["(803)", "(not on 803)", "(803: with depth 12m)", "(not 803)"],
)
@pytest.mark.parametrize("item", ["rock {} {}", "rock {1} {0}"], ids=["before", "behind"])
def test_a_chart_in_a_bracket_holds_its_item_back(words: str, item: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nDelete {item.format(words, Q)}\n")
    assert all("rock" not in kinds for _, kinds in usable(bulletin))
    assert usable(bulletin)[0][1] == ["wreck"]


@pytest.mark.parametrize("words", ["(on 803)", "[chart 803]", "(803 only)"])
def test_a_chart_that_a_bracket_tells_in_words_has_the_item_alone(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nDelete rock {words} {Q}\n")
    assert usable(bulletin) == [("802", ["wreck"]), ("803", ["wreck", "rock"])]


def test_a_chart_with_its_own_place_holds_both_places_back() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P} (in 803, {R})\nDelete rock {Q}\n")
    assert usable(bulletin) == [("802", ["rock"]), ("803", ["rock"])]


@pytest.mark.parametrize("words", ["(802, 803)", "(802 and 803 only)", "(height 80m)", "(80)"])
def test_all_charts_in_a_bracket_limit_nothing(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {words} {P}\n")
    assert "item-of-one-chart" not in errors(bulletin)


def test_a_figure_in_a_bracket_is_no_chart_of_a_notice_with_one() -> None:
    bulletin = parse(f"{NUMBER}Chart 802 [588/26]\nDelete rock (802) {P}\n")
    assert "item-of-one-chart" not in errors(bulletin)


@pytest.mark.parametrize("lead", ["Both charts:", "All charts:", "On both charts:"])
def test_an_item_of_all_charts_below_one_of_one_chart(lead: str) -> None:
    lines = f"Chart 803: insert rock {P}\n{lead} insert wreck {Q}\n"
    assert usable(parse(HEAD + lines)) == [("802", ["wreck"]), ("803", ["rock", "wreck"])]


def test_both_of_three_charts_are_not_told() -> None:
    heads = f"Chart 802\nInsert rock {P}\nChart 803\nInsert pile {Q}\nChart 804\nInsert pile {P}\n"
    bulletin = parse(f"{NUMBER}{heads}Both charts: insert wreck {R}\n")
    assert all("wreck" not in kinds for _, kinds in usable(bulletin))


@pytest.mark.parametrize("mark", ["(1)", "1.", "1)", "*", "†"])
def test_a_note_for_one_chart_alone_holds_its_item_back(mark: str) -> None:
    items = f"Insert wreck {P} {mark}\nDelete rock {Q}\n"
    bulletin = parse(f"{HEAD}{items}{mark} For chart 802 only.\n")
    assert all("wreck" not in kinds for _, kinds in usable(bulletin))


OUTSIDE = [
    "Remark: item (b) outside limits of 803.",
    "Item (b) is beyond the limits of chart 803.",
    "N.B. Chart 803 does not extend to the rock.",
    "Chart 803 does not cover item (b).",
    "The rock is off the chart 803.",
]


@pytest.mark.parametrize("said", OUTSIDE)
def test_what_lies_outside_a_chart_holds_its_actions_back(said: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n(a) wreck {P}\n(b) rock {Q}\n{said}\n")
    assert ("803", []) in usable(bulletin)
    assert "item-of-one-chart" in errors(bulletin)


def test_what_is_not_charted_cannot_be_deleted() -> None:
    items = f"Insert wreck {P}\nDelete rock {Q}\n"
    bulletin = parse(f"{HEAD}{items}The rock is not charted on 803.\n")
    assert usable(bulletin) == [("802", ["wreck", "rock"]), ("803", ["wreck"])]
    said = "The wreck is not charted on 803."
    assert errors(parse(f"{HEAD}Insert wreck {P}\n{said}\n")) == set()


@pytest.mark.parametrize(
    "said",
    [
        "Chart 803 does not show depths in metres.",
        "The rock lies outside the limits of the port.",
        "The wreck is outside the limits of charts 802 and 803.",
        "The limits of chart 803 are to be altered in a new edition.",
    ],
)
def test_what_is_said_of_no_single_chart_holds_nothing_back(said: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\nDelete rock {Q}\n{said}\n")
    assert "item-of-one-chart" not in errors(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "Same on 803 [590/26].",
        "The same corrections on 803.",
        "Same on 803",
        "This also applies to chart 803 [590/26].",
        "The above corrections also apply to chart 803.",
        "These are to be made also on chart 803 [590/26]",
    ],
)
def test_a_further_chart_takes_the_items_above(line: str) -> None:
    bulletin = parse(f"{NUMBER}Chart 802 [588/26]\nInsert wreck {P}\n{line}\n")
    assert usable(bulletin) == [("802", ["wreck"]), ("803", ["wreck"])]
    assert not codes(bulletin) - {"previous-of-some", "previous-later"}


def test_several_further_charts_take_the_items_above() -> None:
    line = "This also applies to chart 803 [590/26] and 804 [591/26]."
    bulletin = parse(f"{NUMBER}Chart 802 [588/26]\nInsert wreck {P}\n{line}\n")
    assert usable(bulletin) == [("802", ["wreck"]), ("803", ["wreck"]), ("804", ["wreck"])]
    before = [chart.previous and chart.previous.number for chart in bulletin.notices[0].charts]
    assert before == [588, 590, 591]


def test_that_the_above_is_for_one_chart_alone_is_no_further_chart() -> None:
    line = "The above applies to chart 802 only."
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{line}\n")
    assert usable(bulletin) == [("802", []), ("803", [])]
