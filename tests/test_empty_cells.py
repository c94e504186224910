"""Rows whose words are left out: those of a neighbour are not taken for them.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, errors

HELD = [
    (f"Insert wrecks:\n| {P} | 8.6m |\n| {Q} |  |\n| {R} | 7.1m |\n", [True, False]),
    (f"Insert wrecks:\n{P} 8.6m\n{Q} -\n{R} 7.1m\n", [True, False]),
    (f"Insert wrecks:\n{P} 8.6m\n{Q}\n{R} 7.1m\n", [True, False]),
    (f"Insert wrecks:\n| 8.6m | {P} |\n| | {Q} |\n", [False]),
    (f"Insert wrecks:\n| 8.6m | {P} |\n| | {Q} |\n| 7.1m | {R} |\n", [False, True]),
    (f"Insert light-buoys:\n{P} Fl.R.3s\n{Q}\n{R} Fl.G.3s\n", [True, False]),
    (f"Insert\n{P} wreck\n{Q}\n{R} rock\n", [True, False]),
    (f"Insert\n{P}\n{Q} wreck\n{R} rock\n", [False, True]),
    (f"Insert\n| wreck | {P} |\n| | {Q} |\n| rock | {R} |\n", [False, True]),
    (f"Insert\n| wreck | {P} |\n| - | {Q} |\n| rock | {R} |\n", [False, True]),
    (f"Insert\n| light-buoy | Fl.R.3s | {P} |\n| | Q.G | {Q} |\n", [True, False]),
]


@pytest.mark.parametrize(("text", "usable"), HELD)
def test_what_has_no_words_of_its_own_is_held_back(text: str, usable: list[bool]) -> None:
    bulletin = parse(HEAD + text)
    assert errors(bulletin) == {"item-without-feature"}
    assert [action.usable for action in actions_of(bulletin)] == usable


WHOLE = [
    (f"Insert\n{P}\n{Q}\n{R} wrecks\n", 1),
    (f"Insert\n{P} and\n{Q} wrecks\n{R} rock\n", 2),
    (f"Insert\n{P} rock\n{Q}\n{R} cable joining\n", 2),
    (f"Insert\n| wrecks | {P} |\n| | {Q} |\n| rock | {R} |\n", 2),
    (f"Insert\n| cable joining | {P} |\n| | {Q} |\n| rock | {R} |\n", 2),
    (f"Insert rocks\n{P}\n{Q}\nDelete wreck {R}\n", 2),
    (f"Insert wreck {P}\n{Q}\nrock {R}\n", 2),
    (f"Insert\n| light-buoy | Fl.R.3s | {P} |\n| | beacon | {Q} |\n", 2),
]


@pytest.mark.parametrize(("text", "count"), WHOLE)
def test_one_thing_may_have_several_places(text: str, count: int) -> None:
    bulletin = parse(HEAD + text)
    assert errors(bulletin) == set()
    assert len(actions_of(bulletin)) == count
