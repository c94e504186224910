"""What the heads of charts name beside them: notices before, editions, plans, other notices."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, codes

ITEMS = f"Insert wreck {P}\nDelete rock {Q}\n"


@pytest.mark.parametrize(
    ("head", "edition", "written"),
    [
        ("Chart 452 (New edition 3/26)", None, "New edition 3/26"),
        ("Chart 452 - New Edition 11/2026", None, "New Edition 11/2026"),
        ("Chart 452 Edition 3/2026", "3/2026", None),
    ],
)
def test_month_of_an_edition_is_no_notice_before(
    head: str, edition: str | None, written: str | None
) -> None:
    text = f"12/26 {head}\nInsert wreck 47°12'.34S 123°45'.67W\n"
    [notice] = parse(text).notices
    [chart] = notice.charts
    assert (chart.previous, chart.edition, chart.previous_written) == (None, edition, written)


@pytest.mark.parametrize(
    ("head", "panel"),
    [
        ("TV 412, Panel B (Hale Haven), WGS 84 [318/26]", "Panel B"),
        ("TV 412 (INT 9412), WGS 84 [318/26]", None),
        ("TV 412 [318/26]", None),
        ("412, Panel B, [318/26]", "Panel B"),
    ],
)
def test_head_with_letters_and_no_word_for_a_chart(head: str, panel: str | None) -> None:
    (notice,) = parse(f"344/26 - Hale Ness - Wreck\n {head}\n{ITEMS}").notices
    (chart,) = notice.charts
    assert chart.chart in ("TV 412", "412")
    assert chart.panel == panel
    assert chart.previous is not None
    assert chart.previous.number == 318


def test_bracket_of_a_head_may_end_in_front_of_the_next_chart() -> None:
    text = (
        f"344/26 Hale Ness. Chart 615 (previous\n318/26) and chart 616 (previous 98/26).\n{ITEMS}"
    )
    (notice,) = parse(text).notices
    before = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert before == [("615", 318), ("616", 98)]
    assert [len(one.actions) for one in notice.charts] == [2, 2]
    assert notice.heading == "Hale Ness"


@pytest.mark.parametrize("sign", ["N.º", "N.°", "Nº", "N°"])
def test_sign_for_number(sign: str) -> None:
    head = f"NOTICE {sign} 344/2026 - Hale Ness\nChart {sign} 615 (previous: {sign} 318/2026)\n"
    (notice,) = parse(head + ITEMS).notices
    (chart,) = notice.charts
    assert (notice.id, chart.chart) == ("344/26", "615")
    assert chart.previous is not None
    assert chart.previous.number == 318


@pytest.mark.parametrize(
    "line",
    [
        "Previous notices: 318/26 (chart 520), 98/26 (chart 523)",
        "- Previous notices: 2026-318 (chart 520), 2026-98 (chart 523)",
        "Previous: 318/26 for 520; 98/26 for 523",
        "Previous notices: 318/26 (520), 98/26 (523)",
    ],
)
def test_notices_before_are_each_of_the_chart_told_with_them(line: str) -> None:
    bulletin = parse(f"Notice 344/26: Hale Ness\nCharts 520 and 523\n{line}\n{ITEMS}")
    (notice,) = bulletin.notices
    before = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
    assert before == [("520", 318), ("523", 98)]
    assert codes(bulletin) == set()


@pytest.mark.parametrize("head", ["Chart correction NR 344/26.", "CHART CORRECTION No 344/26"])
def test_heads_of_chart_corrections(head: str) -> None:
    text = f"{head}\nHALE NESS. CHART CORRECTION NR 80/26 IS CANCELLED.\nCHART 520.\n{ITEMS}"
    (notice,) = parse(text).notices
    assert notice.id == "344/26"
    assert [one.number for one in notice.cancels] == [80]


@pytest.mark.parametrize(
    ("line", "cancelled"),
    [
        ("Replaces notice 11/2026, which is cancelled.", [11]),
        ("Replaces Notice 11/2026 and Notice 12(T)/2026.", [11, 12]),
        ("Amends Notice 11/2026", []),
        ("Refer to Notice 11/2026", []),
    ],
)
def test_another_notice_named_below_the_head_is_no_head(line: str, cancelled: list[int]) -> None:
    (notice,) = parse(f"Notice 344/2026\nHale Ness\n{line}\nChart 520\n{ITEMS}").notices
    assert notice.id == "344/26"
    assert [one.number for one in notice.cancels] == cancelled


def test_table_of_the_charts_of_a_notice_and_corrections_to_each() -> None:
    text = (
        "NOTICE 344/26\nHale Ness - New basin\n\nCharts affected by this notice\n"
        "  Chart        Title        Edition   Previous notice   INT        Datum\n"
        "  611          Hale Ness    3         318/26            INT 9611   WGS 84\n"
        "  615 plan B   Hale Basin   2         98/25             -          WGS 84\n\n"
        f"Corrections to chart 611\n{ITEMS}Corrections to chart 615 plan B\n{ITEMS}"
    )
    (notice,) = parse(text).notices
    assert notice.id == "344/26"
    told_of = [(one.chart, one.panel, len(one.actions)) for one in notice.charts if one.actions]
    assert told_of == [("611", None, 2), ("615", "plan B", 2)]
    before = {one.chart: one.previous and one.previous.number for one in notice.charts[:2]}
    assert before == {"611": 318, "615": 98}


def test_sentence_about_another_notice_is_no_head() -> None:
    line = "Notice 625/26 placed the buoy on the wrong side. It is cancelled; apply this."
    (notice,) = parse(f"NOTICE 641/26\nHale Ness\n\n{line}\n\nChart 611\n{ITEMS}").notices
    assert notice.id == "641/26"
    assert [one.number for one in notice.cancels] == [625]
    assert all(one.usable for chart in notice.charts for one in chart.actions)


@pytest.mark.parametrize(
    "line",
    [
        "All positions on ED50 datum.",
        "All positions are on ED50.",
        "The positions in this notice are on ED50 datum.",
    ],
)
def test_datum_of_all_positions(line: str) -> None:
    (notice,) = parse(f"344/26 Hale Ness\n{line}\nChart 615 [318/26]\n{ITEMS}").notices
    (chart,) = notice.charts
    assert chart.datum is not None
    assert chart.datum.name == "ED50"


def test_plan_named_in_brackets_behind_its_chart() -> None:
    (notice,) = parse(f"344/26 Hale\nChart 615 (plan, Hale Pier), 616 (panel 2)\n{ITEMS}").notices
    assert [(one.chart, one.panel) for one in notice.charts] == [
        ("615", "plan, Hale Pier"),
        ("616", "panel 2"),
    ]


def test_cells_below_each_other_name_the_notice_before() -> None:
    (notice,) = parse(
        f"71/26\nChart 318\n63/26\nAdd\nwreck\n{ITEMS.split()[2]} 122-00.00W\n"
    ).notices
    (chart,) = notice.charts
    assert (notice.id, chart.chart) == ("71/26", "318")
    assert chart.previous is not None
    assert chart.previous.number == 63


def test_number_below_the_head_of_a_list_by_chart_opens_its_notice() -> None:
    bulletin = parse(f"Chart 318\n63/26\n{ITEMS}64/26\n{ITEMS}")
    assert [one.id for one in bulletin.notices] == ["63/26", "64/26"]
