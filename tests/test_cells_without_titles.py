"""Rows of cells below no titles: counts in cells of their own, and words that run on in theirs."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told


@pytest.mark.parametrize("bar", ["|", "│"])
@pytest.mark.parametrize("second", ["2", "3"])
def test_a_count_is_of_its_own_row(bar: str, second: str) -> None:
    rows = (
        f"{bar} 1 {bar} Insert {bar} port-hand buoy, No 6 {bar} {P} {bar}\n"
        f"{bar} {second} {bar} Delete {bar} depth 8.1 m         {bar} {Q} {bar}\n"
    )
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [
        ("insert", "buoy_lateral_port", [AT_P]),
        ("delete", "sounding", [AT_Q]),
    ]
    assert actions_of(bulletin)[0].feature.name == "No 6"
    assert ("letter-out-of-order" in codes(bulletin)) == (second == "3")


def test_a_longer_number_may_be_a_chart_and_is_told() -> None:
    rows = (
        f"| 802 | Insert | port-hand buoy, No 6 | {P} |\n"
        f"| 803 | Delete | depth 8.1 m          | {Q} |\n"
    )
    bulletin = parse(HEAD + rows)
    assert actions_of(bulletin)[0].feature.name == "No 6"
    assert {"feature-figure-unread", "feature-figure-unclear"} <= codes(bulletin)


def test_words_run_on_in_their_cell() -> None:
    rows = (
        f"| 1 | Amend  | light, Fl(2)WR.10s15/11M: range to | {P} |\n"
        "|   |        | 12/9M                              |                      |\n"
        f"| 2 | Delete | wreck                              | {Q} |\n"
    )
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [("amend", "light", [AT_P]), ("delete", "wreck", [AT_Q])]
    assert errors(bulletin) == set()


def test_a_thing_in_the_cell_below_is_one_of_its_own() -> None:
    rows = f"| 1 | Insert | wreck | {P} |\n|   |        | rock  | {Q} |\n"
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]
