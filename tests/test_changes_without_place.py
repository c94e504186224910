"""Second things of which a change is told without a place of their own, or with another one."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, errors, told

WITHOUT = [
    f"A wreck has been found in {P}. The light-buoy, Q.R, nearby has been removed.",
    f"In {P} a wreck is inserted. The rock is deleted.",
    f"The special buoy has been removed.\nA wreck has been found in {P}.",
    f"\nThe buoys of the bank were changed in June 2026.\nInsert wreck {P}",
]


@pytest.mark.parametrize("words", WITHOUT)
def test_a_change_without_a_place_is_told(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"change-without-place"}


@pytest.mark.parametrize(
    "words",
    [
        f"A wreck has been found in {P}. The wreck is inserted.",
        f"Mariners are advised that the buoyage has been altered as below.\nInsert wreck {P}",
        f"A wreck has been found in {P}. The rock is not deleted.",
        f"A wreck has been found in {P}. The rock will be deleted.",
        f"Pilots are informed that the marks were changed on 2 June 2026.\nInsert wreck {P}",
    ],
)
def test_what_is_told_again_or_in_sum_is_no_change(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == set()


def test_a_general_kind_is_told_of_by_the_special_one() -> None:
    laid = "\nA cable has been laid to the island.\n"
    of_power = parse(f"{HEAD}{laid}Insert submarine power cable joining {P} and {Q}\n")
    assert errors(of_power) == set()
    assert "change-without-place" in errors(parse(f"{HEAD}{laid}Insert rock {P}\n"))
    special = "\nA power cable has been laid to the island.\n"
    of_any = parse(f"{HEAD}{special}Insert submarine cable joining {P} and {Q}\n")
    assert "change-without-place" in errors(of_any)


def test_a_participle_shares_the_auxiliary_before_it() -> None:
    bulletin = parse(f"{HEAD}In {P} a buoy is established and the light discontinued.\n")
    assert told(bulletin) == [("insert", "buoy_generic", [AT_P]), ("delete", "light", [AT_P])]
    assert errors(bulletin) == set()
    second = parse(f"{HEAD}A buoy in {P} has been removed and a beacon established.\n")
    assert told(second) == [("delete", "buoy_generic", [AT_P])]
    assert errors(second) == {"item-without-position"}


ELSEWHERE = [
    ("the rock close N of it is deleted", "relation-unclear"),
    ("the rock nearby is deleted", "relation-unclear"),
    ("the rock shown on chart 803 is deleted", "item-of-one-chart"),
]


@pytest.mark.parametrize(("words", "code"), ELSEWHERE)
def test_a_thing_beside_the_place_is_not_put_there(words: str, code: str) -> None:
    for text in (
        f"In {P} a wreck is inserted and {words}.",
        f"At {P}\n   a wreck is inserted\n   {words}",
    ):
        bulletin = parse(f"{HEAD}{text}\n")
        assert told(bulletin) == [("insert", "wreck", [AT_P])]
        assert errors(bulletin) == {code}


def test_a_place_of_its_own_is_kept() -> None:
    text = f"A wreck has been found in {P} and the rock close N of it in {Q} has been removed.\n"
    assert ("insert", "wreck", [AT_P]) in told(parse(HEAD + text))


@pytest.mark.parametrize(
    ("above", "below"),
    [
        (f"At {P}\nInsert wreck", "rock"),
        (f"{P}\nInsert wreck", f"rock\n{Q}\nDelete pile"),
        (f"{P} Insert wreck", f"depth 5m\n{Q} Delete pile"),
        (f"{P} Insert wreck", f"obstruction, least depth 4m\n{Q} Delete pile"),
    ],
)
def test_a_bare_thing_close_below_an_item_is_told(above: str, below: str) -> None:
    text = f"{HEAD}{above}\n{below}\n"
    bulletin = parse(text)
    assert told(bulletin)[0] == ("insert", "wreck", [AT_P])
    assert errors(bulletin) == {"item-without-verb"}
    [span] = [one.span for one in bulletin.findings if one.code == "item-without-verb"]
    assert span is not None
    assert text[span.start : span.end] == below.splitlines()[0]


@pytest.mark.parametrize(
    "below",
    [
        "Buoy reported by the master of a yacht",
        "Note: buoy laid in 2025",
        "Lights in this area are on the list below.",
        "\nLight-buoys of the outer channel",
    ],
)
def test_what_is_said_of_things_is_no_bare_thing(below: str) -> None:
    bulletin = parse(f"{HEAD}{P} Insert wreck\n{below}\n{Q} Delete pile\n")
    assert errors(bulletin) == set()


SUMS_UP = [
    ("The buoys of the fairway have been laid anew.", "Insert port-hand light-buoy, Fl.R.2s"),
    ("The anchor berths have been laid out afresh.", "Delete anchorage area, centred on"),
    ("The lights of the mole have been altered.", "Insert light, Fl.G.3s"),
]


@pytest.mark.parametrize(("said", "command"), SUMS_UP)
def test_a_sentence_above_commands_for_such_things_sums_them_up(said: str, command: str) -> None:
    bulletin = parse(f"{HEAD}\n{said}\n1. {command} {P}\n2. Delete rock {Q}\n")
    assert errors(bulletin) == set()
    told = {one.code: one.severity for one in bulletin.findings}
    assert told["change-summed-up"] == "info"


@pytest.mark.parametrize(("said", "command"), SUMS_UP)
def test_below_them_or_above_other_commands_it_is_a_change(said: str, command: str) -> None:
    below = f"{HEAD}1. {command} {P}\n\n{said}\n"
    others = f"{HEAD}\n{said}\n1. Insert pile {P}\n2. Delete rock {Q}\n"
    for text in (below, others):
        assert "change-without-place" in errors(parse(text))


INFORMED = [
    "Mariners are advised that the fairway has been\nrearranged, and that the port-hand buoys off "
    "the Mole\nhave been taken up. The charts are to be corrected as follows.",
    "Mariners are informed that the buoys of the fairway have been moved.",
    "Shipmasters and pilots are notified that the buoys have been renewed and that the\n"
    "port-hand buoys have been removed.",
    "Notice is hereby given that the buoys of the fairway have been laid anew.",
    "It is notified that the port-hand buoys have been removed.",
    "All mariners are hereby advised that the buoys have been shifted after dredging.",
]


@pytest.mark.parametrize("body", ["", "\nOn chart 802 -\n\n"])
@pytest.mark.parametrize("said", INFORMED)
def test_a_paragraph_that_informs_of_the_commands_below_it_is_a_remark(
    said: str, body: str
) -> None:
    commands = f"Insert starboard-hand buoy {P}\nDelete port-hand buoy {Q}\n"
    bulletin = parse(f"{HEAD}\n{said}\n{body}\n{commands}")
    assert [verb for verb, _, _ in told(bulletin)] == ["insert", "delete"]
    assert errors(bulletin) == set()
    assert len(bulletin.notices[0].remarks) >= 1


@pytest.mark.parametrize(
    "said",
    [
        "Mariners are advised that the light on the mole has been removed.",
        "Mariners are advised that the buoys have been shifted and that the light on the mole\n"
        "has been removed.",
        "Mariners are advised that a beacon has been erected.",
    ],
)
def test_what_it_tells_of_another_thing_is_a_change(said: str) -> None:
    bulletin = parse(f"{HEAD}\n{said}\n\nInsert starboard-hand buoy {P}\n")
    assert "change-without-place" in errors(bulletin)


def test_a_paragraph_that_leads_to_places_is_none() -> None:
    said = "Mariners are advised that the following buoys have been removed:"
    bulletin = parse(f"{HEAD}\n{said}\n\n(a) {P}\n(b) {Q}\n\nInsert rock {P}\n")
    assert told(bulletin) == [
        ("delete", "buoy_generic", [AT_P, AT_Q]),
        ("insert", "rock", [AT_P]),
    ]
