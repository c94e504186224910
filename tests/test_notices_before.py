"""The notices that must be on the charts already, as heads tell them for one chart or several."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, codes


@pytest.mark.parametrize(
    "items",
    [
        f"1. Insert wreck {P}\n2. Chart 82 only: delete rock {Q}\n",
        f"Insert wreck {P}\nOn chart 82 only: delete rock {Q}\n",
        f"Insert wreck {P}\nDelete rock {Q} (chart 82 only)\n",
        f"Insert wreck {P}\nDelete rock {Q} [Chart 82 only]\n",
    ],
)
@pytest.mark.parametrize(
    "charts",
    [
        "Charts affected - 81 - 82 (INT 9515)\nPrevious notices - 81: 12/26 - 82: 13/26\n",
        "Charts 81 and 82 are affected\nLast notices: 81 (12/26), 82 (13/26)\n",
        "Charts affected: 82, 81\nPrevious notices: 13/26 (82), 12/26 (81)\n",
    ],
)
def test_items_of_some_charts_and_the_notices_before_in_a_list(items: str, charts: str) -> None:
    bulletin = parse(f"344/26 Quill Sound\n{items}{charts}")
    sections = sorted(bulletin.notices[0].charts, key=lambda one: one.chart or "")
    told_of = {
        one.chart: (one.previous.number if one.previous else None, [a.verb for a in one.actions])
        for one in sections
    }
    assert told_of == {"81": (12, ["insert"]), "82": (13, ["insert", "delete"])}
    assert not [one for one in bulletin.findings if one.severity == "error"]


@pytest.mark.parametrize(
    ("said", "numbers"),
    [
        ("30/26 (both charts)", [30, 30]),
        ("30/26 (all charts)", [30, 30]),
        ("30/26 (802), 31/26 (803)", [30, 31]),
        ("30/26 (803), 31/26 (802)", [31, 30]),
        ("30/26 and 31/26", [30, 31]),
    ],
)
@pytest.mark.parametrize("is_stacked", [True, False])
def test_the_notices_before_of_charts_that_share_a_head(
    said: str, numbers: list[int], is_stacked: bool
) -> None:
    joint = "\n" if is_stacked else " "
    text = (
        f"Notice 40/26\nArea\nQuill Sound, Old Harbour\nCharts{joint}802 and 803\n"
        f"Last corrected by{joint}{said}\nDatum{joint}WGS84\nInsert wreck {P}\n"
    )
    (notice,) = parse(text).notices
    read = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert read == list(zip(["802", "803"], numbers, strict=True))
    assert [one.datum is not None for one in notice.charts] == [True, True]
    if is_stacked:
        assert notice.heading == "Quill Sound, Old Harbour"


@pytest.mark.parametrize(
    "head",
    [
        "Charts 212 and 215. Prev. 71 and 40.",
        "Charts 212 and 215, last notice 71 and 40",
        "Charts 212, 215 [71, 40]",
        "Charts 212, 215 (last corrections 71, 40)",
        "Charts 212, 215 (last corrections 71 and 40 respectively)",
        "Charts 212 and 215, previous updates 71 and 40",
        "Charts 212 and 215. Last corrections: Nos. 71 and 40",
        "Charts 212 (Prev. 71) and 215 (Prev. 40)",
        "Charts 212, prev. 71, 215, prev. 40",
    ],
)
def test_notices_before_without_a_year_are_no_charts(head: str) -> None:
    (notice,) = parse(f"80/26 Quill Sound\n{head}\nInsert wreck {P}\n").notices
    read = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert read == [("212", 71), ("215", 40)]


def test_fewer_notices_before_than_charts_are_given_to_none() -> None:
    head = "Charts 212, 215 and 216. Prev. 71, 40."
    bulletin = parse(f"80/26 Quill Sound\n{head}\nInsert wreck {P}\n")
    read = [(one.chart, one.previous) for one in bulletin.notices[0].charts]
    assert read == [("212", None), ("215", None), ("216", None)]
    assert "chart-head-unread" in codes(bulletin)


@pytest.mark.parametrize(
    ("words", "number"),
    [
        ("(after 44)", 44),
        ("[follows 44]", 44),
        ("(last 44)", 44),
        ("(after No. 44)", 44),
        ("(last 2019)", None),
    ],
)
def test_the_notice_before_in_brackets_without_its_year(words: str, number: int | None) -> None:
    text = (
        f"Corrections, list 4 of 2026\n\n51/26 Quill Sound\nChart 802 {words}\nInsert wreck {P}\n"
    )
    (chart,) = parse(text).notices[0].charts
    assert (chart.previous and chart.previous.number) == number


def test_each_notice_before_stands_behind_its_own_chart() -> None:
    head = "Charts affected: 802 (previous 60/26), 803 (previous 58/26), 804 (new)"
    (notice,) = parse(f"80/26 Quill Sound\n{head}\nInsert wreck {P}\n").notices
    read = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert read == [("802", 60), ("803", 58), ("804", None)]


@pytest.mark.parametrize(
    "head",
    [
        "Previous notices 71, 40. Charts 212, 215",
        "Previous notices 71 and 40\nCharts 212 and 215",
        "Last corrections: 71/26, 40/26\nCharts: 212, 215",
        "Previous notices 71/26, 40/26. Charts 212 and 215",
        "Previous notices: 71/26 (212), 40/26 (215)\nCharts 212 and 215",
    ],
)
def test_notices_before_in_front_of_their_charts(head: str) -> None:
    (notice,) = parse(f"80/26 Quill Sound - Wreck.\n{head}\nInsert wreck {P}\n").notices
    assert notice.heading == "Quill Sound - Wreck"
    read = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert read == [("212", 71), ("215", 40)]
    assert notice.remarks == []


def test_more_notices_than_charts_behind_them_are_given_to_none() -> None:
    head = "Previous notices 71, 40, 38. Charts 212, 215"
    bulletin = parse(f"80/26 Quill Sound\n{head}\nInsert wreck {P}\n")
    assert [one.previous for one in bulletin.notices[0].charts] == [None, None]
    assert "chart-head-unread" in codes(bulletin)


@pytest.mark.parametrize("words", ["(after 2025)", "[follows 2025]", "(last 2025)"])
def test_a_year_for_the_notice_before_is_told(words: str) -> None:
    bulletin = parse(f"80/26 Quill Sound\nChart 802 {words}\nInsert wreck {P}\n")
    assert bulletin.notices[0].charts[0].previous is None
    assert "previous-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "line",
    [
        "Previous correction: 212 71/2026, 215 40/2026",
        "Previous correction: 212 - 71/2026; 215 - 40/2026",
        "Corrección anterior / Previous correction: 212 - 71/2026; 215 - 40/2026",
    ],
)
def test_the_notice_before_of_each_chart_behind_its_number(line: str) -> None:
    text = f"80/26 Quill Sound\nCharts 212 and 215\n{line}\nInsert wreck {P}\n"
    (notice,) = parse(text).notices
    read = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert read == [("212", 71), ("215", 40)]


def test_words_of_another_language_before_those_in_english() -> None:
    text = (
        "80/26 Quill Sound\nCarta / Chart 212\nCorrección anterior / Previous correction: 71/26\n"
        f"Dátum / Datum: WGS 84\nInsert wreck {P}\nMove mooring buoy\n  de / from {P}\n"
        f"  a / to {Q}\nCarta / Chart 215\nCorrección anterior / Previous correction: 40/26\n"
        f"Insert rock {Q}\n"
    )
    bulletin = parse(text)
    (notice,) = bulletin.notices
    read = [(c.chart, c.previous and c.previous.number, len(c.actions)) for c in notice.charts]
    assert read == [("212", 71, 2), ("215", 40, 1)]
    assert all(a.usable for c in notice.charts for a in c.actions)


def test_the_notice_before_behind_its_chart_below_the_line() -> None:
    head = "412/26 Quill Sound.\nChart 88. Last notice on chart\n"
    command = "Insert wreck 46-10.00S 122-10.00W\n"
    (chart,) = parse(f"{head}88: 290/26.\n{command}").notices[0].charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("88", 290)
    other = parse(f"{head}No. 88 - 290/26.\n{command}")
    assert "previous-unread" in {finding.code for finding in other.findings}


def test_the_notice_before_below_its_chart_and_a_colon() -> None:
    head = "412/26 Quill Sound.\nChart 88. Last notice on chart 88:\n"
    command = "Insert wreck 46-10.00S 122-10.00W\n"
    (notice,) = parse(f"{head}290/26.\n{command}").notices
    (chart,) = notice.charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("88", 290)
