"""Keys below the things of a list, and the links that a page of the web has round them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, R, actions_of, codes, errors, told


@pytest.mark.parametrize(
    "marks", [("• ",) * 3, ("- ",) * 3, ("",) * 3, ("  ",) * 3, ("1. ", "2. ", "3. "),
              ("(a) ", "(b) ", "(c) ")],
)  # fmt: skip
@pytest.mark.parametrize("key", ["Position", "POSITION", "Pos.", "Location", "At"])
def test_the_place_below_a_thing_is_told_by_its_key(marks: tuple[str, str, str], key: str) -> None:
    first, second, third = marks
    bulletin = parse(
        f"{HEAD}\nInsert\n{first}Wreck\n     {key}: {P}\n{second}Special light-buoy, Fl.Y.3s\n"
        f"     {key}: {R}\n\nDelete:\n\n{third}Rock\n     {key}: {Q}\n"
    )
    assert told(bulletin)[::2] == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert codes(bulletin) == set()


def test_a_value_a_thing_and_a_place_may_go_on_below() -> None:
    bulletin = parse(
        f"{HEAD}\nInsert\n\n- Wreck\n  Least depth: 14.8 m\n  Position: {P[:9]}\n    {P[10:]}\n\n"
        f"- Special\n  light-buoy\n  Light: Fl.Y.3s\n  Position: {Q}\n"
    )
    assert [one[::2] for one in told(bulletin)] == [("insert", [AT_P]), ("insert", [AT_Q])]
    wreck, buoy = (one.feature for one in actions_of(bulletin))
    assert (wreck.depth and str(wreck.depth.value_m)) == "14.8"
    assert (buoy.light and buoy.light.written) == "Fl.Y.3s"


def test_lettered_places_are_those_of_one_thing() -> None:
    bulletin = parse(
        f"{HEAD}\nInsert\n• Anchorage area (limits)\n  Position A: {P}\n  Position B: {Q}\n"
        f"  Position C: {R}\n• Rock\n  Position: same as position C\n"
    )
    area, rock = actions_of(bulletin)
    assert (area.geometry.shape, len(area.geometry.positions)) == ("area", 3)
    assert not rock.usable


def test_old_and_new_things_are_told_by_keys() -> None:
    bulletin = parse(
        f"{HEAD}\nReplace\n• Old: West cardinal buoy\n  New: Special buoy\n  Position: {P}\n"
        f"• Pile\n  Now: Wreck\n  Position: {Q}\n"
    )
    assert told(bulletin) == [
        ("replace", "buoy_cardinal_west", [AT_P]),
        ("replace", "pile", [AT_Q]),
    ]
    assert [one.replacement.kind for one in actions_of(bulletin)] == ["buoy_special", "wreck"]


def test_old_and_new_places_are_told_by_keys() -> None:
    bulletin = parse(
        f"{HEAD}\nMove\n• Special buoy\n  From: {P}\n  To: {Q}\n"
        f"• Pile\n  New position: {Q}\n  Old position: {P}\n"
    )
    found = [
        (one.geometry.positions[0].iso6709, one.destination.positions[0].iso6709)
        for one in actions_of(bulletin)
        if one.usable
    ]
    assert found == [(AT_P, AT_Q)] * 2


@pytest.mark.parametrize(
    ("key", "value", "changed"),
    [
        ("New range", "3M", "light.ranges_nm"),
        ("New period", "6s", "light.period_s"),
        ("New characteristics", "Fl.R.3s", "light"),
    ],
)
def test_the_new_value_is_told_by_its_key(key: str, value: str, changed: str) -> None:
    bulletin = parse(f"{HEAD}\nAmend\n• Light Oc.R.5s6m4M\n  {key}: {value}\n  Position: {P}\n")
    (action,) = actions_of(bulletin)
    assert action.usable
    assert [one.property for one in action.changes] == [changed]


@pytest.mark.parametrize(
    "entry",
    [
        f"• Wreck\n  Note: reported only\n  Position: {P}",
        "• Wreck\n  Least depth: 14 m",
        f"• Wreck\n  From: {P}\n  To: {Q}",
    ],
    ids=["a key that is not known", "no place", "keys of another verb"],
)
def test_a_list_with_other_keys_is_held(entry: str) -> None:
    bulletin = parse(f"{HEAD}\nInsert\n{entry}\n")
    assert told(bulletin) == []
    assert errors(bulletin)


def test_a_move_from_one_place_alone_is_held() -> None:
    bulletin = parse(
        f"{HEAD}\nMove\n• Special buoy\n  From: {P}\n• Pile\n  From: {P}\n  To: {Q}\n"
    )
    assert told(bulletin) == []


@pytest.mark.parametrize(
    "links",
    [
        "Share this page    Print this page",
        "Back to top",
        "Skip to main content",
        "Accessibility | Privacy policy | Contact us",
        "Home  >  Site map",
    ],
)
def test_a_line_of_links_is_no_item(links: str) -> None:
    bulletin = parse(f"{HEAD}\nInsert\nWreck {P}\n\n{links}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert codes(bulletin) == set()
    assert bulletin.notices[0].remarks == []


def test_words_among_links_are_read() -> None:
    bulletin = parse(f"{HEAD}\nInsert\nWreck {P}\n\nPrint this page for the mate\n")
    assert errors(bulletin) or bulletin.notices[0].remarks
