"""What whoever copied a notice could not read or doubts, and things replaced by themselves."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, codes, errors, told


@pytest.mark.parametrize(
    "item",
    [
        "Insert? a wreck",
        "Insert (?) wreck",
        "Delete pile [illegible]",
        'Insert starboard-hand light-buoy, Fl.G.3s, "N [illegible] 5"',
        "Insert wreck (?)",
    ],
)
def test_a_mark_of_doubt_is_not_passed_over(item: str) -> None:
    bulletin = parse(f"{HEAD}{item} {P}\n")
    assert told(bulletin) == []
    assert errors(bulletin)


def test_a_thing_that_is_replaced_by_itself() -> None:
    bulletin = parse(f"{HEAD}Replace depth 10.2 m by depth 10.2 m {P}\n")
    assert "change-of-nothing" in codes(bulletin)
    bulletin = parse(f"{HEAD}Replace depth 10.2 m by depth 9.2 m {P}\n")
    assert codes(bulletin) == set()
