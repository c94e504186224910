"""Coordinates that break off in the column of others: their row has no place, and takes none.

Common practice, no published source: a row without a readable place is never given that of the
row above or below it.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, actions_of, errors

STUMPS = {
    "degrees": ("46° 22.31' S   122° 18.02' W", "46°"),
    "degrees and a point": ("46°22.31' S 122°18.02' W", "46°22."),
    "a degree alone": ("46-22.31 S   122-18.02 W", "46"),
    "hyphen": ("46-22.31 S   122-18.02 W", "46-2"),
    "blanks": ("46 22.31 S   122 18.02 W", "46 22."),
    "no hemisphere": ("46-22.31 S   122-18.02 W", "46-22.31"),
}


@pytest.mark.parametrize("verb", ["Insert", "insert"])
@pytest.mark.parametrize(("place", "stump"), STUMPS.values(), ids=STUMPS)
def test_a_stump_is_the_place_of_its_row(place: str, stump: str, verb: str) -> None:
    rows = [f"{place}   Insert   wreck", f"{stump}   {verb}   rock", f"{place}   Delete   pile"]
    for order in (rows, [rows[1], rows[0], rows[2]], [rows[0], rows[2], rows[1]]):
        bulletin = parse(HEAD + "\n".join(order) + "\n")
        told = {action.feature.kind: action for action in actions_of(bulletin)}
        assert {kind for kind, action in told.items() if action.usable} == {"wreck", "pile"}
        assert told["rock"].geometry.positions == []
        assert errors(bulletin) & {"position-cut-off", "position-hemisphere-missing"}


def test_a_stump_behind_its_words() -> None:
    bulletin = parse(
        HEAD + "Insert   wreck         46-22.31 S   122-18.02 W\n"
        "Insert   rock          46-2\n"
        "Delete   pile          46-22.10 S   122-18.02 W\n"
    )
    assert [action.usable for action in actions_of(bulletin)] == [True, False, True]
    assert errors(bulletin) == {"position-cut-off"}


@pytest.mark.parametrize(
    "lines",
    [
        "46)  46-22.31 S   122-18.02 W   Insert   wreck\n"
        "47)  46-22.10 S   122-18.02 W   Delete   pile\n",
        "46-22.31 S   122-18.02 W   Insert   wreck\n                           Delete   pile\n",
        "46. Insert   wreck   46-22.31 S   122-18.02 W\n"
        "47. Delete   pile    46-22.10 S   122-18.02 W\n",
    ],
    ids=["numbered rows", "no place of its own", "numbered items"],
)
def test_other_figures_and_blanks_are_no_stumps(lines: str) -> None:
    bulletin = parse(HEAD + lines)
    assert [action.usable for action in actions_of(bulletin)] == [True, True]
    assert errors(bulletin) == set()
