"""A racon on a line of its own below the mark that carries it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told

BUOY = "safe water light-buoy, Mo(A)8s"


@pytest.mark.parametrize(
    "body",
    [
        f"1. Insert {BUOY}    {P}\n   Racon(B)\n2. Delete pile    {Q}\n",
        f"Insert {BUOY}    {P}\n   with racon(B).\nDelete pile    {Q}\n",
        f"Insert\n  (a) {BUOY}    {P}\n      Racon(B), Horn(1)30s\nDelete\n  (b) pile    {Q}\n",
        f"Insert\n  {BUOY}    {P}\n    Racon(B)\nDelete\n  pile    {Q}\n",
    ],
)
def test_a_racon_further_in_is_that_of_the_mark_above(body: str) -> None:
    bulletin = parse(HEAD + body)
    buoy, _ = actions_of(bulletin)
    assert told(bulletin) == [("insert", "buoy_safe_water", [AT_P]), ("delete", "pile", [AT_Q])]
    assert (buoy.feature.racon and buoy.feature.racon.morse) == "B"
    assert buoy.feature.s57[0] == "BOYSAW"
    assert buoy.feature.s57[-1] == "RTPBCN"
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "body",
    [
        f"Insert\n{BUOY}    {P}\nRacon(B)\npile    {Q}\n",
        f"Insert  {BUOY}    {P}\n        Racon(B)\n        pile    {Q}\n",
        f"Insert wreck    {P}\n   Racon(B)\n",
        f"Insert {BUOY}    {P} and {Q}\n   Racon(B)\n",
        f"Insert {BUOY}, Racon(K)    {P}\n   Racon(B)\n",
        f"Insert {BUOY}    {P}\n   Racon(B) discontinued\n",
        f"Replace buoy by {BUOY}    {P}\n   Racon(B)\n",
        f"Insert {BUOY}    {P}\n(b) Racon(B)\n",
    ],
)
def test_a_racon_that_may_be_of_its_own_is_held(body: str) -> None:
    bulletin = parse(HEAD + body)
    held = [a for a in actions_of(bulletin) if a.feature.kind == "racon" and not a.usable]
    assert [a.geometry.shape for a in held] == ["unlocated"]
    assert "item-without-position" in errors(bulletin)


def test_a_racon_with_a_place_of_its_own_is_an_item() -> None:
    bulletin = parse(f"{HEAD}Insert {BUOY}    {P}\n   Racon(B)    {Q}\n")
    assert told(bulletin) == [("insert", "buoy_safe_water", [AT_P]), ("insert", "racon", [AT_Q])]
