"""Words of a state that a record has no place for, and kinds that stand beside another noun."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import HEAD, P, Q, R, actions_of, codes, errors


@pytest.mark.parametrize(
    ("phrase", "kind", "told"),
    [
        ("light-buoy with virtual AIS", "light_buoy_generic", {"feature-virtual-with-mark"}),
        ("light-buoy, safe water, and V-AIS", "buoy_safe_water", {"feature-virtual-with-mark"}),
        ("V-AIS light-buoy", "ais_virtual", set()),
        ("marine farm marked by Fl.Y.3s light-buoys", "marine_farm", set()),
        ("wreck marked by Q.R light-buoy", "wreck", set()),
        ("R 2₃", "sounding", {"feature-words-unread"}),
        ("4₅ R", "sounding", {"feature-words-unread"}),
        ("rock, depth 2₃", "rock", set()),
        ("Wk Masts", "wreck_masts", set()),
        ("wreck (masts)", "wreck_masts", set()),
        ("dangerous wreck, masts visible", "wreck_dangerous", {"feature-words-unread"}),
        ("masts", "radio_mast", set()),
        ("high voltage submarine cable", "cable_power", set()),
        ("direction of buoyage arrow", "buoyage_direction", set()),
        ("chemical munitions dumping ground", "explosives_dumping", set()),
        ("light by day", "light", {"light-leftover-words"}),
        ("light, Fl.5s by night", "light", {"light-leftover-words"}),
    ],
)
def test_kind_and_what_is_told(phrase: str, kind: str, told: set[str]) -> None:
    feature, faults = read_feature(phrase)
    assert feature.kind == kind
    assert {one.code for one in faults} - {
        "feature-class-unknown",
        "depth-unit-not-stated",
    } == told


def test_two_marks_do_not_move_together() -> None:
    marks = "port-hand light-buoy and starboard-hand light-buoy"
    held = parse(f"{HEAD}Move {marks} from {P} and {Q} to {R} and 46-00.20S 122-00.30W")
    assert errors(held) == {"feature-kinds-several"}
    assert codes(parse(f"{HEAD}Move light-buoy and topmark from {P} to {Q}")) == set()


def test_a_light_by_day_is_the_one_amended() -> None:
    told = parse(f"{HEAD}Amend light by day to Iso.2s {P}")
    (action,) = actions_of(told)
    assert action.feature.kind == "light"
    assert codes(told) == {"light-leftover-words"}
