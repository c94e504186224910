"""Rows of charts above the items of a notice, lists of lettered positions, tables of corners."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, errors, told, usable_of

TITLED = "12/26 Quill Sound.\nCHART   PREVIOUS\n"
ROWS = "802     9/26\n803     8/26\n"
CHART = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
LETTERS = f"POSITIONS\n  A  {P}\n  B  {Q}\n  C  {R}\n"


def charts(bulletin: Bulletin) -> list[tuple[str | None, int | None, list[str]]]:
    return [
        (chart.chart, chart.previous and chart.previous.number, [a.verb for a in chart.actions])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


class TestRowsOfCharts:
    """`CHART  PREVIOUS`, and below it a row for each chart."""

    def test_every_chart_has_the_items_below(self) -> None:
        text = f"{TITLED}{ROWS}Insert wreck {P}\nDelete rock {Q}\n"
        both = ["insert", "delete"]
        assert charts(parse(text)) == [("802", 9, both), ("803", 8, both)]

    @pytest.mark.parametrize("row", ["804     -\n", "804\n"])
    def test_a_row_may_have_the_number_alone(self, row: str) -> None:
        rows = "802     9/26\n" + row + "803     8/26\n"
        found = charts(parse(f"{TITLED}{rows}Insert wreck {P}\n"))
        assert found == [("802", 9, ["insert"]), ("804", None, ["insert"]), ("803", 8, ["insert"])]

    def test_the_head_of_a_chart_below_the_items_is_no_row(self) -> None:
        text = f"{TITLED}{ROWS}Insert wreck {P}\nChart 805 [7/26]\nDelete rock {Q}\n"
        own = ("805", 7, ["delete"])
        assert charts(parse(text)) == [("802", 9, ["insert"]), ("803", 8, ["insert"]), own]


class TestLettersOfPositions:
    """`A  P` and below it `To insert at A: …`."""

    TOLD = "To insert at A and at B: special light-buoys, Fl.Y.2.5s\nTo delete at C: rock\n"

    @pytest.mark.parametrize("number", ["12/26", "12(T)/26"])
    def test_commands_at_letters_are_items_in_every_notice(self, number: str) -> None:
        bulletin = parse(CHART.replace("12/26", number) + LETTERS + self.TOLD)
        assert told(bulletin) == [
            ("insert", "buoy_special", [AT_P, AT_Q]),
            ("delete", "rock", [AT_R]),
        ]

    def test_a_temporary_notice_without_commands_stays_prose(self) -> None:
        text = CHART.replace("12/26", "12(T)/26") + LETTERS + "Works are under way at A and B.\n"
        assert actions_of(parse(text)) == []

    def test_a_sentence_below_the_commands_is_a_remark(self) -> None:
        said = "The dredger works between the two buoys until 30 April 2026."
        bulletin = parse(CHART + LETTERS + self.TOLD + said + "\n")
        assert told(bulletin)[-1] == ("delete", "rock", [AT_R])
        assert said in [remark.text for remark in bulletin.notices[0].remarks]

    @pytest.mark.parametrize("thing", ['legend "Cable"', "note", "wreck"])
    def test_a_letter_of_no_list_holds_back_what_may_stand_without_a_place(
        self, thing: str
    ) -> None:
        bulletin = parse(f"{CHART}To insert at B: {thing}\nTo insert: rock, {P}\n")
        assert usable_of(bulletin) == [("insert", "rock")]


class TestTablesOfCorners:
    """`bounded by the corners`, a row of titles, and the corners with their numbers."""

    @pytest.mark.parametrize(
        "lead",
        ["bounded by the corners", "within these limits", "the corners being", "with corners:"],
    )
    @pytest.mark.parametrize("titles", ["", "  CORNER  LATITUDE    LONGITUDE\n"])
    def test_the_corners_are_those_of_one_area(self, lead: str, titles: str) -> None:
        corners = f"  1       {P}\n  2       {Q}\n  3       {R}\n"
        text = f"{CHART}Insert marine farm, {lead}\n{titles}{corners}Delete rock {Q}\n"
        bulletin = parse(text)
        assert told(bulletin) == [
            ("insert", "marine_farm", [AT_P, AT_Q, AT_R]),
            ("delete", "rock", [AT_Q]),
        ]
        assert actions_of(bulletin)[0].geometry.shape == "area"
        assert not errors(bulletin)

    def test_letters_hold_on_behind_a_table_of_corners(self) -> None:
        corners = f"  CORNER  LATITUDE    LONGITUDE\n  1  {P}\n  2  {Q}\n  3  {R}\n"
        farm = f"To insert: marine farm, bounded by the corners\n{corners}"
        bulletin = parse(f'{CHART}{LETTERS}{farm}To insert at B: legend "Farm"\n')
        assert told(bulletin)[-1] == ("insert", "legend", [AT_Q])

    def test_numbers_below_one_thing_count_its_places(self) -> None:
        bulletin = parse(f"{CHART}Insert fish traps\n  1  {P}\n  2  {Q}\n")
        assert [one for *_, places in told(bulletin) for one in places] == [AT_P, AT_Q]

    def test_figures_below_depths_are_depths(self) -> None:
        bulletin = parse(f"{CHART}Insert depths\n  1  {P}\n  2  {Q}\n")
        assert [a.geometry.shape for a in actions_of(bulletin)] == ["point", "point"]


def test_corrections_of_books_are_a_part_of_their_own() -> None:
    books = "\nCORRECTIONS TO BOOKS\nLight List, page 31, No. 214: for Fl.W.5s read Fl(2)W.10s.\n"
    bulletin = parse(f"{CHART}Insert wreck {P}\n{books}")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    ("title", "before"),
    [
        ("Last N.T.M.", "64-26"),
        ("Last N.M.", "64/26"),
        ("Last NTM", "64-26"),
        ("Prev. N.M.", "64-26"),
        ("Previous", "64(T)-26"),
        ("Latest notice", "64/26"),
        ("Last notice", "164-26"),
        ("Preceding N.T.M.", "64-26"),
        ("Prec. NM", "64/26"),
        ("Former corr.", "64/26"),
        ("Last n. to m.", "64/26"),
    ],
)
def test_rows_of_charts_among_the_items(title: str, before: str) -> None:
    head = f"   Chart     International     {title}\n"
    text = (
        f"N.T.M. 171-26    QUILL SOUND\n\n{head}   802       -                 {before}\n"
        f"   Insert:\n      wreck   {P}\n\n"
        f"{head}   803       INT 9533          {before}\n   Delete:\n      rock   {Q}\n"
    )
    bulletin = parse(text)
    number = 164 if before.startswith("164") else 64
    assert charts(bulletin) == [("802", number, ["insert"]), ("803", number, ["delete"])]
    (notice,) = bulletin.notices
    assert [one.international for one in notice.charts] == [None, "INT 9533"]
    assert {one.previous and one.previous.year for one in notice.charts} == {2026}
    assert errors(bulletin) == set()


def test_a_notice_before_that_cannot_be_read_in_its_column_is_told() -> None:
    text = f"{TITLED}802     6S-26\nInsert wreck {P}\n"
    bulletin = parse(text)
    assert charts(bulletin) == [("802", None, ["insert"])]
    assert "previous-unread" in {one.code for one in bulletin.findings}
