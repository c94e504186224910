"""Sentences that name the chart of the commands behind them, or one in passing."""

from __future__ import annotations

import pytest

from noticeparse import parse


@pytest.mark.parametrize(
    "words",
    [
        "The following is for chart 802, last corrected by Notice No 17 of 2026.",
        "The following apply to chart 802, last corrected by Notice No 17 of 2026.",
        "What follows is for chart 802, last corrected by Notice No 17 of 2026.",
        "This concerns chart 802, last corrected by Notice No 17 of 2026.",
        "Masters are asked to correct chart 802, last corrected by Notice No 17 of 2026.",
        "Holders of chart 802, last corrected by Notice No 17 of 2026, should do the following.",
        "Chart to correct: 802 (17/26).",
    ],
)
def test_a_sentence_names_the_chart_of_the_commands_behind_it(words: str) -> None:
    text = (
        f"NOTICE No 20 of 2026\nQuill Sound. Wreck.\n\n{words} Insert a wreck in\n"
        "47-40.204S 126-28.771W.\n"
    )
    bulletin = parse(text)
    (chart,) = bulletin.notices[0].charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("802", 17)
    assert [(one.verb, one.usable) for one in chart.actions] == [("insert", True)]
    assert not [one.code for one in bulletin.findings if one.severity != "info"]


@pytest.mark.parametrize(
    "words",
    ["Vessels using chart 802 are warned.", "Soundings were taken from chart 802 of this office."],
)
def test_a_sentence_that_names_a_chart_in_passing_heads_nothing(words: str) -> None:
    text = (
        f"NOTICE No 20 of 2026\nQuill Sound. Wreck.\n\n{words} Insert a wreck in\n"
        "47-40.204S 126-28.771W.\n"
    )
    (notice,) = parse(text).notices
    assert "802" not in [one.chart for one in notice.charts]
