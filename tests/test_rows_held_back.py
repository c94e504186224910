"""Rows of tables and exports that may not be used as they stand, or that once lost a part."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import HEAD, P, Q, actions_of, errors, usable_of

TITLES = "Notice | Chart | Verb | Object | Position | "
ROW = f"23/26 | 16 | insert | wreck | {P} | "
WRECK = [("insert", "wreck")]


def warnings(bulletin: Bulletin) -> set[str]:
    return {one.code for one in bulletin.findings if one.severity == "warning"}


def charts_of(bulletin: Bulletin) -> list[tuple[str | None, str | None, list[str]]]:
    return [
        (section.chart, section.datum and section.datum.name, [a.verb for a in section.actions])
        for notice in bulletin.notices
        for section in notice.charts
    ]


# verbs that are denied, or two at once


@pytest.mark.parametrize("verb", ["not insert", "not inserted", "insert/delete", "never delete"])
def test_a_denied_verb_in_a_column_is_none(verb: str) -> None:
    bulletin = parse(f"{TITLES}\n23/26 | 16 | {verb} | wreck | {P} |\n")
    assert "verb-unknown" in errors(bulletin)
    assert not usable_of(bulletin)


def test_a_denied_verb_behind_a_key_is_none() -> None:
    block = "Object: {}\nAction: {}\nPosition: {}\n\n"
    bulletin = parse(block.format("wreck", "not inserted", P) + block.format("rock", "delete", Q))
    assert "verb-unknown" in errors(bulletin)
    assert usable_of(bulletin) == [("delete", "rock")]


def test_a_heading_of_two_verbs_is_none() -> None:
    bulletin = parse(f"{HEAD}Insert/Delete\n wreck {P}\n rock {Q}\n")
    assert "item-without-verb" in errors(bulletin)
    assert not usable_of(bulletin)


@pytest.mark.parametrize("verb", ["Insert/Add", "insert", "Delete/Remove"])
def test_two_words_for_one_verb_are_read(verb: str) -> None:
    bulletin = parse(f"{TITLES}\n23/26 | 16 | {verb} | wreck | {P} |\n")
    assert not errors(bulletin)
    assert len(usable_of(bulletin)) == 1


# remarks


@pytest.mark.parametrize(
    "remark",
    [
        f"Delete rock {Q}", f"see {Q}", "cancelled by 24/26", "CANCELLED", "void",
        "superseded by 24/26", "do not insert", "not yet in force", "delete rock",
    ],
)  # fmt: skip
@pytest.mark.parametrize("title", ["Remarks", "Note", "Reason", "Comment", "Status"])
def test_a_remark_may_take_its_row_back(title: str, remark: str) -> None:
    bulletin = parse(f"{TITLES}{title}\n{ROW}{remark}\n")
    assert "text-action-lost" in errors(bulletin)
    assert not usable_of(bulletin)


@pytest.mark.parametrize(
    "remark",
    [
        "reported by a ship",
        "New edition due",
        "Cancels 12(T)/26",
        "valid until cancelled",
        "Relaid buoy",
    ],
)
def test_a_remark_of_a_row_is_kept(remark: str) -> None:
    bulletin = parse(f"{TITLES}Remarks\n{ROW}{remark}\n")
    assert not errors(bulletin)
    assert usable_of(bulletin) == WRECK
    assert [one.text for one in bulletin.notices[0].remarks] == [remark]


@pytest.mark.parametrize(("title", "cell"), [("State", "cancelled"), ("Check", "do not insert")])
def test_a_cell_under_an_unknown_title_may_take_its_row_back(title: str, cell: str) -> None:
    bulletin = parse(f"{TITLES}{title}\n{ROW}{cell}\n")
    assert "text-action-lost" in errors(bulletin)
    assert not usable_of(bulletin)


def test_the_unit_of_a_depth_and_the_quality_of_a_place_in_columns() -> None:
    bulletin = parse(f"{TITLES}Depth | Unit | Quality\n{ROW}30 | ft | PA\n")
    (action,) = actions_of(bulletin)
    assert action.usable
    assert action.feature.depth is not None
    assert action.feature.depth.value_m == Decimal("9.144")
    assert action.geometry.positions[0].quality == "approximate"


def test_a_validity_until_cancelled_takes_nothing_back() -> None:
    assert not errors(parse(f"{TITLES}Valid\n{ROW}until cancelled\n"))


# places that are told by more than a position


@pytest.mark.parametrize(("radius", "metres"), [("200m", 200), ("0.5M", 926), ("radius 30 m", 30)])
def test_a_radius_in_its_column(radius: str, metres: int) -> None:
    bulletin = parse(f"{TITLES}Radius\n23/26 | 16 | insert | obstruction | {P} | {radius}\n")
    (action,) = actions_of(bulletin)
    assert action.usable
    assert action.geometry.shape == "circle"
    assert action.geometry.radius_nm is not None
    assert round(action.geometry.radius_nm * 1852) == Decimal(metres)
    assert action.feature.depth is None


def test_a_radius_without_a_unit_is_none() -> None:
    bulletin = parse(f"{TITLES}Radius\n{ROW}200\n")
    assert "cell-misplaced" in errors(bulletin)
    assert not usable_of(bulletin)


PRINTED = """\
Notice  Chart  Verb      Object               Latitude       Longitude
26/26   17     ADD       Rock                 46 12.10 S     122 00.20 W  {}
"""


def test_words_behind_the_coordinates_of_a_row() -> None:
    (close,) = actions_of(parse(PRINTED.format("close N")))
    assert close.usable
    assert (close.geometry.relation, close.geometry.direction) == ("close", "N")
    (about,) = actions_of(parse(PRINTED.format("(approx)")))
    assert about.usable
    assert about.geometry.positions[0].quality == "approximate"


@pytest.mark.parametrize("way", ["200m N", "0.2M NE", "045° 0.6 miles", "200m N of the light"])
def test_a_way_behind_the_coordinates_of_a_row(way: str) -> None:
    bulletin = parse(PRINTED.format(way))
    assert "offset-not-worked-out" in errors(bulletin)
    assert not usable_of(bulletin)


@pytest.mark.parametrize(
    ("title", "cell"),
    [
        ("Bearing", "137"), ("Distance", "2.4"), ("Direction", "close N"), ("Brg.", "137°"),
        ("Way", "137°"), ("Way", "2.4M"), ("Way", "close N"), ("Way", "200m N"),
    ],
)  # fmt: skip
def test_a_bearing_or_distance_in_its_column(title: str, cell: str) -> None:
    bulletin = parse(f"{TITLES}{title}\n{ROW}{cell}\n")
    assert "offset-not-worked-out" in errors(bulletin)
    assert not usable_of(bulletin)


# rows without titles, shifted rows, rows of several lines


@pytest.mark.parametrize("titles", ["", "notice,chart,verb,object,x,y\n"])
def test_rows_without_known_titles_are_no_headings(titles: str) -> None:
    rows = "23/26,16,insert,wreck,-122.0033,-46.1683\n24/26,17,del,rock,-122.0033,-46.1683\n"
    bulletin = parse(titles + rows)
    assert len([one for one in bulletin.findings if one.code == "text-action-lost"]) == 2


def test_columns_of_decimal_degrees() -> None:
    bulletin = parse(
        "notice,chart,verb,object,lat_dd,lon_dd\n23/26,16,insert,wreck,-46.1683,-122.0033\n"
    )
    assert usable_of(bulletin) == WRECK
    assert actions_of(bulletin)[0].geometry.positions[0].iso6709 == "-46.1683-122.0033/"


def test_a_heading_with_commas_is_no_row() -> None:
    bulletin = parse(
        f"23/26 Quill Sound, Chart 3, Light 12, Buoys.\nChart 802\nInsert wreck {P}\n"
    )
    assert not errors(bulletin)


def test_two_verbs_below_one_row_of_two_lines() -> None:
    text = (
        "Notice    Chart   Object\n"
        "          Action          Latitude      Longitude\n"
        "88/26     T14     Special buoy\n"
        "          PLACE           46 10.10 S    122 00.20 W\n"
        "          REMOVE          46 11.10 S    122 00.20 W\n"
        "89/26     T15     Pile\n"
        "                          46 13.10 S    122 00.20 W\n"
    )
    bulletin = parse(text)
    assert usable_of(bulletin) == [("insert", "buoy_special"), ("delete", "buoy_special")]
    assert charts_of(bulletin)[0] == ("T14", None, ["insert", "delete"])
    assert errors(bulletin) == {"item-without-verb"}


def test_a_row_shifted_under_its_titles() -> None:
    bulletin = parse(
        "CHART  NOTICE  LAST    OBJECT                 POSITION                 WORD\n"
        "17     511/26  470/26  Wreck                  46 10.10 S  122 00.20 W  ADD\n"
        "18     512/26   Pile                  46 10.10 S  122 00.20 W  DELETE\n"
    )
    assert "cell-misplaced" in errors(bulletin)
    assert usable_of(bulletin) == WRECK


# notice, datum and new place of a row


def test_each_datum_of_a_chart_has_its_rows() -> None:
    row = "25/26 | {} | delete | {} | {} | {}\n"
    bulletin = parse(
        f"{TITLES}Datum\n"
        + row.format("18", "wreck", P, "WGS84")
        + row.format("18", "rock", Q, "NAD27")
        + row.format("", "pile", Q, "WGS72")
    )
    assert charts_of(bulletin) == [
        ("18", "WGS84", ["delete"]), ("18", "NAD27", ["delete"]), ("18", "WGS72", ["delete"])
    ]  # fmt: skip
    assert "datum-differs" in warnings(bulletin)


def test_a_datum_that_is_not_known_is_told() -> None:
    bulletin = parse(f"{TITLES}Datum\n{ROW}Old Island 1911\n")
    assert "datum-unknown" in warnings(bulletin)


@pytest.mark.parametrize("title", ["Replaces", "Supersedes", "Cancels", "Cancelled"])
def test_a_column_of_the_notices_that_end(title: str) -> None:
    bulletin = parse(f"{TITLES}{title}\n{ROW}11/26, 9(T)/26\n")
    ends = [(one.number, one.status) for one in bulletin.notices[0].cancels]
    assert ends == [(11, "permanent"), (9, "temporary")]
    assert "cancellation-unread" in warnings(parse(f"{TITLES}{title}\n{ROW}pile\n"))
    assert not warnings(parse(f"{TITLES}{title}\n{ROW}-\n"))


def test_a_year_without_a_number_is_not_of_the_notice_above() -> None:
    titles = "nm;year;chart;cmd;obj;position\n"
    bulletin = parse(
        f"{titles}451;26;510;insert;wreck;{P}\n;27;510;insert;rock;{Q}\n;26;510;delete;pile;{Q}\n"
    )
    assert "notice-unread" in errors(bulletin)
    assert usable_of(bulletin)[0] == ("insert", "wreck")
    assert ("insert", "rock") not in usable_of(bulletin)


def test_a_new_thing_stands_where_it_goes() -> None:
    bulletin = parse(
        "Notice | Chart | Verb | Object | From | To\n"
        f"23/26 | 16 | insert | rock | | {P}\n24/26 | 16 | insert | cable | {P} | {Q}\n"
    )
    assert not errors(bulletin)
    rock, cable = (action.geometry for action in actions_of(bulletin))
    assert (rock.shape, len(rock.positions)) == ("point", 1)
    assert (cable.shape, cable.relation, len(cable.positions)) == ("line", "joining", 2)


@pytest.mark.parametrize(
    ("verb", "is_usable"), [("delete", False), ("insert", False), ("move", True)]
)
def test_a_new_place_belongs_to_a_move(verb: str, is_usable: bool) -> None:
    bulletin = parse(
        "Notice | Chart | Verb | Object | From | To\n"
        f"23/26 | 16 | {verb} | special buoy | {P} | {Q}\n"
    )
    assert bool(usable_of(bulletin)) is is_usable
    assert ("places-of-a-move" in errors(bulletin)) is not is_usable
