"""Faults of marks, lights and depths: planted in clean notices, found every time."""

from __future__ import annotations

import pytest

from tests.faults import depth_families, light_families, mark_families
from tests.faults.planting import Family, try_family

FAMILIES = (*mark_families.FAMILIES, *light_families.FAMILIES, *depth_families.FAMILIES)
CODES = sorted({family.code for family in FAMILIES})


@pytest.mark.parametrize("family", FAMILIES, ids=lambda family: family.name)
def test_fault_is_found_every_time_and_its_clean_twin_is_silent(family: Family) -> None:
    missed, alarms = try_family(family, CODES)
    assert not missed, f"{len(missed)} missed, the first:\n{missed[0]}"
    assert not alarms, f"{len(alarms)} false alarms, the first:\n{alarms[0]}"


def test_names_are_unlike() -> None:
    names = [family.name for family in FAMILIES]
    assert len(set(names)) == len(names)
