"""What copying, exporting and narrow columns did to a bulletin."""

from __future__ import annotations

import pytest

from noticeparse import parse, parse_position
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told

SHEET = f"""\
NOTICE   CHART   LAST     CORRECTION                      POSITION
12/26    802     3/26     INSERT
         INT 9802
                          Special light-buoy, marking     {P}
                          the end of the outfall
                          Submarine cable, disused and    {P}
                          buried, joining                 {Q}
                          DELETE
                          Light, F.R, on the head of      {P}
                          the old pier
         803     4/26     INSERT
                          Wreck                           {Q}
NOTICE   CHART   LAST     CORRECTION                      POSITION
13/26    802     12/26    DELETE
                          Rock                            {P}
"""


class TestTextBesidePlaces:
    """Tables with the text of a notice in one column and the places in the next."""

    def test_words_that_run_on_belong_to_the_place_above(self) -> None:
        first, second = parse(SHEET).notices
        texts = [action.feature.text for action in first.charts[0].actions]
        assert texts == [
            "Special light-buoy, marking the end of the outfall",
            "Submarine cable, disused and buried",
            "Light, F.R, on the head of the old pier",
        ]
        assert [len(a.geometry.positions) for a in first.charts[0].actions] == [1, 2, 1]
        assert [one.chart for one in first.charts] == ["802", "803"]
        assert first.charts[0].international == "INT 9802"
        assert [one.chart for one in second.charts] == ["802"]

    def test_a_command_at_the_end_of_a_line_holds_below(self) -> None:
        first, second = f"Insert wreck {P}; delete", f"rock {Q}"
        text = f"NOTICE  CHART  CORRECTION\n12/26   802    {first}\n{' ' * 15}{second}\n"
        assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_longitude_takes_the_words_beside_it_along() -> None:
    text = (
        "INSERT\n - special light-buoy, marking the outer         46-00.00S\n"
        "   end of the outfall                            122-00.00W\n"
        " - wreck                                         46-00.50S\n"
        "                                                 122-00.00W\n"
    )
    assert [where for _, _, where in told(parse(HEAD + text))] == [[AT_P], [AT_Q]]


FOOT = "                  - 34 -\nTavrenne Bureau     Weekly List 18/2026\n"


def test_a_word_cut_by_the_foot_of_a_page_is_made_whole() -> None:
    pages = f"{HEAD}Insert wreck {Q}\n{FOOT}Delete recom-\n{FOOT}mended track {P}\n{FOOT}"
    assert actions_of(parse(pages))[-1].feature.text == "recommended track"


@pytest.mark.parametrize("sign", ["*", "o"])
def test_bearings_of_sectors_may_have_lost_their_signs(sign: str) -> None:
    text = f"Insert light, Oc(2)WG.12s, sectors W 215{sign}-248{sign}, G 248{sign}-260{sign} {P}"
    (action,) = actions_of(parse(HEAD + text))
    assert [(str(one.from_deg), str(one.to_deg)) for one in action.feature.light.sectors] == [
        ("215", "248"), ("248", "260"),
    ]  # fmt: skip


def test_quotes_that_stand_twice_in_a_cell_are_its_own() -> None:
    rows = "".join(
        f"12/26;802;3/26;insert;{what};{P}\n"
        for what in ('"legend ""No Diving"""', "wreck", "rock")
    )
    text = f"notice;chart;previous;command;object;position\n{rows}"
    assert actions_of(parse(text))[0].feature.legend == "No Diving"


@pytest.mark.parametrize("foot", ["Total\t\t\t3 actions", "Total;;;3", "Rows | 3"])
def test_the_sum_of_an_export_is_its_foot(foot: str) -> None:
    rows = f"12/26\t802\tInsert\twreck\t{P}\n13/26\t802\tDelete\trock\t{Q}\n"
    bulletin = parse(f"Notice\tChart\tAction\tObject\tPosition\n{rows}{foot}\n")
    assert len(told(bulletin)) == 2
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "written",
    ["4600.00S/12200.00W", "46 00.00S/122 00.00W", "4600.00S,12200.00W", "46°00.00'S,122°00.00'W"],
)
def test_halves_are_parted_by_a_sign_alone(written: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {written}; delete rock {Q}")
    assert told(bulletin)[0] == ("insert", "wreck", [AT_P])
    assert not codes(bulletin)
    assert parse_position(written).iso6709 == AT_P


@pytest.mark.parametrize("number", ["No 5", "No. 5", "No 12", "NO 7"])
def test_the_number_of_a_mark_is_no_part_of_the_position_behind_it(number: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert special buoy {number} 46 00.00 S 122 00.00 W"))
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P]
    assert action.feature.name == number


@pytest.mark.parametrize("figure", ["depth 5", "depth 5.2", "berth 5"])
def test_figures_before_degrees_without_signs_are_not_shared_out(figure: str) -> None:
    bulletin = parse(f"{HEAD}Insert {figure} 46 00.00 S 122 00.00 W")
    assert errors(bulletin)
    assert not told(bulletin)


def test_charts_that_marks_in_columns_tell_are_not_guessed() -> None:
    text = f"Action | Object | Position | Chart 802 | Chart 803\nInsert | wreck | {P} | X | -\n"
    assert "chart-marks-unread" in errors(parse(text))


def test_a_note_below_a_value_is_no_part_of_it() -> None:
    text = (
        f"notice: 12/26\nchart: 802\n\ndo: delete\nwhat: wreck\nat: {P}\n"
        f"note: see former notice 3/26\n\ndo: insert\nwhat: rock\nat: {Q}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [("delete", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]
    assert not codes(bulletin)


def test_keys_are_parted_from_their_values_by_blanks_alone() -> None:
    cards = "".join(
        f"=========\nCARD    {number}/26\nPLACE   QUILL SOUND\nCHART   802\n"
        f"UP TO   {number - 1}/26\n"
        f"----\nTASK    INSERT\nOBJECT  wreck\nPOSN    {P}\n"
        f"----\nTASK    AMEND\nOBJECT  light Fl.W.10s19m\nTO      elevation 21m\nPOSN    {Q}\n"
        for number in (41, 42)
    )
    first, second = parse(cards).notices
    assert [(one.id, one.charts[0].previous.number) for one in (first, second)] == [
        ("41/26", 40), ("42/26", 41),
    ]  # fmt: skip
    wreck, light = first.charts[0].actions
    assert (wreck.verb, wreck.feature.kind, wreck.usable) == ("insert", "wreck", True)
    assert [(one.property, str(one.new)) for one in light.changes] == [("light.elevation_m", "21")]


def test_words_in_one_column_without_rules_are_no_keys() -> None:
    text = f"{HEAD}Insert  wreck {P}\nDelete  rock {Q}\n"
    assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
