"""Orders, decrees and the like whose number opens a notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, errors, usable_of

FIRST = f"Authority: the harbour master.\n\n1.1  A wreck is to be inserted in {P}\n"
SECOND = f"2.1  The pile in {Q} is to be deleted.\n2.2  Order 11(T)/26 is cancelled.\n"

HEADS = [
    "ORDER {}.  QUILL ROADS.  Wreck.",
    "Order {} - Quill Roads - Wreck",
    "ORDER {}",
    "Order {}:  Quill Roads",
    "DECREE {}   QUILL ROADS",
    "Directive {}. Quill Roads.",
    "DIRECTION {}.  QUILL ROADS.  Wreck.",
    "Release {} - QUILL ROADS - Wreck",
    "--------\nORDER No. {}.  QUILL ROADS.",
]


@pytest.mark.parametrize("head", HEADS)
def test_opens_a_notice(head: str) -> None:
    first = f"{head.format('14/26')}\n\n{FIRST}\nCharts: 61 (last order 9/26).\n"
    second = f"{head.format('15(T)/26')}\n\n{SECOND}\nCharts: 62 (last order 2/26).\n"
    bulletin = parse(f"HARBOUR COMMISSIONERS OF QUILL\nChart orders\n\n\n{first}\n\n{second}")
    assert [one.id for one in bulletin.notices] == ["14/26", "15(T)/26"]
    assert [one.chart for notice in bulletin.notices for one in notice.charts] == ["61", "62"]
    assert usable_of(bulletin)[:1] == [("insert", "wreck")]
    assert [one.number for one in bulletin.notices[1].cancels] == [11]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "Order 11/26 is cancelled.",
        "Order 11/26 of the harbour master remains in force.",
        "By order 11/26 the fairway is closed.",
        "The pilots took part.\nOrder 11/26",
    ],
)
def test_order_that_is_spoken_of_opens_none(line: str) -> None:
    bulletin = parse(f"40/26 QUILL SOUND.\nChart 802 [30/26]\nInsert wreck {P}\n\n{line}\n")
    assert [one.id for one in bulletin.notices] == ["40/26"]


@pytest.mark.parametrize(
    "line",
    [
        "EDITION 11/26.  QUILL ROADS and others.",
        "WEEK 11/26   TAVRENNE ISLANDS and others",
        "BEACON 11/26.  QUILL ROADS and others.",
        "Superseded 11/26.  QUILL ROADS and others.",
        "Direction 11/26.  Quill roads and others.",
        "HYDROTAV 1234/26.  QUILL ROADS.",
    ],
)
def test_other_words_open_none_without_waters_in_capitals(line: str) -> None:
    bulletin = parse(f"40/26 QUILL SOUND.\nChart 802 [30/26]\nInsert wreck {P}\n\n{line}\n")
    assert [one.id for one in bulletin.notices] == ["40/26"]


def test_end_of_a_message_deletes_nothing() -> None:
    text = f"2. CANCEL THIS MSG 051200 UTC AUG 26.\n\nTAVRENNE ISLANDS.\nFIRING IN {P}.\n"
    assert usable_of(parse(text)) == []
