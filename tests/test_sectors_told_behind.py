"""Sectors of a light in a clause of its own, and the word for all other bearings."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Action, Amend
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import HEAD, P, actions_of, codes

LIGHT, OLD = "Fl(2)WRG.15s30m17/13/12M", "Fl.WR.10s30m15/12M"
SECTORS = "G 340°-018°, W 018°-131°, R 131°-209°"
READ = [("G", 340, 18), ("W", 18, 131), ("R", 131, 209)]
DARK = [
    "and to be obscured elsewhere", ", and to be obscured elsewhere", ", obscured elsewhere",
    "and is obscured elsewhere", ", dark elsewhere", "; obscd elsewhere", "",
]  # fmt: skip
LEADS = [
    "the light to show", "the light shows", "this light now to show", "which will show",
    "the light to exhibit", "showing", "now showing",
]  # fmt: skip


def sectors_of(action: Action) -> list[tuple[str | None, int, int]]:
    told = action.changes[-1].new if isinstance(action, Amend) else action.feature.light
    sectors = told if isinstance(told, list) else told.sectors
    return [(one.colour, int(one.from_deg), int(one.to_deg)) for one in sectors]


def gaps(bulletin: Bulletin) -> bool:
    return "sector-gap" in {one.code for one in bulletin.findings}


@pytest.mark.parametrize("dark", DARK)
@pytest.mark.parametrize("lead", LEADS)
@pytest.mark.parametrize(
    "command",
    [
        f"Amend the light from {OLD} to {LIGHT}, in {P}",
        f"Amend the light to {LIGHT}, in {P}",
        f"Insert a light, {LIGHT}, in {P}",
    ],
)
def test_a_clause_behind_the_place_has_the_sectors(command: str, lead: str, dark: str) -> None:
    joint = "" if dark[:1] in (",", ";", "") else " "
    bulletin = parse(f"{HEAD}{command}, {lead}\n  {SECTORS}{joint}{dark}.\n")
    (action,) = actions_of(bulletin)
    assert action.usable
    assert sectors_of(action) == READ
    if isinstance(action, Amend):
        assert [one.property for one in action.changes] == ["light"]
    assert gaps(bulletin) == (not dark)
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "command",
    [
        f"Amend the light to show {SECTORS}, in {P}.",
        f"Amend the light, {LIGHT}, in {P}, the light to show {SECTORS}.",
        f"Amend the sectors of the light, {LIGHT}, to {SECTORS}, obscured elsewhere, in {P}.",
    ],
)
def test_without_another_state_the_clause_tells_what_changes(command: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{command}\n"))
    assert isinstance(action, Amend)
    assert [one.property for one in action.changes] == ["light.sectors"]
    assert sectors_of(action) == READ


def test_a_narrow_gap_is_told_though_the_light_is_dark_elsewhere() -> None:
    sectors = "G 340°-018°, W 020°-131°, R 131°-209°, obscured elsewhere"
    bulletin = parse(f"{HEAD}Insert a light, {LIGHT}, in {P}, the light to show {sectors}.\n")
    assert codes(bulletin) == {"sector-gap-narrow"}


def test_what_is_said_of_another_light_stays_unread() -> None:
    words = f"Insert a light, {LIGHT}, in {P}, the rear light to be obscured elsewhere.\n"
    assert codes(parse(HEAD + words)) == {"feature-negated"}
