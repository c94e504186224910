"""What is lost within an item that looks whole: corners, figures before units, a destination.

Common practice, no published source: a separator stands between two places, a unit behind its
figure.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, codes, errors, usable_of

S = "46-00.30S 122-00.40W"
CORNERS = [
    (f"Insert marine farm, bounded by {P}, {{}}{Q}, {R} and {S}", ", "),
    (f"Insert marine farm, bounded by {P}, {Q}, {R} {{}}and {S}", "and "),
    (f"Delete submarine cable, joining {{}}{P} and {Q}", "and "),
    (f"Delete submarine cable, joining {{}}{P} and {Q}", ", "),
    (f"Delete submarine cable joining {P} and {{}}{Q}", ", "),
]


@pytest.mark.parametrize(("words", "lost"), CORNERS)
def test_a_separator_without_its_place(words: str, lost: str) -> None:
    assert usable_of(parse(f"{HEAD}{words.format(lost)}\n")) == []
    assert len(usable_of(parse(f"{HEAD}{words.format('')}\n"))) == 1


AMOUNTS = [
    ("obstruction, least depth 2{}", ".\n8 metres, in", ".8 metres, in"),
    ("obstruction, least depth 9{}", "/9.9 m", " m"),
    ("rock, depth 1.1{} m", " (2.2)", ""),
    ("{} m depth contour, joining", "S", "5"),
    ("wreck, swept to {} metres", "lS.S", "15.5"),
    ("overhead power cable, vertical clearance {} metres, joining", "", "25"),
    ("depth of {} metres, in", "...", "7"),
    ("obstruction, swept to {} m", "..", "7"),
]


@pytest.mark.parametrize(("words", "lost", "whole"), AMOUNTS)
def test_a_unit_without_its_figure(words: str, lost: str, whole: str) -> None:
    place = f"{P} and {Q}" if "joining" in words else P
    assert usable_of(parse(f"{HEAD}Insert {words.format(lost)} {place}\n")) == []
    assert len(usable_of(parse(f"{HEAD}Insert {words.format(whole)} {place}\n"))) == 1


@pytest.mark.parametrize(("lost", "whole"), [("1.5 mmiles", "1.5 miles"), ("0.5 m", "0.5M")])
def test_a_radius_that_is_no_length(lost: str, whole: str) -> None:
    words = "Insert fishing prohibited area, circle of radius {} centred on " + P
    assert usable_of(parse(f"{HEAD}{words.format(lost)}\n")) == []
    assert len(usable_of(parse(f"{HEAD}{words.format(whole)}\n"))) == 1


@pytest.mark.parametrize(
    "words",
    [f"Delete pontoon {P}\n    to {Q}", f"Delete north cardinal buoy {P}\n    to {Q}",
     f"Insert wreck {P} to {Q}"],
)  # fmt: skip
def test_a_place_to_which_a_thing_leads(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable_of(bulletin) == []
    assert "places-of-a-move" in errors(bulletin)


@pytest.mark.parametrize(
    "words", [f"Delete submarine cable {P} to {Q}", f"Move pontoon from {P}\n    to {Q}"]
)
def test_what_runs_or_moves_leads_on(words: str) -> None:
    assert len(usable_of(parse(f"{HEAD}{words}\n"))) == 1


@pytest.mark.parametrize("verb", ["Insert", "Delete"])
def test_a_legend_says_where_it_stands(verb: str) -> None:
    assert usable_of(parse(f'{HEAD}{verb} legend "Works"\n')) == []
    for where in ("below the title", "throughout"):
        assert len(usable_of(parse(f'{HEAD}{verb} legend "Works" {where}\n'))) == 1
    assert len(usable_of(parse(f'{HEAD}{verb} legend "Works" {P}\n'))) == 1


ROWS = "12/26;802;3/26;insert;restricted area, bounded by;46°41,00'S;122°59,40'W\n"
HEADS = "notice;chart;previous;command;object;latitude;longitude\n"
BEHIND = ";;;;;46°41,50'S;122°58,80'W\n;;;;;46°41,50'S;122°59,40'W\n"


@pytest.mark.parametrize(
    "row", ["46?41,00?S;122?58,80?W", "46#41,00#S;122#58,80#W", "46°41,00'S;122?58,80?W"]
)
def test_a_garbled_corner_in_a_row_of_its_own(row: str) -> None:
    assert usable_of(parse(f"{HEADS}{ROWS};;;;;{row}\n{BEHIND}")) == []
    clean = row.translate({ord("?"): "°", ord("#"): "°"}).replace(",00°", ",00'")
    clean = clean.replace(",80°", ",80'")
    assert len(usable_of(parse(f"{HEADS}{ROWS};;;;;{clean}\n{BEHIND}"))) == 1


@pytest.mark.parametrize(
    "words",
    [f"marine farm, bounded by {P}, {Q}, {{}} and {S}", f"leading line {Q} {{}}",
     f"wrecks in {P}, {Q} and {{}}"],
)  # fmt: skip
def test_a_place_twice_in_a_row_is_told(words: str) -> None:
    assert "position-twice" in codes(parse(f"{HEAD}Insert {words.format(Q)}\n"))
    assert "position-twice" not in codes(parse(f"{HEAD}Insert {words.format(R)}\n"))
    ring = f"Insert marine farm, bounded by {P}, {Q}, {R} and {P}"
    assert "position-twice" not in codes(parse(f"{HEAD}{ring}\n"))
