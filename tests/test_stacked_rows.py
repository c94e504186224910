"""Tables copied from a page of the web, each cell on a line of its own."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import errors
from tests.table_notices import told

P, Q, R = "46°10.10' S 122°00.20' W", "46°11.10' S 122°00.20' W", "46°12.10' S 122°00.20' W"
AT_P, AT_Q, AT_R = "-4610.10-12200.20/", "-4611.10-12200.20/", "-4612.10-12200.20/"
ROWS = (
    ("17/2026", "802", "Insert", "Wreck", P),
    ("17/2026", "802", "Delete", "Port-hand buoy", Q),
    ("18/2026", "803", "Move", "Mooring buoy", f"from {P}", f"to {R}"),
    ("18/2026", "803", "Insert", "Submarine cable joining", Q, R),
)
TITLES = ("Notice", "Chart", "Action", "Object", "Position")
READ = [
    ("17/26", "802", "insert", "wreck", [AT_P]),
    ("17/26", "802", "delete", "buoy_lateral_port", [AT_Q]),
    ("18/26", "803", "move", "buoy_mooring", [AT_P, AT_R]),
    ("18/26", "803", "insert", "cable_submarine", [AT_Q, AT_R]),
]


def _page(
    rows: Sequence[Sequence[str]],
    titles: Sequence[str] = TITLES,
    tail: Sequence[str] = ("Details",),
    between: str = "",
) -> Bulletin:
    cells = between.join("".join(f"{one}\n" for one in (*row, *tail)) for row in rows)
    head = "Tavrenne Coast Office\nFilter\nAll charts\nSort by number\n"
    return parse(head + "".join(f"{one}\n" for one in titles) + cells + "Show more\nContact us\n")


@pytest.mark.parametrize("between", ["", "\n"])
@pytest.mark.parametrize("tail", [(), ("Details",), ("Show on map", "Details")])
def test_each_row_has_its_notice_and_chart(tail: tuple[str, ...], between: str) -> None:
    bulletin = _page(ROWS, tail=tail, between=between)
    assert told(bulletin) == READ
    assert errors(bulletin) == set()


def test_spans_are_those_of_the_page() -> None:
    bulletin = _page(ROWS)
    assert [a.span.line for n in bulletin.notices for c in n.charts for a in c.actions] == [
        12, 18, 24, 31,
    ]  # fmt: skip


def test_the_chart_may_stand_first_and_a_column_behind_the_places() -> None:
    rows = [(row[1], row[0], *row[2:], "Harbour office") for row in ROWS]
    bulletin = _page(rows, ("Chart", "Number", "Change", "Object", "Position", "Source"))
    assert told(bulletin) == READ


def test_the_places_may_stand_before_the_object() -> None:
    rows = [(*row[:3], *row[4:], row[3].removesuffix(" joining")) for row in ROWS[:3]]
    bulletin = _page(rows, ("Number", "Chart", "Action", "Position", "Object"))
    assert told(bulletin) == READ[:3]


def test_latitude_and_longitude_may_have_lines_of_their_own() -> None:
    rows = [
        (
            *row[:4],
            *(half for place in row[4:] for half in place.replace("' S ", "' S|").split("|")),
        )
        for row in (ROWS[0], ROWS[1], ROWS[3])
    ]
    bulletin = _page(rows, (*TITLES[:4], "Latitude", "Longitude"))
    assert told(bulletin) == [READ[0], READ[1], READ[3]]


def test_the_object_may_have_two_lines() -> None:
    row = ("17/2026", "802", "Delete", "Port-hand buoy,", "can, red", Q)
    assert told(_page([ROWS[0], row, *ROWS[2:]])) == READ


def test_a_damaged_cell_stays_with_its_row() -> None:
    bulletin = _page([ROWS[0], ("17/2026", "8O2", *ROWS[1][2:]), *ROWS[2:]])
    assert errors(bulletin) == {"chart-unread"}
    assert told(bulletin)[1] == ("17/26", None, *READ[1][2:])
    assert told(bulletin)[2:] == READ[2:]


@pytest.mark.parametrize("missing", [1, 2, 3, 4])
def test_a_row_without_one_of_its_cells_is_told_of(missing: int) -> None:
    short = tuple(cell for at, cell in enumerate(ROWS[1]) if at != missing)
    bulletin = _page([ROWS[0], short, *ROWS[2:]])
    assert errors(bulletin)
    for one in told(bulletin):
        # No row goes to another chart than its own.
        assert one[1] in (None, "802" if one[0] == "17/26" else "803")


def test_titles_of_items_alone_are_read_as_before() -> None:
    text = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\nAction\nObject\nPosition\n"
    text += f"Insert\nWreck\n{P}\n"
    bulletin = parse(f"{text}Delete\nRock\n{Q}\nShow on map\nDownload\n")
    assert [one[2:] for one in told(bulletin)] == [
        ("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q]),
    ]  # fmt: skip
    assert errors(bulletin) == set()
