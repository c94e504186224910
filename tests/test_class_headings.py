"""Headings that name a class and what is done with it, and items counted `2.1`, `2.2`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
)

DEPTHS = [("insert", "sounding", [AT_P]), ("insert", "sounding", [AT_Q])]
WRECK = ("delete", "wreck", [AT_R])
HEADINGS = [
    ("Depths to be inserted", "Dangers to be deleted"),
    ("Depths to be inserted on the chart", "Dangers to be deleted from the chart:"),
    ("The following depths are to be inserted", "The following dangers are to be removed"),
    ("DEPTHS INSERTED", "DANGERS STRUCK OUT"),
    ("Depths for insertion", "Wrecks for deletion"),
    ("Insert depths", "Delete dangers"),
    ("To be inserted: depths", "To be deleted: dangers"),
    ("A. Depths to be inserted", "B. Dangers to be deleted"),
    ("New depths are given.\nDepths to be inserted", "Dangers to be deleted"),
]


@pytest.mark.parametrize(("insert", "delete"), HEADINGS)
def test_a_class_heads_the_items_below_it(insert: str, delete: str) -> None:
    rows = f"{insert}\n   depth 6.2   {P}\n   depth 5.8   {Q}\n{delete}\n   wreck   {R}\n"
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [*DEPTHS, WRECK]
    assert errors(bulletin) == set()


def test_the_class_is_told_of_bare_values() -> None:
    depths = f"Depths to be inserted\n   6.2   {P}\n   5.8 m   {Q}\n"
    bulletin = parse(f"{HEAD}{depths}Buoys to be laid\n   Fl.R.2s   {R}\n")
    assert told(bulletin) == [*DEPTHS, ("insert", "light_buoy_generic", [AT_R])]
    values = [action.feature.depth for action in actions_of(bulletin)[:2]]
    assert [str(depth.value_m) for depth in values if depth] == ["6.2", "5.8"]


@pytest.mark.parametrize(
    ("rows", "depths"),
    [
        (f"   {P}   6.2\n   {Q}   5.8\n", ["6.2", "5.8"]),
        (f"   6.2 {P}\n   5.8 {Q}\n", ["6.2", "5.8"]),
        (f"   {P}   1\n   {Q}   2\n", ["1", "2"]),
    ],
)
def test_each_row_is_one_item(rows: str, depths: list[str | None]) -> None:
    bulletin = parse(f"{HEAD}Depths to be inserted\n{rows}")
    assert told(bulletin) == DEPTHS
    values = [action.feature.depth for action in actions_of(bulletin)]
    assert [depth and str(depth.value_m) for depth in values] == depths


BUOYS = [
    ("insert", "light_buoy_starboard", [AT_P]),
    ("insert", "light_buoy_starboard", [AT_Q]),
]


@pytest.mark.parametrize("verb", ["Establish", "Lay", "Insert", "Place"])
@pytest.mark.parametrize("above", ["", f"Delete wreck {R}\n"])
def test_a_command_for_a_list_tells_its_class_of_each_row(verb: str, above: str) -> None:
    rows = f"   No 1   Fl.G.3s   {P}\n   No 3   Q.G   {Q}\n"
    bulletin = parse(f"{HEAD}{above}{verb} these starboard-hand light-buoys:\n{rows}")
    assert told(bulletin)[-2:] == BUOYS
    assert [action.feature.name for action in actions_of(bulletin)][-2:] == ["No 1", "No 3"]
    assert errors(bulletin) == set()


def test_names_of_moored_things_below_their_class() -> None:
    rows = f"   M1   from {P} to {Q}\n   M2   from {Q} to {R}\n"
    bulletin = parse(f"{HEAD}Shift the mooring buoys:\n{rows}")
    assert told(bulletin) == [("move", "buoy_mooring", [AT_P]), ("move", "buoy_mooring", [AT_Q])]
    assert [action.feature.name for action in actions_of(bulletin)] == ["M1", "M2"]


def test_another_heading_ends_a_list() -> None:
    rocks = f"   rock, dries 0.6 m   {Q}\n   rock, dries 0.9 m   {R}\n"
    heading = "Insert these rocks, with the height to which each dries:"
    bulletin = parse(f"{HEAD}Insert these depths:\n   6.2 m   {P}\n{heading}\n{rocks}")
    assert told(bulletin) == [DEPTHS[0], ("insert", "rock", [AT_Q]), ("insert", "rock", [AT_R])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("row", ["beacon No 3   Q.G", "wreck", "Brack Mole   Q.G"])
def test_another_thing_below_a_class_is_held_back(row: str) -> None:
    rows = f"   No 1   Fl.G.3s   {P}\n   {row}   {Q}\n"
    bulletin = parse(f"{HEAD}Establish these starboard-hand light-buoys:\n{rows}")
    assert told(bulletin) == BUOYS[:1]
    assert errors(bulletin) == {"feature-kinds-several"}


def test_a_command_with_its_own_thing_ends_the_class() -> None:
    depths = f"Insert these depths:\n   6.2   {P}\n"
    bulletin = parse(f"{HEAD}{depths}Insert light-buoy, Fl.R.3s   {Q}\n   Fl.R.5s   {R}\n")
    kinds = [action.feature.kind for action in actions_of(bulletin)]
    assert kinds == ["sounding", "light_buoy_generic", "light"]


def test_counted_rows_below_depths_have_none() -> None:
    bulletin = parse(f"{HEAD}Depths to be inserted\n   1  {P}\n   2  {Q}\n")
    assert [action.feature.depth for action in actions_of(bulletin)] == [None, None]
    assert told(bulletin) == []
    assert errors(bulletin) == {"depth-not-stated"}


def test_a_structure_below_lights_is_held_back() -> None:
    bulletin = parse(f"{HEAD}Lights to be inserted\n   Pier head, Fl.R.2s   {P}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


@pytest.mark.parametrize("unread", ["Dangers there", "Depths not found again", "Works no more"])
def test_an_unread_heading_ends_the_verb_above(unread: str) -> None:
    rows = f"Depths to be inserted\n   depth 6.2   {P}\n{unread}\n   wreck   {Q}\n"
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == DEPTHS[:1]
    assert "item-without-verb" in errors(bulletin)


@pytest.mark.parametrize("words", ['with legend "Rep"', "reported in May"])
def test_words_between_rows_leave_the_verb_above_in_force(words: str) -> None:
    bulletin = parse(f"{HEAD}Depths to be inserted\ndepth 6.2   {P}\n{words}\ndepth 5.8   {Q}\n")
    assert told(bulletin) == DEPTHS
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    ("heading", "row", "kind"),
    [
        ("Beacons", "port-hand beacon, Fl.R.2s", "beacon_lateral_port"),
        ("Lights", "light-buoy, Fl.R.2s", "light_buoy_generic"),
    ],
)
def test_a_lit_thing_below_its_own_class_is_that_thing(heading: str, row: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}{heading} to be inserted\n   {row}   {P}\n")
    assert told(bulletin) == [("insert", kind, [AT_P])]
    assert errors(bulletin) == set()


def test_one_thing_above_its_place_is_no_class() -> None:
    bulletin = parse(f"{HEAD}Wreck to be inserted\n   {P}\nRock to be deleted\n   {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "rows", [f"   depth 6.2   {P}\n   depth 5.8   {Q}\n", f"   {P}   6.2\n   {Q}   5.8\n"]
)
def test_rows_below_a_sentence_are_not_its_places(rows: str) -> None:
    bulletin = parse(f"{HEAD}Depths to be inserted, as surveyed\n{rows}")
    assert told(bulletin) == []
    assert "sentence-told-twice" in errors(bulletin)


@pytest.mark.parametrize(
    "numbers", [("2.1", "2.2", "3.1"), ("2.1.", "2.2.", "3.1."), ("1.9", "1.10", "2.1")]
)
def test_counts_of_two_parts_are_no_values(numbers: tuple[str, str, str]) -> None:
    first, second, third = numbers
    rows = (
        f"2.  Insert on the chart:\n   {first}  depth 6.2 m in {P}\n"
        f"   {second}  depth 5.8 m in {Q}\n3.  Delete from the chart:\n   {third}  wreck in {R}\n"
    )
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [*DEPTHS, WRECK]
    assert [f.code for f in bulletin.findings if f.severity in ("error", "warning")] == []


def test_figures_with_a_unit_count_nothing() -> None:
    actions = actions_of(parse(f"{HEAD}Insert\n   2.4 m depth {P}\n   2.5 m depth {Q}\n"))
    depths = [action.feature.depth for action in actions]
    assert [str(depth.value_m) for depth in depths if depth] == ["2.4", "2.5"]


@pytest.mark.parametrize("verb", ["Insert:", "Insert", "Add:", "To be inserted:"])
def test_a_verb_alone_ends_the_class(verb: str) -> None:
    depths = f"  Delete soundings:\n      6.2   {P}\n      5.8   {Q}\n"
    bulletin = parse(f"{HEAD}{depths}  {verb}\n      rock awash   {R}\n")
    depth = "delete", "sounding"
    assert told(bulletin) == [(*depth, [AT_P]), (*depth, [AT_Q]), ("insert", "rock_awash", [AT_R])]
    assert errors(bulletin) == set()


def test_words_that_nobody_knows_do_not_end_it_in_silence() -> None:
    depths = f"  Delete soundings:\n      6.2   {P}\n      5.8   {Q}\n"
    bulletin = parse(f"{HEAD}{depths}  Dangers gone:\n      rock awash   {R}\n")
    assert ("delete", "rock_awash", [AT_R]) not in told(bulletin)


def test_a_line_that_goes_on_below_it_heads_nothing() -> None:
    text = f"{HEAD}Insert rock which covers\n   and uncovers, dries 1.4m, {P}\nInsert wreck {Q}\n"
    bulletin = parse(text)
    assert [(verb, kind) for verb, kind, _ in told(bulletin)] == [
        ("insert", "rock_covers"), ("insert", "wreck"),
    ]  # fmt: skip


def test_a_sentence_among_rows_is_no_heading() -> None:
    rows = f"The following depths are inserted:\n  12.4  {P}\n"
    remark = "Mariners are advised to keep clear.\n"
    bulletin = parse(
        f"{HEAD}{rows}{remark}  10.9  {Q}\n\nThe following depths are deleted:\n  15.2  {R}\n"
    )
    assert ("delete", "sounding", [AT_Q]) not in told(bulletin)
    assert ("delete", "sounding", [AT_R]) in told(bulletin)


def test_a_heading_broken_over_two_lines_keeps_its_class() -> None:
    heading = "The following starboard-hand\nlight-buoys are established:\n"
    bulletin = parse(f"{HEAD}{heading}  S1  {P}\n  S3  {Q}\n")
    assert [kind for _, kind, _ in told(bulletin)] == ["light_buoy_starboard"] * 2
    assert errors(bulletin) == set()


def test_an_order_broken_over_two_lines_heads_what_is_below_it() -> None:
    text = f"{HEAD}To be inserted\n  wreck\n    (a) {P}\nTo be\ntaken out\n  rock\n    (b) {Q}\n"
    assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_a_broken_heading_heads_a_table_too() -> None:
    heading = "The following starboard-hand light-buoys\n      are established:\n"
    table = f"  Name  Light  Position\n  S1    Q.G    {P}\n  S3    Q.G    {Q}\n"
    bulletin = parse(f"{HEAD}{heading}{table}")
    assert [kind for _, kind, _ in told(bulletin)] == ["light_buoy_starboard"] * 2
