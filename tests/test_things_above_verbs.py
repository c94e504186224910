"""Verbs with a place below the line of their thing: nothing below them is another thing."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, codes, usable_of

BELOW = {
    "established": f"Quill west cardinal light-buoy\n    established   {P}\n    now   Q(9)15s\n"
    f"Marram east cardinal light-buoy\n    established   {Q}\n    now   Q(3)10s\n",
    "discontinued": f"Quill Ledge south cardinal beacon\n    discontinued   {P}\n    unlit\n",
    "withdrawn": f"Marram Quay light\n  withdrawn  {P}\n  formerly F.R.6m4M\n",
    "removed from": f"(1) Marram Quay light\n  removed from: {P}\n  F.R.6m4M\n",
    "a command": f"3. Marram Quay\n   Delete  {P}\n   light, F.R.6m4M\n",
    "name of a place": f"3. Marram Quay\n   established at  {P}\n   now 2F.G(vert)5m2M\n",
    "two lines": f"1 Marram light of the\n  harbour office\n  withdrawn  {P}\n  formerly F.R\n",
    "last": f"Insert wreck {Q}\nMarram racon\n  established {P}\n  now Racon(K)\n",
}


@pytest.mark.parametrize("body", BELOW.values(), ids=list(BELOW))
def test_no_other_thing_is_usable_below_a_thing(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert usable_of(bulletin) in ([], [("insert", "wreck")])


ELSEWHERE = {
    "below a title": f"Insert {P}\n  wreck\n",
    "place behind": f"Insert wreck\n  {P}\n",
    "below a place": f"Insert rock {Q}\nInsert {P} wreck\n",
    "verb in front": f"Delete\n1  {P}\n  wreck\n",
}


@pytest.mark.parametrize("body", ELSEWHERE.values(), ids=list(ELSEWHERE))
def test_other_lists_are_read_as_before(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert "place-of-another" not in codes(bulletin)
    assert usable_of(bulletin)
