"""Heads said again where a notice goes on over a page: `17/26 Quill Sound (continued)`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, codes

ABOVE = f"17/26  Quill Sound - Works.\nChart 802 [9/26] WGS84\nInsert\nwreck {P}\n"
AGAIN = [
    "17/26 Quill Sound - Works (continued)\nChart 802 (continued)",
    "17/26 (continued)",
    "17/26 (contd)\nChart 802 (contd.)",
    "17/26 Quill Sound (cont.)\n\nChart 802 [9/26] (cont.)\n",
    "Chart 802 - continued",
    "NM 17/26 continued from page 3",
    "(17/26 continued)",
]


@pytest.mark.parametrize("again", AGAIN)
@pytest.mark.parametrize("joint", ["", "\n"])
def test_items_go_on_below_it(again: str, joint: str) -> None:
    bulletin = parse(f"{ABOVE}{joint}{again}\nrock {Q}\n")
    (notice,) = bulletin.notices
    assert (notice.id, notice.heading) == ("17/26", "Quill Sound - Works")
    (chart,) = notice.charts
    assert [(one.verb, one.feature.kind, one.usable) for one in chart.actions] == [
        ("insert", "wreck", True),
        ("insert", "rock", True),
    ]
    assert codes(bulletin) == set()


def test_another_chart_may_follow_below_it() -> None:
    text = f"{ABOVE}\n17/26 (continued)\nChart 803 [8/26] WGS84\nDelete rock {Q}\n"
    (notice,) = parse(text).notices
    assert [(one.chart, len(one.actions)) for one in notice.charts] == [("802", 1), ("803", 1)]


@pytest.mark.parametrize("head", ["18/26 (continued)", "18/26 Port Ellory (continued)"])
def test_that_of_another_notice_opens_it(head: str) -> None:
    text = f"{ABOVE}\n{head}\nChart 803 [8/26] WGS84\nDelete rock {Q}\n"
    assert [one.id for one in parse(text).notices] == ["17/26", "18/26"]


def test_that_of_another_chart_opens_it() -> None:
    (notice,) = parse(f"{ABOVE}\nChart 803 (continued)\nDelete rock {Q}\n").notices
    assert [one.chart for one in notice.charts] == ["802", "803"]
