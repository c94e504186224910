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


def test_several_commands_by_nouns_at_the_place_above() -> None:
    rule = "-" * 60
    body = (
        "48°12'.34S 122°40'.10W\n   Insertion of light-buoy, Fl.G.3s\n"
        "   Deletion of starboard-hand buoy\n"
        "12'.90S 40'.75W\n   Insertion of rock awash\n"
        "13'.05S 41'.70W; 13'.60S 41'.95W\n"
        "   Insertion of submarine cable joining these positions\n"
    )
    # The line that comes again beside a rule is no head of a page.
    again = f"{rule}\n13/26 Quill Sound.\nChart 803 [4/26] WGS84\n{body}{rule}\n"
    text = f"{rule}\n{HEAD}{body}{again}"
    first, cable = ["-4812.34-12240.10/"], ["-4813.05-12241.70/", "-4813.60-12241.95/"]
    assert places(text) == [first, first, ["-4812.90-12240.75/"], cable] * 2
    assert errors(parse(text)) == set()
