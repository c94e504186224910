"""Tables whose last column holds the whole text of each notice, and cells of the notice before."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, P, Q, codes, told

TITLES = "NOTICE          CHART   LAST NM     CORRECTION\n"
FIRST = (
    "NM 140/2026     903     NM 122/26   QUILL SOUND - Ridden Shoal\n"
    "                905     NM 118/26   Insert:\n"
    f"                                    {P}\n"
    "                                       wreck, least depth 9.6 m\n"
    "                                    Delete:\n"
    f"                                    {Q}\n"
    "                                       rock\n"
)
SECOND = (
    "\nNM 141(T)/2026  903     -           QUILL SOUND - Gunnery\n"
    "                                    Firing takes place on weekdays from the battery\n"
    f"                                    in {P}. Red flags are flown.\n"
)


def test_the_text_of_a_column_is_read_below_the_heads_beside_it() -> None:
    bulletin = parse(TITLES + FIRST + SECOND)
    first, second = bulletin.notices
    assert (first.id, first.heading) == ("140/26", "QUILL SOUND - Ridden Shoal")
    assert [(one.chart, one.previous and one.previous.number) for one in first.charts] == [
        ("903", 122),
        ("905", 118),
    ]
    of_one = [("insert", "wreck_least_depth", [AT_P]), ("delete", "rock", [AT_Q])]
    assert told(bulletin) == of_one * 2
    assert (second.id, [one.chart for one in second.charts]) == ("141(T)/26", ["903"])
    assert [len(one.positions) for one in second.remarks] == [1]
    assert not codes(bulletin)


def test_a_row_with_a_whole_item_is_no_such_table() -> None:
    rows = (
        f"NM 140/2026     903     122/26      Insert wreck {P}\n"
        f"NM 141/2026     905     118/26      Delete rock {Q}\n"
    )
    bulletin = parse(TITLES + rows)
    assert [one.id for one in bulletin.notices] == ["140/26", "141/26"]
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


@pytest.mark.parametrize("cell", ["122/26", "NM 122/26", "No 122/26", "[122/26]", "122"])
def test_the_title_says_that_a_number_is_that_of_the_notice_before(cell: str) -> None:
    titles = "NOTICE      CHART   LAST NM        ACTION   OBJECT  POSITION\n"
    bulletin = parse(f"{titles}140/26      903     {cell:<15}Insert   wreck   {P}\n")
    (chart,) = bulletin.notices[0].charts
    assert chart.previous is not None
    assert chart.previous.number == 122


def test_a_notice_before_that_cannot_be_read_is_told() -> None:
    titles = "NOTICE      CHART   LAST NM        ACTION   OBJECT  POSITION\n"
    bulletin = parse(f"{titles}140/26      903     12?/26         Insert   wreck   {P}\n")
    assert "previous-unread" in codes(bulletin)


@pytest.mark.parametrize("cell", ["9533", "INT 9533", "INT9533"])
def test_the_title_says_that_a_number_is_an_international_one(cell: str) -> None:
    titles = "NOTICE   CHART   INT        LAST     ACTION   OBJECT   POSITION\n"
    row = f"140/26   903     {cell:<11}122/26   Insert   wreck    {P}\n"
    (chart,) = parse(titles + row).notices[0].charts
    assert (chart.chart, (chart.international or "").replace(" ", "")) == ("903", "INT9533")


@pytest.mark.parametrize("gap", ["", "\n"])
@pytest.mark.parametrize("heading", ["", "Morin Bay. Rock.\n" + " " * 36])
def test_a_chart_below_may_have_corrections_of_its_own(gap: str, heading: str) -> None:
    rows = (
        "80/26           802     60/26       Quill Sound. Wreck.\n"
        f"                                    Insert wreck {P}\n{gap}"
        f"                803     58/26       {heading}Delete rock {Q}\n"
    )
    (notice,) = parse(TITLES + rows).notices
    read = [(one.chart, [each.verb for each in one.actions]) for one in notice.charts]
    assert read == [("802", ["insert"]), ("803", ["delete"])]
