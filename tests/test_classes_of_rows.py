"""Tables below a sentence that tells the class of their rows and what is done with them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.layout.drafts import Item
from noticeparse.layout.handed_on import RowClass
from noticeparse.layout.row.row_classes import RowClasses
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told

NAMES = f"  Name   Light      Position\n  P2     Fl.R.2s    {P}\n  P4     Fl.R.5s    {Q}\n"
GREEN = f"  S1     Fl.G.2s    {P}\n  S3     Fl.G.5s    {Q}\n"
PORT_HAND = [("insert", "light_buoy_port", [AT_P]), ("insert", "light_buoy_port", [AT_Q])]
STARBOARD = [(verb, "light_buoy_starboard", at) for verb, _, at in PORT_HAND]
SENTENCE = "The following port-hand light-buoys are established:\n"


@pytest.mark.parametrize(
    "heading",
    [
        "The following port-hand light-buoys are established:",
        "The following port-hand light-buoys have been laid:",
        "Port-hand light-buoys are established as follows:",
        "The port-hand light-buoys listed below are established:",
        "Insert the following port-hand light-buoys:",
        "Establish port-hand light-buoys:",
        "PORT-HAND LIGHT-BUOYS TO BE INSERTED",
    ],
)
def test_the_class_is_told_of_rows_that_name_none(heading: str) -> None:
    bulletin = parse(f"{HEAD}{heading}\n{NAMES}")
    assert told(bulletin) == PORT_HAND
    assert [action.feature.name for action in actions_of(bulletin)] == ["P2", "P4"]
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "titles", ["", "  Name   Light      Position\n", "\n  Name   Light      Position\n"]
)
def test_a_second_sentence_heads_the_rows_below_it(titles: str) -> None:
    second = "\nThe following starboard-hand light-buoys are established:\n"
    bulletin = parse(HEAD + SENTENCE + NAMES + second + titles + GREEN)
    assert told(bulletin) == [*PORT_HAND, *STARBOARD]
    assert [action.feature.name for action in actions_of(bulletin)][2:] == ["S1", "S3"]


@pytest.mark.parametrize("second", ["The following marks are withdrawn:", "Delete these marks:"])
@pytest.mark.parametrize("titles", ["", "  Mark            Position\n"])
def test_other_columns_keep_the_verb_right_above_them(second: str, titles: str) -> None:
    row = f"  wreck           {R}\n"
    bulletin = parse(f"{HEAD}{SENTENCE}{NAMES}\n{second}\n{titles}{row}")
    assert told(bulletin) == [*PORT_HAND, ("delete", "wreck", [AT_R])]


def test_a_bare_verb_ends_the_class_of_the_rows_above() -> None:
    bulletin = parse(HEAD + SENTENCE + NAMES + "\nDELETE\n" + GREEN)
    assert [kind for _, kind, _ in told(bulletin)][2:] == ["light", "light"]


def test_rows_go_to_their_charts_with_their_class() -> None:
    rows = f"  802     P2     Fl.R.2s    {P}\n  803     P4     Fl.R.5s    {Q}\n"
    (notice,) = parse(
        f"12/26 Quill Sound.\n{SENTENCE}  Chart   Name   Light      Position\n{rows}"
    ).notices
    found = [(one.chart, one.actions[0].feature.kind) for one in notice.charts]
    assert found == [("802", "light_buoy_port"), ("803", "light_buoy_port")]


def test_rows_below_a_class_that_cannot_be_told_are_held() -> None:
    heading = "The following new light-buoys marking the channel are established:\n"
    bulletin = parse(HEAD + heading + NAMES)
    assert not told(bulletin)
    assert "feature-kinds-several" in errors(bulletin)


def test_a_row_that_names_its_own_kind_keeps_it() -> None:
    text = f"The following marks are withdrawn:\n  Mark           Position\n  mooring buoy   {P}\n"
    assert told(parse(HEAD + text)) == [("delete", "buoy_mooring", [AT_P])]


@pytest.mark.parametrize(
    ("titles", "first", "second"),
    [
        ("Depth   Position", "12.4  ", "11    "),
        ("Name    Position", "P2    ", "P4    "),
        ("Light       Position", "Fl.R.2.5s ", "Fl.R.5s   "),
    ],
)
def test_each_whole_row_is_a_thing_of_its_own(titles: str, first: str, second: str) -> None:
    rows = f"  {titles}\n  {first}  {P}\n  {second}  {Q}\n"
    heading = "The following depths are inserted:" if "Depth" in titles else SENTENCE.strip()
    found = told(parse(f"{HEAD}{heading}\n{rows}"))
    assert [places for _, _, places in found] == [[AT_P], [AT_Q]]


@pytest.mark.parametrize(
    ("unit", "first"), [("metres", "12.4"), ("feet", "3.77952"), ("fathoms", "22.67712")]
)
def test_the_unit_of_a_class_is_that_of_its_figures(unit: str, first: str) -> None:
    text = f"The following depths in {unit} are inserted:\n  12.4   {P}\n  11     {Q}\n"
    actions = actions_of(parse(f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\n{text}"))
    assert next(str(one.feature.depth.value_m) for one in actions if one.feature.depth) == first
    assert len(actions) == 2


def test_a_unit_beside_the_figure_holds() -> None:
    text = f"The following depths in feet are inserted:\n  12 m   {P}\n"
    (action,) = actions_of(parse(HEAD + text))
    assert action.feature.depth is not None
    assert action.feature.depth.value_m == 12


def test_what_is_changed_stands_in_a_column_of_amendments() -> None:
    text = (
        "The following lights are amended:\n"
        "  Name   Light           Amendment      Position\n"
        f"  Head   Fl.W.5s9m10M    range to 8M    {P}\n"
        f"  Spit   Q.R             NO CHANGE      {Q}\n"
    )
    bulletin = parse(HEAD + text)
    assert told(bulletin) == [("amend", "light", [AT_P])]
    assert "verb-unknown" in errors(bulletin)


@pytest.mark.parametrize(
    "sentence",
    [
        "The following area is inserted: spoil ground, bounded by",
        "The following is inserted: spoil ground, limits joining",
        "Insert spoil ground, bounded by",
    ],
)
def test_places_announced_below_a_table_are_no_rows_of_it(sentence: str) -> None:
    corners = "".join(f"         {' ' * 11}{one}\n" for one in (P, Q, R))
    bulletin = parse(HEAD + SENTENCE + NAMES + "\n" + sentence + "\n" + corners)
    assert told(bulletin) == [*PORT_HAND, ("insert", "spoil_ground", [AT_P, AT_Q, AT_R])]


def test_a_sentence_leads_to_the_thing_behind_its_colon() -> None:
    text = f"The following wreck is deleted: dangerous wreck, {P}\n"
    assert told(parse(HEAD + text)) == [("delete", "wreck_dangerous", [AT_P])]


def test_a_thing_told_in_front_of_the_colon_is_kept() -> None:
    text = f"The following light-buoy is moved: Fl.R.5s, from {P} to {Q}\n"
    assert told(parse(HEAD + text)) == [("move", "light_buoy_generic", [AT_P])]


@pytest.mark.parametrize("line", ["light, Fl.R.5s, at         the same position"])
def test_words_with_values_are_no_titles(line: str) -> None:
    bulletin = parse(f"{HEAD}Insert   wreck    {P}\n         {line}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "light", [AT_P])]


def test_rows_in_the_next_part_of_a_long_text_are_held_without_their_class() -> None:
    lost = RowClass((0, 5), (0, 5)).without_words()
    item = Item(words=[(0, 7)])
    RowClasses("Fl.R.2s", lost).give(item)
    assert [fault.code for fault in item.faults] == ["feature-kinds-several"]
    named = Item(words=[(0, 5)])
    RowClasses("wreck", lost).give(named)
    assert not named.faults
