"""What lists of aids tell in the cell of the verb: `NEW`, `Range reduced to 5M`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors, usable_of

LIGHT = "light, Fl.R.5s12m8M"


def _table(done: str, thing: str = LIGHT, below: str = "") -> str:
    return f"{HEAD}Object | Position | Action\n{thing} | {P} | {done}\n{below}"


@pytest.mark.parametrize("done", ["NEW", "New", "new", "New light", "NEW AID"])
def test_what_is_new_is_inserted(done: str) -> None:
    bulletin = parse(_table(done))
    assert usable_of(bulletin) == [("insert", "light")]
    assert codes(bulletin) == set()


def test_new_beside_old_is_a_state() -> None:
    bulletin = parse(_table("OLD", below=f"wreck | {Q} | NEW\n"))
    assert usable_of(bulletin) == []
    assert errors(bulletin) == {"verb-unknown"}


@pytest.mark.parametrize(
    ("done", "name", "new"),
    [
        ("Range reduced to 5M", "light.ranges_nm", "[Decimal('5')]"),
        ("RANGE REDUCED TO 5M", "light.ranges_nm", "[Decimal('5')]"),
        ("Period changed to 10s", "light.period_s", "10"),
        ("Period has been changed to 10s", "light.period_s", "10"),
        ("Elevation increased from 12m to 15m", "light.elevation_m", "15"),
        ('Renamed "Ormer"', "name", "Ormer"),
        ('Renamed as "Ormer"', "name", "Ormer"),
        ('Name changed to "Ormer"', "name", "Ormer"),
    ],
)
def test_what_of_it_changes_may_stand_before_the_verb(done: str, name: str, new: str) -> None:
    bulletin = parse(_table(done))
    (action,) = actions_of(bulletin)
    assert isinstance(action, Amend)
    assert [(one.property, str(one.new)) for one in action.changes] == [(name, new)]
    assert action.usable
    assert codes(bulletin) == set()


@pytest.mark.parametrize("done", ["Light changed to Q.R", "Characteristic changed to Q.R"])
def test_its_light_changes(done: str) -> None:
    (action,) = actions_of(parse(_table(done)))
    assert isinstance(action, Amend)
    assert [one.property for one in action.changes] == ["light"]
    assert action.usable


@pytest.mark.parametrize(
    ("done", "thing"),
    [
        ("Topmark removed", "starboard-hand buoy"),
        ("Racon established", "port-hand light-buoy"),
        ("Light discontinued", "light-buoy, Fl.R.3s"),
        ("Light discontinued", "starboard-hand beacon"),
        ("Removed and replaced by beacon", "port-hand buoy"),
        ("Established; later removed", "port-hand buoy"),
        ("Range reduced by 2M", LIGHT),
        ("Discontinued 2025", LIGHT),
    ],
)
def test_what_is_done_to_a_part_or_twice_is_held(done: str, thing: str) -> None:
    bulletin = parse(_table(done, thing))
    assert usable_of(bulletin) == []
    assert errors(bulletin)


@pytest.mark.parametrize(
    ("done", "thing", "verb"),
    [
        ("Buoy established", "port-hand buoy", "insert"),
        ("Light discontinued", LIGHT, "delete"),
        ("To be removed", "port-hand buoy", "delete"),
        ("Newly established", "port-hand buoy", "insert"),
        ("delete at this place", "wreck", "delete"),
    ],
)
def test_what_is_done_to_the_thing_itself(done: str, thing: str, verb: str) -> None:
    bulletin = parse(_table(done, thing))
    assert [action for action, _ in usable_of(bulletin)] == [verb]
    assert not errors(bulletin)


@pytest.mark.parametrize(
    "place", ["46.1O215° S 122.00l20° W", "46-00.0OS 122-00.ZOW", "46.10215° S, 122.0B120° W"]
)
def test_garbled_figures_are_a_place_that_cannot_be_read(place: str) -> None:
    bulletin = parse(f"{HEAD}Action | Object | Position\nInsert | wreck | {place}\n")
    assert usable_of(bulletin) == []
    assert any(code.startswith("position-") for code in errors(bulletin))


def test_a_garbled_place_behind_another_holds_its_row() -> None:
    place = f"{P} 46.1O215° S 122.00l20° W"
    bulletin = parse(f"{HEAD}Action | Object | Position\nInsert | cable | {place}\n")
    assert usable_of(bulletin) == []
    assert errors(bulletin) == {"position-unreadable"}
