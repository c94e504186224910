"""Words for a chart with a number that cannot be read, or none: no other chart is taken."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, codes, errors, told


def _charts(text: str) -> list[str | None]:
    return [chart.chart for notice in parse(text).notices for chart in notice.charts]


@pytest.mark.parametrize(
    "head",
    [
        "Chart 31|2 [3/26] WGS84",
        "Chart 8!2 [3/26] WGS84",
        "Chart S0S [3/26] WGS84",
        "Chart g5 [3/26] WGS84",
        "Chart [3/26] WGS84",
        "Char 829   [3/26]   WGS84",
        "Chait 829 [3/26] WGS84",
        "Cnart 829, last 3/26",
        "CHART , QUILL SOUND. WGS 84.",
        "Chart: , last notice 3/26",
        "CHART    Quill Sound, inner part   Last notice 11/26   WGS 84",
    ],
)
def test_the_chart_above_is_not_taken(head: str) -> None:
    alone = f"12/26 Quill Sound.\n{head}\nInsert wreck {P}\n"
    assert _charts(alone) == [None]
    assert "chart-unread" in errors(parse(alone))
    below = f"12/26 Quill Sound.\nChart 802 [2/26]\nInsert rock {Q}\n{head}\nInsert wreck {P}\n"
    assert _charts(below) == ["802", None]
    assert "chart-unread" in errors(parse(below))


def test_a_head_above_the_notices_that_has_lost_its_number() -> None:
    text = (
        f"CHART 2118    Quill Sound, outer part   Last notice 610/26   WGS 84\n"
        f"655/26   Delete    wreck              {P}\n\n"
        f"CHART{{}}    Quill Sound, inner part   Last notice 611/26   WGS 84\n"
        f"656/26   Insert    rock               {Q}\n"
    )
    assert _charts(text.format(" 2119")) == ["2118", "2119"]
    assert _charts(text.format("")) == ["2118", None]
    assert errors(parse(text.format(""))) == {"chart-unread"}


@pytest.mark.parametrize(
    ("second", "is_read"),
    [("and 4D9 (last notice 4/26).", False), ("and 409 (last notice 4/26).", True)],
)
def test_a_second_chart_on_the_line_below(second: str, is_read: bool) -> None:
    text = f"12/26 Quill Sound.\nCharts 407 (last notice 3/26)\n{second}\nInsert wreck {P}\n"
    assert _charts(text) == (["407", "409"] if is_read else ["407"])
    assert errors(parse(text)) == (set() if is_read else {"chart-unread"})


@pytest.mark.parametrize("previous", ["C812/26]", "l812/26]", "812/26]", "812/26)"])
def test_a_notice_before_that_has_lost_its_bracket(previous: str) -> None:
    text = f"912/26 Quill Sound.\nChart 2119 {previous} WGS84\nInsert wreck {P}\n"
    assert errors(parse(text)) == {"chart-head-bracket"}


@pytest.mark.parametrize("title", ["Chait", "Chrt", "Cbart"])
def test_a_column_of_charts_with_a_letter_wrong_in_its_title(title: str) -> None:
    rows = f"33/26 | 503 | insert | wreck | {P}\n34/26 | 504 | insert | rock | {Q}\n"
    text = f"Notice | {title} | Action | Object | Position\n{rows}"
    assert _charts(text) == [None, None]
    assert errors(parse(text)) == {"chart-unread"}
    assert _charts(text.replace(title, "Chart")) == ["503", "504"]


def test_an_empty_cell_beside_a_new_notice() -> None:
    head = "Notice | Chart | Action | Object | Position\n"
    first, second = f"33/26 | 503 | insert | wreck | {P}\n", f"| insert | rock | {Q}\n"
    bulletin = parse(f"{head}{first}34/26 | {second}")
    assert [kind for _, kind, _ in told(bulletin)] == ["wreck"]
    assert errors(bulletin) == {"chart-unread"}
    assert errors(parse(f"{head}{first}34/26 | 504 {second}")) == set()


def test_a_table_that_leaves_what_is_above_empty() -> None:
    head = "Notice | Chart | Action | Object | Position\n"
    rows = (
        f"33/26 | 503 | insert | wreck | {P}\n | | | rock | {Q}\n34/26 | | insert | pile | {Q}\n"
    )
    bulletin = parse(head + rows)
    assert [kind for _, kind, _ in told(bulletin)] == ["wreck", "rock", "pile"]
    assert "chart-unread" not in codes(bulletin)
