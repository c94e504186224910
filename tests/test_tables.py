"""Tables as offices print and export them: what stands in which column, and in which line."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import actions_of, errors
from tests.table_notices import AT_P, AT_Q, AT_R, P, Q, W, told

BOX = """\
LIST 8 - 14 August 2026

┌────────────┬─────────────┬──────────────────────────┬────────┬────────┬───────┐
│ Latitude   │ Longitude   │ Object                   │ Verb   │ Notice │ Chart │
├────────────┼─────────────┼──────────────────────────┼────────┼────────┼───────┤
│ 46 10.10 S │ 122 00.20 W │ Wreck                    │ insert │ 801/26 │ 140   │
│ 46 11.10 S │ 122 00.20 W │ Special buoy, from here  │ shift  │ 802/26 │ 141   │
│ 46 12.10 S │ 122 00.20 W │ to here                  │        │        │       │
│ 46 10.10 S │ 122 00.20 W │ Submarine cable, joining │ insert │ 802/26 │ 141   │
│ 46 11.10 S │ 122 00.20 W │                          │        │        │       │
└────────────┴─────────────┴──────────────────────────┴────────┴────────┴───────┘
"""
IN_BOX = [
    ("801/26", "140", "insert", "wreck", [AT_P]),
    ("802/26", "141", "move", "buoy_special", [AT_Q, AT_R]),
    ("802/26", "141", "insert", "cable_submarine", [AT_P, AT_Q]),
]


@pytest.mark.parametrize("drawn", ["│┌┬┐├┼┤└┴┘─", "║╔╦╗╠╬╣╚╩╝═", "┃┏┳┓┣╋┫┗┻┛━"])
def test_a_table_drawn_with_box_characters(drawn: str) -> None:
    bulletin = parse(BOX.translate(str.maketrans("│┌┬┐├┼┤└┴┘─", drawn)))
    assert told(bulletin) == IN_BOX
    assert not errors(bulletin)
    assert bulletin.coverage.unread == 0


FIXED = """\
WEEKLY TABLE No. 31, 1 August 2026

CHART  NOTICE  LAST    OBJECT                       POSITION                 WORD
-----  ------  ------  ---------------------------  -----------------------  -------
17     511/26  470/26  Wreck                        46 10.10 S  122 00.20 W  ADD
                       Rock                         46 11.10 S  122 00.20 W  DELETE
18     511/26  488/26  Submarine cable, joining     46 10.10 S  122 00.20 W  ADD
                                                    46 11.10 S  122 00.20 W
19     512/26  490/26  Special buoy                 46 11.10 S  122 00.20 W  MOVE TO
                                                    46 12.10 S  122 00.20 W

REMARKS
Notice 515(T)/26: the light in 46 12.10 S 122 00.20 W, chart 22, is
damaged and shows no light.
Charts 20, 21 and 24: nothing this week.
"""


def test_verbs_in_a_column_whose_title_says_nothing_of_them() -> None:
    bulletin = parse(FIXED)
    assert told(bulletin) == [
        ("511/26", "17", "insert", "wreck", [AT_P]),
        ("511/26", "17", "delete", "rock", [AT_Q]),
        ("511/26", "18", "insert", "cable_submarine", [AT_P, AT_Q]),
        ("512/26", "19", "move", "buoy_special", [AT_Q, AT_R]),
    ]
    assert not errors(bulletin)
    # A sentence below the rows is none of them, and charts without corrections are no notice.
    assert [notice.id for notice in bulletin.notices] == ["511/26", "512/26", "515(T)/26"]
    assert [section.chart for section in bulletin.notices[2].charts] == ["22"]


BY_CHART = """\
CORRECTIONS BY CHART, JANUARY TO JUNE 2026

CHART 811 - BRACK WATER
Date      Notice   After    Correction
12 Jan    9/26     340/25   put in    wreck                         46 10.10 S  122 00.20 W
                            strike    rock                          46 11.10 S  122 00.20 W
28 Apr    71/26    55/26    shift     special buoy from             46 11.10 S  122 00.20 W
                                      to                            46 12.10 S  122 00.20 W
26 May    82(T)/26          The light in 46 12.10 S 122 00.20 W is extinguished.

CHART 812 (INT 9812) - BRACK HEAD
Date      Notice   After    Correction
19 Feb    34/26    322/25   put in    pier, joining                 46 10.10 S  122 00.20 W
                                                                    46 11.10 S  122 00.20 W
