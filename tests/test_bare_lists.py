"""Lists of items beside a chart that nothing marks as lists: told, and no item is used."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, errors

HEAD = "12/26 Quill Sound.\nDatum: WGS84\n"
ITEMS = f"a. Insert wreck {P}\nb. Insert rock {Q}\nc. Insert buoy {P}\n"
COUNTED = ITEMS.replace("a.", "1.").replace("b.", "2.").replace("c.", "3.")


def _both_ways(items: str, charts: str) -> list[str]:
    return [f"{HEAD}{items}{charts}", f"{HEAD}{charts}{items}"]


@pytest.mark.parametrize(
    "charts",
    [
        "Chart 45 [12/26]: a, b\nChart 46 [13/26]: c\n",
        "Chart 45 [12/26]: a), b)\nChart 46 [13/26]: c)\n",
        "Chart 45 [12/26]: all but c\nChart 46 [13/26]\n",
        "Chart 45 [12/26]: all but the last\nChart 46 [13/26]\n",
        "Chart 45 [12/26] a to b\nChart 46 [13/26] c only\n",
        "Chart 45 [12/26] ab\nChart 46 [13/26] bc\n",
        "Chart 45 [12/26] A/B\nChart 46 [13/26] C\n",
        "Chart 45 [12/26] the first two\nChart 46 [13/26]\n",
        "Chart 45 [12/26] wreck only\nChart 46 [13/26]\n",
        "Charts affected: 45 [12/26] a & b, 46 [13/26] b - c, 47 [14/26] not c\n",
        "Charts 45, 46 (not b)\n",
        "Chart 45 [12/26]\na, b\nChart 46 [13/26]\nc\n",
        "a, b: Chart 45 [12/26]\nc: Chart 46 [13/26]\n",
    ],
)
def test_no_lettered_item_is_used_while_its_charts_are_open(charts: str) -> None:
    for text in _both_ways(ITEMS, charts):
        bulletin = parse(text)
        assert "item-of-one-chart" in errors(bulletin)
        assert not any(action.usable for action in actions_of(bulletin))


@pytest.mark.parametrize(
    "charts",
    [
        "Charts: 45 [12/26] 1, 46 [13/26] 2\n",
        "Charts affected: 45 (items 1, 2); 46 (all except 2); 47 (not 1)\n",
        "Chart 45 [12/26]: 1, 2\nChart 46 [13/26]: 3\n",
        "Chart 45: 1 and 2\nChart 46: 3\n",
        "Charts 45 [12/26], 1, 2; 46 [13/26], 3\n",
        "Charts 45 [12/26] nos 1 and 2, 46 [13/26] no. 3\n",
        "Charts 45 [12/26] #1, 46 [13/26] #2\n",
    ],
)
@pytest.mark.parametrize("items", [ITEMS, COUNTED], ids=["lettered", "counted"])
def test_no_item_is_used_while_the_charts_of_its_number_are_open(charts: str, items: str) -> None:
    for text in _both_ways(items, charts):
        bulletin = parse(text)
        assert "item-of-one-chart" in errors(bulletin)
        assert not any(action.usable for action in actions_of(bulletin))


@pytest.mark.parametrize(
    "charts",
    [
        "Charts 45 [12/26], 46 [13/26]\n",
        "Charts 45, 2\n",
        "Charts 1, 2, 3\n",
        "Charts 1 [1/26], 2 [2/26]\n",
        "Charts 45 (plan A) [12/26], 46 [13/26]\n",
        "Chart 45 Edition 2 [12/26]\nChart 46 Edition 3 [13/26]\n",
        "Chart 45 a plan of the sound [12/26]\nChart 46 [13/26]\n",
        "Charts 45 [12/26] and 2 [13/26]\n",
    ],
)
def test_what_lists_no_items_holds_none_back(charts: str) -> None:
    for items in (ITEMS, COUNTED):
        for text in _both_ways(items, charts):
            assert "item-of-one-chart" not in errors(parse(text))
