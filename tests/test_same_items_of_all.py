"""A line between several charts and their items says that these are the same on all of them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, codes

HEAD = "12/26   Quill Sound\nChart 802, should already carry 3/26\n"
SECOND = "Chart 803 (INT 9751), should already carry 4/26\n"
ITEMS = f"  1) Insert wreck at {P}\n  2) Delete rock at {Q}\n"


@pytest.mark.parametrize(
    "line",
    [
        "Same corrections on both:",
        "The same corrections on both charts:",
        "The same amendments are to be made on each:",
        "All items apply to both",
        "Corrections for the two charts:",
        "The following corrections on both of them:",
        "Same items for all.",
    ],
)
def test_items_are_those_of_both(line: str) -> None:
    bulletin = parse(f"{HEAD}{SECOND}{line}\n{ITEMS}")
    (notice,) = bulletin.notices
    read = [(one.chart, [a.verb for a in one.actions if a.usable]) for one in notice.charts]
    assert read == [("802", ["insert", "delete"]), ("803", ["insert", "delete"])]
    assert not codes(bulletin)
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize(
    "text",
    [
        f"{HEAD}Same corrections on both:\n{ITEMS}",
        f"{HEAD}{SECOND}Same corrections on all three:\n{ITEMS}",
    ],
)
def test_other_counts_are_told(text: str) -> None:
    assert codes(parse(text))
