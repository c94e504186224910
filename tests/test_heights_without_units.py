"""Heights whose unit or sign is not that of the figure beside them."""

from __future__ import annotations

from decimal import Decimal

import pytest

from noticeparse.readers.depths import ChartUnit
from noticeparse.readers.features import read_feature


@pytest.mark.parametrize("unit", ["fm", "fm_ft"])
def test_drying_height_without_a_unit_on_a_chart_in_fathoms(unit: ChartUnit) -> None:
    reading = read_feature("rock, dries 4", unit)
    assert reading.feature.depth is None
    assert [fault.code for fault in reading.faults] == ["clearance-unit-unclear"]


DRYING: list[tuple[str, ChartUnit, str]] = [
    ("rock, dries 4 ft", "fm_ft", "-1.2192"),
    ("rock, dries 1\u2082", "fm_ft", "-2.4384"),
    ("rock, dries 4", "ft", "-1.2192"),
    ("rock, dries 4", "m", "-4"),
]


@pytest.mark.parametrize(("text", "unit", "metres"), DRYING)
def test_drying_height_with_a_unit(text: str, unit: ChartUnit, metres: str) -> None:
    depth = read_feature(text, unit).feature.depth
    assert depth is not None
    assert depth.value_m == Decimal(metres)


def test_what_lies_below_datum_is_no_height() -> None:
    reading = read_feature("pile, top 2m below chart datum")
    assert reading.feature.height_m is None
    assert [fault.code for fault in reading.faults] == ["feature-figure-unread"]
    assert read_feature("pile, top 2m above water").feature.height_m == 2


def test_least_known_depth() -> None:
    depth = read_feature("obstruction, least known depth 4.2 m").feature.depth
    assert depth is not None
    assert depth.kind == "least"
