"""Figures that count the charts of a list are no numbers of charts."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, errors

HEAD = "NOTICE 344/2026 - Hale Ness - Wreck\n\n"
ITEM = f"Insert wreck, in {P}\n"

LISTS = {
    "one": ("Charts: 1) 615, previous notice 301/2026.", ["615"]),
    "on one line": (
        "Charts affected, with last notice:  1. 615 (301/26)   2. 617 (288/26)",
        ["615", "617"],
    ),
    "on lines": (
        "Charts: 1) 615 (INT 9080), previous notice 301/2026.\n"
        "        2) 617, previous notice 288/2026.",
        ["615", "617"],
    ),
    "in brackets": ("Charts affected: (1) 615 [301/26]; (2) 617 [288/26]", ["615", "617"]),
    "concerned": ("Charts concerned and their previous notices: 1. 615 (301/26)", ["615"]),
    "said in brackets": ("Charts affected (last notice in brackets): 1) 615 (301/26)", ["615"]),
    "with a comma": ("Charts: 1. 615 [301/26], 2. 617 [288/26], 3. 618 [290/26]",
                     ["615", "617", "618"]),
    "a short number": ("Charts: 1) 2 [301/26]; 2) 1 [288/26]", ["2", "1"]),
}  # fmt: skip


@pytest.mark.parametrize(("charts", "numbers"), LISTS.values(), ids=LISTS)
@pytest.mark.parametrize("is_behind", [False, True])
def test_charts_are_read(charts: str, numbers: list[str], *, is_behind: bool) -> None:
    body = f"{ITEM}\n{charts}\n" if is_behind else f"{charts}\n\n{ITEM}"
    bulletin = parse(HEAD + body)
    (notice,) = bulletin.notices
    assert [one.chart for one in notice.charts] == numbers
    assert all(one.previous is not None for one in notice.charts)
    assert [[a.usable for a in one.actions] for one in notice.charts] == [[True]] * len(numbers)
    assert not errors(bulletin)


def test_items_below_keep_their_numbers() -> None:
    items = f"1) Insert wreck, in {P}\n2) Insert pile, in {Q}\n"
    (notice,) = parse(f"{HEAD}Charts: 1) 615 [301/26]\n{items}").notices
    (chart,) = notice.charts
    assert [one.label for one in chart.actions] == ["1", "2"]


@pytest.mark.parametrize(
    "charts", ["Charts: 1, 2 and 3", "Charts: 2) 615 [301/26]", "Charts: 1.5 615"]
)
def test_what_does_not_count_from_one_is_left(charts: str) -> None:
    (notice,) = parse(f"{HEAD}{charts}\n\n{ITEM}").notices
    assert [one.chart for one in notice.charts] != ["615"]
