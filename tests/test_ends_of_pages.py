"""Feet that end an edition or a page, and what stands in a frame between two notices."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, WRECK_AND_ROCK, P, Q, codes, errors, told

COMMANDS = f"Insert wreck {P}\nDelete rock {Q}\n"
FRAME = "+" * 60


@pytest.mark.parametrize(
    "foot",
    [
        "END OF EDITION",
        "End of edition. Remarks to the Chart Desk, Merrow, channel 12.",
        "End of this weekly edition.",
        "End of bulletin - queries on channel 16.",
        "- End of circular -",
    ],
)
def test_the_end_of_an_edition_limits_no_command(foot: str) -> None:
    bulletin = parse(f"{HEAD}{COMMANDS}\n{foot}\n")
    assert told(bulletin) == WRECK_AND_ROCK
    assert not codes(bulletin)


def test_the_end_of_a_thing_is_no_foot() -> None:
    bulletin = parse(f"{HEAD}{COMMANDS}\nEnd of pier removed.\n")
    assert any("pier" in one.text for one in bulletin.notices[0].remarks)


@pytest.mark.parametrize(
    "foot",
    [
        "-" * 40 + " Quill W.E. 26/26 - 2",
        "=" * 20 + " Weekly Edition 26/26, page 2",
        "_" * 40 + "  Quill Weekly 26/2026  p. 2",
    ],
)
def test_a_rule_may_end_in_the_edition_and_its_page(foot: str) -> None:
    rows = f"{'wreck':<16}{P}   insert\n\n{foot}\n\n{'rock':<16}{Q}   delete\n"
    bulletin = parse(f"{HEAD}{'Object':<16}{'Position':<24}Action\n{rows}")
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)


def test_a_command_behind_a_rule_is_no_foot() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{'-' * 30} Delete rock {Q}\n")
    assert told(bulletin) == WRECK_AND_ROCK


NEW_CHART = "Chart 92, Port Ansel, 1:15 000. Edition 4, dated 12 June 2026.\n"


def test_a_new_edition_in_a_frame_is_told_in_no_notice() -> None:
    frame = f"\n{FRAME}\nNEW EDITION\n{NEW_CHART}{FRAME}\n\n"
    bulletin = parse(f"{HEAD}{COMMANDS}{frame}13/26 Quill Sound.\nChart 803\nInsert rock {Q}\n")
    assert [[one.chart for one in notice.charts] for notice in bulletin.notices] == [
        ["802"], ["803"],
    ]  # fmt: skip
    assert told(bulletin) == [*WRECK_AND_ROCK, ("insert", "rock", [AT_Q])]
    assert [one.kind for one in bulletin.lists] == ["new_charts"]


@pytest.mark.parametrize("above", ["", f"{FRAME}\n"])
def test_a_notice_of_a_new_edition_keeps_its_commands(above: str) -> None:
    text = (
        f"12/26 Quill Sound.\n\n{above}NEW EDITION\n\nChart 802 [3/26] WGS84\nInsert wreck {P}\n"
    )
    (notice,) = parse(text).notices
    assert notice.id == "12/26"
    assert [one.usable for chart in notice.charts for one in chart.actions] == [True]


def test_commands_below_an_unframed_title_are_not_used_unseen() -> None:
    text = f"{HEAD}Insert wreck {P}\n\nNEW EDITION\n\nChart 803, Quill. Insert rock {Q}\n"
    assert ("insert", "wreck", [AT_P]) not in told(parse(text))
