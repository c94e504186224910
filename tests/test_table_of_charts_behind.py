"""A table behind the notices that names their charts, below a title like that of an index."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, codes

TEXTS = (
    f"1/26 QUILL SOUND - Wreck\n   Insert wreck {P}\n\n"
    f"2/26 PORT ELLORY - Rock\n   Delete rock {Q}\n"
)
TABLE = (
    "\nPART TWO - CHARTS AFFECTED\n\n"
    "   Notice   Chart   INT        Last correction   Datum\n"
    "   1/26     802                188/25            WGS84\n"
    "   2/26     803     INT 9811   175/25            WGS84\n"
    "            802                1/26              WGS84\n"
)


def sections(bulletin: Bulletin) -> list[tuple[str | None, str | None, str | None, list[str]]]:
    return [
        (notice.id, chart.chart, chart.previous_written, [a.feature.kind for a in chart.actions])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


def test_each_notice_has_the_charts_of_its_rows() -> None:
    bulletin = parse(TEXTS + TABLE)
    assert sections(bulletin) == [
        ("1/26", "802", "188/25", ["wreck"]),
        ("2/26", "803", "175/25", ["rock"]),
        ("2/26", "802", "1/26", ["rock"]),
    ]
    assert codes(bulletin) == set()


def test_where_the_notices_name_their_charts_it_is_a_list() -> None:
    texts = TEXTS.replace("Wreck\n", "Wreck\nChart 802 [188/25]\n")
    bulletin = parse(texts + TABLE)
    assert [one.kind for one in bulletin.lists] == ["index_of_charts"]
    assert ("1/26", "802", "188/25", ["wreck"]) in sections(bulletin)
