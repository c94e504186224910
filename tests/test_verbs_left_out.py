"""Items that state no verb, among others that each state theirs."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, codes, told


@pytest.mark.parametrize(
    "body",
    [
        f" 1. Delete wreck in {P}.\n 2.  light, Fl.W.5s, in {Q}.\n 3. Delete rock in {R}.",
        f"1) Insert wreck {P}\n2) Insert pile {Q}\n3) rock {R}",
        f"Please delete the wreck in {P}.\nPlease the rock in {Q}.\nPlease add the pile in {R}.",
    ],
)
def test_a_verb_that_is_left_out_is_told(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert "verb-left-out" in codes(bulletin)
    assert len(told(bulletin)) == 3


@pytest.mark.parametrize(
    "body",
    [
        f"To insert:\n 1) wreck {P}\n 2) rock {Q}\nTo suppress:\n 3) pile {R}",
        f"1. Delete wreck {P}\n2. Delete rock {Q}\n3. Insert pile {R}",
        f"Insert\n1. wreck {P}\n2. rock {Q}\n3. pile {R}",
        f"(a) Insert wreck {P}\n(b) rock {Q}\n(c) Delete pile {R}",
    ],
)
def test_a_verb_that_is_carried_down_is_not(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert "verb-left-out" not in codes(bulletin)
    assert len(told(bulletin)) == 3
