"""What stands above all notices and tells how they are to be read, not what is to be done."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, P, errors, told

NOTICE = f"\n\n171/26 Quill Sound\nChart 802 [160/26] WGS84\nInsert wreck {P}\n"

PREAMBLES = [
    "Insert means that the feature is new on the chart. Delete means that it is to be taken off.",
    "Insert = new feature; Delete = remove from the chart; Amend = alter the feature in place.",
    "Something under both titles: replace OLD by NEW, position unchanged.",
    "Replace the features in the column OLD by those in the column NEW.",
    "A feature under both columns is to be replaced. Move features to the second position.",
    "Actions: insert, delete, replace, move and amend. Positions refer to WGS84.",
    "Amend all charts without delay and enter the number of the notice in the lower left corner.",
]


@pytest.mark.parametrize("words", PREAMBLES)
def test_words_on_how_to_read_are_no_notice(words: str) -> None:
    bulletin = parse(f"CHART OFFICE\nEdition 17/2026, 24 April 2026\n\n{words}{NOTICE}")
    assert [notice.id for notice in bulletin.notices] == ["171/26"]
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("command", ["Insert wreck", "Delete the light on the pier"])
def test_a_command_that_lost_its_place_is_reported(command: str) -> None:
    bulletin = parse(f"CHART OFFICE\nEdition 17/2026, 24 April 2026\n\n{command}{NOTICE}")
    assert "item-without-position" in errors(bulletin)


def test_a_command_with_a_place_above_all_numbers_is_read() -> None:
    bulletin = parse(f"CHART OFFICE\n\nInsert rock {P}{NOTICE}")
    assert told(bulletin) == [("insert", "rock", [AT_P]), ("insert", "wreck", [AT_P])]
