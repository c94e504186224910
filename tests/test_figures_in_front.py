"""A depth in front of its place, with a remark in brackets behind the place."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, told


@pytest.mark.parametrize("remark", ["(rep 2020)", "(PA)", "(see note)"])
@pytest.mark.parametrize(("first", "second"), [("7₂", "6₁"), ("7.2", "6.1")])
def test_the_figures_do_not_slide(first: str, second: str, remark: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n {first} {P}\n {second} {Q} {remark}\n")
    texts = [action.feature.text for action in actions_of(bulletin)]
    assert [one[:3].rstrip(",") for one in texts] == [first[:3], second[:3]]
    found = [[one.iso6709 for one in a.geometry.positions] for a in actions_of(bulletin)]
    assert found == [[AT_P], [AT_Q]]


def test_one_depth_with_a_remark() -> None:
    bulletin = parse(f"{HEAD}Delete\n 7₂ {P} (rep 2020)\n")
    assert [(a.verb, a.feature.kind) for a in actions_of(bulletin)] == [("delete", "sounding")]


@pytest.mark.parametrize("figure", ["7₂", "7.2m", "wreck"])
def test_places_in_front_stay_so(figure: str) -> None:
    text = f"{HEAD}Insert\n {P}  {figure}\n {Q}  rock (PA)\n"
    kind = "wreck" if figure == "wreck" else "sounding"
    assert told(parse(text)) == [("insert", kind, [AT_P]), ("insert", "rock", [AT_Q])]


def test_numbers_of_a_list_are_no_depths() -> None:
    text = f"{HEAD}Insert\n 1. {P} wreck (PA)\n 2. {Q} rock (PA)\n"
    assert told(parse(text)) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


@pytest.mark.parametrize("figure", ["4₂", "7¹", "²"])
def test_a_small_figure_counts_no_items(figure: str) -> None:
    bulletin = parse(f"{HEAD}Insert\n{figure}  depth  {P}\n5₁  depth  {Q}\n")
    assert len(actions_of(bulletin)) == 2
