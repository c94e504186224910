"""Sentences that bind items to one of the charts of their notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, errors

CHARTS = "12/26 Quill Sound.\nCharts 802, 803 WGS84\n"
ITEMS = f"1. Insert wreck {P}\n2. Insert rock {Q}\n"


@pytest.mark.parametrize(
    "said",
    [
        "Item 1 applies to chart 802 only.",
        "Correction (1) is for chart 802 only.",
        "Item 2 does not affect chart 803.",
        "Note: the wreck is not to be inserted on chart 803.",
        "Chart 803: item 2 only.",
        "Chart 802 takes items 1 and 2.",
        "The above to be applied to chart 802 only.",
        "Items 1 and 2 apply to charts 802 and 803 respectively.",
        "(1) affects chart 802. (2) affects chart 803.",
        "The above holds for charts 802 and 803, except the deletion, which is for 803 only.",
        "All for charts 802 and 803 without item 2.",
    ],
)
@pytest.mark.parametrize("gap", ["", "\n"], ids=["below the last item", "apart"])
def test_no_item_is_used_while_its_chart_is_open(said: str, gap: str) -> None:
    bulletin = parse(f"{CHARTS}{ITEMS}{gap}{said}\n")
    assert "item-of-one-chart" in errors(bulletin)
    assert not any(action.usable for action in actions_of(bulletin))


@pytest.mark.parametrize(
    "said",
    [
        "All corrections apply to both charts.",
        "The corrections apply to charts 802 and 803.",
        "A new edition of chart 802 will be published shortly.",
        "Chart 802 is not affected by the tide.",
        "Item 1 was reported by a ship. See chart 802.",
        "Charts 802 and 803 are sold without tax.",
    ],
)
def test_what_binds_no_item_holds_none_back(said: str) -> None:
    bulletin = parse(f"{CHARTS}{ITEMS}\n{said}\n")
    assert errors(bulletin) == set()
    assert [action.usable for action in actions_of(bulletin)] == [True] * 4


def test_items_of_one_chart_each_are_bound_already() -> None:
    charts = f"Chart 802\nInsert wreck {P}\nChart 803\nInsert rock {Q}\n"
    bulletin = parse(f"12/26 Quill Sound.\n{charts}\nItem 1 applies to chart 802 only.\n")
    assert "item-of-one-chart" not in errors(bulletin)


def test_items_named_in_the_head_are_given_to_their_chart() -> None:
    heads = "Charts 802 (items 1 and 2 only), 803 (item 2 only) WGS84"
    bulletin = parse(f"12/26 Quill Sound.\n{heads}\n{ITEMS}")
    assert errors(bulletin) == set()
    found = [(c.chart, [a.label for a in c.actions]) for c in bulletin.notices[0].charts]
    assert found == [("802", ["1", "2"]), ("803", ["2"])]


@pytest.mark.parametrize("less", ["without the deletion", "except the rock", "but not item 2"])
def test_a_chart_that_has_the_items_of_another_less_one(less: str) -> None:
    items = f"Insert wreck {P}\nDelete rock {Q}\n"
    head = "12/26 Quill Sound.\nChart 802 [3/26]\n"
    bulletin = parse(f"{head}{items}The same on chart 803 [6/26] {less}.\n")
    assert "item-of-one-chart" in errors(bulletin)
    assert not any(action.usable for action in actions_of(bulletin))
