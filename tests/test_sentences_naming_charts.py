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


ITEM = "Insert wreck 47-40.204S 126-28.771W."


@pytest.mark.parametrize(
    "body",
    [
        f"The chart concerned is 802.\n{ITEM}",
        f"The chart concerned is 802. {ITEM}",
        f"A wreck has been found. The chart affected is 802.\n{ITEM}",
        f"{ITEM}\nThe chart concerned is 802.",
        f"{ITEM}\n\nThe only chart to be corrected is 802.",
        f"{ITEM} The chart concerned is 802.",
        f"{ITEM}\nThe charts concerned are 802 and 803.",
    ],
)
def test_the_chart_concerned_is_that_of_the_notice(body: str) -> None:
    bulletin = parse(f"2417/26  Quill Sound. Wreck.\n{body}\n")
    charts = bulletin.notices[0].charts
    assert charts[0].chart == "802"
    assert [[(one.verb, one.usable) for one in chart.actions] for chart in charts] == [
        [("insert", True)] for _ in charts
    ]
    assert not {"chart-in-passing", "chart-not-named"} & {one.code for one in bulletin.findings}


def test_the_chart_of_another_sentence_is_told_in_passing() -> None:
    text = "2417/26  Quill Sound. Wreck.\nChart 803 shows the wreck seen from chart 802."
    bulletin = parse(f"{text}\nThe chart is old.\n{ITEM}\n")
    assert [chart.chart for chart in bulletin.notices[0].charts] != ["802"]
