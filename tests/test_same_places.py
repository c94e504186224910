"""Several things below one place, each on a line of its own."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, told


@pytest.mark.parametrize("indent", ["", "   "])
@pytest.mark.parametrize("heading", ["Insert:", "INSERT"])
def test_each_thing_below_a_place_is_an_item_there(heading: str, indent: str) -> None:
    rows = f"{heading}\n{P}\n{indent}light, Fl.R.3s6m3M\n{indent}tide gauge\n{Q}\n{indent}wreck\n"
    assert told(parse(HEAD + rows)) == [
        ("insert", "light", [AT_P]),
        ("insert", "tide_gauge", [AT_P]),
        ("insert", "wreck", [AT_Q]),
    ]


def test_a_legend_below_a_buoy_is_an_item() -> None:
    bulletin = parse(f'{HEAD}Delete:\n{P}\n   ODAS buoy\n   legend "ODAS"\n{Q}\n   wreck\n')
    assert told(bulletin) == [
        ("delete", "buoy_odas", [AT_P]),
        ("delete", "legend", [AT_P]),
        ("delete", "wreck", [AT_Q]),
    ]


@pytest.mark.parametrize(
    ("first", "second", "kind"),
    [
        ("dangerous wreck", "least depth 4m", "wreck_dangerous"),
        ("wreck", "depth 5m", "wreck"),
        ("wreck,", "mast visible", "wreck_masts"),
        ("light-buoy, Fl.R.3s,", "topmark can", "light_buoy_generic"),
        ("isolated danger", "light-buoy, Fl(2)5s", "buoy_isolated_danger"),
    ],
)
def test_the_rest_of_a_description_is_no_other_thing(first: str, second: str, kind: str) -> None:
    bulletin = parse(f"{HEAD}Insert:\n{P}\n   {first}\n   {second}\n{Q}\n   pile\n")
    assert told(bulletin) == [("insert", kind, [AT_P]), ("insert", "pile", [AT_Q])]


def test_places_above_their_thing_may_be_led_by_a_relation() -> None:
    rows = (
        f"INSERT:\n   through {P}, {Q}\n   and {R}\n      submarine cable\n   {P}\n      pile\n"
        f"DELETE:\n   area bounded by a line through {P}, {Q}\n   and {R}\n      spoil ground\n"
    )
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [
        ("insert", "cable_submarine", [AT_P, AT_Q, AT_R]),
        ("insert", "pile", [AT_P]),
        ("delete", "spoil_ground", [AT_P, AT_Q, AT_R]),
    ]
    assert [one.geometry.shape for one in actions_of(bulletin)] == ["line", "point", "area"]