Chart 813 had no corrections in these months.
"""


def test_a_column_of_corrections_holds_verb_feature_and_places() -> None:
    bulletin = parse(BY_CHART)
    assert told(bulletin) == [
        ("9/26", "811", "insert", "wreck", [AT_P]),
        ("9/26", "811", "delete", "rock", [AT_Q]),
        ("71/26", "811", "move", "buoy_special", [AT_Q, AT_R]),
        ("34/26", "812", "insert", "pier", [AT_P, AT_Q]),
    ]
    assert not errors(bulletin)
    before = [c.previous.number for n in bulletin.notices for c in n.charts if c.previous]
    assert before == [340, 55, 322]
    radio = next(n for n in bulletin.notices if n.id == "82(T)/26")
    assert [p.iso6709 for p in radio.remarks[0].positions] == [AT_R]


def test_rows_that_name_the_notice_before_are_held_against_each_other() -> None:
    """They stand under the head of one chart, but share no notice before."""
    gaps = [f for f in parse(BY_CHART).findings if f.code == "previous-gap"]
    assert [(one.span.line, one.severity) for one in gaps] == [(7, "warning")]


@pytest.mark.parametrize(
    ("line", "who"),
    [
        ("Notice 98(T)/26 is cancelled by Notice 13/26.", "13/26"),
        ("Notice 13/26 cancels Notice 98(T)/26.", "13/26"),
        ("Notice 98(T)/26 is cancelled by Notice 77/26.", None),
    ],
)
def test_the_notice_that_cancels_has_it(line: str, who: str | None) -> None:
    """Not the one that happens to stand above the line."""
    body = f"WGS84, depths in metres\nInsert wreck {P} {W}\n\n"
    text = f"13/26 Quill Sound.\nChart 802 {body}14/26 Quill Sound.\nChart 803 {body}{line}\n"
    bulletin = parse(text)
    cancels = {n.id: [(one.number, one.status) for one in n.cancels] for n in bulletin.notices}
    assert cancels == {"13/26": [], "14/26": []} | ({who: [(98, "temporary")]} if who else {})
    told = [one.severity for one in bulletin.findings if one.code == "text-unread"]
    assert told == ([] if who else ["warning"])


def test_a_figure_beside_the_number_may_be_the_chart() -> None:
    """Nothing says that it is, so no chart is named; that must be told."""
    bulletin = parse("23/26 | 16 | insert | wreck | 46 10.10 S | 122 00.20 W\n")
    assert [chart.chart for chart in bulletin.notices[0].charts] == [None]
    assert [one.code for one in bulletin.findings] == ["chart-unread"]


def test_a_verb_behind_the_feature_of_one_column() -> None:
    text = (
        "No.     Chart  Position                   Correction\n"
        "801/26  140    46 10.10 S  122 00.20 W    Light, F.R                    delete\n"
        "               46 11.10 S  122 00.20 W    Depth 3.7 m                   insert\n"
        "802/26  141    46 11.10 S  122 00.20 W    Special buoy, from here       shift\n"
        "               46 12.10 S  122 00.20 W    to here\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("801/26", "140", "delete", "light", [AT_P]),
        ("801/26", "140", "insert", "sounding", [AT_Q]),
        ("802/26", "141", "move", "buoy_special", [AT_Q, AT_R]),
    ]
    assert not errors(bulletin)


def test_a_chart_below_the_title_of_a_list_heads_its_corrections() -> None:
    bulletin = parse(BY_CHART.replace("CORRECTIONS BY CHART", "LIST OF CORRECTIONS"))
    assert [one[1] for one in told(bulletin)] == ["811", "811", "811", "812"]


def test_a_ditto_mark_below_a_datum() -> None:
    text = (
        " Chart | Datum | Notice | Position               | Feature | Do\n"
        "-------+-------+--------+------------------------+---------+-------\n"
        " T14   | WGS84 | 88/26  | 46 10.10 S 122 00.20 W | Wreck   | Insert\n"
        ' T15   | "     | 88/26  | 46 11.10 S 122 00.20 W | Rock    | Insert\n'
        " T16   |       | 88/26  | 46 12.10 S 122 00.20 W | Pile    | Insert\n"
    )
    (notice,) = parse(text).notices
    assert [one.datum and one.datum.name for one in notice.charts] == ["WGS84", "WGS84", None]


def test_the_notice_before_in_brackets_under_the_notice() -> None:
    text = (
        "Notice   Chart  Verb      Object           Position\n"
        "(Prev.)\n"
        "22/26    14     ADD       Wreck            46 10.10 S 122 00.20 W\n"
        "(18/26)         DELETE    Rock             46 11.10 S 122 00.20 W\n"
        "22/26    15     ADD       Pier, joining    46 10.10 S 122 00.20 W\n"
        " (19/26)                                   46 11.10 S 122 00.20 W\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("22/26", "14", "insert", "wreck", [AT_P]),
        ("22/26", "14", "delete", "rock", [AT_Q]),
        ("22/26", "15", "insert", "pier", [AT_P, AT_Q]),
    ]
    (notice,) = bulletin.notices
    assert [c.previous.number for c in notice.charts if c.previous] == [18, 19]


def test_numbers_of_items_beside_the_notices() -> None:
    text = (
        "NOTICE | CHART | NO | OPERATION | FEATURE | POSITION\n"
        "22/26  | 14    | 1  | Insert    | Wreck   | 46 10.10 S 122 00.20 W\n"
        "       |       | 2  | Delete    | Rock    | 46 11.10 S 122 00.20 W\n"
    )
    bulletin = parse(text)
    assert [(one[0], one[2]) for one in told(bulletin)] == [
        ("22/26", "insert"),
        ("22/26", "delete"),
    ]
    assert [action.label for action in actions_of(bulletin)] == ["1", "2"]
    assert not errors(bulletin)


def test_columns_parted_by_the_rule_below_their_titles() -> None:
    """A single blank parts both titles and cells."""
    text = (
        "Notice Chart Verb   Object        Latitude   Longitude\n"
        "------ ----- ------ ------------- ---------- -----------\n"
        "22/26  14    Insert Wreck         46 10.10 S 122 00.20 W\n"
        "22/26  15    Insert Pier, joining 46 10.10 S 122 00.20 W\n"
        "                                  46 11.10 S 122 00.20 W\n"
        "23/26  16    Delete Rock          46 11.10 S 122 00.20 W\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("22/26", "14", "insert", "wreck", [AT_P]),
        ("22/26", "15", "insert", "pier", [AT_P, AT_Q]),
        ("23/26", "16", "delete", "rock", [AT_Q]),
    ]
    assert not errors(bulletin)


RELATIONS = """\
Notice  Chart  Verb      Object               Position
23/26   16     ADD       Pier                 between 46 10.10 S 122 00.20 W
                                              and 46 11.10 S 122 00.20 W
