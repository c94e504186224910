"""Commands of temporary notices in pencil or for a time, and paragraphs that command nothing."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, errors, usable_of

HEAD = "NOTICE 344(T)/2026 - Hale Ness - Wreck\nChart: 615\n"

HEADINGS = [
    "In pencil, insert:",
    "2.  In pencil, insert:",
    "Insert in pencil:",
    "b) Insert in pencil the following:",
    "Until further notice, insert:",
    "Until a new edition is published insert in pencil:",
    "For the time being please insert:",
    "(2) Pencil in:",
    "Until the new edition comes out, insert in pencil -",
    "Pending publication of a new edition, insert:",
    "The following marks are to be inserted in pencil:",
]


@pytest.mark.parametrize("heading", HEADINGS)
def test_heading_of_a_list_commands_what_stands_below(heading: str) -> None:
    bulletin = parse(f"{HEAD}{heading}\n   (i)  wreck, in {P}\n   (ii) pile, in {Q}\n")
    assert usable_of(bulletin) == [("insert", "wreck"), ("insert", "pile")]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "line",
    [f"In pencil insert wreck in {P}", f"Until further notice, insert wreck in {P}"],
)
def test_command_on_one_line(line: str) -> None:
    assert usable_of(parse(f"{HEAD}{line}\n")) == [("insert", "wreck")]


@pytest.mark.parametrize(
    "told",
    [
        f"1. The light in {P} is shown at reduced power until 5 August 2026.\n2. ",
        f"1. A depth of 7.4m was found in {P}.\n2. ",
        f"The dredger lies in {P} and is lit at night.\n\n",
    ],
)
def test_paragraph_beside_the_commands_stays_prose(told: str) -> None:
    bulletin = parse(f"{HEAD}{told}In pencil, delete:\n   (i)  pile, in {Q}\n")
    assert usable_of(bulletin) == [("delete", "pile")]
    (notice,) = bulletin.notices
    assert [len(one.positions) for one in notice.remarks] == [1]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "heading",
    [
        "It is proposed to insert in pencil:",
        "When the works are over, insert in pencil:",
        "Do not in pencil insert:",
        "Until they remove the wreck, insert:",
    ],
)
def test_proposal_or_condition_commands_nothing(heading: str) -> None:
    bulletin = parse(f"{HEAD}{heading}\n   (i)  wreck, in {P}\n")
    assert not usable_of(bulletin)


@pytest.mark.parametrize("heading", ["In pencil, insert:", "Pencil in:"])
def test_in_a_permanent_notice_the_pencil_limits_them(heading: str) -> None:
    head = HEAD.replace("(T)", "")
    bulletin = parse(f"{head}{heading}\n   (i)  wreck, in {P}\n")
    assert not any(one.usable for one in actions_of(bulletin))
    assert errors(bulletin)
