"""Tables with degrees, minutes and hemisphere in columns of their own."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.layout.copied.split_coordinates import with_whole_coordinates
from tests.short_notices import HEAD, actions_of, codes, errors, places

LEAD = "Notice{0}Chart{0}Do{0}Object{0}"
TABLES = {
    "hemisphere in the titles": (
        "\t", "Lat S deg{0}Lat S min{0}Long W deg{0}Long W min", "47{0}12.34{0}123{0}45.67",
    ),
    "hemisphere in a column": (
        ";", "Lat °{0}Lat '{0}N/S{0}Lon °{0}Lon '{0}E/W", "47{0}12,34{0}S{0}123{0}45,67{0}W",
    ),
    "between commas": (
        ",", "Lat deg{0}min{0}N/S{0}Long deg{0}min{0}E/W", "47{0}12.34{0}S{0}123{0}45.67{0}W",
    ),
    "between bars": (
        "|", "Lat deg{0}min{0}N/S{0}Lon deg{0}min{0}E/W", "47{0}12.34{0}S{0}123{0}45.67{0}W",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("mark", "titles", "figures"), TABLES.values(), ids=TABLES)
def test_the_cells_of_a_coordinate_are_one(mark: str, titles: str, figures: str) -> None:
    text = (LEAD + titles + "\n41/26{0}802{0}Insert{0}wreck{0}" + figures + "\n").format(mark)
    bulletin = parse(text)
    assert places(bulletin) == [["-4712.34-12345.67/"]]
    assert not codes(bulletin) - {"datum-not-stated"}
    span = bulletin.notices[0].charts[0].actions[0].geometry.positions[0].span
    assert text[span.start : span.end] == figures.format(mark)


def test_seconds_have_a_column_too() -> None:
    titles = "Lat deg;Lat min;Lat sec;N/S;Lon deg;Lon min;Lon sec;E/W"
    row = "41/26;802;Insert;wreck;47;12;34;S;123;45;40;W"
    bulletin = parse(f"{LEAD.format(';')}{titles}\n{row}\n")
    assert places(bulletin) == [["-471234-1234540/"]]


def test_a_cell_without_its_figure_gives_no_position() -> None:
    titles = "Lat °;Lat ';N/S;Lon °;Lon ';E/W"
    bulletin = parse(f"{LEAD.format(';')}{titles}\n41/26;802;Insert;wreck;47;;S;123;45,67;W\n")
    assert not any(action.usable for action in actions_of(bulletin))


@pytest.mark.parametrize(
    "line",
    [
        "Delete wreck; 47; 12; 5; 123; 45; 6; in P",
        "Delete wreck; 47; 12.5; 123; 45.6; in P",
        "Delete wreck; rock; stump; pile; crane; in P",
    ],
)
def test_lines_of_later_notices_keep_their_marks(line: str) -> None:
    titles = "Object;Lat °;Lat ';N/S;Lon °;Lon ';E/W"
    table = f"{titles}\nwreck;47;12,34;S;123;45,67;W\n"
    told, marks = with_whole_coordinates(f"{table}\n42/26 Quill Sound.\nChart 802\n{line}\n")
    assert told.splitlines()[-1] == line
    assert marks


@pytest.mark.parametrize(
    ("titles", "row"),
    [
        ("Lat S deg  Lat S min  Lon W deg  Lon W min", "47         12.34      123        45.67"),
        ("Lat deg  min   N/S  Lon deg  min   E/W", "47       12.34 S    123      45.67 W"),
    ],
)
def test_where_blanks_alone_part_the_cells_no_position_is_made_up(titles: str, row: str) -> None:
    text = f"{HEAD}Action  Feature  {titles}\nInsert  wreck    {row}\n"
    bulletin = parse(text)
    assert not any(action.usable for action in actions_of(bulletin))
    assert errors(bulletin)


def test_other_tables_stay_as_they_are() -> None:
    text = "Notice\tChart\tObject\tLat S\tLong W\n41/26\t802\twreck\t47 12.34\t123 45.67\n"
    assert with_whole_coordinates(text) == (text, [])
