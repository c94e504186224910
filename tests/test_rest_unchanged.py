"""Words by which the rest of a thing stays as it is are no part of a changed value."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.changes import read_change
from noticeparse.readers.swaps import read_swap
from tests.short_notices import HEAD, P, actions_of, codes

RESTS = [
    ", other details unchanged",
    "; remainder unchanged",
    ". Other particulars remain unchanged.",
    " (other details unchanged)",
    ", the rest as before",
    ", all else unchanged",
    ", otherwise unchanged",
    ", no other change",
    ", remaining characteristics to remain unchanged",
]


@pytest.mark.parametrize("rest", RESTS)
@pytest.mark.parametrize(
    "change",
    [
        "light to Fl.G.4s",
        'legend "Old" to "Works"',
        "legend to Works",
        "depth of wreck to 5.1m",
        "buoy to red",
        "range of light to 5M",
    ],
)
def test_the_change_is_the_same_without_the_rest(change: str, rest: str) -> None:
    plain, told = read_change(change, "m"), read_change(change + rest, "m")
    assert told.changes == plain.changes
    assert told.feature == plain.feature
    assert [one.code for one in told.faults] == [one.code for one in plain.faults]


def test_a_replacement_with_its_rest() -> None:
    swap = read_swap("light-buoy, Fl.R.4s, by light-beacon, Fl.R.2s, other details unchanged")
    assert (swap.replacement.kind, swap.replacement.text) == (
        "light_beacon", "light-beacon, Fl.R.2s",
    )  # fmt: skip


def test_a_sentence_behind_the_place_is_no_name() -> None:
    bulletin = parse(f"{HEAD}Amend light to Fl.G.4s {P}. Remainder unchanged.\n")
    (action,) = actions_of(bulletin)
    assert (action.feature.name, codes(bulletin)) == (None, set())


@pytest.mark.parametrize(
    ("words", "new"),
    [
        ('legend "Old" to "Remainder unchanged"', "Remainder unchanged"),
        ('note to "Depths as charted, rest unchanged"', "Depths as charted, rest unchanged"),
    ],
)
def test_a_wording_is_kept_whole(words: str, new: str) -> None:
    assert [one.new for one in read_change(words, "m").changes] == [new]
