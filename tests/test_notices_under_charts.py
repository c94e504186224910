"""Editions sorted by chart: lists of the notices before, panels over notices, heads of pages."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, actions_of, codes, errors

RULE = "_" * 60
TWO = f"""\
CHARTS 121 and 123        NORTHERN PART        WGS 84

  12/26   Power cable.
          {{listed}}

    To be inserted:
      1) wreck            {P}

  13/26   Light.          Last correction: 12/26

    To be erased:
      1) rock             {Q}
"""
PANEL = f"""\
CHART 130        QUILL ROADS        WGS 84

  12/26   Depths.          Last correction: 7/26

    To be inserted:
      1) wreck            {P}

CHART 130, plan QUILL BASIN        WGS 84
"""
OF_PANEL = f"""
  13/26   Quay.            Last correction: 12/26

    To be erased:
      1) rock             {Q}
"""


def _told(bulletin: Bulletin) -> list[tuple[str | None, list[tuple[object, ...]]]]:
    return [
        (
            notice.id,
            [
                (one.chart, one.panel, one.previous and one.previous.number, len(one.actions))
                for one in notice.charts
            ],
        )
        for notice in bulletin.notices
    ]


@pytest.mark.parametrize(
    "listed",
    [
        "Last correction: 7/26 (chart 121), 9/26 (chart 123)",
        "Last corrections: 7/26 (121), 9/26 (123)",
        "Previous 9/26 for chart 123 and 7/26 for chart 121",
        "Last advices: 7/26 (chart 121), 9/26 (chart 123).",
        "Last notice: 7/26 on chart 121; 9/26 on chart 123",
        "Previous notices: 121: 7/26, 123: 9/26",
    ],
)
def test_a_list_below_the_heading_tells_the_notices_before_of_the_charts_above(
    listed: str,
) -> None:
    bulletin = parse(TWO.format(listed=listed))
    assert _told(bulletin) == [
        ("12/26", [("121", None, 7, 1), ("123", None, 9, 1)]),
        ("13/26", [("121", None, 12, 1), ("123", None, 12, 1)]),
    ]
    assert [one.heading for one in bulletin.notices] == ["Power cable", "Light"]
    assert not codes(bulletin)


def test_a_list_that_names_another_chart_is_told() -> None:
    listed = "Last correction: 7/26 (chart 121), 9/26 (chart 125)"
    bulletin = parse(TWO.format(listed=listed))
    assert _told(bulletin)[0] == ("12/26", [("121", None, 7, 1), ("123", None, None, 1)])
    assert "previous-unread" in codes(bulletin)


def test_a_panel_below_the_items_of_a_notice_heads_the_next_one() -> None:
    bulletin = parse(PANEL + OF_PANEL)
    assert _told(bulletin) == [
        ("12/26", [("130", None, 7, 1)]),
        ("13/26", [("130", "plan QUILL BASIN", 12, 1)]),
    ]
    assert not codes(bulletin)


def test_a_panel_with_items_below_it_goes_on_with_its_notice() -> None:
    bulletin = parse(f"{PANEL}\n    To be erased:\n      1) rock             {Q}\n")
    assert _told(bulletin) == [
        ("12/26", [("130", None, 7, 1), ("130", "plan QUILL BASIN", 7, 1)]),
    ]


@pytest.mark.parametrize(
    "page",
    [
        "                 - 3 -\nNOTICES TO SEAFARERS                     Week 19, 2026",
        "                 - 3 -\nNOTICES TO SEAFARERS       No 19 of 2026",
        "Page 3\nNotices to Mariners              Week 19/2026",
        f"                 - 3 -\nCORRECTIONS             Bulletin 19, 2026\n{RULE}",
    ],
)
def test_a_page_head_with_its_edition_ends_no_chart(page: str) -> None:
    bulletin = parse(f"{PANEL}\n{page}\n{OF_PANEL}")
    assert _told(bulletin) == [
        ("12/26", [("130", None, 7, 1)]),
        ("13/26", [("130", "plan QUILL BASIN", 12, 1)]),
    ]
    bulletin = parse(f"{TWO.format(listed='Last correction: 7/26')}\n{page}\n\n{PANEL}")
    assert [chart for _, charts in _told(bulletin) for chart, *_ in charts][-2:] == ["130", "130"]


@pytest.mark.parametrize("blanks", [2, 4, 9, 14])
def test_sectors_below_the_place_of_a_light_are_of_it(blanks: int) -> None:
    sectors = " " * blanks + "Sectors: G 341°-012°, W 012°-027°, R 027°-068°."
    bulletin = parse(
        f"12/26 Quill Sound\nChart 802 [3/26] WGS84\nTo be corrected:\n"
        f"  1) light to Fl(2)WRG.10s18m12/9/9M   {P}\n{sectors}\n"
    )
    (action,) = actions_of(bulletin)
    assert [one.colour for one in action.changes[0].new.sectors] == ["G", "W", "R"]
    assert not errors(bulletin)