24/26   17     ADD       Special buoy         close N of 46 12.10 S 122 00.20 W
25/26   17     MOVE      Mooring buoy         from 46 10.10 S 122 00.20 W
                                              to 46 11.10 S 122 00.20 W
"""


def test_words_beside_a_place_in_its_column() -> None:
    """They are never dropped: a place that is only near is not that of the feature."""
    bulletin = parse(RELATIONS)
    pier, buoy, moved = actions_of(bulletin)
    assert pier.geometry.relation == "between"
    assert [p.iso6709 for p in pier.geometry.positions] == [AT_P, AT_Q]
    assert (buoy.geometry.relation, buoy.geometry.direction) == ("close", "N")
    assert isinstance(moved, Move)
    assert [p.iso6709 for p in moved.destination.positions] == [AT_Q]
    assert not errors(bulletin)


def test_several_notices_in_one_cell() -> None:
    text = (
        "Notice | Chart | Verb | Object | Position\n"
        "22/26, 23/26 | 14 | Insert | Wreck | 46 10.10 S 122 00.20 W\n"
    )
    assert errors(parse(text)) == {"notice-unread"}


def test_a_heading_among_the_rows_is_no_row_without_a_verb() -> None:
    bulletin = parse(
        "Notice   Verb     Object   Position\n"
        f"23/26    insert   wreck    {P} {W}\n"
        "24/26    Quill Sound.  Rock and wreck\n"
        f"25/26    delete   rock     {Q} {W}\n"
    )
    assert [row[0] for row in told(bulletin)] == ["23/26", "25/26"]
    assert [notice.heading for notice in bulletin.notices][1] == "Quill Sound. Rock and wreck"
    assert not errors(bulletin)


def test_a_sentence_across_the_columns_is_no_row() -> None:
    said = f"The light in the sound of Quill is not lit, see 24/26, and a wreck {Q} {W} was found"
    bulletin = parse(
        "Chart   Notice    Verb     Object   Position\n"
        f"16      23/26     insert   wreck    {P} {W}\n{said}\n"
    )
    assert [action.usable for action in actions_of(bulletin)] == [True, False]


def test_columns_of_a_move_hold_under_its_verb() -> None:
    rows = f"Object | From | To\nMove\nspecial buoy | {P} {W} | {Q} {W}\n"
    (moved,) = told(parse(f"12/26 Quill Sound\nChart 802\n{rows}"))
    assert moved == ("12/26", "802", "move", "buoy_special", [AT_P, AT_Q])
