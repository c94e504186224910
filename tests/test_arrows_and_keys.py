"""Arrows between old and new, and keys that tell in words what a letter or sign does."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.codes import read_codes
from noticeparse.records import Amend, Move, Replace
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told


@pytest.mark.parametrize("arrow", ["->", "=>", "→", "-->"])
def test_an_arrow_leads_from_the_old_to_the_new(arrow: str) -> None:
    text = (
        f"{HEAD}Replace depth 8.8 m {arrow} depth 8.2 m {P}\n"
        f'Amend legend "Farm" {arrow} "Farms" {P}\n'
        f"Move mooring buoy {P} {arrow} {Q}\n"
    )
    replace, amend, move = parse(text).notices[0].charts[0].actions
    assert isinstance(replace, Replace)
    assert isinstance(amend, Amend)
    assert isinstance(move, Move)
    assert replace.replacement.text == "depth 8.2 m"
    assert [(one.old, one.new) for one in amend.changes] == [("Farm", "Farms")]
    assert (len(move.geometry.positions), len(move.destination.positions)) == (1, 1)
    assert errors(parse(text)) == set()


@pytest.mark.parametrize(
    ("text", "codes"),
    [
        ("+ goes on the chart    - comes off the chart", {"+": "insert", "-": "delete"}),
        (
            "Op: N = new on the chart, X = taken off the chart, A = altered in place",
            {"N": "insert", "X": "delete", "A": "amend"},
        ),
        (
            "PLOT = put on the chart   ERASE = take off   SWAP = one thing in place of another",
            {"PLOT": "insert", "ERASE": "delete", "SWAP": "replace"},
        ),
        ("N = new; O = old", {}),
        ("A = new position, B = buoy", {}),
    ],
)
def test_a_key_tells_in_words_what_is_done(text: str, codes: dict[str, str]) -> None:
    assert read_codes(text) == codes


def test_a_key_goes_on_over_lines_of_one_sign_each() -> None:
    text = (
        "Key to the signs\n  +  goes on the chart     -  comes off the chart\n"
        "  *  one thing gives way to another, old => new\n\n"
        f"2417/26 Quill Sound\n@ chart 802 | after NM 2310/26\n + wreck | {P}\n"
        f" * depth 8.8 m => depth 8.2 m | {Q}\n@ chart 803 | after NM 2288/26\n - rock | {P}\n"
    )
    bulletin = parse(text)
    (notice,) = bulletin.notices
    assert [(c.chart, [a.verb for a in c.actions]) for c in notice.charts] == [
        ("802", ["insert", "replace"]),
        ("803", ["delete"]),
    ]
    assert errors(bulletin) == set()


LETTERS = (
    "Key:  E enter   X expunge   T transfer\n\n"
    "QUILL SOUND: BUOYS ........................ 2417/26\nChart 802 <2310/26>  INT 9301\n"
    f"   E   Wreck                     {P}\n   X   Rock                      {Q}\n"
    f"   T   Mooring buoy, from        {P}\n       to                        {Q}\n"
)


def test_letters_of_a_key_stand_for_verbs_in_a_cell_of_their_own() -> None:
    bulletin = parse(LETTERS)
    assert [(verb, kind) for verb, kind, _ in told(bulletin)] == [
        ("insert", "wreck"), ("delete", "rock"), ("move", "buoy_mooring"),
    ]  # fmt: skip
    assert errors(bulletin) == set()


def test_dots_lead_from_a_heading_to_the_number_of_its_notice() -> None:
    (notice,) = parse(LETTERS).notices
    assert (notice.id, notice.heading) == ("2417/26", "QUILL SOUND: BUOYS")


def test_an_international_number_above_a_letter_is_no_coordinate() -> None:
    (section,) = parse(LETTERS).notices[0].charts
    assert (section.chart, section.international) == ("802", "INT 9301")


def test_a_letter_that_the_key_lacks_is_no_verb_of_the_row_above() -> None:
    bulletin = parse(LETTERS.replace("   X   Rock", "   Q   Rock"))
    assert ("insert", "rock") not in [(verb, kind) for verb, kind, _ in told(bulletin)]
    assert errors(bulletin) == {"item-without-verb"}


def test_letters_without_a_key_command_nothing() -> None:
    bulletin = parse(LETTERS.partition("\n")[2])
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-without-verb"}


NOUNS = f" 1  Addition      wreck   {P}\n 2  Removal       rock    {Q}\n"


def test_nouns_behind_counts_are_commands() -> None:
    assert [(verb, kind) for verb, kind, _ in told(parse(HEAD + NOUNS))] == [
        ("insert", "wreck"),
        ("delete", "rock"),
    ]


def test_a_table_of_charts_at_the_foot_names_their_items() -> None:
    rule = "_" * 60
    foot = (
        "   chart            items    correction before    datum\n"
        "   5410             all      {one}/2026             WGS 84\n"
        "   5411  INT 9541   1        {two}/2026             WGS 84\n"
    )
    text = "".join(
        f"{number}/2026   KARRICK BAY\n\n{NOUNS}\n{foot.format(one=one, two=two)}\n{rule}\n"
        for number, one, two in ((77, 61, 58), (78, 77, 77), (79, 78, 78))
    )
    bulletin = parse(text)
    for notice in bulletin.notices:
        assert [(c.chart, len(c.actions)) for c in notice.charts] == [("5410", 2), ("5411", 1)]
    assert errors(bulletin) == set()
    previous = [c.previous and c.previous.number for n in bulletin.notices for c in n.charts]
    assert previous == [61, 58, 77, 77, 78, 78]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (f"Move    buoy, from:   {P}", f"        to:           {Q}"),
        (f"Move    buoy, from    {P}", f"        to:           {Q}"),
        (f"Shift buoy from: {P}", f"to: {Q}"),
        (f"Relocate\n  buoy, from: {P}", f"  To: {Q}"),
    ],
)
def test_the_other_end_of_a_way_is_no_record_of_its_own(first: str, second: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}{first}\n{second}\n"))
    assert isinstance(action, Move)
    assert action.usable
    assert [p.iso6709 for p in action.geometry.positions] == [AT_P]
    assert [p.iso6709 for p in action.destination.positions] == [AT_Q]


def test_a_way_without_its_beginning_above_is_none() -> None:
    bulletin = parse(f"{HEAD}Move buoy {P}\nto: {Q}\n")
    assert not any(action.usable for action in actions_of(bulletin))
