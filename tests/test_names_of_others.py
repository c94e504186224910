"""Names and numbers of other things are no names of the feature; its own stay."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature

NAMES = [
    ("light-buoy, Fl.G.3s, similar to No 3", None),
    ("light-buoy, Fl.R.5s, sync with No 4", None),
    ("light-buoy, Fl.R.5s, synchronised with buoy No 4", None),
    ("light-buoy No 5, to mark Brack Rock", "No 5"),
    ("light-buoy No 5, marking the Brack Shoal", "No 5"),
    ("buoy, Point Ellory light bearing 300°", None),
    ("wreck (Also List of Lights K1234.5)", None),
    ("light, Fl.WR.5s, red sector covering Brack Shoal", None),
    ("beacon, RW Ch", None),
    ("buoy, Y, St Andrew cross", None),
    ("light-buoy IV", "IV"),
    ("wreck reported 2025 by MV Halcyon", None),
    ("wreck, PA, reported by M/V Halcyon Star", None),
    ("wreck, reported by the yacht Halcyon", None),
    ("obstruction, sighted by Halcyon", None),
    ("rock, reported from FV Brannoch", None),
    ("rock, according to the master of Brannoch", None),
    ("wreck Halcyon, reported by MV Brannoch", "Halcyon"),
    # Own names.
    ("light-buoy No 5 Brack Rock", "No 5 Brack Rock"),
    ("light-buoy Point Ellory", "Point Ellory"),
    ("buoy, Fl.R.5s, No 4", "No 4"),
]


@pytest.mark.parametrize(("text", "name"), NAMES)
def test_name(text: str, name: str | None) -> None:
    assert read_feature(text).feature.name == name


def test_new_name_behind_a_move_is_not_that_of_the_buoy() -> None:
    text = (
        "613/26 Corvane Sound\nChart 904 [588/26]\n"
        "Move light-buoy, Fl.R.5s, from: 47-12.34S 123-45.67W\n"
        "                           to: 47-12.44S 123-45.77W (new name No 7)\n"
    )
    assert parse(text).notices[0].charts[0].actions[0].feature.name is None
