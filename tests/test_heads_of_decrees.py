"""Charts and the notices before, as a sentence of a decree names them over several lines."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, codes

ORDERS = (
    "12/2026 Quill Sound.\nThe Minister orders that chart 802, last corrected by Notice 3/2026, "
)


@pytest.mark.parametrize(
    "behind",
    [
        "and chart 803 (INT 9803), last corrected by\nNotice 4/2026, be corrected as follows:",
        "and chart 803, last corrected by Notice\n4/2026, be corrected as follows:",
        "and chart 803, last\ncorrected by Notice 4/2026, be corrected as follows:",
    ],
)
def test_a_line_end_parts_the_notice_before(behind: str) -> None:
    bulletin = parse(f"{ORDERS}{behind}\nArt. 1. There is inserted a wreck in {P}.\n")
    charts = bulletin.notices[0].charts
    assert [(one.chart, one.previous and one.previous.number) for one in charts] == [
        ("802", 3),
        ("803", 4),
    ]
    assert codes(bulletin) == set()


def test_a_cancelled_notice_below_a_head_is_not_the_one_before() -> None:
    text = f"{ORDERS}and chart 803.\nNotice 4/2026 is cancelled.\nThe rock in {P} is deleted.\n"
    assert [one.previous and one.previous.number for one in parse(text).notices[0].charts] == [
        3,
        None,
    ]
