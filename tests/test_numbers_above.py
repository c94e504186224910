"""References to numbered items without an opening bracket: `close NE of 1) above`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors

ITEMS = f"  1) Insert depth 10.3m at {P}\n  2) Insert rock at {Q}\n"

REFERENCES = {
    "close": ("Delete depth 13.7m, close NE of 1) above", "close", [AT_P]),
    "second": ("Delete depth 13.7m, close N of 2) above", "close", [AT_Q]),
    "item": ("Delete depth 13.7m, close NE of item 1 above", "close", [AT_P]),
    "item in brackets": ("Delete depth 13.7m, close N of item (2) above", "close", [AT_Q]),
    "items": ("Insert submarine cable joining items 1 and 2 above", "joining", [AT_P, AT_Q]),
    "at": ("Delete depth 13.7m at 1) above", "at", [AT_P]),
    "joining": ("Insert submarine cable joining 1) and 2) above", "joining", [AT_P, AT_Q]),
    "between": ("Insert submarine cable joining 1) to 2) above", "joining", [AT_P, AT_Q]),
    "vicinity": ("Delete depth 13.7m in the vicinity of 1) above", "vicinity", [AT_P]),
}


@pytest.mark.parametrize(("words", "relation", "places"), REFERENCES.values(), ids=REFERENCES)
def test_brings_the_position_of_the_item(words: str, relation: str, places: list[str]) -> None:
    bulletin = parse(f"{HEAD}{ITEMS}  3) {words}\n")
    action = actions_of(bulletin)[-1]
    assert action.usable
    assert action.geometry.relation == relation
    assert [one.iso6709 for one in action.geometry.positions] == places
    assert {one.via for one in action.geometry.positions} == {"reference"}


@pytest.mark.parametrize(
    "words",
    [
        "Delete depth 13.7m, close NE of 7) above",
        "Delete depth 13.7m, close N of item 8 above",
        "Delete depth 13.7m, close NE of 1.2) above",
    ],
)
def test_number_of_no_item_is_an_error(words: str) -> None:
    bulletin = parse(f"{HEAD}{ITEMS}  3) {words}\n")
    assert not actions_of(bulletin)[-1].usable
    assert errors(bulletin)
