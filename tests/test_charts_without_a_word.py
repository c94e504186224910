"""Heads of charts below the number that have no word for a chart: `TV 802, INT 9871`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, codes

TITLE = "TAVRENNE NOTICES\nWeekly Edition 26/2026, 1 July 2026\n\n"
WRECK = f"Insert wreck {P}\n"

HEADS = {
    "17/26\n802 Quill Sound [12/26]": ("802", None, 12),
    "17/26\n802 - Quill Sound [12/26] WGS84": ("802", None, 12),
    "17/26 Quill Sound\n802 Quill Sound, Inner Part [12(T)/26]": ("802", None, 12),
    "17/26 Quill Sound\n802 (INT 9871)": ("802", "INT 9871", None),
    "17/26 Quill Sound\nTV 802, INT 9871": ("TV 802", "INT 9871", None),
    "17/26 Quill Sound\nTV 802 (INT 9871) 12/26": ("TV 802", "INT 9871", 12),
    "17/26 Quill Sound\nTV 802": ("TV 802", None, None),
    "NM 17/26\n802   51 Ed. 6/15/24   LAST NM 12/26   17/26": ("802", None, 12),
    "NM 17/26\nQuill Sound\n802   51 Ed.   LAST NM 12/26   17/26": ("802", None, 12),
}


@pytest.mark.parametrize(("head", "told"), HEADS.items())
def test_head_names_its_chart(head: str, told: tuple[str, str | None, int | None]) -> None:
    (notice,) = parse(f"{TITLE}{head}\n{WRECK}").notices
    (chart,) = notice.charts
    number = chart.previous.number if chart.previous else None
    assert (chart.chart, chart.international, number) == told
    assert "802" not in (notice.heading or "")
    assert [one.usable for one in chart.actions] == [True]


def test_second_head_ends_the_items_of_the_first() -> None:
    text = f"17/26\n802 Quill Sound [12/26]\n{WRECK}803 Port Ellory [13/26]\nDelete rock {Q}\n"
    (notice,) = parse(TITLE + text).notices
    assert [(one.chart, len(one.actions)) for one in notice.charts] == [("802", 1), ("803", 1)]
    assert all(one.usable for chart in notice.charts for one in chart.actions)


def test_edition_and_datum_of_a_chart_above_all_notices() -> None:
    head = "4241 - Port Ellory to Quill Sound - New Edition - 12-MAY-2023 - NAD 1983"
    (notice,) = parse(f"{TITLE}{head}\n{WRECK}").notices
    (chart,) = notice.charts
    assert chart.datum is not None
    assert (chart.chart, chart.datum.epsg, chart.previous_written) == ("4241", 4269, "New Edition")


UNREAD = [
    "17/26 Quill Sound\nTV 802, TV 803",
    "17/26 Quill Sound\nTav802 (12/26) WGS84",
    "17/26 Quill Sound\n45 Quill Sound (12/26)",
    "17/26 Quill Sound\nSame chart",
    "17/26 Quill Sound\nOn the same charts.",
]


@pytest.mark.parametrize("head", UNREAD)
def test_head_that_is_not_read_is_told(head: str) -> None:
    bulletin = parse(f"{TITLE}{head}\n{WRECK}")
    assert [one.chart for one in bulletin.notices[0].charts] == [None]
    assert "chart-unread" in codes(bulletin)


@pytest.mark.parametrize(
    "head",
    [
        "17/26 Quill Sound\n5 Mile Rock",
        "17/26 Quill Sound\nVHF 16",
        "17/26 Quill Sound - 2 wrecks",
        "17/26 Quill Sound\n802 boats were counted.",
    ],
)
def test_other_figures_head_none(head: str) -> None:
    bulletin = parse(f"{TITLE}{head}\n{WRECK}")
    assert [one.chart for one in bulletin.notices[0].charts] == [None]
    assert "chart-unread" not in codes(bulletin)
