"""Heads that stand again where a page breaks, and charts that have the items of another.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, codes, told

PAIR = [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "head",
    [
        "12/26 Quill Sound (continued)\nChart 802 (continued)",
        "12/26 (continued)\nChart 802 (continued)",
        "12/26 (contd.)",
        "12/26 Quill Sound - continued",
        "Chart 802 (cont.)",
        "\nChart 802 (continued from previous page)\n",
        "12/26 Quill Sound (cont'd)\n\nChart 802 [3/26] (cont'd)\n",
    ],
)
@pytest.mark.parametrize("verb", ["", "Insert "])
def test_such_a_head_opens_nothing(head: str, verb: str) -> None:
    items = (f"Insert\nwreck {P}", f"{verb}rock {Q}")
    bulletin = parse(f"{HEAD}{items[0]}\n{head}\n{items[1]}\n")
    assert [notice.id for notice in bulletin.notices] == ["12/26"]
    assert [chart.chart for chart in bulletin.notices[0].charts] == ["802"]
    assert (told(bulletin), codes(bulletin)) == (PAIR, set())


def test_the_head_of_another_chart_stays() -> None:
    bulletin = parse(f"{HEAD}Insert\nwreck {P}\nChart 803 (continued)\nInsert rock {Q}\n")
    assert [chart.chart for chart in bulletin.notices[0].charts] == ["802", "803"]


def test_the_head_of_another_notice_stays() -> None:
    text = f"{HEAD}Insert\nwreck {P}\n13/26 Quill Sound (continued)\nChart 802\nInsert rock {Q}\n"
    assert [notice.id for notice in parse(text).notices] == ["12/26", "13/26"]


def charts(text: str) -> dict[str | None, list[tuple[str, str]]]:
    return {
        chart.chart: [(action.verb, action.feature.kind) for action in chart.actions]
        for notice in parse(HEAD + text).notices
        for chart in notice.charts
    }


@pytest.mark.parametrize(
    "words",
    ["As above.", "As above", "Same as above", "Same corrections as above.", "As chart 802"],
)
def test_a_chart_has_the_items_of_the_one_above(words: str) -> None:
    wreck = [("insert", "wreck")]
    assert charts(f"Insert wreck {P}\nChart 803\n{words}\n") == {"802": wreck, "803": wreck}


def test_what_stands_below_is_of_the_chart_alone() -> None:
    found = charts(f"Insert wreck {P}\nChart 803\nAs above.\nDelete rock {Q}\n")
    wreck = ("insert", "wreck")
    assert found == {"802": [wreck], "803": [wreck, ("delete", "rock")]}


def test_the_chart_that_is_named_is_meant() -> None:
    found = charts(f"Insert wreck {P}\nChart 803\nDelete rock {Q}\nChart 804\nAs on chart 802\n")
    assert found["804"] == found["802"] == [("insert", "wreck")]


@pytest.mark.parametrize("words", ["As above.", "As chart 805", f"As above, and delete pile {R}"])
def test_without_such_a_chart_no_items_are_taken(words: str) -> None:
    found = charts(f"Insert wreck {P}\nChart 803\nDelete rock {Q}\n{words}\n")
    assert found["802"] == [("insert", "wreck")]
    assert found["803"][:1] == [("delete", "rock")]
