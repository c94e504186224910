"""Positions in a numbered list, and commands that tell of their numbers: `insert in pos. 3`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors, told

PLACES = (
    "48° 12.345' S  126° 45.670' W",
    "48° 12.410' S  126° 45.512' W",
    "48° 12.388' S  126° 45.604' W",
    "48° 12.790' S  126° 46.020' W",
)
A, B, C, D = (
    "-4812.345-12645.670/", "-4812.410-12645.512/", "-4812.388-12645.604/", "-4812.790-12646.020/",
)  # fmt: skip
ALL = [A, B, C, D]
HEAD = "2026:1027   TAVRENNE ISLANDS. Quill.\nCharts:      21A (last corrected 2026:955)\n"
USES = "Rock: delete in pos. 1, 2, 3 and 4."
ROCK = ("delete", "rock", ALL)


def listed(before: str = "{})  ", behind: str = "", title: str = "Positions:   ") -> str:
    rows = (f"{before.format(at + 1)}{place}{behind}" for at, place in enumerate(PLACES))
    return title + "\n             ".join(rows) + "\n"


def notice(change: str, key: str = "Changes:     ", **kinds: str) -> str:
    return f"{HEAD}{listed(**kinds)}{key}{change}\n             {USES}\n"


@pytest.mark.parametrize(
    "before", ["{})  ", "{}) ", "{}.  ", "({}) ", "{}  ", "{}: ", "Pos. {}: ", "No. {} ", "P{} "]
)
def test_the_numbers_of_a_list(before: str) -> None:
    bulletin = parse(notice("Special buoy: take away in pos. 3.", before=before))
    assert told(bulletin) == [("delete", "buoy_special", [C]), ROCK]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "key",
    ["Changes:", "Corrections:", "Action:", "Details:", "Text:", "Chart changes:", "Changes:\n"],
)
def test_the_key_before_the_commands(key: str) -> None:
    bulletin = parse(notice("Special buoy: take away in pos. 3.", key=f"{key}   "))
    assert told(bulletin) == [("delete", "buoy_special", [C]), ROCK]


def test_the_list_may_stand_below() -> None:
    bulletin = parse(f"{HEAD}Changes:     {USES}\n{listed()}")
    assert (told(bulletin), codes(bulletin)) == ([ROCK], set())


def test_names_of_places_say_nothing_but_doubts_of_them_are_told() -> None:
    named = parse(notice("Special buoy: take away in pos. 3.", behind="   (Quill north)"))
    assert (told(named)[0], codes(named)) == (("delete", "buoy_special", [C]), set())
    doubtful = parse(notice("Special buoy: take away in pos. 3.", behind=" (reported)"))
    assert "item-without-verb" in errors(doubtful)


@pytest.mark.parametrize(
    ("change", "read"),
    [
        ("Port-hand light-buoy, Fl.R.3s: lay out in pos. 1.", ("insert", "light_buoy_port", [A])),
        ("Port-hand light-buoy, Fl.R.3s: laid out in pos. 1.", ("insert", "light_buoy_port", [A])),
        ("Special buoy: withdrawn from pos. 1", ("delete", "buoy_special", [A])),
        ("Special buoy: removed in pos. no. 2", ("delete", "buoy_special", [B])),
        ("Depth 9.4 m: insert in position 4.", ("insert", "sounding", [D])),
        ("Depth 9.4 m: insert in (4).", ("insert", "sounding", [D])),
        ("Depth 9.4 m: insert in pos. 4 (approx).", ("insert", "sounding", [D])),
        (
            "Submarine cable: insert between pos. 1, 2 and 3.",
            ("insert", "cable_submarine", ALL[:3]),
        ),
        ("Submarine cable: insert, joining pos. 1 - 3.", ("insert", "cable_submarine", ALL[:3])),
        (
            "Submarine cable: insert from pos. 1 via pos. 2 to pos. 3.",
            ("insert", "cable_submarine", ALL[:3]),
        ),
        ("Marine farm: insert, bounded by pos. 1, 2, 3 and 4.", ("insert", "marine_farm", ALL)),
        ("Marine farm: insert within pos. 1-4.", ("insert", "marine_farm", ALL)),
        (
            "Marine farm: insert, bounded by pos. 1, 2,\n   3 and 4.",
            ("insert", "marine_farm", ALL),
        ),
        ("Marine farm: insert, bounded by pos. 1, 2, 3\n  and 4.", ("insert", "marine_farm", ALL)),
        ("Marine farm: insert, bounded by pos.\n  1, 2, 3 and 4.", ("insert", "marine_farm", ALL)),
        ("Light: amend to Oc(2)WRG.10s in pos. 1.", ("amend", "light", [A])),
        ("Light: amend range to 9M in pos. 1.", ("amend", "light", [A])),
        ("Special buoy: replace by beacon in pos. 2.", ("replace", "buoy_special", [B])),
        ("Insert depth 9.4 m in pos. 4.", ("insert", "sounding", [D])),
    ],
)
def test_what_is_done_at_the_numbers(change: str, read: tuple[str, str, list[str]]) -> None:
    bulletin = parse(notice(change))
    assert told(bulletin) == [read, ROCK]
    assert errors(bulletin) == set()


def test_a_move_from_one_number_to_another() -> None:
    bulletin = parse(notice("Light, Fl.5s: move from pos. 1 to pos. 2."))
    moved = actions_of(bulletin)[0]
    assert [p.iso6709 for p in moved.geometry.positions] == [A]
    assert [p.iso6709 for p in moved.destination.positions] == [B]  # type: ignore[union-attr]


@pytest.mark.parametrize("stop", ["; depth 9.4 m", ". Depth 9.4 m"])
def test_two_things_on_a_line(stop: str) -> None:
    bulletin = parse(notice(f"Special buoy: take away in pos. 3{stop}: insert in pos. 4."))
    assert told(bulletin) == [("delete", "buoy_special", [C]), ("insert", "sounding", [D]), ROCK]
    assert [f.code for f in bulletin.findings] == ["datum-not-stated"]


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ("Mooring buoy: take away in pos. 7.", "letter-unknown"),
        ("Special buoy: take away in point 3.", "item-without-position"),
        ("Special buoy: take away at No 3.", "item-without-position"),
        ("Special buoy: set out in pos. 3.", "change-unread"),
        ("Special buoy:\n   take away in pos. 3.", "item-without-feature"),
        ("Insert in pos. 4: depth 9.4 m.", "item-without-position"),
    ],
)
def test_what_nobody_knows_is_held_back(change: str, code: str) -> None:
    bulletin = parse(notice(change))
    assert [one for one in told(bulletin) if one != ROCK] == []
    assert code in errors(bulletin)


@pytest.mark.parametrize(
    "change", ["In pos. 4: insert depth 9.4 m.", "Pos. 4: insert depth 9.4 m."]
)
def test_a_thing_before_its_verb_is_no_part_of_the_item_above(change: str) -> None:
    bulletin = parse(notice(change))
    assert ("insert", "rock", [D]) not in told(bulletin)


def test_a_number_of_the_list_that_nothing_tells_of_is_told() -> None:
    bulletin = parse(f"{HEAD}{listed()}Changes:   Rock: delete in pos. 1, 2 and 3.\n")
    assert told(bulletin) == [("delete", "rock", ALL[:3])]
    assert errors(bulletin) == {"item-without-verb"}


def test_a_buoy_between_two_places_is_at_neither() -> None:
    bulletin = parse(notice("Special buoy: insert between pos. 1 and 2."))
    assert actions_of(bulletin)[0].geometry.relation == "between"


def test_what_is_done_in_a_book_is_no_item() -> None:
    bulletin = parse(notice(USES) + "Light list:  Number 4471 changed accordingly.\n")
    assert errors(bulletin) == set()
    assert "Light list: Number 4471" in bulletin.notices[0].remarks[-1].text
    book = "Charts:  None\nParticulars: Sailing Guide, page 88: the quay has been removed.\n"
    told_of = parse(f"2026:1031   Quill.\n{book}             Notice 2026:640 (T) is withdrawn.\n")
    assert (told_of.notices[0].charts, errors(told_of)) == ([], set())
    assert [(one.number, one.status) for one in told_of.notices[0].cancels] == [(640, "temporary")]


@pytest.mark.parametrize(
    ("head", "number", "before"),
    [
        ("2026:1027   Quill.\nChart 21A [2026:955]", "1027/26", "2026:955"),
        ("2026:1027 (T)   Quill.\nChart 21A [2026:955]", "1027(T)/26", "2026:955"),
        ("1027:2026   Quill.\nChart 21A [955:2026]", "1027/26", "955:2026"),
        ("Notice 2026:71\nQuill.\nChart 21A [2026:63]", "71/26", "2026:63"),
    ],
)
def test_a_colon_between_number_and_year(head: str, number: str, before: str) -> None:
    notices = parse(f"{head}\nInsert wreck {PLACES[0]}\n").notices
    assert [(n.id, n.charts[0].previous_written) for n in notices] == [(number, before)]


def test_a_time_is_no_number_of_a_notice() -> None:
    text = "12/26 Quill.\nChart 802 [3/26]\nFrom 1 June 2026: 12 buoys, 0800 : 1200 and 2026:12.\n"
    assert [n.id for n in parse(text).notices] == ["12/26"]


@pytest.mark.parametrize(
    ("lines", "read"),
    [
        (
            f"Wreck: insert, {P}; depth 5 m: delete, {Q}\n",
            [("insert", "wreck", [AT_P]), ("delete", "sounding", [AT_Q])],
        ),
        (
            f"Beacons: delete {P} and {Q}. Insert rock {R}\n",
            [("delete", "beacon_generic", [AT_P, AT_Q]), ("insert", "rock", [AT_R])],
        ),
        (
            f"Insert depth 5 m {P}\nNorth Mole light: delete {Q}\n",
            [("insert", "sounding", [AT_P]), ("delete", "light", [AT_Q])],
        ),
        (
            f"{P}: insert depth 5 m\n{Q}: North Mole light: delete\n",
            [("insert", "sounding", [AT_P]), ("delete", "light", [AT_Q])],
        ),
        (
            f"{P} insert depth 5 m\nNorth Mole light: delete {Q}\n",
            [("insert", "sounding", [AT_P])],
        ),
        (
            f"Quill Light: insert beacon {P}\nNorth Mole: delete rock {Q}\n",
            [("insert", "beacon_generic", [AT_P]), ("delete", "rock", [AT_Q])],
        ),
        (
            f"Wrecks: insert\n{P}\n{Q}\nRock: delete\n{R}\n",
            [("insert", "wreck", [AT_P, AT_Q]), ("delete", "rock", [AT_R])],
        ),
        (
            f"Wreck: laid {P}\nRock: removed {Q}\n",
            [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])],
        ),
    ],
)
def test_a_thing_with_a_colon_before_its_verb(
    lines: str, read: list[tuple[str, str, list[str]]]
) -> None:
    assert told(parse(f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\n{lines}")) == read
