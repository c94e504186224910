"""Heads in two columns of keys: each pair of key and value is read, wherever it stands.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.layout.copied.keys_side_by_side import with_keys_below_each_other
from noticeparse.records.chart import ChartSection
from tests.short_notices import P, Q, errors, told

ITEMS = f"ACTION   OBJECT    POSITION\nADD      wreck     {P}\nREMOVE   rock      {Q}\n"
RULE = "-" * 60 + "\n"
LED = """\
Notice ............. {n}                Chart .............. {c}
Subject ............ Quill Sound, wreck
Edition ............ 5, dated 14 March 2021   Previous notice .... {p}
International ...... INT 9741           Datum .............. WGS84
"""
WAYS = {
    "leaders": LED,
    "leaders with a colon": LED.replace(". ", ".: "),
    "colons": """\
Notice: {n}     Cancels: 21(T)/26
Chart: {c}
Edition: 5, dated 14 March 2021   Previous notice: {p}
International: INT 9741           Datum: WGS84
""",
    "colons in columns": """\
Notice        : {n}          Previous notice : {p}
Chart         : {c}
Subject       : Quill Sound, wreck
Edition       : 5, dated 14 March 2021   Datum : WGS84
International : INT 9741
""",
    "chart first": """\
Chart ......... {c}          Notice ........ {n}
Edition ....... 5, published 14 March 2021   Previous ...... {p}
INT ........... INT 9741     Datum ......... WGS84
""",
    "numbers": """\
Notice No. ..... {n}         Chart No. ...... {c}
Last notice .... {p}         Datum .......... WGS84
Edition ........ 5 of 14 March 2021   International .. INT 9741
""",
    "three on a line": """\
Notice ..... {n}     Chart ...... {c}    Datum ...... WGS84
Edition .... 5, 14 March 2021    Previous ... {p}   International .. INT 9741
""",
    "one blank before a key in its column": """\
Notice ........ {n}                  Chart ......... {c}
Edition ....... 5, dated 14 March 2021 Last notice ... {p}
International . INT 9741               Datum ......... WGS84
""".replace("International . ", "International: "),
}


def _sections(way: str) -> list[tuple[str | None, ChartSection]]:
    heads = [("31/26", "802", "28/26"), ("32/26", "803", "29/26")]
    text = "TAVRENNE DISTRICT\n\n" + "\n".join(
        way.format(n=n, c=c, p=p) + RULE + ITEMS for n, c, p in heads
    )
    bulletin = parse(text)
    assert not errors(bulletin)
    assert len(told(bulletin)) == 4
    return [(notice.id, chart) for notice in bulletin.notices for chart in notice.charts]


@pytest.mark.parametrize("way", WAYS.values(), ids=WAYS)
def test_both_keys_of_a_line_are_read(way: str) -> None:
    first, second = _sections(way)
    assert [(name, chart.chart) for name, chart in (first, second)] == [
        ("31/26", "802"),
        ("32/26", "803"),
    ]
    for _, chart in (first, second):
        assert chart.datum is not None
        assert (chart.datum.name, chart.international) == ("WGS84", "INT 9741")
        assert (chart.edition, chart.edition_date) == ("5", "2021-03-14")
    assert [chart.previous and chart.previous.number for _, chart in (first, second)] == [28, 29]


def test_heading_and_cancellation_have_their_lines() -> None:
    text = (
        "Notice ..... 31/26               Chart ...... 802\n"
        "Subject .... Quill Sound, wreck\n"
        "Previous ... 28/26               Cancels .... 21(T)/26\n" + RULE + ITEMS
    )
    (notice,) = parse(text).notices
    assert (notice.id, notice.heading) == ("31/26", "Quill Sound, wreck")
    assert [(one.number, one.status) for one in notice.cancels] == [(21, "temporary")]


def test_key_without_a_value_takes_nothing_of_the_next() -> None:
    text = (
        "Notice ..... 31/26               Chart ...... 802\n"
        "Panel ......                     Edition .... 5\n"
        "Previous ... 28/26               Datum ...... WGS84\n" + RULE + ITEMS
    )
    (chart,) = parse(text).notices[0].charts
    assert (chart.panel, chart.edition, chart.previous and chart.previous.number) == (
        None,
        "5",
        28,
    )


def test_key_with_two_dots_is_one() -> None:
    text = (
        "Notice ........... 31/26         Chart ........... 802\n"
        "Datum ............ WGS84         Previous notice .. 28/26\n" + RULE + ITEMS
    )
    (chart,) = parse(text).notices[0].charts
    assert chart.previous_written == "Previous notice .. 28/26"
    assert chart.datum is not None


@pytest.mark.parametrize(
    "text",
    [
        # Keys of records belong to one place.
        "Latitude: 46-00.00S     Longitude: 122-00.00W\n" * 3,
        "Action: Insert     Object: wreck     Position: 46-00.00S 122-00.00W\n" * 3,
        # A head is read with what stands on its line.
        "Notice: 31/26     Chart: 802     Previous: 28/26\n" * 3,
        "Chart: 802     Datum: WGS84\n" * 3,
        # One line is no form.
        "Edition: 5     Previous: 28/26\n",
        # No gap, and no column.
        "Edition: 5 Previous: 28/26\n" * 3,
        # Words that are no keys.
        "Depth: about 4 m     Seen by: the pilot\n" * 3,
    ],
)
def test_what_stays_on_its_line(text: str) -> None:
    assert with_keys_below_each_other(text) == (text, [])
