"""Classes that head rows below a verb: `INSERT`, `Wrecks`, `least depth 13.7 m   P`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, codes, errors

HEAD = "1905/26 Hale Ness\nChart 904 [588/26]\n"
R = "46-20.00S 122-20.00W"


def kinds(bulletin: Bulletin) -> list[tuple[str, str, str | None, bool]]:
    (notice,) = bulletin.notices
    return [
        (one.verb, one.feature.kind, one.feature.name, one.usable)
        for chart in notice.charts
        for one in chart.actions
    ]


def test_rows_that_name_no_kind_are_of_their_class() -> None:
    body = (
        f"INSERT\n  Depths\n    6.4 m           {P}\n    7.1 m           {Q}\n"
        f"  Rocks:\n    awash           {P}\n    depth 1.2 m     {Q}\n"
        f"  Light-buoys\n    west cardinal, Q(9)15s    {P}\n    port-hand, Fl.R.6s, No 8  {Q}\n"
        f"DELETE\n  Wrecks\n    least depth 13.7 m        {P}\n    position approximate  {R}\n"
    )
    bulletin = parse(HEAD + body)
    assert kinds(bulletin) == [
        ("insert", "sounding", None, True),
        ("insert", "sounding", None, True),
        ("insert", "rock_awash", None, True),
        ("insert", "rock", None, True),
        ("insert", "buoy_cardinal_west", None, True),
        ("insert", "light_buoy_port", "No 8", True),
        ("delete", "wreck_least_depth", None, True),
        ("delete", "wreck", None, True),
    ]
    assert bulletin.coverage.unread == 0
    assert "Depths" not in (bulletin.notices[0].charts[0].actions[1].text or "")


def test_rows_that_name_their_kind_keep_it() -> None:
    body = (
        f"Insert\n  Cables\n    submarine power cable, joining   {P}\n"
        f"                                     {Q}\n  Dangers\n    wreck    {R}\n"
    )
    assert [one[:2] for one in kinds(parse(HEAD + body))] == [
        ("insert", "cable_power"),
        ("insert", "wreck"),
    ]


def test_class_ends_where_a_line_stands_further_out() -> None:
    body = f"Insert\n  Buoys\n    special, No 6   {P}\nDelete\n  Rocks\n    {Q}\n    {R}\n"
    found = kinds(parse(HEAD + body))
    assert found[0] == ("insert", "buoy_special", "No 6", True)
    assert {one[:2] for one in found[1:]} == {("delete", "rock")}
    assert all(one[3] for one in found)


def test_thing_on_its_own_line_is_no_class() -> None:
    body = f"Insert\n  Wreck\n    {P}\n  Cable, joining\n    {Q}\n    {R}\n"
    assert [one[1] for one in kinds(parse(HEAD + body))] == ["wreck", "cable_submarine"]


WRECK, ROCK = ("insert", "wreck", None, True), ("delete", "rock", None, True)


@pytest.mark.parametrize(
    "body",
    [
        f"DANGERS\n- Laid: wreck ({P})\nBUOYS AND BEACONS\n- Removed: rock ({Q})\n",
        f"WRECKS\n- Inserted: wreck ({P})\nDEPTHS\n- Removed: rock ({Q})\n",
        f"Wrecks\n- Inserted: wreck {P}\nRocks\n- Removed: rock {Q}\n",
        f"Wrecks:\nInsert wreck {P}\nRocks and obstructions:\nDelete rock {Q}\n",
        f"LIGHTS\n  Insert wreck {P}\nDEPTHS\n  Delete rock {Q}\n",
        f"\n Wrecks\n  Insert wreck {P}\n Depths and dangers\n  Delete rock {Q}\n",
        f"Insert wreck {P}\n\nRocks\nDelete rock {Q}\n",
    ],
)
def test_a_class_between_commands_is_a_heading(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert kinds(bulletin) == [WRECK, ROCK]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "body",
    [
        f"Insert  wreck {P}\n        Mooring buoys\nDelete  rock {Q}\n",
        f"INSERT WRECK {P}\nMOORING BUOYS\nDELETE ROCK {Q}\n",
        f"Insert wreck {P}\nMooring buoys\nDelete rock {Q}\n",
        f"Insert\nMOORING BUOYS\nDelete rock {Q}\n",
        f"Delete\nwreck {P}\nMOORING BUOYS\nInsert rock {Q}\n",
    ],
)
def test_a_thing_without_its_place_is_no_heading(body: str) -> None:
    assert "item-without-position" in errors(parse(HEAD + body))
