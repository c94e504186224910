"""Exported tables: cells between signs, a notice in several columns, an item in several rows."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import actions_of, codes, errors
from tests.table_notices import AT_P, AT_Q, AT_R, P, Q, R, W, told

EXPORT = f"""\
# invented export
year;number;kind;chart;previous;action;object;latitude;longitude
2026;451;;510;428/26;insert;wreck;{P};{W}
2026;451;;511;402/26;delete;rock;{Q};{W}
2026;453;T;513;;remark;Light in {R} {W} reported extinguished;;
# 3 rows
# 2026;454;;510;451/26;delete;wreck;{P};{W}
"""


def test_a_notice_in_several_columns() -> None:
    bulletin = parse(EXPORT)
    assert told(bulletin) == [
        ("451/26", "510", "insert", "wreck", [AT_P]),
        ("451/26", "511", "delete", "rock", [AT_Q]),
    ]
    assert [(n.id, n.status) for n in bulletin.notices] == [
        ("451/26", "permanent"),
        ("453(T)/26", "temporary"),
    ]
    (remark,) = bulletin.notices[1].remarks
    assert [p.iso6709 for p in remark.positions] == [AT_R]
    # A row put aside is no row, and is told; the count above it is the foot of the list.
    assert [(f.code, f.span.line) for f in bulletin.findings if f.severity == "warning"] == [
        ("text-unread", 7)
    ]


def test_the_mark_in_a_column_beside_a_whole_number() -> None:
    text = f"Notice;Status;Chart;Action;Object;Position\n7/26;T;802;insert;wreck;{P} {W}\n"
    assert [n.id for n in parse(text).notices] == ["7(T)/26"]


@pytest.mark.parametrize(
    ("head", "rows"),
    [
        ("Notice;Chart", ["13/26;802", "l4/26;803", ";"]),
        ("Notice;Chart", ["13/26;802", "#14/26?;803", ";"]),
        ("year;number;chart", ["2026;13;802", "2O26;14;803", ";;"]),
        ("year;number;chart", ["2026;13;802", "2026;1A;803", ";;"]),
    ],
)
def test_rows_of_a_number_that_cannot_be_read(head: str, rows: list[str]) -> None:
    """They are not given to the notice above, nor are the rows below them without a number."""
    things = [f";insert;wreck;{P} {W}", f";insert;rock;{Q} {W}", f";insert;pile;{R} {W}"]
    body = "\n".join(row + thing for row, thing in zip(rows, things, strict=True))
    bulletin = parse(f"{head};Action;Object;Position\n{body}\n")
    assert errors(bulletin) == {"notice-unread"}
    assert [(one[0], one[3]) for one in told(bulletin)] == [
        ("13/26", "wreck"),
        (None, "rock"),
        (None, "pile"),
    ]
    assert [action.usable for action in actions_of(bulletin)] == [True, False, True]


COMMAS = f"""\
year,number,kind,chart,action,object,latitude,longitude
2026,451,,510,insert,light-buoy Fl.R.2.5s,{P},{W}
2026,451,,510,delete,"wreck, least depth 6.1 m",{Q},{W}
2026,451,,510,insert,"legend 'No Anchoring'",{R},{W}
2026,451,,510,insert,"cable, joining",{P},{W}
,,,,,,{Q},{W}
""".replace("'", '""')


def test_an_export_parted_by_commas() -> None:
    bulletin = parse(COMMAS)
    assert [one[2:] for one in told(bulletin)] == [
        ("insert", "light_buoy_generic", [AT_P]),
        ("delete", "wreck_least_depth", [AT_Q]),
        ("insert", "legend", [AT_R]),
        ("insert", "cable_submarine", [AT_P, AT_Q]),
    ]
    assert not errors(bulletin)
    assert actions_of(bulletin)[2].feature.legend == "No Anchoring"
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize("mark", [",", ";", "\t"])
def test_cells_in_quotes_whatever_parts_them(mark: str) -> None:
    bulletin = parse(
        COMMAS.replace(", l", "~")
        .replace(", j", "^")
        .replace(",", mark)
        .replace("~", f"{mark} l")
        .replace("^", ", j")
    )
    assert [one[2:] for one in told(bulletin)] == [
        ("insert", "light_buoy_generic", [AT_P]),
        ("delete", "wreck_least_depth", [AT_Q]),
        ("insert", "legend", [AT_R]),
        ("insert", "cable_submarine", [AT_P, AT_Q]),
    ]
    assert actions_of(bulletin)[1].feature.text.startswith("wreck")
    assert not errors(bulletin)


SIGNED = """\
notice;date;chart;seq;op;object;lat;lon
45/26;2026-06-02;802;1;insert;"cable, joining";-46.00000;-122.00000
45/26;2026-06-02;802;1;;;-46.10000;-122.10000
45/26;2026-06-02;802;2;insert;"wind turbine";-46.20000;-122.20000
45/26;2026-06-02;802;3;insert;"wind turbine";-46.30000;-122.30000
"""


@pytest.mark.parametrize("mark", [";", ",", "\t"])
def test_numbers_of_items_count_no_places(mark: str) -> None:
    text = SIGNED.replace(", j", "^").replace(";", mark).replace("^", ", j")
    bulletin = parse(text)
    assert [one[3:] for one in told(bulletin)] == [
        ("cable_submarine", ["-46.00000-122.00000/", "-46.10000-122.10000/"]),
        ("wind_turbine", ["-46.20000-122.20000/"]),
        ("wind_turbine", ["-46.30000-122.30000/"]),
    ]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    ("thing", "shape", "told"),
    [
        ("wind turbine", "points", set()),
        ("submarine cable", "line", set()),
        ("fish farm", "points", {"area-of-points"}),
    ],
)
def test_counts_that_may_be_of_places_or_of_rows(thing: str, shape: str, told: set[str]) -> None:
    row = f'45/26;2026-06-02;802;{{0}};insert;"{thing}";-46.{{0}}0000;-122.00000'
    text = "\n".join([SIGNED.split("\n")[0], *map(row.format, (1, 2, 3)), ""])
    (action,) = actions_of(parse(text))
    assert (action.geometry.shape, len(action.geometry.positions)) == (shape, 3)
    assert codes(parse(text)) == told


@pytest.mark.parametrize("mark", ["\t", ";", ",", " | "])
def test_coordinates_with_signs_in_cells_of_their_own(mark: str) -> None:
    rows = ["notice", "chart", "action", "feature", "lat", "lon"]
    row = ["45/26", "802", "Insert", "wreck", "-46.16833", "-122.00333"]
    bulletin = parse(f"{mark.join(rows)}\n{mark.join(row)}\n")
    (action,) = actions_of(bulletin)
    assert [p.iso6709 for p in action.geometry.positions] == ["-46.16833-122.00333/"]


VERTICES = f"""\
Notice;Chart;Item;Action;Object;Point;Latitude;Longitude
45/26;802;1;insert;submarine cable;1;{P};{W}
45/26;802;1;insert;submarine cable;2;{Q};{W}
45/26;802;2;insert;wreck;1;{R};{W}
"""


@pytest.mark.parametrize(
    "text",
    [
        VERTICES,
        VERTICES.replace(";Point", "").replace("cable;1;", "cable;").replace("cable;2;", "cable;")
        .replace("wreck;1;", "wreck;"),
    ],
    ids=["counted", "by the number of the item"],
)  # fmt: skip
def test_rows_that_say_all_again_for_each_place(text: str) -> None:
    bulletin = parse(text)
    assert [one[2:] for one in told(bulletin)] == [
        ("insert", "cable_submarine", [AT_P, AT_Q]),
        ("insert", "wreck", [AT_R]),
    ]
    assert actions_of(bulletin)[0].geometry.shape == "line"
    assert not errors(bulletin)


def test_a_place_that_is_missing_from_such_rows() -> None:
    bulletin = parse(VERTICES.replace("cable;2", "cable;3"))
    assert errors(bulletin) == {"place-not-next"}
    assert [action.usable for action in actions_of(bulletin)] == [False, True]


def test_titles_of_which_that_of_the_longitude_stands_first() -> None:
    text = "notice;chart;action;feature;lon;lat\n45/26;802;insert;wreck;-12.00333;-46.16833\n"
    (action,) = actions_of(parse(text))
    assert [p.iso6709 for p in action.geometry.positions] == ["-46.16833-012.00333/"]


@pytest.mark.parametrize("mark", [";", ",", "\t", " | "])
@pytest.mark.parametrize(
    "row",
    [
        # A sign that parts cells stands within one.
        ["13/26", "803", "insert", "wreck", "least depth 4 m", Q, W],
        ["13/26", "803", "insert", "wreck", Q, W, "pile"],
    ],
)
def test_a_row_of_more_cells_than_titles(row: list[str], mark: str) -> None:
    """Nothing of it is used, and none of it goes to the notice above."""
    titles = ["notice", "chart", "action", "object", "latitude", "longitude"]
    above = ["12/26", "802", "insert", "rock", P, W]
    bulletin = parse("\n".join(mark.join(one) for one in (titles, above, row)) + "\n")
    assert "row-too-long" in errors(bulletin)
    assert [(one[0], one[1], one[3]) for one in told(bulletin)] == [
        ("12/26", "802", "rock"),
        ("13/26", "803", "wreck"),
    ]
    assert [action.usable for action in actions_of(bulletin)] == [True, False]


def test_places_of_a_move_in_columns_of_their_own() -> None:
    text = (
        "id;nm;year;type;chart;cmd;obj;from_lat;from_lon;to_lat;to_lon\n"
        f"1;451;26;NM;510;move;special buoy;{P};{W};{Q};{W}\n"
        f"2;452;26;T;511;insert;wreck;{P};{W};;\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("451/26", "510", "move", "buoy_special", [AT_P, AT_Q]),
        ("452(T)/26", "511", "insert", "wreck", [AT_P]),
    ]
    assert not errors(bulletin)


ROWS_WITH_COMMAS = f"notice,chart,verb,object,position\n1/26,16,insert,wreck,{P} {W}\n"


def test_a_blank_line_ends_the_rows_with_commas() -> None:
    bulletin = parse(f"{ROWS_WITH_COMMAS}\nDelete rock, wreck, pile, stake {Q} {W}\n")
    assert told(bulletin)[0] == ("1/26", "16", "insert", "wreck", [AT_P])
    assert [action.usable for action in actions_of(bulletin)] == [True, False]
    assert errors(bulletin) == {"feature-kinds-several"}


def test_commas_below_titles_without_verb_or_feature_part_no_cells() -> None:
    bulletin = parse(
        f"Chart, Datum, Position, Notice, Edition\nInsert wreck, pile, rock, stake {Q} {W}\n"
    )
    assert [action.usable for action in actions_of(bulletin)] == [False]
    assert errors(bulletin) == {"feature-kinds-several"}


COUNTED = "item;verb;object;point;latitude;longitude\n"


@pytest.mark.parametrize(("first", "second"), [("1", "1"), ("", "2")])
def test_a_count_that_does_not_go_on_is_of_another_item(first: str, second: str) -> None:
    rows = f"1;insert;rock;{first};{P};{W}\n1;insert;rock;{second};{Q};{W}\n"
    actions = actions_of(parse(COUNTED + rows))
    found = [[one.iso6709 for one in action.geometry.positions] for action in actions]
    assert found == [[AT_P], [AT_Q]]
