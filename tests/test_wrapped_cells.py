"""Cells of a table whose words run on below their row, in their own column and nowhere else."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse import parse
from noticeparse.records.action import Action, Replace
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import actions_of, errors, told, usable_of

TITLES = "NOTICE  CHART  ACTION   OBJECT                      LATITUDE    LONGITUDE\n"
RULE = "------- ------ -------- --------------------------- ----------- ------------\n"
P, Q, R, S = (f"46 3{one}.42 S  126 08.15 W" for one in range(4))
HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"


def rows(*cells: tuple[str, str, str]) -> str:
    """Rows of one notice and chart: verb, object, place."""
    told = [f"{'':15}{verb:9}{thing:28}{place}".rstrip() for verb, thing, place in cells]
    return "2087/26 3310   " + told[0].lstrip() + "\n" + "".join(f"{one}\n" for one in told[1:])


def only(bulletin: Bulletin) -> Action:
    (action,) = actions_of(bulletin)
    return action


@pytest.mark.parametrize("titles", [TITLES, TITLES + RULE])
class TestWords:
    """Words below a row in the column of a cell are more of this cell."""

    def test_of_a_bracket_and_a_depth(self, titles: str) -> None:
        wrapped = rows(
            ("INSERT", "Obstruction (lost anchor", P),
            ("", "and chain), least depth", ""),
            ("", "11.7 m", ""),
        )
        action = only(parse(titles + wrapped))
        assert action.feature.depth is not None
        assert action.feature.depth.value_m == Decimal("11.7")
        assert action.usable

    def test_of_a_light(self, titles: str) -> None:
        wrapped = rows(("INSERT", "Port-hand light beacon Fl", P), ("", "R 3s", ""))
        action = only(parse(titles + wrapped))
        assert action.feature.light is not None
        assert action.feature.light.written == "Fl R 3s"

    def test_of_what_comes_instead(self, titles: str) -> None:
        wrapped = rows(
            ("REPLACE", "Special light buoy Fl Y 5s", P),
            ("", "by west cardinal light", ""),
            ("", "buoy VQ(9) 10s", ""),
        )
        action = only(parse(titles + wrapped))
        assert isinstance(action, Replace)
        assert action.usable
        assert action.replacement.kind == "buoy_cardinal_west"
        assert action.replacement.light is not None
        assert action.replacement.light.written == "VQ(9) 10s"

    @pytest.mark.parametrize(
        "cells",
        [
            [("INSERT", "Fish haven, area bounded", P), ("", "by", ""), ("", "", Q), ("", "", R)],
            [("INSERT", "Fish haven, area bounded", P), ("", "by", Q), ("", "", R)],
            [("INSERT", "Fish haven, area", P), ("", "bounded by", Q), ("", "", R)],
            [("INSERT", "Fish haven, area", ""), ("", "bounded by", P), ("", "", Q), ("", "", R)],
        ],
    )
    def test_above_and_beside_more_places(
        self, titles: str, cells: list[tuple[str, str, str]]
    ) -> None:
        action = only(parse(titles + rows(*cells)))
        assert action.geometry.shape == "area"
        assert len(action.geometry.positions) == 3

    def test_at_the_head_of_the_next_page(self, titles: str) -> None:
        above = rows(("INSERT", "Obstruction (lost", P))
        below = rows(("", "", ""), ("", "anchor and chain)", ""), ("", "least depth 11.7 m", ""))
        below = below.partition("\n")[2]
        action = only(parse(f"{titles}{above}\n\nPAGE 2\n{titles}{below}"))
        assert action.usable
        assert action.feature.depth is not None


@pytest.mark.parametrize(
    "cells",
    [
        [("INSERT", "Wreck", P), ("", "rock", "")],
        [("INSERT", "Wreck", P), ("", "Rock awash", "")],
        [("INSERT", "Wreck", P), ("", "cancelled", "")],
        [("INSERT", "Dan-", P), ("", "gerous wreck", "")],
        [("INSERT", "Beacon, the old mark now", P), ("", "removed", "")],
        [("INSERT", "Wreck (reported in notice", P), ("", "12/26), depth 5 m", "")],
        [("INSERT", "Wreck", P), ("", "least depth 5 m as found by the last survey", "")],
        [("INSERT", "Submarine cable, joining", P), ("", "", Q), ("", "disused", "")],
        [("INSERT", "Submarine cable, joining", P), ("", "", Q), ("", "Pipeline, joining", "")],
    ],
)
def test_a_row_whose_words_may_go_on_is_held_back(cells: list[tuple[str, str, str]]) -> None:
    bulletin = parse(TITLES + rows(*cells))
    assert "cell-rest-doubtful" in errors(bulletin)
    assert usable_of(bulletin) == []


def test_a_note_in_the_column_is_none_of_the_row() -> None:
    wrapped = rows(("INSERT", "Submarine cable, joining", P), ("", "", Q), ("", "Note: new.", ""))
    assert usable_of(parse(TITLES + wrapped)) == [("insert", "cable_submarine")]


def test_the_new_place_of_a_move_is_no_more_of_the_old() -> None:
    wrapped = rows(("MOVE", "Special buoy, from", P), ("", "to new position", Q))
    action = only(parse(TITLES + wrapped))
    assert action.verb == "move"
    assert action.usable


FEATURE_FIRST = "OBJECT                   LATITUDE    LONGITUDE    ACTION\n"


@pytest.mark.parametrize(
    ("first", "more", "kind"),
    [
        ("Obstruction (lost anchor", "and chain), least depth\n11.7 m\n", "obstruction"),
        ("Port-hand light beacon", "Fl R 3s\n", "beacon_lateral_port"),
        ("Wreck", "masts showing\n", "wreck_masts"),
    ],
)
def test_words_in_the_first_column(first: str, more: str, kind: str) -> None:
    table = f"{FEATURE_FIRST}{first:25}{P}   INSERT\n{more}{'Rock':25}{Q}   DELETE\n"
    bulletin = parse(HEAD + table + "Surveyed 2025.\n")
    assert usable_of(bulletin) == [("insert", kind), ("delete", "rock")]
    assert [one.text for one in bulletin.notices[0].remarks] == ["Surveyed 2025."]


def test_a_sentence_with_a_depth_below_the_first_column_holds_its_row_back() -> None:
    table = f"{FEATURE_FIRST}{'Rock':25}{Q}   DELETE\nCharted depth 5 m.\n"
    assert "cell-rest-doubtful" in errors(parse(HEAD + table))


def test_words_between_bars() -> None:
    table = (
        "| Verb | Object | Position |\n|---|---|---|\n"
        "| Insert | Obstruction (lost anchor | 46-31.42S 126-08.15W |\n"
        "|  | and chain), least depth |  |\n|  | 11.7 m |  |\n"
        "|  | Rock | 46-32.42S 126-08.15W |\n"
    )
    obstruction, rock = actions_of(parse(HEAD + table))
    assert obstruction.feature.depth is not None
    assert (obstruction.usable, rock.usable, rock.feature.kind) == (True, True, "rock")


def test_a_remark_on_several_lines_takes_its_row_back() -> None:
    table = (
        "ACTION   OBJECT           LATITUDE    LONGITUDE   REMARKS\n"
        f"INSERT   Wreck            {P}  seen by the\n"
        f"{'':50}pilot; row to\n{'':50}be ignored\n"
        f"DELETE   Rock             {Q}\n"
    )
    bulletin = parse(HEAD + table)
    assert usable_of(bulletin) == [("delete", "rock")]
    assert [one.text for one in bulletin.notices[0].remarks] == [
        "seen by the pilot; row to be ignored"
    ]


def test_wrapped_words_beside_the_foot_of_a_page_are_no_foot() -> None:
    one = rows(
        ("INSERT", "Obstruction (lost anchor", P),
        ("", "and chain), least depth", ""),
        ("", "11", ""),
    )
    other = one.replace("2087/26", "2088/26")
    bulletin = parse(f"{TITLES}{one}{RULE}PAGE 1\n{TITLES}{other}{RULE}")
    depths = [action.feature.depth for action in actions_of(bulletin)]
    assert [depth and depth.value_m for depth in depths] == [11, 11]


@pytest.mark.parametrize(
    "foot",
    [
        "END OF EXPORT    4 CHARTS QUERIED    3 WITH ENTRIES",
        "*** END OF REPORT ***",
        "2 rows   1 notice   1 chart",
        "COUNT   14",
        "Nothing follows",
        "Printed 2026-05-01 by desk 3",
    ],
)
@pytest.mark.parametrize("rule", ["", RULE])
def test_the_foot_of_an_export(foot: str, rule: str) -> None:
    bulletin = parse(f"{TITLES}{rule}{rows(('INSERT', 'Wreck', P))}{rule}{foot}\n")
    assert [one.id for one in bulletin.notices] == ["2087/26"]
    assert usable_of(bulletin) == [("insert", "wreck")]
    assert bulletin.notices[0].remarks == []
    assert errors(bulletin) == set()


@pytest.mark.parametrize("title", ["PARTICULARS", "Wotsit", "Nature"])
def test_features_in_a_column_of_a_title_of_its_own(title: str) -> None:
    titles = f"LATITUDE    LONGITUDE    CHANGE   {title}\n"
    table = f"{titles}{P}   add      depth 3\n{Q}   omit     wreck\n"
    assert usable_of(parse(HEAD + table)) == [("insert", "sounding"), ("delete", "wreck")]


@pytest.mark.parametrize("verb", ["Replace", "Amend"])
def test_a_row_without_words_is_told_where_it_stands(verb: str) -> None:
    bulletin = parse(f"{HEAD}Verb     Object   Position\n{verb}           46-31.42S 126-08.15W\n")
    assert [
        one.span.line for one in bulletin.findings if one.severity == "error" and one.span
    ] == [4]


def test_a_joint_within_brackets_parts_no_depth_from_its_feature() -> None:
    words = "Obstruction (lost anchor and chain) least depth 11.7 m"
    action = only(parse(f"{HEAD}Insert {words} 46-31.42S 126-08.15W\n"))
    assert action.feature.depth is not None
    assert action.feature.depth.value_m == Decimal("11.7")


CELLS_OF_CHARTS = """\
No.      Chart             Amendment                                Position

21/26    Quill Sound. Buoys, rock and wreck.
         802               Insert port-hand light-buoy,             46-00.00S
         INT 9802          Fl.R.3s, No 6                            122-00.00W
         (last 17/26)      Insert rock awash                        46-00.50S
                                                                    122-00.00W
22/26    Port Ellory. Wreck.
         803               Delete wreck                             46-00.10S
         (last 12/26)                                               122-00.20W
"""


def test_cell_of_a_chart_goes_on_beside_other_cells() -> None:
    bulletin = parse(CELLS_OF_CHARTS)
    read = [
        (notice.id, notice.heading, chart.chart, chart.international, chart.previous_written)
        for notice in bulletin.notices
        for chart in notice.charts
    ]
    assert read == [
        ("21/26", "Quill Sound. Buoys, rock and wreck", "802", "INT 9802", "last 17/26"),
        ("22/26", "Port Ellory. Wreck", "803", None, "last 12/26"),
    ]
    assert told(bulletin) == [
        ("insert", "light_buoy_port", ["-4600.00-12200.00/"]),
        ("insert", "rock_awash", ["-4600.50-12200.00/"]),
        ("delete", "wreck", ["-4600.10-12200.20/"]),
    ]
    assert not errors(bulletin)
