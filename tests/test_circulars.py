"""Circulars in prose: orders that name the chart, states told with an article, told twice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.changes import read_change, read_swap
from tests.short_notices import AT_P, HEAD, P, actions_of, errors, told


@pytest.mark.parametrize(
    "order",
    [
        "Insert on the chart a",
        "Please insert on the chart a",
        "Insert on\nthe chart a",
        "Insert on this chart",
        "Add to the chart the",
        "Enter on your charts a new",
    ],
)
def test_the_chart_behind_an_order_carries_no_light(order: str) -> None:
    """`Insert on the pier a light` names what carries it, `on the chart` does not."""
    bulletin = parse(f"{HEAD}{order} starboard-hand light-buoy, Fl.G.3s, in position {P}.\n")
    assert told(bulletin) == [("insert", "light_buoy_starboard", [AT_P])]
    (action,) = actions_of(bulletin)
    assert not action.feature.companions


def test_both_charts_behind_an_order_carry_no_light() -> None:
    words = f"Insert on both charts a starboard-hand light-buoy, Fl.G.3s, in position {P}.\n"
    actions = actions_of(parse(f"12/26 Quill Sound.\nCharts 802, 803 WGS84\n{words}"))
    assert [(a.usable, a.feature.companions) for a in actions] == [(True, []), (True, [])]
    assert errors(parse(HEAD + words)) == {"item-of-one-chart"}


def test_what_does_carry_the_light_is_kept() -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert on the pier a light, Fl.G.3s, in {P}.\n"))
    assert [one.role for one in action.feature.companions] == ["on"]


@pytest.mark.parametrize(
    ("state", "path", "new"),
    [
        ("show a period of 6s", "light.period_s", 6),
        ("a period of 6 seconds", "light.period_s", 6),
        ("show an elevation of 9m", "light.elevation_m", 9),
        ("read the period of 6s", "light.period_s", 6),
        ("period 6s", "light.period_s", 6),
    ],
)
def test_a_state_that_names_its_property_with_of(state: str, path: str, new: int) -> None:
    reading = read_change(f"light, Fl.R.4s8m5M, to {state}", None)
    assert [(one.property, one.new) for one in reading.changes] == [(path, new)]
    assert not reading.faults


@pytest.mark.parametrize("state", ["a range of light", "a light of 6s", "show a period"])
def test_a_state_without_a_value_is_refused(state: str) -> None:
    assert read_change(f"light, Fl.R.4s8m5M, to {state}", None).faults


@pytest.mark.parametrize(
    "words",
    [
        "wreck with a wreck with a least depth of 9.4 m",
        "the wreck by a wreck with a least depth of 9.4 m",
        "wreck with wreck, least depth 9.4 m",
    ],
)
def test_a_danger_is_not_parted_from_its_depth(words: str) -> None:
    reading = read_swap(words, None)
    assert (reading.feature.kind, reading.replacement.kind) == ("wreck", "wreck_least_depth")


def test_a_wreck_may_give_way_to_a_depth() -> None:
    reading = read_swap("wreck with depth 9.4 m", None)
    assert (reading.feature.kind, reading.replacement.kind) == ("wreck", "sounding")


def test_who_examined_a_wreck_is_no_joint_of_a_replacement() -> None:
    bulletin = parse(
        f"{HEAD}The wreck in position {P} was examined by divers in February. "
        "Replace it with a wreck with a least depth of 9.4 m.\n"
    )
    assert not told(bulletin)
    assert errors(bulletin)
