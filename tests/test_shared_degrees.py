"""Positions whose degrees stand with the position before: only within their notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, errors

NEXT = "\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n"
MINUTES = "12'.90S 46'.20W"


def places(text: str) -> list[list[str]]:
    return [
        [position.iso6709 for position in action.geometry.positions]
        for notice in parse(text).notices
        for chart in notice.charts
        for action in chart.actions
    ]


def test_degrees_of_the_position_before_hold_within_a_notice() -> None:
    text = f"{HEAD}Insert wreck 47°12'.34S 122°40'.10W\nInsert rock 13'.05S 41'.70W\n"
    assert places(text) == [["-4712.34-12240.10/"], ["-4713.05-12241.70/"]]
    assert errors(parse(text)) == set()


@pytest.mark.parametrize(
    "text",
    [
        f"{HEAD}Insert wreck {P}\n{NEXT}Insert rock {MINUTES}\n",
        f"{HEAD}Insert wreck {P}\nInsert pile 47°72'.34S 122°40'.10W\nInsert rock {MINUTES}\n",
    ],
)
def test_degrees_are_not_taken_from_elsewhere(text: str) -> None:
    assert places(text)[-1] == []
    assert "position-shared-degrees-unknown" in errors(parse(text))


def test_degrees_of_a_remark_above_the_notice_are_not_those_of_a_remark() -> None:
    text = (
        f"{HEAD}Insert wreck {P}\n\n13(T)/26 Quill Sound.\nDivers work in {MINUTES} until June.\n"
    )
    assert [one.positions for one in parse(text).notices[1].remarks] == [[]]


def test_degrees_below_one_chart_head_hold_over_its_notices() -> None:
    text = (
        "Chart 802 WGS84\n12/26  Insert wreck  47°12'.34S 122°40'.10W\n"
        "13/26  Insert rock  13'.05S 41'.70W\n"
    )
    assert places(text) == [["-4712.34-12240.10/"], ["-4713.05-12241.70/"]]
