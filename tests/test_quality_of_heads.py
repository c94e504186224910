"""A head or a remark that calls all positions of a chart approximate or doubtful."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, errors, usable_of

TITLE = "12/26 Quill Sound.\n"


def _qualities(text: str) -> list[str | None]:
    actions = actions_of(parse(text))
    return [one.quality for action in actions for one in action.geometry.positions]


@pytest.mark.parametrize(
    "head",
    [
        "Chart 802 (Positions Approximate) [3/26] WGS84",
        "Chart 802 (positions approximate) [3/26] WGS84",
        "Chart 802 (POSITIONS APPROXIMATE) [3/26] WGS84",
        "Chart 802 (All Positions Are Approximate) [3/26] WGS84",
        "Chart 802 (Approximate Positions) [3/26] WGS84",
        "Chart 802 (PA) [3/26] WGS84",
        "Chart 802 - Positions Approximate [3/26] WGS84",
        "Chart 802 [3/26] WGS84\nPositions approximate.",
        "Positions approximate.\nChart 802 [3/26] WGS84",
    ],
)
def test_all_positions_are_approximate(head: str) -> None:
    text = f"{TITLE}{head}\nInsert wreck {P}\nDelete rock {Q} PD\n"
    assert errors(parse(text)) == set()
    # What stands with a position says more of it.
    assert _qualities(text) == ["approximate", "doubtful"]


def test_all_positions_are_doubtful_at_both_ends_of_a_move() -> None:
    text = f"{TITLE}Chart 802 (Positions Doubtful) [3/26] WGS84\nMove buoy from {P} to {Q}\n"
    (action,) = actions_of(parse(text))
    assert action.verb == "move"
    assert [one.quality for one in action.geometry.positions] == ["doubtful"]
    assert [one.quality for one in action.destination.positions] == ["doubtful"]


def test_another_chart_has_its_own_positions() -> None:
    head = f"{TITLE}Chart 802 (Positions Approximate) [3/26] WGS84\nInsert wreck {P}\n"
    assert _qualities(f"{head}Chart 803 [4/26] WGS84\nInsert wreck {P}\n") == ["approximate", None]


@pytest.mark.parametrize("bracket", ["Some Positions Approximate", "Position On Chart Differs"])
def test_other_statements_in_capitals_are_no_title(bracket: str) -> None:
    bulletin = parse(f"{TITLE}Chart 802 ({bracket}) [3/26] WGS84\nInsert wreck {P}\n")
    assert errors(bulletin) == {"verb-limited-above"}
    assert usable_of(bulletin) == []


@pytest.mark.parametrize("bracket", ["Quill Sound", "Port Ellory Approaches", "Panel A only"])
def test_a_title_says_nothing_of_positions(bracket: str) -> None:
    text = f"{TITLE}Chart 802 ({bracket}) [3/26] WGS84\nInsert wreck {P}\n"
    assert (errors(parse(text)), _qualities(text)) == (set(), [None])
