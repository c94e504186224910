"""Rows that count the points of the thing above, halves `For:` and `Read:`, nested bullets."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, codes, errors, told

TABLE = (
    "| Action | Feature / point         | Position            |\n"
    "| INSERT | wind farm, bounded by   |                     |\n"
    "|        | pt 1                    | 46-00.00S 122-00.00W |\n"
    "|        | {second}                    | 46-00.50S 122-00.00W |\n"
    "|        | {third}                    | 46-00.10S 122-00.20W |\n"
    "| DELETE | wreck                   |                     |\n"
    "|        | pt 1                    | 46-00.50S 122-00.00W |\n"
)


def test_counted_points_are_of_the_thing_above() -> None:
    bulletin = parse(HEAD + TABLE.format(second="pt 2", third="pt 3"))
    assert [places for _, _, places in told(bulletin)] == [[AT_P, AT_Q, AT_R], [AT_Q]]
    assert [one.geometry.shape for one in actions_of(bulletin)] == ["area", "point"]
    assert codes(bulletin) == set()


def test_a_point_that_is_missing_holds_the_thing_back() -> None:
    bulletin = parse(HEAD + TABLE.format(second="pt 2", third="pt 4"))
    assert told(bulletin) == [("delete", "wreck", [AT_Q])]
    assert errors(bulletin) == {"place-not-next"}


def test_halves_of_an_amendment() -> None:
    body = f"Amend    light, {P}\n   For:   Fl(2)W.10s24m15M\n   Read:  Fl(3)W.15s24m17M\n"
    bulletin = parse(HEAD + body)
    (change,) = actions_of(bulletin)[0].changes
    assert (change.old.groups, change.new.groups) == ([2], [3])
    assert codes(bulletin) == set()


def test_halves_below_one_verb_are_pairs() -> None:
    body = f"Replace\n   For:  depth 7.7 m  {P}\n   Read: depth 7.2 m\n"
    body += f"   For:  depth 6.9 m  {Q}\n   Read: depth 6.3 m\n"
    bulletin = parse(HEAD + body)
    depths = [(a.feature.depth, a.replacement.depth) for a in actions_of(bulletin)]
    assert [(str(old.value_m), str(new.value_m)) for old, new in depths] == [
        ("7.7", "7.2"),
        ("6.9", "6.3"),
    ]
    assert [places for _, _, places in told(bulletin)] == [[AT_P], [AT_Q]]


@pytest.mark.parametrize("bullet", "•◦‣▪●")
def test_bullets_stand_before_things_and_places(bullet: str) -> None:
    body = f"{bullet} Insert a dredged area, 10.5 m, bounded by\n"
    body += "".join(f"     {bullet} {place}\n" for place in (P, Q, R))
    bulletin = parse(HEAD + body)
    assert [places for _, _, places in told(bulletin)] == [[AT_P, AT_Q, AT_R]]
    assert codes(bulletin) == set()


def test_columns_of_start_and_end() -> None:
    title = "Object            Start                   End                     Action\n"
    bulletin = parse(f"{HEAD}{title}submarine cable   {P}    {Q}    insert\n")
    assert [
        (one.geometry.shape, places)
        for one, (_, _, places) in zip(actions_of(bulletin), told(bulletin), strict=True)
    ] == [("line", [AT_P, AT_Q])]
    title = "Object   Position                Start         End           Action\n"
    bulletin = parse(f"{HEAD}{title}wreck    {P}    1 May 2026    3 June 2026   insert\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"cell-limits"}


@pytest.mark.parametrize("title", ["Remarks", "Zorp"])
def test_a_light_under_another_title_holds_its_row_back(title: str) -> None:
    rows = f"Action | Object | Position | {title}\nInsert | light-buoy | {P} | Fl.R.4s No 3\n"
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == []
    assert errors(bulletin) == {"cell-misplaced"}
