"""Faults of marks, lights and depths: planted in clean notices, found every time."""

from __future__ import annotations

import pytest

from tests.faults import depth_families, light_families, mark_families
from tests.faults.planting import Family, false_alarms, misses

FAMILIES = (*mark_families.FAMILIES, *light_families.FAMILIES, *depth_families.FAMILIES)
CODES = sorted({family.code for family in FAMILIES})


@pytest.mark.parametrize("family", FAMILIES, ids=lambda family: family.name)
def test_fault_is_found_every_time(family: Family) -> None:
    missed = list(misses(family))
    assert not missed, f"{len(missed)} missed, the first:\n{missed[0]}"


@pytest.mark.parametrize("family", FAMILIES, ids=lambda family: family.name)
def test_clean_twin_is_silent(family: Family) -> None:
    told = list(false_alarms(family, CODES))
    assert not told, f"{len(told)} false alarms, the first:\n{told[0]}"


def test_names_are_unlike() -> None:
    names = [family.name for family in FAMILIES]
    assert len(set(names)) == len(names)
