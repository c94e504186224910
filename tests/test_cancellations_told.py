"""Cancellations told in a second sentence, and below the last place of a list."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, codes, usable_of

ITEMS = f"1) Insert wreck {P}\n2) Delete rock {Q}\n"


@pytest.mark.parametrize(
    "words",
    [
        "The works described in Notices 21(T)/26 and 34(T)/26 are finished and those notices are"
        " cancelled.",
        "The works described in Notices 21(T)/26 and 34(T)/26 are\n    finished and\n"
        "    those notices are now cancelled.",
        "Notices 21(T)/26 and 34(T)/26 refer. These notices are withdrawn.",
        "The marks of Notices 21(T)/26 and 34(T)/26 have gone; both notices are cancelled.",
        "Notices 21(T)/26 and 34(T)/26 have served their purpose; both are cancelled.",
        "Notices 21(T)/26 and 34(T)/26 speak of them, and the said two notices are hereby"
        " cancelled.",
    ],
)
def test_several_are_cancelled_in_words_behind_them(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n\nInsert wreck {P}\n")
    (notice,) = bulletin.notices
    assert [(one.number, one.status) for one in notice.cancels] == [
        (21, "temporary"),
        (34, "temporary"),
    ]
    assert "cancellation-unread" not in codes(bulletin)


def test_not_before_something_happens() -> None:
    words = "Notices 21(T)/26 and 34(T)/26 refer, and those notices are cancelled when it is lit."
    bulletin = parse(f"{HEAD}{words}\n\nInsert wreck {P}\n")
    assert bulletin.notices[0].cancels == []
    assert "cancellation-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "NM 37(T)/26 is now cancelled, take it off the board.",
        "Notice 37(T)/26 is cancelled, so take it from the file.",
        "NM 37(T)/26 is withdrawn. Rub it off all tracings.",
        "Notice 37(T)/26 is cancelled",
    ],
)
def test_below_the_last_place_it_is_no_word_of_the_item(line: str) -> None:
    bulletin = parse(f"{HEAD}{ITEMS}{line}\n")
    (notice,) = bulletin.notices
    assert usable_of(bulletin) == [("insert", "wreck"), ("delete", "rock")]
    assert [(one.number, one.status) for one in notice.cancels] == [(37, "temporary")]
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "line",
    ["Notice 37(T)/26 is cancelled and the rock is lit.", "See Notice 37(T)/26 for the rock."],
)
def test_what_says_more_is_told(line: str) -> None:
    assert codes(parse(f"{HEAD}{ITEMS}{line}\n"))


def test_two_numbers_at_the_opening_of_a_line_open_no_notice() -> None:
    line = "NM 37(T)/26 and 38(T)/26 are dead, take them off the board."
    bulletin = parse(f"{HEAD}{ITEMS}{line}\n")
    assert [one.id for one in bulletin.notices] == ["12/26"]
