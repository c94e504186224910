"""Rows with verb and place first, and below them the words and more places."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told


def test_places_listed_behind_the_words_go_on_below_them() -> None:
    bulletin = parse(
        f"{HEAD}"
        f"| Insert                        | {P} |\n"
        f"|   Anchorage area, bounded by  | {Q} |\n"
        f"|                               | {R} |\n"
        f"| Delete                        | {Q} |\n"
        f"|   Rock                        |                       |\n"
    )
    assert told(bulletin) == [
        ("insert", "anchorage_area", [AT_P, AT_Q, AT_R]),
        ("delete", "rock", [AT_Q]),
    ]
    assert not errors(bulletin)
