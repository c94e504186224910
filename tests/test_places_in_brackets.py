"""Places in brackets, and words of their thing behind them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, P, Q, actions_of, errors, told

SECTORS = "W 040°-062°, R 062°-190°, G 320°-040°"


@pytest.mark.parametrize("joint", [", sectors ", ", ", "; sectors "])
def test_sectors_behind_a_place_in_brackets_are_of_the_light(joint: str) -> None:
    bulletin = parse(f"{HEAD}Insert light, Fl.WRG.4s9m7/5/5M ({P}){joint}{SECTORS}\n")
    (action,) = actions_of(bulletin)
    assert action.feature.light is not None
    assert [one.colour for one in action.feature.light.sectors] == ["W", "R", "G"]
    assert told(bulletin) == [("insert", "light", [AT_P])]
    assert errors(bulletin) == set()


def test_sectors_behind_several_places_in_brackets() -> None:
    bulletin = parse(f"{HEAD}Insert lights, Fl.WRG.4s9m7/5/5M ({P}) and ({Q}), {SECTORS}\n")
    assert errors(bulletin) == set()
    assert len(actions_of(bulletin)[0].geometry.positions) == 2


def test_another_thing_behind_a_place_in_brackets_is_held() -> None:
    assert errors(parse(f"{HEAD}Insert wreck ({P}), light-buoy, Fl.R.3s\n"))
