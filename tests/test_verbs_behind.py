"""Verbs behind their things, several on a line; verbs within the list of another one."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q

HEAD = "613/26 Corvane Sound\nChart 904 [588/26]\n"
R = "46-20.00S 122-20.00W"

RUN_ON = {
    "participles": f"Wreck {P} inserted, pile {Q} deleted, rock {R} inserted.\n",
    "semicolons": f"Wreck {P} inserted; pile {Q} deleted; rock {R} inserted\n",
    "dashes": f"Wreck, {P} - insert; pile, {Q} - delete; rock, {R} - insert.\n",
    "sentences": f"Wreck {P} established. Pile {Q} removed. Rock {R} established.\n",
    "no marks": f"Wreck {P} Insert Pile {Q} Delete Rock {R} Insert\n",
    "over line ends": f"Wreck {P} inserted. Pile {Q}\nremoved. Rock {R} established.\n",
    "within a place": f"Wreck {P} inserted. Pile {Q[:10]}\n{Q[11:]} removed. Rock {R} inserted.\n",
}


def actions(bulletin: Bulletin) -> list[tuple[str, str, bool]]:
    (notice,) = bulletin.notices
    return [
        (one.verb, one.feature.kind, one.usable)
        for chart in notice.charts
        for one in chart.actions
    ]


@pytest.mark.parametrize("body", RUN_ON.values(), ids=RUN_ON)
def test_each_verb_is_of_the_thing_before_it(body: str) -> None:
    assert actions(parse(HEAD + body)) == [
        ("insert", "wreck", True),
        ("delete", "pile", True),
        ("insert", "rock", True),
    ]


@pytest.mark.parametrize("joint", [" and", ","])
def test_things_that_share_the_verb_behind(joint: str) -> None:
    body = f"Wreck {P}{joint} rock {Q} inserted; pile {R} deleted.\n"
    assert actions(parse(HEAD + body)) == [
        ("insert", "wreck", True),
        ("insert", "rock", True),
        ("delete", "pile", True),
    ]


def test_thing_without_a_verb_among_them_is_held_back() -> None:
    body = f"Wreck {P} inserted. Pile {Q} removed. Rock {R}, unchanged.\n"
    bulletin = parse(HEAD + body)
    assert actions(bulletin) == [("insert", "wreck", True), ("delete", "pile", True)]
    assert "item-without-verb" in {one.code for one in bulletin.findings}


def test_verbs_in_front_stay_in_front() -> None:
    body = f"Insert wreck {P} delete pile {Q} insert\nrock {R}\n"
    assert [one[:2] for one in actions(parse(HEAD + body))] == [
        ("insert", "wreck"),
        ("delete", "pile"),
        ("insert", "rock"),
    ]


HELD = {
    "verb within a list": (
        f"Insert\n (a) wreck {P}\n (b) delete rock {Q}\n (c) pile {R}\n",
        [True, True, False],
    ),
    "verb within rows": (
        f"Insert\n wreck {P}\n delete rock {Q}\n pile {R}\n",
        [True, True, False],
    ),
    "verb in brackets": (
        f"Insert wreck {P}\n rock {Q} (delete)\n pile {R}\n",
        [True, False, True],
    ),
    "verb at the end of a row": (
        f"Delete\nrock   {P}\nwreck  {Q}     insert\npile   {R}\n",
        [True, False, True],
    ),
    "commands side by side": (
        f"Insert wreck {P} | Delete rock {Q}\n       pile {R} |\n",
        [True, True, False],
    ),
    "commands in columns": (
        f"INSERT wreck {P}     DELETE rock {Q}\n       pile {R}\n",
        [True, True, False],
    ),
    "verbs below": (f"{P}\nWreck\nInsert\n{Q}\nRock\nDelete\n", [False]),
    "verbs between": (f"Wreck\nInsert\n{P}\nRock\nDelete\n{Q}\n", [False, False]),
}


@pytest.mark.parametrize(("body", "usable"), HELD.values(), ids=HELD)
def test_what_another_verb_may_hold_for_is_held_back(body: str, usable: list[bool]) -> None:
    assert [one[2] for one in actions(parse(HEAD + body))] == usable


def test_list_of_the_same_verb_goes_on() -> None:
    body = f"Insert\n wreck {P}\n insert rock {Q}\n pile {R}\n"
    assert [one[2] for one in actions(parse(HEAD + body))] == [True, True, True]


def test_what_should_be_done_in_a_sentence_is_held_back() -> None:
    body = f"1. Insert wreck {P}\n2. The rock at {Q} was not found and should be removed.\n"
    found = actions(parse(HEAD + body))
    assert found[0] == ("insert", "wreck", True)
    assert not any(one[2] for one in found[1:])


@pytest.mark.parametrize("heads", ["Chart 904 | Chart 905", "Chart 904        Chart 905"])
def test_charts_in_columns_hold_both_commands(heads: str) -> None:
    text = f"613/26 Corvane Sound\n{heads}\nInsert wreck {P}     Delete rock {Q}\n"
    found = actions(parse(text))
    assert found
    assert not any(one[2] for one in found)


FIELDS = {
    "order": f"- wreck / {P} / insert\n- pile / {Q} / delete\n- rock / {R} / to be inserted\n",
    "wrapped": f"- wreck / {P} / insert\n- pile /\n  {Q} / delete\n- rock / {R} / insert\n",
}


@pytest.mark.parametrize("body", FIELDS.values(), ids=FIELDS)
def test_verb_in_the_last_field_is_of_its_row(body: str) -> None:
    assert actions(parse(HEAD + body)) == [
        ("insert", "wreck", True),
        ("delete", "pile", True),
        ("insert", "rock", True),
    ]


def test_what_comes_of_a_thing_stands_behind_the_last_verb() -> None:
    body = (
        f"- light F.R / {P} / replace by light\n  Fl.R.3s\n- wreck / {Q} / delete\n"
        f"- light Fl.5s8M / {R} / range to be altered to 5M\n"
    )
    (notice,) = parse(HEAD + body).notices
    replaced, deleted, amended = notice.charts[0].actions
    assert replaced.usable
    assert replaced.replacement is not None
    assert replaced.replacement.light is not None
    assert replaced.replacement.light.written == "Fl.R.3s"
    assert (deleted.verb, deleted.feature.light) == ("delete", None)
    assert [(one.property, one.new) for one in amended.changes] == [("light.ranges_nm", [5])]


def test_verb_of_the_row_above_is_not_that_of_a_row_below() -> None:
    body = f"- wreck / {P} / insert\n- pile / {Q} / delete\n- rock {R} to be inserted\n"
    bulletin = parse(HEAD + body)
    usable = [(verb, kind) for verb, kind, is_usable in actions(bulletin) if is_usable]
    assert ("insert", "pile") not in usable
    assert "item-without-verb" in {one.code for one in bulletin.findings}


MIXED = {
    "numbered": f"1. Delete rock {R}\n2. Pile {Q}, insert\n3. Wreck {P}, to be deleted\n",
    "fields": f"Delete rock {R}\npile / {Q} / insert\nwreck / {P} / insert\n",
    "verbs in the first field": (
        f"- delete / rock / {R}\n- pile / {Q} / insert\n- wreck / {P} / insert\n"
    ),
    "under a heading": f"Delete:\n- wreck / {P}\n- pile / {Q} / insert\n- rock / {R} / delete\n",
}


@pytest.mark.parametrize("body", MIXED.values(), ids=MIXED)
def test_a_row_with_its_own_verb_has_none_from_above(body: str) -> None:
    bulletin = parse(HEAD + body)
    usable = [(verb, kind) for verb, kind, is_usable in actions(bulletin) if is_usable]
    assert ("delete", "pile") not in usable
    assert "item-without-verb" in {one.code for one in bulletin.findings}


OF_A_PROPERTY = {
    "name to go": f"- buoy Karra / {Q} / name to be deleted\n",
    "topmark to go": f"- special buoy / {Q} / topmark to be deleted\n",
    "topmark over the line end": f"- special buoy / {Q} / topmark\n  to be deleted\n",
    "depth to go": f"- wreck, depth 5.2m / {Q} / depth to be deleted\n",
    "range to go": f"- light Fl.5s8M / {Q} / range to be deleted\n",
    "sectors to go": f"- light Fl.5s8M / {Q} / sectors to be deleted\n",
    "elevation to come": f"- light Fl.5s / {Q} / elevation to be inserted\n",
    "name to come": f"- mooring buoy / {Q} / name to be inserted\n",
    "verb before it": f"- special buoy No 4 / {Q} / delete number\n",
}


@pytest.mark.parametrize("row", OF_A_PROPERTY.values(), ids=OF_A_PROPERTY)
def test_verb_beside_a_bare_property_is_not_that_of_the_thing(row: str) -> None:
    found = actions(parse(f"{HEAD}- wreck / {P} / to be inserted\n{row}- pile / {R} / delete\n"))
    assert found[0] == ("insert", "wreck", True)
    assert found[-1] == ("delete", "pile", True)
    assert not any(is_usable for _, _, is_usable in found[1:-1])


def test_light_of_a_buoy_that_is_to_go_takes_no_buoy_off() -> None:
    row = f"- special buoy / {Q} / light to be deleted\n"
    bulletin = parse(f"{HEAD}- wreck / {P} / to be inserted\n{row}- pile / {R} / delete\n")
    usable = [one[:2] for one in actions(bulletin) if one[2]]
    assert set(usable) <= {("insert", "wreck"), ("delete", "pile")}
    assert "item-without-verb" in {one.code for one in bulletin.findings}
