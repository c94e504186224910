"""Limits that are a kind of their own: `harbour limit, joining P, Q and R`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, told


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("harbour limit, joining", "harbour_limit"),
        ("harbour limit joining", "harbour_limit"),
        ("port limits bounded by", "harbour_limit"),
        ("anchorage limit, joining", "anchorage_area"),
    ],
)
def test_the_limit_is_of_the_kind_or_of_its_area(words: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} {P}, {Q} and {R}\n")
    assert told(bulletin) == [("insert", kind, [AT_P, AT_Q, AT_R])]
    assert codes(bulletin) == set()
