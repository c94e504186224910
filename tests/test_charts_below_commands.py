"""Commands written once, with a row below for each chart that has its own place."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors

NUMBER = "41/26 Quill Sound - Wreck, rock\n"
JOINT = NUMBER + "Charts 802 [30/26], 803 [31/26]\n"
Told = dict[str | None, list[tuple[str, str, list[str]]]]


def by_chart(bulletin: Bulletin) -> Told:
    """Verb, kind and places of what may be used on each chart."""
    return {
        chart.chart: [
            (a.verb, a.feature.kind, [one.iso6709 for one in a.geometry.positions])
            for a in chart.actions
            if a.usable
        ]
        for notice in bulletin.notices
        for chart in notice.charts
    }


ROWS = {
    "a gap": ("   chart {}    {}\n", "1. Insert wreck\n"),
    "a colon": ("   Chart {}: {}\n", "1. Insert wreck:\n"),
    "in words": ("   on chart {} in {}\n", "1. Insert wreck\n"),
    "in brackets": ("   (chart {}) {}\n", "1. Insert wreck\n"),
    "a bullet": ("   - Chart {}: {}\n", "1. Insert wreck in the following positions:\n"),
    "a number": ("   Chart No. {}  {}\n", "1. Insert wreck at\n"),
    "international": ("   Chart {0} (INT 9{0})  {1}\n", "1. Insert wreck\n"),
    "no word": ("   {}   {}\n", "1. Insert wreck\n"),
    "no word, a colon": ("   {}: {}\n", "1. Insert wreck\n"),
    "a carried verb": ("     Chart {}   {}\n", "Insert\n   wreck\n"),
    "no label": ("  Chart {}   {}\n", "Insert wreck\n"),
}


@pytest.mark.parametrize(("row", "command"), ROWS.values(), ids=list(ROWS))
def test_each_chart_has_the_command_at_its_own_place(row: str, command: str) -> None:
    rows = row.format("802", P) + row.format("803", Q)
    bulletin = parse(f"{JOINT}{command}{rows}2. Delete rock\n{row.format('803', R)}")
    assert by_chart(bulletin) == {
        "802": [("insert", "wreck", [AT_P])],
        "803": [("insert", "wreck", [AT_Q]), ("delete", "rock", [AT_R])],
    }
    assert not codes(bulletin)


def test_a_row_may_be_for_several_charts_and_go_on() -> None:
    bulletin = parse(
        f"{JOINT}Insert submarine cable, from the head\n   of the pier, joining\n"
        f"   Charts 802 and 803   {P},\n                        {Q}\n   and {R}\n"
    )
    cable = ("insert", "cable_submarine", [AT_P, AT_Q, AT_R])
    assert by_chart(bulletin) == {"802": [cable], "803": [cable]}
    assert {a.geometry.shape for a in actions_of(bulletin)} == {"line"}


def test_both_ends_of_a_move_stand_in_the_row() -> None:
    rows = f"   Chart 802   from {P} to {Q}\n   Chart 803   from {Q}\n               to {R}\n"
    bulletin = parse(f"{JOINT}1. Move mooring buoy\n{rows}")
    ends = [
        (a.geometry.positions[0].iso6709, a.destination.positions[0].iso6709)
        for a in actions_of(bulletin)
        if a.verb == "move" and a.usable
    ]
    assert ends == [(AT_P, AT_Q), (AT_Q, AT_R)]


def test_the_letter_of_a_row_is_that_of_its_place_alone() -> None:
    rows = f"   (a) Chart 802: {P}\n   (b) on chart 803 at {Q}\n"
    bulletin = parse(f"{JOINT}1. Insert wreck:\n{rows}2. Insert rock close N of (a) above\n")
    found = by_chart(bulletin)
    assert [kind for _, kind, _ in found["802"]] == ["wreck", "rock"]
    assert [kind for _, kind, _ in found["803"]] == ["wreck"]
    assert errors(bulletin) == {"letter-unknown"}


@pytest.mark.parametrize("none", ["-", "--", "nil"])
def test_a_chart_with_a_dash_has_the_command_not(none: str) -> None:
    bulletin = parse(f"{JOINT}1. Insert wreck\n   Chart 802: {none}\n   Chart 803: {Q}\n")
    assert by_chart(bulletin) == {"802": [], "803": [("insert", "wreck", [AT_Q])]}
    assert codes(bulletin) == {"chart-without-actions"}


@pytest.mark.parametrize("foot", ["", "Charts affected: 802 [30/26], 803 [31/26]\n"])
def test_the_rows_may_name_the_charts_first(foot: str) -> None:
    before = ("", "") if foot else (" [30/26]", " [31/26]")
    rows = f"   Chart 802{before[0]}: {P}\n   Chart 803{before[1]}: {Q}\n"
    bulletin = parse(f"{NUMBER}1. Insert wreck\n{rows}{foot}")
    assert by_chart(bulletin) == {
        "802": [("insert", "wreck", [AT_P])],
        "803": [("insert", "wreck", [AT_Q])],
    }
    previous = [chart.previous for chart in bulletin.notices[0].charts]
    assert [one and one.number for one in previous] == [30, 31]
    assert not codes(bulletin)


RULED = "   |-------|----------------------|\n"
TITLED = {
    "titles": "   Chart    Position\n   802      {P}\n   803      {Q}\n",
    "titles of halves": "   Chart   Latitude    Longitude\n   802     {P}\n   803     {Q}\n",
    "bars": "   | 802 | {P} |\n   | 803 | {Q} |\n",
    "titles and bars": f"   | Chart | Position |\n{RULED}   | 802 | {{P}} |\n   | 803 | {{Q}} |\n",
    "blank lines": "\n   Chart 802: {P}\n\n   Chart 803: {Q}\n\n",
}


@pytest.mark.parametrize("rows", TITLED.values(), ids=list(TITLED))
def test_the_rows_may_stand_below_titles_and_apart(rows: str) -> None:
    bulletin = parse(f"{JOINT}1. Insert wreck\n{rows.format(P=P, Q=Q)}2. Delete rock {R}\n")
    rock = ("delete", "rock", [AT_R])
    assert by_chart(bulletin) == {
        "802": [("insert", "wreck", [AT_P]), rock],
        "803": [("insert", "wreck", [AT_Q]), rock],
    }
    assert not codes(bulletin)


def test_the_quality_of_a_row_is_that_of_its_place_alone() -> None:
    bulletin = parse(f"{JOINT}1. Insert wreck\n   Chart 802: {P}.\n   Chart 803: {Q} (PA).\n")
    assert [a.geometry.positions[0].quality for a in actions_of(bulletin)] == [None, "approximate"]


class TestWhereItDoesNotReach:
    """What may be of another chart, or no chart, is held back or read as before."""

    def test_a_command_with_a_place_may_be_of_any_chart(self) -> None:
        bulletin = parse(f"{JOINT}1. Insert wreck {P}\n   Chart 803: {Q}\n2. Delete rock {R}\n")
        rock = [("delete", "rock", [AT_R])]
        assert by_chart(bulletin) == {"802": rock, "803": rock}
        assert "item-of-one-chart" in errors(bulletin)

    @pytest.mark.parametrize("command", ["Insert depths", "1. Insert depth", "Insert soundings:"])
    def test_a_figure_that_may_be_a_depth_is_no_chart(self, command: str) -> None:
        bulletin = parse(f"{JOINT}{command}\n   802   {P}\n   803   {Q}\n")
        assert by_chart(bulletin) == {"802": [], "803": []}
        assert "item-of-one-chart" in errors(bulletin)

    def test_a_depth_that_is_told_is_none_of_the_figures(self) -> None:
        command = "Replace depth 14.6 m by depth 13.9 m"
        bulletin = parse(f"{JOINT}{command}\n   802   {P}\n   803   {Q}\n")
        assert by_chart(bulletin) == {
            "802": [("replace", "sounding", [AT_P])],
            "803": [("replace", "sounding", [AT_Q])],
        }

    def test_a_chart_that_the_head_does_not_name_has_no_command(self) -> None:
        bulletin = parse(f"{JOINT}1. Insert wreck\n   Chart 802: {P}\n   Chart 805: {Q}\n")
        assert by_chart(bulletin)["805"] == []
        assert "item-without-verb" in errors(bulletin)

    def test_a_command_has_no_rows_without_end(self) -> None:
        rows = f"   Chart 802: {P}\n" * 60
        bulletin = parse(f"{JOINT}1. Insert wreck\n{rows}")
        assert len(by_chart(bulletin)["802"]) == 40
        assert "item-without-feature" in errors(bulletin)

    def test_words_of_many_lines_are_no_command(self) -> None:
        words = "   wreck of a barge\n" * 20
        bulletin = parse(f"{JOINT}1. Insert\n{words}   Chart 802: {P}\n")
        assert by_chart(bulletin) == {"802": [], "803": []}

    def test_titles_of_charts_above_all_commands_are_those_of_the_head(self) -> None:
        head = "Chart    Previous\n802      30/26\n803      31/26\n"
        bulletin = parse(f"{NUMBER}{head}Insert wreck {P}\n")
        wreck = [("insert", "wreck", [AT_P])]
        assert by_chart(bulletin) == {"802": wreck, "803": wreck}

    def test_words_of_one_chart_are_not_those_of_the_other(self) -> None:
        rows = f"   Chart 802: {P}\n   Chart 803: depth 4 m, {Q}\n"
        bulletin = parse(f"{JOINT}1. Insert wreck\n{rows}")
        assert by_chart(bulletin)["803"] == []
        assert errors(bulletin)

    def test_places_in_front_of_their_things_stay_with_them(self) -> None:
        rows = f"Chart 802  {P}\n  Insert wreck\nChart 803  {Q}\n  Delete rock\n"
        assert by_chart(parse(f"{JOINT}{rows}")) == {
            "802": [("insert", "wreck", [AT_P])],
            "803": [("delete", "rock", [AT_Q])],
        }

    def test_a_line_of_one_place_is_no_line(self) -> None:
        rows = f"   Chart 802: {P}\n   Chart 802: {Q}\n"
        bulletin = parse(f"{JOINT}Insert submarine pipeline, joining\n{rows}")
        assert "geometry-too-few-positions" in errors(bulletin)
        assert not any(a.usable for a in actions_of(bulletin))

    def test_items_of_one_chart_only_name_others_that_nobody_reads(self) -> None:
        bulletin = parse(f"{NUMBER}Chart 803 only: insert wreck {P}\n")
        assert not any(a.usable for a in actions_of(bulletin))
