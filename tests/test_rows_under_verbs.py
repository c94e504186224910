"""Verbs over the rows of tables, rows that are counted, and what limits a row."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told

RULED = f"""\
12/26 Quill Sound.
Chart 802 [3/26] WGS84, depths in metres
+------+------------------------+-----------------------+
| No   | FEATURE                | POSITION              |
+------+------------------------+-----------------------+
|                        INSERT                         |
+------+------------------------+-----------------------+
| 1    | wreck                  | {P} |
+------+------------------------+-----------------------+
|                        DELETE                         |
+------+------------------------+-----------------------+
| 2    | rock                   | {Q} |
+------+------------------------+-----------------------+
"""
TWO_ROWS = [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_verb_across_the_cells_of_a_ruled_table_holds_for_the_rows_below() -> None:
    assert told(parse(RULED)) == TWO_ROWS


def test_numbers_that_count_the_rows_are_their_labels() -> None:
    bulletin = parse(RULED)
    assert [action.label for action in actions_of(bulletin)] == ["1", "2"]
    assert not [one for one in bulletin.findings if one.code == "text-left-over"]


def test_a_number_that_does_not_count_on_is_no_label() -> None:
    bulletin = parse(RULED.replace("| 2    |", "| 7    |"))
    assert [action.label for action in actions_of(bulletin)] == ["1", None]


def test_verbs_centred_over_a_column_without_rules_hold_for_the_rows_below() -> None:
    text = (
        f"Chart   Feature            Position\n        INSERT\n802     Wreck              {P}\n"
        f"        DELETE\n802     Rock               {Q}\n"
    )
    assert told(parse(text)) == TWO_ROWS


@pytest.mark.parametrize("band", ["NO CHANGE", "RETAIN", "DELETE (by 1 July)"])
def test_what_stands_in_the_place_of_a_verb_ends_the_verb_above(band: str) -> None:
    text = RULED.replace("   DELETE   ", band.center(12))
    bulletin = parse(text)
    assert told(bulletin) == TWO_ROWS[:1]
    assert "item-without-verb" in errors(bulletin)


def test_no_verb_is_carried_from_one_part_of_an_edition_into_the_next() -> None:
    text = (
        "PART 1. OBJECTS LAID AND LIFTED\n\n"
        "NOTICE    CHART  ACTION   OBJECT     POSITION\n"
        f"12/26     802    Delete   wreck      {P}\n\n"
        "PART 2. REPLACE OLD BY NEW, POSITION UNCHANGED\n\n"
        "NOTICE    CHART  POSITION                  OLD            NEW\n"
        f"13/26     802    {Q}      depth 12 m     depth 11 m\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("delete", "wreck", [AT_P]), ("replace", "sounding", [AT_Q]),
    ]  # fmt: skip
    assert not codes(bulletin)


def test_places_go_on_in_the_columns_of_old_and_new_ones() -> None:
    text = (
        f"{'NOTICE    CHART  ACTION   OBJECT':<53}OLD POSITION            NEW POSITION\n"
        f"12/26     802    Insert   submarine cable, joining   -                       {P}\n"
        f"{' ' * 77}{Q}\n"
        f"12/26     802    Move     anchorage area, bounded by {P}   46-10.00S 122-00.00W\n"
        f"{' ' * 53}{Q}   46-10.50S 122-00.00W\n"
        f"{' ' * 53}46-00.10S 122-00.20W   46-10.10S 122-00.20W\n"
    )
    cable, area = actions_of(parse(text))
    assert [one.iso6709 for one in cable.geometry.positions] == [AT_P, AT_Q]
    assert area.verb == "move"
    assert len(area.geometry.positions) == len(area.destination.positions) == 3


def test_verbs_may_stand_in_front_of_the_first_title() -> None:
    text = (
        f"{HEAD}         OBJECT                           OLD POSITION            NEW POSITION\n"
        f"INSERT   wreck                            -                       {P}\n"
        f"MOVE     mooring buoy                     {P}   {Q}\n"
        f"DELETE   cable, joining                   {P}   -\n"
        f"{' ' * 42}{Q}\n"
    )
    bulletin = parse(text)
    wreck, buoy, cable = actions_of(bulletin)
    assert (wreck.verb, buoy.verb, cable.verb) == ("insert", "move", "delete")
    assert [one.iso6709 for one in buoy.destination.positions] == [AT_Q]
    assert [one.iso6709 for one in cable.geometry.positions] == [AT_P, AT_Q]
    assert not errors(bulletin)


def test_the_same_thing_is_told_again_at_the_end_of_its_move() -> None:
    text = (
        f"{HEAD}\nPOSITION                CHANGE    OLD             NEW\n"
        f"{P}    move      special buoy\n{Q}    to                        same buoy\n"
    )
    (action,) = actions_of(parse(text))
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P]
    assert [one.iso6709 for one in action.destination.positions] == [AT_Q]


CELLS = "Action | Object | Position | {title}\nInsert | wreck | " + P + " | {cell}\n"


@pytest.mark.parametrize(
    ("title", "cell"),
    [
        ("Status", "Withdrawn"),
        ("Status", "Planned"),
        ("Nature", "T"),
        ("Remarks", "from 1 July 2026"),
        ("Effective", "1 Jul 2027"),
        ("Reference position", Q),
    ],
)
def test_a_cell_that_limits_its_row_holds_it_back(title: str, cell: str) -> None:
    bulletin = parse(CELLS.format(title=title, cell=cell))
    assert "cell-limits" in errors(bulletin)
    assert not any(action.usable for action in actions_of(bulletin))


@pytest.mark.parametrize(
    ("title", "cell"),
    [("Status", "New"), ("Status", "confirmed"), ("Remarks", "survey of 3 May 2025")],
)
def test_a_cell_that_says_nothing_against_its_row_leaves_it(title: str, cell: str) -> None:
    assert told(parse(CELLS.format(title=title, cell=cell))) == TWO_ROWS[:1]


@pytest.mark.parametrize("cell", ["buoy; insert light-buoy", "wreck (delete rock)"])
def test_a_command_within_the_words_of_a_row_is_not_passed_over(cell: str) -> None:
    bulletin = parse(f"| Chart | Action | Feature | Position |\n| 802 | Delete | {cell} | {P} |\n")
    assert "verb-within-words" in errors(bulletin)


def test_rows_below_titles_and_a_rule_are_no_page_furniture() -> None:
    text = (
        f"2026/214\nQuill Sound. Wreck, rock.\n\n  1. Insert wreck {P}\n  2. Delete rock {Q}\n\n"
        "  Chart             Last correction   Items\n"
        "  ---------------   ---------------   -----\n"
        "  802 (INT 9802)    2026/201          2\n"
        "  803               2026/188          1-2\n"
    )
    charts = parse(text).notices[0].charts
    assert [(one.chart, [a.label for a in one.actions]) for one in charts] == [
        ("802", ["2"]), ("803", ["1", "2"]),
    ]  # fmt: skip


def test_a_reference_behind_rows_is_no_detail_of_their_chart() -> None:
    text = (
        "CHART 802   QUILL SOUND\nEdition 6   Datum WGS84   Notice No. 12/2026   Previous 3/2026\n"
        f"Item  Command  Object   Position\n  1   Insert   wreck    {P}\n"
        "List of Lights affected: T 1042, T 1043.     See former Notice No. 3/2026.\n"
    )
    (notice,) = parse(text).notices
    assert (notice.id, [one.chart for one in notice.charts]) == ("12/26", ["802"])


def test_a_lone_heading_of_a_list_still_heads_it() -> None:
    assert told(parse(f"{HEAD}INSERT\nwreck {P}\nDELETE\nrock {Q}\n")) == TWO_ROWS
