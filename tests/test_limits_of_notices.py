"""What a heading, or a line above the charts, says of all commands of a notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, codes

HEAD = "17/26  Quill Sound - Works."
REST = f"Chart 802 [9/26] WGS84\nInsert wreck {P}\nChart 803 [8/26] WGS84\nInsert wreck {Q}\n"
JOINTS = [" ", "\n", "\n\n"]

HELD = [
    "Do not apply until 1 July 2026.",
    "Not to be applied before 1 July 2026.",
    "Not before 1 July 2026.",
    "On completion of the works.",
    "Draft.",
    "For information only.",
    "Postponed to 1 August 2026.",
    "Deferred until further notice.",
    "Cancelled on 1 June 2026.",
    "Charts already corrected.",
    "Applies only to edition 4.",
    "Not for chart correction.",
    "Test message - not for navigation.",
    "This notice is a draft.",
]
FOR_A_DAY = [
    "Effective 1 July 2026.",
    "With effect from 1 July 2026.",
    "From 1 July 2026.",
    "After 1 July 2026.",
    "Commencing 1 July 2026.",
    "To be applied from 1 July 2026.",
]
PLAIN = [
    "The works will be completed by 30 September 2026.",
    "Further information from the harbour master.",
    "Mariners are advised to keep clear.",
    "Not for navigation.",
    "Anchoring is not permitted until 1 July 2026.",
    "Drafts of 5 m are reported.",
    "Tests of the new light are made at night.",
]


@pytest.mark.parametrize("said", HELD)
@pytest.mark.parametrize("joint", JOINTS)
def test_what_takes_a_notice_back_holds_all_its_commands(said: str, joint: str) -> None:
    bulletin = parse(f"{HEAD}{joint}{said}\n{REST}")
    assert [one.usable for one in actions_of(bulletin)] == [False, False]
    assert bulletin.notices[0].valid is None


@pytest.mark.parametrize("said", FOR_A_DAY)
@pytest.mark.parametrize("joint", JOINTS)
def test_day_from_which_it_holds_is_told_at_its_commands(said: str, joint: str) -> None:
    bulletin = parse(f"{HEAD}{joint}{said}\n{REST}")
    assert [one.usable for one in actions_of(bulletin)] == [True, True]
    (told,) = [one for one in bulletin.findings if one.code == "verb-dated"]
    assert len(told.paths) == 2


@pytest.mark.parametrize("said", PLAIN)
@pytest.mark.parametrize("joint", JOINTS[1:])
def test_what_is_said_of_the_waters_limits_nothing(said: str, joint: str) -> None:
    bulletin = parse(f"{HEAD}{joint}{said}\n{REST}")
    assert [one.usable for one in actions_of(bulletin)] == [True, True]
    assert "verb-dated" not in codes(bulletin)


def test_subject_of_a_heading_is_none() -> None:
    bulletin = parse(f"17/26  Quill Sound - Proposed works - Draft.\n{REST}")
    assert all(one.usable for one in actions_of(bulletin))


def test_preliminary_notice_may_say_what_it_is() -> None:
    bulletin = parse(f"17(P)/26  Quill Sound - Works.\nAdvance information.\n{REST}")
    assert all(one.usable for one in actions_of(bulletin))


@pytest.mark.parametrize(
    "said",
    ["Expiry date: 30 September 2026", "Expiry: 30 September 2026", "Ends 30 September 2026."],
)
def test_end_may_be_told_by_its_name(said: str) -> None:
    (notice,) = parse(f"17(T)/26  Quill Sound - Works.\n{said}\n{REST}").notices
    assert notice.valid is not None
    assert str(notice.valid.until) == "2026-09-30"


def test_end_in_figures_alone_is_told() -> None:
    assert "validity-unread" in codes(parse(f"{HEAD}\nExpiry: 30/09/2026\n{REST}"))


@pytest.mark.parametrize(
    "said",
    [
        "\nChart 802\nCancelled.",
        "\nCancelled.",
        " Cancelled.\nChart 802",
        "\nChart 802\nThis notice is cancelled.",
        "\nChart 802\nNotice withdrawn on 3 May 2026.",
        "\nChart 802\nExpired.",
        "\nChart 802\nNo longer in force.",
    ],
)
def test_end_of_a_notice_that_commands_nothing_is_told(said: str) -> None:
    bulletin = parse(f"12(T)/26 Quill Sound - Buoy.{said}\n")
    (told,) = [one for one in bulletin.findings if one.code == "cancellation-unread"]
    assert told.paths == ["/notices/0"]


@pytest.mark.parametrize(
    "said", ["The race is cancelled.", "Buoy withdrawn for repairs.", "12(T)/26 is cancelled."]
)
def test_end_of_another_thing_is_not(said: str) -> None:
    bulletin = parse(f"17(T)/26 Quill Sound - Buoy.\nChart 802\n{said}\n")
    assert "cancellation-unread" not in codes(bulletin)


def test_replaced_temporary_notice_in_a_heading_is_cancelled() -> None:
    (notice,) = parse(f"{HEAD} Replaces 12(T)/26.\n{REST}").notices
    assert [(one.number, one.status) for one in notice.cancels] == [(12, "temporary")]


def test_edition_that_is_replaced_is_no_notice() -> None:
    (notice,) = parse(f"{HEAD} New edition. Replaces 5/2024.\n{REST}").notices
    assert notice.cancels == []
