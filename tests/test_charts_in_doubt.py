"""Charts and notices before that a head tells in a way that cannot be taken at its word."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors, told

NOTICE = "41/26 Quill Sound\n"

UNREAD = {
    "charts in a row": f"{NOTICE}802 803 804\n290 301 302\nInsert wreck {P}\n",
    "a column of charts": (
        "Notice  Chart   Prev    Details\n"
        f"41/26   802     290/26  Insert wreck {P}\n"
        f"42/26   802     41/26   Delete rock {Q}\n"
    ),
}


@pytest.mark.parametrize("text", UNREAD.values(), ids=list(UNREAD))
def test_figures_that_may_be_charts(text: str) -> None:
    assert errors(parse(text)) == {"chart-unread"}


HEADS = {
    "a notice before that no rule reads": "CHART No 802 YEAR 2019 PREVIOUS No 290 YEAR 2026",
    "its short form": "Chart 802 Ed. 2 (Jan. 2020), NM 12 - 2025",
    "an inset behind a name": "Chart 802 Port Ellory inset [290/26]",
}


@pytest.mark.parametrize("head", HEADS.values(), ids=list(HEADS))
def test_words_of_a_head_that_are_not_kept(head: str) -> None:
    bulletin = parse(f"{NOTICE}{head}\nInsert wreck {P}\n")
    assert "chart-head-unread" in codes(bulletin)
    assert [chart.chart for notice in bulletin.notices for chart in notice.charts] == ["802"]


COLUMNS = {
    "with their word": "              Chart 802            Chart 803\n",
    "figures alone": "              802                  803\n",
}


@pytest.mark.parametrize("titles", COLUMNS.values(), ids=list(COLUMNS))
def test_charts_that_head_columns(titles: str) -> None:
    head = f"{NOTICE}Charts 802 [30/26] and 803 [31/26]\n\n{titles}"
    bulletin = parse(f"{head}Insert wreck  {P}  -\nDelete rock   -   {Q}\n")
    assert errors(bulletin) & {"chart-marks-unread", "item-of-one-chart"}


def test_the_number_of_a_notice_is_none_of_an_edition() -> None:
    bulletin = parse(f"No. 312. - Port Ellory. Chart 802. Previous: 1204/25.\nInsert rock {P}\n")
    assert bulletin.edition is None
    assert "text-unread" in codes(bulletin)


def test_a_position_on_another_datum_is_no_second_place() -> None:
    rows = (
        "| Object | Position WGS84 | Position local | Verb |\n"
        "| wreck | 46-10.10S 122-00.20W | 46-10.15S 122-00.27W | insert |\n"
    )
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == []
    assert all(len(one.geometry.positions) < 2 for one in actions_of(bulletin))


@pytest.mark.parametrize("head", ["312/26 = 311/26 for chart 452", "312/26 - 311/26\nChart 452"])
def test_number_behind_that_of_the_notice_is_told(head: str) -> None:
    """It may be the notice before or the one that is corrected; nobody can say."""
    bulletin = parse(f"{head}\nInsert wreck 47°12'.34S 123°45'.67W\n")
    [finding] = [one for one in bulletin.findings if one.severity == "warning"]
    assert finding.code == "previous-unread"
    assert "311/26" in finding.message


OPEN_LISTS = {
    "semicolon": "Charts affected: 802 [290/26];\n    xx 803 [301/26].\n",
    "and": "Charts affected: 802 [290/26] and\n    the harbour plan 803 [301/26].\n",
}


OPEN_LISTS |= {
    "a plan on another": "Charts affected: 802 [290/26] and\n    the plan on 803.\n",
    "a plan of another": "Charts affected: 802 and\n    plan A of 803.\n",
    "between two": "Charts affected: 802 [290/26]\n    803\n    804 [30/26]\n",
    "may be a year": "Charts affected: 802 [290/26],\n    2026\n",
}
GOES_ON = [
    "Charts affected. - No. 802 [290/26];\n    No. 803.\n",
    "Charts affected - 802 [290/26] and\nNo. 803.\n",
    "Charts affected. - No. 802 [290/26],\n803.\n",
    "Chart 802 [290/26] and\n803\n",
]


@pytest.mark.parametrize("is_above", [True, False], ids=["above the command", "below it"])
@pytest.mark.parametrize("heads", GOES_ON)
def test_a_list_of_charts_goes_on_with_a_chart_that_tells_no_notice(
    heads: str, *, is_above: bool
) -> None:
    command = f"Insert wreck {P}\n"
    bulletin = parse(NOTICE + (heads + command if is_above else command + heads))
    (notice,) = bulletin.notices
    assert [
        (chart.chart, chart.previous and chart.previous.number, len(chart.actions))
        for chart in notice.charts
    ] == [("802", 290, 1), ("803", None, 1)]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("heads", OPEN_LISTS.values(), ids=list(OPEN_LISTS))
def test_a_list_of_charts_that_breaks_off_may_name_another(heads: str) -> None:
    assert "chart-unread" in errors(parse(f"{NOTICE}Insert wreck {P}\n{heads}"))


LISTS = {
    "on two lines": "Charts affected: No. 802 [290/26];\n    No. 803 [301/26].\n",
    "behind a dash": (
        "Charts affected. - No. 802 [last correction, No. 290 of 2026];\n"
        "                   No. 803 [last correction, No. 301 of 2026].\n"
    ),
}


@pytest.mark.parametrize("heads", LISTS.values(), ids=list(LISTS))
def test_charts_of_a_list_each_behind_their_own_word(heads: str) -> None:
    bulletin = parse(f"{NOTICE}Insert wreck {P}\n{heads}")
    (notice,) = bulletin.notices
    assert [
        (chart.chart, chart.previous and chart.previous.number, len(chart.actions))
        for chart in notice.charts
    ] == [("802", 290, 1), ("803", 301, 1)]
    assert errors(bulletin) == set()
