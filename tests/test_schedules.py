"""A schedule of positions behind several notices, which name its letters."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, errors, told

SCHEDULE = f"     A     {P}\n     B     {Q}\n     C     {R}\n"
TITLES = ["SCHEDULE OF POSITIONS (WGS84)", "List of positions", "Key to positions"]


def circular(first: str, second: str, title: str) -> Bulletin:
    return parse(
        f"Notice 12/26. Quill Sound. Chart 802, previous notice 3/26.\n{first}\n\n"
        f"Notice 13/26. Port Ellory. Chart 803, previous notice 4/26.\n{second}\n\n"
        f"{title}\n{SCHEDULE}"
    )


@pytest.mark.parametrize("title", TITLES)
def test_each_notice_takes_its_places_from_it(title: str) -> None:
    bulletin = circular("Insert a wreck at A. Delete the pile at B.", "Insert a rock at C.", title)
    assert [len(one.charts[0].actions) for one in bulletin.notices] == [2, 1]
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("delete", "pile", [AT_Q]),
        ("insert", "rock", [AT_R]),
    ]
    assert errors(bulletin) == set()
    assert bulletin.coverage.unread == 0


def test_no_places_go_to_a_notice_that_names_no_letter() -> None:
    bulletin = circular("Insert a wreck at A.", "A survey is under way.", TITLES[0])
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert not [one for notice in bulletin.notices for r in notice.remarks for one in r.positions]


def test_a_letter_that_it_does_not_hold_is_told() -> None:
    bulletin = circular("Insert a wreck at A.", "Insert a rock between C and K.", TITLES[0])
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin)


def test_an_article_behind_a_letter_is_none() -> None:
    bulletin = circular(
        "Insert a wreck at B. A survey found it.", "Insert a rock at C.", TITLES[0]
    )
    assert told(bulletin)[0] == ("insert", "wreck", [AT_Q])


@pytest.mark.parametrize("title", ["List of positions\n", "Positions\n", ""])
def test_lists_of_their_own_stay_with_their_notices(title: str) -> None:
    bulletin = circular(
        f"Insert a wreck at A.\n\n{title}     A     {R}\n     B     {R}",
        "Insert a rock at A.",
        TITLES[1],
    )
    assert told(bulletin) == [("insert", "wreck", [AT_R]), ("insert", "rock", [AT_P])]
