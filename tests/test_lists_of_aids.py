"""Lists of aids with remarks that tell what was done, and latitudes over longitudes."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import actions_of, codes, errors, usable_of

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n\n"
TITLES = "No.    Name          Position      Characteristics  Structure              Remarks\n"
RULE = (
    "-----  ------------  ------------  ---------------  ---------------------  ----------------\n"
)
PATCH = (
    "Q20    Quill Patch   46°22.40'S    Q(6)+LFl 15s     South cardinal pillar  Established\n"
    "                     122°15.31'W                    buoy, YB\n"
)
ORMER = (
    "Q21    Ormer No 6    46°23.12'S    Fl R 3s          Port-hand buoy, can,   Characteristic\n"
    "                     122°14.55'W                    red                    changed to Q R\n"
)
PERCH = (
    "Q22    Perch Bank    46°24.31'S    Fl R             Port-hand buoy, can,   Moved to\n"
    "                     122°13.60'W   4s 3M            lattice                46°24.35'S\n"
    "                                                                           122°13.66'W\n"
)
ROWS = PATCH + ORMER + PERCH


def _places(bulletin: Bulletin) -> list[list[str]]:
    return [[one.iso6709 for one in a.geometry.positions] for a in actions_of(bulletin)]


@pytest.mark.parametrize(
    "table",
    [
        TITLES + RULE + ROWS,
        TITLES + ROWS,
        TITLES + "\n" + PATCH + "\n" + ORMER + "\n" + PERCH,
        (TITLES + RULE + ROWS).replace("Remarks", "Notes  "),
        TITLES.replace("No. ", "    ") + RULE + ROWS.replace("Q2", "  "),
    ],
)
def test_cells_of_two_lines_and_the_verb_in_the_remarks(table: str) -> None:
    bulletin = parse(HEAD + table)
    assert [one.verb for one in actions_of(bulletin)][:2] == ["insert", "amend"]
    assert usable_of(bulletin)[0] == ("insert", "buoy_cardinal_south")
    assert _places(bulletin)[:2] == [["-4622.40-12215.31/"], ["-4623.12-12214.55/"]]
    assert [one.feature.name for one in actions_of(bulletin)][:2] == ["Quill Patch", "Ormer No 6"]


def test_a_move_has_both_its_places() -> None:
    moved = PERCH.replace("Moved to\n", "Moved to 46°24.35'S\n").replace(
        "lattice                46°24.35'S\n", "lattice                122°13.66'W\n"
    )
    rows = PATCH + "".join(moved.splitlines(keepends=True)[:2])
    bulletin = parse(HEAD + TITLES + RULE.rstrip("\n") + "----\n" + rows)
    move = actions_of(bulletin)[1]
    assert move.verb == "move"
    assert [one.iso6709 for one in move.geometry.positions] == ["-4624.31-12213.60/"]
    assert [one.iso6709 for one in move.destination.positions] == ["-4624.35-12213.66/"]
    assert errors(bulletin) == set()


def test_a_blank_remark_does_not_hold_on_from_the_row_above() -> None:
    blank = ORMER.replace("Characteristic", "").replace("changed to Q R", "")
    again = PATCH.replace("Q20", "Q23").replace("22.40", "26.40")
    bulletin = parse(HEAD + TITLES + RULE + PATCH + blank + again)
    assert [a.verb for a in actions_of(bulletin) if a.usable] == ["insert", "insert"]
    assert errors(bulletin) == {"item-without-verb"}


@pytest.mark.parametrize("remark", ["See note 4", "Seasonal", "Private"])
def test_remarks_that_tell_nothing_done_are_no_verbs(remark: str) -> None:
    bulletin = parse(HEAD + TITLES + RULE + PATCH.replace("Established", remark) + ORMER)
    assert usable_of(bulletin) == []
    assert errors(bulletin)


@pytest.mark.parametrize("lost", ["46°22.40'S", "122°15.31'W"])
def test_a_half_that_is_lost_holds_its_row_alone(lost: str) -> None:
    rows = (PATCH + ORMER).replace(lost, " " * len(lost))
    bulletin = parse(HEAD + TITLES + RULE + rows)
    assert [a.verb for a in actions_of(bulletin) if a.usable] == ["amend"]
    assert _places(bulletin)[-1] == ["-4623.12-12214.55/"]


def test_the_number_of_an_aid_names_no_notice() -> None:
    """The next notice opens below the rows, and twice the same number is no finding."""
    text = HEAD + TITLES + RULE + PATCH + "\n13/26 Ormer Bank.\nChart 803 [4/26] WGS84\n\n"
    bulletin = parse(text + TITLES + RULE + PATCH)
    assert [(n.id, [c.chart for c in n.charts]) for n in bulletin.notices] == [
        ("12/26", ["802"]), ("13/26", ["803"]),
    ]  # fmt: skip
    assert "letter-used-twice" not in codes(bulletin)


@pytest.mark.parametrize(
    "built", ["wooden post", "steel pile", "white steel lattice tower", "Fl.G.3s, concrete column"]
)
def test_a_beacon_is_told_with_what_it_is_built_as(built: str) -> None:
    text = f"{HEAD}Insert starboard-hand beacon, {built} 46-22.40S 122-15.31W\n"
    bulletin = parse(text)
    assert usable_of(bulletin) == [("insert", "beacon_lateral_starboard")]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("other", ["post", "pile", "rock"])
def test_another_thing_behind_a_beacon_is_held(other: str) -> None:
    bulletin = parse(f"{HEAD}Insert starboard-hand beacon, {other} 46-22.40S 122-15.31W\n")
    assert usable_of(bulletin) == []


@pytest.mark.parametrize(
    "above",
    [
        "Delete:\n" + TITLES + RULE,
        "The following marks are deleted:\n\n" + TITLES + RULE,
        TITLES + RULE + "DELETE\n",
    ],
)
def test_below_a_verb_of_its_own_a_remark_is_no_other(above: str) -> None:
    """Also below the same titles at the head of the next page."""
    rows = PATCH + ORMER.replace("Characteristic", "Established").replace("changed to Q R", "")
    bulletin = parse(HEAD + above + rows)
    assert [one.verb for one in actions_of(bulletin)] == ["delete", "delete"]
    paged = parse(HEAD + above + rows + TITLES + RULE + PATCH.replace("22.40", "27.40"))
    assert all(one.verb == "delete" for one in actions_of(paged) if one.usable)


def test_a_number_with_its_year_below_such_a_title_names_a_notice() -> None:
    titles = "No | Name | Position | Light | Structure | Action\n"
    row = "17/26 | Quill | 46-22.40S 122-15.31W | Fl.R.3s | port-hand buoy | Removed\n"
    bulletin = parse(f"TAVRENNE OFFICE\nChart 802 [12/26] WGS84\n{titles}{row}")
    assert [one.id for one in bulletin.notices] == ["17/26"]
    assert [one.feature.name for one in actions_of(bulletin)] == ["Quill"]
