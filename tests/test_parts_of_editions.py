"""Titles of the parts of an edition with no blank line above them, and the notices below."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import codes

P, Q = "46°00'.00S., 122°00'.00W.", "46°00'.50S., 122°00'.00W."
CONTENTS = """CONTENTS
Section 1   Index of charts affected .............. page 1
Section 2   Notices for the correction of charts .. page 2
Section 3   Temporary notices in force ............ page 3
Section 4   New charts ............................ page 3
"""
PARTS = [
    "SECTION 1.  INDEX OF CHARTS AFFECTED",
    "SECTION 2.  NOTICES FOR THE CORRECTION OF CHARTS",
    "SECTION 3.  TEMPORARY AND PRELIMINARY NOTICES IN FORCE",
    "SECTION 4.  CHARTS NEWLY ISSUED AND WITHDRAWN",
]
FOOT = "Weekly Edition 19/26                                                       {}\n"


def _edition(parts: list[str], contents: str = CONTENTS) -> str:
    return (
        f"TAVRENNE CHARTS BUREAU\nWEEKLY EDITION 19\n9 May 2026\n{contents}"
        f"{parts[0]}\nChart No.     Notice No.\n5104          1911, 1912(T)\n5106          1911\n"
        f"{FOOT.format(1)}{parts[1]}\n"
        "1911/26  TAVRENNE ISLANDS - Callisand Sound - Wreck.\nSource: Port Captain, Callisand\n"
        f"Chart 5104 [previous notice 1846/26] WGS84 Datum\nInsert   wreck      {P}\n"
        f"{FOOT.format(2)}Delete   rock       {Q}\n"
        f"Chart 5106 [previous notice 1702/26] WGS84 Datum\nInsert   wreck      {P}\n\n"
        "1912(T)/26  TAVRENNE ISLANDS - Callisand Sound - Light.\nThe light is extinguished.\n"
        f"Chart 5104\n{FOOT.format(3)}"
        f"{parts[2]}\n5104          640(T)/25, 1912(T)/26\n"
        f"{parts[3]}\nNew edition: 5110, Orlick Haven, 24 April 2026.\nWithdrawn: 5109.\n"
        f"{FOOT.format(4)}"
    )


@pytest.mark.parametrize(
    "parts",
    [
        PARTS,
        [one.replace("SECTION", "PART") for one in PARTS],
        [one.replace("NEWLY ISSUED AND WITHDRAWN", "NEWLY PUBLISHED") for one in PARTS],
        [f"\n{one.title()}" for one in PARTS],
    ],
)
def test_each_part_begins_at_its_title(parts: list[str]) -> None:
    bulletin = parse(_edition(parts))
    assert [one.id for one in bulletin.notices] == ["1911/26", "1912(T)/26"]
    assert [one.kind for one in bulletin.lists] == [
        "contents", "index_of_charts", "in_force", "new_charts",
    ]  # fmt: skip
    index, in_force, new = (
        [e.chart for e in one.entries if e.chart] for one in bulletin.lists[1:]
    )
    assert (index, in_force, new) == (["5104", "5106"], ["5104"], ["5110", "5109"])
    made = [
        (chart.chart, [action.verb for action in chart.actions])
        for chart in bulletin.notices[0].charts
    ]
    assert made == [("5104", ["insert", "delete"]), ("5106", ["insert"])]
    assert codes(bulletin) == set()


def test_the_index_begins_at_a_title_in_small_letters_that_names_no_page() -> None:
    parts = [PARTS[0].title().replace("Section 1.  ", ""), *PARTS[1:]]
    assert [one.kind for one in parse(_edition(parts)).lists][:2] == [
        "contents",
        "index_of_charts",
    ]


def test_the_notices_of_a_list_are_no_heads() -> None:
    listed = "1911/26  Callisand Sound - Wreck\n1912(T)/26  Callisand Sound - Light\n"
    text = f"CONTENTS\n{listed}\nChart 5104\nInsert wreck  {P}\n"
    bulletin = parse(text)
    assert [one.id for one in bulletin.notices] == [None]
    (contents,) = bulletin.lists
    assert [ref.number for entry in contents.entries for ref in entry.notices] == [1911, 1912]


def test_what_is_withdrawn_in_a_notice_is_an_order() -> None:
    text = f"1911/26  Callisand Sound.\nChart 5104 WGS84\nWithdrawn: buoy  {P}\n"
    actions = [a.verb for n in parse(text).notices for c in n.charts for a in c.actions]
    assert actions == ["delete"]


def test_rows_with_figures_that_count_on_are_furniture_from_three_on() -> None:
    rows = "".join(f"Callisand item 19{' ' * 40}{n}\n" for n in (1, 2))
    assert parse(f"CONTENTS\n{rows}").coverage.ignored == 0
