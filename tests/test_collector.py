"""The garbage collector's setting: more patient while a text is read, as before afterwards."""

from __future__ import annotations

import gc
from collections.abc import Iterator

import pytest

from noticeparse import parse
from noticeparse.collector import patient_collector


@pytest.fixture(autouse=True)
def setting() -> Iterator[tuple[int, int, int]]:
    before = gc.get_threshold()
    gc.set_threshold(700, 10, 10)
    yield gc.get_threshold()
    gc.set_threshold(*before)


def test_setting_comes_back_after_the_last_reader(setting: tuple[int, int, int]) -> None:
    with patient_collector():
        with patient_collector():
            patient = gc.get_threshold()
        assert gc.get_threshold() == patient
    assert patient[0] > setting[0]
    assert gc.get_threshold() == setting


def test_setting_comes_back_after_an_error(setting: tuple[int, int, int]) -> None:
    with pytest.raises(ZeroDivisionError), patient_collector():
        _ = 1 / 0
    assert gc.get_threshold() == setting


@pytest.mark.parametrize("first", [0, 1_000_000], ids=["switched off", "more patient already"])
def test_own_setting_of_the_program_is_left_alone(first: int) -> None:
    gc.set_threshold(first, 10, 10)
    with patient_collector():
        assert gc.get_threshold() == (first, 10, 10)
    assert gc.get_threshold() == (first, 10, 10)


def test_parse_leaves_the_setting_as_it_was(setting: tuple[int, int, int]) -> None:
    parse("Insert wreck 47°05.80'S 122°40.68'W")
    assert gc.get_threshold() == setting
