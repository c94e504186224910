"""Verbs as headings above the charts that they hold for."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin
from tests.short_notices import P, Q, R, errors

HEAD = "NOTICE 2417/26   TAVRENNE ISLANDS - Quill Sound - Wrecks\n"
CHARTS = "Charts: 802 (previous 2310/26) WGS84, 803 (previous 2288/26) WGS84\n"


def told(bulletin: Bulletin) -> list[tuple[str, str, str, bool]]:
    """Chart, verb and kind of each action, and whether it may be used."""
    (notice,) = bulletin.notices
    return [
        (str(chart.chart), action.verb, action.feature.kind, action.usable)
        for chart in notice.charts
        for action in chart.actions
    ]


ALL = [
    ("802", "insert", "wreck", True),
    ("802", "delete", "pile", True),
    ("803", "insert", "rock", True),
]


@pytest.mark.parametrize("chart", ["  On chart ", "  Chart ", "On chart "])
@pytest.mark.parametrize("blank", ["", "\n"])
def test_a_verb_holds_for_the_charts_below_it(chart: str, blank: str) -> None:
    bulletin = parse(
        f"{HEAD}{CHARTS}\nINSERT\n{chart}802\n     wreck  {P}\n{chart}803\n     rock  {Q}\n{blank}"
        f"DELETE\n{chart}802\n     pile  {R}\n"
    )
    assert told(bulletin) == ALL
    assert errors(bulletin) == set()


def test_no_verb_goes_on_behind_another_that_cannot_be_read() -> None:
    bulletin = parse(
        f"{HEAD}{CHARTS}\nINSERT\n  On chart 802\n     wreck  {P}\nDaLETE\n  On chart 803\n"
        f"     rock  {Q}\n"
    )
    assert [one for one in told(bulletin) if one[-1]] == [("802", "insert", "wreck", True)]
    assert "item-without-verb" in errors(bulletin)


def test_no_verb_goes_on_to_the_next_notice() -> None:
    bulletin = parse(
        f"{HEAD}INSERT\n  On chart 802\n     wreck  {P}\nNOTICE 2418/26   Wreck\n"
        f"  On chart 803\n     rock  {Q}\n"
    )
    first, second = bulletin.notices
    assert [one.verb for one in first.charts[0].actions] == ["insert"]
    assert not [one for chart in second.charts for one in chart.actions]


def test_a_verb_of_its_own_holds_below_a_chart() -> None:
    bulletin = parse(
        f"{HEAD}INSERT\n  On chart 802\n     wreck  {P}\n  On chart 803\n     Delete rock  {Q}\n"
    )
    assert told(bulletin) == [("802", "insert", "wreck", True), ("803", "delete", "rock", True)]
