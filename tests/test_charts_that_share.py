"""Several charts of a notice that share its items, in the forms in which offices name them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q

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
