"""Temporary notices told in sentences that run through the columns of a table of commands.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import errors, told, usable_of

TITLES = (
    "No.      Chart             Amendment                                Position\n\n"
    "21/26    Quill Roads. Light-buoys.\n"
    "         512               Insert port-hand light-buoy,             46° 10.25' S\n"
    "         (last 17/26)      Fl.R.3s, No 6                            122° 20.40' W\n"
    "                           Delete wreck                             46° 10.80' S\n"
    "                                                                    122° 20.76' W\n\n"
)
NEXT = (
    "\n24/26    Quill Bank. Rock.\n"
    "         513               Insert rock                              46° 20.00' S\n"
    "                                                                    122° 21.00' W\n"
)
SENTENCE = "Until 31 August 2026 a dredger with a floating pipe will be at work"
REST = (
    "                           within 0.2 miles of 46° 10.95' S 122° 20.05' W. Officers of the\n"
    "                           watch should pass at slow speed.\n"
)


@pytest.mark.parametrize(
    "head",
    [
        "23(T)/26 Quill Roads. Dredger at work.\n         512               ",
        "23(P)/26 Quill Roads. Dredger at work.\n         512               ",
        "3(T)/26  512               ",
        "23(T)/26 Quill Roads. Dredger at work.\n         512 (last 21/26)  ",
    ],
)
@pytest.mark.parametrize("behind", ["", NEXT])
def test_a_sentence_across_the_columns_is_a_remark(head: str, behind: str) -> None:
    bulletin = parse(f"{TITLES}{head}{SENTENCE}\n{REST}{behind}")
    assert errors(bulletin) == set()
    notice = bulletin.notices[1]
    assert (notice.number in (3, 23), notice.status != "permanent") == (True, True)
    assert [chart.chart for chart in notice.charts] == ["512"]
    assert [chart.actions for chart in notice.charts] == [[]]
    (remark,) = notice.remarks
    assert remark.text.startswith(SENTENCE)
    assert [one.iso6709 for one in remark.positions] == ["-4610.95-12220.05/"]
    assert bulletin.coverage.unread == 0
    assert len(told(bulletin)) == 2 + bool(behind)


def test_another_word_for_one_and_short_lines_below() -> None:
    text = (
        f"{TITLES}23(T)/26 Quill Roads. Survey.\n"
        "         512               A survey vessel is moored until the end of June 2026 in\n"
        "                           46° 10.95' S 122° 20.05' W.\n"
    )
    bulletin = parse(text)
    assert errors(bulletin) == set()
    assert [len(one.positions) for one in bulletin.notices[1].remarks] == [1]


def test_commands_of_a_temporary_notice_stay_commands() -> None:
    text = (
        f"{TITLES}23(T)/26 Quill Roads. Buoy.\n"
        "         512               Insert special buoy                      46° 10.95' S\n"
        "                                                                    122° 20.05' W\n"
    )
    assert usable_of(parse(text))[-1] == ("insert", "buoy_special")


@pytest.mark.parametrize(
    "row",
    [
        # A permanent notice commands; words that are none are told.
        f"23/26    Quill Roads. Dredger.\n         512               {SENTENCE}\n{REST}",
        # Within its own column the words may be those of a thing with its place beside them.
        "23(T)/26 Quill Roads. Gizmo.\n"
        "         512               Fish up a gizmo                          46° 10.95' S\n"
        "                                                                    122° 20.05' W\n",
    ],
)
def test_what_is_no_sentence_across_the_columns_is_told(row: str) -> None:
    assert errors(parse(TITLES + row))
