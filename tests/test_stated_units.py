"""The unit of depths, wherever a notice states it: in the head of a chart, or in a sentence."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records import Depth
from noticeparse.records.action import Action

HEAD = "12/26 Quill Sound."
ITEM = "Insert depth 4 46-00.00S 122-00.00W"
IN = {"fm_ft": Decimal("7.3152"), "ft": Decimal("1.2192"), "m": Decimal(4)}

HEADS = [
    ("Chart 802 [3/26] Fathoms", "fm_ft"),
    ("Chart 802 [3/26] fathoms", "fm_ft"),
    ("Chart 802 [3/26] Feet", "ft"),
    ("Chart 802 [3/26] Metres", "m"),
    ("Fathom chart 802 [3/26]", "fm_ft"),
    ("Chart 802 [3/26] Fathom chart", "fm_ft"),
    ("Chart 802 [3/26] metric chart", "m"),
    ("Chart 802 [3/26] WGS84, fms", "fm_ft"),
    ("Chart 802 [3/26] (fms.)", "fm_ft"),
    ("Chart 802 [3/26]\nAll depths in this notice are in fathoms.", "fm_ft"),
    ("All depths in this notice are in fathoms.\nChart 802 [3/26]", "fm_ft"),
    ("Note: chart 802 is a fathoms chart.\nChart 802 [3/26]", "fm_ft"),
    ("Chart 802 [3/26]\nNote: chart 802 is a fathoms chart.", "fm_ft"),
]


def read_depth(text: str) -> Depth:
    depth = parse(text).notices[0].charts[0].actions[0].feature.depth
    assert depth is not None
    return depth


@pytest.mark.parametrize(("head", "unit"), HEADS)
def test_the_unit_is_that_of_the_chart(head: str, unit: str) -> None:
    bulletin = parse(f"{HEAD}\n{head}\n{ITEM}\n")
    assert [(one.chart, one.depth_unit) for one in bulletin.notices[0].charts] == [("802", unit)]
    depth = read_depth(f"{HEAD}\n{head}\n{ITEM}\n")
    assert (depth.value_m, depth.unit) == (IN[unit], unit)


def test_a_sentence_below_the_items_holds_as_well() -> None:
    depth = read_depth(f"{HEAD}\nChart 802 [3/26]\n{ITEM}\nNote: chart 802 is a fathoms chart.\n")
    assert depth.value_m == IN["fm_ft"]


def test_a_sentence_holds_for_the_charts_it_names() -> None:
    heads = "Charts 802 [3/26] and 803 [4/26]"
    charts = parse(f"{HEAD}\nNote: chart 803 is a fathoms chart.\n{heads}\n{ITEM}\n").notices[0]
    assert [(one.chart, one.depth_unit) for one in charts.charts] == [
        ("802", None),
        ("803", "fm_ft"),
    ]


# words of a unit that nobody takes leave the figure in doubt
UNREAD = [
    "The figures on the older print of the chart are fathoms.",
    "Note: soundings on the older plans are in fathoms, see the title.",
]


@pytest.mark.parametrize("words", UNREAD)
def test_a_unit_that_is_not_read_holds_bare_depths_back(words: str) -> None:
    for item, usable in ((ITEM, False), (ITEM.replace("4 ", "4m "), True)):
        bulletin = parse(f"{HEAD}\nChart 802 [3/26]\n{item}\n{words}\n")
        assert bulletin.notices[0].charts[0].actions[0].usable is usable
        told = "depth-unit-unread" in {one.code for one in bulletin.findings}
        assert told is not usable


# names and figures of their own are no unit of a chart
NO_UNITS = ["Chart 802 [3/26] Fathom Bank", "Chart 802 [3/26]\nThe mast is now 40 feet high."]


@pytest.mark.parametrize("head", NO_UNITS)
def test_other_words_state_no_unit(head: str) -> None:
    bulletin = parse(f"{HEAD}\n{head}\n{ITEM}\n")
    assert bulletin.notices[0].charts[0].depth_unit is None
    assert bulletin.notices[0].charts[0].actions[0].usable


# brackets around the unit change nothing; one letter is no unit
BESIDE = [
    ("depth 4 (fms)", "fm"),
    ("depth 4 (fms.)", "fm"),
    ("depth 4 (fathoms)", "fm"),
    ("depth 4 (feet)", "ft"),
    ("depth 4 (metres)", "m"),
    ("depth 4 f.", None),
    ("depth 4 f", None),
]
IN_UNIT = IN | {"fm": IN["fm_ft"]}


@pytest.mark.parametrize(("phrase", "unit"), BESIDE)
def test_the_unit_beside_a_figure(phrase: str, unit: str | None) -> None:
    bulletin = parse(f"{HEAD}\nChart 802 [3/26]\nInsert {phrase} 46-00.00S 122-00.00W\n")
    (action,) = bulletin.notices[0].charts[0].actions
    assert action.usable is (unit is not None)
    if unit is not None:
        assert action.feature.depth is not None
        assert (action.feature.depth.value_m, action.feature.depth.unit) == (IN_UNIT[unit], unit)
    else:
        assert "depth-unit-unread" in {one.code for one in bulletin.findings}


def _in_list(unit: str) -> list[Action]:
    bulletin = parse(
        f"{HEAD}\nChart 802 [3/26]\nInsert the following depths in {unit}:\n"
        "3.2 46-00.00S 122-00.00W\n4.1 46-00.10S 122-00.00W\n"
    )
    return bulletin.notices[0].charts[0].actions


def test_the_unit_of_a_list_of_depths_that_is_none_holds_them_all_back() -> None:
    assert not any(one.usable for one in _in_list("fathoms and feet"))


@pytest.mark.parametrize(("unit", "metres"), [("feet", "0.3048"), ("fathoms", "1.8288")])
def test_the_unit_of_a_list_of_depths_is_that_of_each(unit: str, metres: str) -> None:
    read = [one.feature.depth.value_m for one in _in_list(unit) if one.feature.depth]
    assert read == [Decimal("3.2") * Decimal(metres), Decimal("4.1") * Decimal(metres)]
