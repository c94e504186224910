"""Tables whose rows have two lines: feature above and place below, or the other way round."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Replace
from tests.short_notices import errors
from tests.table_notices import AT_P, AT_Q, AT_R, told

TWO_LINES = """\
PRINTED TABLE, 20 JUNE 2026

Notice    Chart   Action        Latitude      Longitude
          Object
--------------------------------------------------------
88/26     T14     PLACE         46 10.10 S    122 00.20 W
          Wreck
88/26     T14     REMOVE        46 11.10 S    122 00.20 W
          Foul ground
--------------------------------------------------------
89/26     T15     PLACE         46 10.10 S    122 00.20 W
          Breakwater, joining
                                46 11.10 S    122 00.20 W
                                46 12.10 S    122 00.20 W
89/26     T15     REMOVE        46 11.10 S    122 00.20 W
          Foul ground
--------------------------------------------------------
Correct earlier sheets first. Sheet 14 ended with Notice 87/26.
"""
IN_TWO_LINES = [
    ("88/26", "T14", "insert", "wreck", [AT_P]),
    ("88/26", "T14", "delete", "foul_ground", [AT_Q]),
    ("89/26", "T15", "insert", "breakwater", [AT_P, AT_Q, AT_R]),
    ("89/26", "T15", "delete", "foul_ground", [AT_Q]),
]


@pytest.mark.parametrize(
    "text",
    [
        pytest.param(TWO_LINES, id="both have titles"),
        pytest.param(TWO_LINES.replace("          Object\n", ""), id="the first has titles"),
    ],
)
def test_rows_of_two_lines(text: str) -> None:
    """A feature named again beside a rule is no page furniture."""
    bulletin = parse(text)
    assert told(bulletin) == IN_TWO_LINES
    assert not errors(bulletin)
    assert [notice.id for notice in bulletin.notices] == ["88/26", "89/26"]


def test_a_second_line_with_verb_and_place() -> None:
    text = (
        "Notice    Chart   Object\n"
        "          Action          Latitude      Longitude\n"
        "88/26     T14     Wreck\n"
        "          PLACE           46 10.10 S    122 00.20 W\n"
        "88/26     T14     Rock\n"
        "          REMOVE          46 11.10 S    122 00.20 W\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("88/26", "T14", "insert", "wreck", [AT_P]),
        ("88/26", "T14", "delete", "rock", [AT_Q]),
    ]
    assert not errors(bulletin)


def test_a_second_line_under_a_row_whose_notice_is_not_said_again() -> None:
    text = (
        "Notice    Chart   Object\n"
        "          Action        Position\n"
        "88/26     T14     Wreck\n"
        "          PLACE         46 10.10 S 122 00.20 W\n"
        "                  Rock\n"
        "          REMOVE        46 11.10 S 122 00.20 W\n"
        "89/26     T15     Special buoy\n"
        "          MOVE          from 46 11.10 S 122 00.20 W\n"
        "                        to   46 12.10 S 122 00.20 W\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("88/26", "T14", "insert", "wreck", [AT_P]),
        ("88/26", "T14", "delete", "rock", [AT_Q]),
        ("89/26", "T15", "move", "buoy_special", [AT_Q, AT_R]),
    ]
    assert not errors(bulletin)


def test_a_name_too_long_for_its_column_stands_above_its_places() -> None:
    text = (
        "88/26 Quill Sound\nChart 802 [30/26] WGS84\n\n"
        "FEATURE                OLD POSITION               NEW POSITION\n"
        "north cardinal light-buoy, Q\n"
        "                       46-10.10S 122-00.20W       46-11.10S 122-00.20W\n"
        "mooring buoy           46-11.10S 122-00.20W       46-12.10S 122-00.20W\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("88/26", "802", "move", "buoy_cardinal_north", [AT_P, AT_Q]),
        ("88/26", "802", "move", "buoy_mooring", [AT_Q, AT_R]),
    ]
    assert not errors(bulletin)


def test_what_comes_stands_below_what_goes() -> None:
    text = (
        "88/26 Quill Sound                     Chart 802 (corrected to 30/26)\n\n"
        "Item  Lat. South  Long. West   Object                    Action\n"
        " 1    46 10.10    122 00.20    North cardinal beacon     Replace by\n"
        "                               north cardinal light-beacon, VQ 9m 6M\n"
        " 2    46 11.10    122 00.20    Crane                     Insert\n"
    )
    bulletin = parse(text)
    replaced, inserted = bulletin.notices[0].charts[0].actions
    assert isinstance(replaced, Replace)
    assert replaced.feature.text == "North cardinal beacon"
    assert replaced.replacement.text == "north cardinal light-beacon, VQ 9m 6M"
    assert (inserted.verb, inserted.feature.kind) == ("insert", "crane")
    assert not errors(bulletin)


def test_a_long_name_that_may_go_on_holds_the_row_below() -> None:
    text = (
        "88/26 Quill Sound\nChart 802 [30/26] WGS84\n\n"
        "FEATURE                OLD POSITION               NEW POSITION\n"
        "north cardinal light-buoy Q\n"
        "   Karra Bank          46-10.10S 122-00.20W       46-11.10S 122-00.20W\n"
    )
    bulletin = parse(text)
    assert "cell-rest-doubtful" in errors(bulletin)
    assert not any(a.usable for c in bulletin.notices[0].charts for a in c.actions)


def test_words_that_lead_on_are_not_replaced_by_those_below() -> None:
    text = (
        "88/26 Quill Sound                     Chart 802 (corrected to 30/26)\n\n"
        "Item  Lat. South  Long. West   Object                    Action\n"
        " 1    46 10.10    122 00.20    Light-buoy near the       Replace by\n"
        "                               wreck\n"
    )
    assert "verb-unknown" in errors(parse(text))
