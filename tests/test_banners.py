"""Lines that command what stands below them on one chart, and banners with a notice's number."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import WRECK_AND_ROCK, P, Q, errors, told

TITLE = "Tavrenne Bulletin, April 2026\n\n"
BODY = "\n  1  Wreck\n       {P}\n{second}\n  2  Rock\n       {Q}\n"
BANNERS = {
    "dashes": (
        "--- INSERT ON CHART 211 (INT 9211), last correction 18 / 2026 ---",
        "--- REMOVE FROM CHART 211 (INT 9211) ---",
    ),
    "plain": ("Insert on chart 211 (INT 9211) [18/26]", "Delete from chart 211"),
    "colons": ("Add to chart 211 (INT 9211), last 18/26:", "Remove from chart 211:"),
}


@pytest.mark.parametrize(("first", "second"), BANNERS.values(), ids=BANNERS)
def test_a_verb_and_its_chart_stand_over_items(first: str, second: str) -> None:
    body = BODY.format(P=P, Q=Q, second=second)
    bulletin = parse(f"{TITLE}NOTICE 31/2026   Sound of Orrick\n\n{first}{body}")
    (notice,) = bulletin.notices
    (chart,) = notice.charts
    assert (chart.chart, chart.international) == ("211", "INT 9211")
    assert chart.previous is not None
    assert (chart.previous.number, chart.previous.year) == (18, 2026)
    assert told(bulletin) == WRECK_AND_ROCK
    assert {f.severity for f in bulletin.findings} <= {"info"}


def test_another_chart_under_a_banner_is_one_of_its_own() -> None:
    body = BODY.format(P=P, Q=Q, second="REMOVE FROM CHART 212, last correction 25/26")
    bulletin = parse(f"{TITLE}NOTICE 31/2026   Sound\n\nINSERT ON CHART 211{body}")
    assert [chart.chart for chart in bulletin.notices[0].charts] == ["211", "212"]
    assert told(bulletin) == WRECK_AND_ROCK
    assert not errors(bulletin)


@pytest.mark.parametrize("mark", ["===", "---", "***"])
def test_the_number_of_a_notice_may_stand_within_a_banner(mark: str) -> None:
    head = f"{mark} NOTICE 31 / 2026 {mark}{mark} Sound of Orrick {mark}"
    bulletin = parse(
        f"{TITLE}{head}\n\nChart 211 [18/26] WGS84\nInsert wreck {P}\nDelete rock {Q}\n"
    )
    (notice,) = bulletin.notices
    assert (notice.id, notice.heading) == ("31/26", "Sound of Orrick")
    assert told(bulletin) == WRECK_AND_ROCK


def test_several_charts_share_what_stands_under_their_banner() -> None:
    body = BODY.format(P=P, Q=Q, second="Delete from charts 211 and 212")
    bulletin = parse(f"{TITLE}NOTICE 31/2026   Sound\n\nInsert on charts 211 and 212{body}")
    charts = {chart.chart for chart in bulletin.notices[0].charts}
    assert charts == {"211", "212"}
    assert sorted(told(bulletin)) == sorted(2 * WRECK_AND_ROCK)
    assert not errors(bulletin)


@pytest.mark.parametrize("words", ["ON CHART 211, the following dangers", "ON CHARTS as follows"])
def test_a_line_with_more_than_a_chart_is_no_banner(words: str) -> None:
    bulletin = parse(f"{TITLE}NOTICE 31/2026   Sound\n\nINSERT {words}\n  1  Wreck\n       {P}\n")
    assert errors(bulletin) == {"item-without-position"}
    assert [chart.chart for chart in bulletin.notices[0].charts] == [None]
